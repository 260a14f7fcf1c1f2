package stirtide.bar.scale;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes of status and unit: USB HID Usage Tables, Weighing Devices page 0x8D. */
class HidReportTest {
    private static HidReport report(String hex) {
        byte[] bytes = HexFormat.ofDelimiter(" ").parseHex(hex);
        return HidReport.of(bytes, bytes.length).orElseThrow();
    }

    private static ScaleReading reading(String hex) {
        return report(hex).reading();
    }

    /** The two published samples lack the number of the report; 04, at rest, stands where they leave the status open. */
    @Test
    void the_published_samples_read_twenty_grams_and_six_hundred_forty_five_ounces() {
        assertThat(reading("04 02 00 14 00")).isEqualTo(new ScaleReading.Weight(20_000, true));
        assertThat(report("04 0B FF 34 19").value()).isEqualByComparingTo("645.2");
        assertThat(reading("04 0B FF 34 19"))
                .isEqualTo(new ScaleReading.Unusable("the scale shows ounce: switch it to g"));
    }

    @Test
    void a_numbered_report_is_read_past_its_number() {
        assertThat(reading("03 04 02 FF 92 01")).isEqualTo(new ScaleReading.Weight(40_200, true));
    }

    @ParameterizedTest
    @CsvSource({"2,true", "3,false", "4,true"})
    void at_rest_and_moving_are_told_apart(int status, boolean stable) {
        assertThat(reading("03 0" + status + " 02 FF 92 01")).isEqualTo(new ScaleReading.Weight(40_200, stable));
    }

    @ParameterizedTest
    @CsvSource({"1,fault", "5,below zero", "6,too much", "7,calibrated", "8,zeroed", "0,unknown", "9,unknown"})
    void every_other_status_says_what_to_do(int status, String word) {
        assertThat(reading("03 0" + status + " 02 FF 92 01"))
                .isInstanceOfSatisfying(
                        ScaleReading.Unusable.class,
                        unusable -> assertThat(unusable.sentence()).contains(word));
    }

    @ParameterizedTest
    @ValueSource(strings = {"04", "05", "06", "07", "08", "09", "0A", "0B", "0C", "0D", "00"})
    void units_that_are_not_grams_are_refused(String unit) {
        assertThat(reading("03 04 " + unit + " 00 14 00"))
                .isInstanceOfSatisfying(
                        ScaleReading.Unusable.class,
                        unusable -> assertThat(unusable.sentence()).endsWith("switch it to g"));
    }

    @ParameterizedTest
    @CsvSource({"FD,300", "FE,3000", "FF,30000", "00,300000", "01,3000000", "02,30000000", "03,300000000"})
    void the_power_of_ten_has_a_sign_and_the_high_byte_counts_256(String power, int milligrams) {
        assertThat(reading("03 04 02 " + power + " 2C 01")).isEqualTo(new ScaleReading.Weight(milligrams, true));
    }

    @Test
    void milligrams_and_kilograms_are_taken_and_nonsense_is_refused() {
        assertThat(reading("03 04 01 00 2C 01")).isEqualTo(new ScaleReading.Weight(300, true));
        assertThat(reading("03 04 03 FD 2C 01")).isEqualTo(new ScaleReading.Weight(300_000, true));
        assertThat(reading("03 04 02 7F FF FF")).isInstanceOf(ScaleReading.Unusable.class);
        assertThat(HidReport.of(new byte[64], 64)).isEmpty();
        assertThat(report("04 02 00 FF FF").value()).isEqualByComparingTo(BigDecimal.valueOf(65_535));
    }

    /** A simulated scale: every read gives one report, as the raw device of Linux does. */
    @Test
    void a_simulated_scale_is_read_report_by_report_until_it_is_unplugged() throws IOException {
        byte[] rest = HexFormat.ofDelimiter(" ").parseHex("03 04 02 FF 92 01");
        var device = new ByteArrayInputStream(concat(rest, rest)) {
            @Override
            public synchronized int read(byte[] into) {
                return read(into, 0, rest.length);
            }
        };
        List<ScaleReading> heard = new ArrayList<>();
        ScaleInput.reports(device, heard::add);
        assertThat(heard).containsExactly(new ScaleReading.Weight(40_200, true), new ScaleReading.Weight(40_200, true));
    }

    private static byte[] concat(byte[] first, byte[] second) {
        var all = new byte[first.length + second.length];
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(second, 0, all, first.length, second.length);
        return all;
    }
}
