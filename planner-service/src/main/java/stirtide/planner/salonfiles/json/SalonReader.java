package stirtide.planner.salonfiles.json;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import stirtide.events.setup.AllowancePolicy;
import stirtide.events.setup.BowlSize;
import stirtide.events.setup.Person;
import stirtide.events.setup.Salon;
import stirtide.events.setup.Scale;

/** What {@code salon.json} says. People's hours wait until the date is known. */
public final class SalonReader {
    private final LocatedValue top;
    private final Optional<ZoneId> zone;
    private final Optional<Currency> currency;
    private final List<Scale> scales;
    private final List<BowlSize> bowls;

    /** Reads a document that fits its schema and reports what it finds. */
    public SalonReader(LocatedJson json) {
        top = json.top();
        zone = readZone(top.at("zone"));
        currency = PriceFields.currency(top.text("currency"));
        if (currency.isEmpty()) top.at("currency").refuse("an ISO 4217 code of a currency in use, such as \"EUR\"");
        scales = readScales();
        bowls = readBowls();
        UniqueIds ids = new UniqueIds("person");
        top.items("people").forEach(person -> ids.take(person.at("personId")));
        top.items("people").forEach(PeopleReader::check);
    }

    public Optional<ZoneId> zone() {
        return zone;
    }

    public Optional<Currency> currency() {
        return currency;
    }

    int chairs() {
        return top.whole("chairs");
    }

    public int handOverMinutes() {
        return top.whole("handOverMinutes");
    }

    /** The salon as it is on a date; hours that cannot be are reported. */
    public Salon on(LocalDate date) {
        List<Person> people = PeopleReader.atWork(top.items("people"), date, zone.orElseThrow());
        if (people.stream().noneMatch(person -> person.role() == Person.Role.ASSISTANT)) {
            top.at("people").refuse("nobody who mixes on " + date, "an assistant with a shift on that weekday");
        }
        return new Salon(
                top.text("salonId"),
                top.text("name"),
                top.text("zone"),
                top.text("currency"),
                chairs(),
                handOverMinutes(),
                top.whole("washMinutes"),
                people,
                scales,
                bowls,
                top.has("oneMixTwoBowls") ? Optional.of(top.flag("oneMixTwoBowls")) : Optional.empty());
    }

    /** How generous allowances are, empty for the usual. */
    public Optional<AllowancePolicy> allowances() {
        if (!top.has("allowances")) return Optional.empty();
        LocatedValue item = top.at("allowances");
        Optional<BigDecimal> minute = item.has("waitingMinutePrice")
                ? Optional.of(PriceFields.price(item.at("waitingMinutePrice"), currency))
                : Optional.empty();
        if (minute.filter(price -> price.signum() == 0).isPresent())
            item.at("waitingMinutePrice").refuse("a price above 0, or leave it out");
        AllowancePolicy usual = AllowancePolicy.USUAL;
        return Optional.of(new AllowancePolicy(
                item.wholeIfAny("enoughPermille"),
                minute,
                item.thousandthsIfAny("shortGrams").orElse(usual.shortMilligrams()),
                item.whole("halfLifeDays", usual.halfLifeDays())));
    }

    private static Optional<ZoneId> readZone(LocatedValue item) {
        String id = item.node().textValue();
        if (ZoneId.getAvailableZoneIds().contains(id)) return Optional.of(ZoneId.of(id));
        item.refuse("an IANA time zone id, such as \"Europe/Lisbon\"");
        return Optional.empty();
    }

    private List<Scale> readScales() {
        UniqueIds ids = new UniqueIds("scale");
        List<Scale> read = new ArrayList<>();
        for (LocatedValue item : top.items("scales")) {
            ids.take(item.at("scaleId"));
            read.add(ScaleReader.read(item));
        }
        return read;
    }

    private List<BowlSize> readBowls() {
        UniqueIds ids = new UniqueIds("bowl size");
        List<BowlSize> read = new ArrayList<>();
        for (LocatedValue item : top.items("bowls")) {
            ids.take(item.at("bowlSizeId"));
            int usable = item.thousandths("usableGrams");
            int residue = item.thousandths("residueGrams");
            if (residue >= usable) {
                item.at("residueGrams")
                        .refuse("less than the usable " + item.at("usableGrams").shown() + " g");
            }
            read.add(new BowlSize(item.text("bowlSizeId"), usable, residue, item.whole("count")));
        }
        return read;
    }
}
