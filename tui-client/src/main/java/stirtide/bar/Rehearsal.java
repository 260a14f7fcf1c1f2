package stirtide.bar;

import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import stirtide.bar.desk.Aside;
import stirtide.bar.desk.Desk;
import stirtide.bar.frame.Glyphs;
import stirtide.bar.link.LinkNews;
import stirtide.bar.link.Outgoing;
import stirtide.bar.link.ServiceApi;
import stirtide.bar.scene.Advice;
import stirtide.bar.scene.Operator;
import stirtide.bar.scene.PastDay;
import stirtide.bar.terminal.ColorDepth;
import stirtide.bar.terminal.Painter;
import stirtide.bar.terminal.Theme;
import stirtide.bar.view.BarView;
import stirtide.events.command.DayCommand;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/** Does once, without a terminal or a service, what a start does, so that its classes can be kept for quick starts. */
public final class Rehearsal {
    private static final List<String> NEEDS_A_TERMINAL = List.of(
            "BarApp",
            "terminal.BarTerminal",
            "terminal.FrameBuffer",
            "terminal.KeyReader",
            "terminal.ReportPatterns",
            "link.ServiceLink",
            "link.LiveLine",
            "link.Sender",
            "link.Outbox",
            "link.Home",
            "link.Backoff");

    private Rehearsal() {}

    /** Runs once and ends. */
    public static void main(String[] arguments) throws IOException, ReflectiveOperationException, InterruptedException {
        for (String name : NEEDS_A_TERMINAL) Class.forName("stirtide.bar." + name);
        Options.read(List.of("--day", "a/2027-01-01"), Map.of(), ".");
        var nobody = new Nobody();
        var desk = new Desk(new Operator("", false), nobody, nobody, 0);
        desk.hear(new LinkNews.Seen(day()), 0);
        var screen = new TerminalScreen(new DefaultVirtualTerminal(new TerminalSize(120, 36)));
        screen.startScreen();
        var painter = new Painter(screen, Theme.DARK, ColorDepth.FULL);
        painter.paint(BarView.draw(desk.scene(1), 120, 36, Glyphs.FULL), true);
        painter.paint(BarView.draw(desk.scene(2), 80, 24, Glyphs.FULL), true);
        try {
            new ServiceApi(URI.create("http://127.0.0.1:1"), "a/2027-01-01").day();
        } catch (IOException nobodyThere) {
            System.out.println("rehearsed without a service: " + nobodyThere.getMessage());
        }
    }

    /** The day that is drawn: invented, busy, never shown to anybody. */
    static DayView day() throws IOException {
        try (InputStream sample = Rehearsal.class.getResourceAsStream("rehearsal.json")) {
            if (sample == null) throw new IOException("rehearsal.json is missing from the program");
            return ContractJson.read(new String(sample.readAllBytes(), StandardCharsets.UTF_8), DayView.class);
        }
    }

    /** Sends nothing. */
    private static final class Nobody implements Outgoing, Aside {
        @Override
        public void send(DayCommand command, String words) {
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
        public void ask(Advice advice) {
            // As above.
        }

        @Override
        public void askPast() {
            // As above.
        }

        @Override
        public String export(DayView view, List<PastDay> past) {
            return "";
        }

        @Override
        public String copy(String text) {
            return "";
        }
    }
}
