package stirtide.planner.privacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClientKeysTest {
    @TempDir
    Path folder;

    private static void save(ClientKeys keys) throws Exception {
        keys.write(keys.snapshot());
    }

    @Test
    void a_reference_is_sealed_the_same_each_time_and_opens_again_after_a_restart() throws Exception {
        ClientKeys keys = new ClientKeys(folder);
        String sealed = keys.seal("R.M. \"7\"");
        assertThat(sealed).startsWith("sealed:c000001:").doesNotContain("R.M.");
        assertThat(keys.seal("R.M. \"7\"")).isEqualTo(sealed);
        assertThat(keys.seal("T.W.")).startsWith("sealed:c000002:");
        save(keys);
        ClientKeys again = new ClientKeys(folder);
        assertThat(again.seal("R.M. \"7\"")).isEqualTo(sealed);
        assertThat(again.shown("{\"clientRef\":\"" + sealed + "\"}")).isEqualTo("{\"clientRef\":\"R.M. \\\"7\\\"\"}");
    }

    @Test
    void the_file_is_for_its_owner_only_and_holds_no_reference() throws Exception {
        ClientKeys keys = new ClientKeys(folder);
        keys.seal("Rosalind-canary");
        save(keys);
        Path file = folder.resolve("clients.keys");
        assertThat(Files.readString(file)).doesNotContain("canary");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
    }

    @Test
    void a_blank_reference_needs_no_key_and_one_that_is_long_or_no_text_is_refused() throws Exception {
        ClientKeys keys = new ClientKeys(folder);
        assertThat(keys.seal("")).isEmpty();
        assertThatThrownBy(() -> keys.seal("x".repeat(65)))
                .isInstanceOf(ClientKeys.Refused.class)
                .hasMessageContaining("64 characters")
                .extracting(refused -> ((ClientKeys.Refused) refused).code())
                .isEqualTo("CLIENT_REFERENCE_LONG");
        assertThat(keys.seal("x".repeat(64))).startsWith("sealed:");
        // Half of a pair, which would be written as the same question mark for every client.
        assertThatThrownBy(() -> keys.seal("\udc00"))
                .isInstanceOf(ClientKeys.Refused.class)
                .extracting(refused -> ((ClientKeys.Refused) refused).code())
                .isEqualTo("CLIENT_REFERENCE_NO_TEXT");
    }

    @Test
    void a_sealed_text_moved_to_another_client_or_changed_does_not_open() throws Exception {
        ClientKeys keys = new ClientKeys(folder);
        String one = keys.seal("R.M.");
        keys.seal("T.W.");
        assertThat(keys.shown(one.replace("c000001", "c000002"))).isEqualTo(ClientKeys.ERASED);
        char last = one.charAt(one.length() - 3);
        String changed =
                one.substring(0, one.length() - 3) + (last == 'A' ? 'B' : 'A') + one.substring(one.length() - 2);
        assertThat(keys.shown(changed)).isEqualTo(ClientKeys.ERASED);
        for (int end = one.lastIndexOf(':') + 2; end < one.length(); end++)
            assertThat(keys.shown(one.substring(0, end))).isEqualTo(ClientKeys.ERASED);
    }

    @Test
    void an_erased_client_stays_erased_also_when_an_old_copy_of_the_keys_comes_back() throws Exception {
        ClientKeys keys = new ClientKeys(folder);
        String sealed = keys.seal("R.M.");
        save(keys);
        Path file = folder.resolve("clients.keys");
        byte[] oldCopy = Files.readAllBytes(file);
        keys.forget("c000001");
        save(keys);
        assertThat(keys.shown(sealed)).isEqualTo(ClientKeys.ERASED);
        assertThat(keys.find("R.M.")).isEmpty();
        Files.write(file, oldCopy);
        ClientKeys restored = new ClientKeys(folder);
        assertThat(restored.shown(sealed)).isEqualTo(ClientKeys.ERASED);
        assertThat(restored.seal("R.M.")).startsWith("sealed:c000002:");
    }
}
