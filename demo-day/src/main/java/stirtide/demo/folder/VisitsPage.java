package stirtide.demo.folder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import stirtide.events.setup.PastVisit;
import stirtide.events.view.VisitsView;
import stirtide.planner.cli.CommandException;
import stirtide.planner.salonfiles.FolderResult;
import stirtide.planner.views.VisitsViews;
import stirtide.planner.visits.VisitComparison;

/** The page of earlier visits of one client: the last two side by side. */
public final class VisitsPage {
    private static final int[] WIDTHS = {18, 14, 24, 24};

    private VisitsPage() {}

    /**
     * The page of a client.
     *
     * @throws CommandException with {@link CommandException#BAD_INPUT} when no visit of the client is known; lists the known clients
     */
    public static String of(FolderResult.Read read, String clientRef) {
        List<PastVisit> all = read.setup().learned().remembered().visits();
        List<PastVisit> visits = new ArrayList<>(all.stream()
                .filter(visit -> visit.clientRef().equals(clientRef))
                .toList());
        visits.sort(Comparator.comparing(PastVisit::on).reversed());
        if (visits.isEmpty()) throw new CommandException(CommandException.BAD_INPUT, unknown(clientRef, all));
        StringBuilder page = new StringBuilder("Visits of " + clientRef + ", "
                + read.setup().salon().name() + ": " + String.join(", ", dates(visits)) + "\n\n");
        Optional<VisitsView.SideBySide> sheet = VisitsViews.sideBySide(visits, Optional.empty(), Optional.empty());
        VisitsView.SideBySide shown = sheet.orElseGet(() -> VisitComparison.of(visits.get(0), visits.get(0)));
        boolean two = sheet.isPresent();
        row(page, "zone", "", shown.first(), two ? shown.second() : "", " ");
        String zone = "";
        for (VisitsView.Row line : shown.rows()) {
            String name = line.zone().equals(zone) ? "" : line.zone();
            zone = line.zone();
            row(page, name, line.figure(), line.first(), two ? line.second() : "", two && line.differs() ? "*" : " ");
        }
        return page.append(two ? "\n* differs\n" : "\nOne visit is remembered.\n")
                .toString();
    }

    private static List<String> dates(List<PastVisit> visits) {
        return visits.stream().map(visit -> visit.on() + " " + visit.menuId()).toList();
    }

    private static String unknown(String clientRef, List<PastVisit> all) {
        TreeSet<String> known = new TreeSet<>();
        all.forEach(visit -> known.add(visit.clientRef()));
        return "nothing is remembered of \"" + clientRef + "\"; accepted: "
                + (known.isEmpty() ? "none, the folder has no history.json" : String.join(", ", known));
    }

    private static void row(StringBuilder page, String zone, String figure, String first, String second, String mark) {
        String line =
                cell(zone, WIDTHS[0]) + cell(figure, WIDTHS[1]) + cell(first, WIDTHS[2]) + cell(second, WIDTHS[3]);
        page.append(mark).append(' ').append(line.stripTrailing()).append('\n');
    }

    private static String cell(String text, int width) {
        return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
    }
}
