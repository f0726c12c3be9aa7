package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rakeline.desk.RackView;
import rakeline.desk.Stamp;
import rakeline.geometry.Bike;
import rakeline.shell.rack.RackEffect.Read.Answer;

/** What the rack asks for when something happens to it; nothing is read or written here. */
class RackTransitionsTest {
    private static final Path HOME = Path.of("/home/rack").toAbsolutePath();
    private static final String STACK = "frame.stackMm";
    private static final Bike MEASURED = RackStock.bundled("demo-data/bikes/road-xs.bike.json");
    private static final Bike CHARTED = Bike.of(MEASURED.name(), MEASURED.given(), MEASURED.groups(), Map.of());

    private final List<RackEffect> effects = new ArrayList<>();
    private RackState state = RackState.empty();

    @BeforeEach
    void twoBikesOnTheRack() {
        tell(new RackEvent.PageShown(new RackState.Page(List.of(HOME), List.of("a.bike.json", "b.bike.json")), true));
        tell(new RackEvent.Recalled(RackView.first()));
        answer(CHARTED.named("A"), CHARTED.named("B"));
        effects.clear();
    }

    private void tell(RackEvent event) {
        RackTransitions.Next next = RackTransitions.after(state, event);
        state = next.state();
        effects.addAll(next.effects());
    }

    /** What was asked to be read holds these. */
    private void answer(Bike... bikes) {
        RackEffect.Read read = last(RackEffect.Read.class);
        List<Answer> answers = new ArrayList<>();
        for (int i = 0; i < bikes.length; i++) {
            RackEffect.Read.Source source = read.sources().get(i);
            answers.add(new Answer(source, filed(source.path(), bikes[i]), false));
        }
        tell(new RackEvent.WasRead(read.number(), answers));
    }

    private static RackBike.Filed filed(String path, Bike bike) {
        return new RackBike.Filed(
                path, Optional.of(new RackBike.Place(HOME.resolve(path), new Stamp("one"))), Optional.of(bike), "", "");
    }

    private <T extends RackEffect> T last(Class<T> kind) {
        return all(kind).reduce((first, last) -> last).orElseThrow();
    }

    private <T extends RackEffect> java.util.stream.Stream<T> all(Class<T> kind) {
        return effects.stream().filter(kind::isInstance).map(kind::cast);
    }

    private String id(int row) {
        return state.rows().get(row).id();
    }

    private void type(int row, String text) {
        tell(new RackEvent.Typed(id(row), STACK, text));
    }

    private void enter(int row, String text) {
        type(row, text);
        tell(new RackEvent.Left(id(row), STACK));
    }

    private List<String> names() {
        return state.rows().stream().map(RackBike::name).toList();
    }

    @Test
    void aCellThatWasNotLeftIsKeptAndNotWritten() {
        type(0, "512");
        tell(new RackEvent.Rested());
        assertThat(last(RackEffect.Keep.class).view().unfinished().get(0).open())
                .containsEntry(STACK, "512");
        assertThat(all(RackEffect.Write.class)).isEmpty();
    }

    @Test
    void whatIsLeftIsKeptBeforeItIsWritten() {
        enter(0, "512");
        assertThat(effects.get(0)).isInstanceOf(RackEffect.Keep.class);
        assertThat(effects.get(1)).isInstanceOf(RackEffect.Write.class);
    }

    @Test
    void oneBikeIsWrittenWhileAnotherCannotBe() {
        enter(0, "512");
        tell(new RackEvent.Failed(last(RackEffect.Write.class), "the disk is full."));
        enter(1, "530");
        tell(new RackEvent.Failed(last(RackEffect.Write.class), "the disk is full."));
        assertThat(last(RackEffect.Write.class).id()).isEqualTo(id(1));
    }

    @Test
    void aBikeThatWasTakenOffAndCannotBeWrittenIsBackAndThatIsSaid() {
        enter(0, "512");
        String a = id(0);
        tell(new RackEvent.TakenOff(Set.of(a)));
        assertThat(names()).containsExactly("B");
        tell(new RackEvent.Failed(last(RackEffect.Write.class), "the disk is full."));
        assertThat(names()).containsExactly("A", "B");
        assertThat(last(RackEffect.Tell.class).sentence()).contains("What you typed in A is back on the rack");
    }

    @Test
    void takingABikeOffIsUndone() {
        tell(new RackEvent.TakenOff(Set.of(id(0))));
        assertThat(state.page().rack()).containsExactly("b.bike.json");
        tell(new RackEvent.Undone());
        assertThat(names()).containsExactly("A", "B");
        assertThat(state.page().rack()).contains("a.bike.json");
    }

    @Test
    void aDragWritesNothingUntilTheHandLetsGo() {
        tell(new RackEvent.Dragged(id(0), STACK, 512));
        assertThat(state.rows().get(0).value(RackColumn.of(STACK))).isEqualTo(512);
        assertThat(last(RackEffect.Say.class).words()).isEqualTo("Stack of A: 512 mm");
        assertThat(all(RackEffect.OnFile.class)).isEmpty();
        tell(new RackEvent.Released());
        assertThat(all(RackEffect.Write.class)).hasSize(1);
    }

    @Test
    void aDragOnAMeasuredBikeChangesACopy() {
        tell(new RackEvent.Put(List.of(RackEvent.NewBike.of(MEASURED.named("M")))));
        RackEffect.Create made = last(RackEffect.Create.class);
        tell(new RackEvent.WasCreated(made.id(), made.fileName(), filed("M.bike.json", MEASURED.named("M"))));
        tell(new RackEvent.Dragged(id(2), STACK, 512));
        tell(new RackEvent.Released());
        assertThat(names()).containsExactly("A", "B", "M", "M, stack 512 mm");
        assertThat(all(RackEffect.Write.class)).isEmpty();
        assertThat(last(RackEffect.Create.class).fileName()).isEqualTo("M, stack 512 mm.bike.json");
    }

    @Test
    void aBikeThatIsRenamedTakesItsFileAndThePageAlong() {
        tell(new RackEvent.Renamed(id(0), "Mine"));
        RackEffect.Move move = last(RackEffect.Move.class);
        assertThat(move.fileName()).isEqualTo("Mine.bike.json");
        tell(new RackEvent.WasMoved(
                move.id(), move.fileName(), new RackBike.Place(HOME.resolve("Mine.bike.json"), new Stamp("one"))));
        assertThat(state.page().rack()).containsExactly("Mine.bike.json", "b.bike.json");
        assertThat(last(RackEffect.Write.class).bike().name()).isEqualTo("Mine");
    }

    @Test
    void leavingAPageTakesNoBikeOff() {
        tell(new RackEvent.PageShown(new RackState.Page(List.of(HOME), List.of()), true));
        assertThat(names()).containsExactly("A", "B");
        assertThat(all(RackEffect.EditPage.class)).isEmpty();
    }

    @Test
    void whoRidesIsKept() {
        tell(new RackEvent.Chosen(choices -> choices.seating("mine.rider.json", Optional.empty())));
        RackState again = RackTransitions.after(
                        RackState.empty(),
                        new RackEvent.Recalled(last(RackEffect.Keep.class).view()))
                .state();
        assertThat(again.choices().riderPath()).isEqualTo("mine.rider.json");
    }

    @Test
    void ofWhatIsPastedTheBikesThatCanStandAreChangedAndTheOthersNamed() {
        tell(new RackEvent.Pasted(0, 0, "511\t371\n527\toops"));
        assertThat(state.rows().stream().map(row -> row.value(RackColumn.of(STACK))))
                .containsExactly(511.0, 508.0);
        assertThat(last(RackEffect.Tell.class).sentence()).startsWith("B stays as it was: Reach is \"oops\"");
    }
}
