package stirtide.events.view;

import java.time.Instant;
import java.util.Optional;

/** An alarm. {@code priority} is HIGH, MEDIUM or LOW; {@code id} is what is acknowledged. */
public record AlarmCard(
        String id,
        String priority,
        String kind,
        String bowl,
        int chair,
        String sentence,
        Instant raisedAt,
        Optional<String> acknowledgedBy) {}
