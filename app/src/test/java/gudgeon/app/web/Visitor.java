package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A browser without scripts: loads pages, fills the form that a page holds, sends it, follows where it leads. */
final class Visitor {
    private static final String TOKEN = "0123456789abcdef0123456789abcdef";
    private static final Pattern FORM = Pattern.compile("(?s)<form[^>]*action=\"([^\"]*)\".*?</form>");
    private static final Pattern INPUT = Pattern.compile("<input type=\"hidden\" name=\"([^\"]+)\" value=\"([^\"]*)\"");

    private final HttpClient client = HttpClient.newHttpClient();
    private final String root;

    /** @param server its address, with a slash at the end */
    Visitor(String server) {
        this.root = server.substring(0, server.length() - 1);
    }

    /** A page as it came. @param path where it is, after redirects */
    record Page(int status, String path, String body) {
        /** Without markup, blanks as one. */
        String text() {
            return body.replaceAll("(?s)<head>.*?</head>", "")
                    .replaceAll("<[^>]+>", " ")
                    .replace("&amp;", "&")
                    .replaceAll("\\s+", " ");
        }
    }

    Page get(String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(root + path))
                        .header("Cookie", "gudgeon-token=" + TOKEN)
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        return new Page(answer.statusCode(), path, answer.body());
    }

    /** A page, loaded again for a while until it tells what takes long to work out. */
    Page worked(String path, String words) throws IOException, InterruptedException {
        Page page = get(path);
        for (int i = 0; i < 60 && !page.text().contains(words); i++) {
            Thread.sleep(250);
            page = get(path);
        }
        return page;
    }

    /** Sends fields as they are, and follows the answer. */
    Page post(String path, Map<String, String> fields) throws IOException, InterruptedException {
        return postAll(path, fields, "", List.of());
    }

    /** The same with a field that is sent several times. */
    Page postAll(String path, Map<String, String> fields, String many, List<String> values)
            throws IOException, InterruptedException {
        StringBuilder body = new StringBuilder();
        values.forEach(value ->
                body.append(body.isEmpty() ? "" : "&").append(many).append('=').append(URLEncoder.encode(value, StandardCharsets.UTF_8)));
        fields.forEach((name, value) -> body.append(body.isEmpty() ? "" : "&")
                .append(URLEncoder.encode(name, StandardCharsets.UTF_8))
                .append('=')
                .append(URLEncoder.encode(value, StandardCharsets.UTF_8)));
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(root + path))
                        .header("Cookie", "gudgeon-token=" + TOKEN)
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body.toString()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        String location = answer.headers().firstValue("Location").orElse("");
        return location.isEmpty() ? new Page(answer.statusCode(), path, answer.body()) : get(location);
    }

    /** Sends fields and files, as a form with files does, and follows the answer. */
    Page upload(String path, Map<String, String> fields, String name, byte[]... files) throws IOException, InterruptedException {
        String edge = "edge-of-a-part-7d1f";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (Map.Entry<String, String> field : fields.entrySet()) {
            part(body, edge, "name=\"" + field.getKey() + "\"", "");
            body.write(field.getValue().getBytes(StandardCharsets.UTF_8));
        }
        for (byte[] file : files) {
            part(body, edge, "name=\"" + name + "\"; filename=\"IMG_0001.jpg\"", "\r\nContent-Type: image/jpeg");
            body.write(file);
        }
        body.write(("\r\n--" + edge + "--\r\n").getBytes(StandardCharsets.UTF_8));
        HttpResponse<String> answer = client.send(
                HttpRequest.newBuilder(URI.create(root + path))
                        .header("Cookie", "gudgeon-token=" + TOKEN)
                        .header("Content-Type", "multipart/form-data; boundary=" + edge)
                        .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
        String location = answer.headers().firstValue("Location").orElse("");
        return location.isEmpty() ? new Page(answer.statusCode(), path, answer.body()) : get(location);
    }

    private static void part(ByteArrayOutputStream body, String edge, String what, String more) throws IOException {
        body.write(("\r\n--" + edge + "\r\nContent-Disposition: form-data; " + what + more + "\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
    }

    /** What a path serves, as it comes. */
    byte[] bytes(String path) throws IOException, InterruptedException {
        return client.send(
                        HttpRequest.newBuilder(URI.create(root + path)).build(), HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    /** The hidden fields of the first form of a page that is sent to a path with this end. */
    static Map<String, String> form(Page page, String end) {
        return forms(page, end).getFirst();
    }

    /** The same of the last one. */
    static Map<String, String> lastForm(Page page, String end) {
        return forms(page, end).getLast();
    }

    private static List<Map<String, String>> forms(Page page, String end) {
        List<Map<String, String>> forms = new ArrayList<>();
        Matcher form = FORM.matcher(page.body());
        while (form.find()) {
            if (form.group(1).endsWith(end)) {
                Map<String, String> fields = new LinkedHashMap<>();
                Matcher input = INPUT.matcher(form.group());
                while (input.find()) {
                    fields.put(
                            input.group(1), input.group(2).replace("&amp;", "&").replace("&#34;", "\""));
                }
                forms.add(fields);
            }
        }
        if (forms.isEmpty()) {
            throw new AssertionError("no form to " + end + " at " + page.path() + ": " + page.text());
        }
        return forms;
    }

    /** Loads a page, fills its form and sends it. @param filled names and values, in turn */
    Page fill(String path, String end, String... filled) throws IOException, InterruptedException {
        Page page = get(path);
        Map<String, String> fields = form(page, end);
        for (int i = 0; i < filled.length; i += 2) {
            fields.put(filled[i], filled[i + 1]);
        }
        Matcher action =
                Pattern.compile("action=\"([^\"]*" + Pattern.quote(end) + ")\"").matcher(page.body());
        assertThat(action.find()).as("a form to " + end).isTrue();
        return post(action.group(1).replace("&amp;", "&"), fields);
    }

    /** Begins a job, and gives its path. */
    String open(String name, String engine, String target) throws IOException, InterruptedException {
        Page page = fill("/new-job", "/new-job", "name", name, "engine", engine, "target", target);
        assertThat(page.status()).as(page.text()).isEqualTo(200);
        return page.path().replaceFirst("[?].*", "");
    }

    /** Does the next steps of the strip, parts to the shelf. */
    void strip(String job, int steps) throws IOException, InterruptedException {
        for (int i = 0; i < steps; i++) {
            Page bench = get(job + "/bench");
            if (!bench.body().contains("action=\"" + job + "/bench/done\"")) {
                return;
            }
            Map<String, String> fields = form(bench, "/bench/done");
            fields.computeIfPresent("place", (name, value) -> "shelf");
            assertThat(post(job + "/bench/done", fields).status()).isEqualTo(200);
        }
    }
}
