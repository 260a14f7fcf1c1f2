package stirtide.planner.hostile;

import java.io.IOException;
import java.net.SocketTimeoutException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import stirtide.planner.hostile.HostileSalons.Sender;

/** One sender of many requests, one after the other, on one connection. */
final class HostileRun implements Callable<HostileRun> {
    /** After so many faults the rest would tell nothing new. */
    private static final int MOST_FAULTS = 20;

    private static final int REQUESTS_A_DAY = 1_500;
    private static final int RAW_EVERY = 12;

    private final ContractBook contract;
    private final HostileSalons salons;
    private final int port;
    private final int requests;
    private final int number;
    private final long seed;

    /** Answers by kind of request and status. */
    final Map<String, Integer> answers = new TreeMap<>();

    /** Answers by operation and status. */
    final Map<String, Integer> operations = new TreeMap<>();

    final List<String> faults = new ArrayList<>();

    HostileRun(ContractBook contract, HostileSalons salons, int port, int requests, int number, long seed) {
        this.contract = contract;
        this.salons = salons;
        this.port = port;
        this.requests = requests;
        this.number = number;
        this.seed = seed + number;
    }

    @Override
    public HostileRun call() throws IOException {
        LocalDate date = LocalDate.parse("2027-03-09").plusDays(number);
        AttemptMaker maker = new AttemptMaker(contract, salons, date, seed);
        RawBytes raw = new RawBytes(seed);
        Judge judge = new Judge(contract);
        RawJudge rawJudge = new RawJudge(contract);
        try (Wire wire = new Wire(port)) {
            for (int count = 0; count < requests && faults.size() < MOST_FAULTS; count++) {
                if (count % REQUESTS_A_DAY == 0) {
                    LocalDate newest = date.plusDays(4L * count / REQUESTS_A_DAY);
                    if (count > 0) salons.close(wire, newest.minusDays(4));
                    salons.open(wire, newest);
                    maker.look(newest);
                }
                if (count % RAW_EVERY == 0) sendRaw(wire, raw.next(), rawJudge);
                else send(wire, maker.next(), judge);
            }
        }
        return this;
    }

    private void send(Wire wire, Attempt attempt, Judge judge) throws IOException {
        try {
            Optional<Answer> answer = wire.ask(attempt.bytes(), attempt.head());
            String status = answer.map(one -> Integer.toString(one.status())).orElse("closed");
            answers.merge(attempt.kind() + " " + status, 1, Integer::sum);
            String operation =
                    attempt.operation().map(ContractBook.Operation::id).orElse("no operation");
            operations.merge(operation + " " + status, 1, Integer::sum);
            List<String> found = answer.map(one -> judge.faults(attempt, one))
                    .orElse(attempt.bytes().length > 200_000 ? List.of() : List.of("closed without an answer"));
            for (String fault : found)
                note(fault, attempt, answer.map(Answer::text).orElse(""));
        } catch (Wire.NoHttp | SocketTimeoutException wrong) {
            note(wrong.toString(), attempt, "");
        }
    }

    private void sendRaw(Wire wire, byte[] bytes, RawJudge judge) throws IOException {
        Sender nobody = new Sender("", Optional.empty(), Optional.empty());
        Attempt attempt = new Attempt("raw bytes", Optional.empty(), nobody, bytes, false);
        try {
            String text = wire.exchange(bytes);
            answers.merge("raw bytes " + (text.length() < 12 ? "closed" : text.substring(9, 12)), 1, Integer::sum);
            for (String fault : judge.faults(attempt, text)) note(fault, attempt, text);
        } catch (SocketTimeoutException late) {
            note("neither answered nor closed", attempt, "");
        }
    }

    private void note(String fault, Attempt attempt, String answer) {
        faults.add(fault + "\n    request: " + attempt.shortly() + "\n    answer: "
                + answer.substring(0, Math.min(600, answer.length())).replace("\n", " | "));
    }
}
