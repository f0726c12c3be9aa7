package rakeline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Threads that share a piece of work. */
class CrewTest {
    @ParameterizedTest
    @CsvSource({"1, 0", "1, 1", "1, 1000", "2, 1", "2, 1000", "7, 3", "7, 1000"})
    void everyPartIsDoneOnce(int threads, int count) {
        AtomicIntegerArray done = new AtomicIntegerArray(count);
        Crew.of(threads).each(count, done::incrementAndGet, Progress.UNWATCHED);
        assertThat(IntStream.range(0, count).allMatch(i -> done.get(i) == 1)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void resultsComeInOrder(int threads) {
        List<Integer> squares = Crew.of(threads).map(100, i -> i * i, Progress.UNWATCHED);
        assertThat(squares)
                .isEqualTo(IntStream.range(0, 100).mapToObj(i -> i * i).toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5})
    void aPartThatBreaksEndsTheWork(int threads) {
        assertThatThrownBy(() -> Crew.of(threads)
                        .each(
                                1000,
                                i -> {
                                    if (i == 700) {
                                        throw new IllegalStateException("part " + i);
                                    }
                                },
                                Progress.UNWATCHED))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("part 700");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void anInterruptedCallerEndsTheWork(int threads) {
        Thread.currentThread().interrupt();
        assertThatThrownBy(() -> Crew.of(threads).each(1000, i -> {}, Progress.UNWATCHED))
                .isInstanceOf(CancellationException.class);
        assertThat(Thread.interrupted()).isTrue();
    }
}
