package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curbwatt.engine.simulation.Simulation;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

/** Which work goes on, which is given up, and who waits for whom. */
class TabWorkTest {

    private final TabWork work = new TabWork();

    private TabWork.Ticket run(String tab) {
        return work.begin("run", Optional.of(tab));
    }

    @Test
    void theNewestOfATabStopsTheOneBeforeInTheMiddleOfItsRun() {
        ReadyScenario scenario = new Scenarios().demo("lane-watch");
        TabWork.Ticket first = run("a");
        Watch watch = Watch.over(first, 60, () -> {});
        List<Double> seenS = new CopyOnWriteArrayList<>();
        assertThatThrownBy(() -> Simulation.of(scenario.vehicle(), scenario.scene())
                        .run(watch.and(step -> {
                            if (seenS.isEmpty()) {
                                run("a");
                            }
                            seenS.add(step.endS());
                        })))
                .isInstanceOfSatisfying(
                        StoppedException.class,
                        why -> assertThat(why.superseded()).isTrue());
        assertThat(seenS.get(seenS.size() - 1)).isLessThan(scenario.scene().durationS());
    }

    @Test
    void tabsAndKindsOfWorkLeaveEachOtherAlone() {
        TabWork.Ticket first = run("a");
        run("b");
        work.begin("map", Optional.of("a"));
        assertThat(first.superseded()).isFalse();
        assertThat(work.size()).isEqualTo(3);
    }

    @Test
    void whatIsDoneIsForgottenAndNothingElse() {
        TabWork.Ticket first = run("a");
        TabWork.Ticket second = run("a");
        work.end(first);
        assertThat(work.size()).isEqualTo(1);
        assertThat(second.superseded()).isFalse();
        work.end(second);
        assertThat(work.size()).isZero();
    }

    @Test
    void workWhoseTimeIsOverIsGivenUp() {
        Watch watch = Watch.over(run("a"), -1, () -> {});
        assertThatThrownBy(watch::look)
                .isInstanceOfSatisfying(
                        StoppedException.class,
                        why -> assertThat(why.superseded()).isFalse());
    }

    @Test
    void twoStudiesTakeTurns() throws InterruptedException {
        Turns turns = Turns.of(1);
        CountDownLatch inside = new CountDownLatch(1);
        CountDownLatch otherWaits = new CountDownLatch(1);
        List<String> order = new CopyOnWriteArrayList<>();
        Watch watch = Watch.over(run("a"), 60, () -> {});
        Thread other = new Thread(() -> {
            await(inside);
            otherWaits.countDown();
            turns.take(Watch.over(run("b"), 60, () -> {}), () -> order.add("other"));
        });
        other.start();
        turns.take(watch, () -> {
            inside.countDown();
            await(otherWaits);
            while (turns.waiting() == 0) {
                Thread.onSpinWait();
            }
            return order.add("first");
        });
        turns.take(watch, () -> order.add("second"));
        other.join();
        assertThat(order).containsExactly("first", "other", "second");
    }

    /** Whoever waits looks now and then whether its work is still wanted, and must not lose its place by that. */
    @Test
    void theLineKeepsItsOrderHoweverLongItWaits() throws InterruptedException {
        Turns turns = Turns.of(1);
        List<Integer> order = new CopyOnWriteArrayList<>();
        List<Integer> inLine = List.of(0, 1, 2, 3, 4, 5);
        List<Thread> waiting = new ArrayList<>();
        turns.take(Watch.over(run("holder"), 60, () -> {}), () -> {
            for (int place : inLine) {
                Watch watch = Watch.over(run("tab " + place), 60, () -> {});
                Thread next = new Thread(() -> turns.take(watch, () -> order.add(place)));
                next.start();
                waiting.add(next);
                while (turns.waiting() <= place) {
                    Thread.onSpinWait();
                }
                pause(45);
            }
            return pause(150);
        });
        for (Thread each : waiting) {
            each.join();
        }
        assertThat(order).isEqualTo(inLine);
        assertThat(turns.free()).isEqualTo(1);
    }

    @Test
    void whoeverIsGivenUpLeavesTheLineAndNoPlaceIsLost() {
        Turns turns = Turns.of(1);
        turns.take(Watch.over(run("holder"), 60, () -> {}), () -> {
            Watch late = Watch.over(run("late"), -1, () -> {});
            assertThatThrownBy(() -> turns.take(late, () -> "never")).isInstanceOf(StoppedException.class);
            return turns.waiting();
        });
        assertThat(turns.waiting()).isZero();
        assertThat(turns.free()).isEqualTo(1);
    }

    private static boolean pause(long lengthMs) {
        try {
            Thread.sleep(lengthMs);
            return true;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
