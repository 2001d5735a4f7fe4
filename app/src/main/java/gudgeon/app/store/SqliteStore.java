package gudgeon.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import gudgeon.app.format.EntryJson;
import gudgeon.core.book.Entry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * Books in one SQLite file: write-ahead log, full synchronisation, foreign keys, writers that wait for each other.
 */
public final class SqliteStore implements EntryStore {
    private static final int WAIT_MS = 10_000;
    private static final int CONNECTIONS = 4;
    private static final int MOST_TRIES = 8;

    private final Path file;
    private final HikariDataSource pool;
    private final Jdbi jdbi;

    private SqliteStore(Path file, HikariDataSource pool) {
        this.file = file;
        this.pool = pool;
        this.jdbi = Jdbi.create(pool);
    }

    /**
     * Opens a store, made when it is not there, its folder too.
     *
     * @throws StoreFailed when the file cannot be opened, or is no store
     */
    public static SqliteStore open(Path file) {
        Path whole = file.toAbsolutePath();
        try {
            Path folder = whole.getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw new StoreFailed("cannot make a folder for the store " + file, e);
        }
        HikariDataSource pool = null;
        try {
            pool = pool(whole);
            Flyway.configure()
                    .dataSource(pool)
                    .locations("classpath:gudgeon/store/sqlite")
                    .load()
                    .migrate();
            return new SqliteStore(file, pool);
        } catch (FlywayException | com.zaxxer.hikari.pool.HikariPool.PoolInitializationException e) {
            if (pool != null) {
                pool.close();
            }
            throw new StoreFailed("cannot open the store " + file, e);
        }
    }

    private static HikariDataSource pool(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(WAIT_MS);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        HikariConfig pooled = new HikariConfig();
        pooled.setDataSource(source);
        pooled.setMaximumPoolSize(CONNECTIONS);
        pooled.setMinimumIdle(1);
        pooled.setPoolName("books");
        return new HikariDataSource(pooled);
    }

    @Override
    public List<Entry> add(List<Entry> entries) {
        if (entries.isEmpty() || entries.stream().map(Entry::job).distinct().count() > 1) {
            throw new IllegalArgumentException("entries of one job are added, not of none or several");
        }
        return asking("write to", () -> {
            for (int tries = 1; ; tries++) {
                try {
                    return jdbi.inTransaction(handle -> added(handle, entries));
                } catch (JdbiException e) {
                    // another process took the place in the book: look again
                    if (tries == MOST_TRIES || !isConflict(e)) {
                        throw e;
                    }
                }
            }
        });
    }

    private static boolean isConflict(Throwable failure) {
        for (Throwable at = failure; at != null; at = at.getCause()) {
            String said = String.valueOf(at.getMessage());
            if (said.contains("UNIQUE constraint") || said.contains("PRIMARYKEY") || said.contains("SQLITE_BUSY")) {
                return true;
            }
        }
        return false;
    }

    private static List<Entry> added(Handle handle, List<Entry> entries) {
        List<Entry> stored = new ArrayList<>();
        String job = entries.getFirst().job();
        long seq = last(handle, job);
        for (Entry entry : entries) {
            Optional<Entry> there = handle.createQuery("select seq, document from entry where id = :id")
                    .bind("id", entry.id().toString())
                    .map((row, context) ->
                            EntryJson.read(row.getString("document")).numbered(row.getLong("seq")))
                    .findOne();
            if (there.isPresent()) {
                if (!there.get().job().equals(job) || !there.get().body().equals(entry.body())) {
                    throw new IdTaken(entry.id());
                }
                stored.add(there.get());
                continue;
            }
            Entry numbered = entry.numbered(++seq);
            handle.createUpdate("insert into entry (job, seq, id, at, type, document)"
                            + " values (:job, :seq, :id, :at, :type, :document)")
                    .bind("job", job)
                    .bind("seq", seq)
                    .bind("id", entry.id().toString())
                    .bind("at", entry.stamp().at().toInstant().toString())
                    .bind("type", EntryJson.kind(entry.body()))
                    .bind("document", EntryJson.write(numbered))
                    .execute();
            stored.add(numbered);
        }
        return List.copyOf(stored);
    }

    private static long last(Handle handle, String job) {
        return handle.createQuery("select coalesce(max(seq), 0) from entry where job = :job")
                .bind("job", job)
                .mapTo(Long.class)
                .one();
    }

    @Override
    public List<Entry> entries(String job, long after) {
        return asking(
                "read",
                () -> jdbi.withHandle(handle -> handle.createQuery(
                                "select document from entry where job = :job and seq > :after order by seq")
                        .bind("job", job)
                        .bind("after", after)
                        .map((row, context) -> EntryJson.read(row.getString("document")))
                        .list()));
    }

    @Override
    public List<String> jobs() {
        return asking(
                "read",
                () -> jdbi.withHandle(
                        handle -> handle.createQuery("select job from entry where seq = 1 order by at desc, job")
                                .mapTo(String.class)
                                .list()));
    }

    @Override
    public long lastSeq(String job) {
        return asking("read", () -> jdbi.withHandle(handle -> last(handle, job)));
    }

    @Override
    public void keep(Photo photo) {
        asking(
                "write to",
                () -> jdbi.inTransaction(handle -> handle.createUpdate("insert into photo (sha256, type, size, bytes)"
                                + " values (:sha256, :type, :size, :bytes) on conflict (sha256) do nothing")
                        .bind("sha256", photo.sha256())
                        .bind("type", photo.type())
                        .bind("size", photo.bytes().length)
                        .bind("bytes", photo.bytes())
                        .execute()));
    }

    @Override
    public Optional<Photo> findPhoto(String sha256) {
        return asking(
                "read",
                () -> jdbi.withHandle(
                        handle -> handle.createQuery("select type, bytes from photo where sha256 = :sha256")
                                .bind("sha256", sha256)
                                .map((row, context) -> new Photo(sha256, row.getString("type"), row.getBytes("bytes")))
                                .findOne()));
    }

    @Override
    public void close() {
        pool.close();
    }

    private <T> T asking(String what, Callable<T> question) {
        try {
            return question.call();
        } catch (IdTaken | EntryJson.Unreadable e) {
            throw e instanceof IdTaken taken ? taken : new StoreFailed("the store " + file + " is damaged", e);
        } catch (RuntimeException e) {
            throw new StoreFailed("cannot " + what + " the store " + file, e);
        } catch (Exception e) {
            throw new StoreFailed("cannot " + what + " the store " + file, e);
        }
    }
}
