package stirtide.bar.entry;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stirtide.bar.frame.Pane;
import stirtide.bar.frame.Style;
import stirtide.bar.keys.Action;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyTable;
import stirtide.bar.keys.Place;
import stirtide.bar.scene.Panel;
import stirtide.bar.scene.PanelAnswer;
import stirtide.bar.scene.Scene;
import stirtide.bar.words.TimeText;
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
    public Place place() {
        return Place.SERVICES;
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
    public void draw(Pane inside, Scene scene) {
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

    private static void drawService(Pane inside, int row, DayView.ServiceCard card, Scene scene, boolean isPicked) {
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

    private static void drawZones(Pane inside, int firstRow, DayView.ServiceCard card, Scene scene) {
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

    private static List<DayView.ServiceCard> services(Scene scene) {
        return scene.view().map(DayView::services).orElse(List.of());
    }

    private int index(List<DayView.ServiceCard> services) {
        for (int i = 0; i < services.size(); i++) if (services.get(i).service() == picked) return i;
        return 0;
    }

    private Optional<DayView.ServiceCard> current(Scene scene) {
        List<DayView.ServiceCard> services = services(scene);
        return services.isEmpty() ? Optional.empty() : Optional.of(services.get(index(services)));
    }

    @Override
    public PanelAnswer press(Key key, boolean machine, Scene scene) {
        Optional<Action> action = KeyTable.action(place(), key, scene.mayWrite(), false);
        if (machine || action.isEmpty()) return new PanelAnswer.Stay();
        reason = "";
        return switch (action.get()) {
            case BACK -> new PanelAnswer.Close();
            case UP -> move(-1, scene);
            case DOWN -> move(1, scene);
            default ->
                current(scene).map(card -> act(action.get(), card, scene)).orElse(new PanelAnswer.Stay());
        };
    }

    private PanelAnswer move(int rows, Scene scene) {
        List<DayView.ServiceCard> services = services(scene);
        if (!services.isEmpty()) {
            int next = Math.max(0, Math.min(services.size() - 1, index(services) + rows));
            picked = services.get(next).service();
        }
        return new PanelAnswer.Stay();
    }

    private PanelAnswer act(Action action, DayView.ServiceCard card, Scene scene) {
        picked = card.service();
        if (action == Action.SEATED) {
            return send(new DayCommand.StartService(card.service()), "service " + card.service() + " seated");
        }
        if (action == Action.ZONE_DONE) return zoneDone(card);
        if (action == Action.RINSED) return rinsed(card);
        if (action == Action.LEVELS
                && !(card.zones().isEmpty() && card.zonesDone().isEmpty()))
            return new PanelAnswer.Open(VisitForms.levels(card));
        if (action == Action.LEVELS) return stay("the plan tells no zone of this service");
        if (action == Action.VISITS) return VisitsPanel.ask(card);
        if (action == Action.OTHER_START) {
            if (card.state().equals(BOOKED)) return new PanelAnswer.Open(OtherStartPanel.of(card));
            return stay("only a service that has not started can be moved");
        }
        if (action == Action.TEST_DONE) return new PanelAnswer.Open(VisitForms.test(card, scene));
        if (action == Action.AS_LAST_TIME) return new PanelAnswer.Open(VisitForms.formula(card));
        return cancel(card, scene);
    }

    private PanelAnswer zoneDone(DayView.ServiceCard card) {
        Optional<String> zone = card.zones().stream()
                .map(PlannedService.PlannedZone::zone)
                .filter(name -> !card.zonesDone().contains(name))
                .findFirst();
        if (zone.isEmpty()) return stay("every zone of this service is applied");
        String words = "service " + card.service() + " " + zone.get() + " applied";
        return send(new DayCommand.FinishZone(card.service(), zone.get()), words);
    }

    private PanelAnswer rinsed(DayView.ServiceCard card) {
        Optional<DayView.SectionCard> section = card.sections().stream()
                .filter(one -> !one.recorded())
                .min(Comparator.comparing(DayView.SectionCard::rinseAt));
        if (section.isEmpty()) return stay("no section of this service waits for its rinse");
        String words = "service " + card.service() + " "
                + String.join(", ", section.get().zones()) + " rinsed";
        return send(new DayCommand.RinseSection(card.service(), section.get().section()), words);
    }

    private PanelAnswer cancel(DayView.ServiceCard card, Scene scene) {
        if (card.state().equals(CANCELLED)) return stay("this service is cancelled already");
        boolean came = !card.state().equals(BOOKED);
        var command = new DayCommand.CancelService(card.service(), came ? "client left" : "client did not come");
        var yes = new PanelAnswer.Send(
                command, "service " + card.service() + " cancelled", Optional.of(new ServicesPanel(picked)));
        String sentence = "Take service " + card.service() + " (chair " + card.chair() + ", " + card.menuName()
                + ") off the day: " + command.reason() + "?";
        return new PanelAnswer.Open(new Question("CANCEL?", sentence, yes, scene.nanos()));
    }

    private PanelAnswer send(DayCommand command, String words) {
        return new PanelAnswer.Send(command, words, Optional.of(this));
    }

    private PanelAnswer stay(String why) {
        reason = why;
        return new PanelAnswer.Stay();
    }
}
