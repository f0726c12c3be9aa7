package rakeline.shell.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import rakeline.catalogue.BikeWriter;
import rakeline.desk.RackView;
import rakeline.desk.Stamp;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;

/**
 * Random histories of the rack: cells typed, left and taken back, drags, bikes put on, renamed and taken off, undo and
 * redo, other pages, other programs, a disk that fails for a while, kills and restarts. Beside each runs a small model
 * that knows nothing of how the rack does it: it keeps what a person sees as whole snapshots.
 */
class RackHistoriesTest {
    private static final Path HOME = Path.of("/home/rack").toAbsolutePath();
    private static final int DEEDS = 60;
    private static final String STACK = "frame.stackMm";
    private static final Bike PLAIN = bare(RackStock.bundled("demo-data/bikes/road-xs.bike.json"));

    @Test
    void whatIsLeftReachesItsFileAndNothingElseDoes() {
        run(0, Integer.getInteger("rack.histories", 60));
    }

    @Tag("soak")
    @Test
    void theSameForTenThousandHistories() {
        run(Integer.getInteger("soak.seed", 1_000), Integer.getInteger("soak.rack", 10_000));
    }

    private static void run(int from, int histories) {
        for (int seed = from; seed < from + histories; seed++) {
            new History(seed).run();
        }
    }

    /** A bike of which nothing was measured. */
    private static Bike bare(Bike bike) {
        return Bike.of(bike.name(), bike.given(), bike.groups(), Map.of());
    }

    /** Its chainstay says which bike it is, whatever it is called. */
    private static int idOf(Bike bike) {
        return (int) bike.get(Inputs.CHAINSTAY) - 400;
    }

    /** A bike as a person sees it. */
    private record Seen(String name, int stack) {}

    /** All that a person sees; bikes that are not on were taken off. */
    private record Snapshot(Map<Integer, Seen> all, Set<Integer> on) {
        Snapshot {
            all = new TreeMap<>(all);
            on = new TreeSet<>(on);
        }

        Snapshot with(int id, Seen seen) {
            Map<Integer, Seen> more = new TreeMap<>(all);
            more.put(id, seen);
            return new Snapshot(more, on);
        }

        Snapshot on(Set<Integer> ids) {
            return new Snapshot(all, ids);
        }

        Snapshot plus(int id) {
            Set<Integer> more = new TreeSet<>(on);
            more.add(id);
            return new Snapshot(all, more);
        }
    }

    /** What would be there after a kill. */
    private record Durable(Snapshot now, Map<Integer, String> open, Set<Integer> filed) {}

    /** What is expected. */
    private static final class Model {
        private Snapshot now = new Snapshot(Map.of(), Set.of());
        private final List<Snapshot> undo = new ArrayList<>();
        private final List<Snapshot> redo = new ArrayList<>();
        private final Map<Integer, String> open = new TreeMap<>();
        private final Map<Integer, Seen> last = new HashMap<>();
        private final Map<Integer, Integer> reach = new HashMap<>();
        private final Set<Integer> filed = new HashSet<>();
        private final Map<Integer, Set<Integer>> left = new HashMap<>();

        void become(Snapshot next) {
            if (!next.equals(now)) {
                undo.add(now);
                redo.clear();
                see(next);
            }
        }

        private void see(Snapshot next) {
            now = next;
            last.putAll(next.all());
            next.all().forEach((id, seen) -> allowed(id).add(seen.stack()));
        }

        Set<Integer> allowed(int id) {
            return left.computeIfAbsent(id, any -> new HashSet<>());
        }

        void travel(List<Snapshot> from, List<Snapshot> to) {
            if (!from.isEmpty()) {
                to.add(now);
                see(from.remove(from.size() - 1));
            }
        }

        void leave(int id) {
            String text = open.getOrDefault(id, "");
            if (text.matches("\\d+")) {
                open.remove(id);
                become(now.with(id, new Seen(now.all().get(id).name(), Integer.parseInt(text))));
            }
        }

        /** A write failed: a bike that was taken off is back. */
        void failed(int id) {
            if (now.on().contains(id)) {
                return;
            }
            boolean wasThere = now.all().containsKey(id);
            undo.replaceAll(one -> back(one, id, wasThere));
            redo.replaceAll(one -> back(one, id, wasThere));
            see(back(now, id, wasThere));
            List<Snapshot> line = new ArrayList<>(undo);
            line.add(now);
            undo.clear();
            for (int i = 0; i < line.size() - 1; i++) {
                if (!line.get(i).equals(line.get(i + 1))) {
                    undo.add(line.get(i));
                }
            }
            line = new ArrayList<>(redo);
            line.add(now);
            redo.clear();
            for (int i = 0; i < line.size() - 1; i++) {
                if (!line.get(i).equals(line.get(i + 1))) {
                    redo.add(line.get(i));
                }
            }
        }

        private Snapshot back(Snapshot one, int id, boolean wasThere) {
            if (wasThere) {
                return one.all().containsKey(id) ? one.plus(id) : one;
            }
            return (one.all().containsKey(id) ? one : one.with(id, last.get(id))).plus(id);
        }

        Durable durable() {
            return new Durable(now, new TreeMap<>(open), Set.copyOf(filed));
        }

        void forget() {
            undo.clear();
            redo.clear();
        }
    }

    /** One history, its world and its model. */
    private static final class History {
        private final int seed;
        private final Random random;
        private final Model model = new Model();
        private final Map<Path, Bike> files = new LinkedHashMap<>();
        private final Deque<Runnable> disk = new ArrayDeque<>();
        private final StringBuilder story = new StringBuilder();
        private RackState state = RackState.empty();
        private List<String> page = List.of();
        private RackView kept = RackView.first();
        private Durable durable = model.durable();
        private final Set<Integer> stuck = new HashSet<>();
        private boolean isFailing;
        private boolean isDying;
        private boolean isMoved;
        private int made;

        History(int seed) {
            this.seed = seed;
            random = new Random(seed);
        }

        void run() {
            try {
                start();
                for (int i = 0; i < DEEDS; i++) {
                    deed();
                    if (i % 15 == 14) {
                        settle();
                    }
                }
                settle();
            } catch (RuntimeException | AssertionError failure) {
                throw new AssertionError("seed " + seed + ":\n" + story + failure.getMessage(), failure);
            }
        }

        private void start() {
            state = RackState.empty();
            tell(new RackEvent.PageShown(source(), true));
            tell(new RackEvent.Recalled(kept));
        }

        private RackState.Page source() {
            return new RackState.Page(List.of(HOME), page);
        }

        private void tell(RackEvent event) {
            if (isDying) {
                return;
            }
            Deque<RackEvent> events = new ArrayDeque<>(List.of(event));
            while (!events.isEmpty()) {
                RackTransitions.Next next = RackTransitions.after(state, events.remove());
                state = next.state();
                next.effects().forEach(effect -> carryOut(effect, events));
            }
            assertThat(state.page().rack()).as("the rack and the page agree").isEqualTo(page);
        }

        private void carryOut(RackEffect effect, Deque<RackEvent> events) {
            if (effect instanceof RackEffect.EditPage edit) {
                page = edit.edit().rack(page);
                events.add(new RackEvent.PageShown(source(), false));
            } else if (effect instanceof RackEffect.Keep keep) {
                Durable then = model.durable();
                disk.add(() -> {
                    kept = keep.view();
                    durable = then;
                    isMoved = false;
                });
            } else if (effect instanceof RackEffect.Read read) {
                disk.add(() -> tell(new RackEvent.WasRead(
                        read.number(), read.sources().stream().map(this::read).toList())));
            } else if (effect instanceof RackEffect.OnFile onFile) {
                disk.add(() -> tell(onFile));
            }
        }

        private RackEffect.Read.Answer read(RackEffect.Read.Source source) {
            Path file = source.path().isEmpty() ? source.known().orElseThrow() : HOME.resolve(source.path());
            String path = source.path().isEmpty() ? file.toString() : source.path();
            return new RackEffect.Read.Answer(source, filed(path, file), false);
        }

        private RackBike.Filed filed(String path, Path file) {
            return files.containsKey(file)
                    ? new RackBike.Filed(
                            path,
                            Optional.of(new RackBike.Place(file, stamp(file))),
                            Optional.of(files.get(file)),
                            "",
                            "")
                    : RackBike.Filed.unread(path, path + " is not there.");
        }

        private Stamp stamp(Path file) {
            return Stamp.of(BikeWriter.write(files.get(file)));
        }

        private void tell(RackEffect.OnFile effect) {
            int id = idOf(state.bike(effect.id()).orElseThrow().bike().orElseThrow());
            if (isFailing && !isDying && random.nextInt(3) > 0) {
                story.append("  failed ")
                        .append(effect.getClass().getSimpleName())
                        .append(' ')
                        .append(id)
                        .append('\n');
                if (effect instanceof RackEffect.Move) {
                    stuck.add(id);
                } else {
                    model.failed(id);
                }
                tell(new RackEvent.Failed(effect, "the disk is full."));
            } else if (!isDying || !(effect instanceof RackEffect.Move)) {
                RackEvent done = done(effect);
                if (done instanceof RackEvent.WasCreated && !isDying) {
                    model.filed.add(id);
                }
                tell(done);
            }
        }

        private RackEvent done(RackEffect.OnFile effect) {
            story.append("  ")
                    .append(effect.getClass().getSimpleName())
                    .append(' ')
                    .append(effect.id())
                    .append('\n');
            if (effect instanceof RackEffect.Create create) {
                return new RackEvent.WasCreated(create.id(), create.fileName(), created(create));
            }
            if (effect instanceof RackEffect.Move move) {
                RackBike.Place place = move.filed().place().orElseThrow();
                Path to = free(move.fileName());
                files.put(to, files.remove(place.file()));
                stuck.remove(idOf(files.get(to)));
                isMoved = true;
                return new RackEvent.WasMoved(move.id(), move.fileName(), new RackBike.Place(to, place.stamp()));
            }
            RackEffect.Write write = (RackEffect.Write) effect;
            RackBike.Place place = write.filed().place().orElseThrow();
            if (!stamp(place.file()).equals(place.stamp())) {
                return new RackEvent.WasOvertaken(
                        write.id(), filed(write.filed().path(), place.file()));
            }
            write(place.file(), write.bike());
            return new RackEvent.WasWritten(write.id(), filed(write.filed().path(), place.file()));
        }

        private RackBike.Filed created(RackEffect.Create create) {
            Path wanted = HOME.resolve(create.fileName());
            boolean isIt = create.bike().equals(files.get(wanted));
            Path file = isIt
                    ? wanted
                    : create.former()
                            .map(bike -> HOME.resolve(BikeWriter.fileName(bike.name())))
                            .filter(one -> create.former().get().equals(files.get(one)))
                            .orElseGet(() -> free(create.fileName()));
            write(file, create.bike());
            return filed(String.valueOf(file.getFileName()), file);
        }

        private void write(Path file, Bike bike) {
            int id = idOf(bike);
            assertThat(model.allowed(id))
                    .as("what is written was left in its cell")
                    .contains((int) bike.get(Inputs.STACK));
            model.reach.put(id, (int) bike.get(Inputs.REACH));
            files.put(file, bike);
        }

        private Path free(String name) {
            Path file = HOME.resolve(name);
            for (int i = 2; files.containsKey(file); i++) {
                file = HOME.resolve(name.replace(".bike.json", "-" + i + ".bike.json"));
            }
            return file;
        }

        private void deed() {
            int which = random.nextInt(100);
            if (which < 18) {
                type();
            } else if (which < 32) {
                leave();
            } else if (which < 36) {
                cancel();
            } else if (which < 40) {
                drag();
            } else if (which < 48) {
                put();
            } else if (which < 53) {
                rename();
            } else if (which < 58) {
                takeOff();
            } else if (which < 65) {
                say("undo");
                model.travel(model.undo, model.redo);
                tell(new RackEvent.Undone());
            } else if (which < 69) {
                say("redo");
                model.travel(model.redo, model.undo);
                tell(new RackEvent.Redone());
            } else {
                around(which);
            }
        }

        private void around(int which) {
            if (which < 84) {
                work();
            } else if (which < 87) {
                isFailing = !isFailing;
                say(isFailing ? "the disk fails" : "the disk works");
            } else if (which < 90) {
                say("rest");
                tell(new RackEvent.Rested());
            } else if (which < 92) {
                say("look around");
                tell(new RackEvent.LookedAround());
            } else if (which < 95) {
                another();
            } else if (which < 97) {
                openPage();
            } else {
                kill();
            }
        }

        private void say(String words) {
            story.append(words)
                    .append("   ")
                    .append(model.now)
                    .append(model.open)
                    .append('\n');
        }

        private Optional<Integer> any() {
            List<Integer> on = List.copyOf(model.now.on());
            return on.isEmpty() ? Optional.empty() : Optional.of(on.get(random.nextInt(on.size())));
        }

        /** The rack's own id of a bike. */
        private Optional<String> rackId(int id) {
            return state.bikes().stream()
                    .filter(bike -> bike.isOn()
                            && bike.bike().filter(one -> idOf(one) == id).isPresent())
                    .map(RackBike::id)
                    .findFirst();
        }

        /** Something is done to a bike that is on the rack, and has been read. */
        private void with(java.util.function.BiConsumer<Integer, String> work) {
            any().ifPresent(id -> rackId(id).ifPresent(own -> work.accept(id, own)));
        }

        private void type() {
            with((id, own) -> {
                String text = random.nextInt(6) == 0 ? "4x" : String.valueOf(400 + random.nextInt(300));
                say("type " + id + " " + text);
                boolean isShown =
                        text.equals(String.valueOf(model.now.all().get(id).stack()));
                model.open.put(id, text);
                if (isShown) {
                    model.open.remove(id);
                }
                tell(new RackEvent.Typed(own, STACK, text));
            });
        }

        private void leave() {
            with((id, own) -> {
                say("leave " + id);
                model.leave(id);
                tell(new RackEvent.Left(own, STACK));
            });
        }

        private void cancel() {
            with((id, own) -> {
                say("cancel " + id);
                model.open.remove(id);
                tell(new RackEvent.Cancelled(own, STACK));
            });
        }

        private void drag() {
            with((id, own) -> {
                int to = 400 + random.nextInt(300);
                say("drag " + id + " " + to);
                tell(new RackEvent.Dragged(own, STACK, to - 1));
                tell(new RackEvent.Dragged(own, STACK, to));
                model.open.remove(id);
                model.become(model.now.with(id, new Seen(model.now.all().get(id).name(), to)));
                tell(new RackEvent.Released());
            });
        }

        private void put() {
            int id = ++made;
            say("put " + id);
            Bike bike = PLAIN.with(Inputs.CHAINSTAY, 400 + id).named("Bike " + id);
            model.become(model.now
                    .with(id, new Seen(bike.name(), (int) bike.get(Inputs.STACK)))
                    .plus(id));
            model.reach.put(id, (int) bike.get(Inputs.REACH));
            tell(new RackEvent.Put(List.of(RackEvent.NewBike.of(bike))));
        }

        private void rename() {
            with((id, own) -> {
                String name = "Name " + random.nextInt(4);
                say("rename " + id + " " + name);
                model.become(model.now.with(
                        id, new Seen(name, model.now.all().get(id).stack())));
                tell(new RackEvent.Renamed(own, name));
            });
        }

        private void takeOff() {
            with((id, own) -> {
                Set<Integer> ids = new TreeSet<>(Set.of(id));
                any().filter(other -> rackId(other).isPresent()).ifPresent(ids::add);
                Set<String> owns =
                        ids.stream().map(one -> rackId(one).orElseThrow()).collect(Collectors.toSet());
                say("take off " + ids);
                Set<Integer> left = new TreeSet<>(model.now.on());
                left.removeAll(ids);
                model.become(model.now.on(left));
                tell(new RackEvent.TakenOff(owns));
            });
        }

        private void work() {
            for (int i = random.nextInt(4); i >= 0 && !disk.isEmpty(); i--) {
                disk.remove().run();
            }
        }

        private void settle() {
            say("settle");
            isFailing = false;
            work(disk);
            tell(new RackEvent.LookedAround());
            work(disk);
            compare();
        }

        private static void work(Deque<Runnable> disk) {
            while (!disk.isEmpty()) {
                disk.remove().run();
            }
        }

        /** Another program changes a number that nobody types here. */
        private void another() {
            List<Path> all = List.copyOf(files.keySet());
            if (!all.isEmpty()) {
                Path file = all.get(random.nextInt(all.size()));
                Bike bike = files.get(file).with(Inputs.REACH, 360 + random.nextInt(40));
                say("another program changes " + idOf(bike));
                files.put(file, bike);
                model.reach.put(idOf(bike), (int) bike.get(Inputs.REACH));
            }
        }

        /** Another page, with bikes of its own or none; what is typed was left before, as the window sees to. */
        private void openPage() {
            work(disk);
            List<Path> own = files.keySet().stream()
                    .filter(file -> random.nextInt(3) == 0)
                    .toList();
            say("page with " + own.stream().map(file -> idOf(files.get(file))).toList());
            page = own.stream().map(file -> String.valueOf(file.getFileName())).toList();
            if (!own.isEmpty()) {
                Set<Integer> on = new TreeSet<>(model.now.on());
                on.removeIf(model.filed::contains);
                exchange(own, on);
                model.forget();
            }
            tell(new RackEvent.PageShown(source(), true));
            work(disk);
        }

        private void exchange(List<Path> own, Set<Integer> on) {
            for (Path file : own) {
                int id = idOf(files.get(file));
                on.add(id);
                if (!model.now.all().containsKey(id)) {
                    model.see(model.now.with(id, seen(files.get(file))));
                }
            }
            model.see(model.now.on(on));
        }

        private static Seen seen(Bike bike) {
            return new Seen(bike.name(), (int) bike.get(Inputs.STACK));
        }

        /**
         * What was on its way to the disk is lost; the page is there again. Left out is the moment between a file's new
         * name and the keeping of it.
         */
        private void kill() {
            say("kill");
            if (isMoved) {
                work(disk);
            }
            isDying = true;
            if (random.nextBoolean() && !disk.isEmpty()) {
                disk.remove().run();
            }
            isDying = false;
            disk.clear();
            isFailing = false;
            Snapshot then = durable.now();
            Set<Integer> on = then.all().keySet().stream()
                    .filter(id -> isOnAgain(then, id))
                    .collect(Collectors.toCollection(TreeSet::new));
            Map<Integer, Seen> all = new TreeMap<>(then.all());
            for (Path file : files.keySet()) {
                int id = idOf(files.get(file));
                all.putIfAbsent(id, seen(files.get(file)));
                if (page.contains(String.valueOf(file.getFileName()))) {
                    on.add(id);
                }
                model.filed.add(id);
            }
            model.open.clear();
            model.open.putAll(durable.open());
            model.open
                    .keySet()
                    .removeIf(id -> !durable.filed().contains(id) && !then.on().contains(id));
            model.forget();
            model.see(new Snapshot(all, on));
            start();
            work(disk);
        }

        private boolean isOnAgain(Snapshot then, int id) {
            if (!durable.filed().contains(id)) {
                return true;
            }
            return page.isEmpty() && then.on().contains(id);
        }

        private void compare() {
            Map<Integer, Seen> on = new TreeMap<>();
            assertThat(state.rows()).as("every bike can be read").noneMatch(RackBike::isUnread);
            state.rows().stream()
                    .map(row -> state.bike(row.id()).orElseThrow().bike().orElseThrow())
                    .forEach(bike -> assertThat(on.put(idOf(bike), seen(bike))).isNull());
            Map<Integer, Seen> expected = new TreeMap<>(model.now.all());
            expected.keySet().retainAll(model.now.on());
            assertThat(on).as("on the rack").isEqualTo(expected);
            assertThat(state.canUndo()).as("undo").isEqualTo(!model.undo.isEmpty());
            assertThat(state.canRedo()).as("redo").isEqualTo(!model.redo.isEmpty());
            compareFiles(expected);
        }

        private void compareFiles(Map<Integer, Seen> expected) {
            Map<Integer, Seen> written = new TreeMap<>();
            files.values().forEach(bike -> {
                assertThat(written.put(idOf(bike), seen(bike)))
                        .as("no bike has two files")
                        .isNull();
                assertThat((int) bike.get(Inputs.REACH))
                        .as("what another program wrote")
                        .isEqualTo(model.reach.get(idOf(bike)));
            });
            expected.forEach((id, seen) -> assertThat(written).as("in its file").containsEntry(id, seen));
            model.now.all().forEach((id, seen) -> {
                if (model.filed.contains(id)) {
                    assertThat(written).as("taken off, in its file").containsEntry(id, seen);
                }
            });
            state.bikes().stream()
                    .filter(bike ->
                            bike.isOn() && !stuck.contains(idOf(bike.bike().orElseThrow())))
                    .forEach(bike -> assertThat(bike.place().orElseThrow().file())
                            .as("the file of %s is called as it was last called", bike.name())
                            .satisfies(file ->
                                    assertThat(file.getFileName().toString()).startsWith(bike.name())));
            Map<Integer, String> open = new TreeMap<>();
            state.typing()
                    .forEach(cell -> state.bike(cell.id())
                            .filter(RackBike::isOn)
                            .ifPresent(bike -> open.put(idOf(bike.bike().orElseThrow()), cell.text())));
            Map<Integer, String> openModel = new TreeMap<>(model.open);
            openModel.keySet().retainAll(model.now.on());
            assertThat(open).as("cells not left").isEqualTo(openModel);
        }
    }
}
