package rakeline.shell.rack;

import java.nio.file.Path;
import rakeline.desk.Stamp;

/**
 * A bike's own file.
 *
 * @param stamp of what was read from it or written to it last
 */
public record Place(Path file, Stamp stamp) {}
