package stirtide.bar.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.model.UiState;
import stirtide.bar.text.LineWrap;
import stirtide.events.plan.Plan;
import stirtide.events.view.DayView;

/** Why clients wait, and how much of it the plan has proven to be unavoidable, in lines for the floor. */
final class WaitText {
    private WaitText() {}

    /** The lines, none when no client waits from now on; each has the sign of a warning. */
    static List<String> of(DayView view, UiState scene, int columns) {
        List<Plan.WaitReason> ahead = BarLoad.ahead(view, scene);
        var lines = new ArrayList<String>();
        if (ahead.isEmpty()) return lines;
        // A stretch that needs more minutes than it has forces a wait; the other sentences only tell of one.
        boolean forced = ahead.stream().anyMatch(wait -> wait.neededMinutes() > wait.availableMinutes());
        Optional<String> least = view.planTotals().flatMap(totals -> least(totals, forced));
        String opening = least.map(words -> words + " ").orElse("");
        for (Plan.WaitReason wait : ahead) {
            lines.addAll(LineWrap.wrap("▲ " + opening + wait.sentence(), columns));
            opening = "";
        }
        return lines;
    }

    /** Why a service takes as many bowls as it does, where the plan has proven it. */
    static List<String> bowls(DayView view, int service, int columns) {
        return view.planTotals().map(Plan.PlanTotals::bowlReasons).orElse(List.of()).stream()
                .filter(reason -> reason.services().contains(service))
                .flatMap(reason -> LineWrap.wrap(reason.sentence(), columns).stream())
                .toList();
    }

    private static Optional<String> least(Plan.PlanTotals totals, boolean forced) {
        int bound = totals.waitBound().orElse(0);
        if (bound <= 0) return Optional.empty();
        String words = bound >= totals.waitMinutes()
                ? "As booked, clients cannot wait less than " + bound + " min in all"
                : "As booked, " + bound + " of " + totals.waitMinutes() + " min of waiting cannot be avoided";
        return Optional.of(words + (forced ? ", because" : "."));
    }
}
