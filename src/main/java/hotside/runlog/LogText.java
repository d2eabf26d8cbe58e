// SPDX-License-Identifier: Apache-2.0
package hotside.runlog;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The text of a file whose encoding nobody has told us: by its byte order mark UTF-8 or UTF-16,
 * else UTF-8 if its beginning is, else Windows-1252. A sample of its beginning can be looked at
 * before it is read.
 */
final class LogText {
    private static final int SAMPLE = 1 << 16;

    private final Charset charset;
    private final PushbackReader reader;
    private final String sample;
    private final boolean whole;

    private LogText(Charset charset, PushbackReader reader, String sample, boolean whole) {
        this.charset = charset;
        this.reader = reader;
        this.sample = sample;
        this.whole = whole;
    }

    static LogText open(InputStream stream) throws IOException {
        BufferedInputStream in = new BufferedInputStream(stream, 2 * SAMPLE);
        in.mark(SAMPLE);
        byte[] head = in.readNBytes(SAMPLE - 1);
        in.reset();
        int mark = markLength(head);
        in.skipNBytes(mark);
        Charset charset = charset(head, mark);
        PushbackReader reader = new PushbackReader(new InputStreamReader(in, charset), SAMPLE);
        char[] sample = new char[SAMPLE];
        int length = 0;
        for (int n; length < SAMPLE && (n = reader.read(sample, length, SAMPLE - length)) > 0; ) {
            length += n;
        }
        reader.unread(sample, 0, length);
        return new LogText(charset, reader, new String(sample, 0, length), length < SAMPLE);
    }

    private static int markLength(byte[] head) {
        if (startsWith(head, 0xEF, 0xBB, 0xBF)) {
            return 3;
        }
        return startsWith(head, 0xFE, 0xFF) || startsWith(head, 0xFF, 0xFE) ? 2 : 0;
    }

    private static Charset charset(byte[] head, int mark) {
        if (mark == 2) {
            return startsWith(head, 0xFE, 0xFF)
                    ? StandardCharsets.UTF_16BE
                    : StandardCharsets.UTF_16LE;
        }
        return mark == 3 || isUtf8(head) ? StandardCharsets.UTF_8 : Charset.forName("windows-1252");
    }

    /** Whether the bytes are UTF-8, the last character perhaps cut off. */
    private static boolean isUtf8(byte[] head) {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        return !decoder.decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length), false)
                .isError();
    }

    private static boolean startsWith(byte[] head, int... bytes) {
        return head.length >= bytes.length
                && Arrays.mismatch(Arrays.copyOf(head, bytes.length), bytes(bytes)) < 0;
    }

    private static byte[] bytes(int... values) {
        byte[] out = new byte[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = (byte) values[i];
        }
        return out;
    }

    Charset charset() {
        return charset;
    }

    /** From the very beginning. */
    PushbackReader reader() {
        return reader;
    }

    /** The beginning, cut after a line where the file goes on. */
    String sample() {
        int cut = sample.lastIndexOf('\n');
        return whole || cut < 0 ? sample : sample.substring(0, cut);
    }
}
