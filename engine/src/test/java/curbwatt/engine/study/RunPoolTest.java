package curbwatt.engine.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunPoolTest {

    private static final List<Integer> CASES = IntStream.range(0, 200).boxed().toList();

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7})
    void resultsStandInTheOrderOfTheCases(int threads) {
        List<Integer> squares = new RunPool(threads).each(CASES, i -> i * i, StudyWatch.none());

        assertThat(squares).isEqualTo(CASES.stream().map(i -> i * i).toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void theWatchHearsOfEachCaseOnce(int threads) {
        List<Integer> heard = new ArrayList<>();

        new RunPool(threads).each(CASES, i -> i, (done, all) -> heard.add(done));

        assertThat(heard).isEqualTo(CASES.stream().map(i -> i + 1).toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void aWatchThatStopsEndsTheStudyBeforeAllIsDone(int threads) {
        List<Integer> heard = new ArrayList<>();
        StudyWatch impatient = new StudyWatch() {
            @Override
            public void done(int done, int all) {
                heard.add(done);
            }

            @Override
            public boolean isStopped() {
                return heard.size() >= 5;
            }
        };

        assertThatThrownBy(() -> new RunPool(threads).each(CASES, i -> i, impatient))
                .isInstanceOf(StudyStoppedException.class);
        assertThat(heard.size()).isBetween(5, 5 + threads);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void aFaultInOneCaseComesOutAsItIs(int threads) {
        assertThatThrownBy(() -> new RunPool(threads)
                        .each(
                                CASES,
                                i -> {
                                    if (i == 17) {
                                        throw new IllegalArgumentException("case 17");
                                    }
                                    return i;
                                },
                                StudyWatch.none()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("case 17");
    }

    @Test
    void noThreadIsRefused() {
        assertThatThrownBy(() -> new RunPool(0)).hasMessageContaining("threads");
    }
}
