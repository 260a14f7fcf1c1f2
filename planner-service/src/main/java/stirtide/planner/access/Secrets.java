package stirtide.planner.access;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import javax.crypto.SecretKeyFactory;
import javax.crypto.spec.PBEKeySpec;

/** Makes and compares secrets, with what the JDK brings. */
final class Secrets {
    /** Each guess at a stolen code costs this many rounds of HMAC-SHA-256. */
    static final int ROUNDS = 210_000;

    private static final int TOKEN_BYTES = 32;
    private static final int DIGEST_BITS = 256;
    private static final SecureRandom RANDOM = new SecureRandom();

    private Secrets() {}

    /** 256 random bits, URL-safe. */
    static String token() {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes(TOKEN_BYTES));
    }

    static String hex(int length) {
        return HexFormat.of().formatHex(bytes(length / 2));
    }

    /** Six digits for a person to remember. */
    static String code() {
        return String.format(java.util.Locale.ROOT, "%06d", RANDOM.nextInt(1_000_000));
    }

    private static byte[] bytes(int count) {
        byte[] bytes = new byte[count];
        RANDOM.nextBytes(bytes);
        return bytes;
    }

    /** A digest without salt is enough for 256 random bits: they cannot be guessed. */
    static String sha256(String token) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (GeneralSecurityException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    static String pbkdf2(String code, String salt, int rounds) {
        PBEKeySpec spec = new PBEKeySpec(code.toCharArray(), HexFormat.of().parseHex(salt), rounds, DIGEST_BITS);
        try {
            byte[] digest = SecretKeyFactory.getInstance("PBKDF2WithHmacSHA256")
                    .generateSecret(spec)
                    .getEncoded();
            return HexFormat.of().formatHex(digest);
        } catch (GeneralSecurityException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        } finally {
            spec.clearPassword();
        }
    }

    /** Takes the same time wherever the two differ. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.US_ASCII), other.getBytes(StandardCharsets.US_ASCII));
    }
}
