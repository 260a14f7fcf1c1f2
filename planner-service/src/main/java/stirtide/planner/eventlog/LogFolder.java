package stirtide.planner.eventlog;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** The folder of a log, held by one process: the file {@code lock} in it stays locked until {@link #close()}. */
final class LogFolder implements AutoCloseable {
    /** File systems that do not keep locks and write order well enough for a log. */
    private static final Set<String> NETWORK =
            Set.of("nfs", "nfs3", "nfs4", "cifs", "smb", "smbfs", "smb2", "smb3", "afs", "fuse.sshfs", "webdav");

    private static final String LOCK = "lock";
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.log");

    private final Path folder;
    private final FileChannel lock;

    private LogFolder(Path folder, FileChannel lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /**
     * Makes the folder if it is not there and takes it.
     *
     * @throws LogFailure NO_PLACE when it cannot be written or lies on a network file system, IN_USE when taken
     */
    static LogFolder take(Path folder) {
        try {
            Files.createDirectories(folder);
            requireLocal(folder);
            FileChannel channel =
                    FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (tryLock(channel) == null) {
                channel.close();
                throw new LogFailure(
                        LogFailure.Kind.IN_USE,
                        "another process has the log in " + folder
                                + "; stop it first, or give this one a data folder of its own");
            }
            return new LogFolder(folder, channel);
        } catch (IOException unwritable) {
            throw new LogFailure(
                    LogFailure.Kind.NO_PLACE,
                    "the data folder " + folder + " cannot be made or written (" + reason(unwritable)
                            + "); name a folder this user may write to",
                    unwritable);
        }
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException heldByThisProcess) {
            return null;
        }
    }

    private static void requireLocal(Path folder) throws IOException {
        String type = Files.getFileStore(folder).type();
        if (NETWORK.contains(type)) {
            throw new LogFailure(
                    LogFailure.Kind.NO_PLACE,
                    "the data folder " + folder + " lies on a network file system (" + type
                            + "); name a folder on a disk of this machine");
        }
    }

    /** Class name and message: a message alone is often only the path. */
    private static String reason(IOException failed) {
        return failed.getClass().getSimpleName() + ": " + failed.getMessage();
    }

    /** File that is locked as long as the folder is held. */
    Path lockFile() {
        return folder.resolve(LOCK);
    }

    /** The log file. */
    Path file() {
        return folder.resolve("log.db");
    }

    /** File that repeats the digests of all days' newest events outside the log file. */
    Path anchor() {
        return folder.resolve("anchor");
    }

    /** The notes in that file. */
    AnchorNotes notes() {
        try {
            return AnchorNotes.read(anchor());
        } catch (IOException unreadable) {
            throw new LogFailure(LogFailure.Kind.UNAVAILABLE, "cannot read " + anchor(), unreadable);
        }
    }

    /** Removes what a connection that only reads leaves behind; to be called when there is none. */
    void removeSharedMemory() {
        try {
            Files.deleteIfExists(folder.resolve("log.db-shm"));
        } catch (IOException stays) {
            LOG.debug("harmless, the next to open it makes it anew: {}", stays.toString());
        }
    }

    /** Gives the driver a place for its native library, which would otherwise pile up in the machine's folder. */
    void prepareDriver() {
        Path nativeFolder = folder.resolve("native");
        try {
            DriverLibrary.keepIn(nativeFolder);
        } catch (IOException unwritable) {
            throw new LogFailure(
                    LogFailure.Kind.NO_PLACE,
                    "cannot write in " + nativeFolder + ": " + reason(unwritable),
                    unwritable);
        }
    }

    @Override
    public void close() {
        try {
            lock.close();
        } catch (IOException stillHeld) {
            throw new UncheckedIOException(stillHeld);
        }
    }
}
