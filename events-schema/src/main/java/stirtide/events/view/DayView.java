package stirtide.events.view;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.Span;

/**
 * A whole day as a terminal shows it.
 *
 * @param salonId salon
 * @param salonName salon's name
 * @param date day
 * @param zone IANA time zone of all times on screen
 * @param currency ISO 4217 code
 * @param revision newest event the view knows
 * @param time the salon's clock when the view was made
 * @param clockRatePermille how fast the salon's clock runs against real time, in thousandths: 1000 is real, 0 stands
 * @param closed whether the day is over
 * @param planRevision newest event the plan on show knows, 0 when none is drawn yet
 * @param people everybody at work
 * @param services all services of the day by number
 * @param queue bowls to mix, next first
 * @param live bowls being mixed or at a chair, by start of mixing
 * @param done bowls finished or binned, newest first
 * @param alarms what needs attention: high first, then oldest
 * @param waits why clients wait
 * @param notes what could not be planned as wished
 * @param planTotals plan in figures
 * @param totals the day so far in figures
 * @param actions newest actions of people that can be taken back, newest first
 * @param changes what the newest plan changed, in words
 * @param planSettled whether the plan on show knows everything that matters to it
 * @param betterPlanSought whether that plan is a first one, drawn at once, and a better one is still looked for
 * @param choices what a walk-in may be booked as
 * @param stock what the bowls to mix need against what is on the shelf
 * @param scales the salon's scales, and how far each may err
 */
public record DayView(
        String salonId,
        String salonName,
        LocalDate date,
        String zone,
        String currency,
        long revision,
        Instant time,
        int clockRatePermille,
        boolean closed,
        long planRevision,
        List<PersonCard> people,
        List<ServiceCard> services,
        List<QueuedBowl> queue,
        List<LiveBowl> live,
        List<DoneBowl> done,
        List<AlarmCard> alarms,
        List<Plan.WaitReason> waits,
        List<Plan.PlanNote> notes,
        Optional<Plan.PlanTotals> planTotals,
        DayTotals totals,
        List<ActionCard> actions,
        List<String> changes,
        boolean planSettled,
        boolean betterPlanSought,
        BookingChoices choices,
        List<StockCard> stock,
        List<ScaleCard> scales) {
    /** A service by its number. */
    public Optional<ServiceCard> service(int number) {
        return services.stream().filter(card -> card.service() == number).findFirst();
    }

    /** A bowl of the queue by its id. */
    public Optional<QueuedBowl> queued(String bowl) {
        return queue.stream().filter(row -> row.bowl().bowl().equals(bowl)).findFirst();
    }

    /** A live bowl by its id. */
    public Optional<LiveBowl> live(String bowl) {
        return live.stream().filter(row -> row.bowl().equals(bowl)).findFirst();
    }

    /** Name of a person at work, the id itself when it is no such person's. */
    public String personName(String personId) {
        return people.stream()
                .filter(person -> person.personId().equals(personId))
                .map(PersonCard::name)
                .findFirst()
                .orElse(personId);
    }

    /**
     * A person at work; {@code onDutyNow} by the salon's clock, {@code mixing} when a bowl of theirs is being mixed,
     * {@code hours} on this day in order, {@code work} known or planned, by its begin.
     */
    public record PersonCard(
            String personId,
            String name,
            String role,
            boolean onDutyNow,
            boolean mixing,
            List<Span> hours,
            List<PersonWork> work) {}

    /**
     * One service. {@code state} is BOOKED, STARTED, APPLIED, RINSED or CANCELLED; {@code tests} are those the directions
     * demand; {@code sections} are those applied whole; {@code memory} is there when the client was here before.
     */
    public record ServiceCard(
            int service,
            int chair,
            String clientRef,
            String menuName,
            Instant bookedStart,
            Instant plannedStart,
            Instant plannedEnd,
            String state,
            int waitMinutes,
            List<String> zonesDone,
            List<PlannedZone> zones,
            List<SectionCard> sections,
            List<TestCard> tests,
            Optional<MemoryCard> memory) {}

    /**
     * A section whose zones are all applied. {@code rinseAt} is the recorded rinse, or the planned one where
     * {@code recorded} is false; {@code rinseBy} is when the directions want it rinsed at the latest.
     */
    public record SectionCard(int section, List<String> zones, Instant rinseAt, Instant rinseBy, boolean recorded) {}

    /**
     * A test the directions demand before a service. {@code kind} is STRAND or PATCH; {@code state} is RECORDED, TOO_LATE
     * (less than the hours demanded before the start) or MISSING; {@code latest} is the last moment that is early enough.
     * None of them says that the service is safe.
     */
    public record TestCard(
            String kind,
            String lightenerName,
            int demandedHours,
            Instant latest,
            Optional<Instant> doneAt,
            String state,
            String sentence) {}

    /**
     * What is remembered of the client. {@code asLastTime} says whether the last formula is planned again; then
     * {@code departures} say, zone by zone, what no longer allows it exactly and what is planned instead.
     */
    public record MemoryCard(
            LocalDate lastVisit, int visits, boolean asLastTime, List<String> zones, List<String> departures) {}

    /**
     * A bowl to mix, with the names a screen needs. {@code cautions} stand on the first bowl of a product only;
     * {@code allowances} say in a line for each zone that was learned or pinned where its grams come from. With a
     * {@code batch} the bowl may be one mix with another: person, scale and times of mixing are those of that mix then, the
     * weights those for this bowl alone.
     */
    public record QueuedBowl(
            PlannedBowl bowl,
            String clientRef,
            String lightenerName,
            List<String> partNames,
            List<Integer> partStrengthsHundredths,
            List<String> cautions,
            List<String> allowances,
            Optional<BatchCard> batch) {
        /** The liquids of this bowl alone, in the order of weighing. */
        public List<PartCard> parts() {
            List<DeveloperPart> parts = bowl.formula().developerParts();
            return IntStream.range(0, parts.size())
                    .mapToObj(i -> new PartCard(
                            parts.get(i).developerId(),
                            partNames.get(i),
                            partStrengthsHundredths.get(i),
                            parts.get(i).milligrams()))
                    .toList();
        }
    }

    /**
     * One mix for two bowls. {@code shares} name the bowl it is mixed in first; {@code planned} is what is to be weighed for
     * both together, {@code weighed} what was, once it is known. While it is not divided all of it is in the first bowl.
     */
    public record BatchCard(
            List<ShareCard> shares, PlannedBowlCard planned, Optional<WeighedCard> weighed, boolean divided) {
        /** The bowl it is mixed in; commands name the batch by it. */
        public ShareCard mixedIn() {
            return shares.get(0);
        }

        /** The bowl that gets its share from the other. */
        public ShareCard pouredInto() {
            return shares.get(1);
        }
    }

    /** One bowl of a mix for two; {@code milligrams} is what is to be in it. */
    public record ShareCard(String bowl, int chair, String clientRef, String bowlSizeId, int milligrams) {}

    /**
     * A bowl being mixed (MIXING), weighed (WEIGHED) or at its chair (AT_CHAIR). A bowl of a batch is MIXING until the mix is
     * divided.
     */
    public record LiveBowl(
            String bowl,
            int service,
            int chair,
            String clientRef,
            List<String> zones,
            String stage,
            Instant mixStart,
            Instant lifeEnds,
            int lifeMinutes,
            Optional<Instant> neededUntil,
            PlannedBowlCard planned,
            Optional<WeighedCard> weighed,
            String personName,
            Optional<BatchCard> batch) {}

    /** What was to be weighed into a live bowl, and on which scale. */
    public record PlannedBowlCard(
            String lightenerName,
            int lightenerMilligrams,
            List<PartCard> parts,
            int strengthHundredths,
            int wantedRatioThousandths,
            int lowestRatioThousandths,
            int highestRatioThousandths,
            int usableMilligrams,
            String scaleId) {}

    /** One liquid. */
    public record PartCard(String developerId, String name, int strengthHundredths, int milligrams) {}

    /** What was weighed. */
    public record WeighedCard(
            int lightenerMilligrams, int developerMilligrams, int ratioThousandths, boolean insideDirections) {}

    /** An action that can be taken back. */
    public record ActionCard(long revision, Instant time, String actor, String sentence) {}
}
