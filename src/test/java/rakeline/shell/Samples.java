package rakeline.shell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rakeline.worksheet.Row;
import rakeline.worksheet.Worksheet;

/** Pages for the window's tests. */
final class Samples {
    private Samples() {}

    /** A page of every kind of row. */
    static Worksheet slackHeadAngles() {
        return new Worksheet(
                "Why small frames get slack head angles",
                "",
                Optional.of(Worksheet.Audience.EDUCATOR),
                List.of(),
                Worksheet.View.WRITE,
                List.of(),
                List.of(
                        new Row.Note("n1", """
                                # Why small frames get slack head angles

                                The wheels stay the same size while the rider gets smaller. Somewhere the front
                                wheel meets the foot. Turn the dial and watch what it *costs* to keep them apart.

                                - **Trail** grows as the head angle slackens.
                                - `toeRoomMm` says how far the shoe could still move forward.
                                """),
                        Row.Snippet.of("r1", "Bike xs = pick(\"Bike\", bikes());"),
                        Row.Snippet.of("r2", """
                                double head = dial("Head angle", "°", 69, 74, 0.1, 71.3);
                                double crank = dial("Crank", "mm", 145, 175, 2.5, 165);
                                double turned = dial("Bar turned", "°", 0, 60, 1, 15);
                                Bike it = xs.with("frame.headAngleDeg", head);"""),
                        Row.Snippet.of("r3", "draw(it)"),
                        Row.Snippet.of("r4", "drawPlan(it)"),
                        Row.Snippet.of("r5", """
                                // every step is solved anew
                                sweep(it).over("frame.headAngleDeg", 69, 74)
                                    .track("trailMm", "wheelbaseMm", "toeRoomMm")
                                    .chart()"""),
                        new Row.Note(
                                "n2",
                                "Now hold the trail instead. The offset has to grow by about 6 mm for every degree."),
                        Row.Snippet.of("r6", "System.out.println(\"seven sizes\");"),
                        Row.Snippet.of("r7", "fail(it)"),
                        Row.Snippet.of("r8", "measures(it).table()").folded(true)),
                Map.of(),
                Map.of());
    }
}
