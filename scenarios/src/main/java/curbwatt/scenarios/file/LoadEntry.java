package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * One load, or several alike.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param part catalogue part that supplies what is left out
 * @param count how many alike
 * @param sync how several alike flash together
 * @param ratedCurrentA current at the rated voltage, each (A)
 * @param ratedVoltageV voltage of the rating (V)
 * @param behaviour how the current follows the voltage
 * @param voltageExponent the same as a number
 * @param standbyCurrentA current while fed but not on, each (A)
 * @param dropOutV voltage below which it falls silent (V)
 * @param returnV voltage at which it comes back (V)
 * @param returnDelayS time above that before it draws again (s)
 * @param inrush what it draws more just after it is switched on
 * @param stages response stages that switch it on
 * @param flash a cycle of on-intervals
 * @param duty on for some seconds in every so many
 * @param randomDuty on for some seconds at random instants
 * @param steady on without a break, whatever the part does
 */
public record LoadEntry(
        Place place,
        Optional<String> name,
        Optional<String> part,
        Optional<Integer> count,
        Optional<SyncWord> sync,
        Optional<Double> ratedCurrentA,
        Optional<Double> ratedVoltageV,
        Optional<BehaviourWord> behaviour,
        Optional<Double> voltageExponent,
        Optional<Double> standbyCurrentA,
        Optional<Double> dropOutV,
        Optional<Double> returnV,
        Optional<Double> returnDelayS,
        Optional<InrushEntry> inrush,
        List<String> stages,
        Optional<FlashEntry> flash,
        Optional<DutyEntry> duty,
        Optional<RandomDutyEntry> randomDuty,
        Optional<Boolean> steady) {

    /** Takes missing stages as none. */
    public LoadEntry {
        stages = stages == null ? List.of() : List.copyOf(stages);
    }

    /**
     * Returns this entry with the part's figures where it has none of its own. A pattern or a voltage behaviour of its
     * own replaces the part's as a whole.
     */
    public LoadEntry over(LoadEntry other) {
        boolean ownBehaviour = behaviour.isPresent() || voltageExponent.isPresent();
        boolean ownPattern = flash.isPresent() || duty.isPresent() || randomDuty.isPresent() || steady.isPresent();
        return new LoadEntry(
                place,
                name,
                part,
                count.or(other::count),
                sync.or(other::sync),
                ratedCurrentA.or(other::ratedCurrentA),
                ratedVoltageV.or(other::ratedVoltageV),
                ownBehaviour ? behaviour : other.behaviour,
                ownBehaviour ? voltageExponent : other.voltageExponent,
                standbyCurrentA.or(other::standbyCurrentA),
                dropOutV.or(other::dropOutV),
                returnV.or(other::returnV),
                returnDelayS.or(other::returnDelayS),
                inrush.or(other::inrush),
                stages.isEmpty() ? other.stages : stages,
                ownPattern ? flash : other.flash,
                ownPattern ? duty : other.duty,
                ownPattern ? randomDuty : other.randomDuty,
                ownPattern ? steady : other.steady);
    }
}
