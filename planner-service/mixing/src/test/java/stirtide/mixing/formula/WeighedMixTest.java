package stirtide.mixing.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import stirtide.events.setup.Scale;
import stirtide.events.setup.Scale.Weighing;
import stirtide.mixing.weighing.ScaleErrors;
import stirtide.mixing.weighing.WeighedMix;
import stirtide.mixing.weighing.WeighedMix.Bounds;
import stirtide.mixing.weighing.WeighedMix.Fault;
import stirtide.mixing.weighing.WeighedMix.Part;

/**
 * The judgment of what was weighed against every corner of the box of errors, written apart from it, and against the
 * search and the advice it must agree with. Limits of error: OIML R 76-1:2006, table 6, as in {@link EveryWeighing}.
 */
class WeighedMixTest {
    private static final Bounds BOUNDS = new Bounds(1500, 2500, 900);

    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53, 54})
    void a_mix_is_inside_when_every_corner_of_the_errors_is(long seed) {
        Random random = new Random(seed);
        var seen = new TreeMap<String, Integer>();
        for (int round = 0; round < 3000; round++) {
            Scale scale = FormulaSamples.scale(
                    100, random.nextBoolean(), random.nextBoolean() ? Weighing.TARE_BETWEEN : Weighing.RUNNING_TOTAL);
            int lightener = 100 * (1 + random.nextInt(600));
            List<Part> liquids = new ArrayList<>();
            int[] strengths = {600, 1200, 300};
            for (int i = 0; i <= random.nextInt(3); i++)
                liquids.add(new Part(strengths[i], 100 * (1 + random.nextInt(900))));
            Optional<Fault> fault = new WeighedMix(new ScaleErrors(scale), lightener, liquids).fault(BOUNDS);
            assertThat(fault.isEmpty())
                    .as("%s %d %s: %s", scale, lightener, liquids, fault)
                    .isEqualTo(everyCorner(scale, lightener, liquids));
            seen.merge(fault.map(Enum::name).orElse("INSIDE"), 1, Integer::sum);
        }
        assertThat(seen).containsOnlyKeys("INSIDE", "TOO_LITTLE_DEVELOPER", "TOO_MUCH_DEVELOPER", "TOO_STRONG");
        assertThat(seen.values()).allMatch(times -> times > 50);
    }

    private static boolean everyCorner(Scale scale, int lightener, List<Part> liquids) {
        EveryWeighing limits = new EveryWeighing(scale, 1500, 2500);
        boolean running = scale.weighing() == Weighing.RUNNING_TOTAL;
        for (int corner = 0; corner < 1 << liquids.size() + 1; corner++) {
            long total = lightener;
            long before = 2L * lightener + ((corner & 1) == 0 ? -1 : 1) * limits.error(lightener);
            long trueLightener = before;
            long developer = 0;
            long peroxide = 0;
            for (int i = 0; i < liquids.size(); i++) {
                total += liquids.get(i).milligrams();
                long reading = running ? total : liquids.get(i).milligrams();
                long load = 2 * reading + ((corner >> i + 1 & 1) == 0 ? -1 : 1) * limits.error(reading);
                long part = running ? load - before : load;
                before = load;
                developer += part;
                peroxide += part * liquids.get(i).strengthHundredths();
            }
            boolean stronger = liquids.stream().anyMatch(part -> part.strengthHundredths() > 900);
            if (1000 * developer < 1500 * trueLightener
                    || 1000 * developer > 2500 * trueLightener
                    || stronger && peroxide > 900 * developer) return false;
        }
        return true;
    }

    /** A bowl planned at the edge of the window is inside when it is weighed exactly as planned: the plan left room. */
    @ParameterizedTest
    @EnumSource(Weighing.class)
    void what_is_weighed_as_planned_is_inside(Weighing weighing) {
        int planned = 0;
        for (int wanted : new int[] {1500, 1510, 2000, 2490, 2500})
            for (int strength : new int[] {600, 750, 900})
                for (int need = 20_000; need < 90_000; need += 3_700) {
                    Scale scale = FormulaSamples.scale(100, true, weighing);
                    FormulaQuestion question = FormulaSamples.question(
                            FormulaSamples.directions(1500, 2500, 900, false), strength, wanted, need, 2 * need, scale);
                    if (!(FormulaSearch.find(question) instanceof FormulaAnswer.Weigh weigh)) continue;
                    List<Part> liquids = weigh.formula().developerParts().stream()
                            .map(part ->
                                    new Part(Integer.parseInt(part.developerId().substring(4)), part.milligrams()))
                            .toList();
                    assertThat(new WeighedMix(
                                            new ScaleErrors(scale),
                                            weigh.formula().lightenerMilligrams(),
                                            liquids)
                                    .fault(BOUNDS))
                            .as("%s", weigh)
                            .isEmpty();
                    planned++;
                }
        assertThat(planned).isGreaterThan(200);
    }

    /** When the advice says that a bowl is ready, the judgment lets it go; when it asks for a correction, it may not. */
    @ParameterizedTest
    @ValueSource(longs = {61, 62})
    void what_the_advice_calls_ready_is_inside(long seed) {
        Random random = new Random(seed);
        int ready = 0;
        for (int round = 0; round < 400; round++) {
            Scale scale = FormulaSamples.scale(100, true, Weighing.TARE_BETWEEN);
            FormulaQuestion question = FormulaSamples.question(
                    FormulaSamples.directions(1500, 2500, 900, false), 600, 2000, 40_000, 90_000, scale);
            var planned = ((FormulaAnswer.Weigh) FormulaSearch.find(question)).formula();
            int lightener = 10_000 + 100 * random.nextInt(160);
            int developer = 24_000 + 100 * random.nextInt(360);
            NextPour next = BowlCorrection.next(
                    question, planned, List.of(new Pour("pale-clay", lightener), new Pour("dev-600", developer)));
            boolean inside = new WeighedMix(new ScaleErrors(scale), lightener, List.of(new Part(600, developer)))
                    .fault(BOUNDS)
                    .isEmpty();
            boolean little = lightener + developer < 40_000;
            assertThat(next instanceof NextPour.Ready).isEqualTo(inside && !little);
            if (inside) ready++;
        }
        assertThat(ready).isBetween(50, 350);
    }
}
