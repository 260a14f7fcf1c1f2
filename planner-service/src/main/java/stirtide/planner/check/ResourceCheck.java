package stirtide.planner.check;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.events.plan.Plan;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Scale;
import stirtide.planner.planning.search.PlanQuestion;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.BowlOut;

/** People, scales and bowls: none is used twice at one time. */
record ResourceCheck(PlanQuestion question, Plan plan, Findings findings) {
    static void check(PlanQuestion question, Plan plan, Findings findings) {
        ResourceCheck check = new ResourceCheck(question, plan, findings);
        for (PlannedBowl bowl : plan.bowls()) check.known(bowl);
        for (Assistant assistant : question.assistants()) check.assistant(assistant);
        for (Scale scale : question.scales()) check.scale(scale);
        for (BowlSize size : question.bowlSizes()) check.stock(size);
    }

    private int at(Instant instant) {
        return findings.minute(instant, "a mix");
    }

    private void known(PlannedBowl bowl) {
        findings.unless(
                bowl.personId().isEmpty()
                        || question.assistants().stream()
                                .anyMatch(each -> bowl.personId().get().equals(each.personId())),
                "bowl %s is mixed by %s, who is no assistant of the day",
                bowl.bowl(),
                bowl.personId());
        findings.unless(
                question.scales().stream().anyMatch(each -> each.scaleId().equals(bowl.scaleId())),
                "bowl %s: no scale %s",
                bowl.bowl(),
                bowl.scaleId());
    }

    private void assistant(Assistant assistant) {
        List<PlannedBowl> mixes = plan.bowls().stream()
                .filter(bowl -> bowl.personId().equals(Optional.of(assistant.personId())))
                .toList();
        for (PlannedBowl bowl : mixes) {
            int start = at(bowl.mixStart());
            int end = at(bowl.mixEnd()) + question.carryMinutes();
            findings.unless(
                    assistant.onDuty().stream().anyMatch(duty -> duty.from() <= start && end <= duty.to()),
                    "bowl %s: %s is not on duty until it is mixed and carried",
                    bowl.bowl(),
                    assistant.personId());
            findings.unless(
                    start >= assistant.busyUntilMinute(),
                    "bowl %s: %s is still at another mix",
                    bowl.bowl(),
                    assistant.personId());
        }
        apart(mixes, assistant.personId(), question.carryMinutes());
    }

    private void scale(Scale scale) {
        List<PlannedBowl> mixes = plan.bowls().stream()
                .filter(bowl -> bowl.scaleId().equals(scale.scaleId()))
                .toList();
        for (Assistant assistant : question.assistants()) {
            if (!assistant.busyScaleId().equals(Optional.of(scale.scaleId()))) continue;
            for (PlannedBowl bowl : mixes)
                findings.unless(
                        at(bowl.mixStart()) >= assistant.busyUntilMinute() - question.carryMinutes(),
                        "bowl %s: scale %s is still in use",
                        bowl.bowl(),
                        scale.scaleId());
        }
        apart(mixes, scale.scaleId(), 0);
    }

    private void apart(List<PlannedBowl> mixes, String who, int carryMinutes) {
        for (int i = 0; i < mixes.size(); i++) {
            for (int j = i + 1; j < mixes.size(); j++) {
                PlannedBowl a = mixes.get(i);
                PlannedBowl b = mixes.get(j);
                findings.unless(
                        at(a.mixStart()) >= at(b.mixEnd()) + carryMinutes
                                || at(b.mixStart()) >= at(a.mixEnd()) + carryMinutes,
                        "bowls %s and %s are mixed or carried at one time by or on %s",
                        a.bowl(),
                        b.bowl(),
                        who);
            }
        }
    }

    private void stock(BowlSize size) {
        List<int[]> uses = new ArrayList<>();
        for (BowlOut out : question.bowlsOut())
            if (out.bowlSizeId().equals(size.bowlSizeId()))
                uses.add(new int[] {Integer.MIN_VALUE, out.freeFromMinute()});
        List<PlannedBowl> own = plan.bowls().stream()
                .filter(bowl -> bowl.bowlSizeId().equals(size.bowlSizeId()))
                .toList();
        for (PlannedBowl bowl : own)
            uses.add(new int[] {at(bowl.mixStart()), at(bowl.neededTo()) + question.washMinutes()});
        for (PlannedBowl bowl : own) {
            int start = at(bowl.mixStart());
            long together = uses.stream()
                    .filter(use -> use[0] <= start && start < use[1])
                    .count();
            findings.unless(
                    together <= size.count(),
                    "bowl %s: %d bowls of size %s would be in use, %d exist",
                    bowl.bowl(),
                    together,
                    size.bowlSizeId(),
                    size.count());
        }
    }
}
