package rakeline.shell.rack;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.catalogue.BikeWriter;
import rakeline.desk.RackView;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;
import rakeline.shell.rack.RackBike.Presence;
import rakeline.shell.rack.RackState.OpenCell;

/**
 * What the rack becomes when something happens to it. Nothing here reads, writes or shows: what is to be done is handed
 * back as effects, and what comes of them happens to the rack in its turn.
 *
 * <ul>
 *   <li>What is typed counts once its cell is left; then it is kept for the next start before its file is written, and
 *       until it stands there.
 *   <li>One file is written at a time. A bike that could not be written is tried again with the next deed, and holds up
 *       no other.
 *   <li>A bike that is taken off is written all the same, and comes back where that fails.
 * </ul>
 */
final class RackTransitions {
    private RackTransitions() {}

    /** The rack after something has happened, and what is to be done. */
    record Next(RackState state, List<RackEffect> effects) {
        Next {
            effects = List.copyOf(effects);
        }

        static Next of(RackState state) {
            return new Next(state, List.of());
        }

        Next and(RackEffect effect) {
            return new Next(
                    state, Stream.concat(effects.stream(), Stream.of(effect)).toList());
        }

        Next before(RackEffect effect) {
            return new Next(
                    state, Stream.concat(Stream.of(effect), effects.stream()).toList());
        }

        Next with(RackState now) {
            return new Next(now, effects);
        }

        Next then(UnaryOperator<Next> more) {
            return more.apply(this);
        }
    }

    static Next after(RackState state, RackEvent event) {
        Next next = cleared(writing(happened(state, event)));
        boolean isOnTheWay = event instanceof RackEvent.Typed || event instanceof RackEvent.Dragged;
        return isOnTheWay ? next : kept(next);
    }

    private static Next happened(RackState state, RackEvent event) {
        if (event instanceof RackEvent.Typed typed) {
            return Next.of(typed(state, typed));
        }
        if (event instanceof RackEvent.Dragged dragged) {
            return dragged(state, dragged);
        }
        if (event instanceof RackEvent.Cancelled cancelled) {
            return Next.of(state.closed(cancelled.id(), cancelled.key()));
        }
        if (event instanceof RackEvent.Chosen chosen) {
            return Next.of(state.with(chosen.change().apply(state.choices())));
        }
        return event instanceof RackEvent.Rested ? Next.of(state) : ofPageAndDisk(state, event);
    }

    private static Next ofPageAndDisk(RackState state, RackEvent event) {
        if (event instanceof RackEvent.PageShown shown) {
            return RackPages.shown(state, shown);
        }
        if (event instanceof RackEvent.Recalled recalled) {
            return RackReads.recalled(state, recalled.view());
        }
        if (event instanceof RackEvent.WasRead read) {
            return RackReads.read(state, read);
        }
        if (event instanceof RackEvent.WasWritten written) {
            return written(state.writing(Optional.empty()), written);
        }
        if (event instanceof RackEvent.WasCreated created) {
            return created(state.writing(Optional.empty()), created);
        }
        if (event instanceof RackEvent.WasMoved moved) {
            return moved(state.writing(Optional.empty()), moved);
        }
        if (event instanceof RackEvent.WasOvertaken overtaken) {
            return overtaken(state.writing(Optional.empty()), overtaken);
        }
        return event instanceof RackEvent.Failed failed
                ? failed(state.writing(Optional.empty()), failed)
                : deed(trying(state), event);
    }

    /** A deed of the person's, with which what could not be written is tried again. */
    private static Next deed(RackState state, RackEvent event) {
        if (event instanceof RackEvent.Left left) {
            return Next.of(left(state, left));
        }
        if (event instanceof RackEvent.Released) {
            return released(state);
        }
        if (event instanceof RackEvent.Pasted pasted) {
            return pasted(state, pasted);
        }
        if (event instanceof RackEvent.Renamed renamed) {
            return Next.of(renamed(state, renamed));
        }
        if (event instanceof RackEvent.Undone) {
            return state.history()
                    .undo()
                    .map(move -> travelled(state, move, "undone"))
                    .orElse(Next.of(state));
        }
        if (event instanceof RackEvent.Redone) {
            return state.history()
                    .redo()
                    .map(move -> travelled(state, move, "redone"))
                    .orElse(Next.of(state));
        }
        return presence(state, event);
    }

    private static Next presence(RackState state, RackEvent event) {
        if (event instanceof RackEvent.Put put) {
            return Next.of(put(state, put.bikes()));
        }
        if (event instanceof RackEvent.Added added) {
            return RackPages.added(state, added.paths());
        }
        if (event instanceof RackEvent.TakenOff off) {
            return takenOff(state, off.ids());
        }
        return RackReads.again(state);
    }

    private static RackState trying(RackState state) {
        return state.withBikes(state.bikes().stream()
                .map(bike -> bike.with(bike.filed().failing("")))
                .toList());
    }

    // --- cells

    private static RackState typed(RackState state, RackEvent.Typed typed) {
        return state.bike(typed.id())
                .map(bike -> opened(state, bike, new OpenCell(typed.id(), typed.key(), typed.text(), false)))
                .orElse(state);
    }

    private static RackState opened(RackState state, RackBike bike, OpenCell cell) {
        RackState closed = state.closed(cell.id(), cell.key());
        boolean isAsBefore = cell.text().strip().equals(state.shown(bike, RackColumn.of(cell.key())));
        return isAsBefore
                ? closed
                : closed.withTyping(
                        Stream.concat(closed.typing().stream(), Stream.of(cell)).toList());
    }

    private static Next dragged(RackState state, RackEvent.Dragged dragged) {
        RackColumn column = RackColumn.of(dragged.key());
        OpenCell cell = new OpenCell(dragged.id(), dragged.key(), text(column, dragged.value()), true);
        Optional<RackBike> bike = state.bike(dragged.id());
        try {
            bike.ifPresent(one -> one.draft().typed(column, cell.text(), state.lengths()));
        } catch (Refusal refusal) {
            return Next.of(state).and(new RackEffect.Tell(refusal.getMessage()));
        }
        boolean isBack =
                bike.filter(one -> one.value(column) == dragged.value()).isPresent();
        RackState closed = state.closed(cell.id(), cell.key());
        Next next = Next.of(
                isBack || bike.isEmpty()
                        ? closed
                        : closed.withTyping(Stream.concat(closed.typing().stream(), Stream.of(cell))
                                .toList()));
        return bike.map(one -> next.and(new RackEffect.Say(column.quantity().label() + " of " + one.name() + ": "
                        + column.quantity().said(dragged.value()))))
                .orElse(next);
    }

    private static String text(RackColumn column, double value) {
        String number = new BigDecimal(Decimals.shortest(value)).toPlainString();
        return column.isLength() ? number + " mm" : number;
    }

    /** What cannot stand stays open. */
    private static RackState left(RackState state, RackEvent.Left left) {
        Optional<RackBike> bike = state.bike(left.id());
        Optional<OpenCell> cell = state.open(left.id(), left.key());
        if (bike.isEmpty() || cell.isEmpty()) {
            return state;
        }
        try {
            return changed(state.closed(left.id(), left.key()), bike.get(), entered(state, bike.get(), cell.get()));
        } catch (Refusal cannotStand) {
            return state;
        }
    }

    private static BikeDraft entered(RackState state, RackBike bike, OpenCell cell) {
        return bike.draft().typed(RackColumn.of(cell.key()), cell.text(), state.lengths());
    }

    /** A bike's numbers changed, as one step. */
    private static RackState changed(RackState state, RackBike bike, BikeDraft after) {
        return after.equals(bike.draft())
                ? state
                : state.with(bike.id(), before -> before.with(after))
                        .with(state.history().and(new RackHistory.Change(bike.id(), bike.draft(), after)));
    }

    private static Next released(RackState state) {
        Next next = Next.of(state);
        for (OpenCell cell : state.typing().stream().filter(OpenCell::isDragged).toList()) {
            next = released(next, cell);
        }
        return next;
    }

    private static Next released(Next next, OpenCell cell) {
        RackState closed = next.state().closed(cell.id(), cell.key());
        Optional<RackBike> bike = closed.bike(cell.id());
        try {
            return bike.map(one -> released(next.with(closed), one, cell)).orElse(next.with(closed));
        } catch (Refusal refusal) {
            return next.with(closed).and(new RackEffect.Tell(refusal.getMessage()));
        }
    }

    private static Next released(Next next, RackBike bike, OpenCell cell) {
        BikeDraft after = entered(next.state(), bike, cell);
        return bike.draft().isMeasured() && !bike.isTrial()
                ? tried(next, bike, after, cell)
                : next.with(changed(next.state(), bike, after));
    }

    /** What is measured stays as it was measured: a copy takes its place side by side. */
    private static Next tried(Next next, RackBike bike, BikeDraft after, OpenCell cell) {
        RackColumn column = RackColumn.of(cell.key());
        String name = next.state()
                .freshName(bike.name() + ", " + Labels.within(column.quantity().label()) + " "
                        + column.quantity().said(after.value(column)));
        BikeDraft copy = after.named(name).in("");
        RackState with = next.state().and(bare -> bare.with(copy).trial());
        String id = with.lastId();
        RackState beside = with.with(with.choices().with(with.choices().beside().replaced(bike.id(), id)))
                .with(with.history().and(new RackHistory.Presence(Set.of(id), Set.of(id), true)));
        return next.with(beside)
                .and(new RackEffect.Tell(
                        bike.name() + " was measured and stays as it is; the change is on a copy, " + name + "."));
    }

    /** Bikes whose cells can all stand are changed; of the others the first cell that cannot is named. */
    private static Next pasted(RackState state, RackEvent.Pasted pasted) {
        List<String> lines = pasted.block().stripTrailing().lines().toList();
        List<RackBike> rows = state.bikes().stream().filter(RackBike::isOn).toList();
        if (pasted.row() + lines.size() > rows.size()) {
            return Next.of(state)
                    .and(new RackEffect.Tell("What is pasted has " + lines.size()
                            + " lines; from this row on the rack has " + (rows.size() - pasted.row()) + "."));
        }
        Next next = Next.of(state);
        for (int i = 0; i < lines.size(); i++) {
            next = pasted(
                    next,
                    rows.get(pasted.row() + i),
                    pasted.column(),
                    List.of(lines.get(i).split("\t", -1)));
        }
        return next;
    }

    private static Next pasted(Next next, RackBike bike, int from, List<String> fields) {
        RackState state = next.state();
        try {
            return next.with(changed(state, bike, filled(state, bike, from, fields)));
        } catch (Refusal refusal) {
            return next.and(new RackEffect.Tell(bike.name() + " stays as it was: " + refusal.getMessage()));
        }
    }

    private static BikeDraft filled(RackState state, RackBike bike, int from, List<String> fields) {
        if (bike.isUnread()) {
            throw new Refusal(bike.trouble());
        }
        if (from + fields.size() > state.columns().size()) {
            throw new Refusal("What is pasted has " + fields.size() + " columns; from this one on the rack has "
                    + (state.columns().size() - from) + ".");
        }
        BikeDraft filled = bike.draft();
        for (int i = 0; i < fields.size(); i++) {
            filled = filled.typed(state.columns().get(from + i), fields.get(i), state.lengths());
        }
        return filled;
    }

    /** Its file is called as the bike is. */
    private static RackState renamed(RackState state, RackEvent.Renamed renamed) {
        return state.bike(renamed.id())
                .filter(bike -> !bike.name().equals(renamed.name()))
                .map(bike -> changed(
                        state,
                        bike.with(housed(bike)),
                        housed(bike).named(renamed.name()).in(BikeWriter.fileName(renamed.name()))))
                .orElse(state);
    }

    private static BikeDraft housed(RackBike bike) {
        return bike.draft()
                .in(
                        bike.isMisnamed()
                                ? bike.draft().fileName()
                                : bike.place().map(RackBike.Place::name).orElse(fileName(bike)));
    }

    // --- bikes

    private static RackState put(RackState state, List<RackEvent.NewBike> bikes) {
        RackState now = state;
        List<String> ids = new ArrayList<>();
        for (RackEvent.NewBike bike : bikes) {
            now = now.and(bare -> bare.with(new BikeDraft(bike.name(), bike.bike(), bike.waiting(), "")));
            ids.add(now.lastId());
        }
        return ids.isEmpty()
                ? state
                : now.with(now.history().and(new RackHistory.Presence(Set.copyOf(ids), Set.copyOf(ids), true)));
    }

    private static Next takenOff(RackState state, Set<String> ids) {
        List<RackBike> off = state.bikes().stream()
                .filter(bike -> bike.isOn() && ids.contains(bike.id()))
                .toList();
        if (off.isEmpty()) {
            return Next.of(state);
        }
        Set<String> listed = off.stream()
                .filter(bike -> bike.presence() == Presence.LISTED)
                .map(RackBike::id)
                .collect(Collectors.toSet());
        RackHistory.Presence step =
                new RackHistory.Presence(off.stream().map(RackBike::id).collect(Collectors.toSet()), listed, false);
        return off(Next.of(state.with(state.history().and(step))), step);
    }

    private static Next off(Next next, RackHistory.Presence step) {
        RackState state = next.state();
        List<RackBike> off = state.bikes().stream()
                .filter(bike -> bike.isOn() && step.isOf(bike.id()))
                .toList();
        List<String> paths = off.stream()
                .filter(bike -> bike.presence() == Presence.LISTED)
                .map(RackBike::path)
                .toList();
        RackState without = state.withBikes(state.bikes().stream()
                .map(bike -> off.contains(bike) ? bike.with(Presence.OFF) : bike)
                .toList());
        return RackPages.edited(
                next.with(without), RackPages.counted(off.size()) + " taken off the rack", new RackEffect.Drops(paths));
    }

    private static Next on(Next next, RackHistory.Presence step) {
        RackState state = next.state();
        List<String> paths = new ArrayList<>();
        RackState with = state.withBikes(state.bikes().stream()
                .map(bike -> step.isOf(bike.id()) && !bike.isOn() ? on(state, bike, step, paths) : bike)
                .toList());
        return RackPages.edited(
                next.with(with),
                RackPages.counted(step.ids().size()) + " put on the rack",
                new RackEffect.Names(paths));
    }

    private static RackBike on(RackState state, RackBike bike, RackHistory.Presence step, List<String> paths) {
        Optional<String> path = bike.isUnread() ? Optional.of(bike.path()) : state.pathOf(bike);
        boolean isListed = step.listed().contains(bike.id()) && path.isPresent();
        path.filter(any -> isListed).ifPresent(paths::add);
        return isListed ? bike.with(bike.filed().at(path.get())).with(Presence.LISTED) : bike.with(Presence.HERE);
    }

    private static Next travelled(RackState state, RackHistory.Move move, String words) {
        Next next = Next.of(state.with(move.history()));
        if (move.step() instanceof RackHistory.Change change) {
            return state.bike(change.id())
                    .map(bike -> travelled(next, bike, change, words))
                    .orElse(next);
        }
        RackHistory.Presence step = (RackHistory.Presence) move.step();
        return (step.isOn() ? on(next, step) : notPut(off(next, step), step)).and(new RackEffect.Say(words));
    }

    /** New bikes that are not put on after all get no file. */
    private static Next notPut(Next next, RackHistory.Presence step) {
        return next.with(next.state()
                .withBikes(next.state().bikes().stream()
                        .map(bike -> step.isOf(bike.id()) && bike.path().isEmpty() ? bike.with(Presence.UNDONE) : bike)
                        .toList()));
    }

    private static Next travelled(Next next, RackBike bike, RackHistory.Change change, String words) {
        try {
            BikeDraft draft = bike.draft().changed(change.from(), change.to());
            return next.with(next.state().with(bike.id(), before -> before.with(draft)))
                    .and(new RackEffect.Say(words + " in " + bike.name()));
        } catch (Refusal refusal) {
            return next.and(new RackEffect.Tell(bike.name()
                    + ", with what another program changed in it, cannot be as it" + " was: " + refusal.getMessage()));
        }
    }

    // --- files

    /** Begins to write the next bike that stands otherwise than its file. */
    private static Next writing(Next next) {
        RackState state = next.state();
        return state.writing().isPresent()
                ? next
                : state.bikes().stream()
                        .filter(RackTransitions::isToBeWritten)
                        .findFirst()
                        .map(bike -> write(state, bike))
                        .map(effect ->
                                next.with(state.writing(Optional.of(effect))).and(effect))
                        .orElse(next);
    }

    private static boolean isToBeWritten(RackBike bike) {
        return bike.isUnsaved()
                && bike.presence() != Presence.UNDONE
                && bike.filed().failure().isEmpty();
    }

    private static RackEffect.OnFile write(RackState state, RackBike bike) {
        BikeDraft draft = bike.draft();
        if (bike.isMisnamed()) {
            return new RackEffect.Move(bike.id(), bike.filed(), draft.fileName());
        }
        if (bike.place().isPresent()) {
            return new RackEffect.Write(bike.id(), bike.filed(), draft.bike().orElseThrow());
        }
        return new RackEffect.Create(
                bike.id(),
                fileName(bike),
                draft.bike().orElseThrow(),
                bike.path().isEmpty() ? bike.filed().stored() : Optional.empty(),
                state.page());
    }

    private static String fileName(RackBike bike) {
        if (!bike.draft().fileName().isEmpty()) {
            return bike.draft().fileName();
        }
        String path = bike.path();
        return path.isEmpty() ? BikeWriter.fileName(bike.name()) : path.substring(path.lastIndexOf('/') + 1);
    }

    private static Next written(RackState state, RackEvent.WasWritten written) {
        return state.bike(written.id())
                .map(bike -> Next.of(state.with(
                                bike.id(), before -> before.with(written.filed().at(before.path()))))
                        .and(new RackEffect.Say(bike.name() + " saved in "
                                + written.filed().place().orElseThrow().name())))
                .orElse(Next.of(state));
    }

    private static Next created(RackState state, RackEvent.WasCreated created) {
        return state.bike(created.id())
                .map(bike -> created(state, bike, created))
                .orElse(Next.of(state));
    }

    private static Next created(RackState state, RackBike bike, RackEvent.WasCreated created) {
        RackBike.Filed filed = created.filed();
        boolean isKnown = state.bikes().stream()
                .anyMatch(one -> one.isOn() && one.filed().key().equals(filed.key()));
        if (isKnown) {
            return Next.of(state.withBikes(state.bikes().stream()
                            .filter(one -> !one.id().equals(bike.id()))
                            .toList())
                    .with(state.history().without(bike.id()::equals)));
        }
        RackState now = rehoused(state, bike, filed, created.asked());
        if (bike.path().isEmpty()) {
            return bike.isOn()
                    ? RackPages.named(now, List.of(bike.id()), bike.name() + " put on the rack")
                    : Next.of(now.with(bike.id(), one -> one.with(Presence.OFF)));
        }
        String copy = "your copy now: " + filed.place().orElseThrow().file();
        return bike.presence() == Presence.LISTED
                ? RackPages.edited(
                                Next.of(now),
                                bike.name() + " copied",
                                new RackEffect.Renames(bike.path(), filed.path()))
                        .and(new RackEffect.Tell(
                                bike.name() + " comes with the program and is read only; this page reads " + copy))
                : Next.of(now)
                        .and(new RackEffect.Tell(
                                bike.name() + " comes with the program and is read only; the rack has " + copy));
    }

    /** A bike in another file than before, which is not to be called otherwise unless that was asked for since. */
    private static RackState rehoused(RackState state, RackBike bike, RackBike.Filed filed, String asked) {
        RackChoices choices = state.choices();
        RackBike housed = bike.with(filed);
        RackChoices.Contact contact = choices.contact().isOf(bike) ? RackChoices.Contact.of(housed) : choices.contact();
        return state.with(choices.with(contact))
                .with(
                        bike.id(),
                        before -> before.with(filed)
                                .with(
                                        before.draft().fileName().equals(asked)
                                                ? before.draft().in("")
                                                : before.draft()));
    }

    private static Next moved(RackState state, RackEvent.WasMoved moved) {
        return state.bike(moved.id())
                .map(bike -> moved(
                        rehoused(state, bike, moved(bike, moved.place()), moved.asked()),
                        bike,
                        moved(bike, moved.place())))
                .orElse(Next.of(state));
    }

    /** Its path is as before, with another name at its end. */
    private static RackBike.Filed moved(RackBike bike, RackBike.Place place) {
        String path = bike.path();
        int end = Math.max(path.lastIndexOf('/'), path.lastIndexOf(java.io.File.separatorChar)) + 1;
        return new RackBike.Filed(
                path.substring(0, end) + place.name(),
                Optional.of(place),
                bike.filed().stored(),
                "",
                "");
    }

    private static Next moved(RackState state, RackBike before, RackBike.Filed filed) {
        String words = before.name() + " is in " + filed.place().orElseThrow().name();
        return before.presence() == Presence.LISTED
                ? RackPages.edited(Next.of(state), words, new RackEffect.Renames(before.path(), filed.path()))
                : Next.of(state).and(new RackEffect.Say(words));
    }

    /** What another program wrote stays, with what was typed here put on top of it. */
    private static Next overtaken(RackState state, RackEvent.WasOvertaken overtaken) {
        return state.bike(overtaken.id())
                .map(bike -> overtaken.theirs().stored().isEmpty()
                        ? failed(state, bike, overtaken.theirs().trouble())
                        : overtaken(state, bike, overtaken.theirs()))
                .orElse(Next.of(state));
    }

    private static Next overtaken(RackState state, RackBike bike, RackBike.Filed theirs) {
        BikeDraft read = BikeDraft.of(theirs.stored().orElseThrow())
                .withWaiting(bike.waiting())
                .in(bike.draft().fileName());
        if (theirs.stored().equals(bike.bike())) {
            return Next.of(state.with(bike.id(), before -> before.with(theirs.at(before.path()))));
        }
        String words = "Another program has changed " + bike.name() + "; its numbers were read again, and ";
        RackState now = state.with(bike.id(), before -> before.with(theirs.at(before.path())));
        try {
            BikeDraft both = read.changed(
                    bike.filed()
                            .stored()
                            .map(BikeDraft::of)
                            .orElse(read)
                            .withWaiting(bike.waiting())
                            .in(bike.draft().fileName()),
                    bike.draft());
            return Next.of(now.with(bike.id(), before -> before.with(both)))
                    .and(new RackEffect.Tell(words + "what you typed was put on top of them."));
        } catch (Refusal refusal) {
            return Next.of(now.with(bike.id(), before -> before.with(read))
                            .with(now.history().and(new RackHistory.Change(bike.id(), bike.draft(), read))))
                    .and(new RackEffect.Tell(
                            words + "your last change was not: " + refusal.getMessage() + " An undo brings it back."));
        }
    }

    private static Next failed(RackState state, RackEvent.Failed failed) {
        return state.bike(failed.effect().id())
                .map(bike -> failed.effect() instanceof RackEffect.Move
                        ? notMoved(state, bike, failed.why())
                        : failed(state, bike, failed.why()))
                .orElse(Next.of(state));
    }

    private static Next notMoved(RackState state, RackBike bike, String why) {
        return Next.of(state.with(
                        bike.id(), before -> before.with(before.draft().in(""))))
                .and(new RackEffect.Tell(bike.name() + " stays in "
                        + bike.place().map(RackBike.Place::name).orElse("its file") + ": " + why));
    }

    private static Next failed(RackState state, RackBike bike, String why) {
        boolean isOff = bike.presence() == Presence.OFF;
        RackState marked =
                state.with(bike.id(), before -> before.with(before.filed().failing(why)));
        RackState now = isOff
                ? marked.with(bike.id(), before -> before.with(Presence.HERE))
                        .with(marked.history().putBack(bike.id()))
                : marked;
        String stays = isOff ? " is back on the rack" : " stays on the rack";
        return Next.of(now)
                .and(new RackEffect.Tell(
                        why + " What you typed in " + bike.name() + stays + " and is written with the next change."));
    }

    // --- what is kept, and what is let go

    /** What is kept comes before what is written, so that it is never in neither place. */
    private static Next kept(Next next) {
        RackView view = next.state().view();
        return next.state().kept().filter(before -> !before.equals(view)).isPresent()
                ? next.with(next.state().kept(view)).before(new RackEffect.Keep(view))
                : next;
    }

    private static Next cleared(Next next) {
        RackState state = next.state();
        Predicate<RackBike> isNeeded =
                bike -> bike.isOn() || isToBeWritten(bike) || state.history().names(bike.id()) || state.isWriting(bike);
        List<RackBike> needed = state.bikes().stream().filter(isNeeded).toList();
        Set<String> ids = needed.stream().map(RackBike::id).collect(Collectors.toSet());
        List<RackView.Unfinished> unmet = Stream.concat(
                        state.unmet().stream(),
                        state.bikes().stream()
                                .filter(bike -> !needed.contains(bike)
                                        && !bike.filed().key().isEmpty()
                                        && state.isHalfTyped(bike))
                                .map(state::unfinished))
                .toList();
        return needed.size() == state.bikes().size()
                ? next
                : next.with(state.withUnmet(unmet)
                        .withBikes(needed)
                        .withTyping(state.typing().stream()
                                .filter(cell -> ids.contains(cell.id()))
                                .toList()));
    }
}
