package stirtide.demo.play;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.day.OverMixCause;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.LiveBowl;
import stirtide.events.view.DayView.SectionCard;
import stirtide.events.view.DayView.ServiceCard;

/**
 * Clients and stylists. Clients sit down when they are booked and their chair is free; stylists apply minute by minute
 * from the bowl in hand, never from one that is past its life, and say what is done.
 */
public final class ChairSimulation {
    /** Less than this is not worth a weighing: the bowl counts as empty. */
    private static final int CRUMB_MILLIGRAMS = 500;
    /** Leftovers are weighed to this. */
    private static final int LEFT_STEP_MILLIGRAMS = 100;
    /** Minutes a rinse may be away from its plan. */
    private static final int RINSE_EARLY = -3;

    private static final int RINSE_LATE = 2;

    private final SetupLookup knowledge;
    private final DayScript script;
    private final SeededVariation chance;
    private final SortedMap<Integer, Booking> bookings;
    private final SortedMap<Integer, ApplicationProgress> seats = new TreeMap<>();
    private final SortedMap<String, Instant> lastUse = new TreeMap<>();

    /**
     * @param knowledge what everybody knows
     * @param script what happens beside the calendar
     * @param bookings bookings by service number; new ones may be added while the day is played
     */
    public ChairSimulation(SetupLookup knowledge, DayScript script, SortedMap<Integer, Booking> bookings) {
        this.knowledge = knowledge;
        this.script = script;
        this.chance = new SeededVariation(script.seed());
        this.bookings = bookings;
    }

    /** What somebody at the chairs does now, if anything. */
    public Optional<StaffAction> next(DayView view) {
        for (ServiceCard card : view.services()) {
            Optional<StaffAction> deed = atChair(view, card);
            if (deed.isPresent()) return deed;
        }
        return Optional.empty();
    }

    /** Lets a minute of application pass at every chair, from {@code view.time()} on. */
    public void pass(DayView view) {
        for (ServiceCard card : view.services()) {
            ApplicationProgress seat = seats.get(card.service());
            if (seat == null || !seat.readyAt(view.time())) continue;
            Optional<LiveBowl> inHand = inHand(view, card, seat);
            inHand.ifPresentOrElse(bowl -> apply(bowl, seat, view.time()), seat::waitMinute);
        }
    }

    private void apply(LiveBowl bowl, ApplicationProgress seat, Instant minute) {
        seat.applyMinute(bowl.bowl(), left(bowl, seat));
        lastUse.put(bowl.bowl(), minute.plusSeconds(60));
    }

    /** Minutes that stylist and client really stood without a usable bowl, by service. */
    public SortedMap<Integer, Integer> waitedMinutes() {
        SortedMap<Integer, Integer> waited = new TreeMap<>();
        seats.forEach((service, seat) -> waited.put(service, seat.waitedMinutes()));
        return waited;
    }

    /** End of the last minute in which each bowl was applied, by bowl. */
    SortedMap<String, Instant> lastUse() {
        return new TreeMap<>(lastUse);
    }

    /** What went on hair by the chairs' own count. */
    long appliedMilligrams() {
        return seats.values().stream()
                .mapToLong(ApplicationProgress::givenMilligrams)
                .sum();
    }

    private Optional<StaffAction> atChair(DayView view, ServiceCard card) {
        ApplicationProgress seat = seats.get(card.service());
        if (seat == null) return sitDown(view, card);
        Optional<StaffAction> rinsed = rinse(view, card, seat);
        if (rinsed.isPresent()) return rinsed;
        // What is applied is said first: a bowl that ends before its zone would be planned anew.
        return zoneDone(view, card, seat)
                .or(() -> view.live().stream()
                        .filter(live ->
                                live.service() == card.service() && live.stage().equals("AT_CHAIR"))
                        .map(live -> emptied(view, card, seat, live))
                        .flatMap(Optional::stream)
                        .findFirst());
    }

    private Optional<StaffAction> sitDown(DayView view, ServiceCard card) {
        Booking booking = bookings.get(card.service());
        int late = script.notReady().getOrDefault(card.service(), 0);
        boolean due = card.state().equals("BOOKED")
                && !view.time().isBefore(card.bookedStart().plusSeconds(60L * late));
        if (booking == null || !due || !chairFree(view, card)) return Optional.empty();
        seats.put(card.service(), new ApplicationProgress(card.service(), booking, knowledge, chance, view.time()));
        return Optional.of(new StaffAction(knowledge.stylist(booking), new DayCommand.StartService(card.service())));
    }

    /** Hair is rinsed when it looks right: a few minutes before or after the plan, never after the directions' latest. */
    private Optional<StaffAction> rinse(DayView view, ServiceCard card, ApplicationProgress seat) {
        return card.sections().stream()
                .filter(section -> !section.recorded())
                .filter(section -> !view.time().isBefore(rinseMinute(card, section)))
                .map(section -> new StaffAction(
                        knowledge.stylist(seat.booking()),
                        new DayCommand.RinseSection(card.service(), section.section())))
                .findFirst();
    }

    private Instant rinseMinute(ServiceCard card, SectionCard section) {
        int off = chance.between("rinse " + card.service() + "/" + section.section(), RINSE_EARLY, RINSE_LATE);
        Instant wanted = section.rinseAt().plusSeconds(60L * off);
        return wanted.isAfter(section.rinseBy()) ? section.rinseBy() : wanted;
    }

    private static boolean chairFree(DayView view, ServiceCard wanted) {
        return view.services().stream()
                .filter(other -> other.chair() == wanted.chair() && other.service() != wanted.service())
                .noneMatch(other ->
                        other.state().equals("STARTED") || other.state().equals("APPLIED"));
    }

    private Optional<StaffAction> zoneDone(DayView view, ServiceCard card, ApplicationProgress seat) {
        if (!seat.zoneApplied() && !nothingMoreComes(view, card, seat)) return Optional.empty();
        Optional<MenuZone> zone = seat.current();
        if (zone.isEmpty()) return Optional.empty();
        seat.nextZone(view.time());
        DayCommand finished =
                new DayCommand.FinishZone(card.service(), zone.get().zone());
        return Optional.of(new StaffAction(knowledge.stylist(seat.booking()), finished));
    }

    /** The plan holds the zone for fed: what is in it has to do. */
    private boolean nothingMoreComes(DayView view, ServiceCard card, ApplicationProgress seat) {
        if (!view.planSettled() || !seat.readyAt(view.time())) return false;
        String zone = seat.current().orElseThrow().zone();
        return view.live().stream().noneMatch(bowl -> feeds(bowl, card, zone))
                && view.queue().stream()
                        .noneMatch(queued -> queued.bowl().service() == card.service()
                                && queued.bowl().zones().contains(zone));
    }

    private Optional<StaffAction> emptied(DayView view, ServiceCard card, ApplicationProgress seat, LiveBowl bowl) {
        int left = left(bowl, seat) / LEFT_STEP_MILLIGRAMS * LEFT_STEP_MILLIGRAMS;
        String stylist = knowledge.stylist(seat.booking());
        if (script.spills().contains(bowl.bowl()))
            return Optional.of(
                    new StaffAction(stylist, new DayCommand.BinBowl(bowl.bowl(), left, OverMixCause.SPILLED)));
        boolean dead = !view.time().isBefore(bowl.lifeEnds());
        boolean done = seat.current().isEmpty() || card.zonesDone().containsAll(bowl.zones());
        if (left < CRUMB_MILLIGRAMS && (dead || done || left(bowl, seat) <= 0))
            return Optional.of(new StaffAction(stylist, new DayCommand.FinishBowl(bowl.bowl())));
        if (!dead && !done) return Optional.empty();
        OverMixCause cause = done ? OverMixCause.LEFT_OVER : OverMixCause.PAST_LIFE;
        return Optional.of(new StaffAction(stylist, new DayCommand.BinBowl(bowl.bowl(), left, cause)));
    }

    private Optional<LiveBowl> inHand(DayView view, ServiceCard card, ApplicationProgress seat) {
        String zone = seat.current().orElseThrow().zone();
        Instant minuteEnds = view.time().plusSeconds(60);
        return view.live().stream()
                .filter(bowl -> bowl.stage().equals("AT_CHAIR") && feeds(bowl, card, zone))
                .filter(bowl -> !minuteEnds.isAfter(bowl.lifeEnds()) && left(bowl, seat) > 0)
                .min(Comparator.comparing(LiveBowl::lifeEnds).thenComparing(LiveBowl::bowl));
    }

    private static boolean feeds(LiveBowl bowl, ServiceCard card, String zone) {
        return bowl.service() == card.service() && bowl.zones().contains(zone);
    }

    private int left(LiveBowl bowl, ApplicationProgress seat) {
        return Math.max(0, knowledge.applicable(bowl) - seat.given(bowl.bowl()));
    }
}
