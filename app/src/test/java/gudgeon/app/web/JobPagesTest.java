package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Forms of the job pages, sent as no person would: twice, stale, with markup, too long, with nonsense. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class JobPagesTest {
    private static final String TOKEN = "0123456789abcdef0123456789abcdef";

    private final HttpClient client = HttpClient.newHttpClient();
    private WebServer server;

    @BeforeAll
    void start(@TempDir Path folder) {
        server = WebServer.start(0, folder.resolve("books.sqlite"));
    }

    @AfterAll
    void stop() {
        server.close();
    }

    @Test
    void aFormSentTwiceOpensOneJob() throws Exception {
        Map<String, String> form = newJob("Sent twice", "wren-160", "piston");
        String first = post("new-job", form).headers().firstValue("Location").orElse("");
        String second = post("new-job", form).headers().firstValue("Location").orElse("");
        assertThat(first).startsWith("/jobs/").isEqualTo(second);
    }

    /** By its cylinders one tells which engine is most like one's own. */
    @Test
    void theEnginesToBeginFromSayHowManyCylindersTheyHave() throws Exception {
        assertThat(get("new-job").body())
                .contains("one cylinder, petrol four-stroke")
                .contains("4 cylinders, diesel four-stroke, turbocharged");
    }

    @Test
    void aRefusedFormKeepsWhatWasTypedAndItsEntry() throws Exception {
        Map<String, String> form = newJob("Kept & <b>bold</b>", "wren-160", "pistn");
        HttpResponse<String> answer = post("new-job", form);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("Kept &amp; &lt;b")
                .contains("Maybe piston")
                .contains(form.get("entry"))
                .doesNotContain("<b>bold");
        assertThat(post("new-job", newJob("", "", "")).body())
                .contains("name is missing")
                .contains("Choose an engine");
    }

    @Test
    void aVeryLongTextIsRefusedAndNothingIsWritten() throws Exception {
        HttpResponse<String> answer = post("new-job", newJob("n".repeat(5_000), "wren-160", ""));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("5000 characters; at most 200 fit");
        assertThat(post("new-job", newJob("n".repeat(300_000), "wren-160", "")).statusCode())
                .isEqualTo(413);
    }

    @Test
    void aFormWithoutAnEntryOrWithNonsenseForOneIsRefused() throws Exception {
        for (String entry : new String[] {"", "1", "../../x", "00000000-0000-4000-8000-000000000000"}) {
            Map<String, String> form = newJob("No entry", "wren-160", "");
            form.put("entry", entry);
            assertThat(post("new-job", form).statusCode()).as(entry).isEqualTo(400);
        }
    }

    @Test
    void stepsThatAreNotThereOrDoneAlreadyAreToldAndNothingIsDoubled() throws Exception {
        String job = open("Stale", "piston");
        Map<String, String> step = bench(job);
        assertThat(post(job + "/bench/done", step).statusCode()).isEqualTo(303);
        Map<String, String> otherTab = new LinkedHashMap<>(step);
        otherTab.put("entry", fresh());
        HttpResponse<String> again = post(job + "/bench/done", otherTab);
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("done already").contains("2 of ");
        Map<String, String> nonsense = new LinkedHashMap<>(step);
        nonsense.put("step", "no-such-step");
        nonsense.put("entry", fresh());
        HttpResponse<String> told = post(job + "/bench/done", nonsense);
        assertThat(told.statusCode()).isEqualTo(422);
        assertThat(told.body()).contains("Nothing here is called");
        assertThat(get(job + "/bench").body()).contains("2 of ");
    }

    @Test
    void oneEntryCannotBeTwoThings() throws Exception {
        String job = open("One entry", "piston");
        Map<String, String> step = bench(job);
        post(job + "/bench/done", step);
        Map<String, String> note = new LinkedHashMap<>();
        note.put("token", TOKEN);
        note.put("entry", step.get("entry"));
        note.put("text", "something else");
        post(job + "/note", note);
        assertThat(get(job + "/undo").body()).doesNotContain("something else");
    }

    @Test
    void aNoteIsWrittenAndTakenBack() throws Exception {
        String job = open("Notes", "piston");
        Map<String, String> note = new LinkedHashMap<>();
        note.put("token", TOKEN);
        note.put("entry", fresh());
        note.put("text", "the <long> one sits bottom left");
        assertThat(post(job + "/note", note).statusCode()).isEqualTo(303);
        assertThat(get(job + "/undo").body()).contains("the &lt;long&gt; one sits bottom left");
        Map<String, String> undo = new LinkedHashMap<>(Map.of("token", TOKEN));
        undo.put("entry", fresh());
        assertThat(post(job + "/undo", undo).statusCode()).isEqualTo(303);
        assertThat(get(job + "/undo").body()).doesNotContain("bottom left");
    }

    @Test
    void aJointThatWillNotComeChangesThePlanAndComesAfterAll() throws Exception {
        String job = open("Refuses", "piston");
        Map<String, String> form = new LinkedHashMap<>();
        form.put("token", TOKEN);
        form.put("entry", fresh());
        form.put("joint", "head-studs");
        assertThat(post(job + "/strip/refuses", form).statusCode()).isEqualTo(303);
        assertThat(get(job).body()).contains("There is no way on").contains("head studs");
        form.put("entry", fresh());
        form.put("comes", "yes");
        assertThat(post(job + "/strip/refuses", form).statusCode()).isEqualTo(303);
        assertThat(get(job).body()).contains("To the bench");
        form.put("joint", "no-such-joint");
        assertThat(post(job + "/strip/refuses", form).statusCode()).isEqualTo(404);
    }

    private static Map<String, String> newJob(String name, String engine, String target) {
        Map<String, String> form = new LinkedHashMap<>();
        form.put("token", TOKEN);
        form.put("entry", fresh());
        form.put("name", name);
        form.put("engine", engine);
        form.put("target", target);
        return form;
    }

    /** Any id of version 7 will do. */
    private static String fresh() {
        return UUID.randomUUID().toString().replaceFirst("^(.{14})4", "$17");
    }

    private String open(String name, String target) throws IOException, InterruptedException {
        return post("new-job", newJob(name, "wren-160", target))
                .headers()
                .firstValue("Location")
                .orElseThrow()
                .substring(1);
    }

    /** The form of the next step, as the page has it. */
    private Map<String, String> bench(String job) throws IOException, InterruptedException {
        String page = get(job + "/bench").body();
        String part = page.substring(page.indexOf("<form id=\"done\""));
        Map<String, String> form = new LinkedHashMap<>();
        Matcher field = Pattern.compile("name=\"([a-z]+)\" value=\"([^\"]*)\"")
                .matcher(part.substring(0, part.indexOf("</form>")));
        while (field.find()) {
            form.put(field.group(1), field.group(2));
        }
        form.put("token", TOKEN);
        return form;
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        for (int tries = 0; ; tries++) {
            HttpResponse<String> page = client.send(
                    HttpRequest.newBuilder(URI.create(server.address() + path)).build(),
                    HttpResponse.BodyHandlers.ofString());
            if (tries > 20 || !page.body().contains("class=\"working\"")) {
                return page;
            }
        }
    }

    private HttpResponse<String> post(String path, Map<String, String> form) throws IOException, InterruptedException {
        StringBuilder body = new StringBuilder();
        form.forEach((name, value) -> body.append(body.isEmpty() ? "" : "&")
                .append(name)
                .append('=')
                .append(URLEncoder.encode(value, StandardCharsets.UTF_8)));
        HttpRequest request = HttpRequest.newBuilder(URI.create(server.address() + path))
                .header("Cookie", "gudgeon-token=" + TOKEN)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }
}
