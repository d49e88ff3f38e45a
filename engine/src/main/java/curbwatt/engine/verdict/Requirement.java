package curbwatt.engine.verdict;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.Set;

/** What the planner asks of the vehicle in the scene. */
public sealed interface Requirement {

    /**
     * Circuits stay supplied and none of their loads drops out.
     *
     * @param circuits names of the circuits, at least one
     * @param durationS for how long from the scene's start (s)
     */
    record HoldCircuits(Set<String> circuits, double durationS) implements Requirement {
        /** Refuses no circuit and a duration that is not positive. */
        public HoldCircuits {
            circuits = Set.copyOf(circuits);
            if (circuits.isEmpty()) {
                throw new IllegalArgumentException("circuits is empty; name at least one circuit to hold");
            }
            Require.inside("holdMin", durationS / 60, 1.0 / 60, 366 * 1440.0, "min");
        }
    }

    /**
     * The engine starts whenever the scene starts it, at the end of each phase with the engine off, and at the scene's
     * end. What is asked of a start after the vehicle was parked, {@link StartAfterParked}, is left to that.
     *
     * @param marginV room above the minimum cranking voltage (V), 0 … 3
     */
    record WillStart(double marginV) implements Requirement {
        /** Refuses a margin out of range. */
        public WillStart {
            Require.inside("restartMarginV", marginV, 0, 3, "V");
        }
    }

    /**
     * The engine starts after the vehicle was parked.
     *
     * @param phase name of the parked phase at whose end it is asked
     * @param parkedS its length (s)
     * @param marginV room above the minimum cranking voltage (V), 0 … 3
     */
    record StartAfterParked(String phase, double parkedS, double marginV) implements Requirement {
        /** Refuses figures out of range. */
        public StartAfterParked {
            Objects.requireNonNull(phase, "phase");
            Require.inside("restartAfterParkedH", parkedS / 3600, 1.0 / 3600, 366 * 24.0, "h");
            Require.inside("restartMarginV", marginV, 0, 3, "V");
        }
    }

    /**
     * No cutoff opens in some phases, by voltage or by its run-time limit: whatever opens there is a nuisance.
     *
     * @param phases names of the phases, at least one
     */
    record NoTrip(Set<String> phases) implements Requirement {
        /** Refuses no phase. */
        public NoTrip {
            phases = Set.copyOf(phases);
            if (phases.isEmpty()) {
                throw new IllegalArgumentException("phases is empty; name at least one phase without a trip");
            }
        }
    }

    /**
     * The state of charge of the starter battery never falls below a share.
     *
     * @param leastFraction the share, 0 … 1
     */
    record KeepCharge(double leastFraction) implements Requirement {
        /** Refuses a share out of range. */
        public KeepCharge {
            Require.inside("leastChargeFraction", leastFraction, 0, 1, "");
        }
    }

    /**
     * The state of charge of the auxiliary battery never falls below a share.
     *
     * @param leastFraction the share, 0 … 1
     */
    record KeepAuxiliaryCharge(double leastFraction) implements Requirement {
        /** Refuses a share out of range. */
        public KeepAuxiliaryCharge {
            Require.inside("leastAuxiliaryChargeFraction", leastFraction, 0, 1, "");
        }
    }

    /**
     * The voltage at the far end of a circuit's feed never falls below a level while the circuit is supplied.
     *
     * @param circuit name of the circuit
     * @param leastV the level (V), 6 … 14
     */
    record KeepVoltage(String circuit, double leastV) implements Requirement {
        /** Refuses a level out of range. */
        public KeepVoltage {
            Require.inside("leastVoltageV", leastV, 6, 14, "V");
        }
    }
}
