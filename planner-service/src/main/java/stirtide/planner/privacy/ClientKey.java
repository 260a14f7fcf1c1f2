package stirtide.planner.privacy;

/**
 * The key of one client.
 *
 * @param clientId c and a number, given in order of first appearance, never given again
 * @param key 256 random bits, hexadecimal
 * @param lookup HMAC-SHA-256 of the reference under the key of the file, hexadecimal: finds a client again
 */
record ClientKey(String clientId, String key, String lookup) {
    @Override
    public String toString() {
        return "key of " + clientId;
    }
}
