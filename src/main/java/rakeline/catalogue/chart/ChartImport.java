package rakeline.catalogue.chart;

import java.util.List;
import java.util.Map;
import rakeline.geometry.Bike;
import rakeline.quantity.Input;

/**
 * What was understood of a chart.
 *
 * @param bikes one for each size that is plain throughout
 * @param understood the headings that were used
 * @param leftOut the headings that were not, each with its reason
 * @param notes what was solved or assumed, in sentences
 * @param doubts the cells that are not plain; a size with one is not among the bikes, and none is where a heading is
 *     doubtful
 */
public record ChartImport(
        List<Bike> bikes, List<Understood> understood, List<Doubt> leftOut, List<String> notes, List<Doubt> doubts) {
    public ChartImport {
        bikes = List.copyOf(bikes);
        understood = List.copyOf(understood);
        leftOut = List.copyOf(leftOut);
        notes = List.copyOf(notes);
        doubts = List.copyOf(doubts);
    }

    /**
     * A heading that was used.
     *
     * @param unit as read: mm, cm, in or °; empty where its cells are no numbers
     */
    public record Understood(String place, String heading, String key, String unit) {}

    /**
     * A cell that is not plain.
     *
     * @param place as {@code row 3, column 5}; empty where a number is missing altogether
     * @param text of the cell
     * @param reason a sentence that ends with a full stop or a question mark
     */
    public record Doubt(String place, String text, String reason) {
        static Doubt of(Cell cell, String reason) {
            return new Doubt(cell.place(), cell.text().strip(), reason);
        }

        /** Place, text and reason in one sentence. */
        public String sentence() {
            return (place.isEmpty() ? "" : place + " ") + (text.isEmpty() ? "" : "\"" + text + "\": ") + reason;
        }
    }

    /**
     * What is to be taken of a chart.
     *
     * @param file the file's name without folder, for sizes that have no name
     * @param series put before a size: {@code Road} for {@code Road M}; may be empty
     * @param set numbers for every size, over those of the chart
     */
    public record Wanted(String file, String series, Map<Input, Double> set) {
        public Wanted {
            set = Map.copyOf(set);
        }
    }

    /** Whether every cell was plain. */
    public boolean isWhole() {
        return doubts.isEmpty();
    }
}
