package gudgeon.bench.selective;

import gudgeon.core.planning.Sequencer;
import gudgeon.core.planning.SequencingAnswer;
import gudgeon.core.planning.Sequencing;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A pump taken apart part by part: each leaves along one of two directions once nothing is in its way there, with its tool;
 * changing tool, changing direction and, if wanted, going from part to part cost. By a table over sets, and, without the
 * ways, by the order search, whose sequence is charged the same.
 */
final class GearPump {
    private static final double FAR = Double.POSITIVE_INFINITY;

    private final int n;
    private final double[] basic;
    private final double[] tool;
    private final double[][][] blocks;
    private final double[][] toolPenalty;
    private final double[][] directionPenalty;
    private final double[][] distance;
    private final double speed;

    private GearPump(Map<String, double[][]> data) {
        basic = row(data, "basictime");
        tool = row(data, "Disassembly_tool");
        blocks = new double[][][] {matrix(data, "Direction_Y_plus"), matrix(data, "Direction_Y_minus")};
        toolPenalty = matrix(data, "tool_penalty");
        directionPenalty = matrix(data, "direction_penalty");
        distance = matrix(data, "distance");
        speed = matrix(data, "ve")[0][0];
        n = basic.length;
    }

    private static double[][] matrix(Map<String, double[][]> data, String name) {
        double[][] found = data.get(name);
        if (found == null) {
            throw new IllegalArgumentException("the pump's file has no " + name + ", only " + data.keySet());
        }
        return found;
    }

    private static double[] row(Map<String, double[][]> data, String name) {
        return matrix(data, name)[0];
    }

    static GearPump read(Path file) throws IOException {
        return new GearPump(MatFile.read(file));
    }

    double basicTotal() {
        return Arrays.stream(basic).sum();
    }

    /** The least total by a table over the parts that are off, the last one and its direction. */
    double table(boolean travel) {
        Map<Integer, double[]> layer = new HashMap<>();
        for (int i = 0; i < n; i++) {
            for (int d = 0; d < 2; d++) {
                if (free(0, i, d)) {
                    put(layer, 1 << i, 2 * i + d, basic[i]);
                }
            }
        }
        for (int off = 1; off < n; off++) {
            Map<Integer, double[]> next = new HashMap<>();
            for (Map.Entry<Integer, double[]> entry : layer.entrySet()) {
                extend(entry.getKey(), entry.getValue(), travel, next);
            }
            layer = next;
        }
        double[] all = layer.getOrDefault((1 << n) - 1, new double[] {FAR});
        return Arrays.stream(all).min().orElse(FAR);
    }

    private void extend(int set, double[] costs, boolean travel, Map<Integer, double[]> next) {
        for (int at = 0; at < 2 * n; at++) {
            for (int i = 0; costs[at] < FAR && i < n; i++) {
                for (int d = 0; d < 2; d++) {
                    if ((set >> i & 1) == 0 && free(set, i, d)) {
                        double way = travel ? distance[at / 2][i] / speed : 0;
                        put(next, set | 1 << i, 2 * i + d, costs[at] + basic[i] + change(at / 2, at % 2, i, d) + way);
                    }
                }
            }
        }
    }

    private void put(Map<Integer, double[]> layer, int set, int at, double cost) {
        double[] costs = layer.computeIfAbsent(set, key -> {
            double[] far = new double[2 * n];
            Arrays.fill(far, FAR);
            return far;
        });
        costs[at] = Math.min(costs[at], cost);
    }

    private double change(int from, int fromDirection, int to, int direction) {
        return toolPenalty[(int) tool[from] - 1][(int) tool[to] - 1] + directionPenalty[fromDirection][direction];
    }

    private boolean free(int off, int part, int direction) {
        for (int other = 0; other < n; other++) {
            if ((off >> other & 1) == 0 && other != part && blocks[direction][part][other] == 1) {
                return false;
            }
        }
        return true;
    }

    /** The same without ways by the order search: contexts are tool and direction, a part has a mode for each direction. */
    SequencingAnswer searched() {
        int tools = toolPenalty.length;
        int k = 1 + 2 * tools;
        int[][] change = new int[k][k];
        for (int a = 1; a < k; a++) {
            change[a][0] = 100;
            for (int b = 1; b < k; b++) {
                change[a][b] = (int) (toolPenalty[(a - 1) / 2][(b - 1) / 2] + directionPenalty[(a - 1) % 2][(b - 1) % 2]);
            }
        }
        List<List<Sequencing.Mode>> modes = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            List<Sequencing.Mode> own = new ArrayList<>();
            for (int d = 0; d < 2; d++) {
                List<Integer> needs = new ArrayList<>();
                for (int other = 0; other < n; other++) {
                    if (other != i && blocks[d][i][other] == 1) {
                        needs.add(other);
                    }
                }
                own.add(new Sequencing.Mode(1 + 2 * ((int) tool[i] - 1) + d, needs));
            }
            modes.add(own);
        }
        int[] place = new int[k];
        for (int c = 1; c < k; c++) {
            place[c] = 1 + (c - 1) % 2;
        }
        return Sequencer.best(new Sequencing(modes, change, new int[k], place, 0), 1_000_000);
    }
}
