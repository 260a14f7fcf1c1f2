package stirtide.bar.panels.services;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.canvas.Pane;
import stirtide.bar.canvas.Style;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.list.ListCursor;
import stirtide.bar.text.LineWrap;
import stirtide.events.plan.PlannedService;
import stirtide.events.view.DayView;

/** The services of the day and what can be recorded for each: seated, zone done, another start, cancel. */
public final class ServicesPanel implements Panel {
    private static final int COLUMNS = 76;
    private static final int ROWS = 17;
    private static final int ZONE_ROWS = 4;

    private final ListCursor<DayView.ServiceCard> cursor = new ListCursor<>(DayView.ServiceCard::service);
    private String reason = "";

    /** Opens with a service selected, 0 for the first. */
    public ServicesPanel(int selected) {
        cursor.select(selected);
    }

    @Override
    public Frame frame() {
        return new Frame(KeyContext.SERVICES, "SERVICES OF THE DAY", COLUMNS, ROWS);
    }

    private static List<DayView.ServiceCard> services(UiState state) {
        return state.view().map(DayView::services).orElse(List.of());
    }

    @Override
    public void draw(Pane inside, UiState state) {
        int listRows = inside.height() - ZONE_ROWS - 3;
        inside.put(2, 0, "nr chair client   service            booked planned  end    wait  state", Style.DIM);
        int more = cursor.draw(
                services(state),
                listRows,
                listRows / 2,
                (row, card, selected) -> drawService(inside, 1 + row, card, state, selected));
        if (more > 0) inside.put(2, 1 + listRows, more + " more below", Style.DIM);
        cursor.in(services(state)).ifPresent(card -> drawZones(inside, 2 + listRows, card, state));
        if (!reason.isEmpty()) drawReason(inside);
    }

    /** It takes rows of the zones, if it needs them. */
    private void drawReason(Pane inside) {
        List<String> lines = LineWrap.wrap("! " + reason, inside.width() - 2);
        int top = inside.height() - lines.size();
        inside.part(0, top, inside.width(), lines.size()).clear();
        for (int i = 0; i < lines.size(); i++) inside.put(1, top + i, lines.get(i), Style.STRONG);
    }

    private static void drawService(Pane inside, int row, DayView.ServiceCard card, UiState state, boolean selected) {
        Style style = selected ? Style.PICKED : card.state().equals("CANCELLED") ? Style.DIM : Style.TEXT;
        inside.put(0, row, " ".repeat(inside.width()), style).put(0, row, selected ? ">" : " ", style);
        inside.right(4, row, 2, String.valueOf(card.service()), style);
        inside.right(8, row, 2, String.valueOf(card.chair()), style);
        inside.fit(11, row, 8, card.clientRef(), style).fit(20, row, 18, card.menuName(), style);
        inside.put(39, row, state.minute(card.bookedStart()), style);
        inside.put(46, row, state.minute(card.plannedStart()), style);
        inside.put(54, row, state.minute(card.plannedEnd()), style);
        inside.right(66, row, 6, card.waitMinutes() == 0 ? "" : card.waitMinutes() + " min", style);
        inside.put(67, row, card.state().toLowerCase(Locale.ROOT), style);
    }

    private static void drawZones(Pane inside, int firstRow, DayView.ServiceCard card, UiState state) {
        int row = firstRow;
        for (PlannedService.PlannedZone zone : card.zones()) {
            if (row >= firstRow + ZONE_ROWS) return;
            boolean done = card.zonesDone().contains(zone.zone());
            inside.fit(2, row, 16, zone.zone(), Style.TEXT);
            String times = (done ? "applied by " : "apply until ") + state.minute(zone.applyEnd())
                    + "  check " + state.minute(zone.checkAt())
                    + "  rinse " + state.minute(zone.rinseAt())
                    + ", latest " + state.minute(zone.rinseBy());
            inside.put(19, row++, times, Style.DIM);
        }
        for (DayView.SectionCard section : card.sections()) {
            if (row >= firstRow + ZONE_ROWS || !section.recorded()) continue;
            inside.fit(2, row, 16, String.join(", ", section.zones()), Style.TEXT);
            String rinsed = "rinsed " + state.minute(section.rinseAt()) + ", latest " + state.minute(section.rinseBy());
            inside.put(19, row++, rinsed, Style.DIM);
        }
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState state) {
        Optional<KeyAction> action = KeyTable.action(KeyContext.SERVICES, key, state.mayWrite(), false);
        if (machine || action.isEmpty()) return new UiEffect.Stay();
        UiEffect effect = act(action.get(), state);
        reason = effect instanceof UiEffect.Stay stay ? stay.reason() : "";
        return effect;
    }

    private UiEffect act(KeyAction action, UiState state) {
        if (action == KeyAction.BACK) return new UiEffect.Close();
        if (action == KeyAction.UP || action == KeyAction.DOWN) {
            cursor.move(action == KeyAction.UP ? -1 : 1, services(state));
            return new UiEffect.Stay();
        }
        return cursor.in(services(state))
                .map(card -> {
                    cursor.select(card.service());
                    return ServiceActions.act(action, card, state, this);
                })
                .orElse(new UiEffect.Stay());
    }
}
