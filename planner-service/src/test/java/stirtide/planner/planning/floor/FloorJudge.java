package stirtide.planner.planning.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/** Independent judge for tiny days: the whole floor problem in the hands of a general constraint solver. Shares no code with the engine but the day itself. */
final class FloorJudge {
    private static final int LATENESS = 100_000;
    private static final int HANDLING = 100;
    private static final int MOST_FAILS = 2000;
    /** More than stylists or chairs. */
    private static final int GROUPS = 5;

    private final FloorDay day;
    private final int horizon;
    private final Model model = new Model();
    private final List<List<Task>> assistantTasks = new ArrayList<>();
    private final List<List<IntVar>> assistantHeights = new ArrayList<>();
    private final List<List<Task>> stockTasks = new ArrayList<>();
    private final List<List<IntVar>> stockHeights = new ArrayList<>();
    private final List<Task> scaleTasks = new ArrayList<>();
    private final List<IntVar> scaleHeights = new ArrayList<>();
    private final List<Task> rinses = new ArrayList<>();
    private final List<IntVar> costs = new ArrayList<>();
    private final List<Integer> prices = new ArrayList<>();
    private final IntVar[][] minutes;
    private final IntVar[] rinse;

    FloorJudge(FloorDay day) {
        this.day = day;
        this.horizon = day.assistants().get(0).onDuty().stream()
                        .mapToInt(DutySpan::toMinute)
                        .max()
                        .orElse(0)
                + 60;
        int n = day.services().size();
        this.minutes = new IntVar[n][];
        this.rinse = new IntVar[n];
        day.assistants().forEach(one -> {
            assistantTasks.add(new ArrayList<>());
            assistantHeights.add(new ArrayList<>());
        });
        day.bowlSizes().forEach(one -> {
            stockTasks.add(new ArrayList<>());
            stockHeights.add(new ArrayList<>());
        });
        IntStream.range(0, n).forEach(this::service);
        for (int a = 0; a < assistantTasks.size(); a++) {
            atMost(1, assistantTasks.get(a), assistantHeights.get(a));
        }
        for (int z = 0; z < stockTasks.size(); z++) {
            atMost(day.bowlSizes().get(z).count(), stockTasks.get(z), stockHeights.get(z));
        }
        atMost(day.scales(), scaleTasks, scaleHeights);
        atMost(day.basins(), rinses, ones(rinses.size()));
        stylists();
        chairs();
    }

    /** Whether the last question was answered to the end. */
    boolean isSure() {
        return !model.getSolver().isStopCriterionMet();
    }

    /** A value that is better than the given one, if there is any; to be asked once. */
    Optional<FloorScore> better(FloorScore than) {
        int limit = than.lateness() * LATENESS + than.handling() * HANDLING + than.standing();
        model.scalar(
                        costs.toArray(IntVar[]::new),
                        prices.stream().mapToInt(i -> i).toArray(),
                        "<",
                        limit)
                .post();

        model.getSolver().limitFail(MOST_FAILS);
        if (!model.getSolver().solve()) {
            return Optional.empty();
        }
        int[] sums = new int[3];
        for (int i = 0; i < costs.size(); i++) {
            int price = prices.get(i);
            int level = price >= LATENESS ? 0 : price >= HANDLING ? 1 : 2;
            int unit = level == 0 ? LATENESS : level == 1 ? HANDLING : 1;
            sums[level] += costs.get(i).getValue() * (price / unit);
        }
        return Optional.of(new FloorScore(sums[0], sums[1], sums[2]));
    }

    private void cost(IntVar of, int price) {
        costs.add(of);
        prices.add(price);
    }

    private IntVar minute(String name) {
        return model.intVar(name, 0, horizon);
    }

    private void atMost(int count, List<Task> tasks, List<IntVar> heights) {
        model.cumulative(tasks.toArray(Task[]::new), heights.toArray(IntVar[]::new), model.intVar(count))
                .post();
    }

    private List<IntVar> ones(int count) {
        return IntStream.range(0, count).mapToObj(i -> (IntVar) model.intVar(1)).toList();
    }

    private void service(int i) {
        FloorService service = day.services().get(i);
        List<Integer> zoneOf = new ArrayList<>();
        for (int z = 0; z < service.zones().size(); z++) {
            for (int m = 0; m < service.zones().get(z).applyMinutes(); m++) {
                zoneOf.add(z);
            }
        }
        int n = zoneOf.size();
        IntVar[] t = IntStream.range(0, n).mapToObj(m -> minute("t")).toArray(IntVar[]::new);
        minutes[i] = t;
        model.arithm(t[0], ">=", service.bookedMinute()).post();
        List<Integer> nodes = IntStream.rangeClosed(0, n)
                .filter(m -> m == 0
                        || m == n
                        || service.breaks().contains(m)
                        || mix(service, zoneOf.get(m)) != mix(service, zoneOf.get(m - 1)))
                .boxed()
                .toList();
        List<List<BoolVar>> from = new ArrayList<>();
        List<List<BoolVar>> to = new ArrayList<>();
        for (int m = 0; m <= n; m++) {
            from.add(new ArrayList<>());
            to.add(new ArrayList<>());
        }
        for (int u : nodes) {
            for (int v : nodes) {
                if (u < v
                        && zoneOf.subList(u, v).stream()
                                .allMatch(z -> mix(service, z) == mix(service, zoneOf.get(u)))) {
                    BoolVar used = bowl(service, zoneOf, t, u, v);
                    from.get(u).add(used);
                    to.get(v).add(used);
                }
            }
        }
        for (int m : nodes) {
            if (m == 0) {
                model.sum(from.get(m).toArray(BoolVar[]::new), "=", 1).post();
            } else if (m == n) {
                model.sum(to.get(m).toArray(BoolVar[]::new), "=", 1).post();
            } else {
                IntVar in = model.intVar("in", 0, 1);
                model.sum(to.get(m).toArray(BoolVar[]::new), "=", in).post();
                model.sum(from.get(m).toArray(BoolVar[]::new), "=", in).post();
            }
        }
        clock(service, zoneOf, t, from);
        rinse(i, service, zoneOf, t);
    }

    private static int mix(FloorService service, int zone) {
        return service.zones().get(zone).mix();
    }

    private void clock(FloorService service, List<Integer> zoneOf, IntVar[] t, List<List<BoolVar>> from) {
        for (int m = 1; m < t.length; m++) {
            boolean newZone = !zoneOf.get(m).equals(zoneOf.get(m - 1));
            int gap = newZone ? service.zones().get(zoneOf.get(m)).gapMinutes() : 0;
            model.arithm(t[m], "-", t[m - 1], ">=", 1 + gap).post();
            if (!newZone) {
                IntVar changes = model.intVar("changes", 0, 1);
                model.sum(from.get(m).toArray(BoolVar[]::new), "=", changes).post();
                model.ifThen(model.arithm(changes, "=", 0), model.arithm(t[m], "-", t[m - 1], "=", 1));
            }
        }
    }

    private void rinse(int i, FloorService service, List<Integer> zoneOf, IntVar[] t) {
        rinse[i] = minute("rinse");
        IntVar[] wishes = new IntVar[service.zones().size()];
        int nominal = service.bookedMinute();
        for (int z = 0; z < wishes.length; z++) {
            FloorZone zone = service.zones().get(z);
            wishes[z] = model.offset(t[zoneOf.lastIndexOf(z)], 1 + zone.processMinutes());
            model.arithm(rinse[i], "-", t[zoneOf.indexOf(z)], "<=", zone.longestMinutes())
                    .post();
            nominal += zone.applyMinutes() + (z > 0 ? zone.gapMinutes() : 0);
        }
        IntVar wish = minute("wish");
        model.max(wish, wishes).post();
        IntVar lateRinse = model.intVar("late rinse", 0, FloorDay.MOST_WAIT_MINUTES);
        IntVar lateEnd = model.intVar("late end", 0, FloorDay.MOST_WAIT_MINUTES);
        model.arithm(rinse[i], "-", wish, "=", lateRinse).post();
        model.arithm(lateEnd, "-", t[t.length - 1], "=", 1 - nominal).post();
        model.arithm(lateEnd, "+", lateRinse, "<=", FloorDay.MOST_WAIT_MINUTES).post();
        cost(lateRinse, LATENESS);
        cost(lateEnd, LATENESS);
        Task task = model.taskVar(rinse[i], day.rinseMinutes());
        rinses.add(task);
        if (!day.stylistsRinse()) {
            List<BoolVar> by = new ArrayList<>();
            for (int a = 0; a < assistantTasks.size(); a++) {
                BoolVar does = model.boolVar("rinses");
                by.add(does);
                work(a, task, rinse[i], day.rinseMinutes(), does);
            }
            model.sum(by.toArray(BoolVar[]::new), "=", 1).post();
        }
    }

    private void work(int a, Task task, IntVar start, int length, BoolVar does) {
        assistantTasks.get(a).add(task);
        assistantHeights.get(a).add(does);
        int[] starts = day.assistants().get(a).onDuty().stream()
                .flatMapToInt(span -> IntStream.rangeClosed(span.fromMinute(), span.toMinute() - length))
                .toArray();
        model.ifThen(does, model.member(start, starts));
    }

    /** A bowl that may be used for a stretch of minutes; a start of 0 and no height if it is not. */
    private BoolVar bowl(FloorService service, List<Integer> zoneOf, IntVar[] t, int u, int v) {
        FloorMix mix = day.mixes().get(mix(service, zoneOf.get(u)));
        int grams = grams(service, v) - grams(service, u);
        int occupied = mix.mixMinutes() + day.handOverMinutes();
        BoolVar used = model.boolVar("used");
        IntVar start = minute("start");
        IntVar end = model.offset(t[v - 1], 1);
        model.ifThen(used, model.arithm(t[u], "-", start, ">=", occupied));
        model.ifThen(used, model.arithm(end, "-", start, "<=", mix.lifeMinutes()));
        model.ifThen(used.not(), model.arithm(start, "=", 0));
        Task occupies = model.taskVar(start, occupied);
        Task weighs = model.taskVar(start, mix.mixMinutes());
        scaleTasks.add(weighs);
        scaleHeights.add(used);
        List<BoolVar> by = new ArrayList<>();
        for (int a = 0; a < assistantTasks.size(); a++) {
            BoolVar does = model.boolVar("mixes");
            by.add(does);
            work(a, occupies, start, occupied, does);
        }
        model.sum(by.toArray(BoolVar[]::new), "=", used).post();
        List<BoolVar> sizes = new ArrayList<>();
        IntVar washed = model.intVar("washed", 0, 2 * horizon);
        IntVar length = model.intVar("length", 0, 2 * horizon);
        model.arithm(start, "+", length, "=", washed).post();
        model.ifThen(used, model.arithm(washed, "-", end, "=", day.washMinutes()));
        model.ifThen(used.not(), model.arithm(length, "=", 0));
        for (int z = 0; z < stockTasks.size(); z++) {
            FloorBowlSize size = day.bowlSizes().get(z);
            BoolVar is = model.boolVar("size");
            sizes.add(is);
            if (grams + size.residueDecigrams() > size.usableDecigrams()) {
                model.arithm(is, "=", 0).post();
            }
            cost(is, HANDLING * (size.residueDecigrams() + awkward(service, zoneOf, u, grams)));
            stockTasks.get(z).add(new Task(start, length, washed));
            stockHeights.get(z).add(is);
        }
        model.sum(sizes.toArray(BoolVar[]::new), "=", used).post();
        IntVar shortOfLife = model.intVar("short of life", 0, day.marginMinutes());
        IntVar stands = minute("stands");
        model.ifThenElse(
                used,
                model.arithm(t[u], "-", start, "=", model.offset(stands, occupied)),
                model.arithm(stands, "=", 0));
        int fresh = mix.lifeMinutes() - day.marginMinutes();
        IntVar beyond = model.offset(shortOfLife, fresh);
        model.ifThen(used, model.arithm(end, "-", start, "<=", beyond));
        cost(shortOfLife, HANDLING * 10);
        cost(stands, 1);
        return used;
    }

    private int awkward(FloorService service, List<Integer> zoneOf, int u, int grams) {
        boolean inside = u > 0 && zoneOf.get(u).equals(zoneOf.get(u - 1));
        boolean small = grams(service, zoneOf.size()) > day.leastDecigrams();
        return (inside ? 30 : 0) + (small ? Math.max(0, day.leastDecigrams() - grams) : 0);
    }

    private static int grams(FloorService service, int minutes) {
        int grams = 0;
        int rest = minutes;
        for (FloorZone zone : service.zones()) {
            int of = Math.min(rest, zone.applyMinutes());
            grams += zone.decigrams() * of / zone.applyMinutes();
            rest -= of;
        }
        return grams;
    }

    private List<Integer> ordered(ToIntFunction<FloorService> key, int group) {
        return IntStream.range(0, minutes.length)
                .filter(i -> key.applyAsInt(day.services().get(i)) == group)
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(
                                i -> day.services().get(i).bookedMinute())
                        .thenComparingInt(i -> day.services().get(i).service()))
                .toList();
    }

    private void stylists() {
        for (int s = 0; s < GROUPS; s++) {
            List<Integer> order = ordered(FloorService::stylist, s);
            List<Task> tasks = new ArrayList<>();
            for (int at = 0; at < order.size(); at++) {
                IntVar[] t = minutes[order.get(at)];
                IntVar end = model.offset(t[t.length - 1], 1);
                IntVar length = model.intVar("head", 1, horizon);
                tasks.add(new Task(t[0], length, end));
                if (day.stylistsRinse()) {
                    tasks.add(rinses.get(order.get(at)));
                }
                if (at > 0) {
                    model.arithm(minutes[order.get(at - 1)][0], "<=", t[0]).post();
                }
            }
            if (!tasks.isEmpty()) {
                atMost(1, tasks, ones(tasks.size()));
            }
        }
    }

    private void chairs() {
        for (int c = 0; c < GROUPS; c++) {
            List<Integer> order = ordered(FloorService::chair, c);
            for (int at = 1; at < order.size(); at++) {
                model.arithm(minutes[order.get(at)][0], ">=", rinse[order.get(at - 1)])
                        .post();
            }
        }
    }
}
