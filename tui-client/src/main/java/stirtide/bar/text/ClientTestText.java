package stirtide.bar.text;

import java.util.List;
import java.util.Locale;
import stirtide.events.view.DayView;

/** Strand and patch tests that the directions require and that are not recorded in time, in a few words. */
public final class ClientTestText {
    private static final String RECORDED = "RECORDED";
    private static final String MISSING = "MISSING";

    private ClientTestText() {}

    /** The tests of a service that are not recorded. */
    public static List<DayView.TestCard> open(DayView view, int service) {
        return view.service(service).stream()
                .flatMap(card -> card.tests().stream())
                .filter(test -> !test.state().equals(RECORDED))
                .toList();
    }

    /** {@code "NO STRAND TEST, PATCH TEST TOO LATE"}, empty text when none is open. */
    public static String shortly(DayView view, int service) {
        return String.join(
                ", ",
                open(view, service).stream()
                        .map(ClientTestText::shortly)
                        .distinct()
                        .toList());
    }

    private static String shortly(DayView.TestCard test) {
        String name = test.kind().toUpperCase(Locale.ROOT) + " TEST";
        return test.state().equals(MISSING) ? "NO " + name : name + " TOO LATE";
    }
}
