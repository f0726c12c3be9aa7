package rakeline.handout;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rakeline.figure.PlainText;

/** XHTML being written. Whatever is given as text comes out as text; elements end in the order in which they began. */
final class Markup {
    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /**
     * Begins an element.
     *
     * @param attributes name and value by turns
     */
    Markup open(String name, String... attributes) {
        out.append('<').append(name);
        put(attributes);
        out.append('>');
        open.push(name);
        return this;
    }

    /** Ends the element that began last. */
    Markup close() {
        out.append("</").append(open.pop()).append('>');
        return this;
    }

    /** An element without content, as {@code br}. */
    Markup lone(String name, String... attributes) {
        out.append('<').append(name);
        put(attributes);
        out.append(" />");
        return this;
    }

    /** An element that holds words alone. */
    Markup element(String name, String words, String... attributes) {
        return open(name, attributes).text(words).close();
    }

    Markup text(String words) {
        out.append(escaped(words));
        return this;
    }

    /** What is well-formed already. */
    Markup put(CharSequence wellFormed) {
        out.append(wellFormed);
        return this;
    }

    Markup line() {
        out.append('\n');
        return this;
    }

    private void put(String... attributes) {
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            out.append(escaped(attributes[i + 1])).append('"');
        }
    }

    private static String escaped(String words) {
        return Arrays.stream(LINE_END.split(words, -1)).map(Markup::escapedLine).collect(Collectors.joining("\n"));
    }

    private static String escapedLine(String line) {
        return PlainText.oneLine(line)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException(open.peek() + " is not closed");
        }
        return out.toString();
    }
}
