package stirtide.planner.salonfiles;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stirtide.events.setup.DaySetup;
import stirtide.events.setup.Developer;
import stirtide.events.setup.Directions;
import stirtide.events.setup.Menu;
import stirtide.events.setup.Salon;
import stirtide.planner.salonfiles.export.SetupFiles;

/** The way back from a setup to files, and the check of changed pieces by the code that reads files. */
class SetupFilesTest {
    private static final Path DEMO = Path.of("../demo-day/salon");

    @TempDir
    Path folder;

    private static FolderResult.Read demo() {
        return (FolderResult.Read) SalonFolder.read(DEMO, Optional.empty());
    }

    @Test
    void files_written_from_a_setup_read_back_as_the_same_day() throws IOException {
        FolderResult.Read given = demo();
        Files.createDirectory(folder.resolve("directions"));
        for (Map.Entry<String, String> file :
                SetupFiles.of(given.setup(), given.bookings()).entrySet())
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        FolderResult.Read back = (FolderResult.Read) SalonFolder.read(folder, Optional.empty());
        assertThat(back.bookings()).isEqualTo(given.bookings());
        assertThat(back.setup()).isEqualTo(given.setup());
    }

    @Test
    void a_setup_that_is_as_the_files_have_it_has_no_objection() {
        assertThat(SetupCheck.objection(demo().setup(), demo().setup())).isEmpty();
    }

    @Test
    void a_developer_the_files_would_refuse_is_refused_in_their_words() {
        DaySetup before = demo().setup();
        Developer odd = new Developer("UPPER", "Odd", 600, 1_000_000, new BigDecimal("8.4567"), Optional.empty());
        List<Developer> more = new ArrayList<>(before.developers());
        more.add(odd);
        DaySetup after = new DaySetup(before.date(), before.salon(), more, before.directions(), before.menu());
        assertThat(SetupCheck.objection(before, after).orElseThrow())
                .contains("developer id: \"UPPER\" is not accepted; accepted: a short id of small letters")
                .contains("pack price");
    }

    @Test
    void a_shelf_that_can_no_longer_blend_what_the_menu_wants_is_refused() {
        DaySetup before = demo().setup();
        List<Developer> weak = List.of(new Developer("weak", "Weak", 100, 1000, BigDecimal.ONE, Optional.empty()));
        DaySetup after = new DaySetup(before.date(), before.salon(), weak, before.directions(), before.menu());
        assertThat(SetupCheck.objection(before, after).orElseThrow()).contains("can be blended from the shelf");
    }

    @Test
    void a_salon_that_is_being_set_up_is_checked_piece_by_piece() {
        DaySetup full = demo().setup();
        Salon s = full.salon();
        Salon bare = new Salon(
                s.salonId(),
                s.name(),
                s.zone(),
                s.currency(),
                s.chairs(),
                2,
                5,
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty());
        Menu none =
                new Menu(List.of(), full.menu().lengthPermille(), full.menu().densityPermille());
        DaySetup empty = new DaySetup(full.date(), bare, List.of(), List.of(), none);
        Directions first = full.directions().get(0);
        DaySetup one = new DaySetup(full.date(), bare, List.of(), List.of(first), none);
        assertThat(SetupCheck.objection(empty, one)).isEmpty();
        DaySetup wrong = new DaySetup(full.date(), bare, List.of(), List.of(shortLived(first)), none);
        assertThat(SetupCheck.objection(empty, wrong).orElseThrow())
                .contains("working life minutes: 3 is not accepted; accepted: more than the");
    }

    private static Directions shortLived(Directions d) {
        return new Directions(
                d.lightenerId(),
                d.name(),
                d.form(),
                3,
                d.mixMinutes(),
                d.waterPermitted(),
                d.techniques(),
                d.packMilligrams(),
                d.packPrice(),
                d.countedMilligrams(),
                d.strandTestHours(),
                d.patchTestHours(),
                d.cautions());
    }
}
