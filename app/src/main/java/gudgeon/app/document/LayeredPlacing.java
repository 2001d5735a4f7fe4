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
import org.eclipse.elk.core.math.ElkMargin;
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
    /** Height of the strip below a box in which step numbers stand. */
    static final double TAG_ROOM = 20;

    private static final double LINE_GAP = 9;
    private static final List<Integer> BOUNDS = List.of(8, 5, 3, 2);

    private static final LayeredPlacing ONLY = new LayeredPlacing();

    private LayeredPlacing() {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
    }

    /** The widest arrangement that is no wider than {@code most}; the narrowest found when there is none. */
    static LaidOut place(DrawnEngine drawn, double most) {
        List<LaidOut> tried = new ArrayList<>();
        tried.add(ONLY.layout(drawn, 0, 1.6));
        if (tried.getLast().width() > most) {
            tried.add(ONLY.layout(drawn, 0, 0.05));
        }
        for (int bound : BOUNDS) {
            if (tried.getLast().width() <= most || drawn.lines().isEmpty()) {
                break;
            }
            if (bound < drawn.boxes().size()) {
                tried.add(ONLY.layout(drawn, bound, 0.05));
            }
        }
        return tried.stream()
                .filter(layout -> layout.width() <= most)
                .findFirst()
                .orElseGet(() -> tried.stream()
                        .min(Comparator.comparingDouble(LaidOut::width))
                        .orElseThrow());
    }

    private LaidOut layout(DrawnEngine drawn, int layerBound, double aspect) {
        ElkNode root = ElkGraphUtil.createGraph();
        options(root, layerBound, aspect);
        Map<String, ElkNode> nodes = new HashMap<>();
        List<DrawnEngine.Box> boxes = new ArrayList<>(drawn.boxes());
        boxes.sort(Comparator.comparingInt(box -> box.seat().order()));
        for (DrawnEngine.Box box : boxes) {
            nodes.put(box.id(), node(root, box, drawn));
        }
        List<ElkEdge> edges = new ArrayList<>();
        for (DrawnEngine.Line line : drawn.lines()) {
            edges.add(edge(known(nodes, line.from()), known(nodes, line.to()), line));
        }
        new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
        List<LaidOut.Placed> placed = new ArrayList<>();
        boxes.forEach(box -> placed.add(placed(box, known(nodes, box.id()))));
        List<LaidOut.Route> routes = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            routes.add(new LaidOut.Route(drawn.lines().get(i), points(edges.get(i))));
        }
        return new LaidOut(root.getWidth(), root.getHeight(), placed, routes, List.of());
    }

    private static void options(ElkNode root, int layerBound, double aspect) {
        root.setProperty(CoreOptions.ASPECT_RATIO, aspect);
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
        root.setProperty(LayeredOptions.NODE_PLACEMENT_STRATEGY, NodePlacementStrategy.NETWORK_SIMPLEX);
        if (layerBound > 0) {
            root.setProperty(LayeredOptions.LAYERING_STRATEGY, LayeringStrategy.COFFMAN_GRAHAM);
            root.setProperty(LayeredOptions.LAYERING_COFFMAN_GRAHAM_LAYER_BOUND, layerBound);
        }
    }

    private static ElkNode node(ElkNode root, DrawnEngine.Box box, DrawnEngine drawn) {
        ElkNode node = ElkGraphUtil.createNode(root);
        double forTags = 10;
        double forEnds = 10;
        boolean tagged = false;
        for (DrawnEngine.Line line : drawn.lines()) {
            if (line.from().equals(box.id())) {
                forTags += Math.max(LINE_GAP, BoxSize.tag(line.tag())) + 5;
                tagged |= !line.tag().isEmpty();
            }
            forEnds += line.to().equals(box.id()) ? LINE_GAP : 0;
        }
        BoxSize size = BoxSize.of(box);
        double width = Math.max(size.width(), Math.max(forTags, forEnds));
        node.setDimensions(width, size.height() + (tagged ? TAG_ROOM : 0));
        node.setProperty(CoreOptions.SPACING_PORTS_SURROUNDING, new ElkMargin(0, 4, 0, 4));
        node.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_SIDE);
        if (box.base()) {
            node.setProperty(LayeredOptions.LAYERING_LAYER_CONSTRAINT, LayerConstraint.LAST);
        }
        return node;
    }

    private static ElkEdge edge(ElkNode from, ElkNode to, DrawnEngine.Line line) {
        ElkPort out = ElkGraphUtil.createPort(from);
        out.setDimensions(Math.max(2, BoxSize.tag(line.tag())), 0);
        out.setProperty(CoreOptions.PORT_SIDE, PortSide.SOUTH);
        ElkPort in = ElkGraphUtil.createPort(to);
        in.setDimensions(2, 0);
        in.setProperty(CoreOptions.PORT_SIDE, PortSide.NORTH);
        return ElkGraphUtil.createSimpleEdge(out, in);
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
