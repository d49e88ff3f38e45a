package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * A device that raises the idle speed while the electrical system asks for it.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param senseAtNode node at which it reads the voltage
 * @param raiseBelowV voltage below which it asks (V)
 * @param releaseAboveV voltage at which it lets go (V)
 * @param raiseAboveDischargeA battery current above which it asks (A)
 * @param releaseBelowDischargeA battery current at which it lets go (A)
 * @param raiseDelayS unbroken asking before the speed goes up (s)
 * @param releaseDelayS unbroken release before it goes back (s)
 * @param minimumDwellS least time at high idle (s)
 * @param highIdleRpm engine speed meanwhile (1/min)
 */
public record IdleControlEntry(
        Place place,
        Optional<String> name,
        Optional<NodeWord> senseAtNode,
        Optional<Double> raiseBelowV,
        Optional<Double> releaseAboveV,
        Optional<Double> raiseAboveDischargeA,
        Optional<Double> releaseBelowDischargeA,
        Optional<Double> raiseDelayS,
        Optional<Double> releaseDelayS,
        Optional<Double> minimumDwellS,
        Optional<Double> highIdleRpm) {}
