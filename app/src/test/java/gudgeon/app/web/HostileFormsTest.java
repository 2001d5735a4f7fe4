package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.desk.Workshop;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every form, with everything that does not belong in it. The paths and the names of fields are read from the sources of the
 * pages, so that a new form is tried as soon as it is there. What must hold is common practice of the web: an answer of 300 to 499,
 * never 500; what was refused is not in the book; what is in the book is text on every page.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class HostileFormsTest {
    private static final String TOKEN = "0123456789abcdef0123456789abcdef";
    private static final Path WEB = Path.of("src/main/java/gudgeon/app/web");
    private static final Pattern POST = Pattern.compile("routes\\s*\\.post\\(\\s*\"([^\"]+)\"");
    private static final Pattern FIELD = Pattern.compile(
            "form\\.(?:typed|line|optionalLine|text|whole|number|ticked|oneOf)\\(\\s*\"([a-z0-9-]+)\"");
    private static final String SCRIPT = "\"'><script>alert(1)</script><img src=x onerror=alert(2)>";

    private static final Map<String, String> NASTY = new LinkedHashMap<>();

    static {
        NASTY.put("empty", "");
        NASTY.put("blank", " \t ");
        NASTY.put("100 kB", "x".repeat(100_000));
        NASTY.put("negative", "-1");
        NASTY.put("not a number", "NaN");
        NASTY.put("infinite", "Infinity");
        NASTY.put("too large a number", "99999999999999999999");
        NASTY.put("a number in another way", "1e308");
        NASTY.put("control characters", "a\u0000b\u0007c\u001b[2Jd\r\ne");
        NASTY.put("markup", SCRIPT);
        NASTY.put("template", "${7*7} @{x} {{x}} <%= x %>");
        NASTY.put("database", "'; drop table entry; --");
        NASTY.put("path", "../../../../etc/passwd\u0000.jpg");
        NASTY.put("turned text", "abc\u202Egpj.exe\u200B\uFEFF");
        NASTY.put("lone surrogate", "\uD800x\uDFFF");
        NASTY.put("digits of another script", "\u0661\u0662\u0663");
        NASTY.put("many accents", "e" + "\u0301".repeat(300));
        NASTY.put("commas", ",,,,,");
        NASTY.put("yaml", "a: {b: [c, !!java.lang.Runtime x]}\n- *anchor");
    }

    /** By these a page says that something is wrong. */
    private static final List<String> TELLS = List.of("class=\"fault\"", "class=\"refused\"", "role=\"alert\"", "Refused");

    private final List<String> faults = new ArrayList<>();
    private final HttpClient client = HttpClient.newHttpClient();
    private Path store = Path.of("");
    private WebServer server;
    private Visitor visitor;
    private String job = "";

    @BeforeAll
    void start(@TempDir Path folder) throws Exception {
        store = folder.resolve("books.sqlite");
        server = WebServer.start(0, store);
        visitor = new Visitor(server.address());
        job = visitor.open("Tried hard", "wren-160", "cowl");
        visitor.strip(job, 1);
    }

    @AfterAll
    void stop() {
        server.close();
    }

    /** Paths that take a form, and the fields that the pages of their package read. */
    private static Map<String, List<String>> forms() throws IOException {
        Map<String, List<String>> forms = new LinkedHashMap<>();
        try (Stream<Path> files = Files.walk(WEB)) {
            for (Path file : files.filter(path -> path.toString().endsWith("Pages.java")).sorted().toList()) {
                String source = Files.readString(file);
                List<String> fields = all(FIELD, source);
                all(POST, source).forEach(path -> forms.put(path, fields));
            }
        }
        return forms;
    }

    private static List<String> all(Pattern pattern, String source) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(source);
        while (matcher.find()) {
            if (!found.contains(matcher.group(1))) {
                found.add(matcher.group(1));
            }
        }
        return found;
    }

    private Map<String, String> signed(String entry) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("token", TOKEN);
        fields.put("entry", entry);
        return fields;
    }

    private String freshEntry() throws Exception {
        return Visitor.form(visitor.get(job + "/note"), "/note").getOrDefault("entry", "");
    }

    private String path(String route) {
        return route.replace("/jobs/{job}", job);
    }

    @Test
    void everyFormIsFound() throws Exception {
        assertThat(forms()).hasSizeGreaterThanOrEqualTo(30).containsKeys("/new-job", "/jobs/{job}/photo", "/jobs/{job}/found");
        assertThat(forms().values()).anySatisfy(fields -> assertThat(fields).contains("count", "differs", "joint"));
    }

    @Test
    void everyFormWithNothingInIt() throws Exception {
        for (String route : forms().keySet()) {
            int before = entries();
            check(route, "nothing", visitor.post(path(route), signed(freshEntry())));
            if (!route.endsWith("/undo") && !route.endsWith("/strip/target") && !route.endsWith("/strip/means")) {
                assertThat(entries()).as("written by an empty form to " + route).isEqualTo(before);
            }
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void everyFieldOfEveryFormWithWhatDoesNotBelong() throws Exception {
        for (Map.Entry<String, List<String>> form : forms().entrySet()) {
            for (Map.Entry<String, String> nasty : NASTY.entrySet()) {
                Map<String, String> fields = signed(freshEntry());
                // all fields at once; 100 kB goes into one, since a form holds 256 kB in all
                List<String> names = form.getValue();
                List<String> some = nasty.getValue().length() > 10_000 ? names.subList(0, Math.min(1, names.size())) : names;
                some.forEach(name -> fields.putIfAbsent(name, nasty.getValue()));
                check(form.getKey(), nasty.getKey(), visitor.post(path(form.getKey()), fields));
            }
        }
        assertThat(faults).isEmpty();
        everyPageShowsTextOnly();
    }

    @Test
    void aWrongKey() throws Exception {
        String[] keys = {"", "1", "' or 1=1", "00000000-0000-0000-0000-000000000000", "zzzzzzzz-0000-7000-8000-000000000000", SCRIPT};
        for (String key : keys) {
            int before = entries();
            Map<String, String> fields = signed(key);
            fields.put("text", "a note");
            Visitor.Page page = visitor.post(job + "/note", fields);
            assertThat(page.status()).as("entry '" + key + "'").isBetween(400, 499);
            assertThat(page.body()).contains("Nothing was changed").doesNotContain("<script>alert");
            assertThat(entries()).isEqualTo(before);
        }
    }

    @Test
    void aKeyThatStandsForSomethingElseIsRefused() throws Exception {
        Map<String, String> fields = signed(freshEntry());
        fields.put("text", "the first");
        assertThat(visitor.post(job + "/note", fields).status()).isEqualTo(200);
        int before = entries();
        assertThat(visitor.post(job + "/note", fields).status()).as("the same again").isEqualTo(200);
        fields.put("text", "another");
        Visitor.Page page = visitor.post(job + "/note", fields);
        assertThat(page.status()).isEqualTo(409);
        assertThat(page.text()).contains("sent before, as something else").contains("Nothing was changed");
        assertThat(entries()).isEqualTo(before);
    }

    /** What an address names is asked for in the book; what cannot be an id names nothing there. */
    @Test
    void anAddressThatNamesNoEntryShowsThePageWithoutIt() throws Exception {
        for (String id : List.of("-".repeat(36), "a".repeat(36), "", "%00", freshEntry())) {
            for (String page : List.of("", "/bench", "/book", "/build", "/order")) {
                assertThat(visitor.get(job + page + "?said=" + id).status()).as(page + " said " + id).isBetween(200, 399);
            }
            assertThat(visitor.get(job + "/book/entry?id=" + id).status()).as("entry " + id).isEqualTo(404);
            Map<String, String> fields = signed(freshEntry());
            fields.put("withdraw", id);
            assertThat(visitor.post(job + "/book/entry", fields).status()).as("withdraw " + id).isBetween(400, 499);
        }
    }

    @Test
    void anotherKindOfContent() throws Exception {
        for (String route : forms().keySet()) {
            for (String type : List.of(
                    "application/json", "text/plain", "multipart/form-data", "multipart/form-data; boundary=x", "application/xml", "x/\"y")) {
                int before = entries();
                HttpResponse<String> answer = send(route, type, "token=" + TOKEN + "&{\"text\":1}", Map.of());
                assertThat(answer.statusCode()).as(route + " as " + type).isBetween(400, 499);
                assertThat(answer.body()).as(route + " as " + type).contains("Nothing was changed");
                assertThat(entries()).isEqualTo(before);
            }
        }
    }

    @Test
    void aFormFromElsewhereIsRefusedEverywhere() throws Exception {
        for (String route : forms().keySet()) {
            int before = entries();
            String body = "token=" + TOKEN + "&entry=" + freshEntry() + "&text=x&name=x";
            String form = "application/x-www-form-urlencoded";
            assertThat(send(route, form, body, Map.of("Origin", "http://elsewhere.example")).statusCode()).isEqualTo(403);
            assertThat(send(route, form, body, Map.of("Origin", "null")).statusCode()).isEqualTo(403);
            assertThat(send(route, form, body, Map.of("Sec-Fetch-Site", "cross-site")).statusCode()).isEqualTo(403);
            assertThat(send(route, form, body.replace(TOKEN, TOKEN.replace('0', '1')), Map.of()).statusCode()).isEqualTo(403);
            assertThat(entries()).isEqualTo(before);
        }
    }

    private HttpResponse<String> send(String route, String type, String body, Map<String, String> headers) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(server.address() + path(route).substring(1)))
                .header("Cookie", "gudgeon-token=" + TOKEN)
                .header("Content-Type", type)
                .POST(HttpRequest.BodyPublishers.ofString(body, StandardCharsets.UTF_8));
        headers.forEach(request::header);
        return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    /** What is wrong with an answer, to be told together with what is wrong with the others. */
    private void check(String route, String what, Visitor.Page page) {
        String as = what + " to " + route + " was answered with " + page.status();
        if (page.status() < 200 || page.status() > 499) {
            faults.add(as);
        }
        if (page.body().contains("<script>alert") || page.body().contains("<img src=x")) {
            faults.add(as + ", and markup");
        }
        if (page.status() >= 400 && TELLS.stream().noneMatch(page.body()::contains)) {
            faults.add(as + ", and without a message");
        }
    }

    /** Whatever stood in the forms and was kept is text, wherever it is shown. */
    private void everyPageShowsTextOnly() throws Exception {
        for (String page : List.of(
                "", "/book", "/bags", "/labels", "/found", "/found?joint=cowl-screws", "/trouble", "/engine", "/toolbox", "/order", "/build",
                "/closing", "/tags", "/strip", "/bench", "/note?about=" + "%22%3E%3Cscript%3Ealert(1)", "/bags/part?part=cowl")) {
            Visitor.Page shown = visitor.get(job + page);
            assertThat(shown.status()).as(page).isBetween(200, 399);
            assertThat(shown.body()).as(page).doesNotContain("<script>alert").doesNotContain("<img src=x");
        }
        assertThat(visitor.get("/").body()).doesNotContain("<script>alert").doesNotContain("<img src=x");
    }

    /** Entries of all books, from the store itself. */
    private int entries() {
        try (Workshop other = Workshop.open(store)) {
            return other.jobIds().stream()
                    .flatMap(id -> other.findJob(id).stream())
                    .mapToInt(one -> one.state().history().size())
                    .sum();
        }
    }
}
