package stirtide.events.setup;

import java.time.Instant;

/**
 * A half-open span of time: {@code from} belongs to it, {@code to} does not.
 *
 * @param from first instant of the span
 * @param to first instant after the span, later than {@code from}
 */
public record Span(Instant from, Instant to) {
    public Span {
        if (!from.isBefore(to))
            throw new IllegalArgumentException("a span must end after it starts: " + from + ".." + to);
    }
}
