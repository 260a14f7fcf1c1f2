package stirtide.planner.admin;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.Channels;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.json.ContractJson;

/** Takes errands from a socket in the data folder. Each runs on a thread of its own; a few at once, no more. */
public final class AdminServer implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.errand");
    private static final String SOCKET = "errands";
    private static final int MOST_AT_ONCE = 4;
    private static final int MOST_BYTES = 8 * 1024;

    private final Path file;
    private final ServerSocketChannel server;
    private final Function<Errand, ErrandAnswer> desk;
    private final Semaphore free = new Semaphore(MOST_AT_ONCE);

    private AdminServer(Path file, ServerSocketChannel server, Function<Errand, ErrandAnswer> desk) {
        this.file = file;
        this.server = server;
        this.desk = desk;
    }

    /** Where the socket of a data folder is. */
    static Path socket(Path folder) {
        return folder.resolve(SOCKET);
    }

    /**
     * Opens the door of a data folder that this process holds.
     *
     * @throws IOException when the folder takes no socket, or its path is too long for one
     */
    public static AdminServer open(Path folder, Function<Errand, ErrandAnswer> desk) throws IOException {
        Path file = socket(folder);
        Files.deleteIfExists(file);
        ServerSocketChannel server = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
        try {
            server.bind(UnixDomainSocketAddress.of(file));
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        } catch (IOException | UnsupportedOperationException noSocket) {
            server.close();
            throw new IOException(String.valueOf(noSocket.getMessage()), noSocket);
        }
        AdminServer door = new AdminServer(file, server, desk);
        start(door::listen);
        return door;
    }

    private static void start(Runnable work) {
        Thread thread = new Thread(work, "errand");
        thread.setDaemon(true);
        thread.start();
    }

    private void listen() {
        while (server.isOpen()) {
            try {
                SocketChannel caller = server.accept();
                if (free.tryAcquire()) start(() -> serve(caller));
                else caller.close();
            } catch (IOException closed) {
                LOG.debug("no more errands: {}", closed.toString());
            }
        }
    }

    private void serve(SocketChannel caller) {
        try (caller) {
            byte[] asked = Channels.newInputStream(caller).readNBytes(MOST_BYTES);
            Errand errand = ContractJson.read(new String(asked, StandardCharsets.UTF_8), Errand.class);
            Channels.newOutputStream(caller)
                    .write(ContractJson.write(desk.apply(errand)).getBytes(StandardCharsets.UTF_8));
        } catch (IOException | RuntimeException failed) {
            LOG.warn("an errand was not carried out: {}", failed.getClass().getSimpleName());
        } finally {
            free.release();
        }
    }

    @Override
    public void close() {
        try {
            server.close();
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            LOG.debug("the next start removes it: {}", stays.toString());
        }
    }
}
