package stirtide.planner.admin;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.Channels;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import stirtide.events.json.ContractJson;

/** Asks a running service. */
public final class AdminClient {
    private AdminClient() {}

    /**
     * Asks the service that runs on a data folder; empty when none runs there.
     *
     * @throws IOException when it is there and does not answer
     */
    public static Optional<ErrandAnswer> ask(Path folder, Errand errand) throws IOException {
        Path file = AdminServer.socket(folder.toAbsolutePath());
        if (!Files.exists(file)) return Optional.empty();
        try (SocketChannel service = SocketChannel.open(StandardProtocolFamily.UNIX)) {
            if (!connected(service, file)) return Optional.empty();
            Channels.newOutputStream(service).write(ContractJson.write(errand).getBytes(StandardCharsets.UTF_8));
            service.shutdownOutput();
            byte[] answer = Channels.newInputStream(service).readAllBytes();
            if (answer.length == 0) throw new IOException("the running service does not answer; try again");
            return Optional.of(ContractJson.read(new String(answer, StandardCharsets.UTF_8), ErrandAnswer.class));
        }
    }

    /** A service that was killed leaves its socket behind. */
    private static boolean connected(SocketChannel service, Path file) {
        try {
            return service.connect(UnixDomainSocketAddress.of(file));
        } catch (IOException nobodyThere) {
            return false;
        }
    }
}
