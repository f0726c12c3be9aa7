package rakeline.handout;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rakeline.figure.Figure;
import rakeline.quantity.Quantity;

/**
 * What a handout asks about the words of its page.
 *
 * @param quantities what a key, or the name of its constant, means
 * @param assumptions what the file of a bike or a rider, by its path as rows name it, leaves to usual values or
 *     assumes; each one sentence
 * @param drawings of what a key means, where there is one
 */
public record Knowledge(
        Function<String, Optional<Quantity>> quantities,
        Function<String, List<String>> assumptions,
        Function<String, Optional<Figure>> drawings) {}
