// SPDX-License-Identifier: Apache-2.0
package hotside.problem;

import hotside.content.ContentFile;
import hotside.content.ContentFolder;
import hotside.content.ContentReader;
import hotside.content.Finding;
import java.util.List;
import java.util.stream.Stream;

/** Problem files for tests: the shipped ones and sound samples beside the tests. */
final class SampleProblems {
    private SampleProblems() {}

    /** Every problem file on the class path, shipped or sample. */
    static List<ContentFile> files() {
        return Stream.of("hotside/problems", "samples/problems")
                .flatMap(folder -> ContentFolder.ofResources(folder).files().stream())
                .toList();
    }

    static Template sample(String id) {
        return ProblemBank.of(ContentFolder.ofResources("samples/problems")).find(id).orElseThrow();
    }

    /** A problem from its text, which must be free of findings. */
    static Template template(String text) {
        ContentFile file = ContentReader.read("problem.md", text);
        return TemplateReader.read(file)
                .orElseThrow(() -> new AssertionError(file.findings().list().toString()));
    }

    /** What is wrong with a problem's text. */
    static List<Finding> findings(String text) {
        ContentFile file = ContentReader.read("problem.md", text);
        TemplateReader.read(file);
        return file.findings().list();
    }

    /** The body that every problem needs, telling these givens. */
    static String body(String... givens) {
        StringBuilder text = new StringBuilder("A rig in the college's workshop:");
        for (String given : givens) {
            text.append(" {{").append(given).append("}}");
        }
        return text + ".\n\n## Hints\n\n1. One.\n2. Two.\n3. Three.\n\n## Why\n\nBecause.\n";
    }
}
