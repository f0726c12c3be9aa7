package rakeline.desk;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The rack as it is kept from one start to the next: how it is looked at, the bikes on it, and what was typed that does
 * not stand in a bike's file.
 *
 * @param columns keys of inputs and measures; empty for the usual ones
 * @param lengths the unit of lengths: mm, cm or in
 * @param isOpen whether it stands open beneath a page
 * @param chosen who rides, and what is compared how
 * @param bikes those on the rack in order: a file, or the path of a bike that comes with the program
 * @param unfinished in the order in which they were begun
 */
public record RackView(
        List<String> columns,
        String lengths,
        boolean isOpen,
        Chosen chosen,
        List<String> bikes,
        List<Unfinished> unfinished) {
    /**
     * What was chosen above the rack and above its comparison.
     *
     * @param rider the path of the rider's file; empty for none
     * @param hands where they are, in a word
     * @param contact whose contact points are on all bikes: empty for each bike's own, else {@code rider} or a bike as in
     *     {@link RackView#bikes}
     * @param parts the path of the file of stock parts; empty for none
     * @param at where bikes are drawn over each other, in a word
     * @param onlyColumns whether only the numbers of the table are compared
     */
    public record Chosen(String rider, String hands, String contact, String parts, String at, boolean onlyColumns) {
        /** Nobody rides, each bike has its own contact points, no parts are exchanged. */
        public static Chosen first() {
            return new Chosen("", "", "", "", "", false);
        }
    }

    /**
     * What was typed on a bike and does not stand in its file.
     *
     * @param file the bike's own, or the path of one that comes with the program; empty for one that has no file yet
     * @param name the bike's
     * @param numbers by key, those whose groups are not whole
     * @param open the cells that were not left, by key, as typed
     * @param written the bike file as it is to be written; empty where nothing waits to be written
     * @param before the bike files that it was changed from: what the file held, and what was on its way to it
     */
    public record Unfinished(
            String file,
            String name,
            Map<String, Double> numbers,
            Map<String, String> open,
            String written,
            List<String> before) {
        public Unfinished {
            numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
            open = Collections.unmodifiableMap(new LinkedHashMap<>(open));
            before = List.copyOf(before);
        }

        /** Numbers alone. */
        public Unfinished(String file, String name, Map<String, Double> numbers) {
            this(file, name, numbers, Map.of(), "", List.of());
        }
    }

    public RackView {
        columns = List.copyOf(columns);
        bikes = List.copyOf(bikes);
        unfinished = List.copyOf(unfinished);
    }

    /** The usual columns in millimetres, closed. */
    public static RackView first() {
        return new RackView(List.of(), "mm", false, Chosen.first(), List.of(), List.of());
    }

    /** The same, open or closed. */
    public RackView opened(boolean open) {
        return new RackView(columns, lengths, open, chosen, bikes, unfinished);
    }
}
