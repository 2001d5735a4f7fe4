package gudgeon.app.document;

import java.util.ArrayList;
import java.util.List;

/** Places a whole scene: a small one as one layered drawing, a large one in panels over the base. */
final class SheetPlacing {
    /** More boxes than this, or a layout wider than the sheet, go into panels. */
    private static final int ONE_PANEL = 45;

    private static final double HEAD = 26;
    private static final double PAD = 10;
    private static final double BASE_HEIGHT = 36;

    private SheetPlacing() {}

    static LaidOut place(DrawingScene.Scene scene, double most) {
        if (scene.boxes().size() <= ONE_PANEL) {
            LaidOut whole = LayeredPlacing.place(DrawnEngine.of(scene.boxes(), scene.ties()), most);
            if (whole.width() <= most) {
                return whole;
            }
        }
        return inPanels(scene, most);
    }

    private static LaidOut inPanels(DrawingScene.Scene scene, double most) {
        List<Panels.Panel> panels = Panels.of(scene, true);
        List<Panels.Panel> narrow = Panels.of(scene, false);
        List<LaidOut> layouts = new ArrayList<>();
        List<PanelPacking.Size> sizes = new ArrayList<>();
        for (int i = 0; i < panels.size(); i++) {
            Panels.Panel panel = panels.get(i);
            LaidOut layout = LayeredPlacing.place(panel.drawn(), most - 2 * PAD);
            if (layout.width() > most - 2 * PAD) {
                layout = LayeredPlacing.place(narrow.get(i).drawn(), most - 2 * PAD);
            }
            layouts.add(layout);
            double heading = Typeface.SHEET_600.width(panel.heading(), 17) + 8;
            sizes.add(new PanelPacking.Size(
                    Math.max(layout.width(), heading) + 2 * PAD, layout.height() + HEAD + 2 * PAD));
        }
        List<LaidOut.Placed> boxes = new ArrayList<>();
        List<LaidOut.Route> routes = new ArrayList<>();
        List<LaidOut.Frame> frames = new ArrayList<>();
        double width = 0;
        double height = 0;
        for (PanelPacking.Slot slot : PanelPacking.pack(sizes, most)) {
            LaidOut layout = layouts.get(slot.index()).moved(slot.x() + PAD, slot.y() + HEAD + PAD);
            boxes.addAll(layout.boxes());
            routes.addAll(layout.routes());
            frames.add(new LaidOut.Frame(
                    panels.get(slot.index()).heading(),
                    slot.x(),
                    slot.y(),
                    slot.size().width(),
                    slot.size().height()));
            width = Math.max(width, slot.right());
            height = Math.max(height, slot.bottom());
        }
        for (DrawnEngine.Box box : scene.boxes()) {
            if (box.base()) {
                boxes.add(new LaidOut.Placed(box, 0, height + 16, width, BASE_HEIGHT));
                height += 16 + BASE_HEIGHT;
            }
        }
        return new LaidOut(width, height, boxes, routes, frames);
    }
}
