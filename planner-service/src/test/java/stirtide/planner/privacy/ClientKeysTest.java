package stirtide.planner.privacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
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

    private void refused(String file, String what) {
        assertThatThrownBy(() -> new ClientKeys(folder))
                .isInstanceOf(IOException.class)
                .hasMessageContaining(file)
                .hasMessageContaining(what);
    }

    @Test
    void a_changed_byte_in_the_keys_or_in_the_list_of_the_erased_is_told() throws Exception {
        ClientKeys keys = new ClientKeys(folder);
        keys.seal("R.M.");
        keys.seal("T.W.");
        keys.forget("c000001");
        save(keys);
        for (String name : List.of("clients.keys", "clients.erased")) {
            Path file = folder.resolve(name);
            byte[] whole = Files.readAllBytes(file);
            for (int at = 0; at < whole.length; at++) {
                byte[] changed = whole.clone();
                changed[at] ^= (byte) (at % 2 == 0 ? 1 : 0x80);
                Files.write(file, changed);
                assertThatThrownBy(() -> new ClientKeys(folder))
                        .as(name + " byte " + at)
                        .isInstanceOf(IOException.class);
            }
            for (int length = 0; length < whole.length; length++) {
                Files.write(file, Arrays.copyOf(whole, length));
                // Without its last line, and nothing else, the file of keys still holds all of them.
                if (wholeText(file, whole, length)) continue;
                assertThatThrownBy(() -> new ClientKeys(folder))
                        .as(name + " cut to " + length)
                        .isInstanceOf(IOException.class);
            }
            Files.write(file, whole);
        }
        assertThat(new ClientKeys(folder).erased()).containsExactly("c000001");
    }

    private static boolean wholeText(Path file, byte[] whole, int length) {
        String rest = new String(whole, length, whole.length - length, StandardCharsets.UTF_8);
        return file.endsWith("clients.keys") && rest.matches("\\n?sha256 [0-9a-f]{64}\\n");
    }

    @Test
    void a_lost_list_of_the_erased_and_one_with_other_words_are_told() throws Exception {
        ClientKeys keys = new ClientKeys(folder);
        keys.seal("R.M.");
        keys.forget("c000001");
        save(keys);
        Files.delete(folder.resolve("clients.erased"));
        refused("clients.erased", "missing, empty or shortened");
        Files.writeString(folder.resolve("clients.erased"), "remember the milk");
        refused("clients.erased", "accepted are ids such as");
        Files.write(folder.resolve("clients.erased"), new byte[] {(byte) 0xc3, 0x28});
        refused("clients.erased", "it is no text");
    }

    @Test
    void files_of_an_earlier_release_are_read() throws Exception {
        ClientKeys keys = new ClientKeys(folder);
        String sealed = keys.seal("R.M.");
        keys.seal("T.W.");
        keys.forget("c000002");
        save(keys);
        Path file = folder.resolve("clients.keys");
        String json = Files.readString(file).lines().findFirst().orElseThrow();
        Files.writeString(file, json.replace("\"erased\":1,", ""));
        Files.writeString(folder.resolve("clients.erased"), "c000002");
        ClientKeys again = new ClientKeys(folder);
        assertThat(again.shown(sealed)).isEqualTo("R.M.");
        assertThat(again.erased()).containsExactly("c000002");
    }
}
