package stirtide.planner.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import stirtide.planner.planning.stagger.SearchRounds;

/**
 * Lets the planning of several days take turns, so that one works at a time and none keeps the others waiting for long. Work
 * is done in parts; after each, the turn goes to the smallest day that has something left of its budget. When all who wait
 * have used theirs, each gets a new one, so a large day waits for no more than one budget of every other. Nothing that is
 * planned depends on the turns. May be called on any thread.
 */
final class PlanningTurns {
    private final long budgetNanos;
    private final LongSupplier nanoClock;
    private final ReentrantLock lock = new ReentrantLock();
    private final List<Turn> waiting = new ArrayList<>();
    private final Map<String, Long> usedNanos = new HashMap<>();
    private @Nullable Turn working;

    /**
     * @param budgetNanos work of a day, nanoseconds, before all others that wait have had as much
     * @param nanoClock clock that work is measured by, nanoseconds
     */
    PlanningTurns(long budgetNanos, LongSupplier nanoClock) {
        this.budgetNanos = budgetNanos;
        this.nanoClock = nanoClock;
    }

    /**
     * Waits for the first turn of a piece of work.
     *
     * @param day whose budget it uses
     * @param services size of that day
     * @return the turn, to be closed when the work is over
     * @throws SearchRounds.BrokenOff when the thread is interrupted
     */
    Turn begin(String day, int services) {
        Turn turn = new Turn(day, services);
        lock.lock();
        try {
            waiting.add(turn);
            if (working == null) passOn();
            turn.await();
        } finally {
            lock.unlock();
        }
        return turn;
    }

    private void passOn() {
        working = null;
        if (waiting.isEmpty()) {
            usedNanos.clear();
            return;
        }
        while (waiting.stream().noneMatch(this::hasBudget)) {
            usedNanos.replaceAll((day, used) -> used - budgetNanos);
            usedNanos.values().removeIf(used -> used <= 0);
        }
        Turn next = waiting.stream()
                .filter(this::hasBudget)
                .min(Comparator.comparingInt(turn -> turn.services))
                .orElseThrow();
        waiting.remove(next);
        working = next;
        next.partBegan = nanoClock.getAsLong();
        next.granted.signal();
    }

    private boolean hasBudget(Turn turn) {
        return usedNanos.getOrDefault(turn.day, 0L) < budgetNanos;
    }

    /** The right to work until the next pause. */
    final class Turn implements AutoCloseable {
        private final String day;
        private final int services;
        private final Condition granted = lock.newCondition();
        private long partBegan;
        private long workedNanos;

        private Turn(String day, int services) {
            this.day = day;
            this.services = services;
        }

        /**
         * To be called after every part of the work: waits while others have their turns.
         *
         * @throws SearchRounds.BrokenOff when the thread is interrupted
         */
        void pause() {
            lock.lock();
            try {
                count();
                if (waiting.isEmpty()) return;
                waiting.add(this);
                passOn();
                await();
            } finally {
                lock.unlock();
            }
        }

        /** Work done so far, without the waiting, nanoseconds. */
        long workedNanos() {
            return workedNanos + nanoClock.getAsLong() - partBegan;
        }

        @Override
        public void close() {
            lock.lock();
            try {
                if (working != this) return;
                count();
                passOn();
            } finally {
                lock.unlock();
            }
        }

        private void count() {
            long now = nanoClock.getAsLong();
            usedNanos.merge(day, now - partBegan, Long::sum);
            workedNanos += now - partBegan;
            partBegan = now;
        }

        private void await() {
            while (working != this) {
                try {
                    granted.await();
                } catch (InterruptedException stopping) {
                    Thread.currentThread().interrupt();
                    waiting.remove(this);
                    if (working == this) passOn();
                    SearchRounds.stillWanted(() -> true);
                }
            }
        }
    }
}
