package rakeline.desk;

import java.nio.file.Path;
import rakeline.worksheet.Worksheet;
import rakeline.worksheet.WorksheetFile;

/**
 * A worksheet's file as it was last read or written here.
 *
 * @param page what it then held
 * @param stamp of its bytes then
 */
public record PageFile(Path file, Worksheet page, Stamp stamp) {

    /**
     * Reads a worksheet, and takes away what a program that was killed while it saved has left beside it.
     *
     * @throws rakeline.quantity.Refusal where the file or what is in it cannot be taken
     */
    public static PageFile open(SafeFile disk, Path file) {
        byte[] bytes = disk.read(file, WorksheetFile.LIMIT_BYTES);
        PageFile read = new PageFile(file, WorksheetFile.read(bytes, file.toString()), Stamp.of(bytes));
        disk.clearLeftovers(file.toAbsolutePath().getParent());
        return read;
    }

    /** Writes a page to a file, whatever is there. */
    public static PageFile create(SafeFile disk, Path file, Worksheet page) {
        return new PageFile(file, page, disk.write(file, WorksheetFile.write(page)));
    }

    /**
     * Writes a later version of the page.
     *
     * @throws rakeline.quantity.Refusal where it cannot be written, or another program has changed the file meanwhile
     */
    public PageFile save(SafeFile disk, Worksheet newPage) {
        return new PageFile(file, newPage, disk.replace(file, WorksheetFile.write(newPage), stamp));
    }

    /** True where another program has changed the file since. */
    public boolean isChanged(SafeFile disk) {
        return disk.isChanged(file, stamp);
    }
}
