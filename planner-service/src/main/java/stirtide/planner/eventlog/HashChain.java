package stirtide.planner.eventlog;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Digests that tie every stored event to all events before it, and every stored command to its events. */
final class HashChain {
    private HashChain() {}

    /** Digest before the first event of a stream. It names the stream, so that two streams cannot be swapped. */
    static byte[] start(String day) {
        return digest(utf8("stirtide"), utf8(day));
    }

    /** Digest of an event: of the digest before it, its revision and its bytes. */
    static byte[] next(byte[] before, long revision, byte[] body) {
        return digest(before, number(revision), body);
    }

    /** Digest of a row of the command table. */
    static byte[] command(String day, String commandId, byte[] requestDigest, long first, long last) {
        return digest(utf8(day), utf8(commandId), requestDigest, number(first), number(last));
    }

    /** SHA-256 over the parts, each led by its length so that no two lists of parts give the same input. */
    static byte[] digest(byte[]... parts) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                sha.update(
                        ByteBuffer.allocate(Integer.BYTES).putInt(part.length).array());
                sha.update(part);
            }
            return sha.digest();
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private static byte[] number(long value) {
        return ByteBuffer.allocate(Long.BYTES).putLong(value).array();
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
