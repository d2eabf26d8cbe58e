// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256, and the short words made of it that people read to each other. */
final class Hashes {
    /** Crockford's alphabet: no I, L, O, U to be misread. */
    private static final String READABLE = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private static final int BITS_A_LETTER = 5;

    private Hashes() {}

    static byte[] of(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Of several texts, each closed by a line end, so that no two lists read alike. */
    static byte[] of(String... texts) {
        return of((String.join("\n", texts) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    /** The first bytes of a hash, in hexadecimal. */
    static String hex(byte[] hash, int bytes) {
        return HexFormat.of().formatHex(hash, 0, bytes);
    }

    /** The first letters of a hash in an alphabet that is hard to misread; at most 12. */
    static String letters(byte[] hash, int letters) {
        long bits = 0;
        for (int i = 0; i < Long.BYTES; i++) {
            bits = bits << Byte.SIZE | hash[i] & 0xff;
        }
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < letters; i++) {
            int shift = Long.SIZE - BITS_A_LETTER * (i + 1);
            out.append(READABLE.charAt((int) (bits >>> shift) & 31));
        }
        return out.toString();
    }

    /** What a person may have typed for letters of {@link #letters}: any case, O for 0, l for 1. */
    static String readable(String typed) {
        StringBuilder out = new StringBuilder();
        for (char c : typed.toUpperCase(java.util.Locale.ROOT).toCharArray()) {
            char meant = c == 'O' ? '0' : c == 'I' || c == 'L' ? '1' : c;
            if (READABLE.indexOf(meant) >= 0) {
                out.append(meant);
            }
        }
        return out.toString();
    }
}
