package stirtide.planner.service;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;

/** A part of the start that runs beside the others, on a thread of its own. */
final class StartupTask {
    private StartupTask() {}

    /** Starts it; the answer fails with what it throws. */
    static <T> CompletableFuture<T> begin(String name, Callable<T> work) {
        CompletableFuture<T> done = new CompletableFuture<>();
        Thread thread = new Thread(
                () -> {
                    try {
                        done.complete(work.call());
                    } catch (Exception | LinkageError failed) {
                        done.completeExceptionally(failed);
                    }
                },
                name);
        thread.setDaemon(true);
        thread.start();
        return done;
    }
}
