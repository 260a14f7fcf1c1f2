package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stirtide.events.setup.Scale;
import stirtide.planner.planning.floor.DutySpan;

/** The scales of a question by kind: scales of a kind weigh the same. Scales go by their place in the question. */
final class ScaleKinds {
    private final PlanQuestion question;
    private final List<List<Integer>> kinds;

    ScaleKinds(PlanQuestion question) {
        this.question = question;
        Map<Scale, List<Integer>> alike = new LinkedHashMap<>();
        for (int scale = 0; scale < question.scales().size(); scale++)
            alike.computeIfAbsent(unnamed(question.scales().get(scale)), kind -> new ArrayList<>())
                    .add(scale);
        this.kinds = List.copyOf(alike.values());
    }

    private static Scale unnamed(Scale scale) {
        return new Scale(
                "",
                scale.accuracyClass(),
                scale.inServiceLimits(),
                scale.weighing(),
                scale.minimumMilligrams(),
                scale.ranges());
    }

    /** How many scales there are of each kind. */
    List<Integer> counts() {
        return kinds.stream().map(List::size).toList();
    }

    /** A scale of a kind that stands for all of them. */
    int first(int kind) {
        return kinds.get(kind).get(0);
    }

    /** The scales of a kind. */
    List<Integer> of(int kind) {
        return kinds.get(kind);
    }

    /** The kind of a scale. */
    int kindOf(int scale) {
        int kind = 0;
        while (!kinds.get(kind).contains(scale)) kind++;
        return kind;
    }

    /** By kind: the stretches in which one of them is in use already. */
    List<List<DutySpan>> taken() {
        return kinds.stream()
                .map(kind -> kind.stream()
                        .map(scale -> busyUntil(scale) - question.nowMinute())
                        .filter(until -> until > 0)
                        .map(until -> new DutySpan(0, until))
                        .toList())
                .toList();
    }

    /** Minute from which a scale is free; 0 if it is now. */
    int busyUntil(int scale) {
        return question.scaleBusyUntil(question.scales().get(scale).scaleId());
    }
}
