// SPDX-License-Identifier: Apache-2.0
package hotside.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotside.content.Finding;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StockTest {
    @TempDir Path temp;

    private static String text() throws IOException {
        try (InputStream in =
                StockTest.class.getResourceAsStream("/hotside/rigs/four-return-spring.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<String> found(String text) {
        Stock stock = Stock.ofText("mine.yaml", text);
        assertTrue(stock.rigs().isEmpty());
        return stock.findings().stream().map(Finding::oneLine).toList();
    }

    @Test
    void nothingIsWrongWithWhatIsShipped() {
        Stock stock = Stock.shipped();
        assertEquals(List.of(), stock.findings());
        assertEquals(5, stock.rigs().size());
        assertTrue(stock.parts().size() >= 8);
    }

    @Test
    void everyPartFitsEveryRig() {
        for (Part part : Stock.shipped().parts()) {
            for (Rig rig : SomeRigs.shipped()) {
                Rig fitted = rig.with(part);
                part.settings()
                        .keySet()
                        .forEach(
                                path ->
                                        assertEquals(
                                                rig.with(path, part.settings().get(path))
                                                        .value(path),
                                                fitted.value(path)));
            }
        }
    }

    @Test
    void aFoldersRigsAreRead() throws IOException {
        Files.writeString(temp.resolve("mine.yaml"), text());
        Files.writeString(temp.resolve("notes.md"), "not a rig");
        Stock stock = Stock.of(temp);
        assertEquals(List.of(), stock.findings());
        assertEquals(List.of("mine"), stock.rigs().stream().map(Rig::id).toList());
        assertTrue(stock.part("pipe-76").isPresent());
    }

    @Test
    void unitsAreConvertedAndDefaultsFilledIn() {
        Rig rig = SomeRigs.named("four-return-spring");
        assertEquals(2e-3, rig.engine().displacement(), 1e-15);
        assertEquals(295.15, rig.ambient().temperature(), 1e-9);
        assertEquals(4500, rig.gate().rate(), 1e-9);
        assertEquals(6e-4, rig.turbo().effectiveArea(), 1e-15);
        assertEquals(1.87, rig.engine().hydrogenCarbonRatio());
        assertEquals(0, rig.bench().rampRate());
    }

    @Test
    void whatIsWrongIsFoundAllAtOnceWithItsPlace() throws IOException {
        String bad =
                text().replace("bore: 60.2 mm", "bore: 60.2")
                        .replace("  kind: spring", "  kind: sprung")
                        .replace("preload: 130 N", "preload: 130 mm")
                        .replace("  wheelDiameter: 54 mm\n", "")
                        .replace("  length: 3.2 m", "  lenght: 3.2 m");
        List<String> lines = found(bad);
        assertTrue(
                lines.stream().anyMatch(l -> l.contains("exhaust.bore is 60.2 m")),
                lines::toString);
        assertTrue(lines.stream().anyMatch(l -> l.contains("control.kind is \"sprung\"")));
        assertTrue(lines.stream().anyMatch(l -> l.contains("gate.preload is \"130 mm\"")));
        assertTrue(lines.stream().anyMatch(l -> l.contains("missing key \"wheelDiameter\"")));
        assertTrue(lines.stream().anyMatch(l -> l.contains("unknown key \"lenght\"")));
        int line = bad.substring(0, bad.indexOf("kind: sprung")).split("\n", -1).length;
        assertTrue(lines.stream().anyMatch(l -> l.startsWith("mine.yaml:" + line + ":9:")));
    }

    @Test
    void aCurveThatRunsBackwardsIsFound() throws IOException {
        List<String> lines = found(text().replace("speed: 3000 rev/min", "speed: 1500 rev/min"));
        assertEquals(1, lines.size());
        assertTrue(lines.get(0).contains("point 3 of engine.curve is not faster"), lines.get(0));
    }

    @Test
    void anUnknownSensorIsFound() throws IOException {
        List<String> lines = found(text().replace("  boost: {", "  boast: {"));
        assertTrue(lines.get(0).contains("unknown key \"boast\""), lines.get(0));
    }

    @Test
    void oneValueIsChangedAndTheRigBeforeStaysAsItWas() {
        Rig rig = SomeRigs.named("four-return-spring");
        Rig changed = rig.with("exhaust.bore", "3 in");
        assertEquals(0.0762, changed.exhaust().pipe().diameter(), 1e-15);
        assertEquals(0.0602, rig.exhaust().pipe().diameter(), 1e-15);
        assertEquals(
                1200.0,
                rig.with("engine.curve.3.exhaustTemperature", "1200 K")
                        .engine()
                        .curve()
                        .get(2)
                        .exhaustTemperature());
        assertEquals(
                500.0, rig.with("sensors.boost.offset", "0.5 kPa").sensors().get(2).offset(), 1e-9);
    }

    @Test
    void anUnknownPathListsTheNearest() {
        Rig rig = SomeRigs.named("four-return-spring");
        var e = assertThrows(RigException.class, () -> rig.with("exhaust.boer", "60 mm"));
        assertTrue(
                e.getMessage().startsWith("a rig has no value \"exhaust.boer\"; expected one of"),
                e.getMessage());
        assertTrue(e.getMessage().contains("nearest in spelling: exhaust.bore"), e.getMessage());
    }

    @Test
    void valuesOutOfRangeOrOfAnotherKindAreRefused() {
        Rig rig = SomeRigs.named("four-return-spring");
        var far = assertThrows(RigException.class, () -> rig.with("exhaust.bore", "60"));
        assertEquals("exhaust.bore is 60 m; expected 0.015 m to 0.4 m", far.getMessage());
        assertThrows(RigException.class, () -> rig.with("exhaust.bore", Double.NaN));
        assertThrows(RigException.class, () -> rig.with("gate.vents", 1));
        assertThrows(RigException.class, () -> rig.with("gate.vents", "roof"));
        assertThrows(RigException.class, () -> rig.with("cell.toSpeed", "500 rev/min"));
    }
}
