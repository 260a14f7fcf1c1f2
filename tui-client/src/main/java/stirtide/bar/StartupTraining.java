package stirtide.bar;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.controller.BarController;
import stirtide.bar.controller.LocalServices;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.link.DayClient;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceGateway;
import stirtide.bar.model.DayOverMix;
import stirtide.bar.model.Inquiry;
import stirtide.bar.model.Operator;
import stirtide.bar.terminal.CanvasPainter;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.KeyReader;
import stirtide.bar.terminal.Theme;
import stirtide.bar.views.ScreenView;
import stirtide.events.command.DayCommand;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;
import stirtide.events.view.SetupView;

/** Does once, without a terminal or a service, what a start does, so that its classes can be kept for quick starts. */
public final class StartupTraining {
    private static final String OURS = "stirtide/";
    private static final String CLASS = ".class";
    private static final List<String> NEEDS_A_TERMINAL = List.of("java.io.Console", "sun.misc.Signal");

    private StartupTraining() {}

    /** Runs once and ends. */
    public static void main(String[] arguments) throws Exception {
        loadOurs();
        for (String name : NEEDS_A_TERMINAL) Class.forName(name);
        BarOptions.read(List.of("--day", "a/2027-01-01", "--theme", "dark"), System.getenv(), ".");
        readKeys();
        // The terminal is asked for its settings by a program of its own.
        new ProcessBuilder("true")
                .redirectInput(ProcessBuilder.Redirect.PIPE)
                .start()
                .waitFor();
        draw();
        try {
            new DayClient(URI.create("http://127.0.0.1:1"), "a/2027-01-01").day();
        } catch (IOException nobodyThere) {
            System.out.println("rehearsed without a service: " + nobodyThere.getMessage());
        }
    }

    // Started from a folder of classes there is no jar to look into, and no archive to make either.
    private static void loadOurs() throws IOException, URISyntaxException, ClassNotFoundException {
        var source = StartupTraining.class.getProtectionDomain().getCodeSource();
        if (source == null || !source.getLocation().getPath().endsWith(".jar")) return;
        try (var jar = new JarFile(new File(source.getLocation().toURI()))) {
            List<String> names = jar.stream().map(JarEntry::getName).toList();
            for (String name : names) {
                if (!name.startsWith(OURS) || !name.endsWith(CLASS) || name.endsWith("package-info.class")) continue;
                Class.forName(name.substring(0, name.length() - CLASS.length()).replace('/', '.'));
            }
        }
    }

    private static void readKeys() throws IOException {
        var typed = new InputDecoder(new InputStreamReader(
                new ByteArrayInputStream("m\t\033[A\r".getBytes(StandardCharsets.US_ASCII)), StandardCharsets.UTF_8));
        typed.addProfile(new DefaultKeyDecodingProfile());
        typed.addProfile(KeyReader.profile());
        // Ends: the stream does.
        for (var stroke = typed.getNextCharacter(true); stroke.getKeyType() != KeyType.EOF; )
            stroke = typed.getNextCharacter(true);
    }

    private static void draw() throws IOException {
        var nobody = new Nobody();
        var desk = new BarController(new Operator("", false), nobody, nobody, 0);
        var screen = new TerminalScreen(new DefaultVirtualTerminal(new TerminalSize(120, 36)));
        screen.startScreen();
        var painter = new CanvasPainter(screen.getTerminal(), Theme.DARK, ColorDepth.TABLE);
        painter.paint(ScreenView.draw(desk.state(0), 120, 36, Glyphs.FULL), true);
        desk.hear(new LinkEvent.Remembered(day()), 0);
        desk.hear(new LinkEvent.Seen(day()), 0);
        for (KeyContext page : List.of(KeyContext.BAR, KeyContext.FLOOR, KeyContext.DAY)) {
            desk.open(page, false);
            painter.paint(ScreenView.draw(desk.state(1), 120, 36, Glyphs.FULL), true);
            painter.paint(ScreenView.draw(desk.state(2), 80, 24, Glyphs.FULL), true);
        }
    }

    /** The day that is drawn: invented, busy, never shown to anybody. */
    static DayView day() throws IOException {
        try (InputStream sample = StartupTraining.class.getResourceAsStream("rehearsal.json")) {
            if (sample == null) throw new IOException("rehearsal.json is missing from the program");
            return ContractJson.read(new String(sample.readAllBytes(), StandardCharsets.UTF_8), DayView.class);
        }
    }

    /** Sends nothing. */
    private static final class Nobody implements ServiceGateway, LocalServices {
        @Override
        public void send(String personId, DayCommand command, String words) {
            // Nobody listens in a rehearsal.
        }

        @Override
        public void setClockRate(int ratePermille) {
            // As above.
        }

        @Override
        public void askNextPour(String bowl, String poured) {
            // As above.
        }

        @Override
        public void ask(Inquiry advice) {
            // As above.
        }

        @Override
        public void askPast() {
            // As above.
        }

        @Override
        public String export(DayView view, List<DayOverMix> past) {
            return "";
        }

        @Override
        public String writeFiles(SetupView setup) {
            return "";
        }

        @Override
        public String copy(String text) {
            return "";
        }
    }
}
