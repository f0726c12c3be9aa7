package rakeline.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import rakeline.desk.RackView;
import rakeline.desk.SafeFile;
import rakeline.shell.page.Background;
import rakeline.shell.page.Bench;
import rakeline.shell.rack.Host;

/** The window as the rack sees it. */
final class RackHost implements Host {
    private final Bench bench;
    private final Vault vault;
    private final Background background;
    private final Questions questions;
    private final Supplier<Path> userFolder;
    private final Remembered<RackView> view;

    RackHost(
            Bench bench,
            Vault vault,
            Background background,
            Questions questions,
            Supplier<Path> userFolder,
            Remembered<RackView> view) {
        this.bench = bench;
        this.vault = vault;
        this.background = background;
        this.questions = questions;
        this.userFolder = userFolder;
        this.view = view;
    }

    @Override
    public <T> void aside(Supplier<T> work, Consumer<T> done, Consumer<String> refused) {
        background.run(work, done, refused);
    }

    @Override
    public SafeFile disk() {
        return vault.disk();
    }

    @Override
    public Path userFolder() {
        return userFolder.get();
    }

    @Override
    public RackView view() {
        return view.now();
    }

    @Override
    public void keep(UnaryOperator<RackView> change) {
        view.change(change, bench::notice);
    }

    private Path folder() {
        return bench.model().origin().folder().orElseGet(userFolder);
    }

    @Override
    public List<Path> filesToOpen(String what, String ending) {
        return questions.filesToOpen(folder(), what, ending);
    }

    @Override
    public Optional<Path> fileToSave(String proposed, String what, String ending) {
        return questions.fileToWrite(folder().resolve(proposed), what);
    }
}
