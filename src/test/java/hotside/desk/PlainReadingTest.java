// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotside.desk.PlainBlock.Action;
import hotside.desk.PlainBlock.Target;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class PlainReadingTest {
    @Test
    void textIsReadInItsOrderAndHeadingsAreKnown() throws Exception {
        assertEquals(
                List.of(
                        new PlainBlock.Prose("Boost", 2),
                        new PlainBlock.Prose("It is p² of 3 kPa.", 0),
                        new PlainBlock.Prose("• one", 0),
                        new PlainBlock.Prose("1. first", 0),
                        new PlainBlock.Prose("2. second", 0),
                        new PlainBlock.Prose("force F: 92.4 N", 0)),
                read(
                        "<h2>Boost</h2><p>It is <math alttext='p²'><mi>x</mi></math> of\n <b>3</b>"
                                + " kPa.</p><ul><li>one</li></ul><ol><li>first</li><li>second</li></ol>"
                                + "<dl><div><dt>force <i>F</i></dt><dd>92.4 <span>N</span></dd></div></dl>"));
    }

    @Test
    void eachCellIsReadAfterTheHeadingOfItsColumn() throws Exception {
        assertEquals(
                List.of(
                        new PlainBlock.Prose("Speed; Power", 0),
                        new PlainBlock.Prose("Speed: 3000; Power: 90", 0)),
                read(
                        "<table><thead><tr><th>Speed</th><th>Power</th></tr></thead>"
                                + "<tbody><tr><td>3000</td><td>90</td></tr></tbody></table>"));
    }

    @Test
    void aFieldHasItsLabelItsUnitAndWhatEnterDoesAndASliderBesideIt() throws Exception {
        assertEquals(
                List.of(
                        new PlainBlock.Field(
                                "c1-d",
                                new Target("c1", "d", "text"),
                                "bore d, mm",
                                "40",
                                "a number",
                                new Action("check", "c1", ""),
                                false),
                        new PlainBlock.Slide(
                                "c1-d-slider",
                                new Target("c1", "d", "slider"),
                                "bore",
                                0,
                                1000,
                                350)),
                read(
                        "<label for='c1-d'>bore <i>d</i></label><input type='text' id='c1-d'"
                                + " data-part='c1' data-slot='d' data-kind='text' value='40'"
                                + " placeholder='a number' data-enter='check'/>"
                                + "<span class='unit'>mm</span>"
                                + "<input type='range' id='c1-d-slider' data-part='c1'"
                                + " data-slot='d' data-kind='slider' min='0' max='1000' value='350'"
                                + " aria-label='bore'/>"));
    }

    @Test
    void optionsTicksButtonsLinksAndFoldsAreControls() throws Exception {
        Target target = new Target("p1", "0", "answer");
        Action check = new Action("check", "p1", "");
        assertEquals(
                List.of(
                        new PlainBlock.Tick("o-A", target, "A the spring", "A", "o", true, check),
                        new PlainBlock.Choice(
                                "s",
                                target,
                                "Unit",
                                List.of(
                                        new PlainBlock.Option("x", "one"),
                                        new PlainBlock.Option("y", "two")),
                                "y"),
                        new PlainBlock.Press("b", "Move A up", new Action("up:A", "p1", ""), true),
                        new PlainBlock.Prose("See boost there.", 0),
                        new PlainBlock.Link("boost", "term:boost"),
                        new PlainBlock.Fold(
                                "Data table", List.of(new PlainBlock.Prose("inside", 0)))),
                read(
                        "<label><input type='radio' id='o-A' name='o' value='A' data-part='p1'"
                                + " data-slot='0' data-kind='answer' data-enter='check' checked=''/>"
                                + " <span><b>A</b> the spring</span></label>"
                                + "<select id='s' aria-label='Unit' data-part='p1' data-slot='0'"
                                + " data-kind='answer'><option value='x'>one</option>"
                                + "<option value='y' selected=''>two</option></select>"
                                + "<button id='b' data-do='up:A' data-part='p1'"
                                + " aria-label='Move A up'>↑</button>"
                                + "<p>See <a href='term:boost'>boost</a> there.</p>"
                                + "<details><summary>Data table</summary><p>inside</p></details>"));
    }

    @Test
    void whatIsHiddenIsNotReadAndWhatMayChangeIsARegionEvenIfEmpty() throws Exception {
        assertEquals(
                List.of(
                        new PlainBlock.Region("v", List.of()),
                        new PlainBlock.Region("w", List.of(new PlainBlock.Prose("Right.", 0)))),
                read(
                        "<p hidden=''>no</p><span aria-hidden='true'>no</span>"
                                + "<div id='v' role='status'></div><div id='w'><p>Right.</p></div>"));
    }

    private static List<PlainBlock> read(String html) throws Exception {
        byte[] bytes = ("<main>" + html + "</main>").getBytes(StandardCharsets.UTF_8);
        Element main =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(bytes))
                        .getDocumentElement();
        return PlainReading.inside(main);
    }
}
