package wireworthy;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the arrows between the rooms of the program. */
class ArchitectureTest {
    private static final List<String> ROOMS =
            List.of(
                    "texts",
                    "facts",
                    "rules",
                    "working",
                    "marking",
                    "practice",
                    "record",
                    "lessons",
                    "vehicle",
                    "paper",
                    "evening",
                    "command",
                    "window");

    private static final JavaClasses PROGRAM =
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .importPackages("wireworthy");

    static Stream<String> rooms() {
        return ROOMS.stream();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomKnowsOnlyTheRoomsBeforeIt(final String room) {
        final String[] later =
                ROOMS.stream()
                        .skip(ROOMS.indexOf(room) + 1L)
                        .map(it -> "wireworthy." + it + "..")
                        .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage("wireworthy." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(later)
                .because("each room can be read and tested with only the rooms before it")
                .allowEmptyShould(true)
                .check(PROGRAM);
    }

    @Test
    void everyClassIsInARoom() {
        classes()
                .that()
                .doNotBelongToAnyOf(Wireworthy.class)
                .and()
                .doNotHaveSimpleName("package-info")
                .should()
                .resideInAnyPackage(
                        rooms().map(it -> "wireworthy." + it + "..").toArray(String[]::new))
                .because("a class outside the rooms escapes the arrows")
                .check(PROGRAM);
    }

    @Test
    void nothingOutsideTheWindowKnowsJavaFx() {
        noClasses()
                .that()
                .resideOutsideOfPackage("wireworthy.window..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx..")
                .because("sums, files and the command line work where there is no screen")
                .check(PROGRAM);
    }

    @Test
    void onlyTheCommandLineKnowsPicocli() {
        noClasses()
                .that()
                .resideOutsideOfPackage("wireworthy.command..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .because("the window must not pay for the command line when it starts")
                .check(PROGRAM);
    }

    @Test
    void nobodyDrawsWithAwtSwingOrAWebView() {
        noClasses()
                .that()
                .doNotHaveSimpleName("Pen")
                .and()
                .doNotHaveSimpleName("CircuitDrawers")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "javafx.scene.web..")
                .because(
                        "one toolkit draws everything; the PDF library alone wants its strokes"
                                + " on paper as shapes of java.awt")
                .check(PROGRAM);
    }

    @Test
    void nothingMovesByItself() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx.animation..")
                .because("what moves on its own needs a setting that stops it, and there is none")
                .check(PROGRAM);
    }

    @Test
    void everyPackageIsNullMarked() {
        final Stream<JavaPackage> packages = PROGRAM.stream().map(JavaClass::getPackage).distinct();
        assertThat(packages)
                .as("packages, each to have @NullMarked in its package-info.java")
                .allMatch(it -> it.isAnnotatedWith(NullMarked.class));
    }
}
