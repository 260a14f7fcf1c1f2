package stirtide.bar.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import stirtide.bar.text.CodeText;
import stirtide.events.view.DayView;
import stirtide.events.view.DoneBowl;

/** Over-mixed grams of a day, sorted for the manager. */
public final class OverMixBars {
    private static final int PERMILLE = 1000;

    private OverMixBars() {}

    /** One bar: what it stands for, its milligrams, their cost in the salon's currency, and the bowls behind it. */
    public record Bar(String label, int milligrams, BigDecimal cost, List<BowlOverMix> bowls) {
        public Bar {
            bowls = List.copyOf(bowls);
        }
    }

    /** The bars of what is picked, largest first, equal ones by name. */
    public static List<Bar> bars(DayView view, List<DayOverMix> past, OverMixSelection pick) {
        return bars(pick.period().of(view, past), pick.sort());
    }

    /** The bars of some days together, largest first, equal ones by name. */
    public static List<Bar> bars(List<DayOverMix> days, OverMixSelection.Sort sort) {
        var groups = new TreeMap<String, List<BowlOverMix>>();
        days.stream()
                .flatMap(day -> day.left().stream())
                .forEach(left -> groups.computeIfAbsent(label(left, sort, days.size() == 1), made -> new ArrayList<>())
                        .add(left));
        return groups.entrySet().stream()
                .map(group -> new Bar(
                        group.getKey(),
                        group.getValue().stream()
                                .mapToInt(left -> left.bowl().leftMilligrams())
                                .sum(),
                        cost(group.getValue().stream().map(BowlOverMix::bowl).toList()),
                        group.getValue()))
                .sorted(Comparator.comparingInt(Bar::milligrams).reversed().thenComparing(Bar::label))
                .toList();
    }

    /** What the over-mixed grams of all done bowls cost. */
    public static BigDecimal cost(DayView view) {
        return cost(view.done().stream().filter(bowl -> !bowl.cause().isEmpty()).toList());
    }

    private static BigDecimal cost(List<DoneBowl> bowls) {
        return bowls.stream().map(DoneBowl::leftCost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static String label(BowlOverMix left, OverMixSelection.Sort sort, boolean oneDay) {
        DoneBowl bowl = left.bowl();
        return switch (sort) {
            case CAUSE -> CodeText.words(bowl.cause());
            case SERVICE -> left.menuName().isEmpty() ? "service " + bowl.service() : left.menuName();
            case STYLIST -> bowl.stylistName().isEmpty() ? "no stylist named" : bowl.stylistName();
            case LIGHTENER -> bowl.lightenerName();
            case CHAIR -> "chair " + bowl.chair();
            case BOWL -> (oneDay ? "" : left.date() + " ") + "bowl " + bowl.bowl();
        };
    }

    /** A share in per cent with one decimal, 0.0 of nothing. */
    public static String percent(int part, int whole) {
        if (whole <= 0) return "0.0";
        return BigDecimal.valueOf(part)
                .multiply(BigDecimal.valueOf(100))
                .divide(BigDecimal.valueOf(whole), 1, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** The limits of earlier days, empty when there are too few of them. */
    public static Optional<ControlLimits> limits(List<DayOverMix> past) {
        if (past.size() < ControlLimits.FEWEST) return Optional.empty();
        return Optional.of(ControlLimits.of(past.stream()
                .map(day -> BigDecimal.valueOf(day.overMixedMilligrams()))
                .toList()));
    }

    /** Milligrams at the top of a chart of days, so that every day and the upper limit are in it; a gram or more. */
    public static int top(List<DayOverMix> days, Optional<ControlLimits> limits) {
        int most = Math.max(
                PERMILLE,
                days.stream().mapToInt(DayOverMix::overMixedMilligrams).max().orElse(0));
        return limits.map(limit -> Math.max(most, limit.upper().intValue())).orElse(most);
    }

    /** Milligrams as whole grams, half up, for the scale of a chart. */
    public static int wholeGrams(BigDecimal milligrams) {
        return milligrams
                .divide(BigDecimal.valueOf(PERMILLE), 0, RoundingMode.HALF_UP)
                .intValueExact();
    }
}
