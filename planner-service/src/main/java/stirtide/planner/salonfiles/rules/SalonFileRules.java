package stirtide.planner.salonfiles.rules;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Scale;
import stirtide.planner.salonfiles.json.FieldPath;
import stirtide.planner.salonfiles.json.FieldPath.Located;
import stirtide.planner.salonfiles.json.FieldText;
import stirtide.planner.salonfiles.json.SalonFile;
import stirtide.planner.salonfiles.json.SalonFile.WeeklyPerson;
import stirtide.planner.salonfiles.json.UniqueIds;

/** Rules of a salon whose single fields are in their ranges. */
public final class SalonFileRules {
    private SalonFileRules() {}

    /** Refuses what cannot be. */
    public static void check(SalonFile salon, FieldPath at) {
        if (zone(salon).isEmpty())
            at.refuse("zone", FieldText.quoted(salon.zone()), "an IANA time zone id, such as \"Europe/Lisbon\"");
        PriceRules prices = PriceRules.in(salon.currency());
        if (prices.currency().isEmpty())
            at.refuse(
                    "currency",
                    FieldText.quoted(salon.currency()),
                    "an ISO 4217 code of a currency in use, such as \"EUR\"");
        people(at.each("people", salon.people()));
        scales(at.each("scales", salon.scales()));
        bowls(at.each("bowls", salon.bowls()));
        salon.allowances()
                .flatMap(SalonFile.AllowanceSection::waitingMinutePrice)
                .ifPresent(
                        price -> waitingPrice(price, prices, at.at("allowances").at("waitingMinutePrice")));
    }

    /** The time zone, empty when there is none of that id. */
    public static Optional<ZoneId> zone(SalonFile salon) {
        return ZoneId.getAvailableZoneIds().contains(salon.zone())
                ? Optional.of(ZoneId.of(salon.zone()))
                : Optional.empty();
    }

    private static void people(List<Located<WeeklyPerson>> people) {
        UniqueIds ids = new UniqueIds("person");
        people.forEach(each -> ids.take(each.value().personId(), each.path().at("personId")));
        people.forEach(ShiftFileRules::check);
    }

    private static void scales(List<Located<Scale>> scales) {
        UniqueIds ids = new UniqueIds("scale");
        for (Located<Scale> each : scales) {
            ids.take(each.value().scaleId(), each.path().at("scaleId"));
            ScaleRules.check(each.value(), each.path());
        }
    }

    private static void bowls(List<Located<BowlSize>> bowls) {
        UniqueIds ids = new UniqueIds("bowl size");
        for (Located<BowlSize> each : bowls) {
            BowlSize bowl = each.value();
            ids.take(bowl.bowlSizeId(), each.path().at("bowlSizeId"));
            if (bowl.residueMilligrams() >= bowl.usableMilligrams())
                each.path()
                        .refuse(
                                "residueGrams",
                                FieldText.thousandths(bowl.residueMilligrams()),
                                "less than the usable " + FieldText.thousandths(bowl.usableMilligrams()) + " g");
        }
    }

    private static void waitingPrice(BigDecimal price, PriceRules prices, FieldPath at) {
        prices.check(price, at);
        if (price.signum() == 0) at.refuse(FieldText.quoted(price.toPlainString()), "a price above 0, or leave it out");
    }
}
