package gudgeon.app.web.page;

import gudgeon.app.document.EngineDrawing;
import io.javalin.http.Context;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * Style sheets, scripts and faces, held in memory. Their path carries a hash of them all, so that a browser may keep them for
 * ever and never shows an old one.
 */
public final class Assets {
    private static final List<String> WEB = List.of("sheet.css", "rooms.css", "comfort.js", "mark.svg");
    private static final List<String> FONTS = List.of(
            "atkinson-hyperlegible-next-latin-400-normal.woff2",
            "atkinson-hyperlegible-next-latin-700-normal.woff2",
            "barlow-condensed-latin-500-normal.woff2",
            "barlow-condensed-latin-600-normal.woff2");

    private final Map<String, Asset> byName = new LinkedHashMap<>();
    private final String hash;

    private record Asset(byte[] plain, byte @Nullable [] zipped, String type) {}

    private Assets() {
        MessageDigest digest = sha256();
        WEB.forEach(name -> add(name, bytes("/gudgeon/web/" + name), digest));
        add("drawing.css", EngineDrawing.pageStyle().getBytes(StandardCharsets.UTF_8), digest);
        FONTS.forEach(name -> add(name, bytes("/gudgeon/fonts/" + name), digest));
        hash = HexFormat.of().formatHex(digest.digest()).substring(0, 12);
    }

    /**
     * All of them.
     *
     * @throws IllegalStateException when the program was built without one
     */
    public static Assets load() {
        return new Assets();
    }

    /** The path before every name: "/s/5b1f.../". */
    public String base() {
        return "/s/" + hash + "/";
    }

    /** Answers a request for one file, path parameters {@code hash} and {@code name}. */
    public void serve(Context request) {
        Asset asset = byName.get(request.pathParam("name"));
        if (asset == null) {
            throw Refusal.missing("There is no such file.", "");
        }
        boolean current = request.pathParam("hash").equals(hash);
        request.header("Cache-Control", current ? "public, max-age=31536000, immutable" : "no-cache");
        request.header("Vary", "Accept-Encoding");
        request.contentType(asset.type());
        request.disableCompression();
        String accepted = request.header("Accept-Encoding");
        if (asset.zipped() != null && accepted != null && accepted.contains("gzip")) {
            request.header("Content-Encoding", "gzip").result(asset.zipped());
        } else {
            request.result(asset.plain());
        }
    }

    private void add(String name, byte[] bytes, MessageDigest digest) {
        digest.update(bytes);
        byte[] zipped = name.endsWith(".woff2") ? null : zipped(bytes);
        byName.put(name, new Asset(bytes, zipped, type(name)));
    }

    private static String type(String name) {
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "css" -> "text/css; charset=utf-8";
            case "js" -> "text/javascript; charset=utf-8";
            case "svg" -> "image/svg+xml";
            default -> "font/woff2";
        };
    }

    private static byte[] bytes(String resource) {
        try (InputStream in = Assets.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without " + resource);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + resource, e);
        }
    }

    private static byte[] zipped(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            zip.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot compress in memory", e);
        }
        return out.toByteArray();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
