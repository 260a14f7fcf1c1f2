package stirtide.planner.check.floor;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stirtide.planner.planning.floor.BowlAssignment;
import stirtide.planner.planning.floor.FloorBowlSize;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorMix;

/** The rules that one service can break by itself. */
final class ServiceRuleCheck {
    private final FloorDay day;
    private final WorkedService worked;
    private final List<String> faults;

    ServiceRuleCheck(FloorDay day, WorkedService worked, List<String> faults) {
        this.day = day;
        this.worked = worked;
        this.faults = faults;
    }

    void check() {
        if (covers()) {
            breaks();
            clock();
            rinse();
            worked.bowls().forEach(this::bowl);
        }
    }

    private void fault(String rule, String what) {
        faults.add(rule + ": service " + worked.number() + " " + what);
    }

    private boolean covers() {
        int at = 0;
        for (BowlAssignment bowl : worked.bowls()) {
            if (bowl.from() != at || bowl.to() <= at) {
                fault("cover", "has " + bowl + " where minute " + at + " was due");
                return false;
            }
            at = bowl.to();
        }
        if (at != worked.minutes()) {
            fault("cover", "is fed for " + at + " of " + worked.minutes() + " minutes");
        }
        return at == worked.minutes();
    }

    private void breaks() {
        Set<Integer> allowed = new HashSet<>(worked.service().breaks());
        allowed.add(0);
        for (int z = 1; z < worked.zones(); z++) {
            if (worked.zone(z).mix() != worked.zone(z - 1).mix()) {
                allowed.add(worked.first(z));
            }
        }
        for (BowlAssignment bowl : worked.bowls()) {
            if (!allowed.contains(bowl.from())) {
                fault("breaks", "changes the bowl at minute " + bowl.from());
            }
        }
    }

    private void clock() {
        if (worked.at(0) < worked.service().bookedMinute()) {
            fault("booked", "begins at " + worked.at(0));
        }
        Set<Integer> mayWait = new HashSet<>();
        worked.bowls().forEach(bowl -> mayWait.add(bowl.from()));
        for (int i = 1; i < worked.minutes(); i++) {
            int gap = worked.beginsZone(i) ? worked.zone(worked.zoneOf(i)).gapMinutes() : 0;
            int least = worked.at(i - 1) + 1 + gap;
            if (worked.at(i) < least) {
                fault("clock", "works minute " + i + " at " + worked.at(i) + ", least " + least);
            } else if (worked.at(i) > least && !worked.beginsZone(i) && !mayWait.contains(i)) {
                fault("waits", "waits before minute " + i + ", where no zone and no bowl begins");
            }
        }
    }

    private void rinse() {
        int rinse = worked.times().rinse();
        if (rinse < worked.wish() || rinse < worked.end()) {
            fault("rinse early", "is rinsed at " + rinse + ", wished for " + worked.wish());
        }
        for (int z = 0; z < worked.zones(); z++) {
            if (rinse > worked.at(worked.first(z)) + worked.zone(z).longestMinutes()) {
                fault("longest", "is rinsed at " + rinse + ", zone " + z + " begun at " + worked.at(worked.first(z)));
            }
        }
        if (worked.waited() > FloorDay.MOST_WAIT_MINUTES) {
            fault("90 minutes", "waits " + worked.waited());
        }
    }

    private void bowl(BowlAssignment bowl) {
        int kind = worked.zone(worked.zoneOf(bowl.from())).mix();
        FloorMix mix = day.mixes().get(kind);
        for (int i = bowl.from(); i < bowl.to(); i++) {
            if (worked.zone(worked.zoneOf(i)).mix() != kind) {
                fault("mixes", "has other mixes fed by " + bowl);
                break;
            }
        }
        int ready = bowl.mixStart() + mix.mixMinutes() + day.handOverMinutes();
        if (ready > worked.at(bowl.from())) {
            fault("ready", "needs " + bowl + " at " + worked.at(bowl.from()) + ", ready at " + ready);
        }
        int over = worked.at(bowl.to() - 1) + 1;
        if (over - bowl.mixStart() > mix.lifeMinutes()) {
            fault("life", "uses " + bowl + " until " + over);
        }
        FloorBowlSize size = day.bowlSizes().get(bowl.size());
        if (worked.grams(bowl.from(), bowl.to()) + size.residueDecigrams() > size.usableDecigrams()) {
            fault("fits", "has too much in " + bowl);
        }
    }
}
