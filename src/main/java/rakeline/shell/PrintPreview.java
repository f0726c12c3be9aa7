package rakeline.shell;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import rakeline.handout.PageSheet;
import rakeline.handout.Paper;
import rakeline.handout.Pdf;
import rakeline.handout.PrintedPages;
import rakeline.quantity.Refusal;
import rakeline.shell.look.Fit;
import rakeline.shell.look.Look;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;

/** The pages as they will be printed, from the PDF that is printed. */
final class PrintPreview {
    private static final double DOTS_PER_INCH = 72;

    private final Bench bench;
    private final Look look;
    private final Background background;
    private final Component over;
    private final JDialog dialog;
    private final JLabel picture = new JLabel("", SwingConstants.CENTER);
    private final JLabel place = new JLabel();
    private final JComboBox<Paper> papers = new JComboBox<>(Paper.values());
    private final JCheckBox withAnswers = new JCheckBox("With answers");
    private Pdf pdf;
    private Optional<PrintedPages> pages = Optional.empty();
    private int page;

    /**
     * @param over the component that it opens over
     */
    PrintPreview(Component over, Bench bench, Look look, Background background, Pdf pdf, Paper paper) {
        this.over = over;
        dialog = new JDialog(SwingUtilities.getWindowAncestor(over), "Print");
        this.bench = bench;
        this.look = look;
        this.background = background;
        papers.setSelectedItem(paper);
        papers.setName("paper");
        papers.getAccessibleContext().setAccessibleName("Paper size");
        withAnswers.setName("with answers");
        place.setName("page");
        picture.setName("printed page");
        take(pdf);
    }

    /**
     * Shows the preview.
     *
     * @param answers whether there are answers, so that it can be with or without them
     * @param remake makes the PDF as chosen
     */
    void show(boolean answers, BiConsumer<Choice, Consumer<Pdf>> remake) {
        papers.addActionListener(event -> remake.accept(choice(), this::take));
        withAnswers.addActionListener(event -> remake.accept(choice(), this::take));
        withAnswers.setVisible(answers);
        dialog.setName("print preview");
        dialog.setContentPane(content());
        bind("ESCAPE", this::end);
        bind("PAGE_UP", () -> turn(-1));
        bind("PAGE_DOWN", () -> turn(1));
        Fit.over(over, dialog, look.px(720), look.px(940));
        dialog.setVisible(true);
    }

    /** What is printed on, and for whom. */
    record Choice(Paper paper, PageSheet.Edition edition) {}

    private Choice choice() {
        return new Choice((Paper) papers.getSelectedItem(), Questions.edition(withAnswers));
    }

    private void bind(String key, Runnable work) {
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> work.run(), KeyStroke.getKeyStroke(key), JComponent.WHEN_IN_FOCUSED_WINDOW);
    }

    private JPanel content() {
        JPanel line = new JPanel(new FlowLayout(FlowLayout.CENTER, look.space(2), look.space(2)));
        line.add(button("Previous page", () -> turn(-1)));
        line.add(place);
        line.add(button("Next page", () -> turn(1)));
        line.add(papers);
        line.add(withAnswers);
        line.add(button("Print", this::print));
        line.add(button("Close", this::end));
        JPanel content = new JPanel(new BorderLayout());
        content.add(scrolled(), BorderLayout.CENTER);
        content.add(line, BorderLayout.SOUTH);
        return content;
    }

    private JScrollPane scrolled() {
        JScrollPane scroll = new JScrollPane(picture);
        scroll.setBorder(look.line(0, 0, 1, 0));
        scroll.getViewport().setBackground(look.wash());
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(8));
        bind("UP", () -> roll(scroll, -1));
        bind("DOWN", () -> roll(scroll, 1));
        return scroll;
    }

    private static void roll(JScrollPane scroll, int by) {
        JScrollBar bar = scroll.getVerticalScrollBar();
        bar.setValue(bar.getValue() + by * bar.getUnitIncrement());
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
        double density = dialog.getGraphicsConfiguration().getDefaultTransform().getScaleX();
        double finely = DOTS_PER_INCH * look.scale() * density;
        background.run(
                () -> all.picture(wanted, finely),
                drawn -> {
                    if (wanted == page && pages.equals(Optional.of(all))) {
                        picture.setIcon(new Fine(drawn, density));
                    }
                },
                bench::notice);
    }

    /** A picture with so many dots to each pixel of the window. */
    private record Fine(BufferedImage picture, double density) implements Icon {
        @Override
        public void paintIcon(Component on, Graphics pen, int x, int y) {
            pen.drawImage(picture, x, y, getIconWidth(), getIconHeight(), null);
        }

        @Override
        public int getIconWidth() {
            return (int) Math.round(picture.getWidth() / density);
        }

        @Override
        public int getIconHeight() {
            return (int) Math.round(picture.getHeight() / density);
        }
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
            throw new Refusal("Printing failed: " + e.getMessage() + ".", e);
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
