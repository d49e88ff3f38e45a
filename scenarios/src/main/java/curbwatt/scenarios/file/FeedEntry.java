package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * A feed: its resistance, or the wire that it is made of.
 *
 * @param place where it stands
 * @param resistanceMilliohm resistance out and back (mΩ)
 * @param awg American wire gauge
 * @param areaMm2 conductor area (mm²)
 * @param material what the conductor is made of
 * @param lengthM length one way (m)
 * @param returnBy how the current comes back
 * @param chassisMilliohm resistance of the way back through the chassis (mΩ)
 * @param wireC conductor temperature (°C)
 * @param inEngineSpace whether it runs through the engine space
 * @param bundledWith other conductors that carry current in its bundle
 */
public record FeedEntry(
        Place place,
        Optional<Double> resistanceMilliohm,
        Optional<String> awg,
        Optional<Double> areaMm2,
        Optional<MaterialWord> material,
        Optional<Double> lengthM,
        Optional<ReturnWord> returnBy,
        Optional<Double> chassisMilliohm,
        Optional<Double> wireC,
        Optional<Boolean> inEngineSpace,
        Optional<Integer> bundledWith) {}
