package stirtide.demo.measure;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import stirtide.demo.link.Answer;
import stirtide.demo.link.SalonLink;
import stirtide.demo.link.ServiceSilent;
import stirtide.demo.play.CommandIds;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.ServiceCard;

/**
 * Measures how long a listener waits for the view that follows a command, and for the plan that knows it. Every command
 * moves a client by some minutes, so each is followed by a new plan, as on a busy day.
 */
public final class LatencyTrial {
    private static final int WARM_UP = 50;
    private static final int PATIENCE_MILLIS = 10_000;

    private final SalonLink link;
    private final List<Arrival> arrivals = new ArrayList<>();

    /** A view as it came: when, and what it knows. */
    private record Arrival(long nanos, long revision, long planRevision, boolean last) {
        boolean knows(long wanted) {
            return planRevision >= wanted;
        }
    }

    /** @param link an open day */
    public LatencyTrial(SalonLink link) {
        this.link = link;
    }

    /**
     * Measures.
     *
     * @param actor person in whose name the commands are sent
     * @param count number of commands, more than 0, beside the first {@value #WARM_UP} that are not counted
     * @return the figures as lines for people
     */
    public String measure(String actor, int count) {
        Thread listener = new Thread(() -> link.follow(this::arrived), "latency-listener");
        listener.setDaemon(true);
        listener.start();
        List<ServiceCard> cards = link.view().services();
        ServiceCard card = cards.get(cards.size() - 1);
        CommandIds ids = new CommandIds("latency");
        List<Long> fromSent = new ArrayList<>();
        List<Long> fromAccepted = new ArrayList<>();
        List<Long> toPlan = new ArrayList<>();
        List<Long> toLast = new ArrayList<>();
        for (int i = 0; i < WARM_UP + count; i++) {
            Instant start = card.bookedStart().plusSeconds(60L * (i % 2 + 1));
            DayCommand move = new DayCommand.MoveService(card.service(), start, Optional.empty(), "measuring");
            long sent = System.nanoTime();
            Answer answer = link.send(new CommandRequest(ids.next(), actor, move));
            long accepted = System.nanoTime();
            if (!answer.accepted()) throw new ServiceSilent("a command was refused: " + answer.sentence());
            long arrived = await(view -> view.revision() >= answer.lastRevision());
            long planned = await(view -> view.knows(answer.lastRevision()));
            long last = await(view -> view.knows(answer.lastRevision()) && view.last());
            if (i < WARM_UP) continue;
            fromSent.add(arrived - sent);
            fromAccepted.add(Math.max(0, arrived - accepted));
            toPlan.add(planned - sent);
            toLast.add(last - sent);
        }
        return Wall.row("from sending a command to its view at a listener", fromSent)
                + Wall.row("from its answer to its view at a listener", fromAccepted)
                + Wall.row("from sending a command to the first plan for it", toPlan)
                + Wall.row("from sending a command to the last plan for it", toLast);
    }

    private synchronized void arrived(String json) {
        long nanos = System.nanoTime();
        DayView view = ContractJson.read(json, DayView.class);
        arrivals.add(new Arrival(nanos, view.revision(), view.planRevision(), !view.betterPlanSought()));
        notifyAll();
    }

    /** Waits until such a view has arrived, and says when it did. */
    private synchronized long await(Predicate<Arrival> wanted) {
        long end = System.nanoTime() + PATIENCE_MILLIS * 1_000_000L;
        Optional<Arrival> first = arrivals.stream().filter(wanted).findFirst();
        while (first.isEmpty()) {
            long millis = (end - System.nanoTime()) / 1_000_000;
            if (millis <= 0) throw new ServiceSilent("no view came within " + PATIENCE_MILLIS + " ms");
            try {
                wait(millis);
            } catch (InterruptedException leaving) {
                Thread.currentThread().interrupt();
                throw new ServiceSilent("interrupted");
            }
            first = arrivals.stream().filter(wanted).findFirst();
        }
        return first.get().nanos();
    }

    /** Percentiles as text. */
    private static final class Wall {
        private static final double NANOS_PER_MILLI = 1e6;

        static String row(String what, List<Long> nanos) {
            List<Long> sorted = nanos.stream().sorted().toList();
            return String.format(
                    Locale.ROOT,
                    "%-52s n %d  p50 %.1f ms  p95 %.1f ms  max %.1f ms%n",
                    what,
                    sorted.size(),
                    at(sorted, 50),
                    at(sorted, 95),
                    at(sorted, 100));
        }

        private static double at(List<Long> sorted, int percent) {
            int place = (sorted.size() * percent + 99) / 100 - 1;
            return sorted.get(Math.max(0, place)) / NANOS_PER_MILLI;
        }
    }
}
