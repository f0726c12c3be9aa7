package rakeline.figure.paint;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Makes a drawing fit to stand beside others in one document. */
final class SvgIds {
    private static final Pattern REFERENCE = Pattern.compile("url\\(#([^)]+)\\)");

    /** What only a drawing that runs or stands alone needs. */
    private static final List<String> NEEDLESS = List.of("contentScriptType", "contentStyleType", "zoomAndPan");

    private SvgIds() {}

    /** Puts a word before every id and every reference to one, and gives the root that word as its id. */
    static void under(String id, Element root) {
        NodeList all = root.getElementsByTagName("*");
        IntStream.range(0, all.getLength()).forEach(i -> under(id, all.item(i).getAttributes()));
        NEEDLESS.forEach(root::removeAttribute);
        root.setAttribute("id", id);
    }

    private static void under(String id, NamedNodeMap attributes) {
        IntStream.range(0, attributes.getLength()).mapToObj(attributes::item).forEach(node -> under(id, node));
    }

    private static void under(String id, Node attribute) {
        String value = attribute.getNodeValue();
        if (attribute.getNodeName().equals("id")) {
            attribute.setNodeValue(id + "-" + value);
        } else if (attribute.getNodeName().endsWith("href") && value.startsWith("#")) {
            attribute.setNodeValue("#" + id + "-" + value.substring(1));
        } else {
            attribute.setNodeValue(REFERENCE.matcher(value).replaceAll("url(#" + id + "-$1)"));
        }
    }
}
