package rakeline.figure.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import rakeline.figure.Samples;

class PngTest {
    @Test
    void thePictureHasTheWidthTimesTheScale() throws Exception {
        byte[] bytes = Png.write(Samples.sweep(), 400, 1.5, Palette.LIGHT);
        assertThat(ImageIO.read(new ByteArrayInputStream(bytes)).getWidth()).isEqualTo(600);
    }

    @Test
    void itsGroundIsTheCard() {
        BufferedImage image = Png.image(Samples.sweep(), 400, 1, Palette.DARK);
        assertThat(image.getRGB(0, 0)).isEqualTo(Palette.DARK.card().getRGB());
    }

    @Test
    void theSameFigureGivesTheSameBytes() {
        assertThat(Png.write(Samples.sideView(), 400, 1, Palette.LIGHT))
                .isEqualTo(Png.write(Samples.sideView(), 400, 1, Palette.LIGHT));
    }
}
