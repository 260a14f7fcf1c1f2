package stirtide.planner.day.history;

import java.util.List;
import java.util.Optional;
import stirtide.events.command.DayCommand;
import stirtide.events.day.DayEvent;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.planner.day.state.CommandContext;
import stirtide.planner.day.state.CommandRule;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.Decision;
import stirtide.planner.day.state.NamedService;
import stirtide.planner.day.state.Refusal;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.visits.LastVisit;

/** Tests before a service, repeated formulas and levels of hair. */
public final class ClientHistoryRules {
    /** A rule for each command of this folder. */
    public static final List<CommandRule<?>> RULES = List.of(
            CommandRule.of(DayCommand.RecordTest.class, ClientHistoryRules::test),
            CommandRule.of(DayCommand.RepeatFormula.class, ClientHistoryRules::repeat),
            CommandRule.of(DayCommand.RecordLevels.class, ClientHistoryRules::levels),
            CommandRule.of(DayCommand.RecordSwatch.class, MixTestRules::swatch),
            CommandRule.of(DayCommand.RecordStrip.class, MixTestRules::strip));

    private static final int LOWEST_LEVEL = 10;
    private static final int HIGHEST_LEVEL = 100;

    private ClientHistoryRules() {}

    private static Decision test(Day day, DayCommand.RecordTest command, CommandContext context) {
        return NamedService.standing(
                day,
                command.service(),
                service -> command.doneAt().isAfter(context.now())
                        ? Decision.refuse(
                                "TEST_NOT_DONE", "A test is recorded once it is done. Accepted: a time up to now.")
                        : Decision.accept(
                                new DayEvent.TestRecorded(command.service(), command.kind(), command.doneAt())));
    }

    private static Decision repeat(Day day, DayCommand.RepeatFormula command) {
        return NamedService.standing(day, command.service(), service -> repeatFor(day, service, command.asLastTime()));
    }

    private static Decision repeatFor(Day day, ServiceState service, boolean asLastTime) {
        if (service.startedAt().isPresent() || !service.bowls().isEmpty())
            return Decision.refuse(
                    "SERVICE_STARTED",
                    "Service " + service.service()
                            + " has begun. Only a service without a client in the chair and without a bowl"
                            + " begun can get another formula.");
        if (service.booking().asLastTime().orElse(false) == asLastTime)
            return Decision.refuse(
                    "FORMULA_AS_IT_IS",
                    "Service " + service.service() + " is planned "
                            + (asLastTime ? "as last time" : "by the menu")
                            + " already. Nothing is left to do.");
        if (asLastTime && LastVisit.of(day.opened(), service.booking()).isEmpty())
            return Decision.refuse(
                    "NO_EARLIER_VISIT",
                    "Nothing is remembered of an earlier visit of this client with the same menu entry. Accepted: a"
                            + " booking whose client reference and menu entry are those of an earlier visit.");
        return Decision.accept(new DayEvent.FormulaRepeated(service.service(), asLastTime));
    }

    private static Decision levels(Day day, DayCommand.RecordLevels command) {
        return NamedService.known(day, command.service(), service -> levelsOf(day, service, command));
    }

    private static Decision levelsOf(Day day, ServiceState service, DayCommand.RecordLevels command) {
        var zones = day.menuEntry(service).zones().stream().map(MenuZone::zone).toList();
        if (!zones.contains(command.zone()))
            return Decision.refuse(
                    "ZONE_UNKNOWN",
                    "\"" + command.zone() + "\" is no zone of service " + command.service() + ". Accepted: "
                            + Refusal.listed(zones) + ".");
        if (command.levelBeforeTenths().isEmpty() && command.levelAfterTenths().isEmpty())
            return Decision.refuse("LEVEL_MISSING", "Name the level before, the level after, or both.");
        if (!level(command.levelBeforeTenths()) || !level(command.levelAfterTenths()))
            return Decision.refuse("LEVEL_OUT_OF_RANGE", "A level is 1 to 10, in tenths: 10 to 100.");
        return Decision.accept(new DayEvent.LevelsRecorded(
                command.service(), command.zone(), command.levelBeforeTenths(), command.levelAfterTenths()));
    }

    private static boolean level(Optional<Integer> tenths) {
        return tenths.isEmpty() || tenths.get() >= LOWEST_LEVEL && tenths.get() <= HIGHEST_LEVEL;
    }
}
