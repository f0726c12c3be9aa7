package rakeline.command;

import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import rakeline.catalogue.BikeFile;
import rakeline.catalogue.Bytes;
import rakeline.catalogue.DynamicsFile;
import rakeline.catalogue.PartsFile;
import rakeline.catalogue.RiderFile;
import rakeline.engine.Inspection;
import rakeline.engine.jshell.Sessions;
import rakeline.geometry.Bike;
import rakeline.handling.Ride;
import rakeline.quantity.Quantity;
import rakeline.quantity.Reading;
import rakeline.quantity.Refusal;
import rakeline.study.Reconcile;
import rakeline.study.Residual;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** Reads files and says what does not fit, without running anything. */
@Command(
        name = "check",
        description = "Reads bikes, riders, parts, dynamics and worksheets and says what does not fit; runs nothing.",
        footer = {
            "",
            "Exit 0 where all is clean, 1 where a charted number is further from the derived one than rounding explains,",
            "where moments of inertia are those of no body, or where a snippet does not parse, 2 where a file is refused."
        })
final class CheckCommand extends Work {
    @Parameters(arity = "1..*", paramLabel = "FILE", description = "Files of any of these kinds.")
    private List<String> files = List.of();

    private static final String WORKSHEET = "rakeline/worksheet";
    private static final Map<String, String> KINDS = Map.of(
            WorksheetFile.EXTENSION,
            WORKSHEET,
            BikeFile.ENDING,
            BikeFile.FORMAT,
            RiderFile.ENDING,
            RiderFile.FORMAT,
            PartsFile.ENDING,
            PartsFile.FORMAT,
            DynamicsFile.ENDING,
            DynamicsFile.FORMAT);

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
            return check(file, kind(file));
        } catch (Refusal refusal) {
            console().message(refusal.getMessage());
            return REFUSED;
        }
    }

    /** A rider, parts and parameters are clean where they can be read; a bike's chart must also agree. */
    private int check(String file, String kind) {
        switch (kind) {
            case WORKSHEET -> {
                return checkPage(file);
            }
            case RiderFile.FORMAT -> Paths.rider(file);
            case PartsFile.FORMAT -> Paths.stock(file);
            case DynamicsFile.FORMAT -> Paths.dynamics(file);
            case BikeFile.FORMAT -> {
                return checkBike(file, Paths.bike(file));
            }
            default ->
                throw new Refusal(file + ": format is \"" + kind + "\"; accepted are " + BikeFile.FORMAT + ", "
                        + RiderFile.FORMAT + ", " + PartsFile.FORMAT + ", " + DynamicsFile.FORMAT + " and "
                        + WORKSHEET + ".");
        }
        return DONE;
    }

    /** What a file's name says it is, or else what it says itself. */
    private static String kind(String file) {
        return KINDS.entrySet().stream()
                .filter(kind -> file.endsWith(kind.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseGet(() -> Paths.format(file));
    }

    private int checkPage(String file) {
        return checkPage(file, WorksheetFile.read(Bytes.read(Paths.of(file), WorksheetFile.LIMIT_BYTES), file));
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
        if (Ride.of(bike).massKg() instanceof Reading.Nowhere nowhere) {
            console().message(file + ": " + nowhere.reason() + ".");
            code = FAILED;
        }
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
        return quantity.label() + " (" + quantity.key() + ") is " + quantity.format(residual.charted()) + ", but "
                + quantity.format(residual.derived())
                + " follows from the rest of the chart: the difference of "
                + quantity.formatWithUnit(residual.residual())
                + " is more than the " + quantity.formatWithUnit(residual.tolerance())
                + " that rounding explains.";
    }
}
