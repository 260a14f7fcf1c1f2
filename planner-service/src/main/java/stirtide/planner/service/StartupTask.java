package stirtide.planner.service;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;

/** A part of a start that goes on beside the others, on a thread that ends with it. */
final class StartupTask {
    private StartupTask() {}

    /** Begins with it; what it throws is what the answer fails with. */
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
