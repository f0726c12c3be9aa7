package rakeline.command;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.Chart;
import rakeline.figure.ResponseChart;
import rakeline.figure.Table;
import rakeline.handling.Dynamics;
import rakeline.handling.Response;
import rakeline.handling.Response.Torque;
import rakeline.quantity.Caution;
import rakeline.quantity.Refusal;
import rakeline.study.Steps;

/** Prints how the linear bicycle answers a torque. */
@Command(
        name = "response",
        description = {
            "Lean and steer after a torque of 1 N m sets in, or under one that swings, at a steady speed: the linear bicycle",
            "model of Meijaard, Papadopoulos, Ruina and Schwab 2007."
        },
        footer = {
            "",
            "--seconds S follows a step over S seconds, 5 where neither is given; --frequency W gives amplitude and phase for",
            "each newton metre up to W rad/s, each phase running on over half turns.",
            "--json prints {\"name\", \"speedMps\", \"torque\": \"steer\" or \"lean\", \"columns\": [{\"key\", \"label\", \"unit\",",
            "\"values\"}], \"selfStable\": boolean, \"beyondLinear\": true where lean or steer passes 10°, \"cautions\": […]}."
        })
final class ResponseCommand extends Work {
    private static final int ROWS = 21;
    private static final double USUAL_SECONDS = 5;

    @ArgGroup(multiplicity = "1")
    private LinearModel model = new LinearModel();

    @Option(names = "--torque", paramLabel = "WHICH", description = "steer (default) or lean.")
    private String torque = "steer";

    @Option(names = "--speed", required = true, paramLabel = "MPS", description = "Speed, m/s.")
    private String speed;

    @ArgGroup
    private Span span = new Span();

    @Mixin
    private Output output = new Output();

    ResponseCommand(Console console) {
        super(console);
    }

    /** Over which time or which frequencies. */
    static final class Span {
        @Option(names = "--seconds", paramLabel = "S", description = "Follows a step of torque.")
        private String seconds;

        @Option(names = "--frequency", paramLabel = "RAD/S", description = "Follows a swinging torque.")
        private String frequency;
    }

    @Override
    int work() {
        Dynamics dynamics = model.read().dynamics();
        Response response =
                new Response(dynamics.stability().bicycle(), Console.number(speed, "--speed"), Torque.of(torque));
        Chart chart = chart(dynamics.name(), response);
        Table all = chart.table();
        output.give(console(), chart, all, chart.table(ROWS), () -> asJson(dynamics, response, chart));
        return DONE;
    }

    private Chart chart(String name, Response response) {
        if (span.frequency != null) {
            return ResponseChart.swing(name, response, Steps.of(0, above0(span.frequency, "--frequency")));
        }
        double seconds = span.seconds == null ? USUAL_SECONDS : above0(span.seconds, "--seconds");
        return ResponseChart.step(name, response, Steps.of(0, seconds));
    }

    private static double above0(String text, String place) {
        double value = Console.number(text, place);
        if (value <= 0) {
            throw new Refusal(place + " is " + text + "; accepted is a number above 0.");
        }
        return value;
    }

    private static Map<String, Object> asJson(Dynamics dynamics, Response response, Chart chart) {
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("name", dynamics.name());
        answer.put("speedMps", response.speedMps());
        answer.put("torque", response.torque().word());
        answer.put(
                "columns",
                chart.table().columns().stream().map(FigureJson::column).toList());
        answer.put("selfStable", response.isStable());
        answer.put("beyondLinear", ResponseChart.isBeyondLinear(chart));
        answer.put("cautions", chart.cautions().stream().map(Caution::sentence).toList());
        return answer;
    }
}
