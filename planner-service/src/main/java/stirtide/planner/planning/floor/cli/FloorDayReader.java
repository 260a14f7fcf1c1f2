package stirtide.planner.planning.floor.cli;

import java.util.ArrayList;
import java.util.List;
import stirtide.planner.planning.floor.DutySpan;
import stirtide.planner.planning.floor.FloorAssistant;
import stirtide.planner.planning.floor.FloorBowlSize;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorMix;
import stirtide.planner.planning.floor.FloorService;
import stirtide.planner.planning.floor.FloorZone;

/** Reads the parts of a floor day. */
final class FloorDayReader {
    private static final int MOST_PLACES = 200;

    private final JsonPlace root;

    FloorDayReader(JsonPlace root) {
        this.root = root;
    }

    FloorDay day() throws FloorDayFile.Refused {
        return new FloorDay(
                root.minutes("handOverMinutes"),
                root.minutes("washMinutes"),
                root.count("scales"),
                root.count("basins"),
                root.minutes("rinseMinutes"),
                stylistsRinse(),
                root.minutes("marginMinutes"),
                root.count("leastDecigrams"),
                assistants(),
                bowlSizes(),
                mixes(),
                services());
    }

    private boolean stylistsRinse() throws FloorDayFile.Refused {
        String by = root.field("rinsedBy").node().asText();
        if (!by.equals("stylist") && !by.equals("assistant")) {
            throw root.field("rinsedBy").refused("\"assistant\" or \"stylist\"");
        }
        return by.equals("stylist");
    }

    private List<FloorAssistant> assistants() throws FloorDayFile.Refused {
        List<FloorAssistant> assistants = new ArrayList<>();
        for (JsonPlace row : root.list("assistants")) {
            List<DutySpan> spans = new ArrayList<>();
            for (JsonPlace span : row.list("onDuty")) {
                spans.add(new DutySpan(entry(span, 0), entry(span, 1)));
            }
            assistants.add(new FloorAssistant(spans));
        }
        return assistants;
    }

    private static int entry(JsonPlace list, int index) throws FloorDayFile.Refused {
        return new JsonPlace(list.file(), list.at() + "/" + index, list.node().path(index))
                .whole(JsonPlace.MOST_MINUTES);
    }

    private List<FloorBowlSize> bowlSizes() throws FloorDayFile.Refused {
        List<FloorBowlSize> sizes = new ArrayList<>();
        for (JsonPlace row : root.list("bowlSizes")) {
            sizes.add(
                    new FloorBowlSize(row.count("usableDecigrams"), row.count("residueDecigrams"), row.count("count")));
        }
        return sizes;
    }

    private List<FloorMix> mixes() throws FloorDayFile.Refused {
        List<FloorMix> mixes = new ArrayList<>();
        for (JsonPlace row : root.list("mixes")) {
            mixes.add(new FloorMix(row.minutes("mixMinutes"), row.minutes("lifeMinutes")));
        }
        return mixes;
    }

    private List<FloorService> services() throws FloorDayFile.Refused {
        List<FloorService> services = new ArrayList<>();
        for (JsonPlace row : root.list("services")) {
            List<Integer> breaks = new ArrayList<>();
            for (JsonPlace minute : row.list("breaks")) {
                breaks.add(minute.whole(JsonPlace.MOST_MINUTES));
            }
            services.add(new FloorService(
                    row.count("service"),
                    row.field("stylist").whole(MOST_PLACES),
                    row.field("chair").whole(MOST_PLACES),
                    row.minutes("bookedMinute"),
                    zones(row),
                    breaks));
        }
        return services;
    }

    private static List<FloorZone> zones(JsonPlace service) throws FloorDayFile.Refused {
        List<FloorZone> zones = new ArrayList<>();
        for (JsonPlace row : service.list("zones")) {
            zones.add(new FloorZone(
                    row.minutes("gapMinutes"),
                    row.minutes("applyMinutes"),
                    row.count("decigrams"),
                    row.count("mix"),
                    row.minutes("processMinutes"),
                    row.minutes("longestMinutes")));
        }
        return zones;
    }
}
