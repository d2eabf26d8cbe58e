// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.classroom.Roster.Learner;
import hotside.content.WholeFile;
import hotside.page.Html;
import hotside.page.Maths;
import hotside.page.PaperSheet;
import hotside.page.Pdf;
import hotside.page.Words;
import hotside.problem.Variant;
import hotside.unit.DecimalHabit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Set;

/**
 * A set on paper: for each learner the problems with lines to write on, and the key with the
 * marking sheet. One paper after the other is in memory, however large the class.
 */
public final class Papers {
    private final Regrader regrader;
    private final PaperSheet sheet;

    public Papers(Regrader regrader, Maths maths) {
        this.regrader = regrader;
        this.sheet = new PaperSheet(maths);
    }

    /** Sorts of file. */
    public enum Form {
        HTML,
        PDF
    }

    /**
     * Writes papers and keys of everybody into a folder, with {@code codes.csv}. What is there
     * under the same names is replaced; each file is whole or not there.
     *
     * @throws StoppedException if the watch says so; what was written stays
     */
    public void write(Path folder, Roster roster, Set<Form> forms, Watch watch) throws IOException {
        int done = 0;
        int all = roster.all().size();
        for (Learner learner : roster.all()) {
            String name = learner.id() + "-" + regrader.set().paperCode(learner.id());
            String paper = paper(learner);
            String key = key(learner);
            for (Form form : forms) {
                file(folder.resolve("papers").resolve("paper-" + name), form, paper);
                file(folder.resolve("keys").resolve("key-" + name), form, key);
            }
            done++;
            if (!watch.goOn(done, all) && done < all) {
                throw new StoppedException();
            }
        }
        WholeFile.write(
                folder.resolve("codes.csv"), codes(roster).getBytes(StandardCharsets.UTF_8));
    }

    /** A file of this form; its name gets the form's ending. */
    static void file(Path stem, Form form, String xhtml) throws IOException {
        Path file =
                stem.resolveSibling(
                        stem.getFileName() + "." + form.name().toLowerCase(Locale.ROOT));
        if (form == Form.HTML) {
            WholeFile.write(file, ("<!DOCTYPE html>" + xhtml).getBytes(StandardCharsets.UTF_8));
        } else {
            WholeFile.stream(file, out -> Pdf.write(xhtml, out));
        }
    }

    /** Who has which code. */
    private String codes(Roster roster) {
        StringBuilder out = new StringBuilder();
        CsvText csv = new CsvText(out);
        csv.row(java.util.List.of("learner_id", "display_name", "group", "code"));
        roster.all()
                .forEach(
                        l ->
                                csv.row(
                                        java.util.List.of(
                                                l.id(),
                                                l.name(),
                                                l.group(),
                                                regrader.set().paperCode(l.id()))));
        return out.toString();
    }

    /** A learner's problems, XHTML. */
    public String paper(Learner learner) {
        StringBuilder body = new StringBuilder(head(regrader.set().title(), learner));
        for (int slot = 0; slot < regrader.set().items().size(); slot++) {
            body.append(sheet.toAnswer(slot + 1, points(slot), variant(learner, slot)));
        }
        return document(regrader.set().title(), learner, body);
    }

    /** A learner's key with boxes for marks, XHTML. */
    public String key(Learner learner) {
        String title = Words.of("paper.key-title", regrader.set().title());
        StringBuilder body = new StringBuilder(head(title, learner));
        body.append("<p class=\"quiet\">")
                .append(Html.escape(Words.of("paper.method")))
                .append("</p>");
        for (int slot = 0; slot < regrader.set().items().size(); slot++) {
            body.append(sheet.key(slot + 1, points(slot), variant(learner, slot)));
        }
        body.append("<div class=\"problem\"><h2>")
                .append(Html.escape(Words.of("paper.total")))
                .append(": ______ ")
                .append(Html.escape(Words.of("paper.of", "", regrader.set().points()).strip()))
                .append("</h2></div>");
        return document(title, learner, body);
    }

    /** What a learner is told of marked work, XHTML. */
    public String report(Learner learner, MarkedHandIn in) {
        String title = Words.of("paper.report-title", regrader.set().title());
        StringBuilder body = new StringBuilder(head(title, learner));
        body.append("<p>")
                .append(
                        Html.escape(
                                Words.of("paper.total")
                                        + ": "
                                        + Words.of(
                                                "paper.of",
                                                number(in.reached()),
                                                regrader.set().points())))
                .append("</p><p class=\"quiet\">")
                .append(Html.escape(Words.of("paper.sealed")))
                .append("</p>");
        for (int slot = 0; slot < in.items().size(); slot++) {
            MarkedItem item = in.items().get(slot);
            body.append(
                    sheet.marked(
                            slot + 1,
                            points(slot),
                            variant(learner, slot),
                            item.answers(),
                            item.verdicts(),
                            reached(item)));
        }
        return document(title, learner, body);
    }

    /** Points set by hand never hide what was worked out. */
    private static String reached(MarkedItem item) {
        String points =
                Words.of("paper.reached")
                        + ": "
                        + Words.of("paper.of", number(item.reached()), item.points());
        return item.byHand()
                .map(
                        hand ->
                                points
                                        + Words.of(
                                                "paper.by-hand",
                                                number(item.worked()),
                                                hand.reason()))
                .orElse(points);
    }

    /** Writes a report for each learner whose work was marked. */
    public void reports(Path folder, ClassResult result, Set<Form> forms, Watch watch)
            throws IOException {
        int done = 0;
        for (MarkedHandIn in : result.marked()) {
            Learner learner =
                    result.roster()
                            .find(in.learner())
                            .orElseGet(() -> new Learner(in.learner(), in.learner(), ""));
            String report = report(learner, in);
            for (Form form : forms) {
                file(folder.resolve("report-" + in.learner()), form, report);
            }
            done++;
            if (!watch.goOn(done, result.marked().size()) && done < result.marked().size()) {
                throw new StoppedException();
            }
        }
    }

    private static String number(double points) {
        return DecimalHabit.spoken()
                .write(String.format(Locale.ROOT, "%.2f", points).replaceAll("\\.?0+$", ""));
    }

    private int points(int slot) {
        return regrader.set().items().get(slot).points();
    }

    private Variant variant(Learner learner, int slot) {
        return regrader.variant(learner.id(), slot);
    }

    private String head(String title, Learner learner) {
        ProblemSet set = regrader.set();
        String named = learner.name().equals(learner.id()) ? "" : learner.name();
        return "<h1>"
                + Html.escape(title)
                + "</h1><table class=\"head\"><tbody><tr>"
                + cell("paper.name", named)
                + cell("paper.learner", learner.id())
                + "</tr><tr>"
                + cell("paper.code", set.paperCode(learner.id()))
                + "<td>"
                + Html.escape(Words.of("paper.set", set.id(), set.edition()))
                + set.rules()
                        .due()
                        .map(due -> "<br/>" + Html.escape(Words.of("paper.due", date(due))))
                        .orElse("")
                + "</td></tr></tbody></table>";
    }

    /** In the zone of this machine: a paper is for people nearby. */
    private static String date(Instant due) {
        return DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
                .withZone(ZoneId.systemDefault())
                .format(due);
    }

    private static String cell(String word, String text) {
        return "<td>"
                + Html.escape(Words.of(word))
                + ": <span class=\"code\">"
                + Html.escape(text)
                + "</span></td>";
    }

    private String document(String title, Learner learner, StringBuilder body) {
        return PaperSheet.document(
                title,
                learner.id() + " · " + regrader.set().paperCode(learner.id()),
                body.toString());
    }
}
