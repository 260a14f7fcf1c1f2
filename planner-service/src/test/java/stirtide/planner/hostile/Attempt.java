package stirtide.planner.hostile;

import java.util.Optional;
import stirtide.planner.hostile.ContractBook.Operation;
import stirtide.planner.hostile.HostileSalons.Sender;

/**
 * One request to be sent.
 *
 * @param kind how it was made, for the count at the end
 * @param operation what it asks for; empty when it is no operation of the contract
 * @param sender who sends it
 * @param bytes all of it
 * @param head whether it is a HEAD request
 */
record Attempt(String kind, Optional<Operation> operation, Sender sender, byte[] bytes, boolean head) {
    /** The first line and the size, for a report. */
    String shortly() {
        String text = new String(bytes, java.nio.charset.StandardCharsets.UTF_8);
        String token = sender.token().isEmpty() ? "no token" : sender.token();
        String shown = text.replace(token, sender.role() + " of " + sender.salon());
        return kind + " " + shown.substring(0, Math.min(1_500, shown.length())).replace("\r\n", " | ");
    }
}
