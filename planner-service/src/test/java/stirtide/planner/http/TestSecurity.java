package stirtide.planner.http;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Authenticator;

/** Doors for tests. */
final class TestSecurity {
    private TestSecurity() {}

    /** Nobody was given a token. */
    static HttpSecurity open() {
        return with(Path.of("target/no-such-folder"), HttpLimits.LOOPBACK);
    }

    static HttpSecurity with(Path folder, HttpLimits limits) {
        return new HttpSecurity(
                new Authenticator(new AccessFile(folder), InstantSource.system()), limits, Optional.empty());
    }
}
