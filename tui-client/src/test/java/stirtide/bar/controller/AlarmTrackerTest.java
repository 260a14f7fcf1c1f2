package stirtide.bar.controller;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.model.AlarmList;
import stirtide.events.view.AlarmCard;

class AlarmTrackerTest {
    private static final long SECOND = 1_000_000_000L;

    private final AlarmTracker watch = new AlarmTracker();
    private final AlarmCard high = Samples.alarm("PAST_LIFE", 1);
    private final AlarmCard medium = Samples.alarm("LOW_LIFE", 2);

    private AlarmList look(int seconds, AlarmCard... alarms) {
        List<AlarmCard> all = List.of(alarms);
        watch.look(all, Samples.NOW.plusSeconds(seconds), seconds * SECOND);
        return watch.list(all);
    }

    private static AlarmCard seen(AlarmCard alarm) {
        return new AlarmCard(
                alarm.id(),
                alarm.priority(),
                alarm.kind(),
                alarm.bowl(),
                alarm.chair(),
                alarm.sentence(),
                alarm.raisedAt(),
                Optional.of("bohdan"));
    }

    @Test
    void only_the_sign_of_a_new_alarm_alternates_once_a_second_for_five_seconds() {
        AlarmList.Row row = look(0, high).rows().get(0);
        int turns = 0;
        boolean off = row.signIsOff(0);
        assertThat(off).isFalse();
        for (long nanos = 0; nanos <= 20 * SECOND; nanos += SECOND / 100) {
            if (row.signIsOff(nanos) != off) turns++;
            off = row.signIsOff(nanos);
        }
        assertThat(turns).isEqualTo(10);
        assertThat(row.signIsOff(SECOND * 5)).isFalse();
        assertThat(row.blinks(SECOND * 5)).isFalse();
    }

    @Test
    void the_bell_rings_for_what_is_new_and_at_most_once_in_ten_seconds() {
        look(0, high);
        assertThat(watch.takeBell()).isTrue();
        look(3, high, medium);
        assertThat(watch.takeBell()).isFalse();
        look(11, high, medium, Samples.alarm("LOW_LIFE", 5));
        assertThat(watch.takeBell()).isTrue();
        assertThat(watch.takeBell()).isFalse();
    }

    @Test
    void a_shelved_alarm_is_counted_and_comes_back_by_itself() {
        look(0, high, medium);
        watch.shelve(List.of(medium.id()), 5, Samples.NOW);
        AlarmList put = look(10, high, medium);
        assertThat(put.shelved()).isEqualTo(1);
        assertThat(put.rows()).extracting(AlarmList.Row::first).containsExactly(high);
        AlarmList back = look(300, high, medium);
        assertThat(back.shelved()).isZero();
        assertThat(back.rows().get(1).unseen()).isTrue();
        assertThat(back.rows().get(1).blinks(300 * SECOND)).isTrue();
    }

    @Test
    void a_high_alarm_cannot_be_shelved() {
        look(0, high);
        watch.shelve(List.of(high.id()), 5, Samples.NOW);
        assertThat(look(1, high).rows()).hasSize(1);
    }

    @Test
    void a_high_alarm_that_stands_is_news_again_two_minutes_after_it_was_seen() {
        look(0, high);
        assertThat(look(10, seen(high)).rows().get(0).unseen()).isFalse();
        assertThat(look(129, seen(high)).rows().get(0).unseen()).isFalse();
        AlarmList.Row again = look(130, seen(high)).rows().get(0);
        assertThat(again.unseen()).isTrue();
        assertThat(again.blinks(130 * SECOND)).isTrue();
        watch.seen(high.id(), Samples.NOW.plusSeconds(131));
        assertThat(look(132, seen(high)).rows().get(0).unseen()).isFalse();
    }

    @Test
    void a_medium_alarm_is_not_raised_again() {
        look(0, seen(medium));
        assertThat(look(600, seen(medium)).rows().get(0).unseen()).isFalse();
    }

    /** Eleven in ten minutes are more than ten, the limit quoted from EEMUA 191; it ends with fewer than five. */
    @Test
    void more_than_ten_in_ten_minutes_are_told_by_kind_until_fewer_than_five_came() {
        var all = new ArrayList<AlarmCard>();
        for (int i = 1; i <= 11; i++) all.add(raised(i, Samples.NOW.plusSeconds(i)));
        AlarmList ten = look(20, all.subList(0, 10).toArray(AlarmCard[]::new));
        assertThat(ten.flood()).isFalse();
        AlarmList flood = look(21, all.toArray(AlarmCard[]::new));
        assertThat(flood.flood()).isTrue();
        assertThat(flood.rows()).hasSize(1);
        assertThat(flood.rows().get(0).alarms()).hasSize(11);
        assertThat(flood.tally().mostInTenMinutes()).isEqualTo(11);
        assertThat(look(607, all.toArray(AlarmCard[]::new)).flood()).isTrue();
        AlarmList over = look(608, all.toArray(AlarmCard[]::new));
        assertThat(over.flood()).isFalse();
        assertThat(over.tally().floodSeconds()).isEqualTo(587);
    }

    private static AlarmCard raised(int number, Instant at) {
        AlarmCard alarm = Samples.alarm("LOW_LIFE", number);
        return new AlarmCard(
                alarm.id(),
                alarm.priority(),
                alarm.kind(),
                alarm.bowl(),
                alarm.chair(),
                alarm.sentence(),
                at,
                Optional.empty());
    }
}
