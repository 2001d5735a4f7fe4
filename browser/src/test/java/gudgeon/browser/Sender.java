package gudgeon.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A phone without scripts that sends forms, keeps what was not answered, and sends it again when the server is back. */
final class Sender {
    private static final String TOKEN = "0123456789abcdef0123456789abcdef";
    private static final Pattern INPUT = Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"");

    private final List<String> acknowledged = new ArrayList<>();
    private final List<String> jobs = new ArrayList<>();
    private final Map<String, Integer> steps = new LinkedHashMap<>();
    private HttpClient client = HttpClient.newHttpClient();
    private String root = "";
    private Optional<Sent> unanswered = Optional.empty();

    /** A form as it was sent. */
    private record Sent(String path, Map<String, String> fields) {}

    /** Ids of entries that the server said are in the book. */
    List<String> acknowledged() {
        return acknowledged;
    }

    /** Paths of the jobs that were begun. */
    List<String> jobs() {
        return jobs;
    }

    /** How many steps of a job the server said are done. */
    int steps(String job) {
        return steps.getOrDefault(job, 0);
    }

    /** Whether a form was sent and nobody knows whether it arrived. */
    boolean isWaiting() {
        return unanswered.isPresent();
    }

    /** Another server, or the same again. @param address with a slash at the end */
    void turnTo(String address) {
        root = address.substring(0, address.length() - 1);
        client = HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(20)).build();
    }

    /** What was not answered is sent again as it was; and what was answered last too, which must change nothing. */
    void sendAgain() throws IOException, InterruptedException {
        if (unanswered.isPresent()) {
            assertThat(send(unanswered.get())).as("sent again").isEqualTo(303);
        }
    }

    /** One thing more: a job when there is none to go on with, else a step or a note. */
    void next(Random random) throws IOException, InterruptedException {
        Optional<String> job = jobs.isEmpty() ? Optional.empty() : Optional.of(jobs.getLast());
        String bench = job.isEmpty() ? "" : get(job.get() + "/bench");
        if (!bench.contains("id=\"done\"")) {
            Map<String, String> fields = fields(get("/new-job"), "/new-job");
            fields.put("name", "Killed");
            fields.put("engine", "wren-160");
            fields.put("target", "piston");
            send(new Sent("/new-job", fields));
        } else if (random.nextInt(3) == 0) {
            Map<String, String> fields = fields(get(job.get() + "/note"), "/note");
            fields.put("text", "Note " + acknowledged.size());
            send(new Sent(job.get() + "/note", fields));
        } else {
            send(new Sent(job.get() + "/bench/done", fields(bench, "/bench/done")));
        }
    }

    private int send(Sent form) throws IOException, InterruptedException {
        unanswered = Optional.of(form);
        HttpResponse<String> answer = client.send(
                request(form.path())
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body(form.fields())))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        unanswered = Optional.empty();
        acknowledged.add(form.fields().get("entry"));
        if (form.path().equals("/new-job")) {
            jobs.add(answer.headers().firstValue("Location").orElseThrow());
        } else if (form.path().endsWith("/done")) {
            steps.merge(form.path().replace("/bench/done", ""), 1, Integer::sum);
        }
        return answer.statusCode();
    }

    String get(String path) throws IOException, InterruptedException {
        return client.send(request(path).GET().build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(root + path))
                .timeout(Duration.ofSeconds(30))
                .header("Cookie", "gudgeon-token=" + TOKEN);
    }

    private static String body(Map<String, String> fields) {
        List<String> pairs = new ArrayList<>();
        fields.forEach((name, value) -> pairs.add(URLEncoder.encode(name, StandardCharsets.UTF_8) + "="
                + URLEncoder.encode(value, StandardCharsets.UTF_8)));
        return String.join("&", pairs);
    }

    /** The hidden fields of the form of a page that is sent to a path with this end. */
    private static Map<String, String> fields(String page, String end) {
        Matcher form = Pattern.compile(
                        "(?s)<form[^>]*method=\"post\" action=\"[^\"]*" + Pattern.quote(end) + "\".*?</form>")
                .matcher(page);
        assertThat(form.find()).as("a form to " + end + " in " + page).isTrue();
        Map<String, String> fields = new LinkedHashMap<>();
        Matcher input = INPUT.matcher(form.group());
        while (input.find()) {
            fields.put(input.group(1), input.group(2).replace("&amp;", "&"));
        }
        return fields;
    }
}
