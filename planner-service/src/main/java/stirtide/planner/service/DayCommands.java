package stirtide.planner.service;

import io.vertx.core.Future;
import java.util.Optional;
import stirtide.events.command.CommandRequest;
import stirtide.events.command.DayCommand.OpenDay;
import stirtide.planner.http.DayOperations.CommandAnswer;

/** Takes commands to their days: loads the day, and keeps the day in memory until it is done. */
record DayCommands(DayRegistry days, OpeningHistory history, CommandRunner runner) {
    Future<CommandAnswer> run(String day, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        if (!(request.command() instanceof OpenDay open)) return runLoaded(day, request, ifMatch, role);
        // The newest day before it teaches it and must stay in memory until it is open.
        Optional<String> newest = history.newestBefore(open);
        return newest.map(days::load)
                .orElse(Future.succeededFuture())
                .recover(unreadable -> Future.succeededFuture())
                .compose(read -> {
                    Runnable release = newest.flatMap(days::opened)
                            .map(before -> before.actor().follow(() -> {}))
                            .orElse(() -> {});
                    return runLoaded(day, request, ifMatch, role).onComplete(done -> {
                        release.run();
                        days.evictPassed();
                    });
                });
    }

    private Future<CommandAnswer> runLoaded(
            String name, CommandRequest request, Optional<Long> ifMatch, Optional<String> role) {
        return days.load(name).compose(read -> {
            if (days.find(name).isEmpty() && !(request.command() instanceof OpenDay))
                return Future.succeededFuture(new CommandAnswer.UnknownDay());
            LoadedDay day = days.findOrCreate(name);
            Runnable release = day.actor().follow(() -> {});
            return runner.run(day.actor(), request, ifMatch, role).onComplete(done -> {
                release.run();
                days.dropUnopened(name, day);
            });
        });
    }
}
