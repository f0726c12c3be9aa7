package rakeline.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.figure.AdjustmentTable;
import rakeline.figure.ComparisonTable;
import rakeline.figure.LimitTable;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.study.Varied;
import rakeline.study.Vocabulary;
import rakeline.study.fit.Adjustment;
import rakeline.study.fit.Changed;
import rakeline.study.fit.Comparison;
import rakeline.study.fit.Contender;
import rakeline.study.fit.Left;
import rakeline.study.fit.Match;
import rakeline.study.fit.Wanted;

/** Bikes side by side, as built or at the same contact points. */
@Command(
        name = "compare",
        description =
                "Compares bikes: every measure, the differences against the first, and what is left to each limit.",
        footer = {
            "",
            "As built each bike keeps its own contact points. --same-contact puts those of",
            "the first bike on all, --to those of another bike or of a rider; --rider's own",
            "are on all. They are held from the pedal: the shoe and crank on which they were",
            "found, or the rider's, go on every bike, and on another crank (--own-cranks,",
            "--set, --with) the saddle keeps its distance from the pedal at its furthest and",
            "its setback behind BB (--setback), the hands their place from BB",
            "(--hands-from). Post and rails meet the sit point; the hoods stay where they",
            "are built, and handMissMm says how far off, unless --parts is given: then every",
            "bike but the one whose points they are gets the best match of these parts.",
            "--with adds the first bike with numbers changed: wheels, fork.axleToCrownMm and",
            "fork.sagMm are refitted, the rest is redrawn; with another reach of the bar the",
            "hoods go along.",
            "",
            "± is the standard uncertainty of a difference, carried from those of the",
            "inputs (the bike's provenance, else the usual ones that \"keys\" tells) to first",
            "order; what two bikes share, as contact points, the same wheels, or all numbers",
            "of a bike and its --with, is counted once. A difference of more than twice that",
            "tells the bikes apart, and is said in words.",
            "",
            "--json prints {\"bikes\": [name…], \"contact\": null or whose, \"changed\": [{key:",
            "\"refit\" or \"redraw\"}…], \"inputs\": {key: ROW}, \"measures\": {key: ROW}, \"limits\": [{\"key\", \"limit\", \"side\", \"label\",",
            "\"source\", \"values\", \"left\"}], \"notices\": [sentence…], \"held\": how the saddle is",
            "held or null, \"adjustments\": as \"limits\" prints them}, with ROW {\"values\",",
            "\"differences\", \"percent\", \"uncertainties\": [number or null…], \"larger\":",
            "[whether it tells the bike apart…], \"words\": [\"12 mm lower\"…]}, one item a",
            "bike; \"inputs\" are those that differ. With several --hands the keys that",
            "depend on them begin with tops., hoods. or drops."
        })
final class CompareCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "BIKE", description = "Bike files (*.bike.json).")
    private List<String> bikes = List.of();

    @Option(
            names = "--with",
            paramLabel = "KEY=VALUE[,KEY=VALUE]",
            description = "One more bike: the first with these numbers.")
    private List<String> changes = List.of();

    @Option(names = "--same-contact", description = "The first bike's contact points on all.")
    private boolean sameContact;

    @Option(names = "--to", paramLabel = "BIKE|RIDER", description = "Contact points of another on all.")
    private String to;

    @Option(names = "--parts", paramLabel = "PARTS", description = "Stock parts to match the hands with.")
    private String parts;

    @Option(
            names = "--hands",
            split = ",",
            paramLabel = "WHERE",
            description = "tops, hoods (default) or drops; several are compared apart.")
    private List<String> hands = List.of("hoods");

    @Option(names = "--only", split = ",", paramLabel = "KEY", description = "Measures or inputs to compare.")
    private List<String> only = List.of();

    @Mixin
    private TargetOptions held = new TargetOptions();

    @Mixin
    private Riding riding = new Riding();

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    CompareCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        List<Hands> places = hands.stream().map(String::trim).map(Hands::of).toList();
        List<Ride> read = bikes.stream()
                .map(bike -> riding.ride(this::notice, bike, places.get(0)))
                .toList();
        Optional<Wanted> wanted = wanted(read.get(0));
        List<Contender> contenders = contenders(read, wanted);
        boolean sharedFoot =
                wanted.filter(points -> !points.footing().worn().isEmpty()).isPresent();
        Comparison comparison =
                Comparison.of(vocabulary, contenders, places, wanted.map(Wanted::from), sharedFoot || hasShoe(), only);
        List<Ride> rides = contenders.stream().map(Contender::ride).toList();
        List<Left> left = only.isEmpty() ? Left.of(vocabulary, rides) : List.of();
        List<Adjustment> adjustments = only.isEmpty() ? Adjustment.of(rides, stock()) : List.of();
        Table table = ComparisonTable.of(comparison);
        output.give(
                console(),
                ComparisonTable.drawing(comparison),
                table,
                () -> left.isEmpty()
                        ? Output.text(table)
                        : Output.text(
                                table,
                                LimitTable.of(rides, left, comparison.contact()),
                                AdjustmentTable.of(rides, adjustments)),
                () -> asJson(comparison, left, wanted, LimitsCommand.adjustments(adjustments)));
        return DONE;
    }

    private Optional<Wanted> wanted(Ride first) {
        if (to != null && sameContact) {
            throw new Refusal("--same-contact and --to name two bikes' contact points; accepted is one of them.");
        }
        Optional<Wanted> points = to != null
                ? Optional.of(Paths.wanted(to))
                : sameContact ? Optional.of(Wanted.of(first.bike())) : riding.contact();
        if (parts != null && points.isEmpty()) {
            throw new Refusal("--parts matches the hands to contact points; add --same-contact or --to.");
        }
        return points.map(one -> held.held(one, riding));
    }

    private Optional<Stock> stock() {
        return Optional.ofNullable(parts).map(Paths::stock);
    }

    private boolean hasShoe() {
        return riding.rider()
                .filter(who -> who.own().containsKey(Inputs.TOE_FORWARD))
                .isPresent();
    }

    private List<Contender> contenders(List<Ride> read, Optional<Wanted> wanted) {
        List<Contender> contenders = new ArrayList<>();
        for (int i = 0; i < read.size(); i++) {
            boolean isOwner = i == 0 && sameContact;
            Ride ride = read.get(i);
            contenders.add(new Contender(ride.on(fitted(ride.bike(), wanted, isOwner)), i));
        }
        Ride first = contenders.get(0).ride();
        for (String change : changes) {
            Map<String, Double> numbers = KeyValue.numbers("--with", Arrays.asList(change.split(",", -1)));
            Bike changed = Changed.of(first.bike(), numbers);
            boolean seats = numbers.keySet().stream().noneMatch(key -> key.startsWith("contact."));
            Bike seated = seats ? wanted.map(points -> points.seat(changed)).orElse(changed) : changed;
            contenders.add(new Contender(first.on(seated), 0, Changed.varied(numbers)));
        }
        return contenders;
    }

    private Bike fitted(Bike bike, Optional<Wanted> wanted, boolean isOwner) {
        if (wanted.isEmpty()) {
            return bike;
        }
        return parts == null || isOwner ? wanted.get().on(bike) : matched(bike, wanted.get());
    }

    private Bike matched(Bike bike, Wanted wanted) {
        return new Match(bike, wanted, Geometry.of(bike), stock().orElseThrow())
                .best(1)
                .first()
                .named();
    }

    private Map<String, Object> asJson(
            Comparison comparison, List<Left> left, Optional<Wanted> wanted, List<Map<String, Object>> adjustments) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put(
                "bikes",
                comparison.contenders().stream()
                        .map(one -> one.ride().bike().name())
                        .toList());
        json.put("contact", comparison.contact().orElse(null));
        json.put("changed", changed(comparison));
        json.put("inputs", asJson(comparison.inputs()));
        json.put("measures", asJson(comparison.measures()));
        json.put("limits", LimitsCommand.asJson(left));
        json.put("notices", comparison.differentFooting());
        json.put("held", wanted.map(Wanted::held).orElse(null));
        json.put("adjustments", adjustments);
        return json;
    }

    /** For each bike what was changed of it: the key and the way. */
    private static List<Map<String, String>> changed(Comparison comparison) {
        return comparison.contenders().stream()
                .map(one -> one.changed().stream()
                        .collect(Collectors.toMap(
                                Varied::key, varied -> varied.mode().word())))
                .toList();
    }

    private static Map<String, Object> asJson(List<Comparison.Row> rows) {
        Map<String, Object> json = new LinkedHashMap<>();
        rows.forEach(row -> json.put(row.quantity().key(), asJson(row)));
        return json;
    }

    private static Map<String, Object> asJson(Comparison.Row row) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("values", list(row.values()));
        json.put("differences", list(row.differences()));
        json.put(
                "percent",
                IntStream.range(0, row.values().size())
                        .mapToObj(i -> Console.orNull(row.percent(i)))
                        .toList());
        json.put("uncertainties", list(row.uncertainties()));
        json.put(
                "larger",
                IntStream.range(0, row.values().size())
                        .mapToObj(row::tellsApart)
                        .toList());
        json.put(
                "words",
                IntStream.range(0, row.values().size())
                        .mapToObj(row::difference)
                        .toList());
        return json;
    }

    static List<Double> list(Numbers numbers) {
        return numbers.stream().mapToObj(Console::orNull).toList();
    }
}
