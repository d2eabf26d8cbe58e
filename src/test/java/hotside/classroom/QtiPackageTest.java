// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import hotside.classroom.ProblemSet.Feedback;
import hotside.classroom.ProblemSet.Numbers;
import hotside.classroom.ProblemSet.Rules;
import hotside.page.Maths;
import hotside.problem.Answers;
import hotside.problem.Ask;
import hotside.problem.Lettered;
import hotside.problem.Marker;
import hotside.problem.Template;
import hotside.problem.Variant;
import hotside.problem.Variants;
import hotside.problem.Verdict;
import hotside.unit.DecimalHabit;
import hotside.unit.UnitSystem;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

/** Every shipped problem goes out as a package and is marked there as the tutor marks it. */
class QtiPackageTest {
    private static final Maths MATHS = new Maths();
    private static final int VARIANTS = 2;
    private static final Set<Template.Kind> WORKED =
            EnumSet.of(Template.Kind.NUMBER, Template.Kind.STEPS);

    /**
     * The official schemas may be put there by hand; they may not be passed on with this program.
     */
    private static final Path OFFICIAL = Path.of("shared", "qti-xsd");

    /** As many as one set holds, those that are not worked out first. */
    private static Regrader regrader(UnitSystem system) {
        List<Template> numbers =
                Stream.concat(
                                Classes.BANK.all().stream().filter(t -> !WORKED.contains(t.kind())),
                                Classes.BANK.all().stream().filter(t -> WORKED.contains(t.kind())))
                        .limit(ProblemSet.MOST_ITEMS)
                        .toList();
        return new Regrader(
                new ProblemSet(
                        "1-all",
                        1,
                        "All & <everything>",
                        Variants.GENERATOR_VERSION,
                        new Rules(system, Numbers.OWN, 0, true, Feedback.NOW, Optional.empty()),
                        numbers.stream().map(t -> Composer.item(t, 3)).toList()),
                Classes.BANK);
    }

    private static byte[] bytes(Regrader regrader) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new QtiPackage(regrader, VARIANTS, MATHS).write(out);
        return out.toByteArray();
    }

    private static Map<String, byte[]> read(byte[] zip) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                files.put(entry.getName(), in.readAllBytes());
            }
        }
        return files;
    }

    private static Element parsed(byte[] xml) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        return factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(xml))
                .getDocumentElement();
    }

    private static Schema schema(String name) throws SAXException {
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "");
        return factory.newSchema(new StreamSource(QtiPackageTest.class.getResourceAsStream(name)));
    }

    private static void validate(Schema schema, String name, byte[] xml) throws IOException {
        try {
            schema.newValidator().validate(new StreamSource(new ByteArrayInputStream(xml)));
        } catch (SAXException e) {
            throw new AssertionError(name + ": " + e.getMessage(), e);
        }
    }

    @Test
    void everyFileFollowsTheProfile() throws Exception {
        Schema profile = schema("qti-profile.xsd");
        Map<String, byte[]> files = read(bytes(regrader(UnitSystem.SI_SHOP)));
        validate(schema("manifest-profile.xsd"), "manifest", files.remove("imsmanifest.xml"));
        files.keySet().removeIf(name -> name.endsWith(".svg"));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            validate(profile, file.getKey(), file.getValue());
        }
    }

    /** A schema that accepts everything would prove nothing. */
    @Test
    void theProfileRefusesWhatIsOutOfOrder() throws Exception {
        Map<String, byte[]> files = read(bytes(regrader(UnitSystem.SI_SHOP)));
        String item =
                files.values().stream()
                        .map(xml -> new String(xml, java.nio.charset.StandardCharsets.UTF_8))
                        .filter(xml -> xml.contains("<qti-equal"))
                        .findFirst()
                        .orElseThrow();
        for (String[] change :
                new String[][] {
                    {"tolerance-mode=\"absolute\"", "tolerance-mode=\"relative\""},
                    {
                        "<qti-assessment-item(.*) identifier=\"p",
                        "<qti-assessment-item$1 identifier=\"1p"
                    },
                    {"<qti-item-body>", "<qti-stylesheet/><qti-item-body>"},
                    {"base-type=\"float\"", "base-type=\"number\""}
                }) {
            assertNotEquals(item, item.replaceFirst(change[0], change[1]), change[0]);
            byte[] changed =
                    item.replaceFirst(change[0], change[1])
                            .getBytes(java.nio.charset.StandardCharsets.UTF_8);
            assertThrows(
                    AssertionError.class,
                    () -> validate(schema("qti-profile.xsd"), "changed", changed));
        }
    }

    @Test
    void theManifestNamesEveryFileAndTheTestEveryItem() throws Exception {
        Map<String, byte[]> files = read(bytes(regrader(UnitSystem.SI_SHOP)));
        Element manifest = parsed(files.get("imsmanifest.xml"));
        List<String> named = new ArrayList<>(List.of("imsmanifest.xml"));
        for (Element resource :
                QtiPlayer.elements(QtiPlayer.children(manifest, "resources").get(0))) {
            QtiPlayer.children(resource, "file").forEach(f -> named.add(f.getAttribute("href")));
        }
        assertEquals(Set.copyOf(files.keySet()), Set.copyOf(named));
        assertTrue(named.stream().anyMatch(name -> name.endsWith(".svg")), "charts go along");
        Element test = parsed(files.get("test.xml"));
        List<String> items = new ArrayList<>();
        for (Element section :
                QtiPlayer.elements(QtiPlayer.children(test, "qti-test-part").get(0))) {
            QtiPlayer.children(section, "qti-assessment-item-ref")
                    .forEach(ref -> items.add(ref.getAttribute("href")));
        }
        assertEquals(named.stream().filter(n -> n.matches("items/.*\\.xml")).toList(), items);
    }

    @Test
    void theSameSetGivesTheSameBytes() throws IOException {
        assertArrayEquals(bytes(regrader(UnitSystem.SI_SHOP)), bytes(regrader(UnitSystem.SI_SHOP)));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void aPlayerMarksAsTheTutorDoes(UnitSystem system) throws Exception {
        Regrader regrader = regrader(system);
        Map<String, byte[]> files = read(bytes(regrader));
        for (int slot = 0; slot < regrader.set().items().size(); slot++) {
            for (int v = 1; v <= VARIANTS; v++) {
                Variant variant = regrader.variant("export-" + v, slot);
                String name = "items/p" + (slot + 1) + "-v" + v + ".xml";
                if (variant.template().kind() == Template.Kind.PLAN) {
                    // No player has a cell to try a plan in.
                    assertFalse(files.containsKey(name), name);
                    continue;
                }
                Element item = parsed(files.get(name));
                if (variant.lettered().isEmpty()) {
                    new Comparison(variant, item).all();
                } else {
                    letters(variant, item);
                }
            }
        }
    }

    /** Every choice, every selection, every order. */
    private static void letters(Variant variant, Element item) {
        List<String> letters = variant.lettered().stream().map(Lettered::letter).toList();
        assertEquals(0, QtiPlayer.play(item, List.of("")).score());
        List<String> answers =
                switch (variant.template().kind()) {
                    case ORDER -> orders(letters);
                    case SEVERAL -> selections(letters);
                    default -> letters;
                };
        for (String answer : answers) {
            Verdict verdict =
                    Marker.mark(variant, List.of(answer), DecimalHabit.POINT).get(0).orElseThrow();
            QtiPlayer.Outcome outcome = QtiPlayer.play(item, List.of(answer));
            String where = variant.template().id() + " seed " + variant.seed() + ": " + answer;
            assertEquals(verdict.kind() == Verdict.Kind.RIGHT ? 1 : 0, outcome.score(), where);
            if (letters.contains(answer) && answers.size() == letters.size()) {
                assertEquals(List.of(verdict.feedback()), outcome.feedback(), where);
            }
        }
    }

    private static List<String> orders(List<String> letters) {
        if (letters.size() == 1) {
            return letters;
        }
        List<String> orders = new ArrayList<>();
        for (String first : letters) {
            List<String> rest = letters.stream().filter(l -> !l.equals(first)).toList();
            orders(rest).forEach(order -> orders.add(first + " " + order));
        }
        return orders;
    }

    private static List<String> selections(List<String> letters) {
        List<String> selections = new ArrayList<>();
        for (int bits = 1; bits < 1 << letters.size(); bits++) {
            List<String> taken = new ArrayList<>();
            for (int i = 0; i < letters.size(); i++) {
                if ((bits >> i & 1) == 1) {
                    taken.add(letters.get(i));
                }
            }
            selections.add(String.join(" ", taken));
        }
        return selections;
    }

    /** One variant by tutor and by player. */
    private record Comparison(Variant variant, Element item) {
        void all() {
            int asks = variant.template().asks().size();
            List<String> blank = Collections.nCopies(asks, "");
            List<String> right = new ArrayList<>();
            for (int i = 0; i < asks; i++) {
                right.add(number(i, variant.answers().get(i).value()));
            }
            assertEquals(asks, QtiPlayer.play(item, right).score(), where());
            QtiPlayer.Outcome nothing = QtiPlayer.play(item, blank);
            assertEquals(0, nothing.score(), where());
            for (int i = 0; i < asks; i++) {
                edges(i, blank);
            }
            slips(blank);
        }

        private void edges(int ask, List<String> blank) {
            Variant.Answer right = variant.answers().get(ask);
            for (double share : new double[] {-0.999, 0.999, -1.01, 1.01}) {
                double value = right.value() + share * right.band();
                QtiPlayer.Outcome outcome =
                        QtiPlayer.play(item, with(blank, ask, number(ask, value)));
                assertEquals(
                        Math.abs(share) < 1 ? 1 : 0, outcome.score(), where() + " at " + share);
            }
        }

        /** Each mistake to the figures in which a learner would give it. */
        private void slips(List<String> blank) {
            for (Variant.Slipped slip : variant.slips()) {
                int ask = slip.ask();
                String told = Answers.told(variant, ask, slip.value());
                Verdict verdict =
                        Marker.mark(variant, with(blank, ask, told), DecimalHabit.POINT)
                                .get(ask)
                                .orElseThrow();
                QtiPlayer.Outcome outcome =
                        QtiPlayer.play(item, with(blank, ask, number(ask, slip.value())));
                assertEquals(0, outcome.score(), where() + slip.mistake().id());
                if (verdict.kind() == Verdict.Kind.MISTAKE) {
                    assertTrue(
                            outcome.feedback().contains(verdict.feedback()),
                            where() + slip.mistake().id() + outcome.feedback());
                }
            }
        }

        private String number(int ask, double si) {
            Ask asked = variant.template().asks().get(ask);
            return String.valueOf(
                    asked.scale(variant.system()).fromSi(si, asked.quantity(), variant.ambient()));
        }

        private static List<String> with(List<String> answers, int ask, String answer) {
            List<String> changed = new ArrayList<>(answers);
            changed.set(ask, answer);
            return changed;
        }

        private String where() {
            return variant.template().id() + " seed " + variant.seed() + " " + variant.system();
        }
    }

    @Test
    void variantsAreOneToTwoHundred() {
        Regrader regrader = regrader(UnitSystem.SI_SHOP);
        assertThrows(IllegalArgumentException.class, () -> new QtiPackage(regrader, 0, MATHS));
        assertThrows(IllegalArgumentException.class, () -> new QtiPackage(regrader, 201, MATHS));
    }

    @Test
    void theOfficialSchemasAcceptItWhereTheyAreAtHand() throws Exception {
        assumeTrue(
                Files.isDirectory(OFFICIAL),
                "The official QTI 3.0 schemas are not in "
                        + OFFICIAL
                        + ", so this check is left out.");
        Path[] schemas;
        try (var list = Files.list(OFFICIAL)) {
            schemas =
                    list.filter(f -> f.getFileName().toString().startsWith("imsqti_asi"))
                            .collect(Collectors.toList())
                            .toArray(new Path[0]);
        }
        SchemaFactory factory = SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI);
        factory.setProperty(XMLConstants.ACCESS_EXTERNAL_SCHEMA, "file");
        Schema official = factory.newSchema(schemas[0].toFile());
        Map<String, byte[]> files = read(bytes(regrader(UnitSystem.SI_SHOP)));
        files.remove("imsmanifest.xml");
        files.keySet().removeIf(name -> name.endsWith(".svg"));
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            validate(official, file.getKey(), file.getValue());
        }
    }
}
