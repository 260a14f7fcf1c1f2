package stirtide.bar.controller;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stirtide.bar.Samples;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.keys.Key;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Operator;
import stirtide.bar.model.Overlay;
import stirtide.bar.model.UiState;
import stirtide.bar.views.ScreenView;
import stirtide.events.command.DayCommand;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

/** A controller with somebody at it: presses keys at the pace of fingers and remembers what was sent. */
public final class ControllerFixture implements ServiceGateway, LocalServices {
    private static final long FINGER_NANOS = 400_000_000L;

    final List<DayCommand> sent = new ArrayList<>();
    final List<String> asked = new ArrayList<>();
    final List<Integer> rates = new ArrayList<>();
    final List<String> copied = new ArrayList<>();
    final List<Inquiry.Ask> tried = new ArrayList<>();
    final List<String> signOns = new ArrayList<>();
    final List<String> signOffs = new ArrayList<>();
    int pastAsked;
    int setupAsked;
    final BarController controller;
    long nanos;

    ControllerFixture(Operator operator) {
        controller = new BarController(operator, this, 0);
        controller.connect(this);
    }

    public static ControllerFixture with(DayView view) {
        var bench = new ControllerFixture(Samples.TAMSIN);
        bench.hear(new LinkEvent.Seen(view));
        return bench;
    }

    @Override
    public void send(String personId, DayCommand command, String words) {
        sent.add(command);
    }

    @Override
    public void askNextPour(String bowl, String poured) {
        asked.add(bowl + " " + poured);
    }

    @Override
    public void setClockRate(int ratePermille) {
        rates.add(ratePermille);
    }

    @Override
    public void ask(Inquiry advice) {
        tried.add(advice.ask());
    }

    @Override
    public void askPast() {
        pastAsked++;
    }

    @Override
    public String export(DayView view, List<DayOverMix> past) {
        return "written: " + view.date();
    }

    @Override
    public String writeFiles(SetupView setup) {
        return "written: " + setup.files().size() + " files";
    }

    @Override
    public void askSetup() {
        setupAsked++;
    }

    @Override
    public void signOn(String personId, String code) {
        signOns.add(personId + " " + code);
    }

    @Override
    public void signOff(String why) {
        signOffs.add(why);
    }

    @Override
    public String copy(String text) {
        copied.add(text);
        return "copied: " + text;
    }

    public ControllerFixture hear(LinkEvent news) {
        controller.hear(news, nanos);
        return this;
    }

    public ControllerFixture type(String text) {
        for (char letter : text.toCharArray()) press(Key.of(letter, nanos += FINGER_NANOS));
        return this;
    }

    ControllerFixture press(Key.Kind kind) {
        return press(Key.of(kind, nanos += FINGER_NANOS));
    }

    ControllerFixture press(Key key) {
        nanos = Math.max(nanos, key.nanos());
        controller.press(key);
        return this;
    }

    /** Keys 100 microseconds apart, as a scale or a paste without marks sends them. */
    ControllerFixture burst(String text) {
        nanos += FINGER_NANOS;
        for (char letter : text.toCharArray()) {
            nanos += 100_000;
            boolean enter = letter == '\r' || letter == '\n';
            controller.press(enter ? Key.of(Key.Kind.ENTER, nanos) : Key.of(letter, nanos));
        }
        return this;
    }

    ControllerFixture pass(int seconds) {
        nanos += seconds * 1_000_000_000L;
        controller.tick(nanos);
        return this;
    }

    public UiState scene() {
        return controller.state(nanos);
    }

    Optional<Overlay> panel() {
        return scene().panel();
    }

    String title() {
        return panel().map(Overlay::title).orElse("");
    }

    /** What a screen of 120 by 40 shows, row by row. */
    String picture() {
        return String.join("\n", ScreenView.draw(scene(), 120, 40, Glyphs.FULL).rows());
    }

    String notice() {
        var notices = scene().notices();
        return notices.isEmpty() ? "" : notices.get(notices.size() - 1).words();
    }
}
