package stirtide.planner.privacy;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.AEADBadTagException;
import javax.crypto.Cipher;
import javax.crypto.Mac;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/** AES-256-GCM and HMAC-SHA-256 as the JDK brings them. */
final class ReferenceCipher {
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;
    private static final int KEY_BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    private ReferenceCipher() {}

    static String freshKey() {
        byte[] key = new byte[KEY_BYTES];
        RANDOM.nextBytes(key);
        return HexFormat.of().formatHex(key);
    }

    static String hmac(String key, String text) {
        return HexFormat.of().formatHex(mac(HexFormat.of().parseHex(key), text));
    }

    private static byte[] mac(byte[] key, String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac.doFinal(text.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /**
     * The text sealed, always the same for one key and text, so that a client is found again without the key. The nonce
     * is drawn from key and text, so no two texts of a key share one.
     */
    static String seal(ClientKey client, String text) {
        byte[] key = HexFormat.of().parseHex(client.key());
        byte[] nonce = Arrays.copyOf(mac(key, "nonce:" + text), NONCE_BYTES);
        try {
            byte[] sealed =
                    cipher(Cipher.ENCRYPT_MODE, client, key, nonce).doFinal(text.getBytes(StandardCharsets.UTF_8));
            byte[] whole = Arrays.copyOf(nonce, NONCE_BYTES + sealed.length);
            System.arraycopy(sealed, 0, whole, NONCE_BYTES, sealed.length);
            return Base64.getUrlEncoder().withoutPadding().encodeToString(whole);
        } catch (GeneralSecurityException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** The text again; empty when it was not sealed with this key or was changed since. */
    static Optional<String> open(ClientKey client, String sealed) {
        try {
            byte[] whole = Base64.getUrlDecoder().decode(sealed);
            if (whole.length < NONCE_BYTES + TAG_BITS / Byte.SIZE) return Optional.empty();
            byte[] key = HexFormat.of().parseHex(client.key());
            byte[] clear = cipher(Cipher.DECRYPT_MODE, client, key, Arrays.copyOf(whole, NONCE_BYTES))
                    .doFinal(whole, NONCE_BYTES, whole.length - NONCE_BYTES);
            return Optional.of(new String(clear, StandardCharsets.UTF_8));
        } catch (AEADBadTagException | IllegalArgumentException changed) {
            return Optional.empty();
        } catch (GeneralSecurityException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** The id is bound in: a sealed text moved under another id does not open. */
    private static Cipher cipher(int mode, ClientKey client, byte[] key, byte[] nonce) throws GeneralSecurityException {
        Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
        cipher.init(mode, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
        cipher.updateAAD(("stirtide.client.v1:" + client.clientId()).getBytes(StandardCharsets.UTF_8));
        return cipher;
    }
}
