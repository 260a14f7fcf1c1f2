package stirtide.planner.service;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Metrics of the service. Labels have few values: never a day, a client or an id. */
final class ServiceMetrics {
    private final MeterRegistry registry;
    private final Timer append;
    private final Timer firstPlan;
    private final Timer betterPlan;
    private final Timer keptPlan;
    private final Map<String, Timer> commands = new ConcurrentHashMap<>();

    ServiceMetrics(MeterRegistry registry) {
        this.registry = registry;
        this.append = timer("stirtide.append", "Time to make the events of a command durable");
        this.firstPlan = timer("stirtide.plan", "Time to draw a plan", "step", "first");
        this.betterPlan = timer("stirtide.plan", "Time to draw a plan", "step", "better");
        this.keptPlan = timer("stirtide.plan", "Time to draw a plan", "step", "kept");
    }

    private Timer timer(String name, String description, String... tags) {
        return Timer.builder(name)
                .tags(tags)
                .description(description)
                .publishPercentileHistogram()
                .minimumExpectedValue(Duration.ofNanos(100_000))
                .maximumExpectedValue(Duration.ofSeconds(10))
                .register(registry);
    }

    Timer append() {
        return append;
    }

    /** Time to plan at once. */
    Timer firstPlan() {
        return firstPlan;
    }

    /** Time to look for a better plan, by whether the first is kept. */
    Timer betterPlan(boolean kept) {
        return kept ? keptPlan : betterPlan;
    }

    /** Time from arrival of a command to its answer, by the kind of answer. */
    Timer command(String outcome) {
        return commands.computeIfAbsent(
                outcome,
                kind -> Timer.builder("stirtide.command")
                        .description("Time from arrival of a command to its answer")
                        .tag("outcome", kind)
                        .register(registry));
    }
}
