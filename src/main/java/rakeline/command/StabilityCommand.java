package rakeline.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rakeline.figure.Chart;
import rakeline.figure.MassTable;
import rakeline.figure.StabilityChart;
import rakeline.figure.Table;
import rakeline.figure.TextTable;
import rakeline.handling.Dynamics;
import rakeline.handling.LinearBicycle;
import rakeline.handling.MassUsed;
import rakeline.handling.Modes;
import rakeline.handling.Mount;
import rakeline.handling.SelfStable;
import rakeline.handling.Square;
import rakeline.handling.Stability;
import rakeline.quantity.Caution;
import rakeline.quantity.Numbers;
import rakeline.quantity.Refusal;
import rakeline.study.Steps;

/** Prints what the linear bicycle does hands off. */
@Command(
        name = "stability",
        description = {
            "Eigenvalues over speed and the speeds at which they change sign, of the linear bicycle model of Meijaard,",
            "Papadopoulos, Ruina and Schwab 2007."
        },
        footer = {
            "",
            "The model leaves out: large angles, a rider who moves or steers, tyre slip and compliance, flexing parts,",
            "friction, air. That a bicycle keeps itself upright with nobody's hands on the",
            "bar does not say how it handles, and no published measure predicts how a rider feels about a bicycle.",
            "--json prints {\"name\", \"parameters\": {symbol: number}, \"M\": [[…], […]], \"C1\", \"K0\", \"K2\",",
            "\"weaveSpeedMps\", \"capsizeSpeedMps\", \"doubleRootSpeedMps\": number or null, \"selfStableMps\": null or",
            "[from, to or null], \"cautions\": [sentence]} and with --speeds \"speedsMps\" and \"eigenvalues\": for each",
            "speed four [re, im] pairs in the order weave (positive frequency first; where both are real, the greater),",
            "capsize (the greater of the other two), castering. For a bike also \"riderKg\", \"armsOnBarKg\" and \"masses\":",
            "[{\"key\", \"value\", \"given\", \"from\"}], every mass taken with its source."
        })
final class StabilityCommand extends Work {
    private static final int CURVE_STEPS = 401;
    private static final Numbers USUAL_SPEEDS = Steps.of(0, 10, 1);

    @ArgGroup(multiplicity = "1")
    private LinearModel model = new LinearModel();

    @Option(names = "--speeds", paramLabel = "FROM:TO:STEP", description = "Speeds, m/s; 0:10:1 where not given.")
    private String speeds;

    @Mixin
    private Output output = new Output();

    StabilityCommand(Console console) {
        super(console);
    }

    @Override
    int work() {
        LinearModel.Weighed weighed = model.read();
        return report(weighed.dynamics(), weighed.mount());
    }

    private int report(Dynamics dynamics, Optional<Mount> mount) {
        Numbers at = speeds == null ? USUAL_SPEEDS : speeds();
        Stability stability = dynamics.stability();
        Table table = StabilityChart.table(dynamics.name(), stability, at);
        Chart chart = StabilityChart.of(dynamics.name(), stability, fine(at));
        dynamics.parameters().cautions().forEach(console()::message);
        output.give(console(), chart, table, table, () -> asJson(dynamics, mount, at));
        if (output.isText() && mount.isPresent()) {
            console().data().print("\n" + TextTable.write(MassTable.of(dynamics.name(), mount.get())));
        }
        return DONE;
    }

    private Numbers speeds() {
        return StepsArgument.of(StepsArgument.numbers(speeds, "--speeds " + speeds))
                .orElseThrow(() -> new Refusal("--speeds is " + speeds + "; accepted is FROM:TO:STEP."));
    }

    /** From the first speed to the last in steps fine enough for a curve. */
    private static Numbers fine(Numbers at) {
        double from = at.at(0);
        return Numbers.generate(CURVE_STEPS, i -> from + (last(at) - from) * i / (CURVE_STEPS - 1));
    }

    private static double last(Numbers numbers) {
        return numbers.at(numbers.size() - 1);
    }

    private Map<String, Object> asJson(Dynamics dynamics, Optional<Mount> mount, Numbers at) {
        Stability stability = dynamics.stability();
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("name", dynamics.name());
        answer.put("parameters", dynamics.parameters().bySymbol());
        putMatrices(answer, stability.bicycle());
        answer.put("weaveSpeedMps", orNull(stability.weaveSpeedMps()));
        answer.put("capsizeSpeedMps", orNull(stability.capsizeSpeedMps()));
        answer.put("doubleRootSpeedMps", orNull(stability.doubleRootSpeedMps()));
        answer.put(
                "selfStableMps",
                stability.selfStable().map(StabilityCommand::pair).orElse(null));
        mount.ifPresent(of -> putMasses(answer, of));
        answer.put(
                "cautions",
                Stream.concat(
                                dynamics.parameters().cautions().stream(),
                                StabilityChart.CAUTIONS.stream().map(Caution::sentence))
                        .toList());
        if (speeds != null) {
            answer.put("speedsMps", at.toArray());
            answer.put(
                    "eigenvalues",
                    stability.modes(at).stream().map(StabilityCommand::pairs).toList());
        }
        return answer;
    }

    private static void putMasses(Map<String, Object> answer, Mount mount) {
        answer.put("riderKg", mount.riderKg());
        answer.put("armsOnBarKg", mount.armsOnBarKg());
        answer.put("masses", mount.used().stream().map(StabilityCommand::asJson).toList());
    }

    private static Map<String, Object> asJson(MassUsed mass) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", mass.quantity().key());
        json.put("value", mass.value());
        json.put("given", mass.given());
        json.put("from", mass.origin());
        return json;
    }

    private static void putMatrices(Map<String, Object> answer, LinearBicycle bicycle) {
        Map<String, Square> matrices = new LinkedHashMap<>();
        matrices.put("M", bicycle.m());
        matrices.put("C1", bicycle.c1());
        matrices.put("K0", bicycle.k0());
        matrices.put("K2", bicycle.k2());
        matrices.forEach((name, matrix) -> answer.put(name, matrix.rows()));
    }

    private static Double[] pair(SelfStable range) {
        return new Double[] {range.fromMps(), Console.orNull(range.toMps())};
    }

    private static List<double[]> pairs(Modes modes) {
        return modes.all().stream()
                .map(root -> new double[] {root.re(), root.im()})
                .toList();
    }

    private static Double orNull(OptionalDouble speed) {
        return speed.isPresent() ? speed.getAsDouble() : null;
    }
}
