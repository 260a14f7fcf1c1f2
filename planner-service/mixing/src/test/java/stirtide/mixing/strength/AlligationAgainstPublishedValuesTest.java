package stirtide.mixing.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Alligation against worked examples of dairy and pharmacy teaching; strengths in hundredths of a per cent. */
class AlligationAgainstPublishedValuesTest {
    /**
     * Columns: strong, weak, wanted, strong parts, weak parts. Univ. of Guelph, Standardization Problems, 1 and 2;
     * Sundell and White, Alligation/Alternate; pharmacy-tech-test.com; sciemce.com; Dairy fundamentals (old text);
     * qammunity.org/11555351 (two); examoo.com (printed as 3.4 of 5.9 parts, 34 of 59); a pharmacy textbook item whose source is from memory; the last four are developer
     * blends by the same rule, computed.
     */
    @ParameterizedTest
    @CsvSource({
        "4000,0,3200,4,1",
        "3500,400,1000,6,25",
        "50,10,20,1,3",
        "250,100,150,1,2",
        "250,25,100,1,2",
        "3000,300,500,2,25",
        "1500,1100,1200,1,3",
        "4000,50,350,6,73",
        "600,10,350,34,25",
        "9500,5000,7000,4,5",
        "1200,300,600,1,2",
        "900,300,600,1,1",
        "1200,600,900,1,1",
        "1200,0,900,3,1"
    })
    void parts_are_the_printed_ones(long strong, long weak, long wanted, long strongParts, long weakParts) {
        assertThat(Alligation.strongOf(strongParts + weakParts, 0, strong, weak, wanted, 1))
                .isEqualTo(strongParts);
        assertThat(Alligation.strongOf(1000 * (strongParts + weakParts), 0, strong, weak, wanted, 1))
                .isEqualTo(1000 * strongParts);
    }

    /**
     * Columns: strong, weak, wanted, given weight, its side, printed weight of the other. Guelph 1 and 2;
     * pharmacy-tech-test.com; sciemce.com; RxCal practice 9.2.1.1 (three, printed to 0.01 g); Dairy fundamentals.
     */
    @ParameterizedTest
    @CsvSource({
        "4000,0,3200,160,strong,40",
        "3500,400,1000,500,weak,120",
        "250,100,150,30,weak,15",
        "250,25,100,240,weak,120",
        "9500,0,2200,120,strong,398.18",
        "9500,0,8100,960,strong,165.93",
        "5000,0,4300,1100,strong,179.07",
        "3000,300,500,500,weak,40"
    })
    void the_other_weight_is_the_printed_one(
            long strong, long weak, long wanted, double given, String side, double other) {
        double total = given + other;
        double strongWeight = Alligation.strongOf((long) (total * 10_000), 0, strong, weak, wanted, 1) / 10_000.0;
        double found = side.equals("strong") ? strongWeight : total - strongWeight;
        // Half the last digit printed of the other weight is this much of the given one, and one step of rounding down.
        assertThat(found).isCloseTo(given, within(0.005 * given / total + 0.0002));
    }

    /** Univ. of Houston pharmacy module, mixing three strengths: 50 %, 20 % and 5 % to 10 % is 1 : 1 : 10. */
    @Test
    void three_strengths_are_mixed_as_printed() {
        long middle = 1000;
        long excess = middle * (2000 - 1000);
        long strong = Alligation.strongOf(11_000, excess, 5000, 500, 1000, 1);
        assertThat(strong).isEqualTo(1000);
    }

    /** Sundell and White: 100 g of 0.2 % from 0.5 % and 0.1 % takes 25 g and 75 g. */
    @Test
    void a_total_is_shared_out_as_printed() {
        assertThat(Alligation.strongOf(100_000, 0, 50, 10, 20, 100)).isEqualTo(25_000);
    }

    /** qammunity.org/11555351: 5,000 quarts of wine take 1,250 and 3,750; 500 kg of cream take 38 and 462, printed whole. */
    @ParameterizedTest
    @CsvSource({"1500,1100,1200,5000,1250,0", "4000,50,350,500,38,0.5"})
    void a_total_of_wine_or_cream_is_shared_out_as_printed(
            long strong, long weak, long wanted, double total, double printed, double tolerance) {
        double found = Alligation.strongOf((long) (total * 10_000), 0, strong, weak, wanted, 1) / 10_000.0;
        assertThat(found).isCloseTo(printed, within(tolerance + 0.0001));
    }

    /** pharmacy-tech-test.com: 30 g of 2.5 % and 15 g of 1 % give 2 % (0.9 g in 45 g). */
    @Test
    void a_blend_has_the_printed_strength() {
        assertThat(BlendStrength.blendHundredths(
                        java.util.List.of(new Liquid("a", 250, 1), new Liquid("b", 100, 1)),
                        new int[] {30_000, 15_000}))
                .isEqualTo(200);
    }
}
