package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import stirtide.planner.planning.stagger.SearchRounds;

/** Who has the turn, counted in parts of work. Time passes only while somebody works, as told here. */
class PlanningTurnsTest {
    private static final long BUDGET = 50;

    private final AtomicLong clock = new AtomicLong();
    private final PlanningTurns turns = new PlanningTurns(BUDGET, clock::get);
    private final List<String> parts = Collections.synchronizedList(new ArrayList<>());
    private final List<Thread> threads = Collections.synchronizedList(new ArrayList<>());

    @AfterEach
    void end() throws InterruptedException {
        threads.forEach(Thread::interrupt);
        for (Thread thread : threads) thread.join();
    }

    /** Work of a day in parts; what happens during its first part can be said. */
    private Thread work(String day, int services, int partCount, long partNanos, Runnable first) {
        Thread thread = new Thread(() -> {
            try (PlanningTurns.Turn turn = turns.begin(day, services)) {
                for (int part = 0; part < partCount; part++) {
                    parts.add(day);
                    clock.addAndGet(partNanos);
                    if (part == 0) first.run();
                    turn.pause();
                }
            } catch (SearchRounds.BrokenOff interrupted) {
                parts.add(day + " broken off");
            }
        });
        threads.add(thread);
        thread.start();
        return thread;
    }

    private void waiting(String day, int services, int partCount, long partNanos) {
        Thread thread = work(day, services, partCount, partNanos, () -> {});
        await().until(() -> thread.getState() == Thread.State.WAITING);
    }

    private void awaitEnd() throws InterruptedException {
        for (Thread thread : List.copyOf(threads)) thread.join();
    }

    private static List<String> times(int count, String day) {
        return Collections.nCopies(count, day);
    }

    private static List<String> all(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    @Test
    void a_small_day_waits_for_the_part_in_hand_of_a_large_one_only() throws Exception {
        work("large", 400, 30, 40, () -> waiting("small", 8, 20, 2)).join();
        awaitEnd();
        assertThat(parts).isEqualTo(all(all(times(1, "large"), times(20, "small")), times(29, "large")));
    }

    @Test
    void a_small_day_goes_before_all_large_ones_that_wait() throws Exception {
        work("large-1", 400, 5, 40, () -> {
                    waiting("large-2", 400, 5, 40);
                    waiting("large-3", 300, 5, 40);
                    waiting("small", 8, 20, 2);
                })
                .join();
        awaitEnd();
        assertThat(parts.subList(0, 21)).isEqualTo(all(times(1, "large-1"), times(20, "small")));
        assertThat(parts).hasSize(35);
    }

    @Test
    void days_of_one_size_have_their_parts_in_turn() throws Exception {
        work("a", 40, 4, 10, () -> {
                    waiting("b", 40, 4, 10);
                    waiting("c", 40, 4, 10);
                })
                .join();
        awaitEnd();
        assertThat(parts).containsExactly("a", "b", "c", "a", "b", "c", "a", "b", "c", "a", "b", "c");
    }

    @Test
    void a_small_day_that_has_used_its_budget_leaves_a_large_one_as_much() throws Exception {
        work("small", 8, 200, 5, () -> waiting("large", 400, 20, 5)).join();
        awaitEnd();
        // Ten parts are a budget.
        assertThat(parts.subList(0, 40))
                .isEqualTo(
                        all(all(times(10, "small"), times(10, "large")), all(times(10, "small"), times(10, "large"))));
    }

    @Test
    void many_small_days_do_not_keep_a_large_one_out() throws Exception {
        work("small-0", 8, 100, 5, () -> {
                    waiting("large", 400, 10, 5);
                    for (int day = 1; day < 5; day++) waiting("small-" + day, 8, 100, 5);
                })
                .join();
        awaitEnd();
        // Every small day has one budget before the large one, and no second.
        assertThat(parts.subList(0, 50)).doesNotContain("large");
        assertThat(parts.subList(50, 60)).containsOnly("large");
    }

    @Test
    void who_is_interrupted_while_waiting_gives_up_the_place() throws Exception {
        work("large", 400, 3, 40, () -> {
                    Thread thread = work("stopped", 8, 5, 2, () -> {});
                    await().until(() -> thread.getState() == Thread.State.WAITING);
                    thread.interrupt();
                    await().until(() -> thread.getState() == Thread.State.TERMINATED);
                })
                .join();
        awaitEnd();
        assertThat(parts).containsExactly("large", "stopped broken off", "large", "large");
    }
}
