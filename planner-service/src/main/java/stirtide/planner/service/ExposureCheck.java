package stirtide.planner.service;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import stirtide.planner.access.AccessFailure;
import stirtide.planner.access.AccessFile;
import stirtide.planner.access.Authenticator;
import stirtide.planner.cli.CommandException;
import stirtide.planner.http.HttpLimits;
import stirtide.planner.http.HttpSecurity;

/** Decides from where the service may be reached: from other machines only with encryption and tokens. */
final class ExposureCheck {
    private ExposureCheck() {}

    /**
     * Authentication, limits and encryption for these settings.
     *
     * @throws CommandException when the settings would let everybody on a network in, or the access files are lost
     */
    static HttpSecurity security(Settings settings) {
        boolean loopback = settings.host().equals(Settings.LOOPBACK);
        AccessFile file = new AccessFile(settings.data());
        settings.encryption().ifPresent(files -> {
            requireFile(files.certificate());
            requireFile(files.key());
        });
        HttpLimits limits = loopback ? HttpLimits.LOOPBACK : HttpLimits.NETWORK;
        try {
            if (!loopback) requireProtection(settings, file);
            return new HttpSecurity(new Authenticator(file, InstantSource.system()), limits, settings.encryption());
        } catch (AccessFailure unreadable) {
            throw new CommandException(CommandException.LOG_BROKEN, String.valueOf(unreadable.getMessage()));
        }
    }

    private static void requireProtection(Settings settings, AccessFile file) {
        boolean tokens = file.read().hasValidToken(InstantSource.system().instant());
        if (tokens && settings.encryption().isPresent()) return;
        throw new CommandException(
                CommandException.USAGE,
                "--host " + settings.host() + " is refused: without encryption and tokens everybody on the network"
                        + " could read and change the day. These two lines mend it:\n"
                        + "  planner-service/care token " + settings.data() + " add --role manager --name PERSON\n"
                        + "  planner-service/serve --data " + settings.data() + " --host " + settings.host()
                        + " --tls-certificate FILE --tls-key FILE");
    }

    private static void requireFile(Path file) {
        if (!Files.isReadable(file))
            throw new CommandException(
                    CommandException.BAD_INPUT, file + " cannot be read; a PEM file of certificate or key is accepted");
    }
}
