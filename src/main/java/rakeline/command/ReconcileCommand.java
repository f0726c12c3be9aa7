package rakeline.command;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import rakeline.figure.ReconcileTable;
import rakeline.figure.Table;
import rakeline.figure.TextTable;
import rakeline.study.Crew;
import rakeline.study.Reconcile;
import rakeline.study.Residual;
import rakeline.study.Suspect;
import rakeline.study.Vocabulary;

/** Holds the charted numbers of a bike against what follows from the others. */
@Command(
        name = "reconcile",
        description =
                "Compares charted numbers with derived ones and says which single number, changed to what, would make them agree.",
        footer = {
            "",
            "A residual is charted minus derived; its tolerance is what rounding to charted.stepMm and charted.stepDeg",
            "explains. A suspect is one number that, changed alone, brings every residual within its tolerance; most",
            "likely first. Those that this chart cannot tell from it are named in sameAs and follow it.",
            "--json prints {\"bike\", \"residuals\": {key: {\"charted\", \"derived\", \"residual\", \"tolerance\",",
            "\"within\"}}, \"suspects\": [{\"key\", \"charted\", \"wouldBe\", \"sameAs\": [keys]}]}."
        })
final class ReconcileCommand extends Work {
    @Mixin
    private Subject subject = new Subject();

    @Mixin
    private Output output = new Output();

    private final Vocabulary vocabulary;

    ReconcileCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        Reconcile reconciled = Reconcile.of(vocabulary, subject.ride().bike(), Crew.onAllCores(), progress());
        Table residuals = ReconcileTable.residuals(reconciled);
        output.give(console(), residuals, residuals, () -> text(reconciled, residuals), () -> asJson(reconciled));
        return DONE;
    }

    private static String text(Reconcile reconciled, Table residuals) {
        String table = reconciled.residuals().isEmpty() ? "" : TextTable.write(residuals) + "\n";
        return table + String.join("\n", ReconcileTable.sentences(reconciled)) + "\n";
    }

    private static Map<String, Object> asJson(Reconcile reconciled) {
        Map<String, Object> residuals = new LinkedHashMap<>();
        reconciled
                .residuals()
                .forEach(residual -> residuals.put(residual.quantity().key(), asJson(residual)));
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("bike", reconciled.bike().name());
        json.put("residuals", residuals);
        json.put(
                "suspects",
                reconciled.suspects().stream().map(ReconcileCommand::asJson).toList());
        return json;
    }

    private static Map<String, Object> asJson(Residual residual) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("charted", residual.charted());
        json.put("derived", residual.derived());
        json.put("residual", residual.residual());
        json.put("tolerance", residual.tolerance());
        json.put("within", residual.isWithin());
        return json;
    }

    private static Map<String, Object> asJson(Suspect suspect) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("key", suspect.key());
        json.put("charted", suspect.charted());
        json.put("wouldBe", suspect.wouldBe());
        json.put("sameAs", suspect.sameAs());
        return json;
    }
}
