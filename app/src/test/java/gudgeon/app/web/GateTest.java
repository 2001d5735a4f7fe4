package gudgeon.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.web.page.Gate;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Who gets in, and what a refusal looks like. Common practice of the web: same origin, DNS rebinding, RFC 9110 statuses. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class GateTest {
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
    void everyPageForbidsWhatIsNotOurs() throws Exception {
        HttpResponse<String> page = get("engines");
        assertThat(page.statusCode()).isEqualTo(200);
        String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
        assertThat(policy).contains("default-src 'none'").doesNotContain("unsafe").doesNotContain("http:");
        assertThat(page.body()).doesNotContain("style=\"").doesNotContain("<style").doesNotContain("onclick");
    }

    @Test
    void aStrangersNameForThisMachineIsRefused() throws Exception {
        assertThat(raw("GET /engines HTTP/1.1\r\nHost: rebound.example\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 400")
                .contains("does not belong to Gudgeon");
        assertThat(raw("GET /engines HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    @Test
    void aWriteNeedsTheTokenOfThisBrowser() throws Exception {
        assertThat(post("look=dark&token=" + TOKEN, "gudgeon-token=" + TOKEN).statusCode()).isEqualTo(303);
        assertThat(post("look=dark", "gudgeon-token=" + TOKEN).statusCode()).isEqualTo(403);
        assertThat(post("look=dark&token=" + TOKEN, "other=1").statusCode()).isEqualTo(403);
    }

    @Test
    void aWriteFromAnotherPageIsRefused() throws Exception {
        HttpRequest request = HttpRequest.newBuilder(URI.create(server.address() + "look"))
                .header("Cookie", "gudgeon-token=" + TOKEN)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", "http://elsewhere.example")
                .POST(HttpRequest.BodyPublishers.ofString("look=dark&token=" + TOKEN))
                .build();
        assertThat(client.send(request, HttpResponse.BodyHandlers.ofString()).statusCode()).isEqualTo(403);
    }

    @Test
    void moreThanAFormHoldsIsRefusedWithAnAnswerThatArrives() throws Exception {
        for (int size : new int[] {Gate.MOST_BYTES, 10 << 20}) {
            HttpResponse<String> answer =
                    post("look=dark&token=" + TOKEN + "&x=" + "y".repeat(size), "gudgeon-token=" + TOKEN);
            assertThat(answer.statusCode()).isEqualTo(413);
            assertThat(answer.body()).contains("more than a form may hold").contains("256 kB");
        }
    }

    @Test
    void theWayBackLeadsNowhereElse() throws Exception {
        for (String back : new String[] {"//elsewhere.example", "http%3A%2F%2Felsewhere.example", "%2F%5Celsewhere.example"}) {
            HttpResponse<String> answer =
                    post("look=dark&token=" + TOKEN + "&back=" + back, "gudgeon-token=" + TOKEN);
            assertThat(answer.headers().firstValue("Location")).as(back).hasValue("/");
        }
    }

    @Test
    void whatIsNotThereSaysSoAndWhatThereIs() throws Exception {
        HttpResponse<String> answer = get("engines/nightjar-9");
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("No engine is called nightjar-9").contains("wren-160");
        assertThat(get("no/such/page").statusCode()).isEqualTo(404);
        assertThat(get("engines/%2e%2e%2fpom").statusCode()).isIn(400, 404);
    }

    @Test
    void markupInAnAddressIsText() throws Exception {
        HttpResponse<String> answer = get("engines/wren-160?find=%3Cscript%3Ealert(1)%3C%2Fscript%3E");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).doesNotContain("<script>alert").contains("&lt;script&gt;");
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(server.address() + path)).build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String body, String cookie) throws IOException, InterruptedException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(server.address() + "look"))
                .header("Cookie", cookie)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", server.port());
                OutputStream out = socket.getOutputStream();
                InputStream in = socket.getInputStream()) {
            out.write(request.getBytes(StandardCharsets.US_ASCII));
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
