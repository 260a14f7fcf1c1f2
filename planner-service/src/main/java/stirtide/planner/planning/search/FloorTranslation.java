package stirtide.planner.planning.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;
import stirtide.events.setup.BowlSize;
import stirtide.planner.planning.floor.DutySpan;
import stirtide.planner.planning.floor.FloorAssistant;
import stirtide.planner.planning.floor.FloorBowlSize;
import stirtide.planner.planning.floor.FloorConditions;
import stirtide.planner.planning.floor.FloorDay;
import stirtide.planner.planning.floor.FloorMix;
import stirtide.planner.planning.search.PlanQuestion.Assistant;
import stirtide.planner.planning.search.PlanQuestion.Minutes;

/**
 * A question as a day of the floor engine, whose minutes count from now. What bowls feed that are begun already is left out of the
 * services; people, scales and bowls that are busy now are so from the start of that day.
 */
final class FloorTranslation {
    private static final int MILLIGRAMS_PER_DECIGRAM = 100;

    /** Grams count whole decigrams on the floor; that a bowl holds them is decided by the weighing. */
    private static final int ROUNDING_DECIGRAMS = 3;

    private static final int MARGIN_MINUTES = 3;
    private static final int LEAST_DECIGRAMS = 200;

    private final PlanQuestion question;
    private final ScaleKinds scales;
    private final FloorPeople people;
    private final List<FloorServicePart> parts;
    private final List<FloorMix> mixes = new ArrayList<>();
    private final TreeMap<String, Integer> mixPlaces = new TreeMap<>();

    /**
     * Translates.
     *
     * @param timelines the services of the question
     * @param shown the plan on show, whose changes of bowls stay possible
     */
    FloorTranslation(PlanQuestion question, List<ServiceTimeline> timelines, ShownPlan shown) {
        this.question = question;
        this.scales = new ScaleKinds(question);
        this.parts = new ArrayList<>();
        this.people = new FloorPeople(question);
        IntStream.range(0, timelines.size())
                .boxed()
                .sorted(Comparator.comparing(place -> timelines.get(place).task(), FloorPeople.TURNS))
                .flatMap(place ->
                        FloorServicePart.of(question, place, timelines.get(place), shown, this::mix, people).stream())
                .forEach(parts::add);
    }

    /** Place of a kind of mix; bowls of different stretches of one service are never the same kind. */
    private int mix(FeedSegment feed, int stretch) {
        FeedFormula recipe = feed.recipe();
        String key = recipe.mixMinutes() + " " + recipe.lifeMinutes() + " " + stretch;
        return mixPlaces.computeIfAbsent(key, k -> {
            mixes.add(new FloorMix(recipe.mixMinutes(), recipe.lifeMinutes()));
            return mixes.size() - 1;
        });
    }

    ScaleKinds scales() {
        return scales;
    }

    /** Services that new bowls feed, as the day has them. */
    List<FloorServicePart> parts() {
        return parts;
    }

    FloorDay day() {
        return new FloorDay(
                question.handOverMinutes(),
                question.washMinutes(),
                Math.max(1, question.scales().size()),
                1,
                1,
                false,
                MARGIN_MINUTES,
                LEAST_DECIGRAMS,
                IntStream.range(0, question.assistants().size())
                        .mapToObj(place -> new FloorAssistant(onDuty(place)))
                        .toList(),
                question.bowlSizes().stream().map(FloorTranslation::size).toList(),
                mixes,
                parts.stream().map(FloorServicePart::service).toList());
    }

    /** When an assistant can mix, by place in the question. */
    List<DutySpan> onDuty(int place) {
        Assistant assistant = question.assistants().get(place);
        int now = question.nowMinute();
        int free = Math.max(now, assistant.busyUntilMinute());
        List<DutySpan> spans = new ArrayList<>();
        for (Minutes duty : assistant.onDuty())
            if (free < duty.to()) spans.add(new DutySpan(Math.max(free, duty.from()) - now, duty.to() - now));
        return spans;
    }

    private static FloorBowlSize size(BowlSize size) {
        return new FloorBowlSize(
                size.usableMilligrams() / MILLIGRAMS_PER_DECIGRAM + ROUNDING_DECIGRAMS,
                size.residueMilligrams() / MILLIGRAMS_PER_DECIGRAM,
                size.count());
    }

    FloorConditions conditions() {
        return new FloorConditions(
                false,
                question.carryMinutes() > 0,
                people.stylistsOnDuty(),
                scales.counts(),
                scales.taken(),
                question.bowlSizes().stream().map(this::taken).toList(),
                parts.stream().map(FloorServicePart::underway).toList(),
                this::furthest);
    }

    private List<DutySpan> taken(BowlSize size) {
        return question.bowlsOut().stream()
                .filter(out -> out.bowlSizeId().equals(size.bowlSizeId()))
                .map(out -> out.freeFromMinute() - question.nowMinute())
                .filter(free -> free > 0)
                .map(free -> new DutySpan(0, free))
                .toList();
    }

    private int furthest(int service, int from, int size, int scale) {
        FloorServicePart part = parts.get(service);
        return part.furthest(from, part.feed(from).recipe().mostMilligrams(size, scales.first(scale)));
    }
}
