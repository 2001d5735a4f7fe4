package gudgeon.core.finding;

import gudgeon.core.finding.CylinderReadings.Answers;
import gudgeon.core.finding.CylinderReadings.Figure;
import gudgeon.core.finding.CylinderReadings.Figures;
import gudgeon.core.finding.CylinderReadings.Heard;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Observations turned into numbers for one model. Their order does not matter: they are sorted first. */
final class Evidence {
    private static final double UNKNOWN_ORIFICE = 0.7; // of the logarithm: 0.040 or 0.060 inch, or another

    private final EngineModel model;
    private final List<FindingKind> asked;
    private final List<FindingKind> present = new ArrayList<>();
    private final List<FindingKind> absent = new ArrayList<>();
    private final List<CylinderReadings> cylinders = new ArrayList<>();

    Evidence(EngineModel model, List<Observation> observations) {
        this.model = model;
        asked = model.cylinderFindings();
        List<Observation> sorted = new ArrayList<>(observations);
        sorted.sort(Comparator.comparingInt(Observation::cylinder)
                .thenComparing(Observation::test)
                .thenComparingInt(Observation::sitting)
                .thenComparing(Observation::toString));
        for (Observation each : sorted) {
            if (each instanceof Observation.Seen seen && seen.cylinder() == 0) {
                (seen.there() ? present : absent).add(kind(seen));
            }
        }
        for (int cylinder = 1; cylinder <= model.facts().cylinders(); cylinder++) {
            cylinders.add(readings(cylinder, sorted));
        }
    }

    private FindingKind kind(Observation.Seen seen) {
        return model.knowledge()
                .findFinding(seen.finding())
                .orElseThrow(() -> new IllegalArgumentException("no finding is called " + seen.finding()));
    }

    private CylinderReadings readings(int cylinder, List<Observation> sorted) {
        Map<String, List<Observation>> sittings = new TreeMap<>();
        for (Observation each : sorted) {
            if (each.cylinder() == cylinder) {
                boolean answer = each instanceof Observation.Seen seen && kind(seen).heard().isEmpty();
                String key = each.test() + " " + each.sitting() + (answer ? " asked" : "");
                sittings.computeIfAbsent(key, any -> new ArrayList<>()).add(each);
            }
        }
        List<Figures> figures = new ArrayList<>();
        List<Answers> answers = new ArrayList<>();
        sittings.forEach((key, together) -> {
            double bad = bad(together.getFirst().test());
            if (key.endsWith(" asked")) {
                answers.add(answers(bad, together));
            } else {
                figures.add(figures(bad, together));
            }
        });
        return new CylinderReadings(figures, answers);
    }

    private double bad(String test) {
        return model.knowledge().findTest(test).map(kind -> kind.badly().chance()).orElse(0.05);
    }

    private Answers answers(double bad, List<Observation> together) {
        int[] findings = new int[together.size()];
        boolean[] there = new boolean[together.size()];
        for (int i = 0; i < findings.length; i++) {
            Observation.Seen seen = (Observation.Seen) together.get(i);
            FindingKind kind = kind(seen);
            findings[i] = asked.indexOf(kind);
            there[i] = seen.there();
        }
        return new Answers(bad, findings, there);
    }

    private Figures figures(double bad, List<Observation> together) {
        List<Figure> values = new ArrayList<>();
        List<Heard> heard = new ArrayList<>();
        for (Observation each : together) {
            switch (each) {
                case Observation.Seen seen ->
                    heard.add(new Heard(kind(seen).heard().orElseThrow(), seen.there()));
                case Observation.Measured measured -> values.add(figure(measured));
            }
        }
        return new Figures(bad, values, heard);
    }

    private Figure figure(Observation.Measured measured) {
        double ambient = model.facts().cranking().ambient();
        return switch (measured.figure()) {
            case COMPRESSION -> new Figure(measured.figure(), Math.log(Math.max(measured.value(), 1)), 0);
            case WET_RATIO -> new Figure(measured.figure(), Math.log(Math.max(measured.value(), 0.01)), measured.oil());
            case LEAK -> {
                double orifices = Instruments.orifices(
                        measured.value(), measured.supply(), measured.orifice().orElse(Instruments.SMALL), ambient);
                yield new Figure(
                        measured.figure(), Math.log(orifices), measured.orifice().isPresent() ? 0 : UNKNOWN_ORIFICE);
            }
            case CURRENT, BALANCE -> new Figure(measured.figure(), measured.value(), 0);
        };
    }

    /**
     * A test that is badly done says yes or no by chance. For findings of the engine this is folded into false alarm and strength
     * so that they stay a noisy-OR: exact with no cause and with one.
     */
    double foldedAlarm(FindingKind finding) {
        double bad = bad(finding.test());
        return bad / 2 + (1 - bad) * finding.falseAlarm();
    }

    private double foldedPass(FindingKind finding, Fault fault) {
        double bad = bad(finding.test());
        double away = bad / 2 + (1 - bad) * (1 - finding.falseAlarm()) * (1 - model.strength(finding, fault));
        return away / (1 - foldedAlarm(finding));
    }

    double[] foldedPasses(FindingKind finding, List<Fault> raisers) {
        return raisers.stream().mapToDouble(fault -> foldedPass(finding, fault)).toArray();
    }

    List<FindingKind> present() {
        return present;
    }

    List<FindingKind> absent() {
        return absent;
    }

    CylinderReadings cylinder(int cylinder) {
        return cylinders.get(cylinder);
    }
}
