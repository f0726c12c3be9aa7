package rakeline.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rakeline.quantity.Refusal;

class BytesTest {
    @TempDir
    Path folder;

    @Test
    void aFileIsReadWhole() throws IOException {
        Path file = Files.write(folder.resolve("small"), new byte[] {1, 2, 3});
        assertThat(Bytes.read(file, 3)).containsExactly(1, 2, 3);
    }

    @Test
    void aFolderIsRefused() {
        assertThatThrownBy(() -> Bytes.read(folder, 100))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll(folder.toString(), "folder");
    }

    @Test
    void aMissingFileIsRefused() {
        Path missing = folder.resolve("missing.bike.json");
        assertThatThrownBy(() -> Bytes.read(missing, 100))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll(missing.toString(), "does not exist");
    }

    @Test
    void aFileThatMayNotBeReadSaysSo() {
        assertThat(Bytes.unreadable("a.bike.json", new AccessDeniedException("a.bike.json")))
                .hasMessage("a.bike.json cannot be read: you have no permission to.");
    }

    @Test
    void anEmptyFileIsRefused() throws IOException {
        Path empty = Files.createFile(folder.resolve("empty.bike.json"));
        assertThatThrownBy(() -> Bytes.read(empty, 100))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll(empty.toString(), "empty");
    }

    @Test
    void aFileOf50MegabytesIsRefusedWithTheLimit() throws IOException {
        Path large = folder.resolve("large.bike.json");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.setLength(50_000_000);
        }
        assertThatThrownBy(() -> Bytes.read(large, BikeFile.SIZE_LIMIT))
                .isInstanceOf(Refusal.class)
                .hasMessageContainingAll(large.toString(), "1 MB");
    }

    @Test
    void aFileUnderAFileIsRefused() throws IOException {
        Path file = Files.write(folder.resolve("small"), "x".getBytes(StandardCharsets.UTF_8));
        assertThatThrownBy(() -> Bytes.read(file.resolve("inner"), 100)).isInstanceOf(Refusal.class);
    }
}
