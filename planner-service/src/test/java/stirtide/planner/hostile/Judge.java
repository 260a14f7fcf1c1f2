package stirtide.planner.hostile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import stirtide.planner.access.Rights;
import stirtide.planner.access.Role;
import stirtide.planner.hostile.ContractBook.Operation;
import stirtide.planner.hostile.HostileSalons.Sender;

/** Says what is wrong with an answer. Safe for threads. */
final class Judge {
    /** Words that only the inside of a program knows. */
    private static final Pattern INSIDE = Pattern.compile(
            "Exception|\\tat |io\\.vertx|java\\.(lang|util|io|time)\\.|com\\.fasterxml|com\\.networknt|org\\.sqlite|SQLITE_"
                    + "|stirtide\\.planner|stirtide\\.events\\.");

    /** Codes under which the service says on purpose that it cannot do it now. */
    private static final Set<String> DELIBERATE = Set.of("NOT_NOW", "ANSWER_LATE", "NO_MORE_LISTENERS");

    private final ContractBook contract;

    Judge(ContractBook contract) {
        this.contract = contract;
    }

    List<String> faults(Attempt attempt, Answer answer) {
        List<String> faults = new ArrayList<>();
        if (answer.status() >= 500 && !deliberate(answer)) faults.add("status " + answer.status());
        if (INSIDE.matcher(answer.text()).find()) faults.add("tells of the inside of the program");
        for (String canary : hidden(attempt))
            if (answer.text().contains(canary)) faults.add("tells \"" + canary + "\" to one who may not know");
        if (answer.status() < 400 && !mayAsk(attempt)) faults.add("was let in");
        deviation(attempt, answer).ifPresent(faults::add);
        return faults;
    }

    private static boolean deliberate(Answer answer) {
        return answer.status() == 503
                && answer.headers().containsKey("retry-after")
                && DELIBERATE.stream().anyMatch(code -> answer.body().contains("\"" + code + "\""));
    }

    /** A path that was changed may have become another operation's. */
    private static boolean mayBeAnother(Attempt attempt) {
        return attempt.kind().equals("odd path") || attempt.kind().equals("odd parameters");
    }

    private boolean mayAsk(Attempt attempt) {
        if (attempt.sender().role().isEmpty()) return false;
        if (mayBeAnother(attempt) || attempt.operation().isEmpty()) return true;
        Role role = attempt.sender().role().get();
        return Rights.operation(role, attempt.operation().get().id());
    }

    private static List<String> hidden(Attempt attempt) {
        List<String> hidden = new ArrayList<>();
        Sender sender = attempt.sender();
        // A path that was changed may have become that of the day itself, which those may see who know its clients.
        boolean events = !mayBeAnother(attempt)
                && attempt.operation()
                        .filter(one -> one.id().equals("readEvents"))
                        .isPresent();
        for (String salon : HostileSalons.SALONS) {
            if (!sender.sees(salon)) hidden.add(HostileSalons.nameCanary(salon));
            if (!sender.sees(salon) || events || sender.role().equals(Optional.of(Role.SERVICE)))
                hidden.add(HostileSalons.clientCanary(salon));
        }
        return hidden;
    }

    private Optional<String> deviation(Attempt attempt, Answer answer) {
        if (attempt.operation().isEmpty() && !attempt.head()) return contract.problemDeviation(answer);
        if (attempt.head()) return answer.status() < 500 ? Optional.empty() : Optional.of("HEAD fails");
        Operation operation = attempt.operation().get();
        if (!mayBeAnother(attempt) || answer.status() >= 400) return contract.deviation(operation, answer);
        boolean ofAnother = contract.operations().stream()
                .filter(other -> other.method().equals(operation.method()))
                .anyMatch(other -> contract.deviation(other, answer).isEmpty());
        return ofAnother ? Optional.empty() : Optional.of("fits no operation of the contract");
    }
}
