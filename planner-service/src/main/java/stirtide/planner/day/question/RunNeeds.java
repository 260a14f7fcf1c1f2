package stirtide.planner.day.question;

import java.util.ArrayList;
import java.util.List;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Menu.MenuZone;
import stirtide.planner.allowance.Allowance;
import stirtide.planner.allowance.Allowances;
import stirtide.planner.allowance.Allowances.Rest;
import stirtide.planner.day.allowance.ZoneGrams;
import stirtide.planner.day.booking.FormulaRun;
import stirtide.planner.day.bowl.BowlBalance;
import stirtide.planner.day.chair.ServiceProgress;
import stirtide.planner.day.state.BowlState;
import stirtide.planner.day.state.Day;
import stirtide.planner.day.state.ServiceState;

/**
 * Grams a run still needs. Its zones are planned with what is enough every other time; what allowances add for safety is
 * the reserve, which the last bowl carries. Once a bowl of the run is closed, what it really gave is known: then the rest
 * and its reserve are sized again from that, for zones whose grams are learned. Pins and the menu stay as they are.
 *
 * @param zoneMilligrams grams the zones still to be applied need, in order, each 1 or more
 * @param reserveMilligrams grams on top for the last bowl
 */
record RunNeeds(List<Integer> zoneMilligrams, int reserveMilligrams) {
    private static final int WHOLE_PERMILLE = 1000;

    /**
     * What a run needs from here on.
     *
     * @param done zones of the service applied so far
     */
    static RunNeeds of(Day day, ServiceState service, FormulaRun run, ServiceProgress progress, int done) {
        var work = new Work(day, service, run, progress, Math.max(0, done - run.firstZone()));
        return work.bounded(work.seen() ? work.sizedAgain() : work.asPlanned());
    }

    /** One run while it is worked out. */
    private record Work(Day day, ServiceState service, FormulaRun run, ServiceProgress progress, int doneZones) {
        private List<BowlState> bowls() {
            return service.bowls().stream()
                    .filter(bowl ->
                            bowl.run() == run.number() && bowl.handedOverAt().isPresent())
                    .toList();
        }

        private boolean learned(MenuZone zone) {
            return day.ledger()
                    .allowance(service.service(), zone.zone())
                    .filter(one -> one.source() != Allowance.Source.PINNED)
                    .isPresent();
        }

        /** Whether anything real is known of this run, and whether it may be used. */
        private boolean seen() {
            return bowls().stream().anyMatch(bowl -> bowl.closed().isPresent())
                    && run.zones().stream().allMatch(this::learned)
                    && donePermille() > 0;
        }

        private long median() {
            return ZoneGrams.medianMilligrams(day, service, run.zones());
        }

        private long planned() {
            return run.zones().stream()
                    .mapToLong(zone -> ZoneGrams.milligrams(day, service, zone))
                    .sum();
        }

        private int elapsed(int place) {
            return place == doneZones
                            && run.firstZone() + place == progress.done().size()
                    ? progress.elapsedMinutes()
                    : 0;
        }

        /** Grams of a zone that are not applied yet if all goes as expected. */
        private int left(int place) {
            var zone = run.zones().get(place);
            int need = ZoneGrams.medianMilligrams(day, service, zone);
            return need - (int) ((long) need * elapsed(place) / zone.applyMinutes());
        }

        private long allLeft() {
            long left = 0;
            for (int i = doneZones; i < run.zones().size(); i++) left += left(i);
            return left;
        }

        private int donePermille() {
            long median = median();
            return (int) Math.min(WHOLE_PERMILLE - 1L, WHOLE_PERMILLE * (median - allLeft()) / median);
        }

        private RunNeeds asPlanned() {
            var needs = new ArrayList<Integer>();
            for (int i = doneZones; i < run.zones().size(); i++) needs.add(left(i));
            return new RunNeeds(needs, (int) (planned() - median()));
        }

        /** What a closed bowl gave is known; one still at the chair is assumed to give as expected. */
        private int used() {
            long used = 0;
            for (var bowl : bowls())
                used += bowl.closed().isPresent()
                        ? BowlBalance.of(day, bowl).appliedMilligrams()
                        : progress.usedMilligrams().getOrDefault(bowl.bowl(), 0);
            return (int) used;
        }

        private RunNeeds sizedAgain() {
            Rest rest = Allowances.rest((int) median(), (int) planned(), used(), donePermille());
            long left = allLeft();
            var needs = new ArrayList<Integer>();
            for (int i = doneZones; i < run.zones().size(); i++)
                needs.add((int) Math.max(1, (long) rest.expectedMilligrams() * left(i) / left));
            return new RunNeeds(needs, rest.safetyMilligrams());
        }

        /** A reserve that no bowl could hold together with the last minute's grams is spread over the last zone instead. */
        private RunNeeds bounded(RunNeeds needs) {
            int place = run.zones().size() - 1;
            int last = needs.zoneMilligrams().size() - 1;
            if (last < 0) return needs;
            int minutes = run.zones().get(place).applyMinutes() - elapsed(place);
            int capacity = day.opened().salon().bowls().stream()
                    .mapToInt(bowl -> capacity(bowl) / 2)
                    .max()
                    .orElse(0);
            int most = Math.max(0, capacity - needs.zoneMilligrams().get(last) / minutes - 1);
            int reserve = Math.min(needs.reserveMilligrams(), most);
            if (reserve == needs.reserveMilligrams()) return needs;
            var spread = new ArrayList<>(needs.zoneMilligrams());
            spread.set(last, spread.get(last) + needs.reserveMilligrams() - reserve);
            return new RunNeeds(spread, reserve);
        }

        private static int capacity(BowlSize bowl) {
            return bowl.usableMilligrams() - bowl.residueMilligrams();
        }
    }
}
