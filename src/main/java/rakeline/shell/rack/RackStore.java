package rakeline.shell.rack;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.swing.Timer;
import rakeline.quantity.Refusal;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;

/**
 * Holds the rack's state, carries out what {@link RackTransitions} asks for off the event thread, and shows the state to
 * the views. To be used on the event thread.
 */
public final class RackStore implements Bench.View {
    static final int REST_MILLIS = 600;
    private static final Logger LOG = Logger.getLogger(RackStore.class.getName());

    /** A view of the rack. */
    interface View {
        void showRack();

        /** Other files may lie in the folders now. */
        void listAgain();
    }

    private final Bench bench;
    private final Host host;
    private final RackReader reader = new RackReader();
    private final Background study = new Background("rack study");
    private final List<View> views = new ArrayList<>();
    private final Deque<RackEvent> happening = new ArrayDeque<>();
    private final Timer rest = new Timer(REST_MILLIS, event -> tell(new RackEvent.Rested()));
    private RackState state = RackState.empty();
    private List<RackBike> rows = List.of();
    private Map<String, RackReading> readings = Map.of();
    private int opened = -1;
    private boolean isTelling;
    private boolean isClosed;

    public RackStore(Bench bench, Host host) {
        this.bench = bench;
        this.host = host;
        rest.setRepeats(false);
    }

    /** Takes what was kept at the last start. */
    public void recall() {
        tell(new RackEvent.Recalled(host.view()));
        listAgain();
    }

    public RackState state() {
        return state;
    }

    /** The bikes on the rack, with what is typed in cells that were not left. */
    List<RackBike> rows() {
        return rows;
    }

    Optional<RackBike> row(String id) {
        return rows.stream().filter(row -> row.id().equals(id)).findFirst();
    }

    RackReading reading(RackBike row) {
        return readings.getOrDefault(row.id(), RackReading.NONE);
    }

    BikeFiles files() {
        return files(state.page());
    }

    private BikeFiles files(RackState.Page page) {
        return new BikeFiles(host.disk(), page.folders());
    }

    Host host() {
        return host;
    }

    Background study() {
        return study;
    }

    void watch(View view) {
        views.add(view);
        view.showRack();
    }

    /** Forgets all views, before others take their place. */
    public void unwatchAll() {
        views.clear();
    }

    /** What one sentence says to the person. */
    void say(String sentence) {
        bench.notice(sentence);
    }

    /** Something happens to the rack. What happens while that is carried out comes after it. */
    void tell(RackEvent event) {
        if (isClosed) {
            return;
        }
        happening.add(event);
        if (!isTelling) {
            isTelling = true;
            try {
                while (!happening.isEmpty()) {
                    become(RackTransitions.after(state, happening.remove()));
                }
            } finally {
                isTelling = false;
            }
        }
        if (event instanceof RackEvent.Typed) {
            rest.restart();
        }
    }

    private void become(RackTransitions.Next next) {
        RackState before = state;
        state = next.state();
        if (!before.bikes().equals(state.bikes())
                || !before.typing().equals(state.typing())
                || !before.choices().equals(state.choices())) {
            rows = state.rows();
            reader.read(rows, state.choices(), now -> {
                readings = new HashMap<>(now);
                show();
            });
            show();
        }
        next.effects().forEach(this::carryOut);
    }

    private void show() {
        List.copyOf(views).forEach(View::showRack);
    }

    private void carryOut(RackEffect effect) {
        if (effect instanceof RackEffect.Tell tell) {
            bench.notice(tell.sentence());
        } else if (effect instanceof RackEffect.Say say) {
            bench.say(say.words());
        } else if (effect instanceof RackEffect.EditPage edit) {
            bench.act(edit.words(), edit.edit()::page);
        } else if (effect instanceof RackEffect.Keep keep) {
            host.keep(before -> keep.view().opened(before.isOpen()));
        } else if (effect instanceof RackEffect.Read read) {
            BikeFiles files = files(read.page());
            aside(() -> new RackEvent.WasRead(read.number(), files.read(read.sources())), bench::notice);
        } else if (effect instanceof RackEffect.OnFile onFile) {
            carryOut(onFile);
        }
    }

    private void carryOut(RackEffect.OnFile effect) {
        BikeFiles files = effect instanceof RackEffect.Create create ? files(create.page()) : files();
        aside(() -> files.carryOut(effect), why -> tell(new RackEvent.Failed(effect, why)));
    }

    private void aside(Supplier<RackEvent> work, java.util.function.Consumer<String> refused) {
        host.aside(() -> plainly(work), this::tell, refused);
    }

    /** Whatever goes wrong is said: a write that was never heard of again would hold up all others. */
    private static RackEvent plainly(Supplier<RackEvent> work) {
        try {
            return work.get();
        } catch (Refusal refusal) {
            throw refusal;
        } catch (RuntimeException broken) {
            LOG.log(Level.SEVERE, "a bike's file could not be dealt with", broken);
            throw new Refusal("A bike's file could not be dealt with: " + broken.getMessage() + ".", broken);
        }
    }

    @Override
    public void show(PageModel page) {
        RackState.Page now = new RackState.Page(
                Stream.concat(page.origin().folder().stream(), Stream.of(host.userFolder()))
                        .toList(),
                page.page().rack());
        boolean isAnother = bench.openings() != opened;
        boolean isElsewhere = !now.folders().equals(state.page().folders());
        if (isAnother || !now.equals(state.page())) {
            opened = bench.openings();
            tell(new RackEvent.PageShown(now, isAnother));
        }
        if (isElsewhere) {
            listAgain();
        }
    }

    /** Reads the files again; what is typed and not written yet stays. */
    public void lookAround() {
        tell(new RackEvent.LookedAround());
        listAgain();
    }

    private void listAgain() {
        List.copyOf(views).forEach(View::listAgain);
    }

    /** Writes what is not in its file yet; what cannot be written now is kept for the next start. */
    public void save() {
        rest.stop();
        tell(new RackEvent.LookedAround());
    }

    void choose(UnaryOperator<RackChoices> change) {
        tell(new RackEvent.Chosen(change));
    }

    /** Lengths are shown in another unit. */
    public void in(LengthUnit unit) {
        choose(choices -> choices.in(unit));
    }

    /** Whether something done on the rack can be undone. */
    public boolean canUndo() {
        return state.canUndo();
    }

    public boolean canRedo() {
        return state.canRedo();
    }

    public void undo() {
        tell(new RackEvent.Undone());
    }

    public void redo() {
        tell(new RackEvent.Redone());
    }

    /** Begins a bike without any number. */
    void begin() {
        tell(new RackEvent.Put(
                List.of(new RackEvent.NewBike(state.freshName("New bike"), Optional.empty(), Map.of()))));
    }

    void takeOff(List<RackBike> bikes) {
        tell(new RackEvent.TakenOff(Set.copyOf(bikes.stream().map(RackBike::id).toList())));
    }

    /** Ends what computes. */
    public void close() {
        isClosed = true;
        rest.stop();
        reader.close();
        study.close();
    }
}
