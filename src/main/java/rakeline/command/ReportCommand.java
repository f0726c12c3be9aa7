package rakeline.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rakeline.catalogue.Assumptions;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Bytes;
import rakeline.figure.BikeDrawing;
import rakeline.figure.CustomerTables;
import rakeline.figure.Table;
import rakeline.geometry.Bike;
import rakeline.geometry.Geometry;
import rakeline.geometry.Hands;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.handout.Block;
import rakeline.handout.Imprint;
import rakeline.handout.Sheet;
import rakeline.quantity.Caution;
import rakeline.quantity.Decimals;
import rakeline.quantity.Refusal;
import rakeline.rider.Rider;
import rakeline.study.Vocabulary;
import rakeline.study.fit.Adjustment;
import rakeline.study.fit.Comparison;
import rakeline.study.fit.Contender;
import rakeline.study.fit.Left;
import rakeline.study.fit.Match;
import rakeline.study.fit.Matched;
import rakeline.study.fit.Wanted;

/** One page for a customer about two bikes. */
@Command(
        name = "report",
        description =
                "Writes one page for a customer: two bikes with stock parts that put the same contact points on both.",
        footer = {
            "",
            "The contact points are those of --to, a rider or the bike ridden today, or where",
            "it is not given the rider's own; without either there is no sheet. They are held",
            "from the pedal as match holds them. Each bike carries its best match of the",
            "parts, as match ranks them: the side views laid over each other, what is fitted,",
            "the numbers and their differences, what is left to limits with their sources,",
            "cautions. Several parts files are taken together. Without --html and --pdf the",
            "HTML is printed."
        })
final class ReportCommand extends Work {
    private static final int BIKES = 2;

    @Parameters(arity = "0..*", paramLabel = "BIKE", description = "Two bike files (*.bike.json).")
    private List<String> named = List.of();

    @Option(names = "--rider", required = true, paramLabel = "RIDER", description = "Whom it is for (*.rider.json).")
    private String riderFile;

    @Option(names = "--to", paramLabel = "BIKE|RIDER", description = "Whose contact points go on both.")
    private String to;

    @Option(
            names = "--parts",
            required = true,
            arity = "1..*",
            paramLabel = "PARTS",
            description = "Stock parts (*.parts.json).")
    private List<String> listed = List.of();

    @Mixin
    private Handed handed = new Handed();

    private final Vocabulary vocabulary;

    ReportCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        handed.check();
        List<String> bikes = new ArrayList<>(named);
        listed.stream().filter(ReportCommand::isBike).forEach(bikes::add);
        if (bikes.size() != BIKES) {
            throw new Refusal("a report is about two bikes; " + bikes.size() + " are named.");
        }
        List<String> parts =
                listed.stream().filter(file -> !bikes.contains(file)).toList();
        Rider rider = Paths.rider(riderFile);
        Stock stock = parts.stream()
                .map(Paths::stock)
                .reduce(Stock::and)
                .orElseThrow(() -> new Refusal("--parts names no parts file; accepted is one or more."));
        Wanted wanted = wanted(rider);
        Fitted fitted = fit(bikes.stream().map(Paths::bike).toList(), rider, wanted, stock);
        handed.write(console(), sheet(fitted, rider, sources(bikes, parts)));
        return DONE;
    }

    private static boolean isBike(String file) {
        return Paths.format(file).equals(BikeFile.FORMAT);
    }

    private List<Imprint.Source> sources(List<String> bikes, List<String> parts) {
        return Stream.of(
                        bikes,
                        List.of(riderFile),
                        Optional.ofNullable(to).stream().toList(),
                        parts)
                .flatMap(List::stream)
                .distinct()
                .map(Paths::of)
                .map(file -> Imprint.Source.of(file.getFileName().toString(), Bytes.read(file, BikeFile.SIZE_LIMIT)))
                .toList();
    }

    /** Both bikes with their best parts and the rider on them. */
    private record Fitted(Wanted wanted, List<Bike> bikes, List<Matched> matches, List<Ride> rides) {
        Stock stock() {
            return matches.get(0).match().stock();
        }

        List<String> names() {
            return bikes.stream().map(Bike::name).toList();
        }
    }

    /** Never a frame's own in silence: a sheet for a customer shows the customer's points. */
    private Wanted wanted(Rider rider) {
        if (to != null) {
            return Paths.wanted(to).wornBy(rider);
        }
        if (!rider.own().containsKey(Inputs.CONTACT_SIT_X)) {
            throw new Refusal(
                    rider.name() + " does not say where hands and saddle belong; accepted is --to with the bike"
                            + " ridden today or another rider, or the group contact in the rider's file.");
        }
        return Wanted.of(rider);
    }

    private static Fitted fit(List<Bike> bikes, Rider rider, Wanted wanted, Stock stock) {
        List<Bike> shod = bikes.stream().map(rider::on).toList();
        Geometry first = Geometry.of(shod.get(0), Hands.HOODS);
        List<Matched> matches = shod.stream()
                .map(bike -> new Match(bike, wanted, first, stock).best(1))
                .toList();
        List<Ride> rides = matches.stream()
                .map(matched -> Ride.of(matched.first().bike(), Optional.of(rider), Hands.HOODS)
                        .on(matched.first().bike()))
                .toList();
        return new Fitted(wanted, bikes, matches, rides);
    }

    private Sheet sheet(Fitted fitted, Rider rider, List<Imprint.Source> sources) {
        List<Contender> contenders = new ArrayList<>();
        for (int i = 0; i < fitted.rides().size(); i++) {
            contenders.add(new Contender(fitted.rides().get(i), i));
        }
        Comparison comparison = Comparison.of(
                vocabulary,
                contenders,
                List.of(Hands.HOODS),
                Optional.of(fitted.wanted().from()),
                true,
                CustomerTables.KEYS);
        Table numbers = CustomerTables.numbers(comparison);
        Table limits = CustomerTables.limits(fitted.names(), Left.of(vocabulary, fitted.rides()));
        Table adjustments =
                CustomerTables.adjustments(fitted.names(), Adjustment.of(fitted.rides(), Optional.of(fitted.stock())));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Shown(BikeDrawing.sideView(fitted.rides()).brief()));
        Table parts = CustomerTables.fitted(fitted.names(), fitted.matches());
        blocks.add(new Block.Beside(List.of(new Block.Shown(parts), new Block.Shown(CustomerTables.bare(numbers)))));
        blocks.add(new Block.Shown(CustomerTables.bare(limits)));
        blocks.add(new Block.Shown(adjustments));
        blocks.add(quiet("± is the standard uncertainty of a difference, from those of the inputs. What is left is"
                + " negative beyond a limit, by how far."));
        blocks.add(quiet(String.join(" ", assumptions(fitted, rider))));
        blocks.add(new Block.Cautioned(cautions(numbers, limits)));
        return new Sheet(
                String.join(" and ", fitted.names()) + " for " + rider.name(),
                contact(fitted.wanted()),
                blocks,
                List.of(Handed.imprint(sources).line()),
                Sheet.Form.ONE_PAGE);
    }

    private static Block quiet(String words) {
        return new Block.Words(Block.Tone.QUIET, words);
    }

    private static List<Caution> cautions(Table numbers, Table limits) {
        return Stream.of(numbers.cautions(), limits.cautions(), Sheet.STANDING_CAUTIONS)
                .flatMap(List::stream)
                .distinct()
                .toList();
    }

    private static List<String> assumptions(Fitted fitted, Rider rider) {
        return Stream.concat(
                        fitted.bikes().stream().flatMap(bike -> Assumptions.of(bike).stream()),
                        Assumptions.of(rider).stream())
                .toList();
    }

    private static String contact(Wanted wanted) {
        String held = wanted.held();
        return "The same contact points on both, " + wanted.from() + ": hoods " + place(wanted.hand()) + " BB"
                + wanted.sit().map(sit -> ", saddle " + place(sit) + " it").orElse("") + "; " + held + ".";
    }

    private static String place(Point point) {
        return Decimals.fixed(Math.abs(point.x()), 0) + " mm " + (point.x() < 0 ? "behind" : "ahead of") + " and "
                + Decimals.fixed(point.y(), 0) + " mm above";
    }
}
