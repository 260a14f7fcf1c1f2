package stirtide.planner.planning.floor;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What people and things do while some services are placed; every placed service keeps every rule. */
final class FloorState {
    final FloorGrid grid;
    final @Nullable ServicePath[] paths;
    final ShownMixes shown;
    private final long[][] assistantFree;
    private final long[][] stylistFree;
    private final CountedUse[] scales;
    private final CountedUse basins;
    private final CountedUse[] stock;
    private final StartSets starts;
    private final BookedOrder order;

    FloorState(FloorGrid grid, ShownMixes shown) {
        this.grid = grid;
        this.shown = shown;
        FloorDay day = grid.day;
        this.paths = new ServicePath[grid.services.length];
        this.assistantFree = new long[day.assistants().size()][];
        Arrays.setAll(assistantFree, grid::onDuty);
        this.stylistFree = new long[grid.ofStylist.length][];
        Arrays.setAll(stylistFree, grid::applies);
        this.scales = grid.conditions.scaleCounts().stream()
                .map(count -> new CountedUse(count, grid.words))
                .toArray(CountedUse[]::new);
        this.basins = new CountedUse(day.basins(), grid.words);
        this.stock = day.bowlSizes().stream()
                .map(size -> new CountedUse(size.count(), grid.words))
                .toArray(CountedUse[]::new);
        for (int kind = 0; kind < scales.length; kind++) {
            take(scales[kind], grid.conditions.scalesTaken().get(kind));
        }
        for (int size = 0; size < stock.length; size++) {
            take(stock[size], grid.conditions.sizesTaken().get(size));
        }
        this.order = new BookedOrder(grid, paths);
        this.starts = new StartSets(grid, assistantFree, scales, basins);
    }

    private static void take(CountedUse things, List<DutySpan> taken) {
        taken.forEach(span -> things.take(span.fromMinute(), span.toMinute()));
    }

    long[] stylistFree(ServiceGrid service) {
        return stylistFree[service.service.stylist()];
    }

    long[] stockFull(int size) {
        return stock[size].full;
    }

    /** The first minute from the given one on in which no bowl of a size is left, {@link HandlingCosts#NONE} if there is none. */
    int stockUntil(int size, int from) {
        return stock[size].nextFull(from);
    }

    /** Minutes at which a bowl of the mix can be begun on a scale of a kind. */
    long[] mixStarts(int mix, int scale) {
        return starts.ofMix(mix, scale);
    }

    /** Minutes at which the service can be rinsed. */
    long[] rinseStarts(ServiceGrid service) {
        return grid.day.stylistsRinse() ? starts.ofRinse(stylistFree(service)) : starts.ofRinse();
    }

    /** Places a path and names its assistants; false and nothing changed if its own bowls are in each other's way. */
    boolean place(ServicePath path) {
        boolean possible = true;
        for (int b = 0; b < path.bowls() && possible; b++) {
            int from = path.mixStart[b];
            path.assistant[b] = freeAssistant(from, from + occupied(path, b), shown.assistant(path.grid.index, b));
            possible = path.assistant[b] >= 0;
            if (possible) {
                MinuteSet.remove(assistantFree[path.assistant[b]], from, from + occupied(path, b));
            }
        }
        if (possible && assistantsRinse()) {
            path.rinseAssistant = freeAssistant(path.rinse, path.rinse + grid.day.rinseMinutes(), -1);
            possible = path.rinseAssistant >= 0;
        }
        for (int b = 0; b < path.bowls(); b++) {
            if (path.assistant[b] >= 0) {
                int from = path.mixStart[b];
                MinuteSet.add(assistantFree[path.assistant[b]], from, from + occupied(path, b));
            }
            if (!possible) {
                path.assistant[b] = -1;
            }
        }
        if (!possible) {
            return false;
        }
        if (!putBack(path)) {
            takeOff(path.grid.index);
            return false;
        }
        return true;
    }

    /** Places a path with the assistants it names; false if there are too few things, the path is placed nevertheless. */
    boolean putBack(ServicePath path) {
        boolean enough = true;
        for (int b = 0; b < path.bowls(); b++) {
            int from = path.mixStart[b];
            MinuteSet.remove(assistantFree[path.assistant[b]], from, from + occupied(path, b));
            enough &= scales[path.scale[b]].take(from, from + mixing(path, b));
            enough &= stock[path.size[b]].take(from, path.useEnd(b) + grid.day.washMinutes());
        }
        MinuteSet.remove(stylistFree(path.grid), stylistFrom(path), path.end());
        if (grid.conditions.rinsesPlanned()) {
            int rinsed = path.rinse + grid.day.rinseMinutes();
            enough &= basins.take(path.rinse, rinsed);
            MinuteSet.remove(rinser(path), path.rinse, rinsed);
        }
        paths[path.grid.index] = path;
        starts.changed();
        return enough;
    }

    /** Whether a path that was placed before could be placed again; its assistants may have to be others. */
    boolean fits(ServicePath path) {
        if (path.start() < order.earliestStart(path.grid)
                || path.end() > order.stylistUntil(path.grid)
                || path.rinse > order.chairUntil(path.grid)
                || !MinuteSet.covers(stylistFree(path.grid), path.start(), path.end())
                || grid.conditions.rinsesPlanned() && !MinuteSet.has(rinseStarts(path.grid), path.rinse)) {
            return false;
        }
        for (int b = 0; b < path.bowls(); b++) {
            if (!MinuteSet.has(mixStarts(path.grid.mix[path.node[b]], path.scale[b]), path.mixStart[b])
                    || MinuteSet.meets(
                            stockFull(path.size[b]), path.mixStart[b], path.useEnd(b) + grid.day.washMinutes())) {
                return false;
            }
        }
        return true;
    }

    ServicePath takeOff(int service) {
        ServicePath path = paths[service];
        for (int b = 0; b < path.bowls(); b++) {
            int from = path.mixStart[b];
            MinuteSet.add(assistantFree[path.assistant[b]], from, from + occupied(path, b));
            scales[path.scale[b]].giveBack(from, from + mixing(path, b));
            stock[path.size[b]].giveBack(from, path.useEnd(b) + grid.day.washMinutes());
        }
        MinuteSet.add(stylistFree(path.grid), stylistFrom(path), path.end());
        if (grid.conditions.rinsesPlanned()) {
            int rinsed = path.rinse + grid.day.rinseMinutes();
            basins.giveBack(path.rinse, rinsed);
            MinuteSet.add(rinser(path), path.rinse, rinsed);
        }
        paths[service] = null;
        starts.changed();
        return path;
    }

    /** Takes back the mixing of one bowl, and the bowl. */
    void lift(ServicePath path, int b) {
        int from = path.mixStart[b];
        MinuteSet.add(assistantFree[path.assistant[b]], from, from + occupied(path, b));
        scales[path.scale[b]].giveBack(from, from + mixing(path, b));
        stock[path.size[b]].giveBack(from, path.useEnd(b) + grid.day.washMinutes());
        starts.changed();
    }

    /** Mixes a lifted bowl at another minute, at which somebody and something to mix with must be free. */
    void remix(ServicePath path, int b, int start) {
        int mix = path.grid.mix[path.node[b]];
        int end = path.useEnd(b);
        path.handling += grid.agingCost(mix, end - start) - grid.agingCost(mix, end - path.mixStart[b]);
        path.standing += path.mixStart[b] - start;
        path.mixStart[b] = start;
        path.assistant[b] = freeAssistant(start, start + occupied(path, b), shown.assistant(path.grid.index, b));
        MinuteSet.remove(assistantFree[path.assistant[b]], start, start + occupied(path, b));
        scales[path.scale[b]].take(start, start + mixing(path, b));
        stock[path.size[b]].take(start, path.useEnd(b) + grid.day.washMinutes());
        starts.changed();
    }

    private long[] rinser(ServicePath path) {
        return grid.day.stylistsRinse() ? stylistFree(path.grid) : assistantFree[path.rinseAssistant];
    }

    private boolean assistantsRinse() {
        return grid.conditions.rinsesPlanned() && !grid.day.stylistsRinse();
    }

    /** The stylist of a service that is under way is taken before its first minute to come. */
    private int stylistFrom(ServicePath path) {
        return Math.min(
                path.start(), grid.conditions.underway().get(path.grid.index).stylistFromMinute());
    }

    private int occupied(ServicePath path, int b) {
        return grid.occupied[path.grid.mix[path.node[b]]];
    }

    private int mixing(ServicePath path, int b) {
        return grid.mixing[path.grid.mix[path.node[b]]];
    }

    /** The wanted assistant if free, else the free one who has been free for the shortest time, or -1. */
    private int freeAssistant(int from, int to, int wanted) {
        if (wanted >= 0 && MinuteSet.covers(assistantFree[wanted], from, to)) {
            return wanted;
        }
        int best = -1;
        int shortest = Integer.MAX_VALUE;
        for (int a = 0; a < assistantFree.length; a++) {
            if (MinuteSet.covers(assistantFree[a], from, to)) {
                int idle = 0;
                while (from - idle > 0 && MinuteSet.has(assistantFree[a], from - idle - 1)) {
                    idle++;
                }
                if (idle < shortest) {
                    shortest = idle;
                    best = a;
                }
            }
        }
        return best;
    }

    BookedOrder order() {
        return order;
    }
}
