package stirtide.bar;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.input.DefaultKeyDecodingProfile;
import com.googlecode.lanterna.input.InputDecoder;
import com.googlecode.lanterna.input.KeyStroke;
import com.googlecode.lanterna.input.KeyType;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import stirtide.bar.cli.BarOptions;
import stirtide.bar.cli.OptionsReader;
import stirtide.bar.link.StateFolder;
import stirtide.bar.terminal.KeyReader;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/**
 * Runs the program once without a terminal and a service, so that the JVM can record the classes a start needs in a class
 * data archive.
 */
public final class StartupTraining {
    private static final String OWN_CLASSES = "stirtide/";
    private static final String CLASS = ".class";
    private static final List<String> NEEDED_ON_A_TERMINAL = List.of("java.io.Console", "sun.misc.Signal");
    private static final String KEYS = "4321qy";
    private static final long PAUSE_NANOS = 300_000_000;
    private static final String DAY = "larch-lane/2027-05-14";

    private StartupTraining() {}

    /** Runs once and ends. */
    public static void main(String[] arguments) throws Exception {
        loadOwnClasses();
        for (String name : NEEDED_ON_A_TERMINAL) Class.forName(name);
        decodeKeys();
        // The terminal is asked for its settings by a program of its own.
        new ProcessBuilder("true")
                .redirectInput(ProcessBuilder.Redirect.PIPE)
                .start()
                .waitFor();
        Path state = Files.createTempDirectory("stirtide-training");
        try {
            run(state);
        } finally {
            delete(state);
        }
    }

    private static void run(Path state) throws IOException, InterruptedException {
        new StateFolder(state, DAY).remember(day());
        var words = List.of("--day", DAY, "--server", "http://127.0.0.1:1", "--state", state.toString());
        if (!(OptionsReader.read(words, Map.of("TERM", "xterm-256color"), ".")
                instanceof OptionsReader.Answer.Understood understood)) throw new IOException("unreadable options");
        for (TerminalSize size : List.of(new TerminalSize(120, 36), new TerminalSize(80, 24)))
            run(understood.options(), size);
    }

    /** Opens every view, then leaves. */
    private static void run(BarOptions options, TerminalSize size) throws InterruptedException {
        var terminal = new TypedTerminal(size);
        int code = new TerminalApp(options, System.err, () -> terminal).run();
        if (code != BarExitCode.OK) throw new IllegalStateException("the training run ended with " + code);
    }

    /**
     * A terminal on which the same keys are typed again and again. The library's own holds the lock that drawing needs while
     * it waits for a key.
     */
    private static final class TypedTerminal extends DefaultVirtualTerminal {
        private int typed;

        TypedTerminal(TerminalSize size) {
            super(size);
        }

        /** Keys that come faster than fingers type are taken for those of a scale. */
        @Override
        public KeyStroke readInput() {
            LockSupport.parkNanos(PAUSE_NANOS);
            return new KeyStroke(KEYS.charAt(typed++ % KEYS.length()), false, false);
        }
    }

    // Classes in a folder instead of a jar cannot be archived.
    private static void loadOwnClasses() throws IOException, URISyntaxException, ClassNotFoundException {
        var source = StartupTraining.class.getProtectionDomain().getCodeSource();
        if (source == null || !source.getLocation().getPath().endsWith(".jar")) return;
        try (var jar = new JarFile(new File(source.getLocation().toURI()))) {
            List<String> names = jar.stream().map(JarEntry::getName).toList();
            for (String name : names) {
                if (!name.startsWith(OWN_CLASSES) || !name.endsWith(CLASS) || name.endsWith("package-info.class"))
                    continue;
                Class.forName(name.substring(0, name.length() - CLASS.length()).replace('/', '.'));
            }
        }
    }

    private static void decodeKeys() throws IOException {
        var typed = new InputDecoder(new InputStreamReader(
                new ByteArrayInputStream("m\t\033[A\r".getBytes(StandardCharsets.US_ASCII)), StandardCharsets.UTF_8));
        typed.addProfile(new DefaultKeyDecodingProfile());
        typed.addProfile(KeyReader.profile());
        // Ends: the stream does.
        for (var stroke = typed.getNextCharacter(true); stroke.getKeyType() != KeyType.EOF; )
            stroke = typed.getNextCharacter(true);
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted((one, other) -> other.compareTo(one)).toList()) Files.delete(file);
        }
    }

    /** The day that is shown: invented and busy. */
    static DayView day() throws IOException {
        try (InputStream sample = StartupTraining.class.getResourceAsStream("startup-training.json")) {
            if (sample == null) throw new IOException("startup-training.json is missing from the program");
            return ContractJson.read(new String(sample.readAllBytes(), StandardCharsets.UTF_8), DayView.class);
        }
    }
}
