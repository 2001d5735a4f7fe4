package gudgeon.core;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The arrows of ARCHITECTURE.md: what is not drawn there is forbidden. */
class ArrowsTest {
    /** Package to the packages that it may use. */
    private static final Map<String, List<String>> ARROWS = Map.ofEntries(
            Map.entry("quantity", List.of()),
            Map.entry("engine", List.of("quantity")),
            Map.entry("book", List.of("quantity", "engine")),
            Map.entry("planning", List.of("quantity", "engine")),
            Map.entry("ordering", List.of("quantity", "engine", "planning")),
            Map.entry("forecast", List.of()),
            Map.entry("session", List.of("quantity", "engine", "planning", "forecast")),
            Map.entry("geometry", List.of("quantity", "engine")),
            Map.entry("bearing", List.of("quantity")),
            Map.entry("measuring", List.of("quantity", "engine", "geometry")),
            Map.entry("bolting", List.of("quantity", "engine")),
            Map.entry("fitting", List.of("quantity", "engine", "measuring", "bolting")),
            Map.entry("inference", List.of()),
            Map.entry("finding", List.of("quantity", "engine", "geometry", "inference")),
            Map.entry("deciding", List.of("quantity", "engine", "measuring", "planning")));

    /** All that core may use from outside: the language, collections, exact numbers, null marks. Not io, nio, time, net. */
    private static final List<String> OUTSIDE = List.of("java.lang..", "java.util..", "java.math..", "org.jspecify..");

    /**
     * The book alone uses times as values (docs/decisions/0009); nobody reads a clock. Distributions, linear algebra and
     * linear programming come from Hipparchus, matching from JGraphT; neither stands in a public signature.
     */
    private static final Map<String, List<String>> MORE = Map.of(
            "book", List.of("java.time.."),
            "measuring", List.of("org.hipparchus.."),
            "bearing", List.of("org.hipparchus.."),
            "geometry", List.of("org.hipparchus.."),
            "finding", List.of("org.hipparchus.."),
            "deciding", List.of("org.hipparchus.."),
            "fitting", List.of("org.jgrapht..", "org.hipparchus.."));

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("gudgeon.core");

    @Test
    void everyPackageIsDrawn() {
        assertThat(CORE.stream().map(JavaClass::getPackageName).distinct())
                .containsExactlyInAnyOrderElementsOf(
                        ARROWS.keySet().stream().map(name -> "gudgeon.core." + name).toList());
    }

    @Test
    void packagesUseOnlyWhatIsDrawn() {
        ARROWS.forEach((name, allowed) -> {
            String[] mayUse = Stream.of(
                            Stream.of("gudgeon.core." + name + ".."),
                            allowed.stream().map(other -> "gudgeon.core." + other + ".."),
                            OUTSIDE.stream(),
                            MORE.getOrDefault(name, List.of()).stream())
                    .flatMap(part -> part)
                    .toArray(String[]::new);
            classes()
                    .that(resideInAPackage("gudgeon.core." + name + ".."))
                    .should()
                    .onlyDependOnClassesThat(resideInAnyPackage(mayUse))
                    .as(name + " uses only " + Arrays.toString(mayUse))
                    .check(CORE);
        });
    }

    @Test
    void packagesAreFreeOfCycles() {
        slices().matching("gudgeon.core.(*)..").should().beFreeOfCycles().check(CORE);
    }

    @Test
    void nothingReadsAClockOrUnseededChance() {
        noClasses()
                .should()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethodWhere(target(owner(resideInAPackage("java.time..")))
                        .and(target(nameMatching("now|systemUTC|systemDefaultZone|systemDefault"))))
                .orShould()
                .callMethod(UUID.class, "randomUUID")
                .orShould()
                .callMethod(Collections.class, "shuffle", List.class)
                .orShould()
                .callConstructor(Random.class)
                .orShould()
                .dependOnClassesThat(resideInAnyPackage("java.util.concurrent.."))
                .check(CORE);
    }

    @Test
    void nothingPrintsOrEndsTheProgram() {
        noClasses()
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .check(CORE);
    }

    @Test
    void packagesAreNamedByDomain() {
        noClasses()
                .should(com.tngtech.archunit.lang.conditions.ArchConditions.resideInAnyPackage(
                        "..util..",
                        "..common..",
                        "..impl..",
                        "..service..",
                        "..dto..",
                        "..manager..",
                        "..helper..",
                        "..helpers..",
                        "..misc.."))
                .check(CORE);
    }
}
