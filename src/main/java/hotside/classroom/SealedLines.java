// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * A file of JSON lines whose last line, the seal, holds a key and its signature over every byte
 * before. The first line names the format and its version.
 *
 * @param lines without the seal
 * @param key whose seal it is
 * @param hash of all bytes before the seal
 */
record SealedLines(List<String> lines, PublicKeyText key, String hash) {
    /** No honest file comes near it. */
    static final int LARGEST = 2_000_000;

    private static final int MOST_LINES = 20_000;
    private static final int HASH_BYTES = 16;
    private static final int KEY_TEXT = 100;
    private static final int SIGNATURE_TEXT = 100;

    SealedLines {
        lines = List.copyOf(lines);
    }

    /** The file's bytes, seal and all. */
    static byte[] seal(List<String> lines, SigningKey key) {
        byte[] content = (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8);
        String seal = JsonLine.write("seal", key.sign(content), "key", key.open().base64()) + "\n";
        byte[] end = seal.getBytes(StandardCharsets.UTF_8);
        byte[] all = Arrays.copyOf(content, content.length + end.length);
        System.arraycopy(end, 0, all, content.length, end.length);
        return all;
    }

    private static String sealLine(String signature, PublicKeyText key) {
        return JsonLine.write("seal", signature, "key", key.base64());
    }

    /**
     * The bytes of a file, unless it is too large. A link is not followed.
     *
     * @throws RefusedException {@link Reason#TOO_LARGE} or {@link Reason#UNREADABLE}
     */
    static byte[] bytes(Path file) {
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new RefusedException(
                    Reason.UNREADABLE,
                    Files.exists(file, LinkOption.NOFOLLOW_LINKS)
                            ? ClassWords.of("file.not-plain")
                            : ClassWords.of("file.none", file));
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw new RefusedException(
                        Reason.TOO_LARGE, ClassWords.of("file.megabytes", LARGEST / 1_000_000));
            }
            return bytes;
        } catch (IOException e) {
            throw new RefusedException(Reason.UNREADABLE, e.toString());
        }
    }

    /**
     * Opens a file and tries its seal.
     *
     * @param format the name of the format that is wanted
     * @param version the only version that is known
     * @throws RefusedException with the reason
     */
    static SealedLines open(byte[] bytes, String format, int version) {
        if (bytes.length > LARGEST) {
            throw new RefusedException(Reason.TOO_LARGE, ClassWords.of("file.bytes", LARGEST));
        }
        requireFormat(bytes, format, version);
        int seal = startOfLastLine(bytes);
        if (bytes[bytes.length - 1] != '\n' || seal == 0 || !isSeal(bytes, seal)) {
            throw new RefusedException(Reason.TRUNCATED, ClassWords.of("file.ends"));
        }
        List<String> lines = lines(bytes);
        JsonLine last = JsonLine.read(lines.size(), lines.get(lines.size() - 1));
        PublicKeyText key = new PublicKeyText(last.text("key", KEY_TEXT));
        String signature = last.text("seal", SIGNATURE_TEXT);
        last.noOthers();
        byte[] content = Arrays.copyOf(bytes, seal);
        // One content has one seal line: no spaces, no other spelling of the same bytes.
        boolean plain = lines.get(lines.size() - 1).equals(sealLine(signature, key));
        if (!plain || !key.signed(content, signature)) {
            throw new RefusedException(Reason.ALTERED, ClassWords.of("file.unsealed"));
        }
        return new SealedLines(
                lines.subList(0, lines.size() - 1),
                key,
                Hashes.hex(Hashes.of(content), HASH_BYTES));
    }

    static void requireFormat(byte[] bytes, String format, int version) {
        int end = 0;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        JsonLine head;
        String named;
        try {
            head = JsonLine.read(1, text(Arrays.copyOf(bytes, end)));
            named = head.text("format", 40);
        } catch (RefusedException e) {
            throw new RefusedException(Reason.FOREIGN, ClassWords.of("file.no-format", format));
        }
        if (!named.equals(format)) {
            throw new RefusedException(
                    Reason.FOREIGN, ClassWords.of("file.other-format", named, format));
        }
        long found;
        try {
            found = head.whole("version", 0, Integer.MAX_VALUE);
        } catch (RefusedException e) {
            throw new RefusedException(Reason.UNKNOWN_VERSION, ClassWords.of("file.no-version"));
        }
        if (found != version) {
            throw new RefusedException(
                    Reason.UNKNOWN_VERSION,
                    ClassWords.of(found > version ? "file.newer" : "file.older", found, version));
        }
    }

    private static boolean isSeal(byte[] bytes, int start) {
        byte[] mark = "{\"seal\":".getBytes(StandardCharsets.US_ASCII);
        return bytes.length - start > mark.length
                && Arrays.equals(mark, Arrays.copyOfRange(bytes, start, start + mark.length));
    }

    private static int startOfLastLine(byte[] bytes) {
        int at = bytes.length - 1;
        while (at > 0 && bytes[at - 1] != '\n') {
            at--;
        }
        return Math.max(at, 0);
    }

    static List<String> lines(byte[] bytes) {
        List<String> lines = text(bytes).lines().limit(MOST_LINES + 1L).toList();
        if (lines.size() > MOST_LINES) {
            throw new RefusedException(Reason.TOO_LARGE, ClassWords.of("file.lines", MOST_LINES));
        }
        return lines;
    }

    private static String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            throw new RefusedException(Reason.ALTERED, ClassWords.of("text.no-utf8"));
        }
    }
}
