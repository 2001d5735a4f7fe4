package gudgeon.core.finding;

import gudgeon.core.finding.FindingKind.Path;
import gudgeon.core.finding.FindingKind.Strength;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A small invented knowledge for tests: large chances, so that sets of faults matter. */
final class SmallKnowledge {
    private SmallKnowledge() {}

    static Knowledge knowledge() {
        Map<String, Fault> faults = Knowledge.byId(
                List.of(
                        fault("VALVE", Place.CYLINDER, .08, Map.of("BELT", .3), Depth.HEAD_OFF, false,
                                grade(.4, new Leak(.6, 0, 0, 0, 0, 0, 0), 1, 0, .8),
                                grade(.6, new Leak(3, 0, 0, 0, 0, 0, 0), 1, 0, .3)),
                        fault("RING", Place.CYLINDER, .06, Map.of(), Depth.BOTTOM_END, false,
                                grade(1, new Leak(0, 0, 1.5, 0, 0, 0, 0), 1, .6, .8)),
                        fault("PLUG", Place.CYLINDER, .15, Map.of(), Depth.NONE, false),
                        fault("LOBE", Place.CYLINDER, .04, Map.of(), Depth.COVERS, false,
                                grade(1, Leak.NONE, .8, 0, .5)),
                        fault("BREACH", Place.NEIGHBOURS, .05, Map.of(), Depth.HEAD_OFF, false,
                                grade(.5, new Leak(0, 0, 0, 0, 1.5, 0, 0), 1, 0, .5),
                                grade(.5, new Leak(0, 0, 0, 0, 5, 0, 0), 1, 0, .1)),
                        fault("BELT", Place.ENGINE, .07, Map.of(), Depth.COVERS, false,
                                grade(.5, Leak.NONE, .9, 0, .9),
                                grade(.5, Leak.NONE, .7, 0, .7)),
                        fault("WEAR", Place.ENGINE, .1, Map.of(), Depth.BOTTOM_END, true,
                                grade(.5, new Leak(0, 0, .6, 0, 0, 0, 0), 1, .6, .9),
                                grade(.5, new Leak(0, 0, 2, 0, 0, 0, 0), 1, .6, .7)),
                        fault("AIR", Place.ENGINE, .12, Map.of(), Depth.NONE, false)),
                Fault::id);
        Map<String, FindingKind> findings = Knowledge.byId(
                List.of(
                        finding("rough", "ASK", Place.ENGINE, .05,
                                Map.of("VALVE", .8, "PLUG", .9, "BELT", .7, "AIR", .6, "BREACH", .9)),
                        finding("smoke", "ASK", Place.ENGINE, .03, Map.of("RING", .6, "WEAR", .7)),
                        finding("lean", "READER", Place.ENGINE, .04, Map.of("AIR", .8)),
                        finding("code", "READER", Place.CYLINDER, .02, Map.of("VALVE", .7, "PLUG", .8, "AIR", .1)),
                        new FindingKind("hiss", "LEAK", Place.CYLINDER, "hiss", 0, Optional.of(Path.EXHAUST), Map.of())),
                FindingKind::id);
        Map<String, TestKind> tests = Knowledge.byId(
                List.of(
                        test("ASK", Optional.empty(), .04),
                        test("READER", Optional.empty(), .05),
                        test("COMP", Optional.of(TestKind.Figure.COMPRESSION), .05),
                        test("LEAK", Optional.of(TestKind.Figure.LEAK), .06)),
                TestKind::id);
        return new Knowledge(faults, findings, tests, Map.of(), physics());
    }

    static EngineFacts facts(int cylinders) {
        return new EngineFacts(
                false,
                cylinders,
                EngineFacts.Layout.inline(cylinders),
                500e-6 * cylinders,
                9.5,
                new EngineFacts.Healthy(OptionalDouble.of(12e5), true),
                new EngineFacts.Cranking(200, 101325),
                Set.of("petrol"));
    }

    private static Fault fault(
            String id, Place at, double chance, Map<String, Double> with, Depth mended, boolean each, Grade... grades) {
        return new Fault(
                id,
                new Fault.Words(id, "", ""),
                at,
                List.of(),
                new Fault.Chance(chance, with),
                new Fault.Repair(List.of(), Depth.NONE, mended, 5),
                each,
                List.of(grades));
    }

    private static Grade grade(double share, Leak leak, double fill, double closes, double power) {
        return new Grade(share, leak, fill, 1, closes, power, .3);
    }

    private static FindingKind finding(String id, String test, Place at, double alarm, Map<String, Double> raised) {
        Map<String, Strength> strengths = new LinkedHashMap<>();
        raised.forEach((fault, q) -> strengths.put(fault, new Strength(q, Support.JUDGEMENT, List.of())));
        return new FindingKind(id, test, at, id, alarm, Optional.empty(), strengths);
    }

    private static TestKind test(String id, Optional<TestKind.Figure> reads, double badly) {
        return new TestKind(
                id,
                id,
                "",
                List.of(),
                new TestKind.Effort(List.of(), 5, 1, List.of(), "", Optional.empty()),
                reads,
                new TestKind.Badly(badly, List.of()),
                List.of());
    }

    private static Physics physics() {
        Map<Path, Physics.Hearing> hearing = new EnumMap<>(Path.class);
        for (Path path : Path.values()) {
            hearing.put(path, new Physics.Hearing(.03, .95, .4, 2));
        }
        return new Physics(
                new Physics.Healthy(.45, .25),
                new Physics.Compression(.05, .04, .1, .2, .05, .28, .15),
                new Physics.Wet(.05, .9),
                .3,
                .07,
                .15,
                hearing,
                .4);
    }
}
