package stirtide.bar.report;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.text.BatchText;
import stirtide.bar.text.CountText;
import stirtide.bar.text.TimeText;
import stirtide.bar.text.WeightText;
import stirtide.events.plan.Plan;
import stirtide.events.view.AlarmCard;
import stirtide.events.view.DayView;

/** A view of the day, and then what differs in each later one, as plain lines. */
public final class PlainTextReport {
    private Optional<DayView> before = Optional.empty();

    /** Lines for a newer view; the first one is described in full. */
    public List<String> lines(DayView view) {
        var lines = new ArrayList<String>();
        String time = TimeText.minute(view.time(), ZoneId.of(view.zone()));
        if (before.isEmpty()) {
            lines.add(view.salonName() + ", " + view.date() + ": "
                    + CountText.of(view.live().size(), "live bowl") + ", "
                    + view.queue().size() + " to mix");
        }
        alarms(view, lines);
        actions(view, lines);
        next(view, lines);
        waits(view, lines);
        before = Optional.of(view);
        return lines.stream().map(line -> time + "  " + line).toList();
    }

    private void alarms(DayView view, List<String> lines) {
        List<AlarmCard> old = before.map(DayView::alarms).orElse(List.of());
        view.alarms().stream()
                .filter(alarm -> old.stream().noneMatch(known -> known.id().equals(alarm.id())))
                .forEach(alarm -> lines.add("alarm " + alarm.priority() + ": " + alarm.sentence()));
        old.stream()
                .filter(alarm ->
                        view.alarms().stream().noneMatch(known -> known.id().equals(alarm.id())))
                .forEach(alarm -> lines.add("alarm over: " + alarm.sentence()));
    }

    // Each action is reported once, oldest first.
    private void actions(DayView view, List<String> lines) {
        long known = before.map(DayView::revision).orElse(view.revision());
        for (int i = view.actions().size() - 1; i >= 0; i--) {
            DayView.ActionCard action = view.actions().get(i);
            if (action.revision() > known)
                lines.add("done: " + action.sentence() + ", " + view.personName(action.actor()));
        }
    }

    private void next(DayView view, List<String> lines) {
        Optional<String> next = next(view);
        if (before.isPresent() && next.equals(before.flatMap(PlainTextReport::next))) return;
        lines.add(next.orElse("nothing to mix"));
    }

    private static Optional<String> next(DayView view) {
        return view.queue().stream().findFirst().map(bowl -> {
            var formula = bowl.bowl().formula();
            var text = new StringBuilder("next: bowl " + bowl.bowl().bowl() + " for chair "
                    + bowl.bowl().chair() + ", "
                    + String.join(" and ", bowl.bowl().zones()) + ", "
                    + WeightText.grams(formula.lightenerMilligrams()) + " g " + bowl.lightenerName());
            bowl.parts().forEach(part -> text.append(" and ").append(WeightText.part(part)));
            bowl.batch()
                    .ifPresent(batch -> text.append(", or one mix for bowls " + BatchText.bowls(batch) + ", "
                            + BatchText.chairs(batch) + ": " + BatchText.weights(batch) + ", then "
                            + BatchText.shares(batch)));
            text.append(", start at ").append(TimeText.minute(bowl.bowl().mixStart(), ZoneId.of(view.zone())));
            bowl.cautions().forEach(caution -> text.append("; ").append(caution));
            return text.toString();
        });
    }

    private void waits(DayView view, List<String> lines) {
        List<Plan.WaitReason> old = before.map(DayView::waits).orElse(List.of());
        view.waits().stream()
                .filter(wait -> !old.contains(wait))
                .forEach(wait -> lines.add("wait: " + wait.sentence()));
    }
}
