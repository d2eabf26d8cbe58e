// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;

/**
 * The open half of a signing key as files carry it.
 *
 * @param base64 of its X.509 encoding
 */
public record PublicKeyText(String base64) {
    private static final String ALGORITHM = "Ed25519";

    static PublicKeyText ofEncoded(byte[] encoded) {
        return new PublicKeyText(Base64.getEncoder().encodeToString(encoded));
    }

    /** Sixteen letters in groups of four, for people to compare. */
    public String fingerprint() {
        byte[] hash = Hashes.of(base64);
        String letters = Hashes.letters(hash, 8) + Hashes.letters(Hashes.of(hash), 8);
        return String.join(
                "-",
                letters.substring(0, 4),
                letters.substring(4, 8),
                letters.substring(8, 12),
                letters.substring(12));
    }

    /** True if the signature is this key's over these bytes; false for keys that are none. */
    boolean signed(byte[] bytes, String signature) {
        try {
            byte[] encoded = decoded(base64);
            byte[] seal = decoded(signature);
            PublicKey key =
                    KeyFactory.getInstance(ALGORITHM)
                            .generatePublic(new X509EncodedKeySpec(encoded));
            Signature verifier = Signature.getInstance(ALGORITHM);
            verifier.initVerify(key);
            verifier.update(bytes);
            return verifier.verify(seal);
        } catch (GeneralSecurityException | IllegalArgumentException e) {
            return false;
        }
    }

    /** Of the several spellings that a decoder lets pass, only the one that it would write. */
    private static byte[] decoded(String base64) {
        byte[] bytes = Base64.getDecoder().decode(base64);
        if (!Base64.getEncoder().encodeToString(bytes).equals(base64)) {
            throw new IllegalArgumentException(ClassWords.of("key.spelling"));
        }
        return bytes;
    }
}
