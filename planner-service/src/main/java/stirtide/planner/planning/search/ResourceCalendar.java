package stirtide.planner.planning.search;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;
import stirtide.planner.planning.search.PlanQuestion.Minutes;

/** Who and what is free at the bar, minute by minute. People, scales and sizes go by their place in the question. */
final class ResourceCalendar {
    private static final int OFF_DUTY = 1_000_000;

    private final PlanQuestion question;
    private final MinuteUsage[] people;
    private final MinuteUsage[] scales;
    private final MinuteUsage[] bowls;
    private final int[] sizesByResidue;

    ResourceCalendar(PlanQuestion question) {
        this.question = question;
        int minutes = question.assistants().stream()
                .flatMap(each -> each.onDuty().stream())
                .mapToInt(Minutes::to)
                .max()
                .orElse(16);
        people =
                question.assistants().stream().map(each -> hours(each, minutes)).toArray(MinuteUsage[]::new);
        scales = question.scales().stream()
                .map(scale -> new MinuteUsage(minutes, 0))
                .toArray(MinuteUsage[]::new);
        bowls = question.bowlSizes().stream()
                .map(size -> new MinuteUsage(minutes, 0))
                .toArray(MinuteUsage[]::new);
        for (int scale = 0; scale < scales.length; scale++)
            scales[scale].add(
                    0, question.scaleBusyUntil(question.scales().get(scale).scaleId()), 1);
        for (BowlOut out : question.bowlsOut())
            for (int size = 0; size < bowls.length; size++)
                if (question.bowlSizes().get(size).bowlSizeId().equals(out.bowlSizeId()))
                    bowls[size].add(0, out.freeFromMinute(), 1);
        sizesByResidue = IntStream.range(0, bowls.length)
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(
                                size -> question.bowlSizes().get(size).residueMilligrams())
                        .thenComparing(size -> question.bowlSizes().get(size).usableMilligrams()))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static MinuteUsage hours(Assistant assistant, int minutes) {
        MinuteUsage hours = new MinuteUsage(minutes, OFF_DUTY);
        for (Minutes duty : assistant.onDuty()) hours.add(duty.from(), duty.to(), -OFF_DUTY);
        hours.add(0, assistant.busyUntilMinute(), 1);
        return hours;
    }

    PlanQuestion question() {
        return question;
    }

    int scaleCount() {
        return scales.length;
    }

    /** Bowl sizes from the one that wastes least; do not change. */
    int[] sizesByResidue() {
        return sizesByResidue;
    }

    boolean personFree(int person, int from, int to) {
        return people[person].below(1, from, to);
    }

    boolean scaleFree(int scale, int from, int to) {
        return scales[scale].below(1, from, to);
    }

    /** Minute up to which one more bowl of a size may be in use from {@code from} on, when {@code own} more are out. */
    int bowlUntil(int size, int own, int from, int until) {
        int level = question.bowlSizes().get(size).count() - own;
        return bowls[size].firstAt(level, from, until);
    }

    /** How many bowls of a size out of those of one service are not empty and washed again at a minute. */
    int stillOut(List<MixAssignment> own, int size, int minute) {
        int out = 0;
        for (MixAssignment each : own) if (each.size() == size && each.end() + question.washMinutes() > minute) out++;
        return out;
    }

    void take(MixAssignment assignment) {
        if (assignment.person() != MixAssignment.STYLIST)
            people[assignment.person()].add(assignment.mix(), assignment.mixEnd() + question.carryMinutes(), 1);
        scales[assignment.scale()].add(assignment.mix(), assignment.mixEnd(), 1);
        bowls[assignment.size()].add(assignment.mix(), assignment.end() + question.washMinutes(), 1);
    }

    /** An assistant free for a mix and for carrying it, the wanted person if possible, else the one whose free time it fits most tightly. */
    int personFor(int from, int to, List<Integer> wanted) {
        for (int person : wanted) if (personFree(person, from, to)) return person;
        int best = -1;
        int tightest = Integer.MAX_VALUE;
        for (int person = 0; person < people.length; person++) {
            if (!personFree(person, from, to)) continue;
            int free = freeAround(people[person], from, to);
            if (free < tightest) {
                tightest = free;
                best = person;
            }
        }
        return best;
    }

    private int freeAround(MinuteUsage hours, int from, int to) {
        int before = from;
        while (before > Math.max(question.nowMinute(), from - 30) && hours.at(before - 1) == 0) before--;
        return hours.firstAt(1, to, to + 30) - before;
    }
}
