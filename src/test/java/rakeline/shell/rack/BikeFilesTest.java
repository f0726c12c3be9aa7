package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.BikeWriter;
import rakeline.desk.SafeFile;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;

class BikeFilesTest {
    private static final String ROAD_XS = "demo-data/bikes/road-xs.bike.json";

    private final Bike bike = RackStock.bundled(ROAD_XS);

    @TempDir
    Path page;

    @TempDir
    Path own;

    private BikeFiles files;

    @BeforeEach
    void look() {
        files = new BikeFiles(SafeFile.onDisk(), List.of(page, own));
    }

    @Test
    void aBundledBikeHasNoFileOfItsOwn() {
        assertThat(files.read(ROAD_XS).place()).isEmpty();
    }

    @Test
    void aPathThatLeadsNowhereSaysSo() {
        assertThat(files.read("gone.bike.json").trouble()).startsWith("gone.bike.json is neither in");
    }

    @Test
    void aNewBikeStandsInTheUsersFolder() throws IOException {
        RackBike.Filed created = files.create("mine.bike.json", bike);
        assertThat(BikeFile.read(Files.readAllBytes(own.resolve("mine.bike.json")), ""))
                .isEqualTo(bike);
        assertThat(created.path()).isEqualTo("mine.bike.json");
    }

    @Test
    void aNameThatIsTakenGetsANumber() {
        files.create("mine.bike.json", bike);
        assertThat(files.create("mine.bike.json", bike.with(Inputs.STACK, 512)).path())
                .isEqualTo("mine-2.bike.json");
    }

    private RackEvent write(RackBike.Filed filed) {
        return files.carryOut(new RackEffect.Write("bike 1", filed, bike.with(Inputs.STACK, 512)));
    }

    private Bike onDisk(String name) throws IOException {
        return BikeFile.read(Files.readAllBytes(own.resolve(name)), "");
    }

    @Test
    void aChangeIsWrittenToTheBikesOwnFile() throws IOException {
        assertThat(write(files.create("mine.bike.json", bike))).isInstanceOf(RackEvent.WasWritten.class);
        assertThat(onDisk("mine.bike.json").get(Inputs.STACK)).isEqualTo(512);
    }

    @Test
    void whatAnotherProgramWroteIsNotOverwritten() throws IOException {
        RackBike.Filed filed = files.create("mine.bike.json", bike);
        Files.write(own.resolve("mine.bike.json"), BikeWriter.write(bike.with(Inputs.REACH, 377)));
        assertThat(write(filed))
                .isInstanceOfSatisfying(
                        RackEvent.WasOvertaken.class,
                        overtaken -> assertThat(overtaken
                                        .theirs()
                                        .stored()
                                        .orElseThrow()
                                        .get(Inputs.REACH))
                                .isEqualTo(377));
    }

    @Test
    void aFileThatIsCalledOtherwiseLeavesNothingUnderItsOldName() throws IOException {
        files.carryOut(new RackEffect.Move("bike 1", files.create("mine.bike.json", bike), "yours.bike.json"));
        assertThat(own.resolve("mine.bike.json")).doesNotExist();
        assertThat(onDisk("yours.bike.json")).isEqualTo(bike);
    }

    @Test
    void aFileThatIsCalledOtherwiseOverwritesNoOther() throws IOException {
        RackBike.Filed filed = files.create("mine.bike.json", bike);
        files.create("yours.bike.json", bike.with(Inputs.STACK, 512));
        files.carryOut(new RackEffect.Move("bike 1", filed, "yours.bike.json"));
        assertThat(onDisk("yours.bike.json").get(Inputs.STACK)).isEqualTo(512);
        assertThat(onDisk("yours-2.bike.json")).isEqualTo(bike);
    }

    @Test
    void aFileBesideThePageIsTakenByItsName() throws IOException {
        Files.write(page.resolve("theirs.bike.json"), BikeWriter.write(bike));
        assertThat(files.take(page.resolve("theirs.bike.json"))).isEqualTo("theirs.bike.json");
    }

    @Test
    void aFileFromElsewhereIsCopied(@TempDir Path elsewhere) throws IOException {
        Files.write(elsewhere.resolve("theirs.bike.json"), BikeWriter.write(bike));
        assertThat(files.take(elsewhere.resolve("theirs.bike.json"))).isEqualTo("Road XS.bike.json");
        assertThat(own.resolve("Road XS.bike.json")).exists();
    }
}
