package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.BikeWriter;
import rakeline.desk.RackView;
import rakeline.desk.SafeFile;
import rakeline.engine.Session;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.quantity.Refusal;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Origin;
import rakeline.worksheet.Worksheet;

/** What becomes of what is typed. Everything that the window does aside is done at once. */
class RackStoreTest {
    private static final String ROAD_XS = "demo-data/bikes/road-xs.bike.json";
    private static final RackColumn STACK = RackColumn.of("frame.stackMm");
    private static final RackColumn CRANK = RackColumn.of("crank.lengthMm");

    private final Bike bike = RackStock.bundled(ROAD_XS);

    @TempDir
    Path own;

    private final Here host = new Here();
    private Bench bench;
    private RackStore store;

    /** A window without a window. */
    private final class Here implements Host {
        private RackView view = RackView.first();

        @Override
        public <T> void aside(Supplier<T> work, Consumer<T> done, Consumer<String> refused) {
            try {
                done.accept(work.get());
            } catch (Refusal refusal) {
                refused.accept(refusal.getMessage());
            }
        }

        @Override
        public SafeFile disk() {
            return SafeFile.onDisk();
        }

        @Override
        public Path userFolder() {
            return own;
        }

        @Override
        public RackView view() {
            return view;
        }

        @Override
        public void keep(UnaryOperator<RackView> change) {
            view = change.apply(view);
        }

        @Override
        public List<Path> filesToOpen(String what, String ending) {
            return List.of();
        }

        @Override
        public Optional<Path> fileToSave(String proposed, String what, String ending) {
            return Optional.empty();
        }
    }

    @BeforeEach
    void putABikeOnTheRack() throws IOException {
        Files.write(own.resolve("mine.bike.json"), BikeWriter.write(bike));
        store = open("mine.bike.json");
    }

    private RackStore open(String... paths) {
        bench = new Bench(settings -> null, Session.Settings::standard);
        RackStore opened = new RackStore(bench, host);
        opened.recall();
        bench.watch(opened);
        bench.open(Worksheet.empty("A page").withRack(List.of(paths)), new Origin.New(), false);
        return opened;
    }

    @AfterEach
    void close() {
        store.close();
    }

    private Bike onDisk(String name) {
        try {
            return BikeFile.read(Files.readAllBytes(own.resolve(name)), name);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private String first() {
        return store.rows().get(0).id();
    }

    private void type(RackColumn column, String text) {
        type(first(), column, text);
    }

    private void type(String id, RackColumn column, String text) {
        store.tell(new RackEvent.Typed(id, column.key(), text));
        store.tell(new RackEvent.Left(id, column.key()));
    }

    @Test
    void whatIsTypedStandsInTheFileOnceTheCellIsLeft() {
        type(STACK, "512");
        assertThat(onDisk("mine.bike.json").get(Inputs.STACK)).isEqualTo(512);
    }

    @Test
    void whatAnotherProgramWroteStaysWithWhatWasTypedOnTop() throws IOException {
        Files.write(own.resolve("mine.bike.json"), BikeWriter.write(bike.with(Inputs.REACH, 377)));
        type(STACK, "512");
        assertThat(onDisk("mine.bike.json"))
                .isEqualTo(bike.with(Inputs.REACH, 377).with(Inputs.STACK, 512));
        assertThat(bench.model().notice()).contains("Another program has changed Road XS");
    }

    @Test
    void anUndoIsWrittenToo() {
        type(STACK, "512");
        store.undo();
        assertThat(onDisk("mine.bike.json")).isEqualTo(bike);
    }

    @Test
    void anUndoDoesNotTakeBackWhatAnotherProgramWrote() throws IOException {
        type(STACK, "512");
        Files.write(own.resolve("mine.bike.json"), BikeWriter.write(bike.with(Inputs.REACH, 377)));
        store.undo();
        assertThat(onDisk("mine.bike.json").get(Inputs.REACH)).isEqualTo(377);
    }

    @Test
    void aBikeThatLeavesTheRackIsWrittenAllTheSame() {
        type(STACK, "512");
        bench.open(Worksheet.empty("Another page"), new Origin.New(), false);
        assertThat(onDisk("mine.bike.json").get(Inputs.STACK)).isEqualTo(512);
    }

    @Test
    void aBundledBikeIsCopiedAndThePageReadsTheCopy() {
        store = open(ROAD_XS);
        type(STACK, "512");
        assertThat(bench.model().page().rack()).containsExactly("road-xs.bike.json");
        assertThat(onDisk("road-xs.bike.json").get(Inputs.STACK)).isEqualTo(512);
    }

    @Test
    void aCopyIsUndoneIntoItsOwnFile() {
        store = open(ROAD_XS);
        type(STACK, "512");
        store.undo();
        assertThat(onDisk("road-xs.bike.json")).isEqualTo(bike);
    }

    @Test
    void numbersThatNoFileCanHoldYetAreThereAtTheNextStart() {
        store.begin();
        type(store.rows().get(1).id(), CRANK, "172.5");
        RackStore again = open("mine.bike.json");
        RackBike row = again.rows().get(1);
        again.close();
        assertThat(row.name()).isEqualTo("New bike");
        assertThat(row.value(CRANK)).isEqualTo(172.5);
    }

    @Test
    void aBikeThatBecomesWholeGetsAFileAndAPlaceOnThePage() {
        store.begin();
        String block = "560\t390\t72.5\t73.5\t415\t70\t45\t622\t28";
        store.tell(new RackEvent.Pasted(1, 0, block));
        assertThat(bench.model().page().rack()).containsExactly("mine.bike.json", "New bike.bike.json");
        assertThat(onDisk("New bike.bike.json").get(Inputs.REACH)).isEqualTo(390);
    }

    @Test
    void whatCannotBeWrittenStaysOnTheRack() throws IOException {
        Files.delete(own.resolve("mine.bike.json"));
        Files.createDirectory(own.resolve("mine.bike.json"));
        type(STACK, "512");
        assertThat(store.rows().get(0).value(STACK)).isEqualTo(512);
        assertThat(bench.model().notice()).contains("What you typed in Road XS stays on the rack");
    }

    @Test
    void theColumnsAndTheUnitAreKept() {
        store.choose(choices -> choices.withColumns(List.of("trailMm", "frame.stackMm")));
        store.in(LengthUnit.INCH);
        RackStore again = open("mine.bike.json");
        again.close();
        assertThat(again.state().columns().stream().map(RackColumn::key)).containsExactly("trailMm", "frame.stackMm");
        assertThat(again.state().lengths()).isEqualTo(LengthUnit.INCH);
    }
}
