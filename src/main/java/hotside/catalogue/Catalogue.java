// SPDX-License-Identifier: Apache-2.0
package hotside.catalogue;

import hotside.physics.PhysicsRelations;
import hotside.relation.Relation;
import hotside.statistics.StatisticsRelations;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Every relation that there is, in teaching order. */
public final class Catalogue {
    private static final Map<String, Relation> BY_ID = new LinkedHashMap<>();

    static {
        Stream.concat(PhysicsRelations.ALL.stream(), StatisticsRelations.ALL.stream())
                .forEach(
                        relation -> {
                            if (BY_ID.put(relation.id(), relation) != null) {
                                throw new IllegalStateException(
                                        "two relations are called " + relation.id());
                            }
                        });
    }

    private Catalogue() {}

    public static List<Relation> all() {
        return List.copyOf(BY_ID.values());
    }

    public static Optional<Relation> find(String id) {
        return Optional.ofNullable(BY_ID.get(id));
    }
}
