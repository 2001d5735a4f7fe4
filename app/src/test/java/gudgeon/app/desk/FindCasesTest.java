package gudgeon.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import gudgeon.app.desk.FindQuestion.Answer;
import gudgeon.app.format.FindingCase;
import gudgeon.app.format.FindingCaseReader;
import gudgeon.core.finding.Depth;
import gudgeon.core.finding.Diagnosis;
import gudgeon.core.finding.NextTests;
import gudgeon.core.finding.Observation;
import gudgeon.core.finding.Posterior;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The six cases in the resources meet their bounds; where they come from is said beside them. */
class FindCasesTest {
    private static FindingCase read(String name) throws IOException {
        try (InputStream bytes = FindCasesTest.class.getResourceAsStream("/gudgeon/finding/cases/" + name + ".json")) {
            return FindingCaseReader.read(name, Objects.requireNonNull(bytes).readAllBytes()).found().orElseThrow();
        }
    }

    private static Posterior posterior(String name) throws IOException {
        return FindQuestion.of(read(name)).diagnosis().posterior();
    }

    private static void leads(Posterior posterior, String fault, String where) {
        Posterior.Belief first = posterior.beliefs().getFirst();
        assertThat(first.fault().id() + " " + first.where().label()).isEqualTo(fault + " " + where);
    }

    @Test
    void burntExhaustValve() throws IOException {
        Posterior posterior = posterior("open-01");
        leads(posterior, "EXV_BURNT", "3");
        assertThat(posterior.chance("EXV_BURNT", "3")).isGreaterThanOrEqualTo(0.70);
        assertThat(posterior.beliefs().subList(1, posterior.beliefs().size()))
                .allSatisfy(belief -> assertThat(belief.chance()).isLessThan(0.10));
        assertThat(posterior.likely()).isEqualTo(Depth.HEAD_OFF);
    }

    @Test
    void ignitionOfOneCylinder() throws IOException {
        Posterior posterior = posterior("open-02");
        leads(posterior, "IGN_CYL", "2");
        assertThat(posterior.chance("IGN_CYL", "2") + posterior.chance("PLUG_BAD", "2")).isGreaterThanOrEqualTo(0.95);
        assertThat(posterior.atLeast(Depth.COVERS)).isLessThan(0.05);
    }

    @Test
    void stoodForAYear() throws IOException {
        Posterior posterior = posterior("open-03");
        leads(posterior, "DRY_BORES", "engine");
        assertThat(posterior.chance("WEAR_ALL", "engine")).isLessThan(posterior.chance("DRY_BORES", "engine"));
        assertThat(posterior.chance("RING_WEAR", "2") + posterior.chance("RING_STUCK", "2")).isLessThan(0.05);
        assertThat(posterior.likely()).isEqualTo(Depth.NONE);
    }

    @Test
    void gasketBetweenTwo() throws IOException {
        Posterior posterior = posterior("open-04");
        leads(posterior, "HG_PAIR", "2-3");
        assertThat(posterior.chance("HG_PAIR", "2-3")).isGreaterThanOrEqualTo(0.90);
        assertThat(posterior.likely()).isEqualTo(Depth.HEAD_OFF);
    }

    @Test
    void oneReadingDoesNotFit() throws IOException {
        Diagnosis diagnosis = FindQuestion.of(read("open-05")).diagnosis();
        leads(diagnosis.posterior(), "VAC_LEAK", "engine");
        for (String fault : List.of("EXV_BURNT", "INV_LEAK", "V_BENT", "V_CARBON", "V_TIGHT", "SEAT_SUNK", "V_BROKEN")) {
            assertThat(diagnosis.posterior().chance(fault, "4")).isLessThan(0.10);
        }
        Diagnosis.Weighed suspect = diagnosis.weighed().stream()
                .max((a, b) -> Double.compare(a.bad(), b.bad()))
                .orElseThrow();
        assertThat(suspect.bad()).isGreaterThan(0.9);
        assertThat(suspect.sitting().test()).isEqualTo("T_LEAK");
        assertThat(suspect.sitting().cylinder()).isEqualTo(4);
    }

    @Test
    void twoFaultsOfADiesel() throws IOException {
        Posterior posterior = posterior("open-06");
        assertThat(posterior.chance("TURBO_SEAL", "engine")).isGreaterThanOrEqualTo(0.70);
        assertThat(posterior.chance("GLOW_BAD", "3")).isGreaterThanOrEqualTo(0.70);
        for (int cylinder = 1; cylinder <= 4; cylinder++) {
            String where = String.valueOf(cylinder);
            assertThat(posterior.chance("RING_WEAR", where)
                            + posterior.chance("RING_STUCK", where)
                            + posterior.chance("GUIDE_SEAL", where))
                    .isLessThan(0.15);
        }
        assertThat(posterior.likely()).isEqualTo(Depth.NONE);
    }

    @Test
    void theNextStepsBeforeOpening() throws IOException {
        Answer.Found burnt = FindQuestion.of(read("open-01"));
        assertThat(burnt.next().ranked().stream().limit(6).map(step -> step.test().id()))
                .containsAnyOf("T_BORESCOPE", "T_LASH");
        assertThat(burnt.next().ranked()).allSatisfy(step -> {
            assertThat(step.bits()).isPositive();
            assertThat(step.minutes()).isPositive();
        });
        Answer.Found odd = FindQuestion.of(read("open-05"));
        NextTests.Step again =
                odd.next().repeats(odd.diagnosis().weighed(), 0.15).getFirst();
        assertThat(again.test().id() + again.cylinders()).isEqualTo("T_LEAK[4]");
        assertThat(again.test().cautions()).contains("air-in-cylinder");
        Answer.Found stood = FindQuestion.of(read("open-03"));
        assertThat(stood.next().plan().order().getFirst().fault().id()).isEqualTo("DRY_BORES");
        assertThat(stood.next().plan().to()).isEqualTo(Depth.NONE);
    }

    /** Plug, spark, vacuum, oil in the bore and running compression are no tests for a diesel. */
    @Test
    void aDieselIsNotOfferedTestsOfSparkEngines() throws IOException {
        assertThat(FindQuestion.of(read("open-06")).next().ranked())
                .extracting(step -> step.test().id())
                .isNotEmpty()
                .doesNotContain("T_WET", "T_VAC", "T_VACHOLD", "T_SPARK", "T_SWAP", "T_PLUG", "T_RUNCOMP", "T_TRIM");
    }

    /** Story 3 both ways, on a four without its own file: a neighbouring pair, and two that are not neighbours. */
    @Test
    void twoLowNeighboursAndTwoLowOnesApart() {
        Posterior pair = story("3: 7.9, 4: 8.1", "3: 8.6, 4: 8.8");
        leads(pair, "HG_PAIR", "3-4");
        assertThat(pair.chance("RING_WEAR", "3") + pair.chance("RING_STUCK", "3") + pair.chance("WEAR_ALL", "engine"))
                .isLessThan(0.05);
        assertThat(pair.likely()).isEqualTo(Depth.HEAD_OFF);
        Posterior apart = story("2: 7.9, 4: 8.1", "2: 11.5, 4: 11.6");
        assertThat(apart.chance("HG_PAIR", "3-4")).isLessThan(0.05);
        double rings = 0;
        for (String fault : List.of("RING_WEAR", "RING_STUCK", "RING_BROKEN", "BORE_SCORED", "INJ_LEAK")) {
            rings += apart.chance(fault, "2");
        }
        rings += apart.chance("DRY_BORES", "engine") + apart.chance("WEAR_ALL", "engine");
        assertThat(rings).isGreaterThan(0.8);
    }

    /** On the Tern's own file: firing order, volume and what opening costs come from it. */
    @Test
    void theTernTellsItsFiringOrderAndWhatOpeningCosts(@TempDir Path folder) throws IOException {
        Path readings = folder.resolve("readings.yaml");
        Files.writeString(
                readings,
                """
                engine: { nominal_comp: 12 }
                steps:
                  - { finding: complaint, value: yes }
                  - { test: T_COMP, cylinder: 1, value: 11.8, unit: bar }
                  - { test: T_COMP, cylinder: 2, value: 11.6, unit: bar }
                  - { test: T_COMP, cylinder: 3, value: 7.9, unit: bar }
                  - { test: T_COMP, cylinder: 4, value: 8.1, unit: bar }
                  - { test: T_WET, cylinder: 3, value: 8.6, unit: bar, oil_ml: 5 }
                  - { test: T_WET, cylinder: 4, value: 8.8, unit: bar, oil_ml: 5 }
                """);
        Answer.Found found = (Answer.Found) new FindQuestion("tern-16", readings.toString()).ask();
        leads(found.diagnosis().posterior(), "HG_PAIR", "3-4");
        assertThat(found.asked().facts().layout().firing()).hasSize(4);
        assertThat(found.next().costs().typical()).isFalse();
        assertThat(found.next().costs().upTo(Depth.BOTTOM_END))
                .isGreaterThan(found.next().costs().upTo(Depth.HEAD_OFF));
        assertThat(found.next().ranked().stream().limit(5).map(step -> step.test().id())).contains("T_LEAK");
    }

    private static Posterior story(String dry, String wet) {
        Map<Integer, Double> before = figures("1: 11.8, 2: 11.6, 3: 11.7, 4: 11.7", dry);
        Map<Integer, Double> after = figures("1: 12.9, 2: 12.7, 3: 12.8, 4: 12.8", wet);
        StringBuilder text = new StringBuilder(
                "engine: { fuel: petrol, cylinders: 4, cc: 1600, cr: 9.5, firing: [1, 3, 4, 2], nominal_comp: 12 }\nsteps:\n");
        text.append("  - { finding: complaint, value: yes }\n");
        before.forEach((cylinder, bar) -> text.append("  - { test: T_COMP, unit: bar, cylinder: " + cylinder + ", value: " + bar + " }\n"));
        after.forEach((cylinder, bar) -> text.append(
                "  - { test: T_WET, unit: bar, oil_ml: 5, cylinder: " + cylinder + ", value: " + bar + " }\n"));
        return posterior(text.toString(), 9);
    }

    private static Map<Integer, Double> figures(String usual, String low) {
        Map<Integer, Double> figures = new java.util.TreeMap<>();
        for (String each : (usual + ", " + low).split(", ", -1)) {
            int at = each.indexOf(": ");
            figures.put(Integer.valueOf(each.substring(0, at)), Double.valueOf(each.substring(at + 2)));
        }
        return figures;
    }

    @Test
    void theOrderOfEntryDoesNotMatter() throws IOException {
        FindingCase asked = read("open-05");
        Posterior given = posterior("open-05");
        List<Observation> shuffled = new ArrayList<>(asked.observations());
        Collections.shuffle(shuffled, new Random(5));
        Posterior other = FindQuestion.of(new FindingCase(
                        "", asked.facts(), shuffled, Map.of(), asked.tools(), List.of(), List.of()))
                .diagnosis()
                .posterior();
        assertThat(other.logChance()).isEqualTo(given.logChance());
        for (Posterior.Belief belief : given.beliefs()) {
            assertThat(other.chance(belief.fault().id(), belief.where().label())).isEqualTo(belief.chance());
        }
    }

    @Test
    void unitsAndAbsolutePressureDoNotMatter() {
        Posterior bar = posterior(
                "{ engine: { fuel: petrol, cylinders: 4, nominal_comp: 12 bar }, steps: [" + step("6.8", "bar") + "] }", 1);
        Posterior psi = posterior(
                "{ engine: { fuel: petrol, cylinders: 4, nominal_comp: 174.0453 psi }, steps: [" + step("98.62566", "psi")
                        + "] }", 1);
        Posterior absolute = posterior(
                "{ engine: { fuel: petrol, cylinders: 4, nominal_comp: 12 bar }, steps: [" + step("7.81325", "bar absolute")
                        + "] }", 1);
        assertThat(psi.chance("EXV_BURNT", "3")).isCloseTo(bar.chance("EXV_BURNT", "3"), within(1e-6));
        assertThat(absolute.chance("EXV_BURNT", "3")).isCloseTo(bar.chance("EXV_BURNT", "3"), within(1e-9));
    }

    private static String step(String value, String unit) {
        return "{ test: T_COMP, cylinder: 3, value: " + value + ", unit: " + unit + " }";
    }

    private static Posterior posterior(String text, int asked) {
        FindingCaseReader.Read read = FindingCaseReader.read("case", text.getBytes(StandardCharsets.UTF_8));
        assertThat(read.problems()).isEmpty();
        assertThat(read.found().orElseThrow().observations()).hasSize(asked);
        return FindQuestion.of(read.found().orElseThrow()).diagnosis().posterior();
    }

    @Test
    void whatCannotBeIsRefusedWithItsPlace() {
        String text = """
                engine: { fuel: petrol, cylinders: 4 }
                steps:
                  - { test: T_COMP, cylinder: 5, value: 12, unit: bar }
                  - { test: T_COMP, cylinder: 1, value: 170 }
                  - { test: T_LEAK, cylinder: 1, value: 164, unit: per cent, orifice: "0.040 in, 80 psi" }
                  - { finding: vac_lo, value: yes }
                  - { finding: p030c, value: perhaps, cylinder: 2 }
                  - { test: T_WET, cylinder: 1, value: -2, unit: ratio, oil_ml: 5 }
                """;
        FindingCaseReader.Read read = FindingCaseReader.read("case.yaml", text.getBytes(StandardCharsets.UTF_8));
        assertThat(read.found()).isEmpty();
        assertThat(read.problems().stream().map(problem -> problem.line()))
                .containsExactly(3, 4, 5, 6, 7, 8);
        assertThat(read.problems().get(1).text()).contains("170 bar cannot be a compression").contains("psi");
        assertThat(read.problems().get(3).text()).contains("vac_low");
    }

    @Test
    void aMissingOrificeIsAskedFor() {
        String text = "{ engine: { fuel: petrol, cylinders: 4 }, steps: [{ test: T_LEAK, cylinder: 2, value: 20 }] }";
        FindingCase asked = FindingCaseReader.read("case", text.getBytes(StandardCharsets.UTF_8))
                .found()
                .orElseThrow();
        assertThat(asked.asks()).anySatisfy(ask -> {
            assertThat(ask.what()).isEqualTo("orifice");
            assertThat(ask.cylinder()).isEqualTo(2);
        });
    }

    @Test
    void contradictoryAnswersAreNamed() {
        String text = """
                engine: { fuel: petrol, cylinders: 4 }
                steps:
                  - { finding: plug_fuel, cylinder: 2, value: yes }
                  - { finding: plug_fuel, cylinder: 2, value: no }
                """;
        FindingCase asked = FindingCaseReader.read("case", text.getBytes(StandardCharsets.UTF_8))
                .found()
                .orElseThrow();
        assertThat(asked.remarks()).anySatisfy(remark -> assertThat(remark.what()).contains("plug_fuel of cylinder 2"));
        assertThat(asked.observations()).hasSize(2);
    }
}
