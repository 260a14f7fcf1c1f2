package stirtide.bar.controller;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.AlarmList;
import stirtide.events.command.DayCommand;
import stirtide.events.view.AlarmCard;

/**
 * What this terminal does with alarms: which are new, which are shelved, which are raised again, and when so many came
 * that they are shown by kind. Minutes run on the salon's clock. Shelving is this terminal's alone.
 */
final class AlarmTracker {
    /** An alarm of high priority that stands is news again after so long. */
    static final Duration RAISED_AGAIN = Duration.ofMinutes(2);

    private static final Duration BELL_PAUSE = Duration.ofSeconds(10);

    private final Map<String, Known> known = new LinkedHashMap<>();
    private final Map<String, Instant> shelvedUntil = new TreeMap<>();
    private final AlarmRate count = new AlarmRate();
    private boolean bell;
    private long bellNanos = Long.MIN_VALUE / 2;

    /** What is known about an alarm that stands. */
    private record Known(long newsNanos, Instant newsAt, boolean acknowledged, boolean seen) {}

    /** Looks at the alarms of a picture. */
    void look(List<AlarmCard> alarms, Instant now, long nanos) {
        known.keySet()
                .removeIf(id -> alarms.stream().noneMatch(alarm -> alarm.id().equals(id)));
        shelvedUntil.keySet().removeIf(id -> !known.containsKey(id));
        for (AlarmCard alarm : alarms) look(alarm, now, nanos);
        count.pass(now);
    }

    private void look(AlarmCard alarm, Instant now, long nanos) {
        Known before = known.get(alarm.id());
        boolean acknowledged = alarm.acknowledgedBy().isPresent();
        if (before == null) {
            count.add(alarm);
            news(alarm.id(), new Known(nanos, now, acknowledged, acknowledged), nanos);
        } else if (acknowledged && !before.acknowledged()) {
            known.put(alarm.id(), new Known(before.newsNanos(), now, true, true));
        } else if (isBack(alarm.id(), now) || isRaisedAgain(alarm, before, now)) {
            news(alarm.id(), new Known(nanos, now, acknowledged, false), nanos);
        }
    }

    private boolean isBack(String id, Instant now) {
        Instant until = shelvedUntil.get(id);
        if (until == null || now.isBefore(until)) return false;
        shelvedUntil.remove(id);
        return true;
    }

    private static boolean isRaisedAgain(AlarmCard alarm, Known before, Instant now) {
        return alarm.priority().equals("HIGH")
                && Duration.between(before.newsAt(), now).compareTo(RAISED_AGAIN) >= 0;
    }

    private void news(String id, Known fresh, long nanos) {
        known.put(id, fresh);
        if (fresh.seen() || nanos - bellNanos < BELL_PAUSE.toNanos()) return;
        bell = true;
        bellNanos = nanos;
    }

    /** Whether the bell is to ring; asking clears it. */
    boolean takeBell() {
        boolean wanted = bell;
        bell = false;
        return wanted;
    }

    /** Puts alarms away for some minutes of the salon's clock; high ones stay. The answer says so. */
    String shelve(List<String> ids, int minutes, Instant now) {
        Instant until = now.plus(Duration.ofMinutes(minutes));
        ids.forEach(id -> shelvedUntil.put(id, until));
        String many = ids.size() == 1 ? "shelved" : ids.size() + " shelved";
        return many + " at this terminal for " + minutes + " min";
    }

    /** Says that an alarm was seen here; an alarm raised again needs no second word to the service. */
    void seen(String id, Instant now) {
        Known before = known.get(id);
        if (before != null) known.put(id, new Known(before.newsNanos(), now, before.acknowledged(), true));
    }

    /** Marks alarms as seen, and acknowledges those that are not yet to the service; returns the notice to show. */
    String seen(List<AlarmCard> cards, String personId, Instant now, ServiceGateway outgoing) {
        for (AlarmCard card : cards) {
            seen(card.id(), now);
            if (card.acknowledgedBy().isEmpty())
                outgoing.send(personId, new DayCommand.AcknowledgeAlarm(card.id()), "alarm seen: " + card.sentence());
        }
        return "alarm seen: " + cards.get(0).sentence();
    }

    /** The rows to show for the alarms of the last look. */
    AlarmList list(List<AlarmCard> alarms) {
        var shown = alarms.stream()
                .filter(alarm -> alarm.priority().equals("HIGH") || !shelvedUntil.containsKey(alarm.id()))
                .toList();
        var groups = new LinkedHashMap<String, List<AlarmCard>>();
        for (AlarmCard alarm : shown) {
            String key = count.isFlood() ? alarm.priority() + alarm.kind() : alarm.id();
            groups.computeIfAbsent(key, made -> new ArrayList<>()).add(alarm);
        }
        var rows = groups.values().stream().map(this::row).toList();
        return new AlarmList(rows, alarms.size() - shown.size(), count.isFlood(), count.tally());
    }

    private AlarmList.Row row(List<AlarmCard> alarms) {
        long newest = alarms.stream()
                .mapToLong(alarm ->
                        known.containsKey(alarm.id()) ? known.get(alarm.id()).newsNanos() : Long.MIN_VALUE / 2)
                .max()
                .orElse(Long.MIN_VALUE / 2);
        boolean unseen = alarms.stream().anyMatch(this::isUnseen);
        return new AlarmList.Row(alarms, newest, unseen);
    }

    private boolean isUnseen(AlarmCard alarm) {
        Known state = known.get(alarm.id());
        return state == null ? alarm.acknowledgedBy().isEmpty() : !state.seen();
    }
}
