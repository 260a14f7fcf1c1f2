package stirtide.bar;

import java.io.IOException;
import java.io.PrintStream;
import java.util.Optional;
import stirtide.bar.cli.BarOptions;
import stirtide.bar.client.ResponseText;
import stirtide.bar.model.FollowedClock;
import stirtide.bar.model.LinkStatus;
import stirtide.bar.model.Operator;
import stirtide.bar.model.UiState;
import stirtide.bar.model.ViewState;
import stirtide.bar.views.ScreenView;
import stirtide.events.json.ContractJson;
import stirtide.events.view.DayView;

/** Prints one picture: no control characters but line ends. */
final class SnapshotPrinter {
    private SnapshotPrinter() {}

    static int print(BarOptions options, PrintStream out, PrintStream errors) throws InterruptedException {
        BarOptions.DaySource source = options.source();
        try {
            DayView view = source.client().view();
            boolean json = options.mode() == BarOptions.Mode.JSON;
            out.print(json ? ContractJson.write(view) + "\n" : picture(view, options));
            out.flush();
            return out.checkError() ? BarExitCode.TERMINAL_GONE : BarExitCode.OK;
        } catch (IOException noService) {
            errors.println("bar: no picture of " + source.day() + " from " + source.server() + ": "
                    + ResponseText.reason(noService));
            return BarExitCode.NO_SERVICE;
        }
    }

    static String picture(DayView view, BarOptions options) {
        BarOptions.Appearance appearance = options.appearance();
        int rate = view.clockRatePermille() == 0 ? 0 : FollowedClock.REAL;
        var state = UiState.of(
                Optional.of(view),
                new UiState.ClockReading(view.time(), 0, rate, false),
                new LinkStatus(LinkStatus.State.LIVE, 0, 0),
                new Operator(options.source().personId(), false));
        return ScreenView.text(ScreenView.draw(
                state.withPages(ViewState.BAR.to(appearance.view())),
                appearance.width(),
                appearance.height(),
                appearance.glyphs()));
    }
}
