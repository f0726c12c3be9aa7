package rakeline;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The house as {@link House} describes it, held by every class of the program. The second half shows each rule biting,
 * on the classes of {@code rakeline.broken}, a small house in which every rule is broken once.
 */
@Tag("slow")
class ArchitectureTest {
    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("rakeline");
    private static final JavaClasses BROKEN = new ClassFileImporter().importPackages("rakeline.broken");
    private static final House BROKEN_HOUSE = new House("rakeline.broken");

    static Stream<ArchRule> rules() {
        return new House("rakeline").rules();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void theHouseStands(ArchRule rule) {
        rule.check(PROGRAM);
    }

    @Test
    void theProgramIsLookedAt() {
        assertThat(PROGRAM.contain(Main.class)).isTrue();
    }

    @Test
    void importsThatPointOutwardAreFoundInEachRoom() {
        List<String> found =
                BROKEN_HOUSE.rooms().stream().flatMap(ArchitectureTest::found).toList();
        assertThat(found)
                .anySatisfy(line -> assertThat(line).contains("quantity.KnowsGeometry", "geometry.Bicycle"))
                .anySatisfy(line -> assertThat(line).contains("geometry.KnowsRider", "rider.Body"))
                .anySatisfy(line -> assertThat(line).contains("rider.KnowsStudy", "study.Sweep"))
                .anySatisfy(line -> assertThat(line).contains("study.KnowsMain", "broken.Root"))
                .anySatisfy(line -> assertThat(line).contains("catalogue.KnowsFigure", "figure.Chart"))
                .anySatisfy(line -> assertThat(line).contains("figure.KnowsPainter", "figure.paint.Painter"))
                .anySatisfy(line -> assertThat(line).contains("figure.paint.KnowsStudy", "study.Sweep"))
                .anySatisfy(line -> assertThat(line).contains("engine.KnowsJshell", "engine.jshell.Worker"))
                .anySatisfy(line -> assertThat(line).contains("desk.KnowsEngine", "engine.Session"))
                .anySatisfy(line -> assertThat(line).contains("help.KnowsDesk", "desk.Keeper"))
                .anySatisfy(line -> assertThat(line).contains("shell.KnowsCommand", "command.Run"))
                .anySatisfy(line -> assertThat(line).contains("command.KnowsShell", "shell.Window"));
    }

    @Test
    void importsThatPointInwardAreNotFound() {
        assertThat(BROKEN_HOUSE.rooms().stream().flatMap(ArchitectureTest::found))
                .isNotEmpty()
                .noneSatisfy(line -> assertThat(line).contains("KnowsItsPlace"));
    }

    @Test
    void aClassWithoutARoomIsFound() {
        assertThat(found(BROKEN_HOUSE.everyClassHasItsRoom()))
                .singleElement()
                .asString()
                .contains("attic.Forgotten");
    }

    @Test
    void aCycleIsFoundBetweenAPackageAndOneInsideIt() {
        assertThat(found(BROKEN_HOUSE.noCycles()))
                .anySatisfy(line -> assertThat(line).contains("Slice geometry ", "Slice geometry.toe "));
    }

    @Test
    void drawingOutsideItsPlacesIsFound() {
        assertThat(found(BROKEN_HOUSE.drawingInItsPlaces()))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).contains("figure.DrawsItself"));
    }

    @Test
    void aRootThatDrawsIsFound() {
        assertThat(found(BROKEN_HOUSE.onlyTheDisplayCheckInTheRoot()))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).contains("broken.Drawing"));
    }

    @Test
    void aWidgetInAPainterIsFound() {
        assertThat(found(BROKEN_HOUSE.widgetsInTheWindow()))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).contains("figure.paint.HasAWidget"));
    }

    @Test
    void jshellElsewhereIsFound() {
        assertThat(found(BROKEN_HOUSE.jshellInOnePlace()))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).contains("engine.KnowsJshell"));
    }

    @Test
    void aFieldThatChangesIsFound() {
        assertThat(found(BROKEN_HOUSE.valuesNeverChange()))
                .singleElement()
                .asString()
                .contains("geometry.Bicycle.changes");
    }

    @Test
    void standardStreamsElsewhereAreFound() {
        assertThat(found(BROKEN_HOUSE.standardStreamsInTheirPlaces()))
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).contains("desk.Keeper"));
    }

    private static Stream<String> found(ArchRule rule) {
        EvaluationResult result = rule.evaluate(BROKEN);
        return result.getFailureReport().getDetails().stream();
    }
}
