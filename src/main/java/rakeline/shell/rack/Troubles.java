package rakeline.shell.rack;

import java.util.List;
import java.util.function.Consumer;

/** What is wrong with files that were looked for: said when it is news, not at every look. */
final class Troubles {
    private final Consumer<String> say;
    private List<String> said = List.of();

    Troubles(Consumer<String> say) {
        this.say = say;
    }

    void say(List<String> sentences) {
        if (!sentences.isEmpty() && !sentences.equals(said)) {
            say.accept(String.join(" ", sentences));
        }
        said = List.copyOf(sentences);
    }
}
