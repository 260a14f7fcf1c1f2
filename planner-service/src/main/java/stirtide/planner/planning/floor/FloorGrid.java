package stirtide.planner.planning.floor;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** A day worked out for the search. */
final class FloorGrid {
    final FloorDay day;
    final FloorConditions conditions;
    final ServiceGrid[] services;
    /** Words of a {@link MinuteSet} of this day. */
    final int words;
    /** Services in the order of booking, then of number. */
    final int[] byTime;
    /** Services of each stylist and of each chair in the order in which they begin. */
    final int[][] ofStylist;

    final int[][] ofChair;
    /** Place of each service in those orders. */
    final int[] stylistPlace;

    final int[] chairPlace;
    /** By mix: minutes of mixing, those for which it takes an assistant, and those until the bowl is at the chair. */
    final int[] mixing;

    final int[] occupied;
    final int[] lead;
    final int[] life;

    FloorGrid(FloorDay day, FloorConditions conditions) {
        this.day = day;
        this.conditions = conditions;
        this.services = IntStream.range(0, day.services().size())
                .mapToObj(i -> new ServiceGrid(day, conditions, i))
                .toArray(ServiceGrid[]::new);
        this.words = 1 + horizon() / 64;
        this.mixing = day.mixes().stream().mapToInt(FloorMix::mixMinutes).toArray();
        this.lead = Arrays.stream(mixing).map(m -> m + day.handOverMinutes()).toArray();
        this.occupied = conditions.carriedByMixer() ? lead : mixing;
        this.life = day.mixes().stream().mapToInt(FloorMix::lifeMinutes).toArray();
        this.byTime = groups(new int[services.length])[0];
        this.ofStylist =
                groups(day.services().stream().mapToInt(FloorService::stylist).toArray());
        this.ofChair =
                groups(day.services().stream().mapToInt(FloorService::chair).toArray());
        this.stylistPlace = places(ofStylist);
        this.chairPlace = places(ofChair);
    }

    /** What a bowl costs for having little of its life left at the given age. */
    int agingCost(int mix, int age) {
        return HandlingCosts.MARGIN_MINUTE * Math.max(0, day.marginMinutes() - (life[mix] - age));
    }

    /** The minutes of duty of an assistant, in a set of its own. */
    long[] onDuty(int assistant) {
        long[] minutes = new long[words];
        for (DutySpan span : day.assistants().get(assistant).onDuty()) {
            MinuteSet.add(minutes, span.fromMinute(), span.toMinute());
        }
        return minutes;
    }

    /** The minutes in which a stylist applies, in a set of its own. */
    long[] applies(int stylist) {
        long[] minutes = new long[words];
        List<DutySpan> spans = stylist < conditions.stylistsOnDuty().size()
                ? conditions.stylistsOnDuty().get(stylist)
                : List.of();
        if (spans.isEmpty()) {
            Arrays.fill(minutes, -1L);
        }
        for (DutySpan span : spans) {
            int last = words * Long.SIZE;
            MinuteSet.add(minutes, Math.min(span.fromMinute(), last - 1), Math.min(span.toMinute(), last));
        }
        return minutes;
    }

    /** No plan reaches further: waits are limited, and nobody begins before the booked minute. */
    private int horizon() {
        int end = 0;
        for (FloorAssistant assistant : day.assistants()) {
            for (DutySpan span : assistant.onDuty()) {
                end = Math.max(end, span.toMinute());
            }
        }
        for (ServiceGrid service : services) {
            end = Math.max(end, service.latestWish() + FloorDay.MOST_WAIT_MINUTES);
        }
        return end + day.rinseMinutes() + day.washMinutes() + 1;
    }

    private int[][] groups(int[] key) {
        int count = Arrays.stream(key).max().orElse(-1) + 1;
        Comparator<Integer> order = Comparator.<Integer>comparingInt(i -> services[i].service.bookedMinute())
                .thenComparingInt(i -> services[i].service.service());
        return IntStream.range(0, count)
                .mapToObj(group -> IntStream.range(0, key.length)
                        .filter(i -> key[i] == group)
                        .boxed()
                        .sorted(order)
                        .mapToInt(i -> i)
                        .toArray())
                .toArray(int[][]::new);
    }

    private int[] places(int[][] groups) {
        int[] place = new int[services.length];
        for (int[] group : groups) {
            for (int at = 0; at < group.length; at++) {
                place[group[at]] = at;
            }
        }
        return place;
    }
}
