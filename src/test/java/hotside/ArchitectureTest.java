// SPDX-License-Identifier: Apache-2.0
package hotside;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.platform.commons.annotation.Testable;

/**
 * The walls between the rooms. A room may use those on the lines below its own; rooms on one line
 * don't know each other. Classes of the package {@code hotside} itself may use all and are used by
 * none.
 */
class ArchitectureTest {
    private static final List<List<String>> LINES =
            List.of(
                    List.of("desk", "command"),
                    List.of("classroom"),
                    List.of("learner"),
                    List.of("page"),
                    List.of("course"),
                    List.of("problem"),
                    List.of("trial"),
                    List.of("cell", "runlog"),
                    List.of("catalogue"),
                    List.of("physics", "statistics"),
                    List.of("relation"),
                    List.of("content"),
                    List.of("unit"),
                    List.of("speech"));

    private static final JavaClasses MAIN =
            new ClassFileImporter()
                    .importUrl(Hotside.class.getProtectionDomain().getCodeSource().getLocation());

    static Stream<String> rooms() {
        return LINES.stream().flatMap(List::stream);
    }

    private static List<String> roomsBelow(String room) {
        int line = 0;
        while (!LINES.get(line).contains(room)) {
            line++;
        }
        return LINES.subList(line + 1, LINES.size()).stream().flatMap(List::stream).toList();
    }

    private static String inside(String room) {
        return "hotside." + room + "..";
    }

    @Test
    void thereIsSomethingToCheck() {
        assertTrue(MAIN.contain(Hotside.class));
        assertTrue(MAIN.stream().anyMatch(c -> c.getPackageName().startsWith("hotside.unit")));
    }

    @Test
    void everyClassStandsInARoom() {
        List<String> packages = new ArrayList<>(rooms().map(ArchitectureTest::inside).toList());
        packages.add("hotside");
        classes().should().resideInAnyPackage(packages.toArray(String[]::new)).check(MAIN);
    }

    @ParameterizedTest(name = "{0} uses only rooms below it")
    @MethodSource("rooms")
    void arrowsPointDown(String room) {
        List<String> allowed = roomsBelow(room);
        List<String> forbidden = new ArrayList<>(List.of("hotside"));
        rooms().filter(other -> !other.equals(room) && !allowed.contains(other))
                .map(ArchitectureTest::inside)
                .forEach(forbidden::add);
        noClasses()
                .that()
                .resideInAPackage(inside(room))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(forbidden.toArray(String[]::new))
                .allowEmptyShould(true)
                .check(MAIN);
    }

    @ParameterizedTest(name = "{0} needs nothing but Java, Commons Math and rooms below it")
    @ValueSource(strings = {"physics", "relation", "unit"})
    void theCoreStandsByItself(String room) {
        List<String> allowed = new ArrayList<>(List.of("java..", "org.apache.commons.math3.."));
        allowed.add(inside(room));
        roomsBelow(room).stream().map(ArchitectureTest::inside).forEach(allowed::add);
        classes()
                .that()
                .resideInAPackage(inside(room))
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(allowed.toArray(String[]::new))
                .check(MAIN);
    }

    @Test
    void onlyTheDeskKnowsJavaFx() {
        noClasses()
                .that()
                .resideOutsideOfPackage(inside("desk"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "javafx..",
                        "atlantafx..",
                        "com.sun.javafx..",
                        "com.sun.glass..",
                        "com.sun.webkit..")
                .check(MAIN);
    }

    @Test
    void oneClassOfTheDeskKnowsTheWebView() {
        Set<String> users =
                MAIN.stream()
                        .filter(ArchitectureTest::usesWebView)
                        .map(ArchitectureTest::outermost)
                        .collect(Collectors.toSet());
        assertTrue(users.size() <= 1, () -> "classes that use javafx.scene.web: " + users);
    }

    private static boolean usesWebView(JavaClass user) {
        return user.getDirectDependenciesFromSelf().stream()
                .anyMatch(d -> d.getTargetClass().getPackageName().equals("javafx.scene.web"));
    }

    private static String outermost(JavaClass inner) {
        return inner.getEnclosingClass().map(ArchitectureTest::outermost).orElse(inner.getName());
    }

    @Test
    void onlyCommandsAndTheMainClassPrint() {
        noClasses()
                .that(not(resideInAnyPackage(inside("command"))))
                .and()
                .doNotHaveFullyQualifiedName("hotside.Hotside")
                .should(ACCESS_STANDARD_STREAMS)
                .check(MAIN);
    }

    /** A seed must give the same numbers on every machine and in every later version. */
    @Test
    void nobodyDrawsRandomNumbersThatNoSeedRepeats() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .belongToAnyOf(Random.class, ThreadLocalRandom.class)
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(StrictMath.class, "random")
                .orShould()
                .callMethod(Collections.class, "shuffle", List.class)
                .check(MAIN);
    }

    /** A class inside a test is only found by JUnit if it says so. */
    @Test
    void noTestHidesInAClassThatNobodyRuns() {
        JavaClasses tests =
                new ClassFileImporter()
                        .importUrl(getClass().getProtectionDomain().getCodeSource().getLocation());
        List<String> hidden =
                tests.stream()
                        .filter(c -> c.getEnclosingClass().isPresent())
                        .filter(c -> !c.isAnnotatedWith(Nested.class))
                        .filter(
                                c ->
                                        c.getMethods().stream()
                                                .anyMatch(
                                                        m -> m.isMetaAnnotatedWith(Testable.class)))
                        .map(JavaClass::getName)
                        .toList();
        assertTrue(tests.contain(getClass()));
        assertEquals(List.of(), hidden);
    }
}
