package gudgeon.app.web.page;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HandlerType;
import io.javalin.http.SameSite;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Every request passes here first. Only this machine's own names are answered (a page elsewhere cannot make a name of its own
 * point here and read), a write must come from a page of ours (same origin, and the token of a cookie repeated in the form),
 * and must not be larger than the path allows, {@value #MOST_BYTES} bytes for most. Every answer forbids scripts and styles that are not files of ours.
 */
public final class Gate {
    /** Form field of the token. */
    public static final String FIELD = "token";

    /** Most bytes of a form without pictures. */
    public static final int MOST_BYTES = 256 * 1024;

    /** So much of what is too large is read before it is refused. */
    private static final long MOST_PASSED_BY = 64L << 20;

    private static final String COOKIE = "gudgeon-token";
    private static final String VISITOR = "gudgeon.token";
    private static final int YEAR_SECONDS = 365 * 24 * 3600;
    private static final List<String> NAMES = List.of("localhost", "127.0.0.1", "[::1]");
    private static final List<String> KINDS = List.of("application/x-www-form-urlencoded", "multipart/form-data");
    private static final SecureRandom CHANCE = new SecureRandom();
    private static final String POLICY = "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self';"
            + " img-src 'self' data:; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private Gate() {}

    /**
     * Lets a request in, or refuses it.
     *
     * @param mostBytes most that may be sent to its path
     */
    public static void pass(Context request, int mostBytes) {
        headers(request);
        host(request);
        String token = token(request);
        request.attribute(VISITOR, token);
        if (request.method() != HandlerType.GET && request.method() != HandlerType.HEAD) {
            write(request, token, mostBytes);
        }
    }

    /** The token that forms of this request's answer must carry. */
    public static String tokenOf(Context request) {
        String token = request.attribute(VISITOR);
        return token == null ? "" : token;
    }

    private static void headers(Context request) {
        request.header("Content-Security-Policy", POLICY)
                .header("X-Content-Type-Options", "nosniff")
                .header("Referrer-Policy", "same-origin")
                .header("Cross-Origin-Opener-Policy", "same-origin")
                .header("Cross-Origin-Resource-Policy", "same-origin")
                .header("Cache-Control", "no-store");
    }

    private static void host(Context request) {
        String host = request.header("Host");
        if (host == null || !NAMES.contains(host.replaceFirst(":[0-9]{1,5}$", ""))) {
            throw Refusal.wrong(
                    "This address does not belong to Gudgeon.",
                    "Use the address that was printed when it was started; it begins with http://127.0.0.1.");
        }
    }

    private static void write(Context request, String token, int mostBytes) {
        String origin = request.header("Origin");
        String site = request.header("Sec-Fetch-Site");
        boolean ours = origin == null || origin.equals("http://" + request.header("Host"));
        if (!ours || (site != null && !site.equals("same-origin") && !site.equals("none"))) {
            throw new Refusal(403, "This was sent by a page that is not Gudgeon's. Nothing was changed.", "");
        }
        kind(request);
        size(request, mostBytes);
        if (!same(token, given(request))) {
            throw new Refusal(
                    403,
                    "This form does not belong to this browser: cookies may have been deleted since. Nothing was changed.",
                    "Go back, load the page again, and send it again; what you typed is still in the page you came from.");
        }
    }

    /** The token in the form. What cannot be read as a form is refused here, before anybody looks at its fields. */
    private static @Nullable String given(Context request) {
        try {
            return request.formParam(FIELD);
        } catch (Exception e) { // the server's own reader of forms fails in many ways on what is none
            throw new Refusal(
                    400, "What was sent is no form that can be read. Nothing was changed.", "Load the page again, and send it again.");
        }
    }

    private static void kind(Context request) {
        String type = String.valueOf(request.contentType()).toLowerCase(Locale.ROOT).replaceFirst("\\s*;.*", "");
        if (!KINDS.contains(type)) {
            throw new Refusal(415, "What was sent is no form. Nothing was changed.", "Load the page again, and send it again.");
        }
    }

    private static void size(Context request, int mostBytes) {
        if (request.header("Content-Length") == null) {
            throw new Refusal(411, "What was sent does not say how large it is. Nothing was changed.", "");
        }
        if (request.contentLength() > mostBytes || request.contentLength() < 0) {
            passBy(request);
            throw new Refusal(
                    413,
                    "That is more than a form may hold. Nothing was changed.",
                    mostBytes > MOST_BYTES
                            ? "A picture has at most " + (mostBytes >> 20) + " MB: set the camera to a smaller size."
                            : "At most " + MOST_BYTES / 1024 + " kB at once: shorten the text, or split it.");
        }
    }

    /** Reads what is too much and forgets it, within reason: a browser shows the answer only when it could send all. */
    private static void passBy(Context request) {
        byte[] bytes = new byte[8192];
        long left = MOST_PASSED_BY;
        try (InputStream in = request.req().getInputStream()) {
            for (int read = in.read(bytes); read >= 0 && left > 0; read = in.read(bytes)) {
                left -= read;
            }
        } catch (IOException e) {
            // The sender has gone; the answer goes nowhere then.
            throw new UncheckedIOException("what was sent broke off", e);
        }
    }

    private static String token(Context request) {
        String known = request.cookie(COOKIE);
        if (known != null && known.matches("[0-9a-f]{32}")) {
            return known;
        }
        byte[] bytes = new byte[16];
        CHANCE.nextBytes(bytes);
        String fresh = HexFormat.of().formatHex(bytes);
        request.cookie(new Cookie(COOKIE, fresh, "/", YEAR_SECONDS, false, true, null, SameSite.STRICT));
        return fresh;
    }

    private static boolean same(String token, @Nullable String given) {
        return given != null
                && MessageDigest.isEqual(
                        token.getBytes(StandardCharsets.UTF_8), given.getBytes(StandardCharsets.UTF_8));
    }
}
