package rakeline.shell.rack;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.BikeWriter;
import rakeline.desk.RackView;
import rakeline.desk.Stamp;
import rakeline.geometry.Bike;
import rakeline.geometry.Inputs;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.shell.rack.RackBike.Presence;
import rakeline.shell.rack.RackEffect.Read.Answer;
import rakeline.shell.rack.RackEffect.Read.Source;
import rakeline.shell.rack.RackState.OpenCell;
import rakeline.shell.rack.RackTransitions.Next;

/** What comes onto the rack from files, and from what was kept at the last start. */
final class RackReads {
    private RackReads() {}

    static Next again(Next next) {
        return joined(next, again(next.state()));
    }

    /** Reads all that is on the rack, and the files that something kept is to be written to. */
    static Next again(RackState state) {
        List<Source> sources = new ArrayList<>();
        state.bikes().stream()
                .filter(bike -> bike.presence() == Presence.LISTED)
                .forEach(bike -> sources.add(new Source(bike.path(), fileOf(bike))));
        state.bikes().stream()
                .filter(bike -> bike.presence() == Presence.HERE && !bike.path().isEmpty())
                .forEach(bike -> sources.add(new Source(bike.place().isPresent() ? "" : bike.path(), fileOf(bike))));
        state.unmet().stream()
                .filter(one -> !one.written().isEmpty())
                .map(one -> source(one.file()))
                .filter(source -> !sources.contains(source))
                .forEach(sources::add);
        int number = state.reading() + 1;
        return sources.isEmpty()
                ? Next.of(state)
                : Next.of(state.reading(number)).and(new RackEffect.Read(number, sources, state.page()));
    }

    private static Optional<Path> fileOf(RackBike bike) {
        return bike.place().map(RackBike.Place::file);
    }

    private static Source source(String key) {
        return isFile(key) ? new Source("", Optional.of(Path.of(key))) : new Source(key, Optional.empty());
    }

    private static boolean isFile(String key) {
        return Path.of(key).isAbsolute();
    }

    /** Takes what was kept at the last start: choices, bikes begun, and where the page brings none its bikes. */
    static Next recalled(RackState state, RackView view) {
        Next chosen = chosen(state, view);
        RackState now = chosen.state()
                .kept(view.opened(false))
                .withUnmet(view.unfinished().stream()
                        .filter(one -> !one.file().isEmpty())
                        .toList());
        for (RackView.Unfinished one : view.unfinished()) {
            now = one.file().isEmpty() ? begun(now, one) : now;
        }
        boolean isFree = state.bikes().isEmpty() && state.page().rack().isEmpty();
        for (String key : isFree ? view.bikes() : List.<String>of()) {
            now = now.and(bare -> awaited(bare, key));
        }
        return new Next(now, chosen.effects()).then(RackReads::again);
    }

    private static Next joined(Next before, Next after) {
        return new Next(
                after.state(),
                Stream.concat(before.effects().stream(), after.effects().stream())
                        .toList());
    }

    private static Next chosen(RackState state, RackView view) {
        try {
            return Next.of(state.with(RackChoices.recalled(view)));
        } catch (Refusal unknown) {
            return Next.of(state)
                    .and(new RackEffect.Tell(
                            "What was chosen on the rack stands as at first again: " + unknown.getMessage()));
        }
    }

    private static RackState begun(RackState state, RackView.Unfinished one) {
        Optional<Bike> whole = bike(one.written());
        Optional<Bike> former = one.before().stream()
                .reduce((first, last) -> last)
                .flatMap(RackReads::bike)
                .filter(bike -> !whole.equals(Optional.of(bike)));
        RackState with = state.and(bare -> bare.with(new BikeDraft(one.name(), whole, numbers(one), ""))
                .with(new RackBike.Filed("", Optional.empty(), former, "", "")));
        return opened(with, with.lastId(), one);
    }

    private static RackState opened(RackState state, String id, RackView.Unfinished one) {
        List<OpenCell> cells = new ArrayList<>(state.typing());
        one.open().forEach((key, text) -> cells.add(new OpenCell(id, key, text, false)));
        return state.withTyping(cells);
    }

    /** A bike of which only its file is known yet. */
    private static RackBike awaited(RackBike bare, String key) {
        String name = key.substring(Math.max(key.lastIndexOf('/'), key.lastIndexOf('\\')) + 1);
        Optional<RackBike.Place> place =
                isFile(key) ? Optional.of(new RackBike.Place(Path.of(key), new Stamp(""))) : Optional.empty();
        return bare.with(BikeDraft.begun(name))
                .with(new RackBike.Filed(key, place, Optional.empty(), RackBike.Filed.BEING_READ, ""));
    }

    private static Map<Input, Double> numbers(RackView.Unfinished one) {
        Map<Input, Double> numbers = new LinkedHashMap<>();
        Inputs.all().stream()
                .filter(input -> one.numbers().containsKey(input.key()))
                .forEach(input -> numbers.put(input, one.numbers().get(input.key())));
        return numbers;
    }

    private static Optional<Bike> bike(String text) {
        return text.isEmpty()
                ? Optional.empty()
                : Optional.of(BikeFile.read(text.getBytes(java.nio.charset.StandardCharsets.UTF_8), "what was kept"));
    }

    /** Takes what was read; of what was asked for before nothing is taken. */
    static Next read(RackState state, RackEvent.WasRead read) {
        Next next = Next.of(state);
        for (Answer answer : read.number() == state.reading() ? read.answers() : List.<Answer>of()) {
            next = answered(next, answer);
        }
        return next.with(RackPages.ordered(next.state()));
    }

    private static Next answered(Next next, Answer answer) {
        RackState state = next.state();
        String path = answer.source().path();
        Optional<RackBike> listed = state.bikes().stream()
                .filter(bike -> bike.presence() == Presence.LISTED
                        && bike.path().equals(path)
                        && state.page().rack().contains(path))
                .findFirst();
        if (listed.isPresent()) {
            return listed(next, listed.get(), answer);
        }
        return state.bikes().stream()
                .filter(bike -> !bike.path().isEmpty() && bike.filed().key().equals(key(answer)))
                .findFirst()
                .map(bike -> bike.isOn() ? met(next, bike, answer) : next)
                .orElseGet(() -> unmet(next, answer));
    }

    private static String key(Answer answer) {
        return answer.source()
                .known()
                .map(Path::toString)
                .orElse(answer.source().path());
    }

    private static Next listed(Next next, RackBike bike, Answer answer) {
        if (answer.isElsewhere()) {
            Next here = met(
                    next.with(next.state().with(bike.id(), one -> one.with(Presence.HERE))),
                    bike.with(Presence.HERE),
                    answer);
            return here.and(new RackEffect.Tell(
                    answer.source().path() + " is not found from where the page stands now; the rack keeps the bike."));
        }
        boolean isAnother = bike.place().isPresent()
                && answer.filed().place().isPresent()
                && !answer.filed().key().equals(bike.filed().key());
        Optional<RackBike> known = next.state().bikes().stream()
                .filter(one -> !one.id().equals(bike.id())
                        && one.place().isPresent()
                        && one.filed().key().equals(answer.filed().key()))
                .findFirst();
        if (isAnother) {
            return exchanged(next, bike, answer);
        }
        return bike.isBeingRead() && known.isPresent()
                ? foundAgain(next, bike, known.get(), answer)
                : met(next, bike, answer);
    }

    /** The path leads to another file by now. */
    private static Next exchanged(Next next, RackBike bike, Answer answer) {
        RackState off = next.state()
                .with(
                        bike.id(),
                        one -> one.with(Presence.OFF)
                                .with(one.filed().at(one.filed().key())))
                .and(bare -> bare.with(BikeDraft.begun(answer.source().path()))
                        .with(RackBike.Filed.unread(answer.source().path(), RackBike.Filed.BEING_READ))
                        .with(Presence.LISTED));
        RackState without = off.with(off.history().without(bike.id()::equals));
        return met(next.with(without), without.bike(without.lastId()).orElseThrow(), answer);
    }

    /** The path leads to a file that is at hand under another. */
    private static Next foundAgain(Next next, RackBike awaited, RackBike known, Answer answer) {
        RackState state = next.state();
        RackState without = state.withBikes(state.bikes().stream()
                        .filter(bike -> !bike.id().equals(awaited.id()))
                        .map(bike -> bike.id().equals(known.id())
                                ? bike.with(bike.filed().at(answer.source().path()))
                                        .with(Presence.LISTED)
                                : bike)
                        .toList())
                .with(state.history().without(awaited.id()::equals));
        return met(next.with(without), without.bike(known.id()).orElseThrow(), answer);
    }

    /** A file that something kept is to be written to, of a bike that is not on the rack. */
    private static Next unmet(Next next, Answer answer) {
        if (answer.filed().stored().isEmpty()
                || kept(next.state(), answer.filed()).isEmpty()) {
            return next;
        }
        RackState with = next.state()
                .and(bare -> bare.with(answer.filed().at(answer.filed().key()))
                        .with(answer.filed().stored().map(BikeDraft::of).orElseThrow())
                        .with(Presence.OFF));
        return withKept(next.with(with), with.bike(with.lastId()).orElseThrow());
    }

    private static Optional<RackView.Unfinished> kept(RackState state, RackBike.Filed filed) {
        return state.unmet().stream()
                .filter(one -> one.file().equals(filed.key()))
                .findFirst()
                .or(() -> state.unmet().stream()
                        .filter(one -> isMoved(one, filed))
                        .findFirst());
    }

    /** Whether something was kept of a file that got another name right before the program was ended. */
    private static boolean isMoved(RackView.Unfinished one, RackBike.Filed filed) {
        return filed.place().isPresent()
                && isFile(one.file())
                && Path.of(one.file())
                        .resolveSibling(filed.place().get().name())
                        .equals(filed.place().get().file())
                && filed.stored()
                        .map(BikeWriter::text)
                        .filter(one.before()::contains)
                        .isPresent();
    }

    /** A bike as it was read, unless it is ahead of its file. */
    private static Next met(Next next, RackBike bike, Answer answer) {
        RackBike.Filed filed = answer.filed().at(bike.path());
        boolean isAhead = bike.isAhead() || next.state().isWriting(bike);
        if (isAhead) {
            return next;
        }
        if (filed.stored().isEmpty()) {
            return next.with(unreadable(next.state(), bike, filed));
        }
        BikeDraft draft = BikeDraft.of(filed.stored().orElseThrow()).withWaiting(bike.waiting());
        RackState now = next.state().with(bike.id(), one -> one.with(filed).with(draft));
        return withKept(next.with(now), now.bike(bike.id()).orElseThrow());
    }

    private static RackState unreadable(RackState state, RackBike bike, RackBike.Filed filed) {
        RackBike.Filed known = new RackBike.Filed(bike.path(), bike.place(), Optional.empty(), filed.trouble(), "");
        return state.with(
                        bike.id(),
                        one -> one.with(known).with(BikeDraft.begun(bike.name()).withWaiting(bike.waiting())))
                .with(state.history().without(bike.id()::equals));
    }

    /** With what was typed on it at the last start and did not reach its file. */
    private static Next withKept(Next next, RackBike bike) {
        Optional<RackView.Unfinished> kept = kept(next.state(), bike.filed());
        if (kept.isEmpty()) {
            return next;
        }
        RackState state = opened(
                next.state()
                        .withUnmet(next.state().unmet().stream()
                                .filter(one -> !one.equals(kept.get()))
                                .toList()),
                bike.id(),
                kept.get());
        BikeDraft read = bike.draft().withWaiting(numbers(kept.get()));
        try {
            BikeDraft both = typed(read, kept.get());
            return next.with(state.with(bike.id(), one -> one.with(both)));
        } catch (Refusal refusal) {
            BikeDraft typed = BikeDraft.of(bike(kept.get().written()).orElseThrow());
            return next.with(state.with(bike.id(), one -> one.with(read))
                            .with(state.history().and(new RackHistory.Change(bike.id(), typed, read))))
                    .and(new RackEffect.Tell("Another program has changed " + bike.name()
                            + "; what you typed there last does not fit its numbers: " + refusal.getMessage()
                            + " An undo brings it back."));
        }
    }

    private static BikeDraft typed(BikeDraft read, RackView.Unfinished kept) {
        Optional<Bike> written = bike(kept.written());
        if (written.isEmpty()) {
            return read;
        }
        BikeDraft to = BikeDraft.of(written.get()).withWaiting(read.waiting());
        BikeDraft now = read;
        for (String before : kept.before()) {
            now = now.changed(BikeDraft.of(bike(before).orElseThrow()).withWaiting(read.waiting()), to);
        }
        boolean isRenamed = kept.before().stream()
                .anyMatch(before -> !bike(before).orElseThrow().name().equals(to.name()));
        return now.in(isRenamed ? BikeWriter.fileName(to.name()) : "");
    }
}
