package stirtide.planner.service;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** What an operator asks of the service in figures. Labels have few values: never a day, a client or an id. */
final class Meters {
    private final MeterRegistry registry;
    private final Timer append;
    private final Timer planProven;
    private final Timer planOpen;
    private final Map<String, Timer> commands = new ConcurrentHashMap<>();

    Meters(MeterRegistry registry) {
        this.registry = registry;
        this.append = timer("stirtide.append", "Time to make the events of a command durable");
        this.planProven = timer("stirtide.plan", "Time to draw a plan", "proven", "yes");
        this.planOpen = timer("stirtide.plan", "Time to draw a plan", "proven", "no");
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

    /** Time to draw a plan, by whether no plan makes clients wait less. */
    Timer plan(boolean proven) {
        return proven ? planProven : planOpen;
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
