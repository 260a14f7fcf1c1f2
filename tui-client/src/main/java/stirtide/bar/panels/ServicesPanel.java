package stirtide.bar.panels;

import java.util.Comparator;
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
import stirtide.bar.model.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.text.TimeText;
import stirtide.events.command.DayCommand;
import stirtide.events.plan.PlannedService;
import stirtide.events.view.DayView;

/** The services of the day with what may be said about each: seated, zone done, another start, cancel. */
public final class ServicesPanel implements Panel {
    private static final int COLUMNS = 76;
    private static final int ROWS = 17;
    private static final int ZONE_ROWS = 4;
    private static final String BOOKED = "BOOKED";
    private static final String CANCELLED = "CANCELLED";

    private int picked;
    private String reason = "";

    /** Opens with a service picked, 0 for the first. */
    public ServicesPanel(int picked) {
        this.picked = picked;
    }

    @Override
    public KeyContext place() {
        return KeyContext.SERVICES;
    }

    @Override
    public String title() {
        return "SERVICES OF THE DAY";
    }

    @Override
    public int columns() {
        return COLUMNS;
    }

    @Override
    public int rows() {
        return ROWS;
    }

    @Override
    public void draw(Pane inside, UiState scene) {
        List<DayView.ServiceCard> services = services(scene);
        int listRows = inside.height() - ZONE_ROWS - 3;
        inside.put(2, 0, "nr chair client   service            booked planned  end    wait  state", Style.DIM);
        int at = index(services);
        int first = Math.max(0, Math.min(at - listRows / 2, services.size() - listRows));
        for (int row = 0; row < listRows && first + row < services.size(); row++)
            drawService(inside, 1 + row, services.get(first + row), scene, first + row == at);
        int more = services.size() - first - listRows;
        if (more > 0) inside.put(2, 1 + listRows, more + " more below", Style.DIM);
        current(scene).ifPresent(service -> drawZones(inside, 2 + listRows, service, scene));
        if (!reason.isEmpty()) inside.put(1, inside.height() - 1, "! " + reason, Style.STRONG);
    }

    private static void drawService(Pane inside, int row, DayView.ServiceCard card, UiState scene, boolean isPicked) {
        Style style = isPicked ? Style.PICKED : card.state().equals(CANCELLED) ? Style.DIM : Style.TEXT;
        inside.put(0, row, " ".repeat(inside.width()), style).put(0, row, isPicked ? ">" : " ", style);
        inside.right(4, row, 2, String.valueOf(card.service()), style);
        inside.right(8, row, 2, String.valueOf(card.chair()), style);
        inside.fit(11, row, 8, card.clientRef(), style).fit(20, row, 18, card.menuName(), style);
        inside.put(39, row, TimeText.minute(card.bookedStart(), scene.zone()), style);
        inside.put(46, row, TimeText.minute(card.plannedStart(), scene.zone()), style);
        inside.put(54, row, TimeText.minute(card.plannedEnd(), scene.zone()), style);
        inside.right(66, row, 6, card.waitMinutes() == 0 ? "" : card.waitMinutes() + " min", style);
        inside.put(67, row, card.state().toLowerCase(Locale.ROOT), style);
    }

    private static void drawZones(Pane inside, int firstRow, DayView.ServiceCard card, UiState scene) {
        int row = firstRow;
        for (PlannedService.PlannedZone zone : card.zones()) {
            if (row >= firstRow + ZONE_ROWS) return;
            boolean done = card.zonesDone().contains(zone.zone());
            inside.fit(2, row, 16, zone.zone(), Style.TEXT);
            String times = (done ? "applied by " : "apply until ") + TimeText.minute(zone.applyEnd(), scene.zone())
                    + "  check " + TimeText.minute(zone.checkAt(), scene.zone())
                    + "  rinse " + TimeText.minute(zone.rinseAt(), scene.zone())
                    + ", latest " + TimeText.minute(zone.rinseBy(), scene.zone());
            inside.put(19, row++, times, Style.DIM);
        }
        for (DayView.SectionCard section : card.sections()) {
            if (row >= firstRow + ZONE_ROWS || !section.recorded()) continue;
            inside.fit(2, row, 16, String.join(", ", section.zones()), Style.TEXT);
            String rinsed = "rinsed " + TimeText.minute(section.rinseAt(), scene.zone()) + ", latest "
                    + TimeText.minute(section.rinseBy(), scene.zone());
            inside.put(19, row++, rinsed, Style.DIM);
        }
    }

    private static List<DayView.ServiceCard> services(UiState scene) {
        return scene.view().map(DayView::services).orElse(List.of());
    }

    private int index(List<DayView.ServiceCard> services) {
        for (int i = 0; i < services.size(); i++) if (services.get(i).service() == picked) return i;
        return 0;
    }

    private Optional<DayView.ServiceCard> current(UiState scene) {
        List<DayView.ServiceCard> services = services(scene);
        return services.isEmpty() ? Optional.empty() : Optional.of(services.get(index(services)));
    }

    @Override
    public UiEffect press(Key key, boolean machine, UiState scene) {
        Optional<KeyAction> action = KeyTable.action(place(), key, scene.mayWrite(), false);
        if (machine || action.isEmpty()) return new UiEffect.Stay();
        reason = "";
        return switch (action.get()) {
            case BACK -> new UiEffect.Close();
            case UP -> move(-1, scene);
            case DOWN -> move(1, scene);
            default ->
                current(scene).map(card -> act(action.get(), card, scene)).orElse(new UiEffect.Stay());
        };
    }

    private UiEffect move(int rows, UiState scene) {
        List<DayView.ServiceCard> services = services(scene);
        if (!services.isEmpty()) {
            int next = Math.max(0, Math.min(services.size() - 1, index(services) + rows));
            picked = services.get(next).service();
        }
        return new UiEffect.Stay();
    }

    private UiEffect act(KeyAction action, DayView.ServiceCard card, UiState scene) {
        picked = card.service();
        if (action == KeyAction.SEATED) {
            return send(new DayCommand.StartService(card.service()), "service " + card.service() + " seated");
        }
        if (action == KeyAction.ZONE_DONE) return zoneDone(card);
        if (action == KeyAction.RINSED) return rinsed(card);
        if (action == KeyAction.LEVELS
                && !(card.zones().isEmpty() && card.zonesDone().isEmpty()))
            return new UiEffect.Open(VisitForms.levels(card));
        if (action == KeyAction.LEVELS) return stay("the plan tells no zone of this service");
        if (action == KeyAction.VISITS) return VisitsPanel.ask(card);
        if (action == KeyAction.OTHER_START) {
            if (card.state().equals(BOOKED)) return new UiEffect.Open(ChangeStartPanel.of(card));
            return stay("only a service that has not started can be moved");
        }
        if (action == KeyAction.TEST_DONE) return new UiEffect.Open(VisitForms.test(card, scene));
        if (action == KeyAction.AS_LAST_TIME) return new UiEffect.Open(VisitForms.formula(card));
        return cancel(card, scene);
    }

    private UiEffect zoneDone(DayView.ServiceCard card) {
        Optional<String> zone = card.zones().stream()
                .map(PlannedService.PlannedZone::zone)
                .filter(name -> !card.zonesDone().contains(name))
                .findFirst();
        if (zone.isEmpty()) return stay("every zone of this service is applied");
        String words = "service " + card.service() + " " + zone.get() + " applied";
        return send(new DayCommand.FinishZone(card.service(), zone.get()), words);
    }

    private UiEffect rinsed(DayView.ServiceCard card) {
        Optional<DayView.SectionCard> section = card.sections().stream()
                .filter(one -> !one.recorded())
                .min(Comparator.comparing(DayView.SectionCard::rinseAt));
        if (section.isEmpty()) return stay("no section of this service waits for its rinse");
        String words = "service " + card.service() + " "
                + String.join(", ", section.get().zones()) + " rinsed";
        return send(new DayCommand.RinseSection(card.service(), section.get().section()), words);
    }

    private UiEffect cancel(DayView.ServiceCard card, UiState scene) {
        if (card.state().equals(CANCELLED)) return stay("this service is cancelled already");
        boolean came = !card.state().equals(BOOKED);
        var command = new DayCommand.CancelService(card.service(), came ? "client left" : "client did not come");
        var yes = new UiEffect.Send(
                command, "service " + card.service() + " cancelled", Optional.of(new ServicesPanel(picked)));
        String sentence = "Take service " + card.service() + " (chair " + card.chair() + ", " + card.menuName()
                + ") off the day: " + command.reason() + "?";
        return new UiEffect.Open(new ConfirmPanel("CANCEL?", sentence, yes, scene.nanos()));
    }

    private UiEffect send(DayCommand command, String words) {
        return new UiEffect.Send(command, words, Optional.of(this));
    }

    private UiEffect stay(String why) {
        reason = why;
        return new UiEffect.Stay();
    }
}
