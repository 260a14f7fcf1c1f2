package stirtide.planner.planning.floor;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What people and things do while some services are placed; every placed service keeps every rule. */
final class FloorState {
    final FloorGrid grid;
    final @Nullable ServicePath[] paths;
    private final long[][] assistantFree;
    private final long[][] stylistFree;
    private final CountedUse scales;
    private final CountedUse basins;
    private final CountedUse[] stock;
    private final StartSets starts;

    FloorState(FloorGrid grid) {
        this.grid = grid;
        FloorDay day = grid.day;
        this.paths = new ServicePath[grid.services.length];
        this.assistantFree = new long[day.assistants().size()][];
        Arrays.setAll(assistantFree, grid::onDuty);
        this.stylistFree = new long[grid.ofStylist.length][grid.words];
        for (long[] free : stylistFree) {
            Arrays.fill(free, -1L);
        }
        this.scales = new CountedUse(day.scales(), grid.words);
        this.basins = new CountedUse(day.basins(), grid.words);
        this.stock = day.bowlSizes().stream()
                .map(size -> new CountedUse(size.count(), grid.words))
                .toArray(CountedUse[]::new);
        this.starts = new StartSets(grid, assistantFree, scales, basins);
    }

    long[] stylistFree(ServiceGrid service) {
        return stylistFree[service.service.stylist()];
    }

    long[] stockFull(int size) {
        return stock[size].full;
    }

    /** Minutes at which a bowl of the mix can be begun. */
    long[] mixStarts(int mix) {
        return starts.ofMix(mix);
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
            path.assistant[b] = freeAssistant(from, from + occupied(path, b));
            possible = path.assistant[b] >= 0;
            if (possible) {
                MinuteSet.remove(assistantFree[path.assistant[b]], from, from + occupied(path, b));
            }
        }
        if (possible && !grid.day.stylistsRinse()) {
            path.rinseAssistant = freeAssistant(path.rinse, path.rinse + grid.day.rinseMinutes());
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
            enough &= scales.take(from, from + mixing(path, b));
            enough &= stock[path.size[b]].take(from, path.useEnd(b) + grid.day.washMinutes());
        }
        int rinsed = path.rinse + grid.day.rinseMinutes();
        enough &= basins.take(path.rinse, rinsed);
        MinuteSet.remove(stylistFree(path.grid), path.start(), path.end());
        MinuteSet.remove(rinser(path), path.rinse, rinsed);
        paths[path.grid.index] = path;
        starts.changed();
        return enough;
    }

    /** Whether a path that was placed before could be placed again; its assistants may have to be others. */
    boolean fits(ServicePath path) {
        if (path.start() < earliestStart(path.grid)
                || path.end() > stylistUntil(path.grid)
                || path.rinse > chairUntil(path.grid)
                || !MinuteSet.covers(stylistFree(path.grid), path.start(), path.end())
                || !MinuteSet.has(rinseStarts(path.grid), path.rinse)) {
            return false;
        }
        for (int b = 0; b < path.bowls(); b++) {
            if (!MinuteSet.has(mixStarts(path.grid.mix[path.node[b]]), path.mixStart[b])
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
            scales.giveBack(from, from + mixing(path, b));
            stock[path.size[b]].giveBack(from, path.useEnd(b) + grid.day.washMinutes());
        }
        int rinsed = path.rinse + grid.day.rinseMinutes();
        basins.giveBack(path.rinse, rinsed);
        MinuteSet.add(stylistFree(path.grid), path.start(), path.end());
        MinuteSet.add(rinser(path), path.rinse, rinsed);
        paths[service] = null;
        starts.changed();
        return path;
    }

    /** Takes back the mixing of one bowl, and the bowl. */
    void lift(ServicePath path, int b) {
        int from = path.mixStart[b];
        MinuteSet.add(assistantFree[path.assistant[b]], from, from + occupied(path, b));
        scales.giveBack(from, from + mixing(path, b));
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
        path.assistant[b] = freeAssistant(start, start + occupied(path, b));
        MinuteSet.remove(assistantFree[path.assistant[b]], start, start + occupied(path, b));
        scales.take(start, start + mixing(path, b));
        stock[path.size[b]].take(start, path.useEnd(b) + grid.day.washMinutes());
        starts.changed();
    }

    private long[] rinser(ServicePath path) {
        return grid.day.stylistsRinse() ? stylistFree(path.grid) : assistantFree[path.rinseAssistant];
    }

    private int occupied(ServicePath path, int b) {
        return grid.occupied[path.grid.mix[path.node[b]]];
    }

    private int mixing(ServicePath path, int b) {
        return grid.mixing[path.grid.mix[path.node[b]]];
    }

    /** The free assistant who has been free for the shortest time, or -1. */
    private int freeAssistant(int from, int to) {
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

    /** The service begins no earlier, for its stylist, its chair and its booking. */
    int earliestStart(ServiceGrid service) {
        int earliest = service.service.bookedMinute();
        int[] stylists = grid.ofStylist[service.service.stylist()];
        for (int at = grid.stylistPlace[service.index] - 1; at >= 0; at--) {
            ServicePath before = paths[stylists[at]];
            if (before != null) {
                earliest = Math.max(earliest, before.end());
                break;
            }
        }
        int[] chairs = grid.ofChair[service.service.chair()];
        for (int at = grid.chairPlace[service.index] - 1; at >= 0; at--) {
            ServicePath before = paths[chairs[at]];
            if (before != null) {
                return Math.max(earliest, before.rinse);
            }
        }
        return earliest;
    }

    /** The next placed service of the same stylist begins then. */
    int stylistUntil(ServiceGrid service) {
        return nextStart(grid.ofStylist[service.service.stylist()], grid.stylistPlace[service.index]);
    }

    /** The next placed service on the same chair begins then. */
    int chairUntil(ServiceGrid service) {
        return nextStart(grid.ofChair[service.service.chair()], grid.chairPlace[service.index]);
    }

    private int nextStart(int[] order, int place) {
        for (int at = place + 1; at < order.length; at++) {
            ServicePath after = paths[order[at]];
            if (after != null) {
                return after.start();
            }
        }
        return ServiceGrid.NONE;
    }
}
