package stirtide.bar.panels.services;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.InquiryText;
import stirtide.bar.panels.list.TextPanel;
import stirtide.events.view.DayView;
import stirtide.events.view.VisitsView;

/** What is remembered of a client: whether the last formula can be had again, and two visits side by side. */
final class VisitsPanel {
    private final DayView.ServiceCard card;
    private final TextPanel panel;
    private boolean onRight;

    private VisitsPanel(DayView.ServiceCard card) {
        this.card = card;
        String title = "VISITS  service " + card.service() + "  chair " + card.chair() + " " + card.clientRef();
        panel = new TextPanel(
                KeyContext.VISITS,
                () -> title,
                state -> InquiryText.lines(state, Inquiry.Answer.Visits.class, visits -> lines(visits.view())),
                this::press);
    }

    static UiEffect ask(DayView.ServiceCard card) {
        var ask = new Inquiry.Ask.Visits(card.service(), Optional.empty(), Optional.empty());
        return new UiEffect.Ask(ask, new VisitsPanel(card).panel);
    }

    private List<String> lines(VisitsView view) {
        var lines = new ArrayList<String>();
        lines.add(view.asLastTime() ? "Planned as last time:" : "Planned by the menu; as last time it would be:");
        if (view.lastTime().isEmpty()) lines.add("nothing is remembered of an earlier visit with this menu entry");
        view.lastTime().forEach(zone -> lines.add(mark(zone.answer()) + zone.sentence()));
        lines.add("");
        view.sideBySide().ifPresentOrElse(pair -> table(lines, pair), () -> single(lines, view));
        lines.add("");
        lines.add("Visits remembered:");
        view.visits().forEach(visit -> lines.add(visit.on() + "  " + visit.menuId()));
        if (view.visits().isEmpty()) lines.add("none");
        return lines;
    }

    private static String mark(String answer) {
        return answer.equals("EXACT") ? "" : answer.equals("NEW") ? "NEW: " : "NOT AS IT WAS: ";
    }

    private void table(List<String> lines, VisitsView.SideBySide pair) {
        lines.add("Side by side, * differs:");
        lines.add(row("", side(pair.first(), !onRight), side(pair.second(), onRight), false));
        String zone = "";
        for (VisitsView.Row row : pair.rows()) {
            if (!row.zone().equals(zone)) lines.add("  " + row.zone());
            zone = row.zone();
            lines.add(row("  " + row.figure(), row.first(), row.second(), row.differs()));
        }
    }

    /** The side that left and right change is in brackets. */
    private static String side(String day, boolean picked) {
        return picked ? "[" + day + "]" : day;
    }

    private static String row(String figure, String first, String second, boolean differs) {
        return String.format(Locale.ROOT, "  %-15s %-22s %-22s %s", figure, first, second, differs ? "*" : "")
                .stripTrailing();
    }

    private static void single(List<String> lines, VisitsView view) {
        lines.add("Side by side:");
        lines.add(
                view.visits().isEmpty()
                        ? "no visit to lay beside another"
                        : "one visit only, nothing to lay beside it");
    }

    private Optional<UiEffect> press(Key key, boolean machine, UiState state) {
        KeyAction action =
                KeyTable.action(KeyContext.VISITS, key, state.mayWrite(), false).orElse(KeyAction.ERASE);
        if (action == KeyAction.OTHER_LIST) onRight = !onRight;
        if (action == KeyAction.EARLIER) return Optional.of(other(1, state));
        return action == KeyAction.LATER ? Optional.of(other(-1, state)) : Optional.empty();
    }

    /** Shows another visit on the selected side; visits are listed newest first. */
    private UiEffect other(int step, UiState state) {
        if (!(InquiryText.answer(state).orElse(null) instanceof Inquiry.Answer.Visits answer)
                || answer.view().sideBySide().isEmpty()) return new UiEffect.Stay();
        VisitsView.SideBySide pair = answer.view().sideBySide().get();
        List<String> days = answer.view().visits().stream()
                .map(visit -> visit.on().toString())
                .distinct()
                .toList();
        int at = days.indexOf(onRight ? pair.second() : pair.first()) + step;
        if (at < 0 || at >= days.size()) return new UiEffect.Stay();
        String first = onRight ? pair.first() : days.get(at);
        String second = onRight ? days.get(at) : pair.second();
        var ask = new Inquiry.Ask.Visits(card.service(), Optional.of(first), Optional.of(second));
        return new UiEffect.Ask(ask, panel);
    }
}
