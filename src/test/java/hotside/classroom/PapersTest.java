// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.classroom.Papers.Form;
import hotside.classroom.ProblemSet.Numbers;
import hotside.classroom.Roster.Learner;
import hotside.page.Maths;
import hotside.page.PaperSheet;
import hotside.problem.Answers;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.unit.DecimalHabit;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

class PapersTest {
    private static final Learner KIM = new Learner("K7", "Kim <b> & \"Co\"", "evening");
    private static final Maths MATHS = new Maths();

    private final Regrader regrader = new Regrader(Classes.set(Numbers.OWN), Classes.BANK);
    private final Papers papers = new Papers(regrader, MATHS);
    @TempDir private Path folder;

    private static String text(PDDocument pdf) throws IOException {
        return new PDFTextStripper().getText(pdf).replaceAll("[\\s\u00a0]+", " ");
    }

    private PDDocument pdf(String xhtml) throws IOException {
        Papers.file(folder.resolve("x"), Form.PDF, xhtml);
        return Loader.loadPDF(folder.resolve("x.pdf").toFile());
    }

    @Test
    void thePaperHoldsEveryProblemItsCodeAndNoAnswer() throws IOException {
        try (PDDocument pdf = pdf(papers.paper(KIM))) {
            String text = text(pdf);
            assertTrue(text.contains(regrader.set().paperCode("K7")), text);
            assertTrue(text.contains("Kim <b> & \"Co\""), text);
            for (int slot = 0; slot < 3; slot++) {
                Variant variant = regrader.variant("K7", slot);
                assertTrue(text.contains(variant.template().title()), text);
                variant.shown()
                        .values()
                        .forEach(
                                given ->
                                        assertTrue(
                                                text.contains(given.replace('\u00a0', ' ')),
                                                given + " in " + text));
                for (int i = 0; i < variant.answers().size(); i++) {
                    assertFalse(text.contains(Answers.told(variant, i)), text);
                }
            }
        }
    }

    @Test
    void theKeyHoldsWhatIsRightAndWhatAMistakeGives() throws IOException {
        try (PDDocument pdf = pdf(papers.key(KIM))) {
            String text = text(pdf);
            Variant variant = regrader.variant("K7", 0);
            assertTrue(text.contains(Answers.told(variant, 0)), text);
            assertTrue(
                    text.contains(Answers.told(variant, 0, variant.answers().get(0).low())), text);
            assertTrue(
                    text.contains(Answers.told(variant, 0, variant.slips().get(0).value())), text);
        }
    }

    /**
     * What ISO 14289-1 asks first: tagged, with title, language and embedded fonts. No checker ran.
     */
    @Test
    void thePdfIsTaggedWithFontsInside() throws IOException {
        try (PDDocument pdf = pdf(papers.paper(KIM))) {
            assertTrue(pdf.getDocumentCatalog().getMarkInfo().isMarked());
            assertEquals("en", pdf.getDocumentCatalog().getLanguage());
            assertEquals("Gates and pipes", pdf.getDocumentInformation().getTitle());
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                }
            }
        }
    }

    @Test
    void everyFormulaHasAnAlternativeInWords() throws IOException {
        String xhtml = papers.paper(KIM);
        long formulas = Pattern.compile("<math ").matcher(xhtml).results().count();
        assertTrue(formulas > 0);
        assertEquals(
                formulas, Pattern.compile("<math alt=\"[^\"]+\"").matcher(xhtml).results().count());
        try (PDDocument pdf = pdf(xhtml)) {
            long alternatives =
                    pdf.getDocument().getXrefTable().keySet().stream()
                            .map(key -> object(pdf, key))
                            .filter(
                                    object ->
                                            object instanceof COSDictionary d
                                                    && d.containsKey(COSName.ALT))
                            .count();
            assertEquals(formulas, alternatives);
        }
    }

    private static org.apache.pdfbox.cos.COSBase object(
            PDDocument pdf, org.apache.pdfbox.cos.COSObjectKey key) {
        return pdf.getDocument().getObjectFromPool(key).getObject();
    }

    @Test
    void pagesAreWellFormedAndLoadNothing() throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        for (String xhtml : List.of(papers.paper(KIM), papers.key(KIM))) {
            factory.newDocumentBuilder().parse(new InputSource(new StringReader(xhtml)));
            assertFalse(Pattern.compile("(src|href)=|url\\(").matcher(xhtml).find());
        }
    }

    /** Whatever stands before it, a curve is not torn: its colour is on one page alone. */
    @Test
    void aChartInAReportStaysOnOnePage() throws IOException {
        for (int before = 2; before <= 5; before++) {
            List<ProblemSet.Item> items =
                    Stream.concat(
                                    Stream.of(
                                                    "exhaust-of-a-power",
                                                    "next-size-up",
                                                    "push-of-the-signal",
                                                    "a-wider-seat",
                                                    "a-share-of-the-boost")
                                            .limit(before),
                                    Stream.of("flow-at-a-limit"))
                            .map(id -> Composer.item(Classes.BANK.find(id).orElseThrow(), 1))
                            .toList();
            ProblemSet one = Classes.set(Numbers.OWN);
            ProblemSet set =
                    new ProblemSet(one.id(), 1, one.title(), one.generator(), one.rules(), items);
            Regrader marking = new Regrader(set, Classes.BANK);
            MarkedHandIn in =
                    marking.mark("paper", "K7", Map.of(), DecimalHabit.POINT, Classes.END);
            try (PDDocument pdf = pdf(new Papers(marking, MATHS).report(KIM, in))) {
                PDFRenderer renderer = new PDFRenderer(pdf);
                int coloured = 0;
                for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                    coloured += isColoured(renderer.renderImage(page)) ? 1 : 0;
                }
                assertEquals(1, coloured, before + " problems before it");
            }
        }
    }

    private static boolean isColoured(BufferedImage image) {
        return Arrays.stream(
                        image.getRGB(
                                0,
                                0,
                                image.getWidth(),
                                image.getHeight(),
                                null,
                                0,
                                image.getWidth()))
                .anyMatch(rgb -> Math.abs((rgb >> 16 & 0xff) - (rgb & 0xff)) > 80);
    }

    @Test
    void theReportShowsAnswersAsTextWhateverTheyHold() throws IOException {
        Map<Integer, List<String>> answers =
                Map.of(0, List.of("<img src=x>"), 1, Classes.right(regrader.variant("K7", 1)));
        MarkedHandIn in = regrader.mark("paper", "K7", answers, DecimalHabit.POINT, Classes.END);
        try (PDDocument pdf = pdf(papers.report(KIM, in))) {
            String text = text(pdf);
            assertTrue(text.contains("Your answer: <img src=x>"), text);
            assertTrue(text.contains("Together: 2 of 6"), text);
            assertTrue(text.contains("No answer."), text);
        }
    }

    @Test
    void everybodyGetsPaperAndKeyAndAStopLeavesWholeFilesOnly() throws IOException {
        Roster roster =
                Roster.of(
                        IntStream.range(0, 4).mapToObj(i -> new Learner("L" + i, "", "")).toList());
        papers.write(folder, roster, EnumSet.of(Form.HTML), Watch.NONE);
        assertEquals(4, names("papers").size());
        assertEquals(4, names("keys").size());
        assertEquals(5, Files.readAllLines(folder.resolve("codes.csv")).size());
        Path other = folder.resolve("other");
        assertThrows(
                StoppedException.class,
                () -> papers.write(other, roster, EnumSet.of(Form.HTML), (done, all) -> done < 2));
        assertEquals(2, names("other/papers").size());
        assertFalse(Files.exists(other.resolve("codes.csv")));
    }

    private List<String> names(String inside) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(inside))) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    /** A problem with a chart and one with options, on paper. */
    @Test
    void chartsAndOptionsArePrinted() throws IOException {
        List<Template> templates =
                Stream.of(Template.Kind.GRAPH, Template.Kind.ORDER, Template.Kind.CHOICE)
                        .flatMap(
                                kind ->
                                        Classes.BANK.all().stream()
                                                .filter(t -> t.kind() == kind)
                                                .limit(1))
                        .toList();
        ProblemSet set =
                new ProblemSet(
                        "kinds",
                        1,
                        "Kinds",
                        1,
                        Classes.set(Numbers.OWN).rules(),
                        templates.stream().map(t -> Composer.item(t, 1)).toList());
        Regrader all = new Regrader(set, Classes.BANK);
        Papers kinds = new Papers(all, MATHS);
        try (PDDocument pdf = pdf(kinds.paper(KIM))) {
            String text = text(pdf);
            for (int slot = 1; slot < 3; slot++) {
                all.variant("K7", slot)
                        .lettered()
                        .forEach(
                                option ->
                                        assertTrue(
                                                text.contains(
                                                        option.text()
                                                                .replaceAll("[\\s\u00a0]+", " ")),
                                                option.text() + " in " + text));
            }
            assertTrue(text.contains("Answer, all letters, the first first:"), text);
            String svg = PaperSheet.charts(all.variant("K7", 0)).get(0);
            assertFalse(PaperSheet.told(svg).isEmpty());
            assertTrue(
                    kinds.paper(KIM).contains("<svg alt=\"" + PaperSheet.told(svg)),
                    "a chart, with words");
        }
        try (PDDocument pdf = pdf(kinds.key(KIM))) {
            assertTrue(text(pdf).contains(Answers.key(all.variant("K7", 2), 0) + ":"));
        }
    }
}
