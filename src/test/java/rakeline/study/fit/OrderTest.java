package rakeline.study.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Combinations are numbered as a counter counts: the last key fastest, none twice, none left out. */
class OrderTest {
    private static final int BARS = 2;
    private static final int STACKS = 3;
    private static final int STEMS = 4;
    private static final int CRANKS = 2;
    private static final int FORKS = 3;
    private static final int POSTS = 2;
    private static final int TYRES = 3;

    @Test
    void combinationsAreCountedInTheOrderOfTheKeys() {
        Order order = new Order(STACKS, STEMS, CRANKS, FORKS, POSTS, TYRES);
        List<Long> numbers = new ArrayList<>();
        each(
                BARS,
                bar -> each(
                        STACKS,
                        stack -> each(
                                STEMS,
                                stem -> each(
                                        CRANKS,
                                        foot -> each(
                                                FORKS,
                                                fork -> each(
                                                        POSTS,
                                                        seat -> each(
                                                                TYRES,
                                                                tyre -> numbers.add(number(
                                                                        order, bar, stack, stem, foot, fork, seat,
                                                                        tyre)))))))));
        long all = (long) BARS * STACKS * STEMS * CRANKS * FORKS * POSTS * TYRES;
        assertThat(numbers)
                .containsExactlyElementsOf(LongStream.range(0, all).boxed().toList());
    }

    private static long number(Order order, int bar, int stack, int stem, int foot, int fork, int seat, int tyre) {
        return order.of(
                new Mount.Bar(bar, null, null, 0),
                new Mount.Stack(stack, null, null, 0, 0, null, null),
                new Mount.Stem(stem, null, 0, 0, null, 0),
                new Mount.Foot(foot, null, null, null, null, List.of()),
                fork,
                new Mount.Seat(seat, null, null),
                tyre);
    }

    private static void each(int count, IntConsumer act) {
        IntStream.range(0, count).forEach(act);
    }
}
