package stirtide.planner.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import stirtide.events.view.AlarmCard;

/** Alarms while they are collected, each with who has seen it. */
final class AlarmCollector {
    private final SortedMap<String, String> acknowledged;
    private final List<AlarmCard> cards = new ArrayList<>();

    AlarmCollector(SortedMap<String, String> acknowledged) {
        this.acknowledged = acknowledged;
    }

    void add(String id, String priority, String kind, String bowl, int chair, Instant raisedAt, String sentence) {
        cards.add(new AlarmCard(
                id, priority, kind, bowl, chair, sentence, raisedAt, Optional.ofNullable(acknowledged.get(id))));
    }

    List<AlarmCard> cards() {
        return cards;
    }
}
