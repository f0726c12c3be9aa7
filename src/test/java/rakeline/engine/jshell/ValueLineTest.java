package rakeline.engine.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rakeline.engine.Result;
import rakeline.figure.Figure;
import rakeline.figure.Table;

/** Values in words that are the same in every run. */
class ValueLineTest {
    private static Figure table(String title) {
        return new Table(title, List.of(), "", List.of());
    }

    record Grid(String name, double first, Object cells, List<int[]> rows, IntUnaryOperator rule) {}

    static final class Silent {
        @Override
        @SuppressWarnings("ToStringReturnsNull")
        public String toString() {
            return null;
        }
    }

    @Test
    void arraysWithinArraysAreShown() {
        assertThat(ValueLine.of(new int[][] {{1, 2}, {3, 4}})).isEqualTo("[[1, 2], [3, 4]]");
        assertThat(ValueLine.of(List.of(new double[] {1, 2.5}))).isEqualTo("[[1, 2.5]]");
        assertThat(ValueLine.of(Optional.of(new char[] {'a'}))).isEqualTo("Optional[[a]]");
    }

    @Test
    void mapsAreShownInBracesWithWhatTheyHold() {
        assertThat(ValueLine.of(new TreeMap<>(Map.of("a", new double[] {1.5, 2}, "b", new double[0]))))
                .isEqualTo("{a=[1.5, 2], b=[]}");
    }

    @Test
    void aRecordsPartsHaveNoNumberOfAnObject() {
        assertThat(ValueLine.of(new Grid("g@1", 1, new int[] {1, 2}, List.of(new int[] {3}), i -> i)))
                .isEqualTo("Grid[name=g@1, first=1.0, cells=[1, 2], rows=[[3]], rule=a function]");
    }

    @Test
    void figuresThatARowHoldsAreCalledByTheirTitles() {
        assertThat(ValueLine.of(List.of(table("Trail"), table("")))).isEqualTo("[Trail, a figure]");
    }

    @Test
    void anOptionalFigureIsShownAsTheFigure() {
        assertThat(Showing.of(Optional.of(table("Trail")))).isEqualTo(new Result.Shown(table("Trail")));
    }

    @Test
    void aListThatHoldsItselfEnds() {
        List<Object> list = new ArrayList<>();
        list.add(list);
        assertThat(ValueLine.of(list)).isEqualTo("[[[[[…]]]]]");
    }

    @Test
    void aStreamIsNotRunToBeShown() {
        assertThat(ValueLine.of(Stream.of(1, 2))).isEqualTo("a stream");
    }

    @Test
    void whatSaysNullIsSaidSo() {
        assertThat(ValueLine.of(new Silent())).isEqualTo("null");
    }

    @Test
    void longOnesAreCut() {
        assertThat(ValueLine.of(Collections.nCopies(21, 0))).endsWith("0, 0, … 21 in all]");
    }
}
