package stirtide.planner.eventlog;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import stirtide.events.day.StoredEvent;

/**
 * The embedded log: one SQLite file held by one connection. After an append that failed the connection can no longer be
 * trusted (it may have rolled back on its own, or stored the events and reported a failure), so it is closed, opened
 * anew, and what the file then says decides the answer.
 */
public final class SqliteEventLog implements EventLog {
    private static final Logger LOG = LoggerFactory.getLogger("stirtide.log");

    /** Up to so many events the whole log is verified before it is used; that takes half a second at most. */
    private static final long VERIFIED_AT_ONCE = 20_000;

    private final LogFolder folder;
    private final HeadAnchor anchor;
    private final SqliteSession session;
    private volatile @Nullable String readOnly;

    private SqliteEventLog(LogFolder folder, HeadAnchor anchor, SqliteFile.Opening opening) {
        this.folder = folder;
        this.anchor = anchor;
        this.session = new SqliteSession(folder.file(), opening, () -> readOnly != null);
        session.hold(folder.lockFile());
    }

    /**
     * Takes the folder, opens the log in it and verifies the whole of it.
     *
     * @throws LogFailure IN_USE, NO_PLACE, UNAVAILABLE, or DAMAGED with every damage in the message
     */
    public static SqliteEventLog open(Path dataFolder) {
        return open(dataFolder, SqliteFile::open);
    }

    static SqliteEventLog open(Path dataFolder, SqliteFile.Opening opening) {
        return take(dataFolder, opening, log -> {
            List<Damage> damages = LogInspection.damages(log.folder, Long.MAX_VALUE);
            if (!damages.isEmpty())
                throw new LogFailure(LogFailure.Kind.DAMAGED, LogInspection.sentence(log.folder, damages));
        });
    }

    /**
     * The same for a service, which goes on as well as it can: a damaged log is open for reading only, see
     * {@link #readOnly}. Of a large log the heads, the commands and the note beside the file are verified here; its
     * events are held against their digests when they are read.
     *
     * @throws LogFailure IN_USE, NO_PLACE, UNAVAILABLE, or DAMAGED when nothing of it can be read, or when it is missing,
     *     empty or shortened beside the other files of a log; nothing is changed then
     */
    public static SqliteEventLog openToServe(Path dataFolder) {
        return take(dataFolder, SqliteFile::open, log -> {
            try {
                List<Damage> damages = LogInspection.damages(log.folder, VERIFIED_AT_ONCE);
                if (!damages.isEmpty()) log.standStill(LogInspection.sentence(log.folder, damages));
            } catch (LogFailure failed) {
                if (failed.kind() != LogFailure.Kind.DAMAGED) throw failed;
                log.standStill(String.valueOf(failed.getMessage()));
            }
        });
    }

    private static SqliteEventLog take(Path dataFolder, SqliteFile.Opening opening, Consumer<SqliteEventLog> judge) {
        LogFolder folder = LogFolder.take(dataFolder);
        SqliteEventLog log = null;
        try {
            LogRemains.requireWhole(folder);
            folder.prepareDriver();
            log = new SqliteEventLog(folder, new HeadAnchor(folder.anchor()), opening);
            judge.accept(log);
            log.anchor.takeUp(log.session.ask(SqliteStatements::heads), log.readOnly == null);
            return log;
        } catch (RuntimeException failed) {
            if (log == null) folder.close();
            else log.close();
            throw failed;
        }
    }

    /** What the file {@code anchor} beside the log could not tell any more when the log was opened, as a sentence. */
    public Optional<String> anchorLoss() {
        return anchor.loss();
    }

    /** From here on nothing is stored. The file is opened anew so that not even closing it changes it. */
    private void standStill(String why) {
        if (readOnly != null) return;
        readOnly = why;
        LOG.error("nothing is stored any more: {}", why);
        session.close();
    }

    /**
     * Looks whether the files that are open are still those in the folder. If not, nothing is stored from here on; the
     * connection stays as it is, for at the path may lie the log of another service.
     */
    @Override
    public void checkPlace() {
        if (readOnly != null) return;
        session.lost().ifPresent(file -> {
            String why =
                    file + " was moved, removed or replaced while it was in use; what was answered before is in the"
                            + " file that was moved, if there is one. Stop this service, put the folder back and start again";
            readOnly = why;
            LOG.error("nothing is stored any more: {}", why);
        });
    }

    @Override
    public Optional<String> readOnly() {
        return Optional.ofNullable(readOnly);
    }

    @Override
    public Append append(
            String day, long expectedRevision, String commandId, byte[] requestDigest, List<StoredEvent> events) {
        EventEncoder.requireContinues(day, expectedRevision, events);
        refuseWhenReadOnly();
        try {
            Append answer = session.statements().append(day, expectedRevision, commandId, requestDigest, events);
            // Between the look before and the end of the transaction it may have gone.
            refuseWhenReadOnly();
            if (answer instanceof Append.Appended && !events.isEmpty())
                anchor.note(day, session.statements().head(day));
            return answer;
        } catch (SQLException failed) {
            return afterFailure(failed, day, expectedRevision, commandId, events);
        }
    }

    private void refuseWhenReadOnly() {
        checkPlace();
        String why = readOnly;
        if (why != null) throw new LogFailure(LogFailure.Kind.READ_ONLY, why);
    }

    /** Opens the file anew and looks whether the events are in it. */
    private Append afterFailure(
            SQLException failed, String day, long expectedRevision, String commandId, List<StoredEvent> events) {
        refuseWhenReadOnly();
        session.close();
        if (SqliteFile.isLostSync(failed)) {
            // What is read now may come from memory, not from the disk: nothing it says can be answered upon.
            standStill("the disk failed to keep what was written to " + folder.file()
                    + "; whether the last command is stored shows after a restart, send it again then");
            refuseWhenReadOnly();
        }
        if (isStored(day, expectedRevision, commandId, events)) {
            return new Append.Appended(expectedRevision + 1, expectedRevision + events.size());
        }
        throw SqliteFile.translate(failed, folder.file());
    }

    private boolean isStored(String day, long expectedRevision, String commandId, List<StoredEvent> events) {
        if (!commandId.equals(NO_COMMAND)) return command(day, commandId).isPresent();
        List<StoredEvent> there = read(day, expectedRevision, READ_LIMIT);
        return there.size() >= events.size() && there.subList(0, events.size()).equals(events);
    }

    @Override
    public Optional<KnownCommand> command(String day, String commandId) {
        checkPlace();
        return session.ask(statements -> statements.command(day, commandId));
    }

    @Override
    public List<StoredEvent> read(String day, long after, int limit) {
        return page(day, after, limit).stream().map(EventEncoder::read).toList();
    }

    private List<byte[]> page(String day, long after, int limit) {
        SqliteStatements.Page page =
                session.ask(statements -> statements.page(day, after, Math.min(limit, READ_LIMIT)));
        page.damage().ifPresent(damage -> standStill(LogInspection.sentence(folder, List.of(damage))));
        return page.bodies();
    }

    @Override
    public List<String> days() {
        return session.ask(SqliteStatements::days);
    }

    @Override
    public long head(String day) {
        return session.ask(statements -> statements.head(day).revision());
    }

    @Override
    public String seal(String day) {
        return session.ask(statements -> statements.head(day)).seal();
    }

    @Override
    public SortedMap<String, String> seals() {
        SortedMap<String, String> seals = new TreeMap<>();
        session.ask(SqliteStatements::heads).forEach((day, head) -> seals.put(day, head.seal()));
        return seals;
    }

    @Override
    public void check(String day) {
        long revision = 0;
        List<byte[]> page = page(day, revision, READ_LIMIT);
        while (!page.isEmpty() && readOnly == null) {
            revision += page.size();
            page = page(day, revision, READ_LIMIT);
        }
    }

    @Override
    public List<Damage> verify() {
        AnchorNotes notes = folder.notes();
        return session.ask(statements -> new SqliteVerifier(statements.connection()).verify(notes));
    }

    @Override
    public void close() {
        session.close();
        try {
            anchor.close();
        } catch (IOException alreadyClosed) {
            LOG.debug("closing: {}", alreadyClosed.toString());
        }
        if (readOnly != null) folder.removeSharedMemory();
        folder.close();
    }

    /** Begins a copy of the log into a new file; {@link #copyOn} goes on with it. Refused when read only. */
    public LogBackup beginCopy(Path file) {
        refuseWhenReadOnly();
        return session.ask(statements -> new LogBackup(file, statements.connection()));
    }

    /** Copies some more between two appends; false when nothing is left to copy. */
    public boolean copyOn(LogBackup copy) {
        return session.ask(statements -> copy.copyOn(statements.connection()));
    }
}
