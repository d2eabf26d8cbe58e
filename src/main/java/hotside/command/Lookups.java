// SPDX-License-Identifier: Apache-2.0
package hotside.command;

import hotside.catalogue.Catalogue;
import hotside.content.Nearest;
import hotside.problem.ProblemBank;
import hotside.problem.Template;
import hotside.relation.Relation;
import java.util.List;

/** Finds what a person names, or says what there is. */
final class Lookups {
    private static final int FEW = 20;

    private Lookups() {}

    static Relation relation(String id) {
        List<String> known = Catalogue.all().stream().map(Relation::id).toList();
        return Catalogue.find(id).orElseThrow(() -> unknown("relation", id, known, "relations"));
    }

    static Template problem(ProblemBank bank, String id) {
        List<String> known = bank.all().stream().map(Template::id).toList();
        return bank.find(id).orElseThrow(() -> unknown("problem", id, known, "variant --list"));
    }

    static UsageException unknown(String kind, String id, List<String> known, String command) {
        String near = Nearest.to(id, known).map(n -> " Did you mean \"" + n + "\"?").orElse("");
        String few =
                known.isEmpty()
                        ? " There are none."
                        : " There are: " + String.join(", ", known) + ".";
        String there = known.size() <= FEW ? few : " The command \"" + command + "\" lists all.";
        return new UsageException("There is no " + kind + " \"" + id + "\"." + near + there);
    }
}
