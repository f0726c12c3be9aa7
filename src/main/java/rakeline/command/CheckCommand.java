package rakeline.command;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Bytes;
import rakeline.engine.Inspection;
import rakeline.engine.jshell.Sessions;
import rakeline.geometry.Bike;
import rakeline.quantity.Quantity;
import rakeline.quantity.Refusal;
import rakeline.study.Reconcile;
import rakeline.study.Residual;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** Reads files and says what does not fit, without running anything. */
@Command(
        name = "check",
        description = "Reads bike files and worksheets and says what does not fit; nothing is run.",
        footer = {
            "",
            "Exit 0 where all is clean, 1 where a charted number is further from the derived one than rounding explains",
            "or a snippet does not parse, 2 where a file is refused."
        })
final class CheckCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Bike files and worksheets.")
    private List<String> files = List.of();

    private final Vocabulary vocabulary;

    CheckCommand(Console console, Vocabulary vocabulary) {
        super(console);
        this.vocabulary = vocabulary;
    }

    @Override
    int work() {
        return files.stream().mapToInt(this::check).max().orElse(DONE);
    }

    private int check(String file) {
        try {
            Path path = Paths.of(file);
            return file.endsWith(WorksheetFile.EXTENSION)
                    ? checkPage(file, WorksheetFile.read(Bytes.read(path, WorksheetFile.LIMIT_BYTES), file))
                    : checkBike(file, BikeFile.read(Bytes.read(path, BikeFile.SIZE_LIMIT), file));
        } catch (Refusal refusal) {
            console().message(refusal.getMessage());
            return REFUSED;
        }
    }

    private int checkPage(String file, Worksheet page) {
        PageRunner.checkJava();
        List<Inspection.Finding> findings = Sessions.inspect(page).findings();
        findings.forEach(
                finding -> console().message(PageRunner.place(file, finding.rowName()) + ": " + finding.sentence()));
        return findings.isEmpty() ? DONE : FAILED;
    }

    private int checkBike(String file, Bike bike) {
        int code = DONE;
        for (Residual residual : Reconcile.residuals(vocabulary, bike)) {
            if (!residual.isWithin()) {
                console().message(file + ": " + sentence(residual));
                code = FAILED;
            }
        }
        return code;
    }

    private static String sentence(Residual residual) {
        Quantity quantity = residual.quantity();
        return quantity.key() + " is " + quantity.format(residual.charted()) + ", but "
                + quantity.format(residual.derived())
                + " follows from the rest of the chart: the difference of "
                + quantity.formatWithUnit(residual.residual())
                + " is more than the " + quantity.formatWithUnit(residual.tolerance())
                + " that rounding explains.";
    }
}
