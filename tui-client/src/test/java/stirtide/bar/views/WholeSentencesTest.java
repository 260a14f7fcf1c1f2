package stirtide.bar.views;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stirtide.bar.Samples;
import stirtide.bar.SourceSentences;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.keys.Key;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.Notice;
import stirtide.bar.model.Panel;
import stirtide.bar.model.Panel.UiEffect;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.panels.SignOnPanel;
import stirtide.bar.panels.details.ReasonsPanel;
import stirtide.bar.panels.form.CommandForm;
import stirtide.bar.panels.form.FormPanel;
import stirtide.bar.panels.form.TextField;
import stirtide.events.command.DayCommand;

/** Every sentence of the service and of the terminal that the sources hold is shown to its last word at 80 by 24. */
class WholeSentencesTest {
    private static final Path SERVICE = Path.of("../planner-service/src/main/java/stirtide/planner");
    private static final Path SCHEMAS = Path.of("../events-schema/src/main/resources/schema/files");
    private static final Path TERMINAL = Path.of("src/main/java/stirtide/bar");
    private static final Pattern REFUSALS =
            Pattern.compile("(new Refusal|Refusal\\.of|\\brefuse|ApiException\\.\\w+|Optional\\.of|\\brange)\\(");
    private static final Pattern NOTICES =
            Pattern.compile("(Notify|Stay|\\bstay|notices\\.add|\\bsay|Trouble|Failed|Refused|Ended)\\(");
    private static final DayCommand COMMAND = new DayCommand.AcknowledgeAlarm("a");

    /** Refusals of the service; of a changed setup with what its schema accepts. */
    private static List<String> refusals() throws IOException {
        var sentences = new ArrayList<String>();
        for (String folder : List.of("day", "http", "service", "access", "privacy"))
            sentences.addAll(SourceSentences.of(SERVICE.resolve(folder), REFUSALS));
        assertThat(sentences).hasSizeGreaterThan(100);
        try (Stream<Path> files = Files.walk(SCHEMAS)) {
            for (Path file : files.filter(Files::isRegularFile).toList())
                for (JsonNode description :
                        new ObjectMapper().readTree(file.toFile()).findValues("description"))
                    sentences.add(
                            "menu.json /entries/12/zones/3/startFactorPermille: \"one and a half\" is not accepted;"
                                    + " accepted: " + description.asText());
        }
        return sentences;
    }

    private static List<String> notices() throws IOException {
        List<String> sentences = SourceSentences.of(TERMINAL, NOTICES);
        assertThat(sentences).hasSizeGreaterThan(30);
        return sentences;
    }

    private static UiState scene() {
        return Samples.scene(Samples.busy());
    }

    private static void holdsWhole(UiState state, String sentence) {
        List<String> rows = ScreenView.draw(state, 80, 24, Glyphs.FULL).rows();
        assertThat(blanksAlike(String.join(" ", rows)))
                .as(() -> String.join("\n", rows))
                .contains(blanksAlike(sentence));
    }

    private static void holdsWholeInPanel(UiState state, String sentence) {
        List<String> rows = ScreenView.draw(state, 80, 24, Glyphs.FULL).rows();
        assertThat(blanksAlike(rows.stream()
                        .filter(row -> row.contains("│"))
                        .map(row -> row.substring(row.indexOf('│') + 1, row.lastIndexOf('│')))
                        .collect(Collectors.joining(" "))))
                .as(() -> String.join("\n", rows))
                .contains(blanksAlike(sentence));
    }

    private static String blanksAlike(String text) {
        return text.replaceAll("\\s+", " ").strip();
    }

    private static UiState with(UiState state, Panel panel) {
        return state.withPanel(Optional.of(panel.overlay(state)));
    }

    @Test
    void a_refusal_is_whole_on_every_view() throws IOException {
        for (String sentence : refusals())
            for (KeyContext page : KeyContext.VIEWS) {
                var notice = new Notice("NOT TAKEN  mix in bowl 12ab weighed 34.0 + 48.0 + 20.0 g: " + sentence, true);
                UiState state = scene().withPages(ViewState.BAR.to(page)).withNotices(List.of(notice, notice));
                holdsWhole(state, notice.words());
                holdsWhole(state.withLink(new LinkStatus(LinkStatus.State.LOST, 60, 12)), notice.words());
            }
    }

    @Test
    void a_notice_of_the_terminal_is_whole_on_every_view() throws IOException {
        for (String sentence : notices())
            for (KeyContext page : KeyContext.VIEWS)
                holdsWhole(
                        scene().withPages(ViewState.BAR.to(page)).withNotices(List.of(new Notice(sentence, false))),
                        sentence);
    }

    @Test
    void a_refusal_is_whole_in_the_largest_form() throws IOException {
        for (String sentence : refusals()) {
            List<TextField> fields = Collections.nCopies(11, new TextField("a field", 9, ".*", "anything", "x"));
            var form = new CommandForm(
                    "FORM", fields, "a note", texts -> new UiEffect.Send(COMMAND, "words", Optional.empty()));
            UiState state = scene();
            for (int i = 0; i < fields.size(); i++) form.press(Key.of(Key.Kind.ENTER, i), false, state);
            form.answered(COMMAND, Optional.of(sentence));
            holdsWholeInPanel(with(state, form), "! not taken: " + sentence);
        }
    }

    @Test
    void why_an_entry_stays_is_whole_in_a_small_form() throws IOException {
        Function<String, FormPanel> form = sentence -> new FormPanel(
                "FORM",
                new FormPanel.Layout(60, 6, 0, 3, 14, 24),
                List.of(new TextField("a field", 9, ".*", "anything", "x")),
                state -> new UiEffect.Stay(sentence));
        for (String sentence : notices()) {
            FormPanel panel = form.apply(sentence);
            panel.press(Key.of(Key.Kind.ENTER, 1), false, scene());
            holdsWholeInPanel(with(scene(), panel), "! " + sentence);
        }
    }

    @Test
    void why_nobody_is_signed_on_is_whole() throws IOException {
        for (String sentence : SourceSentences.of(SERVICE.resolve("access"), REFUSALS)) {
            SignOnPanel panel = SignOnPanel.of(scene(), "");
            panel.signOnRefused(sentence, 0, 1);
            holdsWholeInPanel(with(scene(), panel), "! " + sentence);
        }
    }

    @Test
    void why_there_is_no_link_is_whole_and_so_is_what_was_said_of_late() {
        String why = "the service does not know this day; open it with a plan of its own or name another day, such as"
                + " 2027-05-14";
        var lost = new LinkStatus(LinkStatus.State.LOST, 60, 3, why);
        holdsWhole(scene().withLink(lost), why);
        UiState told = scene().withLink(lost).withTold(List.of("NOT TAKEN  bowl 7a begun: " + why));
        holdsWholeInPanel(with(told, ReasonsPanel.of()), "NOT TAKEN bowl 7a begun: " + why);
    }

    @Test
    void a_refusal_is_to_be_seen_beside_a_panel_that_takes_its_row() {
        UiState state = scene().withNotices(List.of(new Notice("NOT TAKEN  bowl 7a begun: mix 8a next", true)));
        List<TextField> fields = Collections.nCopies(11, new TextField("a field", 9, ".*", "anything", "x"));
        var form = new CommandForm("FORM", fields, "a note", texts -> new UiEffect.Stay("no"));
        holdsWhole(with(state, form), "NOT TAKEN bowl 7a begun: mix 8a next Esc clears");
    }

    @Test
    void a_message_beside_a_panel_takes_the_rows_of_the_keys_and_covers_no_panel() {
        String sentence =
                "Bowl 7a was begun by Bohdan at 11:39. Mix bowl 8a next, or take the begin of bowl 7a back first"
                        + " and begin it here.";
        UiState state = scene().withNotices(List.of(new Notice(sentence, true)));
        UiState open = with(state, ReasonsPanel.of());
        holdsWhole(open, sentence);
        assertThat(ScreenView.draw(open, 80, 24, Glyphs.FULL).rows().subList(2, 21))
                .isEqualTo(ScreenView.draw(with(scene(), ReasonsPanel.of()), 80, 24, Glyphs.FULL)
                        .rows()
                        .subList(2, 21));
    }
}
