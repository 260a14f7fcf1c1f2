package stirtide.events.setup;

import com.fasterxml.jackson.annotation.JsonInclude;
import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;

/**
 * A salon as it is on one day.
 *
 * @param salonId short id
 * @param name name shown on screens
 * @param zone IANA time zone id, such as {@code "Europe/Lisbon"}
 * @param currency ISO 4217 code of all prices
 * @param chairs number of chairs, numbered from 1
 * @param handOverMinutes minutes from the end of mixing until the bowl is at the chair
 * @param washMinutes minutes until an emptied bowl can be used again
 * @param people everybody at work on the day
 * @param scales scales at the bar, at least one
 * @param bowls bowl sizes the bar owns, at least one
 * @param oneMixTwoBowls whether two bowls of different clients may be one mix; empty, as before it was asked: no
 * @param mixerCarries whether who mixed a bowl is busy until it is at the chair; empty, as before it was asked: yes
 */
@RecordBuilder
public record Salon(
        String salonId,
        String name,
        String zone,
        String currency,
        int chairs,
        int handOverMinutes,
        int washMinutes,
        List<Person> people,
        List<Scale> scales,
        List<BowlSize> bowls,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) Optional<Boolean> oneMixTwoBowls,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) Optional<Boolean> mixerCarries)
        implements SalonBuilder.With {
    public Salon {
        people = List.copyOf(people);
        scales = List.copyOf(scales);
        bowls = List.copyOf(bowls);
    }

    /** Whether who mixed a bowl is busy until it is at the chair. */
    public boolean carriedByMixer() {
        return mixerCarries.orElse(true);
    }

    /** Minutes for which who mixed a bowl is busy with carrying it, 0 or more. */
    public int carryMinutes() {
        return carriedByMixer() ? handOverMinutes : 0;
    }

    /** A person by id. */
    public Optional<Person> person(String personId) {
        return people.stream().filter(one -> one.personId().equals(personId)).findFirst();
    }

    /** A scale by id. */
    public Optional<Scale> scale(String scaleId) {
        return scales.stream().filter(one -> one.scaleId().equals(scaleId)).findFirst();
    }

    /** A size of bowl by id. */
    public Optional<BowlSize> bowlSize(String bowlSizeId) {
        return bowls.stream().filter(one -> one.bowlSizeId().equals(bowlSizeId)).findFirst();
    }
}
