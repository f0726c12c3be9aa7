package rakeline.figure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rakeline.geometry.Cautions;
import rakeline.geometry.Point;
import rakeline.geometry.parts.Category;
import rakeline.geometry.parts.Field;
import rakeline.geometry.parts.Part;
import rakeline.geometry.parts.Stock;
import rakeline.quantity.Caution;
import rakeline.quantity.Decimals;
import rakeline.quantity.Numbers;
import rakeline.quantity.Quantity;
import rakeline.study.fit.Match;
import rakeline.study.fit.Matched;
import rakeline.study.fit.Option;

/** The options that a match found, one a row, best first. */
public final class MatchTable {
    private MatchTable() {}

    /** With every number of every option. */
    public static Table whole(Matched matched) {
        return table(matched, column -> true, List.of());
    }

    /** With the numbers that were chosen among and those in which the options differ; the others are said below it. */
    public static Table brief(Matched matched) {
        List<Option> options = matched.options();
        Set<String> unsaid = unsaid(matched.match().stock());
        List<Integer> told = IntStream.range(0, options.get(0).facts().size())
                .filter(i -> !unsaid.contains(
                        options.get(0).facts().get(i).quantity().key()))
                .boxed()
                .toList();
        Set<String> chosen = chosen(matched.match().stock());
        List<Integer> same = told.stream()
                .filter(i -> options.size() > 1 && !differs(options, i))
                .filter(i -> !chosen.contains(
                        options.get(0).facts().get(i).quantity().key()))
                .toList();
        return table(matched, i -> told.contains(i) && !same.contains(i), same);
    }

    private static Table table(Matched matched, IntPredicate shown, List<Integer> same) {
        List<Option> options = matched.options();
        List<Column> columns = new ArrayList<>();
        columns.add(rank(options));
        IntStream.range(0, options.get(0).facts().size()).filter(shown).forEach(i -> columns.add(column(options, i)));
        columns.add(Column.ofWords(
                "limits",
                "Beyond a limit",
                options.stream().map(MatchTable::beyond).toList()));
        String said = same.stream()
                .map(i -> said(options.get(0).facts().get(i)))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
        List<Quantity> quantities = IntStream.range(0, options.get(0).facts().size())
                .filter(i -> shown.test(i) || same.contains(i))
                .mapToObj(i -> options.get(0).facts().get(i).quantity())
                .toList();
        return new Table(title(matched), columns, held(matched.match(), said), cautions(quantities));
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

    /** What the stock offers more than one of. */
    private static Set<String> chosen(Stock stock) {
        return Stream.of(Category.values())
                .flatMap(category ->
                        category.fields().stream().filter(field -> offers(stock.choices(category), field) > 1))
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
        return match.bike().name() + " to " + match.wanted().from() + ": best "
                + matched.options().size() + " of " + Decimals.shortest(matched.combinations())
                + " combinations of \"" + match.stock().name() + "\"";
    }

    private static String held(Match match, String same) {
        Stock stock = match.stock();
        String varied = Stream.of(Category.values())
                .filter(stock::has)
                .map(Category::word)
                .collect(Collectors.joining(", "));
        String wanted = wanted(match) + "; the frame and everything but " + varied + ", as on the bike.";
        return same.isEmpty() ? wanted : wanted + " The same in all: " + same + ".";
    }

    private static String wanted(Match match) {
        Point hand = match.wanted().hand();
        return "the hoods wanted at " + place(match, hand, "handXMm", "handYMm")
                + match.wanted()
                        .sit()
                        .map(sit ->
                                "; the sit point, met by post and rails, at " + place(match, sit, "sitXMm", "sitYMm"))
                        .orElse("");
    }

    private static String place(Match match, Point point, String x, String y) {
        return shown(match, point.x(), x) + " mm ahead of BB and " + shown(match, point.y(), y) + " mm above it";
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
