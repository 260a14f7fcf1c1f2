package stirtide.bar.cli;

import java.net.URI;
import java.nio.file.Path;
import java.util.Optional;
import stirtide.bar.canvas.Glyphs;
import stirtide.bar.client.Credentials;
import stirtide.bar.client.DayClient;
import stirtide.bar.client.ServiceClient;
import stirtide.bar.keys.KeyContext;
import stirtide.bar.scale.ScaleInput;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.Theme;

/**
 * What the command line asks for.
 *
 * @param mode what the program does
 * @param source the day, the service it is at, and who works at the terminal
 * @param appearance how the picture looks
 * @param readOnly whether keys that change the day are taken away
 * @param kiosk whether the keys that leave are taken away
 * @param bell whether a new alarm rings the terminal's bell
 * @param idleMinutes minutes without a key after which who signed on is signed off, 0 for never
 * @param scale scale to read, empty for none
 * @param reports folder the day is written to on demand
 * @param state folder for entries on their way and the last view
 */
public record BarOptions(
        Mode mode,
        DaySource source,
        Appearance appearance,
        boolean readOnly,
        boolean kiosk,
        boolean bell,
        int idleMinutes,
        Optional<ScaleInput.Wanted> scale,
        Path reports,
        Path state) {
    /** Where a service listens that was started without an address. */
    public static final String DEFAULT_SERVER = "http://127.0.0.1:7464";

    /** What the program does. */
    public enum Mode {
        /** Shows the day live. */
        LIVE,
        /** Opens a salon's first day, then shows it live. */
        BEGIN,
        /** Prints one picture. */
        ONCE,
        /** Prints the day as JSON. */
        JSON,
        /** Prints lines one after the other. */
        PLAIN
    }

    /**
     * Where the day comes from.
     *
     * @param server address of the service
     * @param day salon id and date, empty text while none is opened
     * @param personId who works at the terminal, empty text for no person
     * @param credentials token and certificates for a service that asks who the terminal is
     */
    public record DaySource(URI server, String day, String personId, Credentials credentials) {
        /** A new client of the day. */
        public DayClient client() {
            return new DayClient(new ServiceClient(server, credentials), day);
        }
    }

    /**
     * How the picture looks.
     *
     * @param depth number of colors
     * @param theme colors
     * @param glyphs characters
     * @param synchronizedOutput whether frames are marked for terminals that know such marks
     * @param view view that is shown first
     * @param width columns of a printed picture
     * @param height rows of a printed picture
     */
    public record Appearance(
            ColorDepth depth,
            Theme theme,
            Glyphs glyphs,
            boolean synchronizedOutput,
            KeyContext view,
            int width,
            int height) {
        Appearance showing(KeyContext first) {
            return new Appearance(depth, theme, glyphs, synchronizedOutput, first, width, height);
        }
    }

    /** The same for a day that was just opened, with its setup shown first. */
    public BarOptions on(String openedDay, String whoIsHere) {
        var opened = new DaySource(source.server(), openedDay, whoIsHere, source.credentials());
        Appearance onSetup = appearance.showing(KeyContext.SETUP);
        return new BarOptions(Mode.LIVE, opened, onSetup, readOnly, kiosk, bell, idleMinutes, scale, reports, state);
    }
}
