package stirtide.planner.service;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import io.vertx.core.Future;
import io.vertx.core.Vertx;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.events.day.Booking;
import stirtide.events.day.DayEvent;
import stirtide.events.day.StoredEvent;
import stirtide.events.plan.Plan;
import stirtide.planner.day.Decider;
import stirtide.planner.day.Evolver;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.planning.bounds.TwoStepPlanner;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.stagger.SearchRounds;
import stirtide.planner.planning.whatif.WhatIfAnswer;
import stirtide.planner.planning.whatif.WhatIfQuestion;

/** The planning of a small day beside that of a large one, counted in parts of the large one. */
class PlanningExecutorTest {
    /** So many parts of the large day would pass if the small one had to wait for its end. */
    private static final int MANY_PARTS = 2_000;

    private final Vertx vertx = Vertx.vertx();
    private final PlanningExecutor planning =
            new PlanningExecutor(vertx, 3, new ServiceMetrics(new SimpleMeterRegistry()));

    @AfterEach
    void close() throws Exception {
        vertx.close().await();
    }

    private static Day opened(int services) {
        List<Booking> bookings = new ArrayList<>();
        for (int i = 0; i < services; i++)
            bookings.add(SmallSalon.booking("b-" + i, "full", 1 + i % 3, "09:00", "long"));
        Instant now = SmallSalon.MORNING;
        Decision decision = Decider.decide(
                Day.UNOPENED, new OpenDay(SmallSalon.setup(), bookings), new CommandContext(now, "mika"));
        Day day = Day.UNOPENED;
        for (DayEvent event : ((Decision.Accepted) decision).events())
            day = Evolver.evolve(
                    day, new StoredEvent(SmallSalon.DAY, "", day.revision() + 1, now, "mika", "open", event));
        return day;
    }

    private static PlanQuestion question(int services) {
        return PlanQuestions.of(opened(services)).orElseThrow();
    }

    @Test
    void the_second_step_of_a_small_day_does_not_wait_for_the_end_of_a_large_one() throws Exception {
        PlanQuestion small = question(3);
        PlanQuestion large = question(12);
        Plan smallPlan = TwoStepPlanner.first(small, 3);
        Plan largePlan = TwoStepPlanner.first(large, 1_000_000);
        AtomicInteger largeParts = new AtomicInteger();
        CompletableFuture<Future<DayEvent>> asked = new CompletableFuture<>();
        Future<DayEvent> ofLarge = planning.better("large", () -> large, largePlan, () -> {
            if (largeParts.getAndIncrement() == 0)
                asked.complete(planning.better("small", () -> small, smallPlan, () -> false));
            // The small one has a thread to start; that is not counted in parts.
            LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(1));
            return asked.join().isComplete() || largeParts.get() > MANY_PARTS;
        });
        assertThat(ofLarge.map(DayEvent.class::cast)
                        .otherwise(brokenOff -> {
                            assertThat(brokenOff).isInstanceOf(SearchRounds.BrokenOff.class);
                            return null;
                        })
                        .await())
                .isNull();
        assertThat(asked.join().isComplete()).isTrue();
        assertThat(largeParts.get()).isLessThan(MANY_PARTS);
        assertThat(asked.join().await()).isEqualTo(TwoStepPlanner.second(small, smallPlan, () -> false));
    }

    @Test
    void one_day_cannot_use_up_the_questions_of_all() throws Exception {
        Day day = opened(3);
        WhatIfQuestion question =
                new WhatIfQuestion.ExtraAssistant(SmallSalon.MORNING, SmallSalon.MORNING.plusSeconds(7200));
        List<Future<WhatIfAnswer>> asked = new ArrayList<>();
        CompletableFuture<Future<WhatIfAnswer>> other = new CompletableFuture<>();
        vertx.runOnContext(now -> {
            for (int i = 0; i < 40; i++) asked.add(planning.ask("large", day, question, SmallSalon.MORNING));
            other.complete(planning.ask("small", day, question, SmallSalon.MORNING));
        });
        assertThat(other.get().await()).isInstanceOf(WhatIfAnswer.ExtraAssistant.class);
        Future.join(asked).otherwiseEmpty().await();
        assertThat(asked.stream().filter(Future::succeeded)).hasSize(4);
    }
}
