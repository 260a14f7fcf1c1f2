package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.events.plan.PlannedBowl;
import stirtide.planner.planning.search.PlanQuestion.ServiceTask;

/** The plan on show, by the bowls that are still to be mixed. */
final class ShownPlan {
    private final PlanQuestion question;
    private final Map<String, PlannedBowl> bowls = new TreeMap<>();

    ShownPlan(PlanQuestion question) {
        this.question = question;
        question.onShow().ifPresent(plan -> plan.bowls().forEach(bowl -> bowls.put(bowl.bowl(), bowl)));
    }

    /** A mix as shown: start, and the places of assistant and scale in the question. */
    record Mix(int start, int person, int scale) {}

    boolean any() {
        return !bowls.isEmpty();
    }

    Optional<PlannedBowl> bowl(String id) {
        return Optional.ofNullable(bowls.get(id));
    }

    /** Id of the bowl that is {@code place} bowls after those begun already. */
    static String idOf(ServiceTask task, int place) {
        int index = task.bowlsUsed() + place;
        StringBuilder letters = new StringBuilder();
        for (; index >= 0; index = index / 26 - 1) letters.insert(0, (char) ('a' + index % 26));
        return task.service() + letters.toString();
    }

    Optional<Mix> mix(ServiceTask task, int place) {
        return bowl(idOf(task, place)).flatMap(this::mixOf);
    }

    /** The next mixes of a service as shown, while they start before {@code before} and can be kept. */
    List<Mix> mixes(ServiceTask task, int before) {
        List<Mix> mixes = new ArrayList<>();
        for (Optional<Mix> mix = mix(task, 0); mix.isPresent(); mix = mix(task, mixes.size())) {
            if (mix.get().start() < question.nowMinute() || mix.get().start() >= before) break;
            mixes.add(mix.get());
        }
        return mixes;
    }

    /** Place of the size of a bowl in the question, -1 when there is none any more. */
    int sizeOf(PlannedBowl bowl) {
        for (int i = 0; i < question.bowlSizes().size(); i++)
            if (bowl.bowlSizeId().equals(question.bowlSizes().get(i).bowlSizeId())) return i;
        return -1;
    }

    Optional<Mix> mixOf(PlannedBowl bowl) {
        int person = -1;
        for (int i = 0; i < question.assistants().size(); i++)
            if (bowl.personId().equals(Optional.of(question.assistants().get(i).personId()))) person = i;
        int scale = -1;
        for (int i = 0; i < question.scales().size(); i++)
            if (bowl.scaleId().equals(question.scales().get(i).scaleId())) scale = i;
        return person < 0 || scale < 0
                ? Optional.empty()
                : Optional.of(new Mix(question.minuteOf(bowl.mixStart()), person, scale));
    }

    /** How many bowls of a service differ from the plan on show in assistant or start. */
    int moves(ServiceTask task, List<MixAssignment> assignments) {
        if (!any()) return 0;
        int moves = 0;
        for (int place = 0; place < assignments.size(); place++) {
            MixAssignment assignment = assignments.get(place);
            Optional<Mix> mix = mix(task, place);
            if (mix.isEmpty()
                    || mix.get().start() != assignment.mix()
                    || mix.get().person() != assignment.person()) moves++;
        }
        return moves;
    }
}
