package stirtide.events.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.SortedMap;

/**
 * The bookable lightening services and the factors that fit them to a client's hair.
 *
 * @param entries the bookable services
 * @param lengthPermille grams factor by hair length, in thousandths; 1000 leaves the base grams as they are
 * @param densityPermille grams factor by hair density, in thousandths
 */
@RecordBuilder
public record Menu(
        List<MenuEntry> entries, SortedMap<String, Integer> lengthPermille, SortedMap<String, Integer> densityPermille)
        implements MenuBuilder.With {
    private static final int UNCHANGED_PERMILLE = 1000;

    public Menu {
        entries = List.copyOf(entries);
    }

    /** Factor of a hair length, in thousandths; 1000 for one the menu does not name. */
    public int lengthPermille(String length) {
        return lengthPermille.getOrDefault(length, UNCHANGED_PERMILLE);
    }

    /** Factor of a hair density, in thousandths; 1000 for one the menu does not name. */
    public int densityPermille(String density) {
        return densityPermille.getOrDefault(density, UNCHANGED_PERMILLE);
    }

    /**
     * One bookable service.
     *
     * @param menuId short id, unique in the menu; a calendar names it in CATEGORIES
     * @param name name shown on screens
     * @param zones what is lightened, in order of application
     */
    public record MenuEntry(String menuId, String name, List<MenuZone> zones) {
        public MenuEntry {
            zones = List.copyOf(zones);
        }
    }

    /**
     * One zone of a service.
     *
     * @param zone name of the zone, unique in the entry, such as {@code "crown foils"}
     * @param technique technique named by the directions
     * @param lightenerId lightener to use
     * @param strengthHundredths developer strength wanted, in hundredths of a per cent by weight
     * @param ratioThousandths developer per lightener wanted, in thousandths
     * @param baseMilligrams grams planned for medium length and density, in milligrams
     * @param applyMinutes minutes of application
     * @param gapMinutes minutes between the end of the zone before (or the start of the service) and this zone
     * @param processMinutes minutes wanted from the end of application to the rinse
     * @param section zones with the same section number are rinsed together
     */
    @RecordBuilder
    public record MenuZone(
            String zone,
            String technique,
            String lightenerId,
            int strengthHundredths,
            int ratioThousandths,
            int baseMilligrams,
            int applyMinutes,
            int gapMinutes,
            int processMinutes,
            int section)
            implements MenuMenuZoneBuilder.With {}
}
