package stirtide.planner.admin;

import java.time.Duration;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import stirtide.planner.access.Role;
import stirtide.planner.cli.CommandLines;
import stirtide.planner.cli.CommandLines.WholeNumber;

/** Options shared by the commands that give a token or a code: what its holder may do, where, and how long. */
final class GrantOptions {
    private static final class Days extends WholeNumber {
        Days() {
            super(1, 3650);
        }
    }

    /** Accepts names of people, terminals, programs and salons. */
    static final class Name implements ITypeConverter<String> {
        private static final String PATTERN = "[A-Za-z0-9][A-Za-z0-9._-]{0,63}";

        @Override
        public String convert(String text) throws Exception {
            return CommandLines.accepting("1 to 64 letters, digits, dots, dashes and underscores", Name::checked)
                    .convert(text);
        }

        private static String checked(String text) {
            if (!text.matches(PATTERN)) throw new IllegalArgumentException(text);
            return text;
        }
    }

    private static final class RoleName implements ITypeConverter<Role> {
        @Override
        public Role convert(String text) throws Exception {
            return CommandLines.accepting(
                            "terminal, assistant, colorist, manager or service; for a person one of the middle three",
                            word -> Role.of(word).orElseThrow(() -> new IllegalArgumentException(word)))
                    .convert(text);
        }
    }

    @Option(
            names = "--role",
            required = true,
            paramLabel = "ROLE",
            converter = RoleName.class,
            description = "assistant, colorist or manager; for a token also terminal or service")
    private Role role = Role.TERMINAL;

    @Option(names = "--salon", paramLabel = "ID", converter = Name.class, description = "the only salon (all)")
    private Optional<String> salon = Optional.empty();

    @Option(
            names = "--days",
            paramLabel = "N",
            converter = Days.class,
            description = "days until it expires, 1 to 3650 (${DEFAULT-VALUE})")
    private int days = 365;

    Role role() {
        return role;
    }

    Optional<String> salon() {
        return salon;
    }

    Duration lifetime() {
        return Duration.ofDays(days);
    }
}
