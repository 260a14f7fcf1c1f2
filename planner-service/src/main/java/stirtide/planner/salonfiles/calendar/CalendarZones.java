package stirtide.planner.salonfiles.calendar;

import biweekly.component.VTimezone;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The time zones a calendar may name: those it describes, and those of the IANA list. */
final class CalendarZones {
    private final ZoneId salonZone;
    private final Map<String, VTimezone> described = new TreeMap<>();

    CalendarZones(ZoneId salonZone, Collection<VTimezone> components) {
        this.salonZone = salonZone;
        for (VTimezone component : components) {
            if (component.getTimezoneId() != null)
                described.put(component.getTimezoneId().getValue(), component);
        }
    }

    ZoneId salonZone() {
        return salonZone;
    }

    /**
     * The rules for a local time of a property, or empty after the problem was reported. A time without TZID is local to
     * the salon.
     */
    Optional<ZoneRules> rules(LocatedEvent event, ContentLines.Property property, LocalDateTime local) {
        if (property.zone().isEmpty()) return Optional.of(salonZone.getRules());
        String id = property.zone().get();
        // Programs write descriptions that hold for a few years only; the IANA list is kept up to date.
        Optional<ZoneRules> listed = listed(id);
        if (listed.isPresent()) return listed;
        VTimezone component = described.get(id);
        if (component == null) {
            event.refuse(property.line(), property.name(), "TZID=" + id, known());
            return Optional.empty();
        }
        Optional<ZoneRules> own = VtimezoneRules.of(component, local.toLocalDate());
        if (own.isEmpty()) {
            event.refuse(
                    property.line(), property.name(), "TZID=" + id, "a VTIMEZONE with offsets and onsets (RFC 5545)");
        }
        return own;
    }

    private String known() {
        return "an IANA zone such as " + salonZone.getId() + ", or a zone that a VTIMEZONE of the file describes";
    }

    /** A leading slash marks an id of a global list (RFC 5545, 3.2.19). */
    private static Optional<ZoneRules> listed(String id) {
        String name = id.startsWith("/") ? id.substring(1) : id;
        if (!ZoneId.getAvailableZoneIds().contains(name)) return Optional.empty();
        return Optional.of(ZoneId.of(name).getRules());
    }
}
