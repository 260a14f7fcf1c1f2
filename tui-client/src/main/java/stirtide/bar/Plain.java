package stirtide.bar;

import java.io.IOException;
import java.io.PrintStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import stirtide.bar.link.Home;
import stirtide.bar.link.LinkNews;
import stirtide.bar.link.ServiceApi;
import stirtide.bar.link.ServiceLink;
import stirtide.bar.plain.PlainLines;

/** Follows the day in lines one after the other, until it is stopped or nobody reads any more. */
final class Plain {
    private Plain() {}

    @SuppressWarnings("try") // the link is held open for its news, never called
    static int run(Options options, PrintStream out, PrintStream errors) throws InterruptedException {
        BlockingQueue<LinkNews> news = new LinkedBlockingQueue<>();
        var api = new ServiceApi(options.server(), options.day(), options.credentials());
        var home = new Home(options.state(), options.day());
        try (var link = ServiceLink.start(api, home, options.personId(), news::add)) {
            var lines = new PlainLines();
            boolean cut = false;
            while (!out.checkError()) {
                LinkNews next = news.take();
                if (next instanceof LinkNews.Cut lost && !cut) {
                    cut = true;
                    out.println("no link: " + lost.why());
                } else if (next instanceof LinkNews.Seen seen) {
                    if (cut) out.println("the link is back");
                    cut = false;
                    lines.told(seen.view()).forEach(out::println);
                }
            }
            return ExitCode.TERMINAL_GONE;
        } catch (IOException noPlace) {
            errors.println("bar: " + options.state() + " cannot be written: " + noPlace.getMessage());
            return ExitCode.INTERNAL;
        }
    }
}
