package rakeline.shell;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import rakeline.desk.Backups;
import rakeline.desk.Draft;
import rakeline.desk.Journal;
import rakeline.desk.Recovery;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.page.Origin;
import rakeline.shell.page.PageModel;
import rakeline.worksheet.Worksheet;

/** Keeps the journal of the page on the bench, and brings back what was in journals and among earlier versions. */
final class Rescue implements Bench.View {
    private final Bench bench;
    private final Vault vault;
    private final Background background;
    private final Questions questions;
    private final Filing filing;
    private final Journal journal;
    private Optional<Draft> kept = Optional.empty();

    Rescue(Bench bench, Vault vault, Background background, Questions questions, Filing filing) {
        this.bench = bench;
        this.vault = vault;
        this.background = background;
        this.questions = questions;
        this.filing = filing;
        journal = new Journal(vault.disk(), vault.places(), said -> SwingUtilities.invokeLater(() -> tell(said)));
    }

    private void tell(String trouble) {
        bench.say(
                trouble.isEmpty()
                        ? "changes are backed up again"
                        : "Your changes are not backed up until you save: " + trouble);
    }

    @Override
    public void show(PageModel now) {
        if (now.isSaved()) {
            kept = Optional.empty();
            journal.forget();
        } else if (!isKept(now)) {
            Draft draft = new Draft(
                    now.page(),
                    now.origin().path(),
                    now.allowed(),
                    Clock.systemUTC().instant());
            kept = Optional.of(draft);
            journal.keep(draft);
        }
    }

    private boolean isKept(PageModel now) {
        return kept.filter(draft -> draft.page().equals(now.page())
                        && draft.allowed() == now.allowed()
                        && draft.file().equals(now.origin().path()))
                .isPresent();
    }

    /** The window closes of itself: nothing is left to bring back. Off the event thread. */
    void end() {
        journal.forget();
        journal.close();
    }

    /** Writes what is still to be written and keeps no more; what is kept stays. Off the event thread. */
    void letGo() {
        journal.close();
    }

    /** Asks about each page that a program left unsaved when it ended, until one is brought back. */
    void offer() {
        background.run(() -> Recovery.find(vault.disk(), vault.places()), this::ask, bench::notice);
    }

    private void ask(List<Recovery.Found> all) {
        boolean brought = false;
        for (Recovery.Found found : all) {
            brought = answer(found, brought);
        }
    }

    private boolean answer(Recovery.Found found, boolean brought) {
        Questions.Recovered answer = brought ? Questions.Recovered.LATER : questions.recover(found);
        switch (answer) {
            case BRING_BACK -> bringBack(found);
            case LET_GO -> letGo(found);
            case LATER -> leave(found);
        }
        return brought || answer == Questions.Recovered.BRING_BACK;
    }

    /** The saved version opens with what was not saved as one step upon it, which an undo takes back. */
    private void bringBack(Recovery.Found found) {
        Draft draft = found.draft();
        Worksheet before = found.stored()
                .map(stored -> stored.page())
                .orElseGet(() -> Worksheet.empty(draft.page().title()));
        Origin origin = found.stored().<Origin>map(Origin.OnDisk::new).orElseGet(Origin.New::new);
        bench.open(before, origin, false);
        put(draft.page(), draft.allowed(), "brought back what was not saved");
        background.run(
                () -> {
                    journal.flush();
                    found.discard();
                    return found;
                },
                done -> {},
                bench::notice);
    }

    private void put(Worksheet page, boolean allowed, String words) {
        bench.act(words, before -> page);
        if (allowed) {
            bench.allow();
        }
    }

    private void letGo(Recovery.Found found) {
        background.run(
                () -> {
                    vault.keep(found.draft().file(), found.draft().page());
                    found.discard();
                    return found;
                },
                done -> bench.say("let go; it stays among the earlier versions"),
                bench::notice);
    }

    private void leave(Recovery.Found found) {
        background.run(
                () -> {
                    found.leave();
                    return found;
                },
                done -> bench.say("one page that was not saved is left for the next start"),
                bench::notice);
    }

    /** Lets a person choose among the versions that later ones replaced. */
    void chooseVersion() {
        bench.commit();
        Supplier<List<Questions.Earlier>> reading =
                () -> vault.backups().versions(bench.model().origin().path()).stream()
                        .map(this::earlier)
                        .toList();
        background.run(reading, this::choose, bench::notice);
    }

    private Questions.Earlier earlier(Backups.Version version) {
        return new Questions.Earlier(version, vault.backups().read(version));
    }

    private void choose(List<Questions.Earlier> versions) {
        if (versions.isEmpty()) {
            bench.notice("No earlier version of this page is kept yet; each save keeps the version that it replaces.");
            return;
        }
        questions.version(bench.model().page(), versions).ifPresent(this::takeUp);
    }

    /** Code that was not let run before stops the page until it is allowed. */
    private void takeUp(Worksheet page) {
        boolean allowed = bench.model().allowed() && filing.isTrusted(page);
        if (!allowed) {
            bench.withhold();
        }
        bench.act("an earlier version", before -> page.withView(before.view()));
    }
}
