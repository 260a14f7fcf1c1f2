package stirtide.planner.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import stirtide.planner.day.bowl.BowlBalance;
import stirtide.planner.day.question.PlanQuestions;
import stirtide.planner.day.state.BatchState;
import stirtide.planner.day.state.BowlIds;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;
import stirtide.planner.views.DayViews;

/** What holds on every day at every moment. */
final class Promises {
    private Promises() {}

    static void check(Day day, String where) {
        nobodyMixesTwice(day, where);
        for (var service : day.services()) {
            for (int i = 0; i < service.bowls().size(); i++)
                bowl(day, service, service.bowls().get(i), i, where);
            var zones = day.menuEntry(service).zones();
            for (int i = 0; i < service.zonesDone().size(); i++)
                assertThat(service.zonesDone().get(i).zone())
                        .as(where)
                        .isEqualTo(zones.get(i).zone());
        }
        if (day.closed()) assertThat(day.liveBowls()).as(where).isEmpty();
    }

    private static void nobodyMixesTwice(Day day, String where) {
        var people = new HashSet<String>();
        var scales = new HashSet<String>();
        // Two bowls of one mix are one mix: one person at one scale.
        day.liveBowls().filter(bowl -> bowl.mixing() && bowl.mixedHere()).forEach(bowl -> {
            assertThat(people.add(bowl.personId())).as(where).isTrue();
            assertThat(scales.add(bowl.scaleId())).as(where).isTrue();
        });
        assertThat(day.liveBowls().count()).as(where).isLessThanOrEqualTo(4);
    }

    private static void bowl(Day day, ServiceState service, BowlState bowl, int place, String where) {
        assertThat(bowl.bowl()).as(where).isEqualTo(BowlIds.of(service.service(), place));
        if (bowl.handedOverAt().isPresent()) {
            assertThat(bowl.handedOverAt().get()).as(where).isBefore(bowl.lifeEnds());
            assertThat(bowl.undivided()).as(where).isFalse();
            // the parts of a divided mix are whole milligrams; its ratio is that of the mix
            var weighed = bowl.batch()
                    .flatMap(BatchState::whole)
                    .orElseGet(() -> bowl.weighed().orElseThrow());
            assertThat(weighed.insideDirections()).as(where).isTrue();
            long developer = 1000L * weighed.developerMilligrams();
            assertThat(developer)
                    .as(where)
                    .isBetween(1500L * weighed.lightenerMilligrams(), 2500L * weighed.lightenerMilligrams());
        }
        if (bowl.live()) return;
        var balance = BowlBalance.of(day, bowl);
        assertThat(balance.appliedMilligrams() + balance.residueMilligrams() + balance.leftMilligrams())
                .as(where)
                .isEqualTo(balance.mixedMilligrams());
        assertThat(balance.appliedMilligrams()).as(where).isNotNegative();
        if (bowl.handedOverAt().isEmpty())
            assertThat(balance.appliedMilligrams()).as(where).isZero();
    }

    static void checkView(Day day, String where) {
        var view = DayViews.of(day, day.time(), 1000);
        var totals = view.totals();
        assertThat(totals.appliedMilligrams() + totals.residueMilligrams() + totals.overMixedMilligrams())
                .as(where)
                .isEqualTo(totals.mixedMilligrams());
        assertThat(totals.overMixedByCause().values().stream()
                        .mapToInt(Integer::intValue)
                        .sum())
                .as(where)
                .isEqualTo(totals.overMixedMilligrams());
        assertThat(view.planSettled()).as(where).isEqualTo(PlanQuestions.of(day).isEmpty());
        PlanQuestions.of(day)
                .ifPresent(question -> question.services()
                        .forEach(service -> service.runs()
                                .forEach(run -> run.zones().forEach(zone -> {
                                    assertThat(zone.applyMinutes()).as(where).isPositive();
                                    assertThat(zone.needMilligrams()).as(where).isPositive();
                                }))));
    }
}
