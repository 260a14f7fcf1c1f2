package stirtide.planner.http;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Gate;

/** Doors for tests. */
final class Doors {
    private Doors() {}

    /** Nobody was given a token. */
    static Door open() {
        return with(Path.of("target/no-such-folder"), Limits.LOOPBACK);
    }

    static Door with(Path folder, Limits limits) {
        return new Door(new Gate(new AccessFile(folder), InstantSource.system()), limits, Optional.empty());
    }
}
