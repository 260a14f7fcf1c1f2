package stirtide.planner.planning.search;

import java.util.List;

/** A generator of numbers that is part of the question's answer: the same question rolls the same numbers. */
final class SeededNumbers {
    private long state;

    SeededNumbers(long seed) {
        state = seed;
    }

    /** Numbers for a question, seeded from what is asked, not from object identity. */
    static SeededNumbers of(PlanQuestion question) {
        long seed = question.basedOnRevision() * 31 + question.nowMinute();
        for (var task : question.services()) seed = seed * 1_000_003 + task.service() * 97L + task.startMinute();
        return new SeededNumbers(seed);
    }

    /** Seed for another generator that is to be part of the answer. */
    long seed() {
        return state;
    }

    /** A number from 0 to {@code bound - 1}. The mixing step is the published SplitMix64 finalizer. */
    int roll(int bound) {
        state += 0x9E3779B97F4A7C15L;
        long mixed = state;
        mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        mixed ^= mixed >>> 31;
        return (int) Math.floorMod(mixed, (long) bound);
    }

    <T> void shuffle(List<T> list) {
        for (int i = list.size() - 1; i > 0; i--) java.util.Collections.swap(list, i, roll(i + 1));
    }
}
