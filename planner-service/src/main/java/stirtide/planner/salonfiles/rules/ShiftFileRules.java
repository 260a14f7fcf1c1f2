package stirtide.planner.salonfiles.rules;

import java.util.List;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FieldText;
import stirtide.planner.salonfiles.json.SalonFile.Break;
import stirtide.planner.salonfiles.json.SalonFile.Shift;
import stirtide.planner.salonfiles.json.SalonFile.WeeklyPerson;
import stirtide.planner.salonfiles.json.WorkHours;

/** Rules of a person's weekly shifts, whatever the date. */
final class ShiftFileRules {
    private static final List<String> WEEKDAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    private ShiftFileRules() {}

    static void check(Located<WeeklyPerson> person) {
        for (String day : WEEKDAYS) checkOverlap(WorkHours.shiftsOn(person, day), day);
        person.path().each("shifts", person.value().shifts()).forEach(ShiftFileRules::checkShift);
    }

    private static void checkOverlap(List<Located<Shift>> shifts, String day) {
        for (int i = 1; i < shifts.size(); i++) {
            Shift before = shifts.get(i - 1).value();
            Shift shift = shifts.get(i).value();
            if (WorkHours.minute(shift.from()) < WorkHours.minute(before.to()))
                shifts.get(i)
                        .path()
                        .refuse(
                                "from",
                                FieldText.quoted(shift.from()),
                                "a time after the other shift of that person on " + day + " ends, "
                                        + FieldText.quoted(before.to()));
        }
    }

    private static void checkShift(Located<Shift> located) {
        Shift shift = located.value();
        int from = WorkHours.minute(shift.from());
        int to = WorkHours.minute(shift.to());
        if (to <= from) {
            located.path()
                    .refuse(
                            "to",
                            FieldText.quoted(shift.to()),
                            "a time after " + FieldText.quoted(shift.from()) + "; a shift ends on the day it starts");
            return;
        }
        int free = from;
        for (Located<Break> each : WorkHours.breaksOf(located)) {
            checkBreak(each, shift, free);
            free = Math.max(free, WorkHours.minute(each.value().to()));
        }
    }

    private static void checkBreak(Located<Break> located, Shift shift, int free) {
        Break pause = located.value();
        int start = WorkHours.minute(pause.from());
        int end = WorkHours.minute(pause.to());
        if (end <= start)
            located.path().refuse("to", FieldText.quoted(pause.to()), "a time after " + FieldText.quoted(pause.from()));
        else if (start < WorkHours.minute(shift.from()) || end > WorkHours.minute(shift.to()))
            located.path()
                    .refuse(
                            shown(pause),
                            "a break inside its shift, " + FieldText.quoted(shift.from()) + " to "
                                    + FieldText.quoted(shift.to()));
        else if (start < free) located.path().refuse(shown(pause), "a break that begins after the one before it ends");
    }

    private static String shown(Break pause) {
        return "{\"from\":" + FieldText.quoted(pause.from()) + ",\"to\":" + FieldText.quoted(pause.to()) + "}";
    }
}
