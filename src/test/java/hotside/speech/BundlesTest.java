// SPDX-License-Identifier: Apache-2.0
package hotside.speech;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.catalogue.Catalogue;
import hotside.cell.Stock;
import hotside.course.Diagram;
import hotside.problem.SkillMap;
import hotside.relation.Relation;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bundles of words: a translation says as much as the original, and nobody asks in vain. */
class BundlesTest {
    private static final Path RESOURCES = Path.of("src/main/resources");
    private static final Path SOURCES = Path.of("src/main/java");
    private static final Pattern PLACE = Pattern.compile("\\{[a-z0-9]+}");

    private static final Pattern BUNDLE = Pattern.compile("Phrases\\.of\\(\\s*\"([^\"]+)\"");

    /** Words that only exist where a language has another sign for a unit. */
    private static final String SYMBOL = "symbol.";

    private static Properties read(Path file) {
        Properties words = new Properties();
        load(words, file);
        return words;
    }

    private static void load(Properties words, Path file) {
        try (Reader in = Files.newBufferedReader(file)) {
            words.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(Path folder, String suffix) throws IOException {
        try (Stream<Path> walk = Files.walk(folder)) {
            return walk.filter(path -> path.toString().endsWith(suffix)).sorted().toList();
        }
    }

    static List<Path> germanWithOriginal() throws IOException {
        return files(RESOURCES, "_de.properties").stream()
                .filter(file -> Files.exists(original(file)))
                .toList();
    }

    private static Path original(Path german) {
        String name = german.getFileName().toString();
        return german.resolveSibling(name.replace("_de", ""));
    }

    private static Set<String> places(String text) {
        return PLACE.matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyBundleHasAGermanOne() throws IOException {
        List<Path> without =
                files(RESOURCES, ".properties").stream()
                        .filter(file -> !file.toString().endsWith("_de.properties"))
                        .filter(
                                file ->
                                        Files.notExists(
                                                Path.of(
                                                        file.toString()
                                                                .replace(
                                                                        ".properties",
                                                                        "_de.properties"))))
                        .toList();
        assertEquals(List.of(), without);
        assertTrue(germanWithOriginal().size() >= 5);
    }

    static List<Path> bundles() throws IOException {
        return files(RESOURCES, ".properties");
    }

    /** Of two the first would never be seen. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("bundles")
    void noKeyStandsTwice(Path bundle) {
        List<String> twice = new ArrayList<>();
        Properties words =
                new Properties() {
                    private static final long serialVersionUID = 1;

                    @Override
                    public synchronized Object put(Object key, Object value) {
                        Object before = super.put(key, value);
                        if (before != null) {
                            twice.add(key.toString());
                        }
                        return before;
                    }
                };
        load(words, bundle);
        assertEquals(List.of(), twice);
        assertFalse(words.isEmpty());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("germanWithOriginal")
    void aTranslationHasTheKeysOfTheOriginal(Path german) {
        Set<String> keys = new TreeSet<>(read(german).stringPropertyNames());
        keys.removeIf(key -> key.startsWith(SYMBOL));
        assertEquals(new TreeSet<>(read(original(german)).stringPropertyNames()), keys);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("germanWithOriginal")
    void aTranslationFillsInTheSameAndIsNotEmpty(Path german) {
        Properties words = read(german);
        Properties originals = read(original(german));
        for (String key : originals.stringPropertyNames()) {
            String said = words.getProperty(key, "");
            assertFalse(said.isBlank(), key);
            assertEquals(places(originals.getProperty(key)), places(said), key);
        }
    }

    @Test
    void cardsInGermanAreOfRelationsThatThereAre() {
        Set<String> known = new HashSet<>(Set.of("welch-gain.step.pooled"));
        for (Relation relation : Catalogue.all()) {
            known.add("topic." + relation.topic().toLowerCase().replace(' ', '-'));
            known.addAll(card(relation));
            // What is usual is not said of every slot.
            relation.inputs().forEach(s -> known.add(relation.id() + ".beyond." + s.name()));
        }
        Set<String> odd = unknown("hotside/relation/cards_de.properties", known);
        odd.removeIf(key -> known.contains(withoutCase(key)));
        assertEquals(Set.of(), odd);
    }

    /** A step whose words hang on the case has a key for each. */
    private static String withoutCase(String key) {
        return key.contains(".step.") ? key.replaceFirst("\\.[a-z-]+$", "") : key;
    }

    /** All keys of a relation's card. */
    private static Set<String> card(Relation relation) {
        String id = relation.id();
        Set<String> keys = new LinkedHashSet<>(List.of(id + ".title", id + ".says"));
        Stream.concat(relation.inputs().stream(), relation.outputs().stream())
                .forEach(slot -> keys.add(id + "." + slot.name()));
        relation.inputs().stream()
                .filter(slot -> !slot.usualReason().isEmpty())
                .forEach(slot -> keys.add(id + ".beyond." + slot.name()));
        relation.inputs()
                .forEach(
                        slot ->
                                slot.choices()
                                        .forEach(
                                                c ->
                                                        keys.add(
                                                                id
                                                                        + "."
                                                                        + slot.name()
                                                                        + ".is."
                                                                        + c)));
        for (int i = 1; i <= relation.assumptions().size(); i++) {
            keys.add(id + ".assumes." + i);
        }
        relation.work(relation.typical())
                .steps()
                .forEach(step -> keys.add(id + ".step." + step.name()));
        return keys;
    }

    /** Every relation is told in German from its title to its last step. */
    @ParameterizedTest
    @MethodSource("hotside.catalogue.Catalogue#all")
    void cardsAreWhole(Relation relation) {
        Set<String> said = new HashSet<>();
        read(RESOURCES.resolve("hotside/relation/cards_de.properties"))
                .forEach(
                        (key, words) -> {
                            if (!words.toString().isBlank()) {
                                said.add(key.toString());
                                said.add(withoutCase(key.toString()));
                            }
                        });
        Set<String> wanted = card(relation);
        wanted.removeAll(said);
        assertEquals(Set.of(), wanted);
    }

    @Test
    void allOfTheStockHasGermanNames() {
        Stock stock = Stock.shipped();
        Set<String> names = new TreeSet<>();
        stock.rigs().forEach(rig -> names.add("rig." + rig.id()));
        stock.parts().forEach(part -> names.add("part." + part.id()));
        assertEquals(
                names,
                new TreeSet<>(
                        read(RESOURCES.resolve("hotside/cell/stock_de.properties"))
                                .stringPropertyNames()));
    }

    @Test
    void skillsAndDrawingsAllHaveGermanNames() {
        SkillMap map = SkillMap.shipped();
        Set<String> skills = new HashSet<>(map.strands().keySet());
        map.all().forEach(skill -> skills.add(skill.id()));
        assertEquals(
                new TreeSet<>(skills),
                new TreeSet<>(
                        read(RESOURCES.resolve("hotside/problem/skills_de.properties"))
                                .stringPropertyNames()));
        assertEquals(
                Diagram.all().stream()
                        .map(Diagram::id)
                        .collect(Collectors.toCollection(TreeSet::new)),
                new TreeSet<>(
                        read(RESOURCES.resolve("hotside/course/diagrams_de.properties"))
                                .stringPropertyNames()));
    }

    private static Set<String> unknown(String bundle, Set<String> known) {
        Set<String> keys = new TreeSet<>(read(RESOURCES.resolve(bundle)).stringPropertyNames());
        keys.removeAll(known);
        return keys;
    }

    /**
     * A key is asked for whole, without {@code .one}, or by its beginning up to a dot or hyphen.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("germanWithOriginal")
    void everyKeyIsAskedForSomewhere(Path german) throws IOException {
        Path bundle = original(german);
        Set<String> literals = new HashSet<>();
        Pattern literal = Pattern.compile("\"([a-z][A-Za-z0-9.-]*)\"");
        StringBuilder code = new StringBuilder();
        for (Path source : files(SOURCES, ".java")) {
            code.append(Files.readString(source));
        }
        literal.matcher(code).results().forEach(m -> literals.add(m.group(1)));
        boolean bySort = bundle.toString().matches(".*(slips|misreadings)\\.properties");
        Set<String> idle = new TreeSet<>();
        for (String key : read(bundle).stringPropertyNames()) {
            boolean used =
                    bySort
                            || literals.contains(key)
                            || literals.contains(key.replaceFirst("\\.one$", ""))
                            || literals.stream()
                                    .filter(l -> l.endsWith(".") || l.endsWith("-"))
                                    .anyMatch(l -> l.length() > 3 && key.startsWith(l));
            if (!used) {
                idle.add(key);
            }
        }
        assertEquals(Set.of(), idle);
    }

    static List<Path> classesWithWords() throws IOException {
        return files(SOURCES, "Words.java").stream()
                .filter(file -> BUNDLE.matcher(text(file)).find())
                .toList();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** {@code CourseWords.of("key")}, wherever the class is known by this name. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("classesWithWords")
    void everyWordThatIsAskedForIsThere(Path asked) throws IOException {
        String name = asked.getFileName().toString().replace(".java", "");
        Matcher bundle = BUNDLE.matcher(text(asked));
        assertTrue(bundle.find());
        String path = bundle.group(1).replace('.', '/') + ".properties";
        Properties words = read(RESOURCES.resolve(path));
        Pattern call =
                Pattern.compile(
                        "(?<![A-Za-z])" + name + "\\.(?:of|lines)\\(\\s*\"([^\"]+)\"\\s*[,)]");
        Set<String> missing = new TreeSet<>();
        for (Path source : files(SOURCES, ".java")) {
            boolean another =
                    Files.exists(source.resolveSibling(name + ".java"))
                            && !source.resolveSibling(name + ".java").equals(asked);
            if (!another) {
                call.matcher(Files.readString(source))
                        .results()
                        .map(m -> m.group(1))
                        .filter(key -> !words.containsKey(key))
                        .forEach(missing::add);
            }
        }
        assertEquals(Set.of(), missing);
    }
}
