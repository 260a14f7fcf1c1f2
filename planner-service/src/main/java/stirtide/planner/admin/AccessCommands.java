package stirtide.planner.admin;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.AccessList.Person;
import stirtide.planner.access.AccessList.Token;
import stirtide.planner.access.Role;

/** Gives tokens and codes, and takes them back. A running service takes notice within a second. */
final class AccessCommands {
    private static final String ACCEPTED = """
            accepted are:
            token FOLDER add --role ROLE --name NAME [--salon ID] [--days N]   prints the token, once
            token FOLDER list                                                 who has which, never the tokens
            token FOLDER revoke TOKEN-ID                                      takes one back
            person FOLDER code PERSON --role ROLE [--salon ID] [--days N]      prints a new code of six digits, once
            person FOLDER list                                                who has a code, never the codes
            person FOLDER remove PERSON                                       takes the code away
            ROLE of a token: terminal, assistant, colorist, manager, service; of a person: assistant, colorist, manager
            NAME, PERSON: the person id in the salon's files, or a name for the terminal or program
            N: days until it ends, 1 to 3650 (365)
            """;
    private static final String NAME = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";
    private static final int USUAL_DAYS = 365;
    private static final int MOST_DAYS = 3650;

    private final AccessFile file;
    private final List<String> words;
    private final Instant now;
    private final PrintStream out;

    private AccessCommands(AccessFile file, List<String> words, Instant now, PrintStream out) {
        this.file = file;
        this.words = words;
        this.now = now;
        this.out = out;
    }

    static int run(List<String> words, Instant now, PrintStream out) {
        if (words.size() < 3) throw wrong("too few words");
        AccessCommands tasks = new AccessCommands(new AccessFile(Path.of(words.get(1))), words, now, out);
        switch (words.get(0) + " " + words.get(2)) {
            case "token add" -> tasks.addToken();
            case "token list" -> tasks.listTokens();
            case "token revoke" -> tasks.revoke();
            case "person code" -> tasks.giveCode();
            case "person list" -> tasks.listPeople();
            case "person remove" -> tasks.takeCode();
            default -> throw wrong("there is no task " + words.get(0) + " " + words.get(2));
        }
        return 0;
    }

    private static CareFailure wrong(String why) {
        return new CareFailure(CareFailure.USAGE, why + "; " + ACCEPTED);
    }

    private void addToken() {
        Map<String, String> options = options(3, List.of("--role", "--name", "--salon", "--days"));
        String name = name(Optional.ofNullable(options.get("--name")).orElseThrow(() -> wrong("--name is missing")));
        AccessFile.Made made = file.make(name, role(options), salon(options), now, days(options));
        out.println(made.token());
    }

    private void listTokens() {
        Map<String, Instant> uses = file.lastUses();
        for (Token token : file.read().tokens()) {
            String state =
                    token.revoked().isPresent() ? "revoked" : token.expires().isAfter(now) ? "good" : "ended";
            String used = Optional.ofNullable(uses.get(token.tokenId()))
                    .map(at -> "used " + at)
                    .orElse("never used");
            out.println(String.join(
                    "  ",
                    token.tokenId(),
                    token.name(),
                    token.role().word(),
                    token.salonId().orElse("all salons"),
                    state,
                    "ends " + token.expires(),
                    used));
        }
    }

    private void revoke() {
        String id = fourth();
        if (!file.revoke(id, now)) throw wrong("there is no token " + id);
        out.println("token " + id + " is good no more");
    }

    private void giveCode() {
        Map<String, String> options = options(4, List.of("--role", "--salon", "--days"));
        Role role = role(options);
        if (role == Role.TERMINAL || role == Role.SERVICE) throw wrong("a person is no " + role.word());
        out.println(file.giveCode(name(fourth()), role, salon(options), now, days(options)));
    }

    private void listPeople() {
        for (Person person : file.read().people())
            out.println(String.join(
                    "  ",
                    person.personId(),
                    person.role().word(),
                    person.salonId().orElse("all salons"),
                    "ends " + person.expires()));
    }

    private void takeCode() {
        String id = fourth();
        if (!file.takeCode(id)) throw wrong("nobody named " + id + " has a code");
        out.println(id + " can sign on no more");
    }

    private String fourth() {
        if (words.size() < 4) throw wrong("a word is missing");
        return words.get(3);
    }

    private Map<String, String> options(int from, List<String> known) {
        Map<String, String> options = new TreeMap<>();
        for (int at = from; at < words.size(); at += 2) {
            if (!known.contains(words.get(at))) throw wrong(words.get(at) + " is not an option here");
            if (at + 1 == words.size()) throw wrong(words.get(at) + " needs a value");
            options.put(words.get(at), words.get(at + 1));
        }
        return options;
    }

    private static String name(String text) {
        if (!text.matches(NAME)) throw wrong("\"" + text + "\" is no name: letters, digits, dot, dash, underscore");
        return text;
    }

    private static Role role(Map<String, String> options) {
        String word = Optional.ofNullable(options.get("--role")).orElseThrow(() -> wrong("--role is missing"));
        return Role.of(word).orElseThrow(() -> wrong("\"" + word + "\" is no role"));
    }

    private static Optional<String> salon(Map<String, String> options) {
        return Optional.ofNullable(options.get("--salon")).map(AccessCommands::name);
    }

    private static Duration days(Map<String, String> options) {
        String text = options.getOrDefault("--days", Integer.toString(USUAL_DAYS));
        if (!text.matches("[0-9]{1,4}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > MOST_DAYS)
            throw wrong("--days takes 1 to " + MOST_DAYS);
        return Duration.ofDays(Integer.parseInt(text));
    }
}
