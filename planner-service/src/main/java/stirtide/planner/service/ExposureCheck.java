package stirtide.planner.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import stirtide.planner.access.AccessFailure;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Authenticator;
import stirtide.planner.http.HttpLimits;
import stirtide.planner.http.HttpSecurity;

/** Decides how far the service may be reached: beyond its own machine only encrypted and for people with tokens. */
final class ExposureCheck {
    private ExposureCheck() {}

    /**
     * The door for these settings.
     *
     * @throws StartFailure when the settings would let everybody on a network in
     */
    static HttpSecurity door(Settings settings) {
        boolean loopback = settings.host().equals(Settings.LOOPBACK);
        AccessFile file = new AccessFile(settings.data());
        if (!loopback) requireProtection(settings, file);
        settings.encryption().ifPresent(files -> {
            requireFile(files.certificate());
            requireFile(files.key());
        });
        HttpLimits limits = loopback ? HttpLimits.LOOPBACK : HttpLimits.NETWORK;
        try {
            return new HttpSecurity(new Authenticator(file, InstantSource.system()), limits, settings.encryption());
        } catch (AccessFailure unreadable) {
            throw new StartFailure(StartFailure.BAD_INPUT, String.valueOf(unreadable.getMessage()));
        }
    }

    private static void requireProtection(Settings settings, AccessFile file) {
        boolean tokens = file.read().letsAnybodyIn(InstantSource.system().instant());
        if (tokens && settings.encryption().isPresent()) return;
        throw new StartFailure(
                StartFailure.USAGE,
                "--host " + settings.host() + " is refused: without encryption and tokens everybody on the network"
                        + " could read and change the day. These two lines mend it:\n"
                        + "  planner-service/care token " + settings.data() + " add --role manager --name PERSON\n"
                        + "  planner-service/serve --data " + settings.data() + " --host " + settings.host()
                        + " --tls-certificate FILE --tls-key FILE");
    }

    private static void requireFile(Path file) {
        if (!Files.isReadable(file))
            throw new StartFailure(
                    StartFailure.BAD_INPUT, file + " cannot be read; a PEM file of certificate or key is accepted");
    }
}
