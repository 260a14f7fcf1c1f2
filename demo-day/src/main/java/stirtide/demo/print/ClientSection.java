package stirtide.demo.print;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import stirtide.bar.text.CountText;
import stirtide.events.day.Booking;
import stirtide.events.plan.PlannedService;
import stirtide.events.plan.PlannedService.PlannedZone;
import stirtide.events.view.DayView.MemoryCard;

/** Times of each client: application, halfway check, rinse, and latest rinse. */
final class ClientSection {
    private static final int[] WIDTHS = {4, 22, 13, 15, 7, 10, -9};

    private ClientSection() {}

    static void write(SheetWriter page, PrepSheetDay day) {
        page.heading("CLIENTS");
        page.text(
                "",
                "On hair: minutes from the last touch of the zone to its rinse, and from its first touch. At latest: by the"
                        + " directions, from the first touch of the zones that are rinsed together.");
        for (Map.Entry<Integer, Booking> booked : day.bookings().entrySet()) {
            Optional<PlannedService> planned = day.plan().services().stream()
                    .filter(service -> service.service() == booked.getKey())
                    .findFirst();
            page.gap();
            page.text(TextPage.cell(booked.getKey().toString(), 4), headline(day, booked.getValue(), planned));
            planned.ifPresent(service -> zones(page, day, service));
            day.allowances(booked.getValue()).forEach(why -> page.text("    ", why));
            day.memory(booked.getKey()).ifPresent(memory -> remembered(page, memory));
            boolean again =
                    day.memory(booked.getKey()).filter(MemoryCard::asLastTime).isPresent();
            if (booked.getValue().asLastTime().orElse(false) && !again)
                page.text(
                        "    ! ",
                        "As last time: nothing is remembered of this client and service; planned by the menu.");
        }
    }

    private static void remembered(SheetWriter page, MemoryCard memory) {
        page.text(
                "    ",
                "Last visit " + memory.lastVisit()
                        + (memory.asLastTime() ? ", planned again as far as it is allowed:" : ":"));
        memory.zones().forEach(zone -> page.text("      ", zone));
        memory.departures().forEach(why -> page.text("    ! ", why));
    }

    private static String headline(PrepSheetDay day, Booking booking, Optional<PlannedService> planned) {
        String who = "chair " + booking.chair() + "  " + booking.clientRef() + "  " + day.menuName(booking) + ", "
                + booking.length() + ", " + booking.density()
                + booking.stylistId().map(id -> ", with " + day.personName(id)).orElse("");
        return planned.map(service ->
                        who + ": " + day.clock(service.start()) + " to " + day.clock(service.end()) + waits(service))
                .orElse(who + ": booked for " + day.clock(booking.start()) + ", nothing planned; see the notes");
    }

    private static String waits(PlannedService service) {
        return service.waitMinutes() == 0 ? "" : ", waits " + CountText.of(service.waitMinutes(), "minute");
    }

    private static void zones(SheetWriter page, PrepSheetDay day, PlannedService service) {
        page.row(WIDTHS, "", "zone", "apply", "halfway check", "rinse", "at latest", "on hair");
        for (PlannedZone zone : day.zones(service))
            page.row(
                    WIDTHS,
                    "",
                    zone.zone(),
                    day.clock(zone.applyStart()) + "-" + day.clock(zone.applyEnd()),
                    day.clock(zone.checkAt()),
                    day.clock(zone.rinseAt()),
                    day.clock(zone.rinseBy()),
                    minutes(zone.applyEnd(), zone) + "-" + minutes(zone.applyStart(), zone));
    }

    private static long minutes(Instant touch, PlannedZone zone) {
        return Duration.between(touch, zone.rinseAt()).toMinutes();
    }
}
