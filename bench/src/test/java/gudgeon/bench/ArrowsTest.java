package gudgeon.bench;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** What ARCHITECTURE.md says about the stopwatch. */
class ArrowsTest {
    private static final JavaClasses BENCH = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("gudgeon.bench");

    @Test
    void theReplayUsesNothingOfTheSearch() {
        noClasses()
                .that()
                .haveNameMatching(".*OrderReplay.*|.*SopInstance.*")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("gudgeon.core..")
                .check(BENCH);
    }

    @Test
    void generalSolversStayAmongThePeers() {
        noClasses()
                .that()
                .resideOutsideOfPackage("gudgeon.bench.peers")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.chocosolver..", "com.google.ortools..")
                .check(BENCH);
    }
}
