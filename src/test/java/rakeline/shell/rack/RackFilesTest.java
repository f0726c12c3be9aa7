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

class RackFilesTest {
    private static final String ROAD_XS = "demo-data/bikes/road-xs.bike.json";

    private final Bike bike = RackStock.bundled(ROAD_XS);

    @TempDir
    Path page;

    @TempDir
    Path own;

    private RackFiles files;

    @BeforeEach
    void look() {
        files = new RackFiles(SafeFile.onDisk(), List.of(page, own));
    }

    @Test
    void aBundledBikeHasNoFileOfItsOwn() {
        assertThat(files.read(List.of(ROAD_XS)).get(0).isBundled()).isTrue();
    }

    @Test
    void aPathThatLeadsNowhereSaysSo() {
        assertThat(files.read(List.of("gone.bike.json")).get(0).trouble()).startsWith("gone.bike.json is neither in");
    }

    @Test
    void aNewBikeStandsInTheUsersFolder() throws IOException {
        RackRow created = files.create("mine.bike.json", bike);
        assertThat(BikeFile.read(Files.readAllBytes(own.resolve("mine.bike.json")), ""))
                .isEqualTo(bike);
        assertThat(created.path()).isEqualTo("mine.bike.json");
    }

    @Test
    void aNameThatIsTakenGetsANumber() {
        files.create("mine.bike.json", bike);
        assertThat(files.create("mine.bike.json", bike).path()).isEqualTo("mine-2.bike.json");
    }

    @Test
    void aChangeIsWrittenToTheBikesOwnFile() throws IOException {
        RackRow row = files.create("mine.bike.json", bike).withBike(bike.with(Inputs.STACK, 512));
        assertThat(files.write(row)).isInstanceOf(RackFiles.Written.Done.class);
        assertThat(BikeFile.read(Files.readAllBytes(own.resolve("mine.bike.json")), "")
                        .get(Inputs.STACK))
                .isEqualTo(512);
    }

    @Test
    void whatAnotherProgramWroteIsNotOverwritten() throws IOException {
        RackRow row = files.create("mine.bike.json", bike).withBike(bike.with(Inputs.STACK, 512));
        Files.write(own.resolve("mine.bike.json"), BikeWriter.write(bike.with(Inputs.REACH, 377)));
        assertThat(files.write(row))
                .isInstanceOfSatisfying(
                        RackFiles.Written.Changed.class,
                        changed -> assertThat(
                                        changed.theirs().bike().orElseThrow().get(Inputs.REACH))
                                .isEqualTo(377));
    }

    @Test
    void aFileBesideThePageIsTakenByItsName() throws IOException {
        Files.write(page.resolve("theirs.bike.json"), BikeWriter.write(bike));
        assertThat(files.take(page.resolve("theirs.bike.json")).path()).isEqualTo("theirs.bike.json");
    }

    @Test
    void aFileFromElsewhereIsCopied(@TempDir Path elsewhere) throws IOException {
        Files.write(elsewhere.resolve("theirs.bike.json"), BikeWriter.write(bike));
        assertThat(files.take(elsewhere.resolve("theirs.bike.json")).path()).isEqualTo("Road XS.bike.json");
        assertThat(own.resolve("Road XS.bike.json")).exists();
    }
}
