package rakeline.shell;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rakeline.engine.Control;
import rakeline.engine.Layout;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.quantity.Decimals;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** What the fake session makes of a row. */
final class FakeRow {
    private static final Pattern NAME = Pattern.compile("\\b(?:double|Bike|int|var)\\s+(\\w+)\\s*=");
    private static final Pattern DIAL = Pattern.compile(
            "double (\\w+) = dial\\(\"([^\"]*)\", \"([^\"]*)\", " + "([\\d.-]+), ([\\d.-]+), ([\\d.]+), ([\\d.-]+)\\)");
    private static final Pattern PICK = Pattern.compile("Bike (\\w+) = pick\\(\"([^\"]*)\"");
    private static final Pattern PRINT = Pattern.compile("println\\(\"([^\"]*)\"\\)");

    private FakeRow() {}

    static Set<String> defines(Row.Snippet row) {
        Set<String> names = new LinkedHashSet<>();
        Matcher matcher = NAME.matcher(row.text());
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }

    static boolean uses(Row.Snippet row, Set<String> names) {
        return names.stream()
                .anyMatch(name -> Pattern.compile("\\b" + name + "\\b")
                        .matcher(row.text())
                        .find());
    }

    static Outcome inState(Row.Snippet row, State state) {
        return new Outcome(row.id(), name(row), state, "", "", Optional.empty(), List.of(), List.of());
    }

    private static String name(Row.Snippet row) {
        return defines(row).stream().findFirst().orElse(shows(row));
    }

    private static String shows(Row.Snippet row) {
        String text = row.text();
        return text.contains("chart()")
                ? "chart"
                : text.contains("draw(") ? "drawing" : text.contains("table") ? "table" : "value";
    }

    static Outcome run(Row.Snippet row, Worksheet page) {
        if (row.text().contains("fail")) {
            return new Outcome(
                    row.id(),
                    name(row),
                    State.FAILED,
                    "Line 1: nothing here is called fail; did you mean trail?\ncannot find symbol: variable fail",
                    "",
                    Optional.empty(),
                    List.of(),
                    List.of());
        }
        return new Outcome(
                row.id(),
                name(row),
                State.FRESH,
                "",
                printed(row),
                result(row, page),
                controls(row, page),
                row.text().contains("chart()") ? dialsAbove(row, page) : List.of(),
                takes(row, page),
                Map.of());
    }

    /** A made-up chart follows every dial. */
    private static List<String> dialsAbove(Row.Snippet row, Worksheet page) {
        return page.rows().stream()
                .takeWhile(other -> !other.id().equals(row.id()))
                .flatMap(other -> DIAL.matcher(other.text()).results())
                .map(dial -> dial.group(1))
                .toList();
    }

    private static List<Layout.Need> takes(Row.Snippet row, Worksheet page) {
        return page.rows().stream()
                .takeWhile(other -> !other.id().equals(row.id()))
                .filter(Row.Snippet.class::isInstance)
                .flatMap(other -> defines((Row.Snippet) other).stream().map(name -> new Layout.Need(name, other.id())))
                .filter(need -> uses(row, Set.of(need.name())))
                .toList();
    }

    private static String printed(Row.Snippet row) {
        Matcher matcher = PRINT.matcher(row.text());
        return matcher.find() ? matcher.group(1) + "\n" : "";
    }

    private static Optional<Result> result(Row.Snippet row, Worksheet page) {
        double head = page.dials().getOrDefault("head", 71.3);
        String text = row.text();
        if (text.contains("chart()")) {
            return Optional.of(new Result.Shown(FakeFigures.chart(head)));
        }
        if (text.contains("drawPlan(")) {
            return Optional.of(new Result.Shown(FakeFigures.plan()));
        }
        if (text.contains("draw(")) {
            return Optional.of(new Result.Shown(FakeFigures.side(head)));
        }
        if (text.contains("table")) {
            return Optional.of(new Result.Shown(FakeFigures.chart(head).table()));
        }
        Matcher dial = DIAL.matcher(text);
        if (dial.find()) {
            double value = page.dials().getOrDefault(dial.group(1), Double.parseDouble(dial.group(7)));
            return Optional.of(Result.Value.of(Decimals.shortest(value), value));
        }
        if (text.contains("bike(") || text.contains("pick(")) {
            return Optional.of(Result.Value.of("Road XS: stack 508, reach 370, 622 × 28, crank 165", Double.NaN));
        }
        return text.isBlank() || text.contains("println")
                ? Optional.empty()
                : Optional.of(new Result.Text(text.lines().findFirst().orElse("")));
    }

    private static List<Control> controls(Row.Snippet row, Worksheet page) {
        List<Control> controls = new java.util.ArrayList<>();
        Matcher pick = PICK.matcher(row.text());
        while (pick.find()) {
            controls.add(new Control.Picker(
                    pick.group(1),
                    pick.group(2),
                    List.of("bikes/xs.bike.json", "bikes/s.bike.json"),
                    List.of("Road XS", "Road S"),
                    page.picks().getOrDefault(pick.group(1), "bikes/xs.bike.json")));
        }
        Matcher dial = DIAL.matcher(row.text());
        while (dial.find()) {
            controls.add(dial(dial, page));
        }
        return controls;
    }

    private static Control.Dial dial(Matcher dial, Worksheet page) {
        double initial = Double.parseDouble(dial.group(7));
        double step = Double.parseDouble(dial.group(6));
        return new Control.Dial(
                dial.group(1),
                dial.group(2),
                dial.group(2).equals("Head angle") ? "frame.headAngleDeg" : "",
                dial.group(3),
                Double.parseDouble(dial.group(4)),
                Double.parseDouble(dial.group(5)),
                step,
                initial,
                initial,
                page.dials().getOrDefault(dial.group(1), initial),
                step < 1 ? 1 : 0);
    }
}
