package stirtide.demo.play;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stirtide.events.command.DayCommand;
import stirtide.events.formula.DeveloperPart;
import stirtide.events.plan.PlannedBatch;
import stirtide.events.plan.PlannedBowl;
import stirtide.events.setup.Person;
import stirtide.events.setup.Scale;
import stirtide.events.view.DayView;
import stirtide.events.view.DayView.BatchCard;
import stirtide.events.view.DayView.LiveBowl;
import stirtide.events.view.DayView.PartCard;
import stirtide.events.view.DayView.PlannedBowlCard;
import stirtide.events.view.DayView.QueuedBowl;
import stirtide.events.view.DayView.ShareCard;
import stirtide.mixing.weighing.ScaleErrors;
import stirtide.mixing.weighing.WeighedMix;

/** Simulates the assistants at the color bar: they begin bowls when due, weigh them as planned and hand them over. */
public final class BarSimulation {
    private final SetupLookup lookup;
    private final DayScript script;
    private final SeededVariation chance;
    private final Set<String> slipped = new HashSet<>();

    /**
     * @param lookup the setup of the day
     * @param script what happens beside the calendar
     */
    public BarSimulation(SetupLookup lookup, DayScript script) {
        this.lookup = lookup;
        this.script = script;
        this.chance = new SeededVariation(script.seed());
    }

    /** The next action at the bar, if one is due. */
    public Optional<StaffAction> next(DayView view) {
        Optional<StaffAction> carried = first(view, this::carry);
        if (carried.isPresent()) return carried;
        Optional<StaffAction> weighed = first(view, this::weigh);
        return weighed.isPresent() ? weighed : begin(view);
    }

    private interface AtBowl {
        Optional<StaffAction> action(LiveBowl bowl, Instant now);
    }

    private static Optional<StaffAction> first(DayView view, AtBowl what) {
        return view.live().stream()
                .sorted(Comparator.comparing(LiveBowl::mixStart).thenComparing(LiveBowl::bowl))
                .map(bowl -> what.action(bowl, view.time()))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Optional<StaffAction> begin(DayView view) {
        for (QueuedBowl queued : view.queue()) {
            PlannedBowl bowl = queued.bowl();
            Optional<String> mixer = free(view, bowl);
            int tardy = Math.max(0, chance.between(bowl.bowl() + "/begin", -3, 1));
            Instant begins = bowl.mixStart().plusSeconds(60L * tardy);
            if (mixer.isEmpty() || begins.isAfter(view.time())) continue;
            return Optional.of(new StaffAction(mixer.get(), begin(queued, mixer.get())));
        }
        return Optional.empty();
    }

    /** Begins one mix for two bowls where the plan has it so. */
    private static DayCommand begin(QueuedBowl queued, String mixer) {
        return queued.batch()
                .<DayCommand>map(batch -> new DayCommand.BeginBatch(
                        batch.shares().stream().map(ShareCard::bowl).toList(), mixer))
                .orElseGet(() -> new DayCommand.BeginBowl(queued.bowl().bowl(), mixer));
    }

    /** Person id of the mixer, if free: the assistant of the plan, or any stylist where the plan names none. */
    private Optional<String> free(DayView view, PlannedBowl bowl) {
        return bowl.personId().isPresent()
                ? bowl.personId().filter(id -> idle(view, id))
                : lookup.people(Person.Role.STYLIST).stream()
                        .map(Person::personId)
                        .filter(id -> idle(view, id))
                        .findFirst();
    }

    private static boolean idle(DayView view, String personId) {
        return view.people().stream()
                .filter(person -> person.personId().equals(personId))
                .anyMatch(person -> person.onDutyNow() && !person.mixing());
    }

    private Optional<StaffAction> weigh(LiveBowl bowl, Instant now) {
        Optional<BatchCard> mix = bowl.batch().filter(batch -> !batch.divided());
        if (mix.isPresent())
            return mix.get().mixedIn().bowl().equals(bowl.bowl()) ? weighMix(bowl, mix.get(), now) : Optional.empty();
        if (!bowl.stage().equals("MIXING") && !slipped.contains(bowl.bowl())) return Optional.empty();
        boolean slip = script.slips().contains(bowl.bowl()) && !slipped.contains(bowl.bowl());
        int minute = lookup.mixMinutes(bowl.planned().lightenerName());
        if (now.isBefore(bowl.mixStart().plusSeconds(60L * minute))) return Optional.empty();
        DayCommand command = slip ? slip(bowl) : asPlanned(bowl);
        if (slip) slipped.add(bowl.bowl());
        else slipped.remove(bowl.bowl());
        return Optional.of(new StaffAction(actor(bowl), command));
    }

    /** Weighs one mix for two bowls as planned, and divides it a minute later. */
    private Optional<StaffAction> weighMix(LiveBowl bowl, BatchCard batch, Instant now) {
        int minutes = lookup.mixMinutes(batch.planned().lightenerName())
                + (batch.weighed().isPresent() ? PlannedBatch.DIVIDE_MINUTES : 0);
        if (now.isBefore(bowl.mixStart().plusSeconds(60L * minutes))) return Optional.empty();
        DayCommand command = batch.weighed().isPresent()
                ? new DayCommand.DivideBatch(bowl.bowl(), batch.pouredInto().milligrams())
                : new DayCommand.WeighBatch(
                        bowl.bowl(), batch.planned().lightenerMilligrams(), exactly(batch.planned()));
        return Optional.of(new StaffAction(actor(bowl), command));
    }

    private Optional<StaffAction> carry(LiveBowl bowl, Instant now) {
        if (!bowl.stage().equals("WEIGHED") || slipped.contains(bowl.bowl())) return Optional.empty();
        int minutes = lookup.mixMinutes(bowl.planned().lightenerName())
                + (bowl.batch().isPresent() ? PlannedBatch.DIVIDE_MINUTES : 0)
                + lookup.setup().salon().handOverMinutes();
        if (now.isBefore(bowl.mixStart().plusSeconds(60L * minutes))) return Optional.empty();
        return Optional.of(new StaffAction(actor(bowl), new DayCommand.HandOverBowl(bowl.bowl())));
    }

    /** The planned weights, each off by at most one scale division, as long as the mix is inside at the worst scale error. */
    private DayCommand.WeighBowl asPlanned(LiveBowl bowl) {
        PlannedBowlCard planned = bowl.planned();
        Scale scale = lookup.setup().salon().scale(planned.scaleId()).orElseThrow();
        int step = scale.ranges().get(0).divisionMilligrams();
        int lightener = planned.lightenerMilligrams() + step * chance.between(bowl.bowl() + "/lightener", -1, 1);
        List<DeveloperPart> parts = new ArrayList<>();
        for (PartCard part : planned.parts()) parts.add(new DeveloperPart(part.developerId(), part.milligrams()));
        PartCard last = planned.parts().get(planned.parts().size() - 1);
        int off = step * chance.between(bowl.bowl() + "/developer", 0, 1);
        parts.set(parts.size() - 1, new DeveloperPart(last.developerId(), last.milligrams() + off));
        return inside(planned, scale, lightener, parts)
                ? new DayCommand.WeighBowl(bowl.bowl(), lightener, parts)
                : new DayCommand.WeighBowl(bowl.bowl(), planned.lightenerMilligrams(), exactly(planned));
    }

    /** Takes the strength as planned: one division more of a developer does not exceed the highest strength. */
    private static boolean inside(PlannedBowlCard planned, Scale scale, int lightener, List<DeveloperPart> parts) {
        int developer = parts.stream().mapToInt(DeveloperPart::milligrams).sum();
        var liquids = parts.stream()
                .map(part -> new WeighedMix.Part(planned.strengthHundredths(), part.milligrams()))
                .toList();
        var bounds = new WeighedMix.Bounds(
                planned.lowestRatioThousandths(), planned.highestRatioThousandths(), planned.strengthHundredths());
        return lightener + developer <= planned.usableMilligrams()
                && new WeighedMix(new ScaleErrors(scale), lightener, liquids)
                        .fault(bounds)
                        .isEmpty();
    }

    /** A typing error: the weight of the lightener is entered as that of the developer too. */
    private static DayCommand.WeighBowl slip(LiveBowl bowl) {
        int lightener = bowl.planned().lightenerMilligrams();
        List<DeveloperPart> parts = new ArrayList<>(exactly(bowl.planned()));
        parts.set(0, new DeveloperPart(parts.get(0).developerId(), lightener));
        return new DayCommand.WeighBowl(bowl.bowl(), lightener, parts);
    }

    private static List<DeveloperPart> exactly(PlannedBowlCard planned) {
        return planned.parts().stream()
                .map(part -> new DeveloperPart(part.developerId(), part.milligrams()))
                .toList();
    }

    private String actor(LiveBowl bowl) {
        return lookup.setup().salon().people().stream()
                .filter(person -> person.name().equals(bowl.personName()))
                .map(Person::personId)
                .findFirst()
                .orElseGet(lookup::receptionist);
    }
}
