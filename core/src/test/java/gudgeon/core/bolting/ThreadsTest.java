package gudgeon.core.bolting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Threads as the standards print them. */
class ThreadsTest {
    /** ISO 724, as printed in many tables; from memory. */
    @ParameterizedTest
    @CsvSource({
        "M6, 1, 5.350, 4.917, 4.773",
        "M8, 1.25, 7.188, 6.647, 6.466",
        "M10x1.25, 1.25, 9.188, 8.647, 8.466",
        "M12 x 1.5, 1.5, 11.026, 10.376, 10.160",
        "M20, 2.5, 18.376, 17.294, 16.933",
    })
    void basicSizes(String written, double pitch_mm, double d2_mm, double minor_mm, double root_mm) {
        MetricThread thread = MetricThread.find(written).orElseThrow();
        assertThat(thread.pitch_mm()).isEqualTo(pitch_mm);
        assertThat(thread.pitchDiameter_mm()).isCloseTo(d2_mm, within(0.0006));
        assertThat(thread.minorDiameter_mm()).isCloseTo(minor_mm, within(0.0006));
        assertThat(thread.rootDiameter_mm()).isCloseTo(root_mm, within(0.0006));
    }

    /** ISO 898-1 nominal stress areas; from memory. */
    @ParameterizedTest
    @CsvSource({
        "M3, 5.03",
        "M4, 8.78",
        "M6, 20.1",
        "M12, 84.3",
        "M18, 192",
        "M24, 353",
        "M30, 561",
        "M12x1.5, 88.1",
        "M16x1.5, 167"
    })
    void nominalStressAreas(String written, double area_mm2) {
        assertThat(MetricThread.find(written).orElseThrow().nominalStressArea_mm2())
                .isEqualTo(area_mm2);
    }

    /** Limits of size as a public chart after ASME B1.13M prints them, which keeps the tolerances of ISO 965-1. */
    @ParameterizedTest
    @CsvSource({
        "1.6, 0.35, 6g, 1.581, 1.496, 1.354, 1.291",
        "1.6, 0.35, 4g6g, 1.581, 1.496, 1.354, 1.314",
        "2, 0.4, 6h, 2.000, 1.905, 1.740, 1.673",
        "2.5, 0.45, 6g, 2.480, 2.380, 2.188, 2.117",
        "2.5, 0.45, 4g6g, 2.480, 2.380, 2.188, 2.143",
        "3, 0.5, 6g, 2.980, 2.874, 2.655, 2.580",
        "3, 0.5, 4g6g, 2.980, 2.874, 2.655, 2.607",
        "3.5, 0.6, 6h, 3.500, 3.375, 3.110, 3.025",
        "4, 0.7, 6g, 3.978, 3.838, 3.523, 3.433",
        "4, 0.7, 4g6g, 3.978, 3.838, 3.523, 3.467",
        "5, 0.8, 6h, 5.000, 4.850, 4.480, 4.385",
        "5, 0.8, 4g6g, 4.976, 4.826, 4.456, 4.396",
    })
    void limitsOfSmallThreads(
            double d_mm, double pitch_mm, String grade, double major, double majorMin, double pitch, double pitchMin) {
        assertThat(ThreadTolerance.parse(grade).limits(new MetricThread(d_mm, pitch_mm)))
                .isEqualTo(new ThreadTolerance.Limits(major, majorMin, pitch, pitchMin));
    }

    /** Galvanized sizes of ISO 965-4 state the pitch-diameter tolerance of grade 6 as the difference of their deviations. */
    @ParameterizedTest
    @CsvSource({
        "10, 1.5, 132",
        "12, 1.75, 150",
        "16, 2, 160",
        "20, 2.5, 170",
        "24, 3, 200",
        "30, 3.5, 212",
        "36, 4, 224",
        "42, 4.5, 236",
        "48, 5, 250",
        "56, 5.5, 265",
        "64, 6, 280",
    })
    void flankTolerancesOfLargeThreads(double d_mm, double pitch_mm, int tolerance_um) {
        ThreadTolerance.Limits limits = ThreadTolerance.parse("6h").limits(new MetricThread(d_mm, pitch_mm));
        assertThat((limits.pitchMax_mm() - limits.pitchMin_mm()) * 1000).isCloseTo(tolerance_um, within(1e-6));
    }

    /** The same table: the tolerance of the major diameter, grade 6. */
    @ParameterizedTest
    @CsvSource({
        "10, 1.5, 236",
        "12, 1.75, 265",
        "16, 2, 280",
        "20, 2.5, 335",
        "24, 3, 375",
        "30, 3.5, 425",
        "36, 4, 475",
        "42, 4.5, 500",
        "48, 5, 530",
        "56, 5.5, 560",
        "64, 6, 600",
    })
    void crestTolerancesOfLargeThreads(double d_mm, double pitch_mm, int tolerance_um) {
        ThreadTolerance.Limits limits = ThreadTolerance.parse("6h").limits(new MetricThread(d_mm, pitch_mm));
        assertThat((limits.majorMax_mm() - limits.majorMin_mm()) * 1000).isCloseTo(tolerance_um, within(1e-6));
    }

    @Test
    void whatIsNoThreadIsSaid() {
        assertThat(MetricThread.find("M8 LH")).isEqualTo(MetricThread.find("M8x1.25"));
        assertThat(MetricThread.find("G1/4")).isEmpty();
        assertThat(MetricThread.find("M8x6")).isEmpty();
        assertThat(MetricThread.find("M11")).isEmpty();
        assertThatThrownBy(() -> new MetricThread(8, 20)).hasMessageContaining("threads per inch");
        assertThatThrownBy(() -> ThreadTolerance.parse("6H")).hasMessageContaining("6g");
        assertThatThrownBy(() -> ThreadTolerance.parse("6e").limits(new MetricThread(1.6, 0.35)))
                .hasMessageContaining("position e");
        assertThatThrownBy(() -> PropertyClass.C9_8.yield_MPa(20)).hasMessageContaining("16 mm");
    }

    /** ISO 898-1 table 3, from memory: class 8.8 is another above 16 mm. */
    @Test
    void strengthSteps() {
        PropertyClass grade = PropertyClass.find("8.8").orElseThrow();
        assertThat(grade.proofStress_MPa(16)).isEqualTo(580);
        assertThat(grade.proofStress_MPa(18)).isEqualTo(600);
        assertThat(PropertyClass.C4_6.yield_MPa(10)).isEqualTo(240);
        assertThat(PropertyClass.find("8,8")).isEmpty();
    }

    /** ASME B1.1: 1/2-13 has 0.1419 square inches; from memory. */
    @Test
    void unifiedThreads() {
        UnifiedThread half = new UnifiedThread(0.5, 13);
        assertThat(half.stressArea_in2()).isCloseTo(0.1419, within(5e-5));
        assertThat(half.inMillimetres().diameter_mm()).isEqualTo(12.7);
        assertThat(half.inMillimetres().pitchDiameter_mm() / 25.4).isCloseTo(half.pitchDiameter_in(), within(1e-12));
        assertThatThrownBy(() -> new UnifiedThread(12.7, 13)).hasMessageContaining("millimetres");
    }
}
