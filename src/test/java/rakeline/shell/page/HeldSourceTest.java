package rakeline.shell.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rakeline.shell.page.HeldSource.Held;

class HeldSourceTest {
    private static final Held TRAIL_BY_OFFSET = Held.ofKeys("trailMm", Double.NaN, "fork.offsetMm");

    private static String with(String text, Held held) {
        return HeldSource.of(text).orElseThrow().with(Optional.ofNullable(held));
    }

    @Test
    void whatIsHeldIsPutBehindTheRange() {
        assertThat(with("sweep(it).over(HEAD_ANGLE, 69, 74).track(TRAIL).chart()", TRAIL_BY_OFFSET))
                .isEqualTo("sweep(it).over(HEAD_ANGLE, 69, 74).hold(\"trailMm\").by(\"fork.offsetMm\").track(TRAIL)"
                        + ".chart()");
    }

    @Test
    void whereCallsHaveLinesOfTheirOwnItGetsOneToo() {
        assertThat(with("sweep(it)\n    .over(HEAD_ANGLE, 69, 74)\n    .chart()", TRAIL_BY_OFFSET))
                .isEqualTo("sweep(it)\n    .over(HEAD_ANGLE, 69, 74)\n    .hold(\"trailMm\").by(\"fork.offsetMm\")\n"
                        + "    .chart()");
    }

    @Test
    void somethingElseTakesThePlaceOfWhatIsHeld() {
        assertThat(with(
                        "sweep(it).over(\"x\", 1, max(2, 3)).hold(TRAIL, 58).by(FORK_OFFSET).chart()",
                        Held.ofKeys("toeRoomMm", 0, "crank.lengthMm")))
                .isEqualTo("sweep(it).over(\"x\", 1, max(2, 3)).hold(\"toeRoomMm\", 0).by(\"crank.lengthMm\").chart()");
    }

    @Test
    void holdingNothingElseTakesItAway() {
        assertThat(with("sweep(it)\n  .over(X, 1, 2)\n  .hold(TRAIL).by(OFFSET)\n  .chart()", null))
                .isEqualTo("sweep(it)\n  .over(X, 1, 2)\n  .chart()");
    }

    @Test
    void whatIsHeldNowIsRead() {
        assertThat(HeldSource.of("sweep(it).over(X, 1, 2).hold(TRAIL, 58.5).by(\"fork.offsetMm\")")
                        .orElseThrow()
                        .now())
                .contains(new Held("TRAIL", 58.5, "\"fork.offsetMm\""));
    }

    @Test
    void wordsInStringsAndCommentsAreNoCalls() {
        assertThat(HeldSource.of("// sweep(it).over(X)\nvar s = \"sweep(a)\"; sweep(it).over(X, 1, 2).chart()"))
                .isPresent();
    }

    @Test
    void aSnippetOfAnotherFormIsNotRecognised() {
        assertThat(HeldSource.of("for (Bike b : all) { sweep(b).over(X, 1, 2); sweep(b).over(Y, 1, 2); }"))
                .isEmpty();
        assertThat(HeldSource.of("sweep(it).over(X, 1, 2).hold(TRAIL, trail).by(OFFSET)"))
                .isEmpty();
        assertThat(HeldSource.of("sweep(it).over(X, 1")).isEmpty();
        assertThat(HeldSource.of("draw(it)")).isEmpty();
    }
}
