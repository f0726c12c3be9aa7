package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.catalogue.RiderFile;
import rakeline.figure.BikeDrawing;
import rakeline.figure.MatchTable;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;
import rakeline.geometry.Point;
import rakeline.geometry.parts.Spacers;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;
import rakeline.rider.SaddleTarget;
import rakeline.study.fit.Margin;
import rakeline.study.fit.Match;
import rakeline.study.fit.Matched;
import rakeline.study.fit.Wanted;

/** Ranks stock parts for a frame by where they put hands and saddle. */
@Command(
        name = "match",
        description = "Ranks stock parts that put a rider's contact points on another frame.",
        footer = {
            "",
            "What --to names gives the hoods and the sit point that are wanted: a rider, or",
            "a bike's group contact, or where it has none, its hoods as built. They are held",
            "from the pedal: the shoe and crank on which they were found, or those of --rider,",
            "go on the frame; under another crank, one of the parts or with --own-cranks, the",
            "saddle keeps its distance from the pedal at its furthest and its setback behind",
            "BB (--setback), the hands their place from BB (--hands-from). Post and",
            "rails meet the sit point exactly; sitMissMm is how far it stays off where they",
            "stop at their limits. Whatever the parts file lists varies, in every",
            "combination: stem lengths by angles by clamp heights, each angle also turned",
            "over unless the stem says \"flips\": false; every height that the spacers can be",
            "stacked to; bars, headset covers, cranks, posts; forks and tyres, which are",
            "refitted. What it does not list stays as on BIKE. A bar that gives its reach and",
            "no hoods brings the hoods along with its reach. Posts that put the saddle on the",
            "same point are one option.",
            "",
            "Best first: within every limit before any that is beyond one; then how much",
            "further off than --tolerance the hands are; the tightest limit, in units of its",
            "uncertainty; the fewest kinds of parts changed; then hand distance, height of",
            "spacers, stem length, and the parts' numbers in the order of their keys. The",
            "limits are those on spacers, both ways, steerer, post, rails, toe room and pedal",
            "strike, each with its source; the parts file may set others (\"limits\"). Levers",
            "and turn per hand travel are per cent against the bike of --to; against BIKE as",
            "it is where --to is a rider, or --against. They are read with the --hands where",
            "these say; what is wanted is always the hoods.",
            "",
            "--json prints {\"bike\", \"to\", \"wanted\": {\"handXMm\", \"handYMm\", \"sitXMm\",",
            "\"sitYMm\", \"standardUncertainties\": {key: mm}, \"from\", \"crankMm\",",
            "\"saddleToPedalMm\", \"held\"}, \"against\", \"combinations\", \"options\":",
            "[{\"stemLengthMm\", \"stemAngleDeg\", \"spacersMm\", …, \"handDxMm\", \"handDyMm\",",
            "\"distanceMm\", …, \"spacerPiecesMm\": [number…], \"limits\": [{\"key\", \"left\",",
            "\"limit\", \"source\"}], \"set\": {KEY: VALUE}, \"withinLimits\", \"tightest\": {\"limit\":",
            "key, \"left\", \"standardUncertainty\"}, \"equivalentPosts\": [{key: number}]}],",
            "\"toleranceMm\"}; \"wanted\" has the points as they were found, handDx and handDy",
            "are the option's hoods minus the wanted ones, \"limits\" those that are exceeded",
            "with what is left, which is negative, and \"set\" what turns BIKE into the option.",
            "Numbers without a value are null. The ten best options are given unless --top or",
            "--all say otherwise."
        })
final class MatchCommand extends Work {
    private static final int USUAL = 10;

    @Mixin
    private Subject subject = new Subject();

    @Option(
            names = "--to",
            required = true,
            paramLabel = "BIKE|RIDER",
            description = "Whose contact points are wanted.")
    private String to;

    @Option(names = "--parts", required = true, paramLabel = "PARTS", description = "Stock parts (*.parts.json).")
    private String parts;

    @Option(names = "--against", paramLabel = "BIKE", description = "The bike that levers are compared with.")
    private String against;

    @Option(names = "--top", paramLabel = "N", description = "How many options (default: 10).")
    private Integer top;

    @Option(
            names = "--tolerance",
            paramLabel = "MM",
            description = "How far off the hands may be without counting (default: 3).")
    private String tolerance = Decimals.shown(Match.USUAL_TOLERANCE_MM);

    @Mixin
    private TargetOptions held = new TargetOptions();

    @Option(names = "--all", description = "Every option.")
    private boolean all;

    @Mixin
    private Output output = new Output();

    MatchCommand(Console console) {
        super(console);
    }

    @Override
    int work() {
        int most = most();
        Match match = match();
        Matched matched = all ? match.all(progress()) : match.best(most, progress());
        output.give(
                console(),
                BikeDrawing.sideView(List.of(
                        Ride.of(matched.first().bike()),
                        Ride.of(match.reference().bike()))),
                MatchTable.whole(matched),
                MatchTable.brief(matched),
                () -> asJson(matched));
        return DONE;
    }

    private int most() {
        if (top == null) {
            return USUAL;
        }
        if (all) {
            throw new Refusal("--top and --all contradict each other; accepted is one of them.");
        }
        if (top < 1) {
            throw new Refusal("--top is " + top + "; accepted is a number from 1 up.");
        }
        return Math.min(top, Match.MOST_OPTIONS);
    }

    private Match match() {
        Stock stock = Paths.stock(parts);
        Ride own = subject.ride(this::notice);
        Hands hands = own.geometry().hands();
        boolean toRider = Paths.format(to).equals(RiderFile.FORMAT);
        Bike usual = toRider ? Paths.rider(to).on(own.bike()) : Paths.bike(to);
        return new Match(
                own.bike(),
                held.held(Paths.wanted(to), subject.riding()),
                reference(usual, hands),
                stock,
                Console.number(tolerance, "--tolerance"));
    }

    private Geometry reference(Bike usual, Hands hands) {
        return Geometry.of(against == null ? usual : Paths.bike(against), hands);
    }

    private Map<String, Object> asJson(Matched matched) {
        Match match = matched.match();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", match.bike().name());
        json.put("to", to);
        json.put("wanted", asJson(match.wanted()));
        json.put("against", match.reference().bike().name());
        json.put("combinations", Console.whole(matched.combinations()));
        Map<Double, List<Double>> stacks =
                match.stock().spacers().map(Spacers::stacks).orElse(Map.of());
        json.put(
                "options",
                matched.options().stream()
                        .map(option -> asJson(match, stacks, option))
                        .toList());
        json.put("toleranceMm", match.toleranceMm());
        return json;
    }

    private static Map<String, Object> asJson(Wanted wanted) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("handXMm", wanted.hand().x());
        json.put("handYMm", wanted.hand().y());
        json.put("sitXMm", wanted.sit().map(Point::x).orElse(null));
        json.put("sitYMm", wanted.sit().map(Point::y).orElse(null));
        json.put("standardUncertainties", new TreeMap<>(wanted.standard()));
        json.put("from", wanted.from());
        json.put(
                "crankMm",
                wanted.saddle().map(SaddleTarget::crankMm).map(Console::orNull).orElse(null));
        json.put(
                "saddleToPedalMm",
                wanted.saddle()
                        .map(SaddleTarget::toPedalMm)
                        .map(Console::orNull)
                        .orElse(null));
        json.put("held", wanted.held());
        return json;
    }

    private static Map<String, Object> asJson(
            Match match, Map<Double, List<Double>> stacks, rakeline.study.fit.Option option) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.putAll(numbers(option.facts()));
        json.put("spacerPiecesMm", option.pieces(stacks));
        json.put("limits", option.exceeded().stream().map(MatchCommand::asJson).toList());
        json.put("set", option.changesTo(match.bike()));
        json.put("withinLimits", option.isWithinLimits());
        json.put("tightest", option.tightest().map(MatchCommand::tightest).orElse(null));
        json.put(
                "equivalentPosts",
                option.equivalentPosts().stream().map(MatchCommand::numbers).toList());
        return json;
    }

    private static Map<String, Double> numbers(List<rakeline.study.fit.Option.Fact> facts) {
        Map<String, Double> json = new LinkedHashMap<>();
        facts.forEach(fact -> json.put(fact.quantity().key(), Console.orNull(fact.value())));
        return json;
    }

    private static Map<String, Object> tightest(Margin margin) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("limit", margin.quantity().key());
        json.put("left", margin.left());
        json.put("standardUncertainty", margin.standardUncertainty());
        return json;
    }

    private static Map<String, Object> asJson(Margin exceeded) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", exceeded.quantity().key());
        json.put("left", exceeded.left());
        json.put("limit", exceeded.limit().value());
        json.put("source", exceeded.limit().source());
        return json;
    }
}
