package stirtide.planner.views;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.PersonCard;
import stirtide.events.view.PersonWork;
import stirtide.events.view.PersonWork.Kind;
import stirtide.planner.day.Scene;

class PeoplesWorkTest {
    private static List<PersonWork> work(Scene scene, Kind kind) {
        DayView view = DayViews.of(scene.day, scene.now, 1000);
        return view.people().stream()
                .map(PersonCard::work)
                .flatMap(List::stream)
                .filter(piece -> piece.kind() == kind)
                .toList();
    }

    private static Duration all(List<PersonWork> work) {
        return work.stream()
                .map(piece -> Duration.between(piece.from(), piece.to()))
                .reduce(Duration.ZERO, Duration::plus);
    }

    @Test
    void a_planned_mix_is_followed_by_the_hand_over_of_who_mixed() {
        var scene = Scene.planned();
        int handOver = scene.day.opened().salon().handOverMinutes();
        assertThat(handOver).isPositive();
        var mixes = work(scene, Kind.MIXING);
        var carried = work(scene, Kind.CARRYING);
        assertThat(mixes).hasSize(2).noneMatch(PersonWork::done);
        assertThat(carried).hasSize(2);
        assertThat(all(carried)).isEqualTo(Duration.ofMinutes(2L * handOver));
        assertThat(carried)
                .extracting(PersonWork::from)
                .containsAll(mixes.stream().map(PersonWork::to).toList());
    }

    @Test
    void nobody_carries_where_the_salon_says_that_others_do() {
        var scene = Scene.planned();
        var salon = scene.day.opened().salon().withMixerCarries(java.util.Optional.of(false));
        scene.day = scene.day.inForce(scene.day.opened().withSalon(salon));
        assertThat(work(scene, Kind.MIXING)).hasSize(2);
        assertThat(work(scene, Kind.CARRYING)).isEmpty();
    }

    @Test
    void a_mix_is_done_once_it_is_weighed_and_its_carrying_once_it_is_handed_over() {
        assertThat(work(Scene.begun(), Kind.MIXING)).hasSize(2).noneMatch(PersonWork::done);
        var weighed = Scene.begun().does(Scene.weigh("1a", 30_000, 60_000));
        assertThat(work(weighed, Kind.MIXING)).filteredOn(PersonWork::done).hasSize(1);
        assertThat(work(weighed, Kind.CARRYING)).hasSize(2).noneMatch(PersonWork::done);
        assertThat(work(Scene.atChair(), Kind.MIXING))
                .filteredOn(PersonWork::done)
                .hasSize(1);
    }

    @Test
    void hours_and_work_of_a_person_stand_on_the_card() {
        var scene = Scene.planned();
        DayView view = DayViews.of(scene.day, scene.now, 1000);
        for (PersonCard card : view.people())
            assertThat(card.hours())
                    .isEqualTo(scene.day
                            .opened()
                            .salon()
                            .person(card.personId())
                            .orElseThrow()
                            .onDuty());
    }
}
