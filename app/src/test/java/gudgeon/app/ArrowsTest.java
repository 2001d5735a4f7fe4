package gudgeon.app;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The arrows of ARCHITECTURE.md: what is not drawn there is forbidden. */
class ArrowsTest {
    /** Package to the packages of this module that it may use; all may use core and Java itself. */
    private static final Map<String, List<String>> ARROWS = Map.of(
            "format", List.of(),
            "photo", List.of(),
            "document", List.of("format"),
            "store", List.of("format"),
            "desk", List.of("format", "photo", "document", "store"),
            "web", List.of("desk", "format", "document", "store"),
            "cli", List.of("desk", "format", "document", "store", "web"));

    /** Outside libraries of each package: one library, one package. */
    private static final Map<String, List<String>> LIBRARIES = Map.of(
            "format", List.of("org.snakeyaml..", "tools.jackson..", "com.fasterxml.jackson..", "tech.units..", "javax.measure.."),
            "document", List.of("com.openhtmltopdf..", "org.apache.pdfbox..", "org.apache.fontbox..", "org.eclipse..", "org.w3c.dom..", "org.xml.sax.."),
            "photo", List.of("com.drew..", "javax.imageio.."),
            "store", List.of("org.jdbi..", "com.zaxxer.hikari..", "org.flywaydb..", "org.sqlite..", "javax.sql.."),
            "desk", List.of("net.e175.klaus.solarpositioning.."),
            "web", List.of("io.javalin..", "jakarta.servlet..", "gg.jte..", "kotlin.."),
            "cli", List.of("picocli.."));

    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("gudgeon.app");

    @Test
    void everyPackageIsDrawn() {
        assertThat(APP.stream().map(JavaClass::getPackageName).distinct())
                .allSatisfy(name ->
                        assertThat(ARROWS).containsKey(name.substring("gudgeon.app.".length()).replaceFirst("[.].*", "")));
    }

    @Test
    void packagesUseOnlyWhatIsDrawn() {
        ARROWS.forEach((name, allowed) -> {
            String[] mayUse = Stream.of(
                            Stream.of("gudgeon.app." + name + "..", "gudgeon.core..", "java..", "javax.xml..", "org.jspecify.."),
                            allowed.stream().map(other -> "gudgeon.app." + other + ".."),
                            LIBRARIES.getOrDefault(name, List.of()).stream())
                    .flatMap(part -> part)
                    .toArray(String[]::new);
            classes()
                    .that(resideInAPackage("gudgeon.app." + name + ".."))
                    .should()
                    .onlyDependOnClassesThat(resideInAnyPackage(mayUse))
                    .as(name + " uses only " + List.of(mayUse))
                    .allowEmptyShould(true)
                    .check(APP);
        });
    }

    @Test
    void documentsUseOfFormatOnlyTheCautions() {
        noClasses()
                .that()
                .resideInAPackage("gudgeon.app.document..")
                .should()
                .dependOnClassesThat(
                        resideInAPackage("gudgeon.app.format..").and(not(nameMatching(".*\\.Cautions?(\\$.*)?"))))
                .check(APP);
    }

    @Test
    void packagesAreFreeOfCycles() {
        slices().matching("gudgeon.app.(*)..").should().beFreeOfCycles().check(APP);
    }

    @Test
    void onlyTheCommandLinePrintsOrEndsTheProgram() {
        noClasses()
                .that()
                .resideOutsideOfPackage("gudgeon.app.cli")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .check(APP);
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
                .check(APP);
    }
}
