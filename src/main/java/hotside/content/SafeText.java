// SPDX-License-Identifier: Apache-2.0
package hotside.content;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/**
 * A text with {@code \n} line ends, no byte order mark, and U+FFFD in place of whatever is no text:
 * stray bytes, control characters, halves of surrogate pairs. What was replaced is remembered, so
 * that reading goes on and the finding still comes.
 */
record SafeText(String text, Optional<Stray> bytes, Optional<Stray> controls) {
    /** The first of several characters that don't belong. */
    record Stray(int offset, int code, int count) {
        private static Optional<Stray> another(Optional<Stray> known, int offset, int code) {
            return Optional.of(
                    known.map(k -> new Stray(k.offset, k.code, k.count + 1))
                            .orElseGet(() -> new Stray(offset, code, 1)));
        }
    }

    private static final char BYTE_ORDER_MARK = 0xFEFF;
    private static final char REPLACEMENT = 0xFFFD;

    /** A byte that is not UTF-8 travels as this plus the byte, a low surrogate without its high. */
    private static final int STRAY_BYTE = 0xDC00;

    static SafeText of(byte[] utf8) {
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(utf8);
        CharBuffer out = CharBuffer.allocate(utf8.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        while (result.isError()) {
            for (int i = 0; i < result.length(); i++) {
                out.put((char) (STRAY_BYTE + (in.get() & 0xFF)));
            }
            result = decoder.decode(in, out, true);
        }
        return of(out.flip().toString());
    }

    static SafeText of(String raw) {
        String unified = unifyLines(raw);
        StringBuilder text = new StringBuilder(unified);
        Optional<Stray> bytes = Optional.empty();
        Optional<Stray> controls = Optional.empty();
        for (int i = 0; i < unified.length(); i++) {
            int c = unified.codePointAt(i);
            if (Character.isSupplementaryCodePoint(c)) {
                i++;
            } else if (c >= STRAY_BYTE + 0x80 && c <= STRAY_BYTE + 0xFF) {
                bytes = Stray.another(bytes, i, c - STRAY_BYTE);
                text.setCharAt(i, REPLACEMENT);
            } else if (c == BYTE_ORDER_MARK || !StreamReader.isPrintable(c)) {
                controls = Stray.another(controls, i, c);
                text.setCharAt(i, REPLACEMENT);
            }
        }
        return new SafeText(text.toString(), bytes, controls);
    }

    private static String unifyLines(String raw) {
        boolean marked = !raw.isEmpty() && raw.charAt(0) == BYTE_ORDER_MARK;
        return raw.substring(marked ? 1 : 0).replace("\r\n", "\n").replace('\r', '\n');
    }

    /** Adds what was replaced; the findings' lines must be those of this text. */
    void report(Findings findings) {
        bytes.ifPresent(
                stray ->
                        findings.add(
                                findings.lines().place(stray.offset),
                                String.format(
                                        Locale.ROOT,
                                        "byte 0x%02X is not UTF-8%s",
                                        stray.code,
                                        of(stray)),
                                "text in UTF-8",
                                "save the file as UTF-8 in your editor"));
        controls.ifPresent(
                stray ->
                        findings.add(
                                findings.lines().place(stray.offset),
                                String.format(
                                        Locale.ROOT,
                                        "control character U+%04X%s",
                                        stray.code,
                                        of(stray)),
                                "letters, signs, spaces and line ends",
                                "delete it"));
    }

    private static String of(Stray stray) {
        return stray.count == 1 ? "" : ", the first of " + stray.count + " in this file";
    }
}
