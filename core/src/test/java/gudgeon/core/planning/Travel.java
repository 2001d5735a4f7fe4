package gudgeon.core.planning;

import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Zone;
import java.util.List;

/** Times between zones, closed under shortest paths, as docs/planning.md defines them. For the checks only. */
final class Travel {
    private Travel() {}

    static long between(Engine engine, String from, String to) {
        List<Zone> zones = engine.workplace().zones();
        int n = zones.size();
        long[][] d = new long[n][n];
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                d[a][b] = a == b ? 0 : zones.get(a).backSeconds() + zones.get(b).goSeconds();
            }
        }
        for (int k = 0; k < n; k++) {
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    d[a][b] = Math.min(d[a][b], d[a][k] + d[k][b]);
                }
            }
        }
        return d[zones.indexOf(engine.zone(from))][zones.indexOf(engine.zone(to))];
    }
}
