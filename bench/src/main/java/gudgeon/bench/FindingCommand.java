package gudgeon.bench;

import gudgeon.app.format.FindingKnowledge;
import gudgeon.core.finding.Diagnosis;
import gudgeon.core.finding.EngineFacts;
import gudgeon.core.finding.EngineModel;
import gudgeon.core.finding.NextTests;
import gudgeon.core.finding.Observation;
import gudgeon.core.finding.OpeningCosts;
import gudgeon.core.finding.Posterior;
import gudgeon.core.finding.Simulation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "finding",
        description = "Finding faults: time against cylinders and findings, and whether beliefs come true as often as they say.")
final class FindingCommand implements Callable<Integer> {
    private static final List<String> ENGINE_FINDINGS = List.of(
            "complaint", "vac_low", "blue_load", "oiluse", "coolloss", "p0300", "trim_lean", "overheat", "blowby", "black");
    private static final double[] BINS = {0.01, 0.05, 0.1, 0.2, 0.35, 0.5, 0.65, 0.8, 0.9, 1.0000001};
    private static final int WARM = 15;

    @Option(names = "--engines", description = "Engines to draw for the calibration.", defaultValue = "10000")
    int engines = 10000;

    @Option(names = "--seed", description = "Where chance begins.", defaultValue = "1")
    long seed = 1;

    @Mixin
    Main.Output output = new Main.Output();

    @Override
    public Integer call() {
        output.print(
                "finding-time",
                "# Posterior and ranking of next tests\n\n" + Table.circumstances()
                        + "\nProcessor time of one thread, median of " + WARM + " after as many to warm up.\n",
                times());
        if (engines > 0) {
            output.print(
                    "finding-calibration",
                    "# What comes true\n\n" + engines + " engines of four cylinders drawn from the model, seed " + seed
                            + ". Beliefs of at least 0.01, by bin; the standard error is that of the share.\n",
                    calibration());
        }
        return 0;
    }

    private Table times() {
        Table table = new Table();
        for (int cylinders : new int[] {1, 2, 4, 6, 8, 12}) {
            time(table, cylinders, 6);
        }
        for (int present : new int[] {0, 2, 4, 8, 10}) {
            time(table, 12, present);
        }
        return table;
    }

    private static void time(Table table, int cylinders, int present) {
        EngineModel model = new EngineModel(FindingKnowledge.shipped(), facts(cylinders));
        List<Observation> seen = observations(cylinders, present);
        List<Double> posterior = new ArrayList<>();
        List<Double> ranking = new ArrayList<>();
        for (int i = 0; i < 2 * WARM; i++) {
            double start = Cpu.threadSeconds();
            Diagnosis diagnosis = new Diagnosis(model, seen);
            double middle = Cpu.threadSeconds();
            new NextTests(diagnosis, OpeningCosts.TYPICAL, Set.of()).ranked();
            double end = Cpu.threadSeconds();
            if (i >= WARM) {
                posterior.add((middle - start) * 1000);
                ranking.add((end - middle) * 1000);
            }
        }
        posterior.sort(null);
        ranking.sort(null);
        Map<String, Object> row = table.row();
        row.put("cylinders", cylinders);
        row.put("observations", seen.size());
        row.put("present findings of the engine", present);
        row.put("posterior ms", Math.rint(posterior.get(WARM / 2) * 10) / 10);
        row.put("ranking ms", Math.rint(ranking.get(WARM / 2) * 10) / 10);
        row.put("together ms", Math.rint((posterior.get(WARM / 2) + ranking.get(WARM / 2)) * 10) / 10);
    }

    static EngineFacts facts(int cylinders) {
        return new EngineFacts(
                false,
                cylinders,
                EngineFacts.Layout.inline(cylinders),
                500e-6 * cylinders,
                9.5,
                new EngineFacts.Healthy(OptionalDouble.of(12e5), false),
                new EngineFacts.Cranking(200, 101325),
                Set.of("petrol", "spark", "liquid", "several", "injection"));
    }

    /** Thirty observations where there are cylinders enough: compressions, codes, two leak-downs, findings of the engine. */
    static List<Observation> observations(int cylinders, int present) {
        List<Observation> seen = new ArrayList<>();
        for (int f = 0; f < present; f++) {
            seen.add(new Observation.Seen("T_X", ENGINE_FINDINGS.get(f), 0, true, 1));
        }
        for (int i = 1; i <= cylinders; i++) {
            double value = i == 3 || cylinders == 1 ? 7.9e5 : (11.6 + 0.1 * (i % 5)) * 1e5;
            seen.add(measured("T_COMP", gudgeon.core.finding.TestKind.Figure.COMPRESSION, i, value));
        }
        seen.add(measured("T_LEAK", gudgeon.core.finding.TestKind.Figure.LEAK, Math.min(3, cylinders), 0.4));
        seen.add(measured("T_LEAK", gudgeon.core.finding.TestKind.Figure.LEAK, 1, 0.1));
        for (int i = 1; i <= cylinders && seen.size() < 30; i++) {
            seen.add(new Observation.Seen("T_DTC", "p030c", i, i == 3, 1));
        }
        return seen;
    }

    private static Observation measured(
            String test, gudgeon.core.finding.TestKind.Figure figure, int cylinder, double value) {
        return new Observation.Measured(
                test,
                figure,
                cylinder,
                value,
                0,
                OptionalDouble.of(gudgeon.core.finding.Instruments.SMALL),
                gudgeon.core.finding.Instruments.USUAL_SUPPLY,
                1);
    }

    private Table calibration() {
        EngineModel model = new EngineModel(FindingKnowledge.shipped(), facts(4));
        Simulation simulation = new Simulation(model, new Random(seed));
        List<String> asked = new ArrayList<>(ENGINE_FINDINGS.subList(0, 6));
        asked.add("p030c");
        asked.add("plug_fuel");
        long[] n = new long[BINS.length - 1];
        long[] came = new long[BINS.length - 1];
        double[] said = new double[BINS.length - 1];
        for (int e = 0; e < engines; e++) {
            Simulation.Drawn drawn = simulation.draw(asked, true, 1);
            Posterior posterior = Diagnosis.posterior(model, drawn.seen(), Diagnosis.BEAM);
            for (Posterior.Belief belief : posterior.beliefs()) {
                int bin = bin(belief.chance());
                if (bin >= 0) {
                    n[bin]++;
                    said[bin] += belief.chance();
                    came[bin] += drawn.truth().contains(belief.fault().id() + "@" + belief.where().label()) ? 1 : 0;
                }
            }
        }
        Table table = new Table();
        for (int b = 0; b < n.length; b++) {
            double share = n[b] == 0 ? 0 : (double) came[b] / n[b];
            Map<String, Object> row = table.row();
            row.put("from", BINS[b]);
            row.put("n", n[b]);
            row.put("said", Math.rint(said[b] / Math.max(1, n[b]) * 1e4) / 1e4);
            row.put("came true", Math.rint(share * 1e4) / 1e4);
            row.put("standard error", Math.rint(Math.sqrt(share * (1 - share) / Math.max(1, n[b])) * 1e4) / 1e4);
        }
        return table;
    }

    private static int bin(double chance) {
        for (int b = 0; b + 1 < BINS.length; b++) {
            if (chance >= BINS[b] && chance < BINS[b + 1]) {
                return b;
            }
        }
        return -1;
    }
}
