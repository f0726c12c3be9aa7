package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import picocli.CommandLine.Option;
import rakeline.geometry.Bike;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.Setting;
import rakeline.handling.Ride;
import rakeline.quantity.Input;
import rakeline.quantity.Refusal;
import rakeline.rider.Rider;
import rakeline.rider.RiderKeys;
import rakeline.study.fit.Wanted;

/** What a command does with each bike that it reads: who sits on it, and what is set on bike and rider. */
final class Riding {
    @Option(
            names = "--set",
            paramLabel = "KEY=VALUE",
            description = "Redraws the bike with a number changed; rider.KEY changes the rider.")
    private List<String> changes = List.of();

    @Option(names = "--rider", paramLabel = "FILE", description = "A rider file (*.rider.json): who is on the bike.")
    private String rider;

    /**
     * A bike with its rider. What is set wins over file and rider alike, and the rider's shoe and contact points over
     * the bike's; one notice says where the bike had its own.
     *
     * @param notice takes the sentence
     * @throws Refusal for a file or an option that is not accepted
     */
    Ride ride(Consumer<String> notice, String bike, Hands hands) {
        Ride ride = ride(bike, hands);
        notices(bike).forEach(notice);
        return ride;
    }

    /** A bike with its rider, and nothing is said. */
    Ride ride(String bike, Hands hands) {
        Ride ride = Ride.of(Paths.bike(bike), rider(), hands);
        return ride.on(ride.bike().redraw(changes()));
    }

    /** The bicycle as its own file and the options have it, without the rider. */
    Bike redrawn(String bike) {
        return Paths.bike(bike).redraw(changes());
    }

    /** The rider's file, as it was named. */
    Optional<String> riderFile() {
        return Optional.ofNullable(rider);
    }

    /** Who rides. */
    Optional<Rider> rider() {
        Map<String, Double> ofRider = set(true);
        if (rider == null && !ofRider.isEmpty()) {
            throw new Refusal("--set changes " + ofRider.keySet().iterator().next()
                    + ", but nobody is on the bike; accepted with --rider FILE.");
        }
        return riderFile().map(Paths::rider).map(who -> RiderKeys.change(who, ofRider));
    }

    /** One sentence where both files give a shoe or contact points. */
    List<String> notices(String bike) {
        return rider().map(who -> who.groupsWonFrom(redrawn(bike))).filter(groups -> !groups.isEmpty()).stream()
                .map(groups -> rider + " gives " + String.join(" and ", groups) + ", which stands in place of that of "
                        + bike + ".")
                .toList();
    }

    /** What of a bike was set. */
    Set<Input> set() {
        return changes().keySet();
    }

    /** The rider's own contact points; empty where the file gives none, or no rider is named. */
    Optional<Wanted> contact() {
        return rider().filter(who -> who.own().containsKey(Inputs.CONTACT_SIT_X))
                .map(Wanted::of);
    }

    private Map<Input, Double> changes() {
        return Setting.changes(set(false));
    }

    private Map<String, Double> set(boolean ofRider) {
        Map<String, Double> set = new LinkedHashMap<>(KeyValue.numbers("--set", changes));
        set.keySet().removeIf(key -> RiderKeys.isMeant(key) != ofRider);
        return set;
    }
}
