package rakeline.shell.rack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rakeline.shell.rack.RackBike.Presence;
import rakeline.shell.rack.RackTransitions.Next;

/** How the rack and the page follow each other: leaving a page takes no bike off, unless the next brings its own. */
final class RackPages {
    private RackPages() {}

    static String counted(int bikes) {
        return bikes == 1 ? "one bike" : bikes + " bikes";
    }

    static Next shown(RackState state, RackEvent.PageShown shown) {
        if (shown.isAnother()) {
            RackState here = moved(unlisted(state), shown.page());
            return RackReads.again(shown.page().rack().isEmpty() ? here : exchanged(here));
        }
        boolean isSame = shown.page().equals(state.page());
        return isSame ? Next.of(state) : RackReads.again(following(moved(state, shown.page())));
    }

    private static RackState unlisted(RackState state) {
        return state.withBikes(state.bikes().stream()
                .map(bike -> bike.presence() == Presence.LISTED ? bike.with(Presence.HERE) : bike)
                .toList());
    }

    /** Elsewhere a path may lead to another file; what was read before is then known by its file. */
    private static RackState moved(RackState state, RackState.Page page) {
        boolean isElsewhere = !page.folders().equals(state.page().folders());
        return state.with(page)
                .withBikes(state.bikes().stream()
                        .map(bike -> isElsewhere && bike.presence() != Presence.LISTED ? foreign(bike) : bike)
                        .toList());
    }

    private static RackBike foreign(RackBike bike) {
        return bike.place()
                .map(own -> bike.with(bike.filed().at(own.file().toString())))
                .orElse(bike);
    }

    /** The page's bikes in the place of those that were here; those that have no file yet stay. */
    private static RackState exchanged(RackState here) {
        return pageFirst(listing(here.withBikes(here.bikes().stream()
                        .map(bike -> bike.isOn() && !bike.path().isEmpty() ? bike.with(Presence.OFF) : bike)
                        .toList())
                .with(RackHistory.EMPTY)));
    }

    private static RackState pageFirst(RackState state) {
        return state.withBikes(Stream.concat(
                        state.bikes().stream().filter(bike -> bike.presence() == Presence.LISTED),
                        state.bikes().stream().filter(bike -> bike.presence() != Presence.LISTED))
                .toList());
    }

    /** The bikes that the page names, in its order, where it has changed; those that it names no more go. */
    private static RackState following(RackState state) {
        RackState listing = listing(state);
        List<RackBike> bikes = listing.bikes().stream()
                .map(bike -> bike.presence() == Presence.LISTED
                                && !listing.page().rack().contains(bike.path())
                        ? bike.with(Presence.OFF)
                        : bike)
                .toList();
        Set<String> gone = bikes.stream()
                .filter(bike ->
                        !bike.isOn() && listing.bike(bike.id()).orElseThrow().isOn())
                .map(RackBike::id)
                .collect(Collectors.toSet());
        return listing.withBikes(bikes).with(listing.history().without(gone::contains));
    }

    /** Every path that the page names has its bike, in the page's order before the others. */
    private static RackState listing(RackState state) {
        RackState now = state;
        for (String path : state.page().rack()) {
            Optional<RackBike> known = known(now, path);
            now = known.isPresent()
                    ? now.with(known.get().id(), bike -> bike.with(Presence.LISTED))
                    : now.and(bare -> bare.with(BikeDraft.begun(path))
                            .with(RackBike.Filed.unread(path, RackBike.Filed.BEING_READ))
                            .with(Presence.LISTED));
        }
        return ordered(now);
    }

    /** Of several that were known by a path the one that is on the rack. */
    private static Optional<RackBike> known(RackState state, String path) {
        List<RackBike> all =
                state.bikes().stream().filter(bike -> bike.path().equals(path)).toList();
        return all.stream()
                .filter(RackBike::isOn)
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    static RackState ordered(RackState state) {
        List<String> paths = state.page().rack();
        List<RackBike> listed = state.bikes().stream()
                .filter(bike -> bike.presence() == Presence.LISTED && paths.contains(bike.path()))
                .toList();
        List<RackBike> wanted = paths.stream()
                .flatMap(path -> listed.stream().filter(bike -> bike.path().equals(path)))
                .toList();
        if (listed.equals(wanted)) {
            return state;
        }
        List<RackBike> all = new ArrayList<>(wanted);
        state.bikes().stream().filter(bike -> !wanted.contains(bike)).forEach(all::add);
        return state.withBikes(all);
    }

    /** Changes the page, where that changes something. */
    static Next edited(Next next, String words, RackEffect.PageEdit edit) {
        RackState.Page page = next.state().page();
        boolean isOnlyOfTheRack = !(edit instanceof RackEffect.Renames);
        List<String> rack = edit.rack(page.rack());
        return isOnlyOfTheRack && rack.equals(page.rack())
                ? next
                : next.with(next.state().with(new RackState.Page(page.folders(), rack)))
                        .and(new RackEffect.EditPage(words, edit));
    }

    /** The page names these bikes, and with them all others on the rack that it can reach. */
    static Next named(RackState state, List<String> ids, String words) {
        List<String> paths = new ArrayList<>();
        RackState now = state.withBikes(state.bikes().stream()
                .map(bike -> bike.isOn() ? listed(state, bike, paths) : bike)
                .toList());
        Next next = edited(Next.of(now), words, new RackEffect.Names(paths));
        return ids.stream()
                        .allMatch(id -> now.bike(id)
                                .filter(bike -> bike.presence() == Presence.LISTED)
                                .isPresent())
                ? next
                : next.and(new RackEffect.Say(words));
    }

    private static RackBike listed(RackState state, RackBike bike, List<String> paths) {
        if (bike.presence() == Presence.LISTED) {
            paths.add(bike.path());
            return bike;
        }
        Optional<String> path = state.pathOf(bike);
        path.ifPresent(paths::add);
        return path.map(known -> bike.with(bike.filed().at(known)).with(Presence.LISTED))
                .orElse(bike);
    }

    /** The person puts bikes on, as one step. */
    static Next added(RackState state, List<String> paths) {
        Set<String> before =
                state.bikes().stream().filter(RackBike::isOn).map(RackBike::id).collect(Collectors.toSet());
        Next named = named(state, List.of(), "the bikes on the rack are the page's");
        Next wanted = edited(
                Next.of(named.state()),
                counted(paths.size()) + " put on the rack",
                new RackEffect.Names(Stream.concat(named.state().page().rack().stream(), paths.stream())
                        .distinct()
                        .toList()));
        RackState listing = listing(wanted.state());
        Set<String> came = listing.bikes().stream()
                .filter(bike -> bike.isOn() && !before.contains(bike.id()))
                .map(RackBike::id)
                .collect(Collectors.toSet());
        return came.isEmpty()
                ? Next.of(state).and(new RackEffect.Say("on the rack already"))
                : RackReads.again(new Next(
                        listing.with(listing.history().and(new RackHistory.Presence(came, came, true))),
                        wanted.effects()));
    }
}
