package rakeline.handout;

import java.util.List;
import java.util.stream.IntStream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Turns a document's headings into the outline that a PDF reader shows beside the pages. */
final class Outline {
    private static final List<String> HEADINGS = List.of("h2", "h3");

    private Outline() {}

    /** Adds, in the head, what the PDF's writer makes the outline from. */
    static void add(Document document) {
        Element bookmarks = document.createElement("bookmarks");
        NodeList all = document.getElementsByTagName("*");
        List<Element> headings = IntStream.range(0, all.getLength())
                .mapToObj(all::item)
                .map(Element.class::cast)
                .filter(element -> HEADINGS.contains(element.getTagName()))
                .toList();
        headings.forEach(heading -> parent(bookmarks, heading).appendChild(bookmark(document, heading)));
        document.getElementsByTagName("head").item(0).appendChild(bookmarks);
    }

    /** A lesser heading stands under the last greater one. */
    private static Node parent(Element bookmarks, Element heading) {
        boolean isUnder = heading.getTagName().equals("h3") && bookmarks.getLastChild() != null;
        return isUnder ? bookmarks.getLastChild() : bookmarks;
    }

    private static Element bookmark(Document document, Element heading) {
        Element bookmark = document.createElement("bookmark");
        bookmark.setAttribute("name", heading.getTextContent());
        bookmark.setAttribute("href", "#" + heading.getAttribute("id"));
        return bookmark;
    }
}
