// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.Optional;

/** Parts a text into front matter and body. */
final class FrontMatter {
    private static final String FENCE = "---";

    private FrontMatter() {}

    static ContentFile split(String path, SafeText safe) {
        String text = safe.text();
        Findings findings = new Findings(path, text);
        safe.report(findings);
        Lines lines = findings.lines();
        if (!isFence(lines.line(1))) {
            findings.add(
                    Place.START,
                    "no front matter",
                    "a first line \"---\", lines \"key: value\", and a line \"---\"",
                    "put \"---\" alone on line 1");
            return none(path, text, findings);
        }
        int close = 2;
        while (close <= lines.count() && !isFence(lines.line(close))) {
            close++;
        }
        if (close > lines.count()) {
            findings.add(
                    Place.START,
                    "the front matter that opens here has no end",
                    "a line \"---\" after the last key",
                    "put \"---\" alone on the line before the text");
            return none(path, text, findings);
        }
        String yaml = text.substring(lines.start(2), lines.start(close));
        Optional<MapNode> front = YamlTree.read(yaml, 1, findings);
        return new ContentFile(
                path,
                text,
                front.orElse(MapNode.empty(Place.START)),
                front.isPresent(),
                text.substring(lines.start(close + 1)),
                close + 1,
                findings);
    }

    /** A file that holds nothing else. */
    static ContentFile all(String path, SafeText safe) {
        Findings findings = new Findings(path, safe.text());
        safe.report(findings);
        Optional<MapNode> front = YamlTree.read(safe.text(), 0, findings);
        return new ContentFile(
                path,
                safe.text(),
                front.orElse(MapNode.empty(Place.START)),
                front.isPresent(),
                "",
                findings.lines().count(),
                findings);
    }

    /** A file whose front matter is missing: all of it is body. */
    static ContentFile none(String path, String text, Findings findings) {
        return new ContentFile(path, text, MapNode.empty(Place.START), false, text, 1, findings);
    }

    private static boolean isFence(String line) {
        return line.startsWith(FENCE) && line.stripTrailing().equals(FENCE);
    }
}
