package curbwatt.engine.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RosterTest {
    private static final AirTemperature AIR = AirTemperature.constant(10);
    private static final InitialState FULL = new InitialState(1, 10);
    private static final DayPlan SHIFT = DayPlan.parkedToItsEnd(
            "shift",
            List.of(
                    phase("drive out", EngineMode.DRIVING, 1800),
                    phase("lane watch", EngineMode.OFF, 3600),
                    phase("drive back", EngineMode.DRIVING, 1800)),
            "night",
            AIR,
            Set.of("key off"));
    private static final DayPlan REST = DayPlan.parkedToItsEnd("rest", List.of(), "parked", AIR, Set.of("key off"));

    @Test
    void repeatsThePatternWithUniqueNames() {
        Roster roster = new Roster("week", FULL, List.of(SHIFT, SHIFT, REST), 7);
        assertThat(roster.phases(1).get(1).name()).isEqualTo("day 1: lane watch");
        assertThat(roster.plan(3)).isEqualTo(REST);
        assertThat(roster.plan(7)).isEqualTo(SHIFT);
        Scene scene = roster.asScene();
        assertThat(scene.phases()).hasSize(4 * 5 + 2);
        assertThat(scene.durationS()).isCloseTo(7 * 86400, within(1e-6));
        assertThat(roster.durationS()).isEqualTo(7 * 86400);
    }

    @Test
    void makesPhasesOnlyWhenTheyAreReached() {
        Roster decade = new Roster("decade", FULL, List.of(SHIFT), 3660);
        assertThat(decade.phases().limit(5).map(Phase::name))
                .containsExactly(
                        "day 1: drive out",
                        "day 1: lane watch",
                        "day 1: drive back",
                        "day 1: night",
                        "day 2: drive out");
    }

    @Test
    void fillsADayWithParking() {
        Phase night = SHIFT.phases().get(3);
        assertThat(night.durationS()).isEqualTo(86400 - 7200);
        assertThat(night.mode()).isEqualTo(EngineMode.PARKED);
        assertThat(night.stages()).containsExactly("key off");
    }

    @Test
    void refusesDaysThatAreNoDays() {
        assertThatThrownBy(() -> new DayPlan("short", List.of(phase("watch", EngineMode.OFF, 3600))))
                .hasMessageStartingWith("length of day 'short' is 3600.0 s, allowed is 86399.999 to 86400.001 s");
        assertThatThrownBy(() -> DayPlan.parkedToItsEnd(
                        "long", List.of(phase("watch", EngineMode.OFF, 90_000)), "night", AIR, Set.of()))
                .hasMessageContaining("time left to park in on day 'long' is -3600.0 s");
        assertThatThrownBy(() -> new Roster("none", FULL, List.of(SHIFT), 0))
                .hasMessage("days is 0, allowed is 1 to 3660");
        assertThatThrownBy(() -> new Roster("none", FULL, List.of(), 1)).hasMessageContaining("pattern is empty");
    }

    private static Phase phase(String name, EngineMode mode, double durationS) {
        return new Phase(name, mode, durationS, AIR, EngineSpeed.constant(1800), Set.of());
    }
}
