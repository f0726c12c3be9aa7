package rakeline.shell;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.ImageIcon;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import rakeline.handout.Paper;
import rakeline.handout.Pdf;
import rakeline.handout.PrintedPages;
import rakeline.quantity.Refusal;
import rakeline.shell.look.Look;
import rakeline.shell.page.Bench;

/** The pages as they will be printed, from the PDF that is printed. */
final class PrintPreview {
    private static final double DOTS_PER_INCH = 72;

    private final Bench bench;
    private final Look look;
    private final Background background;
    private final JDialog dialog = new JDialog();
    private final JLabel picture = new JLabel();
    private final JLabel place = new JLabel();
    private final JComboBox<Paper> papers = new JComboBox<>(Paper.values());
    private Pdf pdf;
    private Optional<PrintedPages> pages = Optional.empty();
    private int page;

    PrintPreview(Bench bench, Look look, Background background, Pdf pdf, Paper paper) {
        this.bench = bench;
        this.look = look;
        this.background = background;
        papers.setSelectedItem(paper);
        papers.setName("paper");
        place.setName("page");
        picture.setName("printed page");
        take(pdf);
    }

    /**
     * Shows the preview.
     *
     * @param remake makes the PDF for another paper
     */
    void show(BiConsumer<Paper, Consumer<Pdf>> remake) {
        papers.addActionListener(event -> remake.accept((Paper) papers.getSelectedItem(), this::take));
        dialog.setTitle("Print");
        dialog.setName("print preview");
        dialog.setContentPane(content());
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> end(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.setSize(look.px(720), look.px(820));
        dialog.setLocationRelativeTo(null);
        dialog.setVisible(true);
    }

    private JPanel content() {
        JPanel line = new JPanel(new FlowLayout(FlowLayout.CENTER, look.space(2), look.space(2)));
        line.add(button("Page before", () -> turn(-1)));
        line.add(place);
        line.add(button("Next page", () -> turn(1)));
        line.add(papers);
        line.add(button("Print", this::print));
        line.add(button("Close", this::end));
        JPanel content = new JPanel(new BorderLayout());
        content.add(new JScrollPane(picture), BorderLayout.CENTER);
        content.add(line, BorderLayout.SOUTH);
        return content;
    }

    private static JButton button(String words, Runnable work) {
        JButton button = new JButton(words);
        button.addActionListener(event -> work.run());
        return button;
    }

    private void take(Pdf taken) {
        background.run(() -> PrintedPages.of(taken), opened -> put(taken, opened), bench::notice);
    }

    private void put(Pdf taken, PrintedPages opened) {
        letGo();
        pdf = taken;
        pages = Optional.of(opened);
        turn(0);
    }

    private void turn(int by) {
        pages.ifPresent(all -> {
            page = Math.max(0, Math.min(all.count() - 1, page + by));
            place.setText("Page " + (page + 1) + " of " + all.count());
            picture.getAccessibleContext().setAccessibleName("Page " + (page + 1) + " as it will be printed");
            draw(all, page);
        });
    }

    private void draw(PrintedPages all, int wanted) {
        double finely = DOTS_PER_INCH * look.scale();
        background.run(
                () -> all.picture(wanted, finely),
                drawn -> {
                    if (wanted == page && pages.equals(Optional.of(all))) {
                        picture.setIcon(new ImageIcon(drawn));
                    }
                },
                bench::notice);
    }

    private void print() {
        if (pages.isEmpty()) {
            return;
        }
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName(bench.model().page().title());
        PrintedPages printed = PrintedPages.of(pdf);
        job.setPageable(printed.pageable());
        if (job.printDialog()) {
            background.run(() -> printed(job, printed), bench::say, bench::notice);
            end();
        } else {
            printed.close();
        }
    }

    private static String printed(PrinterJob job, PrintedPages pages) {
        try (pages) {
            job.print();
            return "handed to the printer";
        } catch (PrinterException e) {
            throw new Refusal("The printer did not take it: " + e.getMessage() + ".", e);
        }
    }

    private void end() {
        dialog.dispose();
        letGo();
    }

    /** After what is still to be drawn of them. */
    private void letGo() {
        pages.ifPresent(all -> background.run(
                () -> {
                    all.close();
                    return all;
                },
                closed -> {},
                bench::notice));
        pages = Optional.empty();
    }
}
