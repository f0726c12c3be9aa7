package rakeline.shell;

import java.awt.BorderLayout;
import java.awt.Component;
import java.io.File;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.filechooser.FileNameExtensionFilter;
import rakeline.desk.Backups;
import rakeline.desk.Difference;
import rakeline.desk.Draft;
import rakeline.desk.Recovery;
import rakeline.desk.Saving;
import rakeline.handout.PageSheet;
import rakeline.shell.look.Ask;
import rakeline.shell.look.Look;
import rakeline.shell.look.Words;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/** What the window asks before it goes on. */
final class Questions {
    /** The width of a title that is typed, in columns. */
    private static final int TITLE = 32;

    /** What becomes of changes that are not saved. */
    enum Unsaved {
        SAVE,
        DO_NOT_SAVE,
        GO_BACK
    }

    /** What becomes of a page that was not saved when the program ended. */
    enum Recovered {
        BRING_BACK,
        LET_GO,
        LATER
    }

    /** What becomes of a file that another program has changed. */
    enum Changed {
        KEEP_MINE,
        OVERWRITE,
        LOAD_THEIRS,
        NOT_NOW
    }

    /** A version that a later one replaced. */
    record Earlier(Backups.Version version, Worksheet page) {
        @Override
        public String toString() {
            return "until " + moment(version.until());
        }
    }

    private final Supplier<Component> over;
    private final Supplier<Look> look;

    /**
     * @param over the component that the questions stand over
     * @param look in which versions are compared
     */
    Questions(Supplier<Component> over, Supplier<Look> look) {
        this.over = over;
        this.look = look;
    }

    /** What the questions stand over. */
    Component place() {
        return over.get();
    }

    /** What was not saved, beside what was. */
    Recovered recover(Recovery.Found found) {
        Draft draft = found.draft();
        String file = draft.file().map(path -> "Its file is " + path).orElse("It was never saved");
        String saved = found.stored().isPresent() ? "Last saved" : "No saved version";
        JComponent page = page(
                "Rakeline ended before “" + draft.page().title() + "” was saved.\n" + file
                        + "; the last change that was kept is of " + moment(draft.at()) + ".\n"
                        + "Bringing it back is one step, which Undo takes back; what is let go stays among the earlier"
                        + " versions.",
                new Comparison(look.get(), saved, "Earlier version", found.differences()));
        int answer = ask(page, "Unsaved changes from last time", "Restore", "Discard", "Ask at the next start");
        return answer == 0 ? Recovered.BRING_BACK : answer == 1 ? Recovered.LET_GO : Recovered.LATER;
    }

    /** What another program has written, beside what stands here. */
    Changed changed(Saving.Theirs theirs, List<Difference> differences) {
        String words = "Another program has changed " + theirs.file() + " since it was read or saved here.";
        if (theirs.page().isEmpty()) {
            JComponent page = page(words + " It is no worksheet now: " + theirs.said(), new JPanel());
            int answer = ask(page, "The file has changed", "Save my version as a new file", "Overwrite", "Not now");
            return answer == 0 ? Changed.KEEP_MINE : answer == 1 ? Changed.OVERWRITE : Changed.NOT_NOW;
        }
        JComponent page = page(words, new Comparison(look.get(), "This page", "The file", differences));
        int answer = ask(
                page,
                "The file has changed",
                "Save my version as a new file",
                "Overwrite",
                "Reload from the file",
                "Not now");
        return answer < 0 ? Changed.NOT_NOW : Changed.values()[answer];
    }

    /** One of the versions before, each beside what stands now. */
    Optional<Worksheet> version(Worksheet now, List<Earlier> versions) {
        JComboBox<Earlier> choice = new JComboBox<>(versions.toArray(Earlier[]::new));
        choice.setName("versions");
        JPanel page = new JPanel(new BorderLayout(0, look.get().space(2)));
        page.add(
                page(
                        "Each save keeps the version that it replaces. Bringing one back is one step, which Undo takes"
                                + " back.",
                        choice),
                BorderLayout.NORTH);
        Runnable compare = () -> {
            Worksheet then = versions.get(choice.getSelectedIndex()).page();
            Comparison comparison =
                    new Comparison(look.get(), "Then", "Now", Difference.between(then, now.withView(then.view())));
            while (page.getComponentCount() > 1) {
                page.remove(1);
            }
            page.add(comparison, BorderLayout.CENTER);
            page.revalidate();
        };
        choice.addActionListener(event -> compare.run());
        compare.run();
        boolean taken = ask(page, "Earlier versions", "Restore", "Cancel") == 0;
        return taken ? Optional.of(versions.get(choice.getSelectedIndex()).page()) : Optional.empty();
    }

    private JComponent page(String words, JComponent shown) {
        JPanel page = new JPanel(new BorderLayout(0, look.get().space(3)));
        JTextArea text = Words.paragraph(words, look.get().body(), look.get().ink());
        text.setName("question");
        text.setSize(shown.getPreferredSize().width, Integer.MAX_VALUE);
        page.add(text, BorderLayout.NORTH);
        page.add(shown, BorderLayout.CENTER);
        return page;
    }

    private int ask(JComponent page, String title, String... answers) {
        return Ask.among(over.get(), page, title, 0, answers);
    }

    private static String moment(Instant instant) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM)
                .withLocale(Locale.getDefault(Locale.Category.FORMAT))
                .withZone(ZoneId.systemDefault())
                .format(instant);
    }

    Unsaved unsaved(String title) {
        int answer = Ask.among(
                over.get(),
                "“" + title + "” has changes that are not saved.",
                "Unsaved changes",
                0,
                "Save",
                "Do not save",
                "Cancel");
        return switch (answer) {
            case 0 -> Unsaved.SAVE;
            case 1 -> Unsaved.DO_NOT_SAVE;
            default -> Unsaved.GO_BACK;
        };
    }

    boolean mayReplace(Path file) {
        int answer =
                Ask.among(over.get(), file.getFileName() + " is there already.", "Save as", 1, "Replace", "Cancel");
        return answer == 0;
    }

    /** @param gaps for each row without a result which and why, in one sentence */
    boolean mayHandOut(List<String> gaps) {
        JTextArea list = Words.paragraph(
                String.join("\n", gaps), look.get().body(), look.get().ink());
        list.setName("gaps");
        list.setSize(look.get().px(420), Integer.MAX_VALUE);
        String words = gaps.size() == 1
                ? "One row of this page has no up-to-date result; its place says so."
                : gaps.size() + " rows of this page have no up-to-date result; their places say so.";
        return ask(page(words, list), "The page has gaps", "Cancel", "Make it anyway") == 1;
    }

    Optional<String> title(String present) {
        JTextField field = new JTextField(present, TITLE);
        field.setName("title");
        field.getAccessibleContext().setAccessibleName("Title of the page");
        field.selectAll();
        Ask.first(field);
        int answer = Ask.among(over.get(), new Object[] {"Title of the page", field}, "Title", 0, "Apply", "Cancel");
        return Optional.of(field.getText().strip()).filter(title -> answer == 0 && !title.isEmpty());
    }

    Optional<Path> fileToOpen(Path folder) {
        JFileChooser chooser = chooser(folder);
        return chooser.showOpenDialog(over.get()) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    Optional<Path> fileToSave(Path proposed) {
        JFileChooser chooser = chooser(proposed.getParent());
        chooser.setSelectedFile(proposed.toFile());
        return chooser.showSaveDialog(over.get()) == JFileChooser.APPROVE_OPTION
                ? Optional.of(withExtension(chooser.getSelectedFile()))
                : Optional.empty();
    }

    /** What a handout is to be: its file, and for whom. */
    record Handout(Path file, PageSheet.Edition edition) {}

    /**
     * A file for a handout: HTML, or PDF where its name ends so.
     *
     * @param answers whether there are answers, so that it can be with or without them
     */
    Optional<Handout> fileToHand(Path proposed, boolean answers) {
        JFileChooser chooser = new JFileChooser(proposed.getParent().toFile());
        chooser.setFileFilter(new FileNameExtensionFilter("Handouts (*.html, *.pdf)", "html", "pdf"));
        chooser.setSelectedFile(proposed.toFile());
        JCheckBox with = new JCheckBox("With answers");
        with.setName("with answers");
        with.setToolTipText("Without, answers are left out, with lines to write");
        if (answers) {
            chooser.setAccessory(with);
        }
        return chooser.showSaveDialog(over.get()) == JFileChooser.APPROVE_OPTION
                ? Optional.of(new Handout(chooser.getSelectedFile().toPath(), edition(with)))
                : Optional.empty();
    }

    static PageSheet.Edition edition(JCheckBox withAnswers) {
        return withAnswers.isSelected() ? PageSheet.Edition.WITH_ANSWERS : PageSheet.Edition.STUDENTS;
    }

    /** Files of a kind to be read; none where the person went back. */
    List<Path> filesToOpen(Path folder, String what, String ending) {
        JFileChooser chooser = new JFileChooser(folder.toFile());
        chooser.setMultiSelectionEnabled(true);
        chooser.setFileFilter(new FileNameExtensionFilter(
                what + " (*" + ending + ")", ending.substring(ending.lastIndexOf('.') + 1)));
        return chooser.showOpenDialog(over.get()) == JFileChooser.APPROVE_OPTION
                ? Stream.of(chooser.getSelectedFiles()).map(File::toPath).toList()
                : List.of();
    }

    /** A file to be written, as named; asked again where one is there already. */
    Optional<Path> fileToWrite(Path proposed, String what) {
        JFileChooser chooser = new JFileChooser(proposed.getParent().toFile());
        chooser.setDialogTitle(what);
        chooser.setSelectedFile(proposed.toFile());
        return chooser.showSaveDialog(over.get()) == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                        .filter(file -> !file.toFile().exists() || mayReplace(file))
                : Optional.empty();
    }

    private static JFileChooser chooser(Path folder) {
        JFileChooser chooser = new JFileChooser(folder.toFile());
        chooser.setFileFilter(new FileNameExtensionFilter("Worksheets (*" + WorksheetFile.EXTENSION + ")", "rakeline"));
        return chooser;
    }

    private static Path withExtension(File file) {
        String name = file.getName();
        return name.endsWith(WorksheetFile.EXTENSION)
                ? file.toPath()
                : file.toPath().resolveSibling(name + WorksheetFile.EXTENSION);
    }
}
