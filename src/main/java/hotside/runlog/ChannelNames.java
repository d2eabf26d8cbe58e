// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import hotside.content.Nearest;
import hotside.unit.Reference;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How loggers spell what they measure, read from {@code channels.txt} beside this class. */
final class ChannelNames {
    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final Pattern MARK =
            Pattern.compile(
                    "(?U)(?i)\\b(?:(?<gauge>gauge|gage|relative|rel|relativ)|(?<absolute>absolute|abs|absolut))\\b");

    private final Map<String, Meaning> byKey = new HashMap<>();
    private final Map<String, String> spellings = new LinkedHashMap<>();

    /**
     * What a name says.
     *
     * @param channel what is measured
     * @param unmarked the zero meant where no other is said; NONE if it is no pressure
     * @param marked the zero that the name itself says; NONE if it says none
     */
    record Meaning(Channel channel, Reference unmarked, Reference marked) {}

    ChannelNames() {
        try (InputStream in = ChannelNames.class.getResourceAsStream("channels.txt")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .forEach(this::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void add(String line) {
        int colon = line.indexOf(':');
        String[] head = line.substring(0, colon).split(" ");
        Channel channel = Channel.byId(head[0]).orElseThrow();
        Reference unmarked =
                head.length == 1
                        ? Reference.NONE
                        : Reference.valueOf(head[1].toUpperCase(Locale.ROOT));
        Meaning meaning = new Meaning(channel, unmarked, Reference.NONE);
        byKey.putIfAbsent(key(channel.id()), meaning);
        byKey.putIfAbsent(key(channel.heading()), meaning);
        for (String spelling : line.substring(colon + 1).split("\\|")) {
            byKey.put(key(spelling), meaning);
            spellings.put(spelling.strip(), spelling.strip());
        }
    }

    /** What a name without a unit means. */
    Optional<Meaning> find(String name) {
        Meaning whole = byKey.get(key(name));
        if (whole != null) {
            return Optional.of(whole);
        }
        Matcher mark = MARK.matcher(name);
        if (!mark.find()) {
            return Optional.empty();
        }
        Reference said = mark.group("gauge") != null ? Reference.GAUGE : Reference.ABSOLUTE;
        Meaning bare = byKey.get(key(mark.replaceFirst(" ")));
        return Optional.ofNullable(bare)
                .filter(m -> m.unmarked != Reference.NONE)
                .map(m -> new Meaning(m.channel, m.unmarked, said));
    }

    /** The known spelling nearest to a name. */
    Optional<String> nearest(String name) {
        return Nearest.to(name.strip().toLowerCase(Locale.ROOT), spellings.keySet());
    }

    private static String key(String name) {
        return SIGNS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
    }
}
