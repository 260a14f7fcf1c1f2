package stirtide.bar;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import stirtide.bar.model.BowlOverMix;
import stirtide.bar.model.BowlSelection;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Panel;
import stirtide.bar.model.UiState;
import stirtide.events.formula.BowlFormula;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.json.ContractJson;
import stirtide.events.plan.MoveAdvice;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlanFigures;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Span;
import stirtide.events.view.AlarmCard;
import stirtide.events.view.BookingChoices;
import stirtide.events.view.BookingChoices.MenuChoice;
import stirtide.events.view.DayTotals;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.ActionCard;
import stirtide.events.view.DayView.LiveBowl;
import stirtide.events.view.DayView.PartCard;
import stirtide.events.view.DayView.PersonCard;
import stirtide.events.view.DayView.PlannedBowlCard;
import stirtide.events.view.DayView.QueuedBowl;
import stirtide.events.view.DayView.SectionCard;
import stirtide.events.view.DayView.ServiceCard;
import stirtide.events.view.DayView.WeighedCard;
import stirtide.events.view.DoneBowl;
import stirtide.events.view.PersonWork;
import stirtide.events.view.PersonWork.Kind;
import stirtide.events.view.ScaleCard;
import stirtide.events.view.StockCard;

/** An invented day at an invented salon, seen at 11:40:00 by its clock. */
public final class Samples {
    public static final String DAY = "larch-lane/2027-05-14";
    public static final Instant NOW = Instant.parse("2027-05-14T10:40:00Z");
    public static final Operator TAMSIN = new Operator("tamsin", true);
    public static final LinkStatus LIVE = new LinkStatus(LinkStatus.State.LIVE, 1, 0);

    private Samples() {}

    public static Instant at(int minutesFromNow) {
        return NOW.plus(minutesFromNow, ChronoUnit.MINUTES);
    }

    /** A calm day: one bowl to mix soon, five later, two live ones with life enough. */
    public static DayView calm() {
        return view(List.of(), List.of(live("4a", 2, "at chair", 14, true), live("5a", 5, "weighed", 3, true)), 6);
    }

    /** A day with a bowl past its life, one low, one outside the directions, and reasons to wait. */
    public static DayView busy() {
        var alarms = List.of(
                new AlarmCard(
                        "PAST_LIFE:3b",
                        "HIGH",
                        "PAST_LIFE",
                        "3b",
                        1,
                        "Bowl 3b is past its life since 11:38: stop applying it, bin it, begin a fresh one.",
                        at(-2),
                        Optional.empty()),
                new AlarmCard(
                        "LOW_LIFE:4a",
                        "MEDIUM",
                        "LOW_LIFE",
                        "4a",
                        2,
                        "The life of bowl 4a ends at 11:44: use it up or bin it by then.",
                        at(-1),
                        Optional.of("bohdan")));
        return view(
                alarms,
                List.of(
                        live("3b", 1, "at chair", 47, true),
                        live("4a", 2, "at chair", 41, true),
                        live("5a", 5, "weighed", 6, false),
                        live("6a", 3, "mixing", 1, true)),
                6);
    }

    /** Nothing booked any more. */
    public static DayView quiet() {
        return view(List.of(), List.of(), 0);
    }

    /** A day with many live bowls. */
    public static DayView crowded() {
        var live = new ArrayList<LiveBowl>();
        for (int i = 0; i < 9; i++) live.add(live((i + 1) + "a", i + 1, "at chair", 4 + 4 * i, true));
        return view(List.of(), live, 14);
    }

    /** Bowls 7a and 8a may be one mix: 34 g and 68 g together, 62 g stay in 7a and 40 g go into 8a. */
    public static DayView paired() {
        var busy = busy();
        var queue = new java.util.ArrayList<>(busy.queue());
        queue.set(0, paired(queued(0)));
        queue.set(1, paired(queued(1)));
        return withQueue(busy, queue, busy.live());
    }

    /** The same, begun four minutes ago, at a step: not weighed, weighed or divided. */
    public static DayView mixed(String step) {
        boolean weighed = !step.equals("begun");
        var batch = batch(weighed, step.equals("divided"));
        var live = new java.util.ArrayList<LiveBowl>();
        for (String id : List.of("7a", "8a")) {
            String stage = step.equals("divided") ? "weighed" : "mixing";
            LiveBowl plain = live(id, id.equals("7a") ? 5 : 1, stage, 4, true);
            live.add(new LiveBowl(
                    plain.bowl(),
                    plain.service(),
                    plain.chair(),
                    plain.clientRef(),
                    plain.zones(),
                    plain.stage(),
                    plain.mixStart(),
                    plain.lifeEnds(),
                    plain.lifeMinutes(),
                    plain.neededUntil(),
                    plain.planned(),
                    plain.weighed(),
                    plain.personName(),
                    Optional.of(batch)));
        }
        return withQueue(busy(), busy().queue().subList(2, busy().queue().size()), live);
    }

    private static QueuedBowl paired(QueuedBowl alone) {
        return new QueuedBowl(
                mixedFrom(alone.bowl()),
                alone.clientRef(),
                alone.lightenerName(),
                alone.partNames(),
                alone.partStrengthsHundredths(),
                alone.cautions(),
                alone.allowances(),
                Optional.of(batch(false, false)));
    }

    private static PlannedBowl mixedFrom(PlannedBowl bowl) {
        return new PlannedBowl(
                bowl.bowl(),
                bowl.service(),
                bowl.run(),
                bowl.chair(),
                bowl.zones(),
                at(3),
                at(7),
                bowl.neededFrom(),
                bowl.neededTo(),
                at(48),
                bowl.personId(),
                bowl.scaleId(),
                bowl.bowlSizeId(),
                bowl.neededMilligrams(),
                bowl.residueMilligrams(),
                bowl.formula(),
                bowl.waitMinutes());
    }

    public static DayView.BatchCard batch(boolean weighed, boolean divided) {
        return new DayView.BatchCard(
                List.of(
                        new DayView.ShareCard("7a", 5, "214", "large", 62_000),
                        new DayView.ShareCard("8a", 1, "W.S.", "small", 40_000)),
                new PlannedBowlCard(
                        "Chalk Lift",
                        34_000,
                        List.of(new PartCard("cream-6", "Cream 6 %", 600, 68_000)),
                        600,
                        2000,
                        1500,
                        2500,
                        200_000,
                        "bench"),
                weighed ? Optional.of(new WeighedCard(34_000, 68_000, 2000, true)) : Optional.empty(),
                divided);
    }

    public static DayView withQueue(DayView of, List<QueuedBowl> queue, List<LiveBowl> live) {
        return new DayView(
                of.salonId(),
                of.salonName(),
                of.date(),
                of.zone(),
                of.currency(),
                of.revision(),
                of.time(),
                of.clockRatePermille(),
                of.closed(),
                of.planRevision(),
                of.people(),
                of.services(),
                queue,
                live,
                of.done(),
                List.of(),
                of.waits(),
                of.notes(),
                of.planTotals(),
                of.totals(),
                of.actions(),
                of.changes(),
                of.planSettled(),
                of.betterPlanSought(),
                of.choices(),
                of.stock(),
                of.scales());
    }

    public static DayView view(List<AlarmCard> alarms, List<LiveBowl> live, int queued) {
        SortedMap<String, Integer> causes = new TreeMap<>();
        causes.put("LEFT_OVER", 10_500);
        causes.put("PAST_LIFE", 8_000);
        return new DayView(
                "larch-lane",
                "Larch Lane Hair",
                LocalDate.parse("2027-05-14"),
                "Europe/London",
                "GBP",
                41,
                NOW,
                1000,
                false,
                41,
                people(),
                services(),
                Stream.iterate(0, i -> i + 1).limit(queued).map(Samples::queued).toList(),
                live,
                done(),
                alarms,
                List.of(new Plan.WaitReason(
                        at(20),
                        at(55),
                        45,
                        35,
                        List.of(9),
                        "12:00 to 12:35 needs 45 min of mixing, one assistant gives 35")),
                List.of(new Plan.PlanNote("STYLIST_MIXES", 8, "the bar is full at 12:10, the stylist mixes bowl 8a")),
                Optional.empty(),
                new DayTotals(
                        9,
                        742_000,
                        690_500,
                        33_000,
                        18_500,
                        causes,
                        new java.math.BigDecimal("31.40"),
                        new java.math.BigDecimal("0.78")),
                List.of(
                        new ActionCard(40, at(-3), "tamsin", "weighed bowl 5a"),
                        new ActionCard(37, at(-9), "bohdan", "handed over bowl 4a")),
                List.of("bowl 9a moved from 12:01 to 12:04"),
                true,
                false,
                new BookingChoices(
                        List.of(
                                new MenuChoice("half-foils", "Half head of foils"),
                                new MenuChoice("roots", "Root retouch")),
                        List.of("short", "medium", "long"),
                        List.of("fine", "medium", "thick"),
                        5),
                List.of(
                        new StockCard(
                                "chalk",
                                "Chalk Lift",
                                184_000,
                                Optional.of(1_200_000L),
                                1,
                                Optional.empty(),
                                0,
                                "Chalk Lift: the plan needs 184 g, 1200 g on the shelf"),
                        new StockCard(
                                "cream-6",
                                "Cream 6 %",
                                420_000,
                                Optional.of(300_000L),
                                1,
                                Optional.of(at(33)),
                                1,
                                "Cream 6 %: the plan needs 420 g, 300 g on the shelf, not enough from the bowl of 12:13"
                                        + " on, buy 1 pack for tomorrow")),
                List.of(bench()));
    }

    /** The busy day with its clock at another time. */
    public static DayView at(Instant time) {
        return busy(time, busy().actions());
    }

    /** The busy day with another newest action. */
    public static DayView lastAction(String sentence) {
        return busy(NOW, List.of(new ActionCard(40, NOW, "tamsin", sentence)));
    }

    /** The busy day planned anew: service 7 and its bowl 7a ten minutes later, bowl 8a not needed any more. */
    public static DayView replanned() {
        var day = ContractJson.read(ContractJson.write(busy()), ObjectNode.class);
        day.put("revision", 42).put("planRevision", 42);
        var service = (ObjectNode) day.at("/services/1");
        service.put("plannedStart", at(19).toString()).put("plannedEnd", at(114).toString());
        ((ObjectNode) day.at("/queue/0/bowl")).put("mixStart", at(14).toString());
        ((ArrayNode) day.get("queue")).remove(1);
        return ContractJson.read(ContractJson.write(day), DayView.class);
    }

    /** A day on whose plan a better one is still looked for. */
    public static DayView improving(DayView of) {
        var day = ContractJson.read(ContractJson.write(of), ObjectNode.class);
        return ContractJson.read(ContractJson.write(day.put("betterPlanSought", true)), DayView.class);
    }

    /** A day with another booked start of a service. */
    public static DayView moved(DayView of, int service, Instant start) {
        var day = ContractJson.read(ContractJson.write(of), ObjectNode.class);
        day.put("revision", of.revision() + 2).put("planRevision", of.revision() + 1);
        day.get("services").forEach(card -> {
            if (card.get("service").asInt() == service) ((ObjectNode) card).put("bookedStart", start.toString());
        });
        return ContractJson.read(ContractJson.write(day), DayView.class);
    }

    private static DayView busy(Instant time, List<ActionCard> actions) {
        DayView day = busy();
        return new DayView(
                day.salonId(),
                day.salonName(),
                day.date(),
                day.zone(),
                day.currency(),
                day.revision(),
                time,
                day.clockRatePermille(),
                day.closed(),
                day.planRevision(),
                day.people(),
                day.services(),
                day.queue(),
                day.live(),
                day.done(),
                day.alarms(),
                day.waits(),
                day.notes(),
                day.planTotals(),
                day.totals(),
                actions,
                day.changes(),
                day.planSettled(),
                day.betterPlanSought(),
                day.choices(),
                day.stock(),
                day.scales());
    }

    /** Inquiry to move one service, another, or both. */
    public static Inquiry moves() {
        var first = new MoveAdvice.ServiceMove(7, at(9), at(19));
        var second = new MoveAdvice.ServiceMove(9, at(35), at(50));
        var advice = new MoveAdvice(
                41,
                new PlanFigures(1, 6, 41_000, 28, 6),
                List.of(
                        new MoveAdvice.MoveEffect(
                                List.of(second), new PlanFigures(1, 0, 41_000, 25, 6), "Nobody waits any more."),
                        new MoveAdvice.MoveEffect(
                                List.of(first), new PlanFigures(0, 4, 40_000, 24, 6), "The bar mixes bowl 8a itself.")),
                List.of(new MoveAdvice.MoveEffect(
                        List.of(first, second),
                        new PlanFigures(0, 0, 38_000, 22, 6),
                        "Nobody waits any more, and the bar mixes bowl 8a itself.")),
                0);
        return new Inquiry(new Inquiry.Ask.Moves(), 0, Optional.of(new Inquiry.Answer.Moves(advice)));
    }

    /** An alarm of a kind at a chair. */
    public static AlarmCard alarm(String kind, int chair) {
        return new AlarmCard(
                kind + ":" + chair + "b",
                kind.equals("PAST_LIFE") ? "HIGH" : "MEDIUM",
                kind,
                chair + "b",
                chair,
                "Bowl " + chair + "b needs hands at chair " + chair + ".",
                at(-1),
                Optional.empty());
    }

    private static List<DoneBowl> done() {
        return List.of(
                new DoneBowl(
                        "3a", 3, 4, at(-12), 96_000, 8_000, "PAST_LIFE", "Chalk Lift", "Oriel", new BigDecimal("0.71")),
                new DoneBowl(
                        "2a",
                        2,
                        3,
                        at(-31),
                        120_000,
                        7_500,
                        "LEFT_OVER",
                        "Slate Clay",
                        "Oriel",
                        new BigDecimal("0.94")),
                new DoneBowl("1b", 1, 1, at(-44), 88_000, 0, "", "Chalk Lift", "Wanda", new BigDecimal("0.00")),
                new DoneBowl(
                        "1a",
                        1,
                        1,
                        at(-70),
                        90_000,
                        3_000,
                        "LEFT_OVER",
                        "Chalk Lift",
                        "Wanda",
                        new BigDecimal("0.27")));
    }

    /** Twenty earlier days, one of them unusual, in figures of our own. */
    public static List<DayOverMix> past() {
        int[] grams = {61, 74, 58, 66, 70, 63, 77, 59, 68, 72, 64, 69, 57, 151, 66, 73, 62, 70, 65, 60};
        return Stream.iterate(0, i -> i + 1)
                .limit(grams.length)
                .map(i -> new DayOverMix(
                        LocalDate.parse("2027-05-14").minusDays(grams.length - i),
                        900_000,
                        grams[i] * 1000,
                        left(LocalDate.parse("2027-05-14").minusDays(grams.length - i), grams[i] * 1000)))
                .toList();
    }

    /** Two bowls that share what was over-mixed on a day, a third of it by one stylist. */
    private static List<BowlOverMix> left(LocalDate date, int milligrams) {
        return List.of(
                new BowlOverMix(
                        date, "Root retouch", left("1a", milligrams / 3, "LEFT_OVER", "Chalk Lift", "Oriel", "0.70")),
                new BowlOverMix(
                        date,
                        "Half head of foils",
                        left("2b", milligrams - milligrams / 3, "PAST_LIFE", "Fine Clay", "", "1.90")));
    }

    private static DoneBowl left(
            String bowl, int milligrams, String cause, String lightener, String stylist, String cost) {
        return new DoneBowl(
                bowl, 1, 1, NOW, 90_000, milligrams, cause, lightener, stylist, new java.math.BigDecimal(cost));
    }

    private static List<PersonCard> people() {
        return List.of(
                person("tamsin", "Tamsin", "ASSISTANT", List.of(hours(-160, 80), hours(110, 320)), mixes()),
                new PersonCard(
                        "bohdan",
                        "Bohdan",
                        "ASSISTANT",
                        true,
                        true,
                        List.of(hours(-40, 140)),
                        List.of(
                                work(Kind.MIXING, 6, -1, 3, false),
                                work(Kind.MIXING, 8, 13, 16, false),
                                work(Kind.CARRYING, 8, 16, 18, false))),
                person(
                        "oriel",
                        "Oriel",
                        "STYLIST",
                        List.of(hours(-100, 200)),
                        List.of(
                                work(Kind.APPLYING, 4, -40, -20, true),
                                work(Kind.APPLYING, 4, -15, 5, false),
                                work(Kind.APPLYING, 7, 9, 29, false),
                                work(Kind.APPLYING, 7, 34, 54, false))));
    }

    private static List<PersonWork> mixes() {
        return List.of(
                work(Kind.MIXING, 3, -30, -27, true),
                work(Kind.CARRYING, 3, -27, -25, true),
                work(Kind.MIXING, 7, 4, 7, false),
                work(Kind.CARRYING, 7, 7, 9, false),
                work(Kind.MIXING, 9, 22, 25, false),
                work(Kind.CARRYING, 9, 25, 27, false));
    }

    /** The calm day with one more stylist who is off, an assistant without work, and some more people. */
    public static DayView staffed(int more) {
        var people = new ArrayList<>(people());
        people.add(person("wanda", "Wanda-Philippa of the Upper Larch", "STYLIST", List.of(), List.of()));
        people.add(person("ines", "Ines", "ASSISTANT", List.of(hours(-100, 200)), List.of()));
        for (int i = 1; i <= more; i++)
            people.add(person("extra-" + i, "Extra " + i, "ASSISTANT", List.of(hours(0, 60)), List.of()));
        return withPeople(calm(), people);
    }

    /** A day with other people. */
    public static DayView withPeople(DayView of, List<PersonCard> people) {
        var day = ContractJson.read(ContractJson.write(of), ObjectNode.class);
        day.set("people", ContractJson.mapper().valueToTree(people));
        return ContractJson.read(ContractJson.write(day), DayView.class);
    }

    public static PersonCard person(String id, String name, String role, List<Span> hours, List<PersonWork> work) {
        return new PersonCard(id, name, role, !hours.isEmpty(), false, hours, work);
    }

    public static Span hours(int from, int to) {
        return new Span(at(from), at(to));
    }

    public static PersonWork work(Kind kind, int service, int from, int to, boolean done) {
        return new PersonWork(kind, service, at(from), at(to), done);
    }

    private static List<ServiceCard> services() {
        return List.of(
                service(4, 2, "K.D.", "STARTED", -40, 0, List.of("back foils")),
                service(7, 4, "214", "BOOKED", 9, 0, List.of()),
                service(8, 1, "W.S.", "BOOKED", 30, 0, List.of()),
                service(9, 3, "", "BOOKED", 35, 6, List.of()));
    }

    private static ServiceCard service(
            int number, int chair, String client, String state, int minutes, int wait, List<String> done) {
        return new ServiceCard(
                number,
                chair,
                client,
                "Half head of foils",
                at(minutes),
                at(minutes + wait),
                at(minutes + wait + 95),
                state,
                wait,
                done,
                List.of(zone("back foils", minutes), zone("crown foils", minutes + 25)),
                done.isEmpty() ? List.of() : List.of(new SectionCard(1, done, at(10), at(20), number % 2 == 1)),
                List.of(),
                Optional.empty());
    }

    private static PlannedZone zone(String name, int minutes) {
        return new PlannedZone(
                name, at(minutes), at(minutes + 20), at(minutes + 38), at(minutes + 50), at(minutes + 60));
    }

    /** The {@code index}-th bowl of the queue; the first is a blend and has cautions, due in 4 minutes. */
    public static QueuedBowl queued(int index) {
        boolean blend = index == 0;
        int service = 7 + index;
        List<DeveloperPart> parts = blend
                ? List.of(new DeveloperPart("cream-6", 48_000), new DeveloperPart("cream-12", 20_000))
                : List.of(new DeveloperPart("cream-6", 60_000));
        int lightener = blend ? 34_000 : 30_000;
        var formula = new BowlFormula(
                "chalk",
                lightener,
                parts,
                blend ? 776 : 600,
                2000,
                1500,
                2500,
                blend ? 1985 : 1982,
                blend ? 2015 : 2018);
        var bowl = new PlannedBowl(
                service + "a",
                service,
                1,
                1 + (service + 2) % 5,
                List.of(index % 2 == 0 ? "crown foils" : "back foils"),
                at(4 + 9 * index),
                at(7 + 9 * index),
                at(9 + 9 * index),
                at(34 + 9 * index),
                at(49 + 9 * index),
                Optional.of(index % 2 == 0 ? "tamsin" : "bohdan"),
                "bench",
                "small",
                formula.totalMilligrams() - 4_000,
                4_000,
                formula,
                index == 2 ? 6 : 0);
        return new QueuedBowl(
                bowl,
                index % 3 == 0 ? "214" : index % 3 == 1 ? "W.S." : "",
                "Chalk Lift",
                blend ? List.of("Cream 6 %", "Cream 12 %") : List.of("Cream 6 %"),
                blend ? List.of(600, 1200) : List.of(600),
                blend
                        ? List.of(
                                "gloves on, eyes protected, air moving",
                                "the maker's directions win over this screen",
                                "never on broken skin, lashes or brows")
                        : List.of(),
                List.of(),
                Optional.empty());
    }

    /** Steps of 0.1 g; class III with e = 0.1 g, by the limits of verification. */
    private static ScaleCard bench() {
        return new ScaleCard(
                "bench",
                Scale.Weighing.TARE_BETWEEN,
                List.of(new ScaleCard.ScaleBand(0, 100, 200), new ScaleCard.ScaleBand(50_000, 100, 300)));
    }

    /** A live bowl of a 45 minute life, begun some minutes ago. */
    public static LiveBowl live(String bowl, int chair, String stage, int minutesAgo, boolean inside) {
        boolean mixing = stage.equals("mixing");
        return new LiveBowl(
                bowl,
                Integer.parseInt(bowl.replaceAll("\\D", "")),
                chair,
                "K.D.",
                List.of("back foils"),
                stage.toUpperCase(java.util.Locale.ROOT).replace(' ', '_'),
                at(-minutesAgo),
                at(45 - minutesAgo),
                45,
                Optional.of(at(30 - minutesAgo)),
                planned(),
                mixing
                        ? Optional.empty()
                        : Optional.of(new WeighedCard(40_000, inside ? 80_000 : 104_000, inside ? 2000 : 2600, inside)),
                "Bohdan",
                Optional.empty());
    }

    public static PlannedBowlCard planned() {
        return new PlannedBowlCard(
                "Chalk Lift",
                40_000,
                List.of(new PartCard("cream-6", "Cream 6 %", 600, 80_000)),
                600,
                2000,
                1500,
                2500,
                200_000,
                "bench");
    }

    public static final UiState.ClockReading CLOCK = new UiState.ClockReading(NOW, 0, 1000, false);

    public static UiState scene(DayView view) {
        return scene(view, LIVE, BowlSelection.FIRST, Optional.empty());
    }

    public static UiState scene(DayView view, LinkStatus link, BowlSelection picks, Optional<Panel> panel) {
        UiState state = UiState.of(Optional.of(view), CLOCK, link, TAMSIN).withPicks(picks);
        return panel.map(open -> under(open, state)).orElse(state);
    }

    /** A state with a panel over it. */
    public static UiState under(Panel panel, UiState state) {
        return state.withPanel(Optional.of(panel.overlay(state)));
    }
}
