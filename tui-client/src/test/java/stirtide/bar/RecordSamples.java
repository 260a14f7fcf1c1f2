package stirtide.bar;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stirtide.bar.model.Inquiry;
import stirtide.events.setup.PastVisit;
import stirtide.events.view.GramsView;
import stirtide.events.view.SwatchView;
import stirtide.events.view.VisitsView;

/** Answers about grams, test mixes and visits of the invented salon. */
public final class RecordSamples {
    private RecordSamples() {}

    /** Two swatches of chalk and a strip each, nothing of clay. */
    public static Inquiry tests() {
        var chalk = new SwatchView.LightenerCard(
                "chalk",
                "Chalk Lift",
                List.of(
                        new SwatchView.LiftCard(1500, 600, 30, 4, 275, Optional.of(29), "1:1.5 lifted 2.8 levels"),
                        new SwatchView.LiftCard(2000, 600, 30, 1, 250, Optional.empty(), "1:2 lifted 2.5 levels")),
                List.of(
                        new SwatchView.StripCard("2027-05-02", 1500, 600, 100, 5, "1:1.5 with 20 vol (6 %): pH 10"),
                        new SwatchView.StripCard("2027-05-02", 2500, 600, 95, 5, "1:2.5 with 20 vol (6 %): pH 9.5")),
                List.of("1:1.5 and 1:2.5: pH 10 is about 3.2 times as alkaline as pH 9.5, between 1 and 10 times by the"
                        + " charts."));
        var clay = new SwatchView.LightenerCard("clay", "Fine Clay", List.of(), List.of(), List.of());
        var view = new SwatchView(41, List.of(chalk, clay), "A strip tells how alkaline a mix is and nothing else.");
        return told(new Inquiry.Ask.Tests(), new Inquiry.Answer.Tests(view));
    }

    /** Grams and costs with something to buy. */
    public static Inquiry grams() {
        var view = new GramsView(
                41,
                "EUR",
                Optional.empty(),
                "",
                List.of(new GramsView.AllowanceCard(
                        7,
                        4,
                        "214",
                        "half-foils",
                        "crown foils",
                        64_000,
                        56_000,
                        8_000,
                        8,
                        1,
                        "LEARNED",
                        800,
                        "enough 4 times in 5 by the costs",
                        "64 g: 8 earlier foils used 41 to 62 g, this client 58 g")),
                List.of(new GramsView.PinCard("half-foils", "back foils", Optional.of(45_000), "")),
                List.of(),
                List.of(
                        new GramsView.BowlCostCard(
                                "4a", 4, true, 120_000, new BigDecimal("4.12"), new BigDecimal("0.0343")),
                        new GramsView.BowlCostCard(
                                "7a", 7, false, 102_000, new BigDecimal("3.46"), new BigDecimal("0.0339"))),
                List.of(new GramsView.MixCostCard(
                        "chalk",
                        "foil",
                        1500,
                        2500,
                        60_000,
                        new BigDecimal("2.31"),
                        new BigDecimal("1.90"),
                        new BigDecimal("0.41"),
                        "60 g of Chalk Lift at 1:1.5 cost 0.41 EUR more than at 1:2.5")),
                new GramsView.WaitingCard(
                        6,
                        new BigDecimal("0.85"),
                        new BigDecimal("5.10"),
                        "6 minutes of waiting by the plan, 5.10 EUR"),
                List.of("Cream 6 %: the plan needs 420 g, 300 g on the shelf, buy 1 pack for tomorrow"));
        return told(new Inquiry.Ask.Grams(), new Inquiry.Answer.Grams(view));
    }

    /** Three visits of one client; the last two lie side by side. */
    public static Inquiry visits() {
        var rows = List.of(
                new VisitsView.Row("crown foils", "lightener", "chalk", "chalk", false),
                new VisitsView.Row("crown foils", "developer", "20 vol (6 %)", "30 vol (9 %)", true),
                new VisitsView.Row("crown foils", "ratio", "1:2", "1:2.04", true),
                new VisitsView.Row("crown foils", "used", "55 g", "58 g", true),
                new VisitsView.Row("crown foils", "processed", "34 min", "30 min planned", true));
        var again = new VisitsView.ZoneAgain(
                "crown foils",
                "NEAREST",
                "chalk",
                600,
                2000,
                58_000,
                "crown foils: the directions now permit up to 20 vol (6 %) for foil and not 30 vol (9 %); planned Chalk"
                        + " Lift 1:2.04 with 20 vol (6 %), 58 g used last time");
        var view = new VisitsView(
                4,
                "K.D.",
                List.of(visit("2027-04-02"), visit("2027-02-05"), visit("2026-12-04")),
                false,
                List.of(again),
                Optional.of(new VisitsView.SideBySide("2027-02-05", "2027-04-02", rows)));
        return told(new Inquiry.Ask.Visits(4, Optional.empty(), Optional.empty()), new Inquiry.Answer.Visits(view));
    }

    private static PastVisit visit(String day) {
        return new PastVisit(LocalDate.parse(day), "K.D.", "half-foils", List.of());
    }

    private static Inquiry told(Inquiry.Ask ask, Inquiry.Answer answer) {
        return new Inquiry(ask, 0, Optional.of(answer));
    }
}
