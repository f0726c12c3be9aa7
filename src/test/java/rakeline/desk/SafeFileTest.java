package rakeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rakeline.quantity.Refusal;

class SafeFileTest {
    private static final byte[] NEW = "what is new".getBytes(UTF_8);
    private static final SafeFile DISK = SafeFile.onDisk();

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void anOldFile() throws IOException {
        file = folder.resolve("page.rakeline");
        Files.writeString(file, "old");
    }

    @Test
    void whatIsWrittenStands() {
        DISK.write(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void aFileThatWasNotThereIsWritten() {
        DISK.write(folder.resolve("other"), NEW);
        assertThat(folder.resolve("other")).hasBinaryContent(NEW);
    }

    @Test
    void theStampIsThatOfWhatWasWritten() {
        assertThat(DISK.write(file, NEW)).isEqualTo(Stamp.of(NEW));
    }

    @Test
    void bytesAreForcedBeforeTheSwapAndNamesAfterIt() {
        FailingDisk disk = FailingDisk.never();
        new SafeFile(disk).write(file, NEW);
        assertThat(disk.taken())
                .containsExactly(
                        "target",
                        "isReadOnly",
                        "room",
                        "create",
                        "write",
                        "copyPermissions",
                        "force",
                        "replace",
                        "forceFolder",
                        "list");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "target",
                "isReadOnly",
                "room",
                "create",
                "write",
                "copyPermissions",
                "force",
                "replace",
                "isWritable",
                "no room",
                "read-only"
            })
    void whicheverStepFailsTheOldContentStands(String step) {
        assertThatThrownBy(() -> failing(step, new IOException("broken")).write(file, NEW))
                .isInstanceOf(Refusal.class);
        assertThat(file).hasContent("old");
    }

    @ParameterizedTest
    @ValueSource(strings = {"create", "write", "copyPermissions", "force", "replace"})
    void whicheverStepFailsNothingIsLeftLyingAbout(String step) throws IOException {
        assertThatThrownBy(() -> failing(step, new IOException("broken")).write(file, NEW))
                .isInstanceOf(Refusal.class);
        assertThat(names()).containsExactly("page.rakeline");
    }

    @Test
    void aFolderThatCannotBeForcedIsNoFailure() {
        failing("forceFolder", new IOException("not on this system")).write(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
    }

    static Stream<Object[]> failures() {
        return Stream.of(
                new Object[] {"write", new IOException("No space left on device"), "the disk is full."},
                new Object[] {"force", new IOException("Disk quota exceeded"), "the disk is full."},
                new Object[] {"no room", new IOException(), "the disk is full."},
                new Object[] {"read-only", new IOException(), "the disk that it lies on may only be read."},
                new Object[] {
                    "create",
                    new FileSystemException("x", null, "Read-only file system"),
                    "the disk that it lies on may only be read."
                },
                new Object[] {"isWritable", new IOException(), "the file may only be read."},
                new Object[] {
                    "create",
                    new AccessDeniedException("x"),
                    "you have no permission to, or its folder may only be read."
                },
                new Object[] {"create", new NoSuchFileException("x"), "it or its folder is not there any more."},
                new Object[] {
                    "replace", new AtomicMoveNotSupportedException("x", "y", "z"), "its disk cannot swap files at once."
                },
                new Object[] {"write", new IOException("Input/output error"), "Input/output error."},
                new Object[] {"write", new IOException(), "the system does not say why."});
    }

    @ParameterizedTest
    @MethodSource("failures")
    void whatIsTheMatterIsSaidInOneSentence(String step, IOException failure, String sentence) {
        assertThatThrownBy(() -> failing(step, failure).write(file, NEW))
                .hasMessage(file + " is not written: " + sentence);
    }

    @Test
    void aFolderThatVanishedIsNamed() {
        Path gone = folder.resolve("gone");
        assertThatThrownBy(() -> DISK.write(gone.resolve("page.rakeline"), NEW))
                .hasMessage(gone.resolve("page.rakeline") + " is not written: the folder " + gone
                        + " is not there (any more).");
    }

    @Test
    void aFolderIsNoFileToWrite() {
        assertThatThrownBy(() -> DISK.write(folder, NEW)).hasMessage(folder + " is a folder; accepted is a file.");
    }

    @Test
    void permissionsAreKept() throws IOException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-r-x"));
        DISK.write(file, NEW);
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-rw-r-x");
    }

    @Test
    void aLinkIsFollowedAndStays() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("page.rakeline"));
        DISK.write(link, NEW);
        assertThat(link).isSymbolicLink().hasBinaryContent(NEW);
    }

    @Test
    void whatALinkLeadsToIsWritten() throws IOException {
        DISK.write(Files.createSymbolicLink(folder.resolve("link"), Path.of("page.rakeline")), NEW);
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void aLinkThatLeadsNowhereYetIsWrittenThere() throws IOException {
        DISK.write(Files.createSymbolicLink(folder.resolve("link"), Path.of("later")), NEW);
        assertThat(folder.resolve("later")).hasBinaryContent(NEW);
    }

    @Test
    void linksInACircleAreSaid() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("a"), Path.of("b"));
        Files.createSymbolicLink(folder.resolve("b"), Path.of("a"));
        assertThatThrownBy(() -> DISK.write(link, NEW))
                .hasMessage(link + " is not written: its links run in a circle.");
    }

    @Test
    void aFileThatNobodyTouchedIsReplaced() {
        DISK.replace(file, NEW, Stamp.of("old".getBytes(UTF_8)));
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void aFileThatSomeoneElseChangedIsNotOverwritten() throws IOException {
        Stamp known = Stamp.of("old".getBytes(UTF_8));
        Files.writeString(file, "theirs");
        assertThatThrownBy(() -> DISK.replace(file, NEW, known))
                .hasMessage(file + " is not written: another program has changed it since it was read here. Save under"
                        + " another name to keep both.");
        assertThat(file).hasContent("theirs");
    }

    @Test
    void aFileTouchedWithoutAChangeIsReplaced() throws IOException {
        Files.writeString(file, "old");
        DISK.replace(file, NEW, Stamp.of("old".getBytes(UTF_8)));
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void aFileThatIsGoneIsWrittenAnew() throws IOException {
        Files.delete(file);
        DISK.replace(file, NEW, Stamp.of("old".getBytes(UTF_8)));
        assertThat(file).hasBinaryContent(NEW);
    }

    @Test
    void whatIsThereIsRead() {
        assertThat(DISK.read(file, 3)).isEqualTo("old".getBytes(UTF_8));
    }

    @Test
    void aFileOverTheLimitIsNotRead() {
        assertThatThrownBy(() -> DISK.read(file, 2)).hasMessage(file + " is larger than 0.000002 MB.");
    }

    @Test
    void aFolderIsNoFileToRead() {
        assertThatThrownBy(() -> DISK.read(folder, 9)).hasMessage(folder + " is a folder; accepted is a file.");
    }

    @Test
    void aFileThatIsNotThereIsSaid() {
        Path gone = folder.resolve("gone");
        assertThatThrownBy(() -> DISK.read(gone, 9)).hasMessage(gone + " does not exist.");
    }

    @Test
    void aFileWithoutPermissionIsSaid() {
        assertThatThrownBy(() -> failing("read", new AccessDeniedException("x")).read(file, 9))
                .hasMessage(file + " cannot be read: you have no permission to, or its folder may only be read.");
    }

    private static SafeFile failing(String step, IOException failure) {
        return new SafeFile(new FailingDisk(step, failure));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).toList();
        }
    }
}
