package stirtide.bar.panels.services;

import java.util.Comparator;
import java.util.Optional;
import stirtide.bar.keys.KeyAction;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.panels.form.ConfirmPanel;
import stirtide.events.command.DayCommand;
import stirtide.events.plan.PlannedService;
import stirtide.events.view.DayView;

/** What the keys of the list of services do with the selected one. */
final class ServiceActions {
    private static final String BOOKED = "BOOKED";

    private ServiceActions() {}

    /** The answer to a key; {@code list} is the panel that stays or comes back. */
    static UiEffect act(KeyAction action, DayView.ServiceCard card, UiState state, Panel list) {
        return switch (action) {
            case SEATED -> send(new DayCommand.StartService(card.service()), card, "seated", list);
            case ZONE_DONE -> zoneDone(card, list);
            case RINSED -> rinsed(card, list);
            case LEVELS ->
                card.zones().isEmpty() && card.zonesDone().isEmpty()
                        ? new UiEffect.Stay("the plan names no zone of this service")
                        : new UiEffect.Open(VisitForms.levels(card));
            case VISITS -> VisitsPanel.ask(card);
            case OTHER_START ->
                card.state().equals(BOOKED)
                        ? new UiEffect.Open(ChangeStartPanel.of(card, list))
                        : new UiEffect.Stay("only a service that has not started can be moved");
            case TEST_DONE -> new UiEffect.Open(VisitForms.test(card, state));
            case AS_LAST_TIME -> new UiEffect.Open(VisitForms.formula(card));
            default -> cancel(card, state, list);
        };
    }

    private static UiEffect send(DayCommand command, DayView.ServiceCard card, String words, Panel list) {
        return new UiEffect.Send(command, "service " + card.service() + " " + words, Optional.of(list));
    }

    private static UiEffect zoneDone(DayView.ServiceCard card, Panel list) {
        return card.zones().stream()
                .map(PlannedService.PlannedZone::zone)
                .filter(name -> !card.zonesDone().contains(name))
                .findFirst()
                .map(zone -> send(new DayCommand.FinishZone(card.service(), zone), card, zone + " applied", list))
                .orElse(new UiEffect.Stay("every zone of this service is applied"));
    }

    private static UiEffect rinsed(DayView.ServiceCard card, Panel list) {
        return card.sections().stream()
                .filter(one -> !one.recorded())
                .min(Comparator.comparing(DayView.SectionCard::rinseAt))
                .map(section -> send(
                        new DayCommand.RinseSection(card.service(), section.section()),
                        card,
                        String.join(", ", section.zones()) + " rinsed",
                        list))
                .orElse(new UiEffect.Stay("no section of this service waits for its rinse"));
    }

    private static UiEffect cancel(DayView.ServiceCard card, UiState state, Panel list) {
        if (card.state().equals("CANCELLED")) return new UiEffect.Stay("this service is cancelled already");
        boolean came = !card.state().equals(BOOKED);
        var command = new DayCommand.CancelService(card.service(), came ? "client left" : "client did not come");
        String sentence = "Take service " + card.service() + " (chair " + card.chair() + ", " + card.menuName()
                + ") off the day: " + command.reason() + "?";
        return new UiEffect.Open(
                new ConfirmPanel("CANCEL?", sentence, send(command, card, "cancelled", list), state.nanos()));
    }
}
