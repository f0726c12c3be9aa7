package rakeline.figure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.geometry.Bike;
import rakeline.geometry.Cautions;
import rakeline.geometry.Inputs;
import rakeline.geometry.Point;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Field;
import rakeline.geometry.parts.Part;
import rakeline.geometry.parts.Stock;
import rakeline.handling.Ride;
import rakeline.quantity.Caution;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.study.fit.Direction;
import rakeline.study.fit.Margin;
import rakeline.study.fit.Match;
import rakeline.study.fit.Matched;
import rakeline.study.fit.Option;
import rakeline.study.fit.Wanted;

/** The options that a match found, one a row, best first. */
public final class MatchTable {
    private static final String DISTANCE = "distanceMm";
    private static final List<String> OFF = List.of("handDxMm", "handDyMm");
    private static final Set<String> MISSES = Set.of("handDxMm", "handDyMm", DISTANCE);
    private static final double LEAST_SAID_MM = 0.005;

    private MatchTable() {}

    /** With every number of every option. */
    public static Table whole(Matched matched) {
        List<Column> columns = new ArrayList<>(first(matched.options()));
        facts(matched).forEach(i -> columns.add(column(matched.options(), i)));
        columns.add(posts(matched));
        List<Quantity> quantities =
                facts(matched).mapToObj(i -> fact(matched, i).quantity()).toList();
        return new Table(title(matched), columns, held(matched.match(), ""), cautions(quantities));
    }

    /** The parts that were chosen among, where they put the hands, and the tightest limit; the rest is said below it. */
    public static Table brief(Matched matched) {
        List<Option> options = matched.options();
        Set<String> unsaid = unsaid(matched.match().stock());
        Set<String> parts = parts(matched.match().stock());
        List<Integer> told = facts(matched)
                .filter(i -> !unsaid.contains(fact(matched, i).quantity().key()))
                .boxed()
                .toList();
        List<Integer> chosen = told.stream()
                .filter(i -> parts.contains(fact(matched, i).quantity().key()))
                .toList();
        List<Integer> same = told.stream()
                .filter(i -> !chosen.contains(i)
                        && !MISSES.contains(fact(matched, i).quantity().key()))
                .filter(i -> options.size() == 1 || !differs(options, i))
                .toList();
        List<Column> columns = new ArrayList<>(first(options));
        chosen.forEach(i -> columns.add(column(options, i)));
        columns.add(words("hands", "Hands", options, MatchTable::hands));
        columns.add(column(options, index(matched, DISTANCE)));
        columns.add(words(
                "tightest",
                "Tightest limit",
                options,
                option -> option.tightest().map(Margin::words).orElse("")));
        if (options.stream().anyMatch(option -> !option.equivalentPosts().isEmpty())) {
            columns.add(posts(matched));
        }
        String said = same.stream()
                .map(i -> said(fact(matched, i)))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        List<Quantity> quantities =
                told.stream().map(i -> fact(matched, i).quantity()).toList();
        return new Table(title(matched), columns, held(matched.match(), said), cautions(quantities))
                .about(Basis.of(
                        List.of(Ride.of(matched.match().bike())),
                        quantities.stream().map(Quantity::key)));
    }

    /** Rank, and beside it whether the option is beyond a limit. */
    private static List<Column> first(List<Option> options) {
        return List.of(rank(options), words("limits", "Beyond a limit", options, MatchTable::beyond));
    }

    private static IntStream facts(Matched matched) {
        return IntStream.range(0, matched.options().get(0).facts().size());
    }

    private static Option.Fact fact(Matched matched, int i) {
        return matched.options().get(0).facts().get(i);
    }

    private static int index(Matched matched, String key) {
        return facts(matched)
                .filter(i -> fact(matched, i).quantity().key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Column words(String key, String label, List<Option> options, Function<Option, String> words) {
        return Column.ofWords(key, label, options.stream().map(words).toList());
    }

    /** As in {@code 2.1 mm lower, 0.8 mm further forward}. */
    private static String hands(Option option) {
        return option.facts().stream()
                .filter(fact -> OFF.contains(fact.quantity().key()))
                .filter(fact -> Math.abs(fact.value()) >= LEAST_SAID_MM)
                .map(fact -> Direction.words(fact.quantity(), fact.value()))
                .collect(Collectors.joining(", "));
    }

    /** Other posts of the stock that put the saddle on the same point. */
    private static Column posts(Matched matched) {
        return words(
                "equivalentPosts",
                "Or with the post",
                matched.options(),
                option ->
                        option.equivalentPosts().stream().map(MatchTable::post).collect(Collectors.joining("; ")));
    }

    private static String post(List<Option.Fact> facts) {
        List<String> keys = List.of("postSetbackMm", "postLengthMm");
        return facts.stream()
                .filter(fact -> keys.contains(fact.quantity().key()))
                .map(fact -> fact.quantity().label().toLowerCase(Locale.ROOT) + " "
                        + fact.quantity().said(fact.value()))
                .collect(Collectors.joining(", "));
    }

    /** What says little beside the rest: the parts that stay as they are, and the hoods, whose miss is shown. */
    private static Set<String> unsaid(Stock stock) {
        Set<String> unsaid = new HashSet<>(Set.of("handXMm", "handYMm", "handLeverMm"));
        for (Category category : Category.values()) {
            if (!stock.has(category) && category != Category.STEMS && category != Category.SPACERS) {
                category.fields().forEach(field -> unsaid.add(field.option()));
            }
        }
        return unsaid;
    }

    /** Stem, spacers and what else the stock offers more than one of. */
    private static Set<String> parts(Stock stock) {
        Stream<Field> chosen = Stream.of(Category.values())
                .flatMap(category ->
                        category.fields().stream().filter(field -> offers(stock.choices(category), field) > 1));
        return Stream.concat(
                        chosen,
                        Stream.of(Category.STEMS, Category.SPACERS)
                                .flatMap(category -> category.fields().stream().filter(Field::needed)))
                .map(Field::option)
                .collect(Collectors.toSet());
    }

    private static long offers(List<Part> parts, Field field) {
        return parts.stream()
                .map(part -> part.get(field.inputs().get(0), Double.NaN))
                .distinct()
                .count();
    }

    private static boolean differs(List<Option> options, int column) {
        return options.stream()
                        .map(option -> option.facts().get(column).value())
                        .distinct()
                        .count()
                > 1;
    }

    private static Column rank(List<Option> options) {
        return new Column(
                "rank",
                "Rank",
                "",
                Numbers.generate(options.size(), i -> i + 1.0),
                IntStream.rangeClosed(1, options.size())
                        .mapToObj(String::valueOf)
                        .toList());
    }

    private static Column column(List<Option> options, int i) {
        return Column.of(
                options.get(0).facts().get(i).quantity(),
                Numbers.generate(
                        options.size(), row -> options.get(row).facts().get(i).value()));
    }

    private static String said(Option.Fact fact) {
        return Double.isNaN(fact.value())
                ? ""
                : fact.quantity().label() + " " + fact.quantity().formatWithUnit(fact.value());
    }

    private static String beyond(Option option) {
        return option.exceeded().stream().map(Object::toString).collect(Collectors.joining(", "));
    }

    private static String title(Matched matched) {
        Match match = matched.match();
        return worn(match) + match.bike().name() + " to " + match.wanted().from() + ": best "
                + matched.options().size() + " of " + Decimals.fixed(matched.combinations(), 0)
                + " combinations of \"" + match.stock().name() + "\"";
    }

    /** Another crank or shoe than the bike's own is said first. */
    private static String worn(Match match) {
        Bike own = match.bike();
        Bike worn = match.wanted().wear(own);
        return Stream.of(Inputs.CRANK_LENGTH, Inputs.TOE_FORWARD)
                .filter(input -> own.has(input) && worn.get(input) != own.get(input))
                .map(input -> input.quantity().label() + " " + input.quantity().said(worn.get(input)) + " in place of "
                        + input.quantity().said(own.get(input)) + ". ")
                .collect(Collectors.joining());
    }

    private static String held(Match match, String same) {
        Stock stock = match.stock();
        String varied = Stream.of(Category.values())
                .filter(stock::has)
                .map(Category::word)
                .collect(Collectors.joining(", "));
        String wanted = wanted(match) + "; the frame and everything but " + varied + ", as on the bike." + hoods(match);
        return same.isEmpty() ? wanted : wanted + " The same in all: " + same + ".";
    }

    private static String hoods(Match match) {
        boolean moved = match.stock().choices(Category.BARS).stream().anyMatch(bar -> bar.movesHoods(match.bike()));
        return moved ? " Hoods go with a bar's reach." : "";
    }

    private static String wanted(Match match) {
        Wanted wanted = match.wanted();
        Bike bike = wanted.wear(match.bike());
        Point hand = wanted.handOn(bike);
        return "the hoods wanted at " + place(match, hand, "handXMm", "handYMm") + ", to within "
                + Decimals.shown(match.toleranceMm()) + " mm"
                + wanted.sitOn(bike)
                        .map(sit -> "; the sit point, met by post and rails, at "
                                + place(match, sit, "sitXMm", "sitYMm") + "; " + wanted.held())
                        .orElse("");
    }

    private static String place(Match match, Point point, String x, String y) {
        return shown(match, Math.abs(point.x()), x) + " mm " + (point.x() < 0 ? "behind" : "ahead of") + " BB and "
                + shown(match, Math.abs(point.y()), y) + " mm " + (point.y() < 0 ? "below" : "above") + " it";
    }

    private static String shown(Match match, double value, String key) {
        double standard = match.wanted().standard().getOrDefault(key, Double.NaN);
        return Decimals.fixed(value, 1) + (Double.isNaN(standard) ? "" : " ± " + Decimals.fixed(standard, 1));
    }

    private static List<Caution> cautions(List<Quantity> quantities) {
        Stream<Caution> others = Quantity.cautionsOf(quantities).stream();
        return Stream.concat(Stream.of(Cautions.STEM_AND_BAR), others)
                .distinct()
                .toList();
    }
}
