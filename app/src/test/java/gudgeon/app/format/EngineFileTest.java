package gudgeon.app.format;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.engine.Condition;
import gudgeon.core.engine.Engine;
import gudgeon.core.engine.Joint;
import gudgeon.core.engine.JointKind;
import gudgeon.core.engine.Literal;
import gudgeon.core.engine.Precedence;
import gudgeon.core.engine.Ready;
import gudgeon.core.engine.ReadyKind;
import gudgeon.core.engine.Spend;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Good files: what is read, and what is derived, against values worked out by hand from docs/engine-file.md. */
class EngineFileTest {
    private static final String HEAD = """
            format: 1
            engine: { id: test, name: Test, base: stand, cylinders: 2 }
            zones: { top: {}, underneath: { go: 6 min, back: 3 min } }
            """;

    static Engine sound(String text) {
        Reading reading = EngineFile.read("test.yaml", text.getBytes(StandardCharsets.UTF_8));
        if (reading instanceof Reading.Faulty faulty) {
            throw new AssertionError(String.join(
                    "\n", faulty.problems().stream().map(Problem::text).toList()));
        }
        return ((Reading.Sound) reading).engine();
    }

    private static final String SMALL = HEAD + """
            circuits:
              oil: { fluid: engine oil, capacity: 600 ml, drains: [{ joint: plug, height: -40 mm, spec: copper washer }] }
            parts:
              stand: { mass: 20 kg }
              case: { mass: 4 kg }
              head: { mass: 2.5 lb, lift: [cap-1] }
              plug-body: { mass: 30 g }
              cap-#: { mass: 100 g, each: cylinder }
              wheel: { mass: 2 kg }
            joints:
              case-bolts: { between: [case, stand], fasteners: [{ count: 3, kind: bolt, thread: M8, drive: hexagon 13 mm }], difficulty: 1.5 }
              plug: { between: [plug-body, case], zone: underneath, fasteners: [{ kind: plug, drive: hexagon 17 mm }], seals: [{ washer: copper washer, once: true, price: 0.5 }] }
              head-nuts:
                between: [head, case]
                engine: cold
                opens: [oil]
                access: [{ any: [cap-*, [{ joint: plug }, wheel]] }]
                fasteners: [{ count: 4, kind: stud and nut, thread: M8x1.25, drive: hexagon 12 mm, once: nut, at: [[0,0],[50,0],[50,50],[0,50]] }]
                tighten: [{ torque: 17.7 lbf·ft, thread: oiled }]
                pattern: cross
                seizure: { chance: 10 %, time: 90 min, risk: snaps }
              cap-screws-#: { between: [cap-#, head], each: cylinder, fasteners: [{ kind: screw, drive: slot }], engine: warm }
              wheel-nut:
                between: [wheel, case]
                kind: bolted
                hold: { intact: [head-nuts, [cap-screws-1, cap-screws-2]] }
                crack_loose: true
                fasteners: [{ kind: nut, thread: M12x1.25, hand: left, drive: hexagon 19 mm }]
            """;

    @Test
    void readsPartsAndCopies() {
        Engine engine = sound(SMALL);
        assertThat(engine.parts().stream().map(part -> part.id()))
                .containsExactly("stand", "case", "head", "plug-body", "cap-1", "cap-2", "wheel");
        // 2.5 lb at 0.45359237 kg (international pound)
        assertThat(engine.part("head").massKilograms())
                .isEqualTo(1.133980925, org.assertj.core.api.Assertions.within(1e-12));
        assertThat(engine.part("head").mass().orElseThrow().typed()).isEqualTo("2.5 lb");
        assertThat(engine.part("case").name()).isEqualTo("Case");
        assertThat(engine.workplace().startZone()).isEqualTo("top");
        assertThat(engine.workplace().zones().stream().map(zone -> zone.id()))
                .containsExactly("top", "underneath", "bench");
        assertThat(engine.zone("underneath").goSeconds()).isEqualTo(360);
        assertThat(engine.workplace().waysOfLifting().stream().map(way -> way.limitKilograms()))
                .containsExactly(25.0, 50.0, 500.0);
        assertThat(engine.identity().sha256()).hasSize(64).matches("[0-9a-f]+");
    }

    @Test
    void derivesTimesToolsAndSpends() {
        Engine engine = sound(SMALL);
        Joint bolts = engine.joint("case-bolts");
        assertThat(bolts.work().undo().fastenerSeconds()).isEqualTo(225); // 3 bolts of 50 s, 1.5 times
        assertThat(bolts.work().buildSeconds()).isEqualTo(293); // 292.5, half up
        assertThat(bolts.work().tools()).containsExactly("socket or spanner 13 mm");
        Joint head = engine.joint("head-nuts");
        assertThat(head.work().undo().expectedSeconds()).isEqualTo(240 + 540); // 4 x 60 s, 10 % of 90 min
        assertThat(head.makeup().spends()).containsExactly(new Spend("nut M8x1.25", 4, OptionalDouble.empty()));
        assertThat(head.makeup().pattern()).containsExactly(1, 3, 2, 4);
        // 17.7 lbf·ft = 17.7 x 0.3048 m x 4.4482216152605 N
        assertThat(head.makeup().stages().getFirst().torque().orElseThrow().newtonMetres())
                .isEqualTo(23.998, org.assertj.core.api.Assertions.within(0.0005));
    }

    @Test
    void derivesDrainsAndCrackLoose() {
        Engine engine = sound(SMALL);
        assertThat(engine.ready().stream().map(Ready::id)).containsExactly("drain-plug", "crack-wheel-nut");
        Ready drain = engine.ready("drain-plug");
        assertThat(drain.kind()).isEqualTo(ReadyKind.DRAIN);
        assertThat(drain.joint()).contains("plug");
        assertThat(drain.zone()).isEqualTo("underneath");
        assertThat(drain.effect().height_mm()).hasValue(-40);
        assertThat(drain.effect().spends()).containsExactly(new Spend("copper washer", 2, OptionalDouble.of(0.5)));
        assertThat(engine.joint("plug").freedom().drains()).containsExactly("oil");
        assertThat(engine.circuit("oil").drains()).containsExactly("drain-plug");
        Ready crack = engine.ready("crack-wheel-nut");
        assertThat(crack.effect().hold().alternatives())
                .containsExactly(List.of("head-nuts"), List.of("cap-screws-1", "cap-screws-2"));
        assertThat(engine.joint("wheel-nut").freedom().hold()).isEqualTo(Joint.Hold.NONE);
        assertThat(engine.joint("wheel-nut").freedom().needs()).containsExactly("crack-wheel-nut");
        assertThat(engine.joint("wheel-nut").makeup().fasteners().getFirst().thread())
                .isEqualTo("M12x1.25 LH");
    }

    @Test
    void readsAlternativesAndCopiesInConditions() {
        Condition access = sound(SMALL).joint("head-nuts").freedom().access();
        assertThat(access.clauses()).hasSize(1);
        assertThat(access.clauses().getFirst().alternatives().stream().map(Condition.Alternative::literals))
                .containsExactly(
                        List.of(new Literal.PartAway("cap-1")),
                        List.of(new Literal.PartAway("cap-2")),
                        List.of(new Literal.JointUndone("plug"), new Literal.PartAway("wheel")));
    }

    @Test
    void warmComesBeforeColdAndBeforeDrains() {
        assertThat(sound(SMALL).rules().precedences().stream().map(pair -> pair.first() + " < " + pair.then()))
                .containsExactly(
                        "cap-screws-1 < head-nuts",
                        "cap-screws-1 < drain-plug",
                        "cap-screws-2 < head-nuts",
                        "cap-screws-2 < drain-plug");
        assertThat(sound(SMALL).rules().precedences())
                .extracting(Precedence::why)
                .contains(WarmFirst.BEFORE_COLD, WarmFirst.BEFORE_DRAIN);
    }

    @Test
    void aFlexibleJointHoldsThreeKilogramsUnlessItSaysOtherwise() {
        String file = HEAD + """
                parts: { stand: {mass: 9 kg}, a: {mass: 1 kg}, b: {mass: 1 kg}, c: {mass: 1 kg} }
                joints:
                  one: { between: [stand, a], fasteners: [{ kind: worm clip }], flexible: true }
                  two: { between: [stand, b], kind: plug, short: true }
                  three: { between: [stand, c], kind: snap, holds: 500 g }
                """;
        Engine engine = sound(file);
        assertThat(engine.joint("one").hang()).contains(new Joint.Hang(3, java.util.Optional.empty()));
        assertThat(engine.joint("one").kind()).isEqualTo(JointKind.HOSE_CLIP);
        assertThat(engine.joint("two").hang()).contains(new Joint.Hang(0, java.util.Optional.empty()));
        assertThat(engine.joint("three").hang()).contains(new Joint.Hang(0.5, java.util.Optional.empty()));
        assertThat(engine.joint("three").work().undo().fastenerSeconds()).isEqualTo(JointKind.SNAP.seconds());
    }

    private static List<String> remarks(String text) {
        Reading reading = EngineFile.read("test.yaml", text.getBytes(StandardCharsets.UTF_8));
        assertThat(reading).isInstanceOf(Reading.Sound.class);
        return ((Reading.Sound) reading).remarks().stream().map(Problem::text).toList();
    }

    @Test
    void warnsAndRemarksWithoutRefusing() {
        String file = HEAD + """
                circuits: { coolant: { fluid: coolant, stays: true }, gas: { kind: refrigerant } }
                parts:
                  stand: {mass: 9 kg}
                  a: {mass: 1 kg, lift: [b]}
                  b: {mass: 1 kg, lift: [a]}
                  c: {}
                  d: {mass: 1 kg}
                joints:
                  one: { between: [stand, a], kind: slide, opens: [coolant] }
                  two: { between: [stand, b], kind: slide }
                  three: { between: [stand, c], fasteners: [{ kind: bolt, thread: M6, class: 4.6 }], tighten: [{ torque: 12 N·m, thread: dry }] }
                  four: { between: [stand, d], kind: snap, opens: [gas] }
                order:
                  - { first: one, then: two, why: for the test }
                  - { first: two, then: one, why: for the test }
                """;
        assertThat(remarks(file))
                .containsExactly(
                        "test.yaml:7:19: remark: these parts wait for each other and leave together or not at all: a, b",
                        "test.yaml:9:3: warning: the part c has no mass and counts as more than one person can lift; add mass; an estimate is better than none",
                        "test.yaml:10:3: remark: the part d comes off only by licensed practice",
                        "test.yaml:12:3: warning: each of these has to come before the other: one, two; no plan can have all of them; check order, before, and warm against cold",
                        "test.yaml:14:98: warning: 12 N·m is much for an M6 of class 4.6; its proof load is reached at about 5.4 N·m (typical estimate). Check torque and class");
        assertThat(sound(file).joint("four").freedom().licensed()).isTrue();
    }
}
