package stirtide.planner.planning.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/** Random salon days: stylists booked one client after the other, closer together the busier the day is. */
public final class RandomFloorDay {
    private static final int[][] ZONES = {{22, 20, 16}, {20, 18}, {16, 14, 8}, {12}, {12, 10}, {18, 14}, {16, 8}};

    private final RandomGenerator random;

    public RandomFloorDay(RandomGenerator random) {
        this.random = random;
    }

    /**
     * A day.
     *
     * @param count services
     * @param assistants assistants
     * @param busy 0 for a quiet day, 100 for one with no time between clients
     */
    public FloorDay day(int count, int assistants, int busy) {
        int stylists = Math.max(2, count / 4);
        int[] next = random.ints(stylists, 15, 60).toArray();
        List<FloorService> services = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            int stylist = random.nextInt(stylists);
            FloorService service = service(i + 1, stylist, random.nextInt(stylists + 2), next[stylist]);
            services.add(service);
            int length = service.zones().stream()
                    .mapToInt(zone -> zone.applyMinutes() + zone.gapMinutes())
                    .sum();
            next[stylist] += length + random.nextInt(1 + (100 - busy) / 2);
        }
        int end = java.util.Arrays.stream(next).max().orElse(0) + 120;
        return new FloorDay(
                1,
                6,
                1 + random.nextInt(2),
                1 + random.nextInt(2),
                6,
                random.nextInt(3) == 0,
                3,
                200,
                assistants(assistants, end),
                sizes(),
                mixes(),
                services);
    }

    private FloorService service(int number, int stylist, int chair, int booked) {
        int[] minutes = ZONES[random.nextInt(ZONES.length)];
        int gap = random.nextInt(3);
        int mix = random.nextInt(3);
        int flow = 15 + random.nextInt(30);
        List<FloorZone> zones = new ArrayList<>();
        int total = 0;
        for (int z = 0; z < minutes.length; z++) {
            int kind = z == 2 && random.nextBoolean() ? (mix + 1) % 3 : mix;
            int process = 15 + random.nextInt(11);
            zones.add(new FloorZone(z == 0 ? 0 : gap, minutes[z], minutes[z] * flow, kind, process, 0));
            total += minutes[z];
        }
        List<FloorZone> timed = new ArrayList<>();
        for (int z = 0, rest = total + 2 * gap; z < zones.size(); z++) {
            FloorZone zone = zones.get(z);
            int longest = rest + 26 + 8 + random.nextInt(25);
            timed.add(new FloorZone(
                    zone.gapMinutes(),
                    zone.applyMinutes(),
                    zone.decigrams(),
                    zone.mix(),
                    zone.processMinutes(),
                    longest));
            rest -= minutes[z];
        }
        int last = total;
        return new FloorService(
                number,
                stylist,
                chair,
                booked,
                timed,
                IntStream.range(1, last).filter(i -> i % 2 == 0).boxed().toList());
    }

    private List<FloorAssistant> assistants(int count, int end) {
        List<FloorAssistant> assistants = new ArrayList<>();
        for (int a = 0; a < count; a++) {
            int pause = end / 3 + random.nextInt(end / 4);
            assistants.add(new FloorAssistant(List.of(new DutySpan(0, pause), new DutySpan(pause + 12, end))));
        }
        return assistants;
    }

    private List<FloorBowlSize> sizes() {
        return List.of(
                new FloorBowlSize(900, 20 + random.nextInt(11), 8 + random.nextInt(5)),
                new FloorBowlSize(1800, 30 + random.nextInt(16), 6 + random.nextInt(5)));
    }

    private static List<FloorMix> mixes() {
        return List.of(new FloorMix(3, 45), new FloorMix(4, 60), new FloorMix(3, 35));
    }
}
