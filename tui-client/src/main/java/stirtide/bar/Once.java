package stirtide.bar;

import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import stirtide.bar.clock.SalonTime;
import stirtide.bar.link.ServiceApi;
import stirtide.bar.scene.LinkLine;
import stirtide.bar.scene.Operator;
import stirtide.bar.scene.Pages;
import stirtide.bar.scene.Picks;
import stirtide.bar.scene.Scene;
import stirtide.bar.view.BarView;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/** One picture, printed. Not one control character but line ends. */
final class Once {
    private Once() {}

    static int print(Options options, PrintStream out, PrintStream errors) throws InterruptedException {
        try {
            DayView view = new ServiceApi(options.server(), options.day(), options.credentials()).day();
            out.print(options.json() ? ContractJson.write(view) + "\n" : picture(view, options));
            out.flush();
            return out.checkError() ? ExitCode.TERMINAL_GONE : ExitCode.OK;
        } catch (IOException noService) {
            errors.println("bar: no picture of " + options.day() + " from " + options.server() + ": "
                    + ServiceApi.reason(noService));
            return ExitCode.NO_SERVICE;
        }
    }

    static String picture(DayView view, Options options) {
        var scene = new Scene(
                Optional.of(view),
                view.time(),
                0,
                view.clockRatePermille() == 0 ? 0 : SalonTime.REAL,
                false,
                new LinkLine(LinkLine.State.LIVE, 0, 0),
                new Operator(options.personId(), false),
                Picks.FIRST,
                Optional.empty(),
                List.of());
        return BarView.text(BarView.draw(
                scene.with(Pages.BAR.to(options.view())), options.width(), options.height(), options.glyphs()));
    }
}
