package gudgeon.app.document;

import java.util.Optional;
import java.util.function.Function;

/**
 * A laid-out drawing for a page: neither border nor title block, which the page has, and no style of its own; parts are
 * links. Its rules are {@link DrawingStyle#figureCss()}.
 */
final class DrawingFigure {
    private static final double EDGE = 4;
    private static final double LEGEND_ROW = 30;

    private final LaidOut laidOut;
    private final Legend legend;
    private final Function<String, Optional<String>> links;

    /** @param links where a part leads, by its id; empty for a part that leads nowhere */
    DrawingFigure(LaidOut laidOut, Legend legend, Function<String, Optional<String>> links) {
        this.laidOut = laidOut;
        this.legend = legend;
        this.links = links;
    }

    String svg(String title) {
        double width = Math.max(320, laidOut.width() + 2 * EDGE);
        double legendTop = laidOut.height() + 34;
        double height = legendTop + legend.height(width - 2 * EDGE, LEGEND_ROW) + EDGE;
        SvgText out = new SvgText();
        out.line("<svg class=\"engine-drawing\" viewBox=\"0 0 " + SvgText.n(width) + " " + SvgText.n(height) + "\" width=\""
                + SvgText.n(width) + "\" height=\"" + SvgText.n(height) + "\" role=\"group\" aria-label=\""
                + SvgText.escaped(title) + "\">");
        out.line("<defs><pattern id=\"hatch\" width=\"7\" height=\"7\" patternUnits=\"userSpaceOnUse\""
                + " patternTransform=\"rotate(45)\"><path class=\"hatching\" d=\"M0 0V7\"/></pattern></defs>");
        out.line("<g transform=\"translate(" + SvgText.n((width - laidOut.width()) / 2) + " 18)\">");
        new DrawingStrokes(laidOut, links).draw(out);
        out.line("</g>");
        legend.draw(out, EDGE, legendTop, width - 2 * EDGE, LEGEND_ROW);
        out.line("</svg>");
        return out.toString();
    }
}
