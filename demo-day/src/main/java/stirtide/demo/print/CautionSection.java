package stirtide.demo.print;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stirtide.bar.text.CountText;
import stirtide.events.setup.Directions;

/** Cautions: the usual ones of the trade, then those of the leaflets of the products in use. */
final class CautionSection {
    /** The usual cautions. docs/safety.md gives their sources. */
    static final List<String> USUAL = List.of(
            "This sheet plans weights and times. The maker's leaflet, local rules and a licensed professional's"
                    + " judgment come first.",
            "Lightener and developer burn skin and eyes. Gloves on before the first scoop; if it reaches an eye,"
                    + " rinse with plenty of water at once, for 15 minutes, and get medical help.",
            "If it burns or stings on the skin, rinse it out at once and ask the colorist. A foil that swells or gets hot:"
                    + " open it and rinse at once. No heat unless the leaflet allows it.",
            "Henna or hair colors with metal salts on the hair: ask before the first bowl, and test a strand first.",
            "Lightener dust with persulfates can cause asthma and skin allergy. Weigh and mix where the air is drawn"
                    + " away, and do not raise dust. Trouble with breathing: stop, fresh air, medical help at once.",
            "Patch test and strand test as the leaflets and local rules demand. Never on lashes or brows, never on"
                    + " broken or sore skin.",
            "Use bowls and brushes without metal. Never close leftovers in a container: they give off gas.",
            "A bowl past its time is thrown away, never thinned or freshened up.");

    private CautionSection() {}

    static void write(SheetWriter page, PrepSheetDay day) {
        page.heading("CAUTIONS");
        USUAL.forEach(caution -> page.text("- ", caution));
        Set<String> used = day.plan().bowls().stream()
                .map(bowl -> bowl.formula().lightenerId())
                .collect(Collectors.toSet());
        for (Directions directions : day.setup().directions())
            if (used.contains(directions.lightenerId())) leaflet(page, directions);
    }

    private static void leaflet(SheetWriter page, Directions directions) {
        page.text("", directions.name() + ":");
        directions
                .strandTestHours()
                .ifPresent(
                        hours -> page.text("  - ", "Strand test at least " + CountText.of(hours, "hour") + " before."));
        directions
                .patchTestHours()
                .ifPresent(
                        hours -> page.text("  - ", "Patch test at least " + CountText.of(hours, "hour") + " before."));
        directions.cautions().forEach(caution -> page.text("  - ", caution));
    }
}
