package stirtide.bar;

import java.io.IOException;
import java.io.PrintStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import stirtide.bar.cli.BarOptions;
import stirtide.bar.client.DayClient;
import stirtide.bar.link.LinkEvent;
import stirtide.bar.link.ServiceLink;
import stirtide.bar.link.StateFolder;
import stirtide.bar.report.PlainTextReport;

/** Prints the day line by line, until it is stopped or its output is closed. */
final class PlainTextMode {
    private PlainTextMode() {}

    @SuppressWarnings("try") // the link stays open for its events and is never called
    static int run(BarOptions options, PrintStream out, PrintStream errors) throws InterruptedException {
        BlockingQueue<LinkEvent> events = new LinkedBlockingQueue<>();
        BarOptions.DaySource source = options.source();
        DayClient day = source.client();
        var folder = new StateFolder(options.state(), source.day());
        try (var link = ServiceLink.start(day, folder, source.personId(), events::add)) {
            var lines = new PlainTextReport();
            boolean cut = false;
            while (!out.checkError()) {
                LinkEvent next = events.take();
                if (next instanceof LinkEvent.Cut lost && !cut) {
                    cut = true;
                    out.println("no link: " + lost.why());
                } else if (next instanceof LinkEvent.Seen seen) {
                    if (cut) out.println("the link is back");
                    cut = false;
                    lines.lines(seen.view()).forEach(out::println);
                }
            }
            return BarExitCode.TERMINAL_GONE;
        } catch (IOException noPlace) {
            errors.println("bar: " + options.state() + " cannot be written: " + noPlace.getMessage());
            return BarExitCode.INTERNAL;
        }
    }
}
