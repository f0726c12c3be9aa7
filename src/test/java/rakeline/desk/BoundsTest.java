package rakeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BoundsTest {
    private static final Bounds SCREEN = new Bounds(0, 0, 1366, 768, false);

    @Test
    void aWindowInsideStaysWhereItIs() {
        Bounds window = new Bounds(10, 20, 800, 600, true);
        assertThat(window.within(SCREEN)).isEqualTo(window);
    }

    @Test
    void aWindowOfAScreenThatIsGoneComesBack() {
        assertThat(new Bounds(-1900, 900, 800, 600, false).within(SCREEN))
                .isEqualTo(new Bounds(0, 168, 800, 600, false));
    }

    @Test
    void aWindowLargerThanTheScreenShrinks() {
        assertThat(new Bounds(0, 0, 1920, 1080, false).within(SCREEN)).isEqualTo(SCREEN);
    }
}
