package rakeline.shell;

import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.assertj.swing.edt.GuiActionRunner;
import rakeline.engine.jshell.Sessions;
import rakeline.worksheet.WorksheetFile;

/** Draws the README's picture of the window: a worksheet that has run, as a window of a usual size shows it. */
public final class WindowPicture {
    private static final int WIDTH = 1366;
    private static final int HEIGHT = 768;

    private WindowPicture() {}

    /**
     * Runs a worksheet in a window and writes what the window shows.
     *
     * @param args the worksheet, and the PNG to write
     */
    public static void main(String[] args) throws IOException {
        Path page = Path.of(args[0]);
        Path home = Files.createTempDirectory("rakeline-picture");
        try (OpenWindow window = OpenWindow.running(home, WIDTH, HEIGHT, Sessions::open)) {
            window.with(WorksheetFile.read(Files.readAllBytes(page), page.toString()));
            ImageIO.write(
                    GuiActionRunner.execute(
                            () -> picture(window.window().frame().getRootPane())),
                    "png",
                    Path.of(args[1]).toFile());
        }
        System.exit(0);
    }

    private static BufferedImage picture(Container pane) {
        BufferedImage image = new BufferedImage(pane.getWidth(), pane.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pane.paint(pen);
        pen.dispose();
        return image;
    }
}
