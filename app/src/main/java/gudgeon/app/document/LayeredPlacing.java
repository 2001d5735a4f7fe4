package gudgeon.app.document;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.options.CrossingMinimizationStrategy;
import org.eclipse.elk.alg.layered.options.LayerConstraint;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.LayeringStrategy;
import org.eclipse.elk.alg.layered.options.NodePlacementStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * Places boxes in layers, the base at the foot, lines at right angles. The layout is the Eclipse Layout Kernel's; the same
 * drawing gets the same places.
 */
final class LayeredPlacing {
    /** Room for a step number at the upper end of a line. */
    static final double TAG_WIDTH = 18;
    /** Height of the strip below a box in which step numbers stand. */
    static final double TAG_ROOM = 20;

    private static final double ROW_HEIGHT = 16;
    private static final List<Integer> BOUNDS = List.of(14, 11, 9, 8, 7, 6, 5, 4, 3, 2);

    private static final LayeredPlacing ONLY = new LayeredPlacing();

    private LayeredPlacing() {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
    }

    /** The widest arrangement that is no wider than {@code most}; the narrowest found when there is none. */
    static LaidOut place(DrawnEngine drawn, double most) {
        List<LaidOut> tried = new ArrayList<>();
        tried.add(ONLY.layout(drawn, 0));
        for (int bound : BOUNDS) {
            if (tried.getLast().width() <= most) {
                break;
            }
            if (bound < drawn.boxes().size()) {
                tried.add(ONLY.layout(drawn, bound));
            }
        }
        return tried.stream()
                .filter(layout -> layout.width() <= most)
                .findFirst()
                .orElseGet(() -> tried.stream()
                        .min(Comparator.comparingDouble(LaidOut::width))
                        .orElseThrow());
    }

    private LaidOut layout(DrawnEngine drawn, int layerBound) {
        ElkNode root = ElkGraphUtil.createGraph();
        options(root, layerBound);
        Map<String, ElkNode> nodes = new HashMap<>();
        List<DrawnEngine.Box> boxes = new ArrayList<>(drawn.boxes());
        boxes.sort(Comparator.comparingInt(DrawnEngine.Box::order));
        for (DrawnEngine.Box box : boxes) {
            nodes.put(box.id(), node(root, box, drawn));
        }
        List<ElkEdge> edges = new ArrayList<>();
        for (DrawnEngine.Line line : drawn.lines()) {
            edges.add(edge(known(nodes, line.from()), known(nodes, line.to()), line));
        }
        new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
        List<LaidOut.Placed> placed = boxes.stream()
                .map(box -> placed(box, known(nodes, box.id())))
                .toList();
        List<LaidOut.Route> routes = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            routes.add(new LaidOut.Route(drawn.lines().get(i), points(edges.get(i))));
        }
        return new LaidOut(root.getWidth(), root.getHeight(), placed, routes);
    }

    private static void options(ElkNode root, int layerBound) {
        root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        root.setProperty(CoreOptions.DIRECTION, Direction.DOWN);
        root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        root.setProperty(CoreOptions.RANDOM_SEED, 1);
        root.setProperty(CoreOptions.PADDING, new ElkPadding(2));
        root.setProperty(LayeredOptions.SPACING_NODE_NODE, 14.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE, 10.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE, 7.0);
        root.setProperty(LayeredOptions.SPACING_PORT_PORT, 5.0);
        root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, 24.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, 9.0);
        root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, 6.0);
        root.setProperty(LayeredOptions.CROSSING_MINIMIZATION_STRATEGY, CrossingMinimizationStrategy.LAYER_SWEEP);
        root.setProperty(LayeredOptions.THOROUGHNESS, 5);
        root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.BRANDES_KOEPF);
        if (layerBound > 0) {
            root.setProperty(LayeredOptions.LAYERING_STRATEGY, LayeringStrategy.COFFMAN_GRAHAM);
            root.setProperty(LayeredOptions.LAYERING_COFFMAN_GRAHAM_LAYER_BOUND, layerBound);
        }
    }

    private static ElkNode node(ElkNode root, DrawnEngine.Box box, DrawnEngine drawn) {
        ElkNode node = ElkGraphUtil.createNode(root);
        long below = drawn.lines().stream().filter(line -> line.from().equals(box.id())).count();
        long above = drawn.lines().stream().filter(line -> line.to().equals(box.id())).count();
        double forTags = below * (TAG_WIDTH + 8) + 10;
        double forEnds = above * 9.0 + 10;
        double text;
        double height;
        switch (box.shape()) {
            case PART -> {
                text = RowBreaker.widest(box.rows(), Typeface.SHEET_500, RowBreaker.PART_SIZE) + 22;
                double aside = box.state() == DrawnEngine.State.ASIDE ? ROW_HEIGHT : 0;
                height = Math.max(2, box.rows().size()) * ROW_HEIGHT + 12 + aside;
            }
            case PIPE -> {
                text = RowBreaker.widest(box.rows(), Typeface.SHEET_500, RowBreaker.PIPE_SIZE) + 14;
                height = box.rows().size() * 14.0 + 8;
            }
            case KNOT -> {
                text = 30;
                height = 18;
            }
            default -> throw new IllegalStateException("a shape without a size: " + box.shape());
        }
        boolean tagged = drawn.lines().stream()
                .anyMatch(line -> line.from().equals(box.id()) && !line.tag().isEmpty());
        double room = tagged ? TAG_ROOM : 0;
        node.setDimensions(Math.max(text, Math.max(forTags, forEnds)), height + room);
        node.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_SIDE);
        if (box.base()) {
            node.setProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT, LayerConstraint.LAST);
        }
        return node;
    }

    private static ElkEdge edge(ElkNode from, ElkNode to, DrawnEngine.Line line) {
        ElkPort out = ElkGraphUtil.createPort(from);
        double tag = Math.max(TAG_WIDTH, tagWidth(line.tag()));
        out.setDimensions(tag, 0);
        out.setProperty(CoreOptions.PORT_SIDE, PortSide.SOUTH);
        ElkPort in = ElkGraphUtil.createPort(to);
        in.setDimensions(2, 0);
        in.setProperty(CoreOptions.PORT_SIDE, PortSide.NORTH);
        return ElkGraphUtil.createSimpleEdge(out, in);
    }

    /** Width of a step number's box. */
    static double tagWidth(String tag) {
        return Typeface.TEXT_700.width(tag, 12) + 8;
    }

    private static LaidOut.Placed placed(DrawnEngine.Box box, ElkNode node) {
        return new LaidOut.Placed(box, node.getX(), node.getY(), node.getWidth(), node.getHeight());
    }

    private static List<LaidOut.Point> points(ElkEdge edge) {
        List<LaidOut.Point> points = new ArrayList<>();
        for (ElkEdgeSection section : edge.getSections()) {
            points.add(new LaidOut.Point(section.getStartX(), section.getStartY()));
            section.getBendPoints().forEach(bend -> points.add(new LaidOut.Point(bend.getX(), bend.getY())));
            points.add(new LaidOut.Point(section.getEndX(), section.getEndY()));
        }
        return points;
    }

    private static ElkNode known(Map<String, ElkNode> nodes, String id) {
        ElkNode node = nodes.get(id);
        if (node == null) {
            throw new IllegalArgumentException("a line ends at " + id + ", which is not drawn");
        }
        return node;
    }
}
