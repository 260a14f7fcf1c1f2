package stirtide.demo.play;

import java.time.Instant;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import stirtide.events.day.Booking;
import stirtide.events.setup.Menu.MenuEntry;
import stirtide.events.setup.Menu.MenuZone;

/** Progress of one client in a chair: the current zone, the minutes applied, and the milligrams taken from each bowl. */
final class ApplicationProgress {
    private static final int USED_PERCENT_LOW = 86;
    private static final int USED_PERCENT_HIGH = 99;

    private final int service;
    private final Booking booking;
    private final MenuEntry entry;
    private final SetupLookup lookup;
    private final SeededVariation chance;
    private final SortedMap<String, Integer> givenMilligrams = new TreeMap<>();
    private int zone;
    private int minutesDone;
    private int usedMilligrams;
    private Instant readyAt;
    private int waitedMinutes;

    ApplicationProgress(int service, Booking booking, SetupLookup lookup, SeededVariation chance, Instant startedAt) {
        this.service = service;
        this.booking = booking;
        this.lookup = lookup;
        this.chance = chance;
        this.entry = lookup.entry(booking.menuId());
        this.readyAt = startedAt.plusSeconds(60L * entry.zones().get(0).gapMinutes());
    }

    Booking booking() {
        return booking;
    }

    int waitedMinutes() {
        return waitedMinutes;
    }

    /** The zone being applied; empty when all zones are applied. */
    Optional<MenuZone> current() {
        return zone < entry.zones().size() ? Optional.of(entry.zones().get(zone)) : Optional.empty();
    }

    boolean zoneApplied() {
        return current().filter(now -> minutesDone >= minutes(now)).isPresent();
    }

    boolean readyAt(Instant now) {
        return current().isPresent() && !zoneApplied() && !now.isBefore(readyAt);
    }

    int given(String bowl) {
        return givenMilligrams.getOrDefault(bowl, 0);
    }

    long givenMilligrams() {
        return givenMilligrams.values().stream().mapToLong(Integer::longValue).sum();
    }

    /** One minute without a usable bowl. */
    void waitMinute() {
        waitedMinutes++;
    }

    /** One minute of application from a bowl that still holds {@code leftMilligrams}. */
    void applyMinute(String bowl, int leftMilligrams) {
        MenuZone now = current().orElseThrow();
        long target = (long) need(now) * (minutesDone + 1) / minutes(now);
        int taken = (int) Math.min(leftMilligrams, target - usedMilligrams);
        usedMilligrams += taken;
        givenMilligrams.merge(bowl, taken, Integer::sum);
        minutesDone++;
    }

    /** Ends the current zone; the next one begins after its gap. */
    void nextZone(Instant now) {
        zone++;
        minutesDone = 0;
        usedMilligrams = 0;
        int gap = current().map(MenuZone::gapMinutes).orElse(0);
        readyAt = now.plusSeconds(60L * gap);
    }

    private int minutes(MenuZone now) {
        return Math.max(1, now.applyMinutes() + chance.between(about(now) + "/minutes", -1, 1));
    }

    private int need(MenuZone now) {
        long planned = lookup.plannedNeed(booking, now);
        return (int) (planned * chance.between(about(now) + "/grams", USED_PERCENT_LOW, USED_PERCENT_HIGH) / 100);
    }

    private String about(MenuZone now) {
        return service + "/" + now.zone();
    }
}
