package curbwatt.engine.study.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.HeldBackTruck;
import curbwatt.engine.study.HeldBackTruck.Build;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Vehicles that the search was not made on: every setting and every change of the vehicle by a run of its own, built by hand
 * here, and the best of them by looking at all.
 */
class BruteSettingsTest {

    private static final List<Double> LEVELS_V = List.of(10.9, 11.4, 11.8, 12.2, 12.9);
    private static final List<Double> DELAYS_S = List.of(5.0, 60.0, 600.0);

    /** Twice the usual where the range allows: rooms are small, and fewer runs measure them. */
    private static final Spread WIDE = new Spread(0.2, 0.2, 0.3, 0.5, 15, 0.2);

    private static final double STEP = 0.25;
    private static final double FINE = STEP / 16;
    private static final double MOST = 3;
    private static final double SHARE = 1 / Math.sqrt(5);

    /** Sensor, delay, age, air, load: one thing at a time, and the two in which five come together. */
    private static final List<double[]> CHANGES = List.of(
            new double[] {-1, 0, 0, 0, 0},
            new double[] {1, 0, 0, 0, 0},
            new double[] {0, -1, 0, 0, 0},
            new double[] {0, 1, 0, 0, 0},
            new double[] {0, 0, 1, 0, 0},
            new double[] {0, 0, 0, -1, 0},
            new double[] {0, 0, 0, 1, 0},
            new double[] {0, 0, 0, 0, 1},
            new double[] {0, 0, 0, 0, -1},
            new double[] {-SHARE, -SHARE, SHARE, -SHARE, SHARE},
            new double[] {SHARE, SHARE, SHARE, -SHARE, SHARE});

    static Stream<HeldBackTruck> trucks() {
        return HeldBackTruck.all().stream();
    }

    @ParameterizedTest
    @MethodSource("trucks")
    void noSettingHasMoreRoomThanTheRecommendedOne(HeldBackTruck truck) {
        SettingsPlan plan = new SettingsPlan(Optional.of(HeldBackTruck.CUTOFF), LEVELS_V, DELAYS_S, List.of(), WIDE);
        SettingsResult found = new SettingsStudy(truck.question(truck.at(11.5, 30)), plan)
                .run(new RunPool(2), StudyWatch.none(), CellListener.none());
        double most = -1;
        double ofBest = -1;
        int working = 0;
        Cell best = found.recommendation().orElseThrow().cell();
        for (Cell cell : found.map().cells()) {
            double room = room(truck, cell.setting().tripV(), cell.setting().tripDelayS());
            assertThat(cell.works()).as("%s", cell.setting()).isEqualTo(room >= 0);
            working += room >= 0 ? 1 : 0;
            most = Math.max(most, room);
            ofBest = cell.equals(best) ? room : ofBest;
        }
        assertThat(working).as("some work, not all").isBetween(1, LEVELS_V.size() * DELAYS_S.size() - 1);
        assertThat(ofBest).isEqualTo(most);
        assertThat(found.recommendation().orElseThrow().room().roomFactor()).isCloseTo(ofBest, within(1e-9));
    }

    /** Room by looking at every fine step on the way; below 0: it does not even work as the vehicle stands. */
    private static double room(HeldBackTruck truck, double tripV, double tripDelayS) {
        if (!stands(truck, tripV, tripDelayS, 0)) {
            return -1;
        }
        double room = 0;
        while (room < MOST && stands(truck, tripV, tripDelayS, room + STEP)) {
            room += STEP;
        }
        for (double further = room + FINE; further < room + STEP - FINE / 2 && room < MOST; further += FINE) {
            if (!stands(truck, tripV, tripDelayS, further)) {
                return further - FINE;
            }
        }
        return room == MOST ? room : room + STEP - FINE;
    }

    private static boolean stands(HeldBackTruck truck, double tripV, double tripDelayS, double distance) {
        for (double[] change : CHANGES) {
            double[] by = change.clone();
            for (int i = 0; i < by.length; i++) {
                by[i] *= distance;
            }
            if (!isMet(truck, tripV, tripDelayS, by)) {
                return false;
            }
        }
        return true;
    }

    private static boolean isMet(HeldBackTruck truck, double tripV, double tripDelayS, double[] by) {
        try {
            Build build = new Build(
                    tripV,
                    Math.max(0, tripDelayS * (1 + WIDE.timerFraction() * by[1])),
                    WIDE.sensorV() * by[0],
                    worn(truck.battery(), by[2]),
                    truck.second().map(one -> worn(one.battery(), by[2])),
                    WIDE.airK() * by[3],
                    1 + WIDE.loadFraction() * by[4]);
            Answer answer = truck.question(build).answer();
            return answer.isMet() && !chatters(answer.result().events());
        } catch (IllegalArgumentException moreThanTheModelTakes) {
            return false;
        }
    }

    private static Battery worn(BatteryParameters battery, double by) {
        return HeldBackTruck.aged(
                battery, 1 - WIDE.capacityLossFraction() * by, 1 + WIDE.resistanceGrowthFraction() * by);
    }

    /** More than two trips within an hour. */
    private static boolean chatters(List<Event> events) {
        List<Double> trips = new ArrayList<>();
        events.stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .forEach(event -> trips.add(event.timeS()));
        for (int i = 2; i < trips.size(); i++) {
            if (trips.get(i) - trips.get(i - 2) <= 3600) {
                return true;
            }
        }
        return false;
    }
}
