package rakeline.shell;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import rakeline.catalogue.Assumptions;
import rakeline.catalogue.Roots;
import rakeline.desk.Version;
import rakeline.handout.Imprint;
import rakeline.handout.Knowledge;
import rakeline.handout.Laid;
import rakeline.handout.PageSheet;
import rakeline.handout.Paper;
import rakeline.handout.Pdf;
import rakeline.handout.RunPage;
import rakeline.help.Glossary;
import rakeline.prelude.Pictures;
import rakeline.shell.look.Look;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.page.PageModel;
import rakeline.study.Vocabulary;
import rakeline.worksheet.Answer;
import rakeline.worksheet.WorksheetFile;

/**
 * Makes handouts and prints of the page as it stands, once it stands still. It never runs anything: a page whose rows
 * may not run has none.
 */
final class HandoutMaker implements Bench.View {
    private static final String NOT_ALLOWED =
            "This page may not run yet, so there is nothing to hand out. Allow it to run first.";
    private static final Set<String> LETTER_LANDS = Set.of("US", "CA", "MX", "PH", "CL", "CO", "CR", "GT", "PA", "VE");

    private final Bench bench;
    private final Vault vault;
    private final Questions questions;
    private final Supplier<Look> look;
    private final Background background = new Background("handouts");
    private Optional<Consumer<PageModel>> pending = Optional.empty();

    /** @param look in which a print is shown before it is printed */
    HandoutMaker(Bench bench, Vault vault, Questions questions, Supplier<Look> look) {
        this.bench = bench;
        this.vault = vault;
        this.questions = questions;
        this.look = look;
    }

    /** Asks where to, then makes the handout. */
    void askForFile() {
        if (mayMake()) {
            questions.fileToHand(proposed(), hasAnswers()).ifPresent(this::askThenMake);
        }
    }

    private boolean hasAnswers() {
        return !Answer.of(bench.model().page()).isEmpty();
    }

    private void askThenMake(Questions.Handout wanted) {
        Path file = withEnding(wanted.file());
        background.run(
                () -> vault.disk().exists(file),
                there -> {
                    if (!there || questions.mayReplace(file)) {
                        make(file, wanted.edition());
                    }
                },
                bench::notice);
    }

    /** Makes the handout once the page stands still: PDF where the file's name ends so, else HTML. */
    void make(Path file, PageSheet.Edition edition) {
        begin(now -> background.run(
                () -> write(file, lay(now, edition)),
                said -> bench.notice(("The handout is in " + file + ". " + said).strip()),
                bench::notice));
    }

    /** Shows the pages as they would be printed, once the page stands still. */
    void print() {
        begin(now -> pages(
                now,
                new PrintPreview.Choice(usualPaper(), PageSheet.Edition.STUDENTS),
                pdf -> new PrintPreview(questions.place(), bench, look.get(), background, pdf, usualPaper())
                        .show(hasAnswers(), (choice, done) -> pages(now, choice, done))));
    }

    private void pages(PageModel now, PrintPreview.Choice choice, Consumer<Pdf> done) {
        background.run(() -> lay(now, choice.edition()).pdf(choice.paper()), done, bench::notice);
    }

    /** Opens the page of what every input and measure means. */
    void openKeys() {
        background.run(() -> KeysPage.open(vault.disk(), vault.places()), bench::notice, bench::notice);
    }

    boolean isPending() {
        return pending.isPresent();
    }

    /** Forgets what was asked for, as long as the page still runs. */
    void giveUp() {
        pending = Optional.empty();
        bench.say("no handout is made");
    }

    private boolean mayMake() {
        if (!bench.model().allowed()) {
            bench.notice(NOT_ALLOWED);
        }
        return bench.model().allowed();
    }

    private void begin(Consumer<PageModel> then) {
        if (mayMake()) {
            bench.commit();
            pending = Optional.of(then);
            bench.say("the handout is made once the page stands still");
        }
    }

    @Override
    public void show(PageModel now) {
        if (pending.isPresent() && now.allowed() && now.isSettled()) {
            Consumer<PageModel> then = pending.get();
            pending = Optional.empty();
            SwingUtilities.invokeLater(() -> askThenMake(now, then));
        }
    }

    /** A page with gaps is handed out only where the person says so. */
    private void askThenMake(PageModel now, Consumer<PageModel> then) {
        List<String> gaps = new RunPage(now.page(), now.outcomes()).gaps();
        if (!gaps.isEmpty() && !questions.mayHandOut(gaps)) {
            bench.say("no handout is made");
            return;
        }
        bench.say("");
        then.accept(now);
    }

    private Laid lay(PageModel now, PageSheet.Edition edition) {
        byte[] content = WorksheetFile.write(now.page());
        Imprint imprint = new Imprint(
                Version.number(),
                ZonedDateTime.now(ZoneId.systemDefault()),
                List.of(Imprint.Source.of(name(now), content)));
        RunPage run = new RunPage(now.page(), now.outcomes());
        return PageSheet.of(run, knowledge(now), edition, false, imprint).lay();
    }

    private static String name(PageModel now) {
        return now.origin()
                .path()
                .map(path -> path.getFileName().toString())
                .orElse("the page “" + now.page().title() + "”");
    }

    private Knowledge knowledge(PageModel now) {
        Vocabulary vocabulary = Vocabulary.standard();
        Glossary glossary = Glossary.of(vocabulary.quantities(), vocabulary.constants());
        Roots roots = vault.roots(now.origin().folder());
        return new Knowledge(glossary::find, path -> Assumptions.of(roots, path), Pictures::ofKey);
    }

    private String write(Path file, Laid laid) {
        if (!isPdf(file)) {
            vault.disk().write(file, laid.html());
            return "";
        }
        Pdf pdf = laid.pdf(usualPaper());
        vault.disk().write(file, pdf.bytes());
        return pdf.said();
    }

    private Path proposed() {
        Path folder = bench.model().origin().folder().orElse(vault.places().worksheets());
        String name =
                bench.model().page().title().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return folder.resolve((name.isEmpty() ? "handout" : name) + ".html");
    }

    private static Path withEnding(Path file) {
        String name = file.getFileName().toString();
        return isPdf(file) || name.toLowerCase(Locale.ROOT).endsWith(".html")
                ? file
                : file.resolveSibling(name + ".html");
    }

    private static boolean isPdf(Path file) {
        return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".pdf");
    }

    /** The paper of the land. */
    private static Paper usualPaper() {
        return LETTER_LANDS.contains(Locale.getDefault().getCountry()) ? Paper.LETTER : Paper.A4;
    }

    /** Lets what was begun end, and takes no more. */
    void close() {
        background.close();
    }
}
