// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.util.Optional;
import java.util.function.Function;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * What goes wrong with YAML, said to somebody who writes lessons. The parser's own sentences are
 * recognised by a part of them; one that is not known is passed on as it is.
 *
 * @param sign a part of what the parser says, "context|problem"
 * @param atContext whether the place meant is where the parser started on the part it gave up in
 * @param what says {@code {}} where the place that the parser gave up at is to stand
 */
record YamlFault(String sign, boolean atContext, String what, String expected, String mend) {
    private static final String QUOTE = "put the value in single quotes: '…'";
    private static final String WORDS = "text, a number, a list or a map";

    static final YamlFault ALIAS =
            new YamlFault(
                    "scanning an alias",
                    true,
                    "\"*\" at the start of a value points to another one, which is not done here",
                    WORDS,
                    "write the value out, or put text that begins with \"*\" in single quotes");
    static final YamlFault ANCHOR =
            new YamlFault(
                    "scanning an anchor",
                    true,
                    "\"&\" at the start of a value names it for use elsewhere, which is not done here",
                    WORDS,
                    "delete the name, or put text that begins with \"&\" in single quotes");
    static final YamlFault TAG =
            new YamlFault(
                    "a tag",
                    true,
                    "\"!\" at the start of a value gives it a type, which is not done here",
                    WORDS,
                    "delete the type, or put text that begins with \"!\" in single quotes");
    static final YamlFault ESCAPE =
            new YamlFault(
                    "scanning a double-quoted scalar",
                    false,
                    "a backslash in double quotes",
                    "\\\\ or \\\" if the quotes are double",
                    "put the text in single quotes, where a backslash is a backslash");

    private static final YamlFault[] KNOWN = {
        new YamlFault(
                "quoted scalar|found unexpected end of stream",
                true,
                "the quote that opens here has no end",
                "the same quote after the text",
                "close it; in single quotes write an apostrophe twice: 'it''s'"),
        new YamlFault(
                "mapping values are not allowed",
                false,
                "a second \": \" in one value",
                "one \"key: value\" on a line, and the keys of one map in one column",
                "put a value that holds \": \" in single quotes, or set the indentation right"),
        new YamlFault(
                "'\\t(TAB)'",
                false,
                "a tab in the indentation",
                "spaces",
                "replace the tab by spaces"),
        new YamlFault(
                "cannot start any token",
                false,
                "a value cannot begin with this character",
                WORDS,
                QUOTE),
        new YamlFault(
                "flow sequence",
                true,
                "the list that opens here goes wrong at {}",
                "[first, second]",
                "close it with \"]\", with commas between; quote items that hold \", \" or \": \""),
        new YamlFault(
                "flow mapping",
                true,
                "the map that opens here goes wrong at {}",
                "{key: value, other: value}",
                "close it with \"}\", with commas between; put text that begins with \"{\" in single"
                        + " quotes"),
        new YamlFault(
                "could not find expected ':'",
                true,
                "neither a key with its value nor part of the value above",
                "\"key: value\"",
                "put a colon and a space after the key, or indent text that belongs to the value"
                        + " above"),
        ALIAS,
        ANCHOR,
        TAG,
        ESCAPE,
        new YamlFault(
                "leading empty lines contain more spaces",
                false,
                "lines below \"|\" or \">\" begin further left than the first of them",
                "all of the text indented by as much or more",
                "set the indentation right"),
        new YamlFault(
                "block scalar",
                false,
                "text after \"|\" or \">\"",
                "\"|\" or \">\" alone, its text on the lines below, indented",
                "start the text on the next line"),
        new YamlFault(
                "found '<scalar>'",
                false,
                "text after the end of a value",
                "nothing after a closing quote or bracket",
                "put the whole value in single quotes; an apostrophe inside is written twice"),
        new YamlFault(
                "but found ':'",
                false,
                "a colon without a key before it",
                "\"key: value\"",
                "write the key before the colon"),
        new YamlFault(
                "expected <block end>",
                false,
                "this line stands in no column that a line above it began",
                "the keys of one map in one column, the dashes of one list in one column",
                "set the indentation right"),
        new YamlFault(
                "expected '<document start>', but found '<stream end>'",
                false,
                "a line above begins with \"%\", which speaks to the reader of the file",
                "\"key: value\"",
                "delete that line"),
        new YamlFault(
                "expected '<document start>'",
                false,
                "this line stands further left than the first key, or after an end mark",
                "all keys in one column",
                "set the indentation right; delete \"...\" lines"),
        new YamlFault(
                "sequence entries are not allowed",
                false,
                "a list begins on the line of its key",
                "\"- \" on a line of its own, or [first, second]",
                "put the \"- \" on the next line"),
        new YamlFault(
                "mapping keys are not allowed", false, "a value begins with \"? \"", WORDS, QUOTE),
        new YamlFault(
                "expected the node content",
                false,
                "a bracket or comma where a value should be",
                WORDS,
                QUOTE)
    };

    /** Reports what the parser stumbled over, unless that line has its finding already. */
    static void report(
            YamlEngineException e, Findings findings, Function<Optional<Mark>, Place> places) {
        if (!(e instanceof MarkedYamlEngineException marked)) {
            unknown(e.getMessage()).report(findings, places.apply(Optional.empty()));
            return;
        }
        YamlFault fault = recognise(marked);
        Optional<Mark> context = marked.getContextMark();
        Place gaveUp = places.apply(marked.getProblemMark());
        Place place = fault.atContext && context.isPresent() ? places.apply(context) : gaveUp;
        if (!findings.onLine(place.line())) {
            String what = fault.what.replace("{}", gaveUp.toString());
            findings.add(place, what, fault.expected, fault.mend);
        }
    }

    void report(Findings findings, Place place) {
        findings.add(place, what, expected, mend);
    }

    private static YamlFault recognise(MarkedYamlEngineException e) {
        String said = e.getContext() + "|" + e.getProblem();
        for (YamlFault fault : KNOWN) {
            if (said.contains(fault.sign)) {
                return fault;
            }
        }
        return unknown(e.getProblem());
    }

    private static YamlFault unknown(String said) {
        return new YamlFault(
                "",
                false,
                "not readable as YAML: " + said,
                "\"key: value\" lines",
                "look at this line; signs such as : # { [ * & ! go in single quotes");
    }
}
