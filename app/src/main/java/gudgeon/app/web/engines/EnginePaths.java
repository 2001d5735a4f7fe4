package gudgeon.app.web.engines;

import gudgeon.core.engine.Engine;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Where the pages of an engine are. */
public final class EnginePaths {
    private EnginePaths() {}

    public static String engine(Engine engine) {
        return "/engines/" + engine.identity().id();
    }

    public static String part(Engine engine, String id) {
        return engine(engine) + "/parts/" + id;
    }

    public static String joint(Engine engine, String id) {
        return engine(engine) + "/joints/" + id;
    }

    public static String drawing(Engine engine) {
        return engine(engine) + "/drawing";
    }

    /** The strip page with a part as its goal. */
    public static String reach(Engine engine, String part) {
        return engine(engine) + "/strip?reach=" + encoded(part);
    }

    /** Text as it stands in a query. */
    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
