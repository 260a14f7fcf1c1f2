package stirtide.planner.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.json.ContractJson;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Role;
import stirtide.planner.service.SmallSalon;

/** Two salons in one service, words that only those who may may read, and people of all roles who ask. */
final class HostileSalons {
    static final List<String> SALONS = List.of("quay-house", "tern-house");

    /** Tokens of each kind: one token may send 600 commands a minute. */
    private static final int TOKENS = 8;

    private static final Duration DAY = Duration.ofDays(1);

    private final AccessFile file;
    private final Instant now = Instant.now();
    private final List<Sender> senders = new ArrayList<>();
    private final String code;

    /**
     * Whoever asks.
     *
     * @param token sent as bearer; empty for none
     * @param role what the token lets do; empty when nobody is let in with it
     * @param salon only salon the token sees
     */
    record Sender(String token, Optional<Role> role, Optional<String> salon) {
        boolean sees(String other) {
            return role.isPresent() && (salon.isEmpty() || salon.get().equals(other));
        }
    }

    HostileSalons(Path data) {
        file = new AccessFile(data);
        for (int count = 0; count < TOKENS; count++)
            for (Role role : Role.values()) {
                add(role, Optional.empty());
                SALONS.forEach(salon -> add(role, Optional.of(salon)));
            }
        nobodies();
        code = file.giveCode("ada", Role.COLORIST, Optional.empty(), now, DAY);
    }

    private void add(Role role, Optional<String> salon) {
        senders.add(new Sender(file.make("mika", role, salon, now, DAY).token(), Optional.of(role), salon));
    }

    private void nobodies() {
        AccessFile.Made revoked = file.make("gone", Role.MANAGER, Optional.empty(), now, DAY);
        file.revoke(revoked.kept().tokenId(), now);
        String ended = file.make("late", Role.MANAGER, Optional.empty(), now.minus(DAY), Duration.ofHours(1))
                .token();
        for (String token : List.of("", revoked.token(), ended, "stir_000000000000_" + "A".repeat(43), "x"))
            senders.add(new Sender(token, Optional.empty(), Optional.empty()));
    }

    List<Sender> senders() {
        return List.copyOf(senders);
    }

    /** The code with which ada signs on. */
    String code() {
        return code;
    }

    /** Somebody who may do everything. */
    Sender manager() {
        return senders.stream()
                .filter(one -> one.role().equals(Optional.of(Role.MANAGER))
                        && one.salon().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    /** A word in the names of a salon. */
    static String nameCanary(String salon) {
        return salon.equals("quay-house") ? "Quartz-canary" : "Teasel-canary";
    }

    /** A word in the references of a salon's clients. */
    static String clientCanary(String salon) {
        return salon.equals("quay-house") ? "Oleander-canary" : "Thistle-canary";
    }

    /** The request that opens a day of a salon with the canaries in its names and clients. */
    static byte[] opening(String salon, LocalDate date) {
        return ContractJson.write(SmallSalon.opening())
                .replace("quay-house", salon)
                .replace("Quay House", nameCanary(salon))
                .replace("House powder", nameCanary(salon) + " powder")
                .replace("2027-03-09", date.toString())
                .replace("open-day-1", "open-" + salon + "-" + date)
                .replaceAll("\"clientRef\":\"K", "\"clientRef\":\"" + clientCanary(salon) + "-")
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Closes a day of both salons, if somebody else has not closed it before. */
    void close(Wire wire, LocalDate date) throws IOException {
        for (String salon : SALONS) {
            byte[] body = ("{\"commandId\":\"close-" + salon + date
                            + "\",\"actor\":\"mika\",\"command\":{\"type\":\"CloseDay\"}}")
                    .getBytes(StandardCharsets.UTF_8);
            String target = "/days/" + salon + "/" + date + "/commands";
            wire.ask(RequestText.of("POST", target, manager().token(), body), false);
        }
    }

    /** Opens a day of both salons. */
    void open(Wire wire, LocalDate date) throws IOException {
        for (String salon : SALONS) {
            byte[] request = RequestText.of("POST", "/days", manager().token(), opening(salon, date));
            Answer answer = wire.ask(request, false).orElseThrow(() -> new IOException("no answer to an opening"));
            if (answer.status() != 201 && answer.status() != 200)
                throw new IOException("a day was not opened: " + answer.body());
        }
    }
}
