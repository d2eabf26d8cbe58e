// SPDX-License-Identifier: Apache-2.0
package hotside.classroom;

import hotside.content.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.List;

/** A person's Ed25519 key (RFC 8032), which lies in a file of theirs alone. */
public final class SigningKey {
    private static final String ALGORITHM = "Ed25519";

    private final PrivateKey secret;
    private final PublicKeyText open;

    private SigningKey(PrivateKey secret, PublicKeyText open) {
        this.secret = secret;
        this.open = open;
    }

    /** A new key. */
    public static SigningKey fresh() {
        try {
            KeyPair pair = KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
            return new SigningKey(
                    pair.getPrivate(), PublicKeyText.ofEncoded(pair.getPublic().getEncoded()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Java 15 and later have " + ALGORITHM, e);
        }
    }

    /**
     * The key in this file; a new one is made and kept there if there is none.
     *
     * @throws IOException if the file can be neither read nor made, or holds no key
     */
    public static SigningKey kept(Path file) throws IOException {
        try {
            return read(Files.readAllLines(file, StandardCharsets.US_ASCII), file);
        } catch (NoSuchFileException e) {
            SigningKey key = fresh();
            key.keep(file);
            return key;
        }
    }

    private static SigningKey read(List<String> lines, Path file) throws IOException {
        try {
            KeyFactory factory = KeyFactory.getInstance(ALGORITHM);
            byte[] secret = Base64.getDecoder().decode(lines.get(0));
            byte[] open = Base64.getDecoder().decode(lines.get(1));
            factory.generatePublic(new X509EncodedKeySpec(open));
            return new SigningKey(
                    factory.generatePrivate(new PKCS8EncodedKeySpec(secret)),
                    PublicKeyText.ofEncoded(open));
        } catch (GeneralSecurityException | RuntimeException e) {
            throw new IOException(ClassWords.of("key.none", file), e);
        }
    }

    private void keep(Path file) throws IOException {
        Base64.Encoder base64 = Base64.getEncoder();
        String text = base64.encodeToString(secret.getEncoded()) + "\n" + open.base64() + "\n";
        WholeFile.write(
                file,
                text.getBytes(StandardCharsets.US_ASCII),
                beside -> {
                    if (beside.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                        Files.setPosixFilePermissions(
                                beside, PosixFilePermissions.fromString("rw-------"));
                    }
                });
    }

    /** The half that others may see. */
    public PublicKeyText open() {
        return open;
    }

    String sign(byte[] bytes) {
        try {
            Signature signature = Signature.getInstance(ALGORITHM);
            signature.initSign(secret);
            signature.update(bytes);
            return Base64.getEncoder().encodeToString(signature.sign());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a key of this class can sign", e);
        }
    }
}
