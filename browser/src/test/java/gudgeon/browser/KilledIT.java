package gudgeon.browser;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.desk.Job;
import gudgeon.app.desk.Workshop;
import gudgeon.core.book.Strip;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packaged server as a process of its own, killed without warning while a phone sends to it: what was acknowledged is in
 * the book, once; what was not answered is sent again, and is in the book once; the bench comes back where it was. As often as
 * -Dgudgeon.kills=N says, at moments drawn from -Dgudgeon.seed=N.
 */
class KilledIT {
    private static final int KILLS = Integer.getInteger("gudgeon.kills", 5);
    private static final long SEED = Long.getLong("gudgeon.seed", 20261125L);
    private static final int MOST_FORMS = 8;
    private static final int MOST_MS = 120;
    private static final Path JAR = Path.of("..", "app", "target", "gudgeon-app.jar");
    private static final Pattern NUMBER = Pattern.compile("<span class=\"mark\">([0-9]+) of");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void whatWasAcknowledgedIsInTheBookOnceAndThePageComesBack() throws Exception {
        Path store = folder.resolve("books.sqlite");
        Random random = new Random(SEED);
        Sender phone = new Sender();
        int broken = 0;
        for (int kill = 1; kill <= KILLS; kill++) {
            Process server = serve(phone, store);
            cameBack(phone, store);
            killedAmongForms(server, phone, random);
            broken += phone.isWaiting() ? 1 : 0;
            inTheBookOnce(phone, store);
        }
        Process server = serve(phone, store);
        cameBack(phone, store);
        end(server);
        System.err.println("killed " + KILLS + " times (seed " + SEED + "): "
                + phone.acknowledged().size() + " acknowledged, " + broken + " forms without an answer sent again");
        assertThat(phone.acknowledged()).as("seed %d", SEED).hasSizeGreaterThan(KILLS);
    }

    /** Starts the packaged program, and waits until it says where it is. */
    private static Process serve(Sender phone, Path store) throws IOException {
        assertThat(Files.isRegularFile(JAR))
                .as("packaged: " + JAR.toAbsolutePath())
                .isTrue();
        Process server = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "--enable-native-access=ALL-UNNAMED",
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Dgudgeon.home=" + Path.of("..").toAbsolutePath().normalize(),
                        "-cp",
                        JAR + File.pathSeparator + JAR.resolveSibling("lib") + File.separator + "*",
                        "gudgeon.app.cli.Main",
                        "serve",
                        "--port",
                        "0",
                        "--store",
                        store.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader out = new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8));
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            Matcher address = Pattern.compile("http://127[^ ]+/").matcher(line);
            if (address.find()) {
                phone.turnTo(address.group());
                return server;
            }
        }
        throw new AssertionError("the server ended before it said where it is");
    }

    private static void end(Process server) throws InterruptedException {
        server.toHandle().destroyForcibly();
        server.waitFor();
    }

    /** Sends form after form, until the process is killed in the middle of one or between two. */
    private static void killedAmongForms(Process server, Sender phone, Random random) throws InterruptedException {
        int forms = random.nextInt(MOST_FORMS);
        int moment = random.nextInt(MOST_MS);
        Thread killer = Thread.ofPlatform().unstarted(() -> {
            try {
                Thread.sleep(moment);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            server.toHandle().destroyForcibly();
        });
        try {
            for (int i = 0; ; i++) {
                if (i == forms) {
                    killer.start();
                }
                phone.next(random);
            }
        } catch (IOException e) {
            assertThat(killer.getState())
                    .as("only the kill breaks it off: %s", e)
                    .isNotEqualTo(Thread.State.NEW);
        }
        killer.join();
        server.waitFor();
    }

    /** Every acknowledged entry once, none twice, no gap in the order; of a form without answer all or nothing. */
    private static void inTheBookOnce(Sender phone, Path store) {
        try (Workshop workshop = Workshop.open(store)) {
            List<Job> jobs = workshop.jobIds().stream()
                    .map(id -> workshop.findJob(id).orElseThrow())
                    .toList();
            List<String> ids = jobs.stream()
                    .flatMap(job -> job.state().history().stream())
                    .map(told -> told.entry().id().toString())
                    .toList();
            assertThat(ids).containsAll(phone.acknowledged()).doesNotHaveDuplicates();
            for (Job job : jobs) {
                List<Long> order = job.state().history().stream()
                        .map(told -> told.entry().seq())
                        .toList();
                assertThat(order)
                        .isEqualTo(
                                LongStream.rangeClosed(1, order.size()).boxed().toList());
            }
            assertThat(jobs.size() - phone.jobs().size()).isBetween(0, phone.isWaiting() ? 1 : 0);
        }
    }

    /** What was not answered is sent again; the bench then shows the step after those that were acknowledged. */
    private static void cameBack(Sender phone, Path store) throws IOException, InterruptedException {
        phone.sendAgain();
        inTheBookOnce(phone, store);
        for (String job : phone.jobs()) {
            try (Workshop workshop = Workshop.open(store)) {
                long done = workshop.findJob(job.replaceFirst(".*/", "")).orElseThrow().state().history().stream()
                        .filter(told -> told.entry().body() instanceof Strip.OperationDone
                                || told.entry().body() instanceof Strip.Removed)
                        .count();
                assertThat(done).as("steps of %s in the book", job).isEqualTo(phone.steps(job));
            }
        }
        if (!phone.jobs().isEmpty()) {
            String job = phone.jobs().getLast();
            Matcher number = NUMBER.matcher(phone.get(job + "/bench"));
            if (number.find()) {
                assertThat(Integer.parseInt(number.group(1))).isEqualTo(phone.steps(job) + 1);
            }
        }
    }
}
