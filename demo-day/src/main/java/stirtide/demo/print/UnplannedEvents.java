package stirtide.demo.print;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.bar.text.TimeText;
import stirtide.demo.play.PlayedDay;
import stirtide.events.day.DayEvent;
import stirtide.events.day.OverMixCause;
import stirtide.events.day.StoredEvent;
import stirtide.mixing.text.AmountText;

/** Unplanned events of the day: late clients, walk-ins, wrong weights, lost bowls. */
final class UnplannedEvents {
    private static final int WORTH_TELLING_MINUTES = 5;

    private UnplannedEvents() {}

    static void write(TextPage page, PlayedDay day, ZoneId zone) {
        page.heading("WHAT NOBODY HAD PLANNED");
        Set<String> wrong = new HashSet<>();
        SortedMap<Integer, Instant> booked = new TreeMap<>();
        boolean opened = false;
        for (StoredEvent stored : day.events()) {
            Optional<String> sentence = sentence(stored.event(), wrong, opened, zone);
            if (stored.event() instanceof DayEvent.ServiceBooked known)
                booked.put(known.service(), known.booking().start());
            if (stored.event() instanceof DayEvent.ServiceMoved moved) booked.put(moved.service(), moved.start());
            if (sentence.isEmpty()) sentence = lateStart(stored, booked);
            sentence.ifPresent(text -> page.text(TimeText.minute(stored.time(), zone) + "  ", text));
            // Bookings before the first plan come from the calendar; later ones are walk-ins.
            opened |= stored.event() instanceof DayEvent.PlanDrawn;
        }
    }

    private static Optional<String> sentence(DayEvent event, Set<String> wrong, boolean opened, ZoneId zone) {
        if (event instanceof DayEvent.ServiceBooked booked && opened)
            return Optional.of("Walk-in: service " + booked.service() + " on chair "
                    + booked.booking().chair() + " for "
                    + TimeText.minute(booked.booking().start(), zone) + ".");
        if (event instanceof DayEvent.ServiceMoved moved)
            return Optional.of("Service " + moved.service() + " on chair " + moved.chair() + " moved to "
                    + TimeText.minute(moved.start(), zone) + ": " + moved.reason() + ".");
        if (event instanceof DayEvent.ServiceCancelled cancelled)
            return Optional.of("Service " + cancelled.service() + " cancelled: " + cancelled.reason() + ".");
        if (event instanceof DayEvent.BowlWeighed weighed) return weighing(weighed, wrong);
        if (event instanceof DayEvent.BatchWeighed weighed && !weighed.insideDirections())
            return Optional.of("The mix in bowl " + weighed.batch() + " weighed in at "
                    + AmountText.ratio(weighed.ratioThousandths()) + ", outside the directions.");
        if (event instanceof DayEvent.BatchBinned binned)
            return Optional.of("The mix in bowl " + binned.batch() + " binned: " + words(binned.cause()) + ".");
        if (event instanceof DayEvent.BowlBinned binned && binned.cause() != OverMixCause.LEFT_OVER)
            return Optional.of("Bowl " + binned.bowl() + " binned with "
                    + AmountText.roundedGrams(binned.leftMilligrams()) + " in it: " + words(binned.cause()) + ".");
        if (event instanceof DayEvent.BowlLate late)
            return Optional.of("Bowl " + late.bowl() + " was not begun at " + TimeText.minute(late.dueAt(), zone)
                    + "; the day is planned anew.");
        return Optional.empty();
    }

    private static Optional<String> lateStart(StoredEvent stored, SortedMap<Integer, Instant> booked) {
        if (!(stored.event() instanceof DayEvent.ServiceStarted started)) return Optional.empty();
        Instant start = booked.getOrDefault(started.service(), stored.time());
        long minutes = Duration.between(start, stored.time()).toMinutes();
        return minutes < WORTH_TELLING_MINUTES
                ? Optional.empty()
                : Optional.of("Service " + started.service() + " began " + minutes + " minutes late.");
    }

    private static Optional<String> weighing(DayEvent.BowlWeighed weighed, Set<String> wrong) {
        String ratio = AmountText.ratio(weighed.ratioThousandths());
        if (!weighed.insideDirections()) {
            wrong.add(weighed.bowl());
            return Optional.of("Bowl " + weighed.bowl() + " weighed in at " + ratio + ", outside the directions.");
        }
        return wrong.remove(weighed.bowl())
                ? Optional.of("Bowl " + weighed.bowl() + " weighed in anew at " + ratio + ", inside the directions.")
                : Optional.empty();
    }

    private static String words(OverMixCause cause) {
        return switch (cause) {
            case LEFT_OVER -> "left over";
            case PAST_LIFE -> "past its life";
            case WRONG_RATIO -> "wrong ratio";
            case CLIENT_GONE -> "the client is gone";
            case SPILLED -> "spilled";
        };
    }
}
