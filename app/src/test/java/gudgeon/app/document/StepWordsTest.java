package gudgeon.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import gudgeon.core.planning.Blocked;
import gudgeon.core.planning.StripPlan;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class StepWordsTest {
    private static final Shipped WREN = Shipped.plan("wren-160", "barrel");
    private final StepWords words = new StepWords(WREN.engine());
    private final WhyWords why = new WhyWords(WREN.engine());

    @Test
    void boltsAreCountedAndBothSidesNamed() {
        StripPlan.Operation head = operation("head-studs");

        assertThat(words.instruction(head)).startsWith("Undo the 4 nuts, cylinder head to barrel and crankcase half");
        assertThat(words.fastenerCount(head)).isEqualTo(4);
        assertThat(words.fasteners(head)).singleElement().asString().startsWith("4 × stud and nut M8x1.25");
        assertThat(words.renew(head)).startsWith("renew: ").contains("4 × nut M8x1.25", "head gasket");
    }

    @Test
    void liftsNameTheHeaviestPartTheMassAndTheWay() {
        StripPlan.Operation lift = WREN.plan().operations().stream()
                .filter(operation -> operation.kind() == StripPlan.Kind.LIFT
                        && operation.pieces().contains("head"))
                .findFirst()
                .orElseThrow();

        assertThat(words.instruction(lift))
                .startsWith("Lift off: cylinder head with ")
                .endsWith(" kg");
        assertThat(words.tools(lift)).isEmpty();
    }

    @Test
    void noInstructionSpeaksInIdsOrEndsWithAStop() {
        for (StripPlan.Operation operation : WREN.plan().operations()) {
            assertThat(words.instruction(operation))
                    .doesNotEndWith(".")
                    .doesNotContain("lift-")
                    .matches("[A-Z].*");
        }
    }

    @Test
    void everyStepThatUndoesSaysWhy() {
        for (StripPlan.Operation operation : WREN.plan().operations()) {
            if (operation.kind() == StripPlan.Kind.UNDO) {
                assertThat(why.because(operation)).as(operation.id()).isNotBlank();
            }
        }
    }

    @Test
    void numberedNamesAreGathered() {
        assertThat(Names.gathered(List.of("injector 1", "injector 2", "injector 3", "rail", "cap 1", "cap 2")))
                .containsExactly("injectors 1 to 3", "rail", "caps 1 and 2");
        assertThat(Names.gathered(List.of("clamp 1 bolt", "clamp 2 bolt"))).containsExactly("clamp 1 and 2 bolts");
        assertThat(Names.gathered(List.of("head", "head", "bolt M8"))).containsExactly("head", "head", "bolt M8");
        assertThat(Names.gathered(List.of())).isEmpty();
    }

    @Test
    void aNameWithItsOwnNumberHasNoArticle() {
        assertThat(Names.withArticle("injector 1")).isEqualTo("injector 1");
        assertThat(Names.withArticle("injectors 1 to 4")).isEqualTo("injectors 1 to 4");
        assertThat(Names.withArticle("rail")).isEqualTo("the rail");
        assertThat(Names.withArticle("clamp of cylinders 1 and 2")).isEqualTo("the clamp of cylinders 1 and 2");
    }

    @Test
    void namesMadeOfIdsAreSpeltAsThePartsAre() {
        Names names = new Names(Shipped.engine("dunlin-22d"));
        assertThat(names.any("egr-cooler-flange")).isEqualTo("EGR cooler flange");
        assertThat(names.any("leak-off-injectors")).isEqualTo("leak-off injectors");
        assertThat(names.any("timing-belt-on")).isEqualTo("timing belt");
    }

    /** The ends of hoses and pipes are told by where they sit; common practice. */
    @Test
    void anEndOfAHoseIsNamedByWhereItSits() {
        Names wren = new Names(WREN.engine());
        assertThat(wren.any("fuel-line-carburettor")).isEqualTo("fuel line at the carburettor");
        assertThat(wren.any("head-studs")).isEqualTo("head studs");
        Names dunlin = new Names(Shipped.engine("dunlin-22d"));
        assertThat(dunlin.any("injector-pipe-rail-2")).isEqualTo("injector pipe 2 at the rail");
        assertThat(dunlin.any("injector-pipe-injector-2")).isEqualTo("injector pipe 2 at the injector");
        assertThat(dunlin.any("egr-pipe-cooler")).isEqualTo("EGR pipe at the EGR cooler");
        assertThat(dunlin.any("egr-cooler-flange")).isEqualTo("EGR cooler flange");
        assertThat(dunlin.any("gearbox-plug")).isEqualTo("gearbox plug");
        assertThat(Names.gathered(List.of(dunlin.any("injector-pipe-rail-1"), dunlin.any("injector-pipe-rail-2"))))
                .containsExactly("injector pipes 1 and 2 at the rail");
    }

    @Test
    void whatExplainsACopyIsItsOwn() {
        Names wren = new Names(WREN.engine());
        assertThat(wren.part("push-rod-1")).isEqualTo("push rod 1 (inlet)");
        assertThat(Names.withArticle(wren.part("push-rod-2"))).isEqualTo("push rod 2 (exhaust)");
        assertThat(Names.gathered(wren.parts(List.of("push-rod-1", "push-rod-2")))).containsExactly("push rods 1 and 2");
    }

    @Test
    void aPartWhoseNameSaysWithIsTakenTogetherWithOthers() {
        assertThat(words.pieces(List.of("tank", "fuel-line"))).isEqualTo("fuel tank with tap, together with fuel line");
        assertThat(words.pieces(List.of("head", "spark-plug"))).startsWith("cylinder head with ");
    }

    /** Decision 0026. */
    @Test
    void aDrainPlugGoesBackAtOnceAndNeedsNoBag() {
        StripPlan.Operation drain = Shipped.plan("wren-160", "piston").plan().operations().stream()
                .filter(operation -> operation.kind() == StripPlan.Kind.DRAIN)
                .findFirst()
                .orElseThrow();
        assertThat(words.notes(drain).getFirst()).contains("runs out", "a pan for");
        assertThat(words.notes(drain))
                .anySatisfy(note -> assertThat(note)
                        .startsWith("When it has run out, the plug goes back at once, with new ")
                        .endsWith(": no bag"));
    }

    @Test
    void bagsAreNumberedInTheOrderOfThePlan() {
        Bags bags = Bags.of(WREN.engine(), WREN.plan());
        List<Integer> numbers = WREN.plan().operations().stream()
                .filter(operation -> operation.kind() != StripPlan.Kind.LIFT)
                .flatMap(operation -> bags.find(operation.id()).stream().boxed())
                .toList();
        assertThat(numbers).isSorted().hasSize(bags.count()).startsWith(1).endsWith(bags.count());
    }

    @Test
    void everySortOfObstacleHasASentence() {
        BlockedWords blocked = new BlockedWords(WREN.engine());
        for (Blocked.Kind kind : Blocked.Kind.values()) {
            String sentence = blocked.reason(new Blocked.Reason(kind, List.of("head"), 31, List.of("hoist")));
            assertThat(sentence).contains("cylinder head").endsWith(".");
            assertThat(sentence.toLowerCase(Locale.ROOT)).contains("hoist");
        }
    }

    private static StripPlan.Operation operation(String id) {
        return WREN.plan().operations().stream()
                .filter(operation -> operation.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
