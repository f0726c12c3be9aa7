package rakeline.desk;

import java.util.Optional;
import rakeline.quantity.Refusal;
import rakeline.worksheet.Row;

/**
 * What the user has set.
 *
 * @param typePercent size of type, {@value #SMALLEST_TYPE} to {@value #LARGEST_TYPE} % of the usual
 * @param workerMegabytes memory of the process that runs rows, {@value #LEAST_MEMORY} to {@value #MOST_MEMORY} MB
 * @param timeLimitSeconds after which a row is stopped unless it sets its own, 1 to
 *     {@value rakeline.worksheet.Row#LONGEST_TIME_LIMIT}
 * @param folder the user's Rakeline folder; empty: the usual one
 * @param followsLinks whether a row may read what a symbolic link in a page's folder leads to outside of it
 */
public record Preferences(
        Theme theme,
        int typePercent,
        int workerMegabytes,
        int timeLimitSeconds,
        Optional<String> folder,
        boolean followsLinks) {
    public static final int SMALLEST_TYPE = 100;
    public static final int LARGEST_TYPE = 200;
    public static final int LEAST_MEMORY = 128;
    public static final int MOST_MEMORY = 16384;

    /** The look of the window. */
    public enum Theme {
        LIGHT,
        DARK,
        CONTRAST
    }

    public Preferences {
        check("the size of type", typePercent, SMALLEST_TYPE, LARGEST_TYPE, "%");
        check("the worker's memory", workerMegabytes, LEAST_MEMORY, MOST_MEMORY, "MB");
        check("the time limit", timeLimitSeconds, 1, Row.LONGEST_TIME_LIMIT, "s");
    }

    private static void check(String what, int value, int least, int most, String unit) {
        if (value < least || value > most) {
            throw new Refusal(what + " is " + value + " " + unit + "; accepted is " + least + ".." + most + ".");
        }
    }

    /** As before anything was set. */
    public static Preferences standard() {
        return new Preferences(Theme.LIGHT, 100, 512, 30, Optional.empty(), false);
    }

    public Preferences withTheme(Theme newTheme) {
        return new Preferences(newTheme, typePercent, workerMegabytes, timeLimitSeconds, folder, followsLinks);
    }

    public Preferences withTypePercent(int percent) {
        return new Preferences(theme, percent, workerMegabytes, timeLimitSeconds, folder, followsLinks);
    }

    public Preferences withWorkerMegabytes(int megabytes) {
        return new Preferences(theme, typePercent, megabytes, timeLimitSeconds, folder, followsLinks);
    }

    public Preferences withTimeLimitSeconds(int seconds) {
        return new Preferences(theme, typePercent, workerMegabytes, seconds, folder, followsLinks);
    }

    public Preferences withFolder(Optional<String> newFolder) {
        return new Preferences(theme, typePercent, workerMegabytes, timeLimitSeconds, newFolder, followsLinks);
    }

    public Preferences following(boolean links) {
        return new Preferences(theme, typePercent, workerMegabytes, timeLimitSeconds, folder, links);
    }
}
