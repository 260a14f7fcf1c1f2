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
 * Simulates clients and stylists. Clients sit down at their booked time when the chair is free; stylists apply minute by
 * minute from a bowl within its life, and report what is done.
 */
public final class ChairSimulation {
    /** A bowl with less than this counts as empty and is not weighed. */
    private static final int CRUMB_MILLIGRAMS = 500;
    /** Step to which leftovers are weighed. */
    private static final int LEFT_STEP_MILLIGRAMS = 100;
    /** Earliest deviation of a rinse from its planned minute. */
    private static final int RINSE_EARLY = -3;

    private static final int RINSE_LATE = 2;

    private final SetupLookup lookup;
    private final DayScript script;
    private final SeededVariation chance;
    private final SortedMap<Integer, Booking> bookings;
    private final SortedMap<Integer, ApplicationProgress> progressByService = new TreeMap<>();
    private final SortedMap<String, Instant> lastUse = new TreeMap<>();

    /**
     * @param lookup the setup of the day
     * @param script what happens beside the calendar
     * @param bookings bookings by service number; new ones may be added while the day is played
     */
    public ChairSimulation(SetupLookup lookup, DayScript script, SortedMap<Integer, Booking> bookings) {
        this.lookup = lookup;
        this.script = script;
        this.chance = new SeededVariation(script.seed());
        this.bookings = bookings;
    }

    /** The next action at a chair, if one is due. */
    public Optional<StaffAction> next(DayView view) {
        for (ServiceCard card : view.services()) {
            Optional<StaffAction> action = atChair(view, card);
            if (action.isPresent()) return action;
        }
        return Optional.empty();
    }

    /** Simulates a minute of application at every chair, from {@code view.time()} on. */
    public void pass(DayView view) {
        for (ServiceCard card : view.services()) {
            ApplicationProgress progress = progressByService.get(card.service());
            if (progress == null || !progress.readyAt(view.time())) continue;
            Optional<LiveBowl> inHand = inHand(view, card, progress);
            inHand.ifPresentOrElse(bowl -> apply(bowl, progress, view.time()), progress::waitMinute);
        }
    }

    private void apply(LiveBowl bowl, ApplicationProgress progress, Instant minute) {
        progress.applyMinute(bowl.bowl(), left(bowl, progress));
        lastUse.put(bowl.bowl(), minute.plusSeconds(60));
    }

    /** What was counted so far. */
    ChairFigures figures() {
        SortedMap<Integer, Integer> waited = new TreeMap<>();
        progressByService.forEach((service, progress) -> waited.put(service, progress.waitedMinutes()));
        long applied = progressByService.values().stream()
                .mapToLong(ApplicationProgress::givenMilligrams)
                .sum();
        return new ChairFigures(waited, lastUse, applied);
    }

    private Optional<StaffAction> atChair(DayView view, ServiceCard card) {
        ApplicationProgress progress = progressByService.get(card.service());
        if (progress == null) return sitDown(view, card);
        Optional<StaffAction> rinsed = rinse(view, card, progress);
        if (rinsed.isPresent()) return rinsed;
        // The zone is reported before its bowl: a bowl that ended first would be planned again.
        return zoneDone(view, card, progress)
                .or(() -> view.live().stream()
                        .filter(live ->
                                live.service() == card.service() && live.stage().equals("AT_CHAIR"))
                        .map(live -> emptied(view, card, progress, live))
                        .flatMap(Optional::stream)
                        .findFirst());
    }

    private Optional<StaffAction> sitDown(DayView view, ServiceCard card) {
        Booking booking = bookings.get(card.service());
        int late = script.notReady().getOrDefault(card.service(), 0);
        boolean due = card.state().equals("BOOKED")
                && !view.time().isBefore(card.bookedStart().plusSeconds(60L * late));
        if (booking == null || !due || !chairFree(view, card)) return Optional.empty();
        progressByService.put(
                card.service(), new ApplicationProgress(card.service(), booking, lookup, chance, view.time()));
        return Optional.of(new StaffAction(lookup.stylist(booking), new DayCommand.StartService(card.service())));
    }

    /** Rinses a few minutes before or after the plan, never after the latest time of the directions. */
    private Optional<StaffAction> rinse(DayView view, ServiceCard card, ApplicationProgress progress) {
        return card.sections().stream()
                .filter(section -> !section.recorded())
                .filter(section -> !view.time().isBefore(rinseMinute(card, section)))
                .map(section -> new StaffAction(
                        lookup.stylist(progress.booking()),
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

    private Optional<StaffAction> zoneDone(DayView view, ServiceCard card, ApplicationProgress progress) {
        if (!progress.zoneApplied() && !nothingMoreComes(view, card, progress)) return Optional.empty();
        Optional<MenuZone> zone = progress.current();
        if (zone.isEmpty()) return Optional.empty();
        progress.nextZone(view.time());
        DayCommand finished =
                new DayCommand.FinishZone(card.service(), zone.get().zone());
        return Optional.of(new StaffAction(lookup.stylist(progress.booking()), finished));
    }

    /** Whether no further bowl of the plan feeds the zone. */
    private boolean nothingMoreComes(DayView view, ServiceCard card, ApplicationProgress progress) {
        if (!view.planSettled() || !progress.readyAt(view.time())) return false;
        String zone = progress.current().orElseThrow().zone();
        return view.live().stream().noneMatch(bowl -> feeds(bowl, card, zone))
                && view.queue().stream()
                        .noneMatch(queued -> queued.bowl().service() == card.service()
                                && queued.bowl().zones().contains(zone));
    }

    private Optional<StaffAction> emptied(DayView view, ServiceCard card, ApplicationProgress progress, LiveBowl bowl) {
        int left = left(bowl, progress) / LEFT_STEP_MILLIGRAMS * LEFT_STEP_MILLIGRAMS;
        String stylist = lookup.stylist(progress.booking());
        if (script.spills().contains(bowl.bowl()))
            return Optional.of(
                    new StaffAction(stylist, new DayCommand.BinBowl(bowl.bowl(), left, OverMixCause.SPILLED)));
        boolean dead = !view.time().isBefore(bowl.lifeEnds());
        boolean done = progress.current().isEmpty() || card.zonesDone().containsAll(bowl.zones());
        if (left < CRUMB_MILLIGRAMS && (dead || done || left(bowl, progress) <= 0))
            return Optional.of(new StaffAction(stylist, new DayCommand.FinishBowl(bowl.bowl())));
        if (!dead && !done) return Optional.empty();
        OverMixCause cause = done ? OverMixCause.LEFT_OVER : OverMixCause.PAST_LIFE;
        return Optional.of(new StaffAction(stylist, new DayCommand.BinBowl(bowl.bowl(), left, cause)));
    }

    private Optional<LiveBowl> inHand(DayView view, ServiceCard card, ApplicationProgress progress) {
        String zone = progress.current().orElseThrow().zone();
        Instant minuteEnds = view.time().plusSeconds(60);
        return view.live().stream()
                .filter(bowl -> bowl.stage().equals("AT_CHAIR") && feeds(bowl, card, zone))
                .filter(bowl -> !minuteEnds.isAfter(bowl.lifeEnds()) && left(bowl, progress) > 0)
                .min(Comparator.comparing(LiveBowl::lifeEnds).thenComparing(LiveBowl::bowl));
    }

    private static boolean feeds(LiveBowl bowl, ServiceCard card, String zone) {
        return bowl.service() == card.service() && bowl.zones().contains(zone);
    }

    private int left(LiveBowl bowl, ApplicationProgress progress) {
        return Math.max(0, lookup.applicable(bowl) - progress.given(bowl.bowl()));
    }
}
