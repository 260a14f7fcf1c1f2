package stirtide.bar.model;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import stirtide.bar.text.CountText;
import stirtide.events.setup.Span;
import stirtide.events.view.DayView.PersonCard;
import stirtide.events.view.PersonWork;
import stirtide.events.view.PersonWork.Kind;

/**
 * The day of a person in minutes.
 *
 * @param card the person with hours and work
 */
public record PersonDay(PersonCard card) {
    /** One client of a stylist: from the first zone to the last, gaps between them are part of it. */
    public record Head(int service, Instant from, Instant to) {}

    /** Clients applied on, by their begin. */
    public List<Head> heads() {
        List<PersonWork> zones = of(Kind.APPLYING);
        return zones.stream()
                .map(PersonWork::service)
                .distinct()
                .map(service -> head(
                        service,
                        zones.stream().filter(zone -> zone.service() == service).toList()))
                .sorted(Comparator.comparing(Head::from))
                .toList();
    }

    private static Head head(int service, List<PersonWork> zones) {
        Instant from = zones.stream()
                .map(PersonWork::from)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Instant to = zones.stream()
                .map(PersonWork::to)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return new Head(service, from, to);
    }

    /** Work of a kind, by its begin. */
    public List<PersonWork> of(Kind kind) {
        return card.work().stream().filter(piece -> piece.kind() == kind).toList();
    }

    /** Minutes of a kind of work, planned and done. */
    public long minutes(Kind kind) {
        return of(kind).stream()
                .mapToLong(piece -> Duration.between(piece.from(), piece.to()).toMinutes())
                .sum();
    }

    /** Minutes at work on the day. */
    public long hoursMinutes() {
        return card.hours().stream()
                .mapToLong(span -> Duration.between(span.from(), span.to()).toMinutes())
                .sum();
    }

    /** Minutes at work that nothing is planned for. */
    public long freeMinutes() {
        var busy = new ArrayList<Span>();
        card.work().stream()
                .filter(piece -> piece.kind() != Kind.APPLYING)
                .forEach(piece -> busy.add(new Span(piece.from(), piece.to())));
        heads().forEach(head -> busy.add(new Span(head.from(), head.to())));
        busy.sort(Comparator.comparing(Span::from));
        return card.hours().stream().mapToLong(span -> free(span, busy)).sum();
    }

    private static long free(Span hours, List<Span> busy) {
        Instant at = hours.from();
        Duration free = Duration.ZERO;
        for (Span span : busy) {
            Instant begin = span.from().isBefore(hours.to()) ? span.from() : hours.to();
            if (begin.isAfter(at)) free = free.plus(Duration.between(at, begin));
            if (span.to().isAfter(at)) at = span.to();
        }
        if (at.isBefore(hours.to())) free = free.plus(Duration.between(at, hours.to()));
        return free.toMinutes();
    }

    /** Role and minutes in words. */
    public String words() {
        var parts = new ArrayList<String>();
        if (card.hours().isEmpty()) parts.add("off today");
        if (card.work().isEmpty() && !card.hours().isEmpty()) parts.add("no work today");
        if (minutes(Kind.MIXING) > 0) parts.add("mixes " + minutes(Kind.MIXING) + " min");
        if (minutes(Kind.CARRYING) > 0) parts.add("carries " + minutes(Kind.CARRYING) + " min");
        List<Head> heads = heads();
        if (!heads.isEmpty())
            parts.add("applies " + minutes(Kind.APPLYING) + " min on " + CountText.of(heads.size(), "client"));
        if (!card.hours().isEmpty()) parts.add("free " + freeMinutes() + " of " + hoursMinutes() + " min");
        return card.role().toLowerCase(Locale.ROOT) + "  " + String.join(", ", parts);
    }
}
