// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.WholeFile;
import hotside.page.Html;
import hotside.page.Maths;
import hotside.page.PaperSheet;
import hotside.problem.PullMeans;
import hotside.problem.Variant;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A set as a QTI 3.0 package (1EdTech): for each problem a section of frozen variants, of which the
 * player gives every learner one. The same set gives the same bytes.
 */
public final class QtiPackage {
    /** More would only swell the package. */
    public static final int MOST_VARIANTS = 200;

    private static final String MANIFEST_NAMESPACE =
            "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1";

    /** The oldest time that a zip entry can bear, so that no clock gets into the package. */
    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final Regrader regrader;
    private final int variants;
    private final Map<String, String> files = new LinkedHashMap<>();
    private final List<List<String>> sections = new ArrayList<>();
    private final Map<String, List<String>> pictures = new LinkedHashMap<>();
    private final List<String> leftOut = new ArrayList<>();

    /**
     * @param variants how many of each problem, 1 to {@link #MOST_VARIANTS}
     */
    public QtiPackage(Regrader regrader, int variants, Maths maths) {
        if (variants < 1 || variants > MOST_VARIANTS) {
            throw new IllegalArgumentException(
                    ClassWords.of("export.variants", MOST_VARIANTS, variants));
        }
        this.regrader = regrader;
        this.variants = variants;
        PaperSheet sheet = new PaperSheet(maths);
        for (int slot = 0; slot < regrader.set().items().size(); slot++) {
            section(slot, sheet);
        }
    }

    private void section(int slot, PaperSheet sheet) {
        List<String> ids = new ArrayList<>();
        for (int v = 1; v <= variants; v++) {
            // A pseudonym for each variant gives it numbers like a learner's.
            Variant variant = regrader.variant("export-" + v, slot);
            String id = "p" + (slot + 1) + "-v" + v;
            boolean lettered = variant.template().kind().isLettered();
            boolean fits =
                    lettered ? QtiLetters.fits(variant) : variant.template().kind().isNumeric();
            if (fits) {
                String pictures = pictures(id, variant);
                files.put(
                        "items/" + id + ".xml",
                        lettered
                                ? new QtiLetters(id, variant, sheet, pictures).xml()
                                : new QtiItem(id, variant, sheet, pictures).xml());
                ids.add(id);
            }
        }
        if (ids.isEmpty()) {
            leftOut.add(regrader.template(slot).id());
        }
        sections.add(ids);
    }

    /** Puts the charts of a variant beside it; markup that shows them. */
    private String pictures(String id, Variant variant) {
        StringBuilder out =
                new StringBuilder(PullMeans.of(variant).map(QtiPackage::rows).orElse(""));
        List<String> names = new ArrayList<>();
        for (String svg : PaperSheet.charts(variant)) {
            String name = id + "-" + (names.size() + 1) + ".svg";
            names.add("items/" + name);
            files.put("items/" + name, svg);
            out.append("<p><img src=\"")
                    .append(name)
                    .append("\" alt=\"")
                    .append(PaperSheet.told(svg))
                    .append("\"/></p>\n");
        }
        pictures.put(id, names);
        return out.toString();
    }

    /** The means of pulls, a paragraph for each. */
    private static String rows(PullMeans means) {
        return java.util.stream.Stream.concat(
                        java.util.stream.Stream.of(means.heads()), means.rows().stream())
                .map(row -> "<p>" + Html.escape(String.join(" | ", row)) + "</p>\n")
                .collect(java.util.stream.Collectors.joining());
    }

    /** Problems that a player could not mark, by id. */
    public List<String> leftOut() {
        return List.copyOf(leftOut);
    }

    public void write(Path file) throws IOException {
        WholeFile.stream(file, this::write);
    }

    void write(OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        entry(zip, "imsmanifest.xml", manifest());
        entry(zip, "test.xml", test());
        for (Map.Entry<String, String> file : files.entrySet()) {
            entry(zip, file.getKey(), file.getValue());
        }
        zip.finish();
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        zip.putNextEntry(entry);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private String test() {
        ProblemSet set = regrader.set();
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.append("<qti-assessment-test xmlns=\"")
                .append(QtiItem.NAMESPACE)
                .append("\" identifier=\"")
                .append(name())
                .append("\" title=\"")
                .append(Html.escape(set.title()))
                .append(
                        "\">\n<qti-outcome-declaration identifier=\"SCORE\" cardinality=\"single\" base-type=\"float\"/>\n<qti-test-part identifier=\"part\" navigation-mode=\"nonlinear\" submission-mode=\"simultaneous\">\n");
        for (int slot = 0; slot < sections.size(); slot++) {
            if (!sections.get(slot).isEmpty()) {
                section(slot, out);
            }
        }
        out.append(
                "</qti-test-part>\n<qti-outcome-processing><qti-set-outcome-value identifier=\"SCORE\"><qti-sum><qti-test-variables variable-identifier=\"SCORE\" weight-identifier=\"POINTS\"/></qti-sum></qti-set-outcome-value></qti-outcome-processing>\n");
        return out.append("</qti-assessment-test>\n").toString();
    }

    private void section(int slot, StringBuilder out) {
        int asks = regrader.template(slot).asks().size();
        double weight = (double) regrader.set().items().get(slot).points() / asks;
        out.append("<qti-assessment-section identifier=\"problem-")
                .append(slot + 1)
                .append("\" title=\"")
                .append(Html.escape(regrader.template(slot).title()))
                .append("\" visible=\"true\"><qti-selection select=\"1\"/>\n");
        for (String id : sections.get(slot)) {
            out.append("<qti-assessment-item-ref identifier=\"")
                    .append(id)
                    .append("\" href=\"items/")
                    .append(id)
                    .append(".xml\"><qti-weight identifier=\"POINTS\" value=\"")
                    .append(weight)
                    .append("\"/></qti-assessment-item-ref>\n");
        }
        out.append("</qti-assessment-section>\n");
    }

    private String manifest() {
        StringBuilder out = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        out.append("<manifest xmlns=\"")
                .append(MANIFEST_NAMESPACE)
                .append("\" identifier=\"manifest-")
                .append(name())
                .append(
                        "\">\n<metadata><schema>QTI Package</schema><schemaversion>3.0.0</schemaversion></metadata>\n<organizations/>\n<resources>\n");
        out.append(
                "<resource identifier=\"test\" type=\"imsqti_test_xmlv3p0\" href=\"test.xml\"><file href=\"test.xml\"/>");
        sections.stream()
                .flatMap(List::stream)
                .forEach(id -> out.append("<dependency identifierref=\"item-" + id + "\"/>"));
        out.append("</resource>\n");
        sections.stream().flatMap(List::stream).forEach(id -> resource(id, out));
        return out.append("</resources>\n</manifest>\n").toString();
    }

    private void resource(String id, StringBuilder out) {
        String item = "items/" + id + ".xml";
        out.append("<resource identifier=\"item-")
                .append(id)
                .append("\" type=\"imsqti_item_xmlv3p0\" href=\"")
                .append(item)
                .append("\"><file href=\"")
                .append(item)
                .append("\"/>");
        pictures.get(id).forEach(name -> out.append("<file href=\"" + name + "\"/>"));
        out.append("</resource>\n");
    }

    /** An XML name begins with a letter; ids may begin with a digit. */
    private String name() {
        return "set-" + regrader.set().id() + "-" + regrader.set().edition();
    }
}
