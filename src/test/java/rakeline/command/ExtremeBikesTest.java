package rakeline.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.catalogue.BikeWriter;
import rakeline.geometry.ExtremeBikes;

/**
 * Every command that takes a bike, on bicycles whose numbers lie at the ends of what is accepted: none is refused but for
 * what the bicycle does not give, for a change that cannot be built, or for a body that cannot be weighed, and each ends
 * with its own code. {@code -Dsoak.bikes=400} for more.
 */
@Tag("slow")
class ExtremeBikesTest {
    private static final int BIKES = Integer.getInteger("soak.bikes", 6);
    private static final long SEED = Long.getLong("soak.seed", 1);

    private static final String ROAD = "demo-data/bikes/road-xs.bike.json";
    private static final String RIDER = "demo-data/riders/rider-178.rider.json";
    private static final List<String> COMMANDS = List.of(
            "check BIKE",
            "measure BIKE --json",
            "measure BIKE --rider " + RIDER,
            "measure BIKE --hands drops",
            "reconcile BIKE --json",
            "limits BIKE --json",
            "limits BIKE " + ROAD + " --rider " + RIDER,
            "refit BIKE --set wheels.front.tyreMm=40 --json",
            "refit BIKE --set fork.sagMm=10",
            "refit BIKE --set fork.axleToCrownMm=400 --set fork.offsetMm=45",
            "refit BIKE --set wheels.both.beadSeatMm=584 --set wheels.both.tyreMm=47",
            "sweep BIKE --vary frame.headAngleDeg=50:85:17 --track trailMm,toeRoomMm,toeContactSteerDeg",
            "sweep BIKE --vary wheels.both.tyreMm=15:130:57 --track trailMm,bbHeightMm --json",
            "sweep BIKE --vary frame.headAngleDeg=60:80:10 --hold trailMm --by fork.offsetMm --track wheelbaseMm",
            "sweep BIKE --vary frame.chainstayMm=300:900:300 --track weaveSpeedMps,capsizeSpeedMps",
            "map BIKE --vary frame.headAngleDeg=60:80:10 --vary fork.offsetMm=0:80:40 --track toeRoomMm",
            "seek BIKE --vary fork.offsetMm=-100:120 --target trailMm=58",
            "solve BIKE --vary frame.headAngleDeg=50:85 --vary fork.offsetMm=-100:120 --target trailMm=58"
                    + " --target frontCentreMm=600",
            "sensitivity BIKE --vary frame.headAngleDeg,fork.offsetMm --track trailMm,toeRoomMm",
            "spread BIKE --draws 100 --track trailMm,toeRoomMm",
            "sizes BIKE " + ROAD + " --floor frontCentreMm=600",
            "sizes BIKE " + ROAD + " --floor toeRoomMm=0 --hold trailMm",
            "compare BIKE " + ROAD + " --json",
            "compare BIKE " + ROAD + " --same-contact --hands tops,hoods,drops",
            "compare BIKE --with cockpit.stemLengthMm=90,wheels.front.tyreMm=32",
            "compare BIKE --with fork.offsetMm=45",
            "posture BIKE --rider " + RIDER,
            "posture BIKE --rider " + RIDER + " --crank 160,170 --hands-move",
            "match BIKE --to " + ROAD + " --parts demo-data/parts/road.parts.json --top 2",
            "match " + ROAD + " --to BIKE --parts demo-data/parts/road.parts.json --top 2",
            "report BIKE " + ROAD + " --rider " + RIDER + " --parts demo-data/parts/road.parts.json --html OUT.html",
            "turn BIKE --speed 15 --lean 10",
            "turn BIKE --speed 15 --radius 8 --json",
            "turn BIKE --speed 15 --lean 10 --change cockpit.stemLengthMm=60",
            "stability BIKE",
            "stability BIKE --rider " + RIDER + " --speeds 0:10:5 --json",
            "response BIKE --speed 5 --seconds 1",
            "export BIKE");

    /** What the definitions ask to be refused. */
    private static final Pattern ASKED_FOR = Pattern.compile(
            "does not give|lacks|cannot be built|cannot be weighed|is not whole|says nowhere|no whole cockpit"
                    + "|length of the fork .* is not known|cannot move as the saddle does");

    @TempDir
    Path folder;

    @Test
    void noCommandRefusesWhatTheDefinitionsAccept() {
        List<String> wrong = IntStream.range(0, BIKES)
                .mapToObj(this::bike)
                .flatMap(this::wrongOf)
                .toList();
        assertThat(wrong).isEmpty();
    }

    private Path bike(int number) {
        try {
            Path file = folder.resolve("extreme-" + number + ".bike.json");
            return Files.write(file, BikeWriter.write(ExtremeBikes.extreme(new Random(SEED * 1_000_003 + number))));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Stream<String> wrongOf(Path bike) {
        List<String> wrong = new ArrayList<>();
        for (String command : COMMANDS) {
            String line = command.replace("BIKE", bike.toString())
                    .replace("OUT", folder.resolve("report").toString());
            CommandLineRun run = run(line);
            if (isWrong(line, run)) {
                wrong.add(command.replace("BIKE", bike.getFileName().toString()) + " -> " + run.code() + " "
                        + run.messages());
            }
        }
        return wrong.stream();
    }

    private static boolean isWrong(String line, CommandLineRun run) {
        return (run.data() + run.messages()).matches("(?s).*(Exception|\\tat |NaN|Infinity|definite).*")
                || !endsAsItShould(line, run);
    }

    private static boolean endsAsItShould(String line, CommandLineRun run) {
        return switch (run.code()) {
            case 0 -> true;
            case 1 -> line.startsWith("check") || line.startsWith("reconcile");
            default -> run.data().isEmpty() && ASKED_FOR.matcher(run.messages()).find();
        };
    }

    /** A command that breaks off, which no bicycle may make it do, ends with 3 and says where. */
    private static CommandLineRun run(String line) {
        try {
            return CommandLineRun.of(line.split(" ", -1));
        } catch (RuntimeException brokenOff) {
            return new CommandLineRun(
                    3,
                    "",
                    brokenOff + " at " + List.of(brokenOff.getStackTrace()).subList(0, 3));
        }
    }
}
