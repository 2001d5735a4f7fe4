package gudgeon.app.document;

/** The style sheet inside a drawing. */
final class DrawingStyle {
    private static final String RULES = """
            .engine-drawing{font-family:Sheet,'Barlow Condensed','Arial Narrow',sans-serif;font-weight:500;font-variant-numeric:tabular-nums}
            .engine-drawing text{fill:var(--ink)}
            .engine-drawing .ground{fill:var(--paper)}
            .engine-drawing .border{fill:none;stroke:var(--ink);stroke-width:2}
            .engine-drawing .edge,.engine-drawing .thin{fill:none;stroke:var(--ink);stroke-width:1}
            .engine-drawing .zone{font-size:13px;text-anchor:middle;fill:var(--soft)}
            .engine-drawing .part{fill:var(--sheet);stroke:var(--ink);stroke-width:1.5}
            .engine-drawing .base{fill:var(--sheet);stroke:var(--ink);stroke-width:2.5}
            .engine-drawing .off{fill:none;stroke:var(--ink);stroke-width:1.5}
            .engine-drawing .hatching{stroke:var(--soft);stroke-width:1.4;fill:none}
            .engine-drawing .patch{fill:var(--paper)}
            .engine-drawing .goal{fill:var(--bluewash);stroke:var(--blue);stroke-width:4}
            .engine-drawing .aside{fill:var(--paper);stroke:var(--ink);stroke-width:1.8;stroke-dasharray:7 4}
            .engine-drawing .group{fill:var(--paper);stroke:var(--soft);stroke-width:1.2}
            .engine-drawing .hatched{fill:url(#hatch)}
            .engine-drawing .list{fill:var(--paper);stroke:var(--ink);stroke-width:1.2}
            .engine-drawing .row{fill:none;stroke:var(--rule);stroke-width:1}
            .engine-drawing .row-name{font-size:13.5px}
            .engine-drawing .reference{font-size:13px;fill:var(--soft)}
            .engine-drawing .panel{fill:none;stroke:var(--rule);stroke-width:1.2}
            .engine-drawing .heading{font-size:17px;font-weight:600}
            .engine-drawing .rules{fill:none;stroke:var(--ink);stroke-width:1.5}
            .engine-drawing .hook{fill:none;stroke:var(--ink);stroke-width:2}
            .engine-drawing .joint{fill:none;stroke:var(--ink);stroke-width:1.4}
            .engine-drawing .flexible{fill:none;stroke:var(--ink);stroke-width:.8}
            .engine-drawing .undone{fill:none;stroke:var(--soft);stroke-width:1.4;stroke-dasharray:5 4}
            .engine-drawing .knot{fill:var(--ink);stroke:var(--ink)}
            .engine-drawing .knot-undone{fill:var(--paper);stroke:var(--ink);stroke-width:1.4;stroke-dasharray:3 2}
            .engine-drawing .tag{fill:var(--sheet);stroke:var(--ink);stroke-width:1}
            .engine-drawing .lift{fill:var(--ink)}
            .engine-drawing .number{font:700 12px Text,'Atkinson Hyperlegible Next',sans-serif;text-anchor:middle}
            .engine-drawing .lift-number{font:700 12px Text,'Atkinson Hyperlegible Next',sans-serif;text-anchor:middle;fill:var(--paper)}
            .engine-drawing .name{font-size:15px;text-anchor:middle}
            .engine-drawing .pipe-name{font-size:13.5px;text-anchor:middle}
            .engine-drawing .goal-name{font-size:15px;font-weight:600;text-anchor:middle}
            .engine-drawing .legend{font-size:14px}
            .engine-drawing .label{font-size:13px;fill:var(--soft)}
            .engine-drawing .cell{font-size:15px;font-weight:600}
            """;

    private DrawingStyle() {}

    static String figureCss() {
        return RULES;
    }

    static String css(EngineDrawing.Options options) {
        StringBuilder css = new StringBuilder();
        if (options.fontsInside()) {
            css.append(Typeface.SHEET_500.fontFace()).append('\n');
            css.append(Typeface.SHEET_600.fontFace()).append('\n');
            css.append(Typeface.TEXT_700.fontFace()).append('\n');
        }
        if (options.theme() != Theme.INHERIT) {
            css.append(".engine-drawing{")
                    .append(options.theme().declarations())
                    .append("}\n");
        }
        return css.append(RULES).toString();
    }
}
