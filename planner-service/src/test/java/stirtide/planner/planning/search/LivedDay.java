package stirtide.planner.planning.search;

import static stirtide.planner.planning.search.SmallDay.minute;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.planner.planning.search.PlanQuestion.AppliedZone;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;
import stirtide.planner.planning.search.PlanQuestion.LiveSupply;
import stirtide.planner.planning.search.PlanQuestion.Minutes;
import stirtide.planner.planning.search.PlanQuestion.RunTask;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;
import stirtide.planner.planning.search.PlanQuestion.ZoneTask;

/** Lives an invented day: time passes by the plan on show, then something comes between, and a new question arises. */
final class LivedDay {
    private final Random random;
    private PlanQuestion question;
    private final Map<String, Kept> begun = new HashMap<>();
    private final List<Integer> started = new ArrayList<>();
    private Odds odds = Odds.NOTHING;

    private record Kept(PlannedBowl bowl, int left, boolean binned) {}

    LivedDay(long seed, PlanQuestion question) {
        this.random = new Random(seed);
        this.question = question;
    }

    PlanQuestion question() {
        return question;
    }

    /** Goes on with another question, in which something has happened besides. */
    void now(PlanQuestion changed) {
        question = changed;
    }

    /**
     * How often things go wrong: one time in so many, 0 for never.
     *
     * @param forgotten no mix was begun
     * @param cancelled a service is gone
     * @param leaving all assistants leave
     * @param wrong a bowl holds three quarters of its grams
     * @param binned a bowl is gone
     * @param late a client is not there at the booked start
     */
    record Odds(int forgotten, int cancelled, int leaving, int wrong, int binned, int late) {
        static final Odds NOTHING = new Odds(0, 0, 0, 0, 0, 0);
    }

    private boolean happens(int oneIn) {
        return oneIn > 0 && random.nextInt(oneIn) == 0;
    }

    /** Lets minutes pass by this plan, then lets something happen. */
    void pass(Plan plan, int minutes) {
        pass(plan, minutes, new Odds(3, 3, 6, 8, 20, 6));
    }

    /** Lets minutes pass by this plan, with things going wrong at these odds. */
    void pass(Plan plan, int minutes, Odds today) {
        odds = today;
        int now = question.nowMinute() + minutes;
        if (!happens(odds.forgotten))
            for (PlannedBowl bowl : plan.bowls()) if (minute(bowl.mixStart()) < now) begin(bowl);
        List<ServiceTask> services = new ArrayList<>();
        for (int i = 0; i < question.services().size(); i++)
            services(question.services().get(i), plan, now).ifPresent(services::add);
        if (!services.isEmpty() && happens(odds.cancelled)) services.remove(random.nextInt(services.size()));
        List<Assistant> assistants = new ArrayList<>();
        boolean leaves = happens(odds.leaving);
        for (Assistant assistant : question.assistants()) assistants.add(assistant(assistant, now, leaves));
        List<BowlOut> out = new ArrayList<>();
        for (Kept kept : begun.values()) {
            int free = (kept.binned ? now : Math.max(now, minute(kept.bowl.neededTo()))) + question.washMinutes();
            if (minute(kept.bowl.neededTo()) + question.washMinutes() > now)
                out.add(new BowlOut(kept.bowl.bowlSizeId(), free));
        }
        question = new PlanQuestion(
                question.basedOnRevision() + 1,
                RandomQuestion.START.plusSeconds(60L * now),
                RandomQuestion.START,
                question.zone(),
                now,
                question.handOverMinutes(),
                question.washMinutes(),
                question.frozenMinutes(),
                assistants,
                question.stylists(),
                question.scales(),
                question.bowlSizes(),
                question.developers(),
                question.directions(),
                out,
                services,
                Optional.of(plan),
                question.oneMixTwoBowls(),
                question.carryMinutes());
    }

    private void begin(PlannedBowl bowl) {
        int grams = bowl.formula().totalMilligrams() - bowl.residueMilligrams();
        boolean wrong = happens(odds.wrong);
        begun.put(bowl.bowl(), new Kept(bowl, wrong ? grams * 3 / 4 : grams, happens(odds.binned)));
    }

    private Assistant assistant(Assistant assistant, int now, boolean leaves) {
        Optional<PlannedBowl> at = begun.values().stream()
                .map(Kept::bowl)
                .filter(bowl -> bowl.personId().equals(Optional.of(assistant.personId())))
                .filter(bowl -> minute(bowl.mixStart()) < now && minute(bowl.mixEnd()) + question.carryMinutes() > now)
                .findFirst();
        List<Minutes> duty = new ArrayList<>();
        for (Minutes each : assistant.onDuty()) if (!leaves || each.to() <= now) duty.add(each);
        return new Assistant(
                assistant.personId(),
                assistant.name(),
                duty,
                at.map(bowl -> minute(bowl.mixEnd()) + question.carryMinutes()).orElse(0),
                at.filter(bowl -> minute(bowl.mixEnd()) > now).map(PlannedBowl::scaleId));
    }

    private Optional<ServiceTask> services(ServiceTask task, Plan plan, int now) {
        PlannedService planned = plan.services().stream()
                .filter(each -> each.service() == task.service())
                .findFirst()
                .orElseThrow();
        boolean late = !started.contains(task.service()) && happens(odds.late);
        boolean starts = started.contains(task.service()) || !late && minute(planned.start()) < now;
        if (starts && !started.contains(task.service())) started.add(task.service());
        Map<String, PlannedZone> zones = new HashMap<>();
        planned.zones().forEach(zone -> zones.put(zone.zone(), zone));
        List<AppliedZone> processing = new ArrayList<>();
        for (AppliedZone zone : task.processing())
            if (minute(zones.get(zone.zone()).rinseAt()) > now) processing.add(zone);
        List<RunTask> runs = new ArrayList<>();
        for (RunTask run : task.runs())
            run(task, run, zones, starts, now, processing).ifPresent(runs::add);
        int used = (int) begun.keySet().stream()
                .filter(id -> id.replaceAll("[a-z]", "").equals(String.valueOf(task.service())))
                .count();
        if (runs.isEmpty() && processing.isEmpty()) return Optional.empty();
        int start =
                starts ? Math.min(now, minute(planned.start())) : Math.max(now, task.startMinute() + (late ? 15 : 0));
        return Optional.of(
                new ServiceTask(task.service(), task.chair(), task.stylistId(), starts, start, used, runs, processing));
    }

    private Optional<RunTask> run(
            ServiceTask task,
            RunTask run,
            Map<String, PlannedZone> zones,
            boolean starts,
            int now,
            List<AppliedZone> processing) {
        List<ZoneTask> left = new ArrayList<>();
        int applied = 0;
        for (ZoneTask zone : run.zones()) {
            PlannedZone planned = zones.get(zone.zone());
            int from = minute(planned.applyStart());
            int to = minute(planned.applyEnd());
            if (!starts || from >= now) left.add(zone);
            else if (to <= now) {
                applied += zone.needMilligrams();
                if (minute(planned.rinseAt()) > now)
                    processing.add(new AppliedZone(
                            zone.zone(),
                            zone.technique(),
                            run.lightenerId(),
                            from,
                            to,
                            zone.processMinutes(),
                            zone.section()));
            } else {
                int done = Math.min(zone.applyMinutes() - 1, now - Math.max(from, now - zone.applyMinutes()));
                int used = (int) ((long) zone.needMilligrams() * done / zone.applyMinutes());
                applied += used;
                left.add(new ZoneTask(
                        zone.zone(),
                        zone.technique(),
                        0,
                        zone.applyMinutes() - done,
                        zone.needMilligrams() - used,
                        zone.processMinutes(),
                        zone.section(),
                        Optional.of(from)));
            }
        }
        if (left.isEmpty()) return Optional.empty();
        return Optional.of(new RunTask(
                run.run(),
                run.lightenerId(),
                run.strengthHundredths(),
                run.ratioThousandths(),
                left,
                live(task, run, now, applied),
                run.reserveMilligrams()));
    }

    /** Bowls of the run that still live; what was applied came from the oldest first. */
    private List<LiveSupply> live(ServiceTask task, RunTask run, int now, int applied) {
        List<LiveSupply> live = new ArrayList<>();
        int used = applied;
        for (PlannedBowl bowl : begun.values().stream()
                .map(Kept::bowl)
                .filter(bowl -> bowl.service() == task.service() && bowl.run() == run.run())
                .sorted(java.util.Comparator.comparing(PlannedBowl::bowl))
                .toList()) {
            Kept kept = begun.get(bowl.bowl());
            int taken = Math.min(kept.left, used);
            used -= taken;
            begun.put(bowl.bowl(), new Kept(bowl, kept.left - taken, kept.binned));
            if (!kept.binned && minute(bowl.lifeEnds()) > now && kept.left > taken)
                live.add(new LiveSupply(
                        bowl.bowl(),
                        minute(bowl.mixEnd()) + question.handOverMinutes(),
                        minute(bowl.lifeEnds()),
                        kept.left - taken));
        }
        return live;
    }
}
