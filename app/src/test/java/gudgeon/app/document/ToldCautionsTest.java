package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.app.format.Caution;
import gudgeon.app.format.Cautions;
import gudgeon.core.engine.Engine;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How fully a step tells its cautions: common practice of instruction sheets. */
class ToldCautionsTest {
    private static final Engine DUNLIN = Shipped.engine("dunlin-22d");
    private static final String CAUTION = "pull-not-push";
    private static final String DANGER = "fuel-pressure";

    private final ToldCautions told = new ToldCautions(Cautions.catalogue(), DUNLIN);

    @Test
    void aDangerIsShortForAFewStepsOnlyAndNeverAbsent() {
        List<Boolean> full = new ArrayList<>();
        for (int step = 1; step <= 9; step++) {
            ToldCautions.Told now = told.at(step, List.of(DANGER), List.of());
            assertThat(now.dangers().size() + now.recent().size()).isEqualTo(1);
            full.add(!now.dangers().isEmpty());
        }
        assertThat(full).containsExactly(true, false, false, false, true, false, false, false, true);
    }

    @Test
    void aCautionIsShortWhileItIsFreshAndInFullAgainLater() {
        assertThat(told.at(10, List.of(CAUTION), List.of()).cautions()).hasSize(1);

        int last = 10 + ToldCautions.REMEMBERED_STEPS;
        ToldCautions.Told fresh = told.at(last, List.of(CAUTION), List.of());
        assertThat(fresh.cautions()).isEmpty();
        assertThat(fresh.recent()).extracting(ToldCautions.Recent::step).containsExactly(10);

        assertThat(told.at(last + 1, List.of(CAUTION), List.of()).cautions()).hasSize(1);
    }

    @Test
    void whatComesTwiceInAStepIsToldOnce() {
        ToldCautions.Told now = told.at(1, List.of(CAUTION, DANGER, CAUTION, DANGER), List.of());
        assertThat(now.dangers()).hasSize(1);
        assertThat(now.cautions()).hasSize(1);
        assertThat(now.recent()).isEmpty();
    }

    @Test
    void anAssemblyNamesWhatConcernsThePartsInsideAndWarnsInFullOfItsWeight() {
        Shipped lifted = Shipped.plan("dunlin-22d", "head");
        var head = lifted.plan().operations().stream()
                .filter(operation -> operation.pieces().contains("head") && operation.lift() != null)
                .findFirst()
                .orElseThrow();
        assertThat(head.pieces().size()).isGreaterThan(10);

        ToldCautions.Told now = told.at(head.number(), head.cautions(), head.pieces());

        assertThat(now.cautions()).extracting(Caution::id).contains("heavy-lift");
        assertThat(now.cautions().size()).isLessThanOrEqualTo(2);
        assertThat(now.along()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(now.recent()).isEmpty();
        assertThat(now.dangers().size() + now.cautions().size() + now.along().size())
                .isEqualTo((int) head.cautions().stream().distinct().count());
    }
}
