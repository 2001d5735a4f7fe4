package gudgeon.app.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Places a whole scene: a small one as one layered drawing, a large one in panels over the base, on one sheet or several. */
final class SheetPlacing {
    /** More boxes than this, or a layout wider than the sheet, go into panels. */
    private static final int ONE_PANEL = 45;

    private static final double HEAD = 26;
    private static final double PAD = 10;
    private static final double BASE_GAP = 16;
    private static final double BASE_HEIGHT = 36;
    private static final double LOWER = 0.95;

    private final DrawingScene.Scene scene;
    private final double most;
    private final List<String> headings = new ArrayList<>();
    private final List<LaidOut> layouts = new ArrayList<>();
    private final List<PanelPacking.Size> sizes = new ArrayList<>();

    private SheetPlacing(DrawingScene.Scene scene, double most) {
        this.scene = scene;
        this.most = most;
        List<Panels.Panel> panels = Panels.of(scene, true);
        List<Panels.Panel> narrow = Panels.of(scene, false);
        for (int i = 0; i < panels.size(); i++) {
            Panels.Panel panel = panels.get(i);
            LaidOut layout = LayeredPlacing.place(panel.drawn(), most - 2 * PAD);
            if (layout.width() > most - 2 * PAD) {
                layout = LayeredPlacing.place(narrow.get(i).drawn(), most - 2 * PAD);
            }
            headings.add(panel.heading());
            layouts.add(layout);
            double heading = Typeface.SHEET_600.width(panel.heading(), 17) + 8;
            sizes.add(new PanelPacking.Size(
                    Math.max(layout.width(), heading) + 2 * PAD, layout.height() + HEAD + 2 * PAD));
        }
    }

    /** On one sheet, as high as it gets. */
    static LaidOut place(DrawingScene.Scene scene, double most) {
        if (scene.boxes().size() <= ONE_PANEL) {
            LaidOut whole = LayeredPlacing.place(DrawnEngine.of(scene.boxes(), scene.ties()), most);
            if (whole.width() <= most) {
                return whole;
            }
        }
        SheetPlacing placing = new SheetPlacing(scene, most);
        return placing.arranged(all(placing.sizes.size()));
    }

    /**
     * On as many sheets as it needs, each with the base at its foot: panels from the largest to the smallest, each on the first
     * sheet that has room for it. A panel that is higher than a sheet has a sheet of its own.
     */
    static List<LaidOut> place(DrawingScene.Scene scene, double most, double height) {
        LaidOut whole = place(scene, most);
        if (whole.height() <= height) {
            return List.of(whole);
        }
        SheetPlacing placing = new SheetPlacing(scene, most);
        return placing.even(height - BASE_GAP - BASE_HEIGHT).stream()
                .map(placing::arranged)
                .toList();
    }

    /** As few sheets as for the whole height, none much fuller than the others. */
    private List<List<Integer>> even(double height) {
        List<List<Integer>> best = sheets(height);
        for (double lower = height * LOWER; lower > height / 3; lower *= LOWER) {
            List<List<Integer>> next = sheets(lower);
            boolean high = next.stream().anyMatch(sheet -> !fits(sheet, height));
            if (next.size() > best.size() || high) {
                break;
            }
            best = next;
        }
        return best;
    }

    private static List<Integer> all(int count) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.add(i);
        }
        return all;
    }

    /** The panels of each sheet, in the order of the engine file. */
    private List<List<Integer>> sheets(double height) {
        List<Integer> bySize = all(sizes.size());
        bySize.sort(Comparator.comparingDouble(
                i -> -sizes.get(i).height() * sizes.get(i).width()));
        List<List<Integer>> sheets = new ArrayList<>();
        for (int panel : bySize) {
            List<Integer> sheet = sheets.stream()
                    .filter(panels -> fits(panels, panel, height))
                    .findFirst()
                    .orElseGet(() -> {
                        sheets.add(new ArrayList<>());
                        return sheets.getLast();
                    });
            sheet.add(panel);
        }
        sheets.forEach(sheet -> sheet.sort(Comparator.naturalOrder()));
        sheets.sort(Comparator.comparingInt(sheet -> sheet.getFirst()));
        return sheets;
    }

    private boolean fits(List<Integer> panels, int more, double height) {
        List<Integer> together = new ArrayList<>(panels);
        together.add(more);
        return fits(together, height);
    }

    private boolean fits(List<Integer> panels, double height) {
        return PanelPacking.pack(panels.stream().map(sizes::get).toList(), most).stream()
                .allMatch(slot -> slot.bottom() <= height);
    }

    private LaidOut arranged(List<Integer> panels) {
        List<LaidOut.Placed> boxes = new ArrayList<>();
        List<LaidOut.Route> routes = new ArrayList<>();
        List<LaidOut.Frame> frames = new ArrayList<>();
        double width = 0;
        double height = 0;
        for (PanelPacking.Slot slot :
                PanelPacking.pack(panels.stream().map(sizes::get).toList(), most)) {
            int panel = panels.get(slot.index());
            LaidOut layout = layouts.get(panel).moved(slot.x() + PAD, slot.y() + HEAD + PAD);
            boxes.addAll(layout.boxes());
            routes.addAll(layout.routes());
            frames.add(new LaidOut.Frame(
                    headings.get(panel),
                    slot.x(),
                    slot.y(),
                    slot.size().width(),
                    slot.size().height()));
            width = Math.max(width, slot.right());
            height = Math.max(height, slot.bottom());
        }
        for (DrawnEngine.Box box : scene.boxes()) {
            if (box.base()) {
                boxes.add(new LaidOut.Placed(box, 0, height + BASE_GAP, width, BASE_HEIGHT));
                height += BASE_GAP + BASE_HEIGHT;
            }
        }
        return new LaidOut(width, height, boxes, routes, frames);
    }
}
