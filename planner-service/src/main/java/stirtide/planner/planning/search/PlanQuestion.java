package stirtide.planner.planning.search;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Directions.TechniqueRule;
import stirtide.events.setup.Scale;

/**
 * All the planner may know. Times are minutes since {@code dayStart}, spans are half-open.
 *
 * @param basedOnRevision newest event that is in the question
 * @param asOf time of that event
 * @param dayStart start of the day in the salon's zone
 * @param zone the salon's zone; only sentences need it, minutes count as they pass
 * @param nowMinute first minute in which something new may start: {@code asOf} rounded up
 * @param handOverMinutes minutes from the end of mixing until the bowl is at the chair
 * @param washMinutes minutes until an emptied bowl can be used again
 * @param frozenMinutes mixes of the plan on show that start earlier than this many minutes from now move only if they must
 * @param assistants people who mix at the bar, in the order of the salon's list
 * @param stylists people who apply, as far as their hours are known
 * @param scales scales at the bar
 * @param bowlSizes bowls the bar owns
 * @param developers developers on the shelf
 * @param directions directions in force
 * @param bowlsOut bowls in use now, each with the minute from which it can be used again at the latest estimate
 * @param services services not yet fully applied or still processing, by number
 * @param onShow plan on show, if any
 * @param oneMixTwoBowls whether the salon lets two bowls of different clients be one mix
 * @param carryMinutes minutes for which who mixed a bowl is busy with carrying it, right after mixing: {@code handOverMinutes} or,
 *     where somebody else carries, 0
 */
@RecordBuilder
public record PlanQuestion(
        long basedOnRevision,
        Instant asOf,
        Instant dayStart,
        ZoneId zone,
        int nowMinute,
        int handOverMinutes,
        int washMinutes,
        int frozenMinutes,
        List<Assistant> assistants,
        List<Stylist> stylists,
        List<Scale> scales,
        List<BowlSize> bowlSizes,
        List<Developer> developers,
        List<Directions> directions,
        List<BowlOut> bowlsOut,
        List<ServiceTask> services,
        Optional<Plan> onShow,
        boolean oneMixTwoBowls,
        int carryMinutes)
        implements PlanQuestionBuilder.With {
    public PlanQuestion {
        assistants = List.copyOf(assistants);
        stylists = List.copyOf(stylists);
        scales = List.copyOf(scales);
        bowlSizes = List.copyOf(bowlSizes);
        developers = List.copyOf(developers);
        directions = List.copyOf(directions);
        bowlsOut = List.copyOf(bowlsOut);
        services = List.copyOf(services);
    }

    /** The instant at which a minute of the day starts. */
    public Instant instantOf(int minute) {
        return dayStart.plusSeconds(60L * minute);
    }

    /** The minute of the day in which an instant lies. */
    public int minuteOf(Instant instant) {
        return (int) Math.floorDiv(Duration.between(dayStart, instant).getSeconds(), 60L);
    }

    /** Minute from which a scale is free; 0 if it is now. */
    public int scaleBusyUntil(String scaleId) {
        return assistants.stream()
                .filter(each -> each.busyScaleId().filter(scaleId::equals).isPresent())
                .mapToInt(each -> each.busyUntilMinute() - carryMinutes)
                .max()
                .orElse(0);
    }

    /** Hours of the stylist of a service; empty when nothing is known of them, or when the service has begun and is finished anyway. */
    Optional<List<Minutes>> stylistHours(ServiceTask task) {
        if (task.started()) return Optional.empty();
        return stylists.stream()
                .filter(each -> task.stylistId().filter(each.personId()::equals).isPresent())
                .map(Stylist::onDuty)
                .findFirst();
    }

    /** Directions of a lightener, empty when none are in force. */
    Optional<Directions> directions(String lightenerId) {
        return directions.stream()
                .filter(each -> each.lightenerId().equals(lightenerId))
                .findFirst();
    }

    /** What the directions of a lightener say of a technique, empty when they say nothing. */
    Optional<TechniqueRule> rule(String lightenerId, String technique) {
        return directions(lightenerId)
                .flatMap(each -> each.techniques().stream()
                        .filter(rule -> rule.technique().equals(technique))
                        .findFirst());
    }

    /** A half-open span of minutes of the day, {@code from < to}. */
    public record Minutes(int from, int to) {
        public Minutes {
            if (from >= to)
                throw new IllegalArgumentException("minutes must end after they start: " + from + ".." + to);
        }
    }

    /**
     * A person who mixes.
     *
     * @param personId person
     * @param name how the salon calls the person; only sentences need it
     * @param onDuty hours on this day, breaks cut out
     * @param busyUntilMinute end of the mix the person is at now, carrying included, 0 when none
     * @param busyScaleId scale of that mix, empty when none or when only carrying is left
     */
    public record Assistant(
            String personId, String name, List<Minutes> onDuty, int busyUntilMinute, Optional<String> busyScaleId) {
        public Assistant {
            onDuty = List.copyOf(onDuty);
        }
    }

    /**
     * Somebody who applies.
     *
     * @param personId person
     * @param onDuty hours on this day, breaks cut out; none when not at work
     */
    public record Stylist(String personId, List<Minutes> onDuty) {
        public Stylist {
            onDuty = List.copyOf(onDuty);
        }
    }

    /** A bowl in use: its size and the minute from which it can be used again, washing included. */
    public record BowlOut(String bowlSizeId, int freeFromMinute) {}

    /**
     * One service from now on.
     *
     * @param service service number
     * @param chair chair number
     * @param stylistId who applies, if known
     * @param started whether the client is in the chair
     * @param startMinute booked start, or now when that has passed and the client has not started, or the real start
     * @param bowlsUsed bowls of this service begun so far; the next bowl gets the letter after them
     * @param runs stretches still to be fed, in order; a run's zones are consecutive and share one formula
     * @param processing zones applied already whose rinse is still to come
     */
    public record ServiceTask(
            int service,
            int chair,
            Optional<String> stylistId,
            boolean started,
            int startMinute,
            int bowlsUsed,
            List<RunTask> runs,
            List<AppliedZone> processing) {
        public ServiceTask {
            runs = List.copyOf(runs);
            processing = List.copyOf(processing);
        }

        /** The same service with another start. */
        public ServiceTask startingAt(int minute) {
            return new ServiceTask(service, chair, stylistId, started, minute, bowlsUsed, runs, processing);
        }
    }

    /**
     * A stretch of a service fed by one formula.
     *
     * @param run number of the run within the service, from 1, counted over the whole menu entry
     * @param lightenerId lightener
     * @param strengthHundredths developer strength wanted
     * @param ratioThousandths ratio wanted
     * @param zones zones still to be applied, in order, the first maybe begun
     * @param live bowls of this run already begun, in order of use
     * @param reserveMilligrams grams beyond what the zones are expected to need, 0 or more; the last minute of the run needs
     *     them on top, so they ride on its last bowl
     */
    public record RunTask(
            int run,
            String lightenerId,
            int strengthHundredths,
            int ratioThousandths,
            List<ZoneTask> zones,
            List<LiveSupply> live,
            int reserveMilligrams) {
        public RunTask {
            zones = List.copyOf(zones);
            live = List.copyOf(live);
        }
    }

    /**
     * One zone still to be applied.
     *
     * @param zone name
     * @param technique technique named by the directions
     * @param gapMinutes minutes between the zone before and this one; 0 when the zone has begun
     * @param applyMinutes minutes of application still to come, 1 or more
     * @param needMilligrams grams still needed
     * @param processMinutes minutes wanted from the end of application to the rinse
     * @param section zones with the same number are rinsed together
     * @param begunMinute minute of first application when the zone has begun
     */
    public record ZoneTask(
            String zone,
            String technique,
            int gapMinutes,
            int applyMinutes,
            int needMilligrams,
            int processMinutes,
            int section,
            Optional<Integer> begunMinute) {}

    /**
     * A bowl begun already that can still feed its run.
     *
     * @param bowl bowl id
     * @param atChairMinute minute from which it is at the chair
     * @param lifeEndMinute minute from which it must not be applied
     * @param leftMilligrams grams it can still give, residue taken off
     */
    public record LiveSupply(String bowl, int atChairMinute, int lifeEndMinute, int leftMilligrams) {}

    /** A zone applied already: first and last application, and what its processing still wants. */
    public record AppliedZone(
            String zone,
            String technique,
            String lightenerId,
            int applyStart,
            int applyEnd,
            int processMinutes,
            int section) {}
}
