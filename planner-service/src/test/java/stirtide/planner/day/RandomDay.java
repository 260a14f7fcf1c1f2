package stirtide.planner.day;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import stirtide.events.command.DayCommand;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.day.StoredEvent;
import stirtide.events.formula.DeveloperPart;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.BowlWeights;
import stirtide.planner.day.state.Decision;

/** Plays a day of commands by chance: most of them sensible, many of them not. The same seed plays the same day. */
public final class RandomDay {
    private static final List<String> PEOPLE = List.of("bo", "mika", "ilka", "nobody");
    private static final List<String> ZONES = List.of("crown", "sides", "roots");

    private final RandomGenerator random;
    public final Scene scene = new Scene();
    public int accepted;
    public int refused;

    public RandomDay(RandomGenerator random) {
        this.random = random;
        var bookings = new ArrayList<Booking>();
        int count = 1 + random.nextInt(6);
        for (int i = 0; i < count; i++) bookings.add(booking("b" + i, 3));
        scene.does(new DayCommand.OpenDay(Given.setup(), bookings));
        plan();
    }

    /** One step: time passes, what is due is noted, somebody asks for something, a plan may be drawn. */
    public void step() {
        scene.now = scene.now.plus(Duration.ofSeconds(random.nextInt(240)));
        scene.ticks();
        scene.actor = PEOPLE.get(random.nextInt(3));
        var command = command();
        if (scene.ask(command) instanceof Decision.Accepted) {
            scene.does(command);
            accepted++;
        } else refused++;
        if (random.nextInt(4) > 0) plan();
    }

    private void plan() {
        PlanQuestions.of(scene.day)
                .ifPresent(question ->
                        scene.append(new DayEvent.PlanDrawn(SimplePlans.draw(question)), StoredEvent.SERVICE, ""));
    }

    private DayCommand command() {
        return switch (random.nextInt(20)) {
            case 0 -> new DayCommand.BookService(booking("w" + random.nextInt(1000), 4));
            case 1 ->
                new DayCommand.MoveService(
                        service(), scene.now.plusSeconds(60L * random.nextInt(120)), Optional.empty(), "");
            case 2 -> random.nextInt(4) == 0 ? new DayCommand.CancelService(service(), "left") : take();
            case 3, 4 -> new DayCommand.StartService(service());
            case 5, 6 -> new DayCommand.FinishZone(service(), nextZone());
            case 7, 8 -> new DayCommand.BeginBowl(queued(), person());
            case 9, 10 -> beginPair();
            case 11, 12, 13 -> random.nextBoolean() ? weighPair() : weigh();
            case 14, 15 -> new DayCommand.HandOverBowl(live());
            case 16 -> new DayCommand.FinishBowl(live());
            case 17 -> new DayCommand.BinBowl(live(), random.nextInt(95_000), OverMixCause.values()[random.nextInt(5)]);
            case 18 -> take();
            default -> other();
        };
    }

    private DayCommand beginPair() {
        var pairs = scene.day.plan().orElseThrow().batches();
        return pairs.isEmpty()
                ? new DayCommand.BeginBowl(queued(), person())
                : new DayCommand.BeginBatch(pairs.get(0).bowlIds(), person());
    }

    /** A mix for two bowls that is at the bar is weighed, then divided, now and then wrongly or not at all. */
    private DayCommand weighPair() {
        var mix = scene.day
                .liveBowls()
                .filter(bowl -> bowl.undivided() && bowl.mixedHere())
                .findFirst();
        if (mix.isEmpty()) return weigh();
        var id = mix.get().bowl();
        if (random.nextInt(8) == 0) return new DayCommand.BinBatch(id, OverMixCause.values()[random.nextInt(5)]);
        boolean right =
                mix.get().weighed().filter(BowlWeights::insideDirections).isPresent();
        if (right || random.nextInt(8) == 0) return new DayCommand.DivideBatch(id, 10_000 + random.nextInt(90_000));
        int lightener = 30_000 + random.nextInt(30_000);
        return new DayCommand.WeighBatch(
                id, lightener, List.of(new DeveloperPart("dev-6", 2 * lightener - 2_000 + random.nextInt(5_000))));
    }

    private DayCommand other() {
        var alarms = Alarms.of(scene.day, scene.now);
        if (!alarms.isEmpty() && random.nextBoolean())
            return new DayCommand.AcknowledgeAlarm(
                    alarms.get(random.nextInt(alarms.size())).id());
        if (random.nextInt(40) == 0) return new DayCommand.CloseDay();
        if (random.nextInt(3) == 0) return new DayCommand.RinseSection(service(), 1);
        return new DayCommand.ChangeShift(person(), List.of(Given.span("08:00", "20:00")));
    }

    private DayCommand take() {
        return new DayCommand.TakeBack(scene.day.revision() - random.nextInt(6));
    }

    private DayCommand weigh() {
        int lightener = 10_000 + random.nextInt(30_000);
        int developer = (int) (lightener * (1300L + random.nextInt(1400)) / 1000);
        var id = random.nextInt(5) == 0 ? "dev-12" : random.nextBoolean() ? "dev-9" : "dev-6";
        return new DayCommand.WeighBowl(live(), lightener, List.of(new DeveloperPart(id, developer)));
    }

    private Booking booking(String uid, int chairs) {
        return new Booking(
                uid,
                random.nextBoolean() ? "foils" : "full",
                1 + random.nextInt(chairs),
                scene.now.plusSeconds(60L * random.nextInt(240)),
                "Q.Z.",
                random.nextBoolean() ? "medium" : "long",
                "medium",
                Optional.empty(),
                0,
                0,
                Optional.empty(),
                Optional.empty());
    }

    private String person() {
        return PEOPLE.get(random.nextInt(PEOPLE.size()));
    }

    private int service() {
        return random.nextInt(scene.day.services().size() + 2);
    }

    private String nextZone() {
        return ZONES.get(random.nextInt(ZONES.size()));
    }

    private String queued() {
        var bowls = scene.day.plan().orElseThrow().bowls();
        return bowls.isEmpty() || random.nextInt(10) == 0
                ? "1b"
                : bowls.get(random.nextInt(bowls.size())).bowl();
    }

    private String live() {
        var bowls = scene.day.liveBowls().map(BowlState::bowl).toList();
        return bowls.isEmpty() || random.nextInt(10) == 0 ? "2a" : bowls.get(random.nextInt(bowls.size()));
    }
}
