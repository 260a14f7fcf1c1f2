package stirtide.planner.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuthenticatorTest {
    private static final Instant START = Instant.parse("2027-03-09T08:00:00Z");
    private static final Duration DAY = Duration.ofDays(1);

    @TempDir
    Path folder;

    private AccessFile file;
    private Instant now = START;

    @BeforeEach
    void begin() {
        file = new AccessFile(folder);
    }

    private Authenticator gate() {
        return new Authenticator(file, () -> now);
    }

    private String make(String name, Role role) {
        return file.make(name, role, Optional.empty(), START, DAY).token();
    }

    private static String code(AuthenticationResult verdict) {
        return ((AuthenticationResult.Unknown) verdict).code();
    }

    private static Caller caller(AuthenticationResult verdict) {
        return ((AuthenticationResult.Known) verdict).caller();
    }

    @Test
    void without_any_token_everybody_at_the_machine_is_let_in() {
        assertThat(gate().check(null)).isEqualTo(new AuthenticationResult.Known(Caller.LOCAL));
    }

    @Test
    void a_token_lets_in_whom_it_is_for_and_nobody_else() {
        String token = make("mika", Role.ASSISTANT);
        Authenticator gate = gate();
        assertThat(caller(gate.check("Bearer " + token)).actor()).isEqualTo("mika");
        assertThat(caller(gate.check("Bearer " + token)).role()).contains(Role.ASSISTANT);
        // The word before the token is free of case and may have more than one space after it, RFC 9110 section 11.4.
        assertThat(caller(gate.check("bearer  " + token)).actor()).isEqualTo("mika");
        assertThat(code(gate.check(null))).isEqualTo("TOKEN_NEEDED");
        char last = token.charAt(token.length() - 2);
        String other =
                token.substring(0, token.length() - 2) + (last == 'A' ? 'B' : 'A') + token.charAt(token.length() - 1);
        for (String wrong : new String[] {"", "Bearer", "Bearer x", "Basic " + token, "Bearer " + other})
            assertThat(code(gate.check(wrong))).as(wrong).isEqualTo("TOKEN_UNKNOWN");
    }

    @Test
    void a_token_ends_and_can_be_taken_back_while_the_service_runs() {
        String token = make("mika", Role.ASSISTANT);
        Authenticator gate = gate();
        now = START.plus(DAY);
        assertThat(code(gate.check("Bearer " + token))).isEqualTo("TOKEN_EXPIRED");
        now = START;
        file.revoke(file.read().tokens().get(0).tokenId(), START);
        gate.readAgain(gate.stamp()).ifPresent(gate::renew);
        assertThat(code(gate.check("Bearer " + token))).isEqualTo("TOKEN_REVOKED");
    }

    @Test
    void the_files_hold_no_secret_and_only_their_owner_reads_them() throws Exception {
        String token = make("mika", Role.ASSISTANT);
        String code = file.giveCode("ada", Role.COLORIST, Optional.empty(), START, DAY);
        Path list = folder.resolve("access.json");
        String content = Files.readString(list);
        assertThat(content)
                .doesNotContain(token)
                .doesNotContain(token.substring(18))
                .doesNotContain("\"" + code);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(list)))
                .isEqualTo("rw-------");
        Authenticator gate = gate();
        gate.check("Bearer " + token);
        gate.unwrittenUses().ifPresent(gate::write);
        assertThat(file.lastUses()).containsEntry(file.read().tokens().get(0).tokenId(), START);
    }

    @Test
    void a_running_service_is_never_opened_by_removing_the_list() throws Exception {
        make("mika", Role.ASSISTANT);
        Authenticator gate = gate();
        Files.delete(folder.resolve("access.json"));
        assertThatThrownBy(() -> gate.readAgain(gate.stamp()))
                .isInstanceOf(AccessFailure.class)
                .hasMessageContaining("missing or empty");
        assertThat(code(gate.check(null))).isEqualTo("TOKEN_NEEDED");
    }

    @Test
    void a_list_that_cannot_be_read_lets_nobody_in() throws Exception {
        Files.writeString(folder.resolve("access.json"), "{");
        assertThatThrownBy(this::gate).isInstanceOf(AccessFailure.class).hasMessageContaining("access.json");
    }

    /** Two of the three files that tell of a closed service may be lost. */
    @Test
    void a_closed_service_is_never_opened_by_lost_or_emptied_files() throws Exception {
        make("mika", Role.ASSISTANT);
        List<String> names = List.of("access.json", "access.lock", "access-used.json");
        for (String lost : names)
            for (String other : names)
                for (boolean emptied : new boolean[] {false, true}) {
                    Path copy = Files.createTempDirectory(folder, "copy");
                    for (String name : names) Files.copy(folder.resolve(name), copy.resolve(name));
                    for (String name : Set.of(lost).equals(Set.of(other)) ? List.of(lost) : List.of(lost, other))
                        if (emptied) Files.write(copy.resolve(name), new byte[0]);
                        else Files.delete(copy.resolve(name));
                    assertNotOpen(copy, lost + ", " + other + (emptied ? " emptied" : " missing"));
                }
    }

    private void assertNotOpen(Path copy, String what) {
        try {
            Authenticator gate = new Authenticator(new AccessFile(copy), () -> now);
            assertThat(gate.open()).as(what).isFalse();
            assertThat(code(gate.check(null))).as(what).isEqualTo("TOKEN_NEEDED");
        } catch (AccessFailure told) {
            assertThat(told).hasMessageContaining(copy.toString());
        }
    }

    @Test
    void a_lost_list_is_given_anew_by_the_next_token() throws Exception {
        make("mika", Role.ASSISTANT);
        Files.delete(folder.resolve("access.json"));
        assertThatThrownBy(this::gate).isInstanceOf(AccessFailure.class).hasMessageContaining("missing or empty");
        String token = make("ada", Role.MANAGER);
        assertThat(caller(gate().check("Bearer " + token)).actor()).isEqualTo("ada");
    }

    @Test
    void a_service_whose_last_code_was_taken_away_stays_closed() {
        file.giveCode("ada", Role.COLORIST, Optional.empty(), START, DAY);
        file.takeCode("ada");
        assertThat(gate().open()).isFalse();
    }

    @Test
    void a_changed_letter_anywhere_in_the_list_is_told() throws Exception {
        make("mika", Role.ASSISTANT);
        Path list = folder.resolve("access.json");
        byte[] whole = Files.readAllBytes(list);
        for (int at = 0; at < whole.length; at++) {
            byte[] changed = whole.clone();
            changed[at] ^= 1;
            Files.write(list, changed);
            assertThatThrownBy(this::gate).as("byte " + at).isInstanceOf(AccessFailure.class);
        }
    }

    @Test
    void a_list_of_an_earlier_release_is_read() throws Exception {
        String token = make("mika", Role.ASSISTANT);
        Path list = folder.resolve("access.json");
        Files.writeString(list, Files.readString(list).lines().findFirst().orElseThrow());
        Files.delete(folder.resolve("access-used.json"));
        assertThat(caller(gate().check("Bearer " + token)).actor()).isEqualTo("mika");
    }

    private SignOnResult signOn(Authenticator gate, String terminal, String person, String code) {
        CodeAttempt tried = gate.tryCode(caller(gate.check("Bearer " + terminal)), person, code);
        return gate.signOn(tried, tried.right());
    }

    @Test
    void a_code_signs_a_person_on_at_one_terminal_and_the_next_one_takes_over() {
        String bar = make("bar-screen", Role.TERMINAL);
        String ada = file.giveCode("ada", Role.COLORIST, Optional.empty(), START, DAY);
        String mika = file.giveCode("mika", Role.ASSISTANT, Optional.empty(), START, DAY);
        Authenticator gate = gate();
        var first = (SignOnResult.SignedOn) signOn(gate, bar, "ada", ada);
        Caller signedOn = caller(gate.check("Bearer " + first.token()));
        assertThat(signedOn.role()).contains(Role.COLORIST);
        assertThat(signedOn.terminal()).contains("bar-screen");
        var second = (SignOnResult.SignedOn) signOn(gate, bar, "mika", mika);
        assertThat(code(gate.check("Bearer " + first.token()))).isEqualTo("SIGN_ON_ENDED");
        assertThat(gate.stillGood(signedOn)).isFalse();
        gate.signOff(caller(gate.check("Bearer " + second.token())));
        assertThat(code(gate.check("Bearer " + second.token()))).isEqualTo("SIGN_ON_ENDED");
    }

    @Test
    void a_sign_on_ends_with_its_terminal_with_the_persons_code_and_after_ten_hours() {
        String bar = make("bar-screen", Role.TERMINAL);
        String code = file.giveCode("ada", Role.COLORIST, Optional.empty(), START, DAY);
        Authenticator gate = gate();
        var welcome = (SignOnResult.SignedOn) signOn(gate, bar, "ada", code);
        now = START.plus(Duration.ofHours(10));
        assertThat(gate.check("Bearer " + welcome.token())).isInstanceOf(AuthenticationResult.Unknown.class);
        now = START;
        assertThat(gate.check("Bearer " + welcome.token())).isInstanceOf(AuthenticationResult.Known.class);
        file.takeCode("ada");
        gate.readAgain(gate.stamp()).ifPresent(gate::renew);
        assertThat(code(gate.check("Bearer " + welcome.token()))).isEqualTo("SIGN_ON_ENDED");
    }

    @Test
    void five_wrong_codes_lock_the_terminal_for_a_minute_and_then_for_longer() {
        String bar = make("bar-screen", Role.TERMINAL);
        String right = file.giveCode("ada", Role.COLORIST, Optional.empty(), START, DAY);
        String wrong = right.equals("111111") ? "222222" : "111111";
        Authenticator gate = gate();
        for (int time = 0; time < 5; time++)
            assertThat(signOn(gate, bar, time % 2 == 0 ? "ada" : "nobody", wrong))
                    .isInstanceOf(SignOnResult.Wrong.class);
        assertThat(signOn(gate, bar, "ada", right)).isEqualTo(new SignOnResult.Locked(Duration.ofMinutes(1)));
        now = START.plusSeconds(61);
        assertThat(signOn(gate, bar, "ada", wrong)).isInstanceOf(SignOnResult.Wrong.class);
        assertThat(signOn(gate, bar, "ada", right)).isEqualTo(new SignOnResult.Locked(Duration.ofMinutes(2)));
        now = now.plusSeconds(121);
        assertThat(signOn(gate, bar, "ada", right)).isInstanceOf(SignOnResult.SignedOn.class);
    }
}
