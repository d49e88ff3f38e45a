package curbwatt.scenarios.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What joins the starter node and the equipment node. Which keys go with which kind, {@link LinkWord} says.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param part catalogue part that supplies what is left out
 * @param kind what it is
 * @param resistanceMilliohm resistance of contact or diode and cable (mΩ)
 * @param closeV voltage at which a relay closes (V)
 * @param closeDelayS time there before it does (s)
 * @param openV voltage below which it opens (V)
 * @param openDelayS time there before it does (s)
 * @param forwardV voltage that a diode keeps (V)
 * @param limitA largest output of a charger (A)
 * @param outputV its output voltage (V)
 * @param efficiencyPercent output over input power (percent)
 * @param startV voltage at which it starts (V)
 * @param startDelayS time there before it does (s)
 * @param stopV voltage below which it stops (V)
 * @param stopDelayS time there before it does (s)
 */
public record LinkEntry(
        Place place,
        Optional<String> name,
        Optional<String> part,
        Optional<LinkWord> kind,
        Optional<Double> resistanceMilliohm,
        Optional<Double> closeV,
        Optional<Double> closeDelayS,
        Optional<Double> openV,
        Optional<Double> openDelayS,
        Optional<Double> forwardV,
        Optional<Double> limitA,
        Optional<Double> outputV,
        Optional<Double> efficiencyPercent,
        Optional<Double> startV,
        Optional<Double> startDelayS,
        Optional<Double> stopV,
        Optional<Double> stopDelayS) {

    /** Returns this entry with the part's figures where it has none of its own. */
    public LinkEntry over(LinkEntry other) {
        return new LinkEntry(
                place,
                name,
                part,
                kind.or(other::kind),
                resistanceMilliohm.or(other::resistanceMilliohm),
                closeV.or(other::closeV),
                closeDelayS.or(other::closeDelayS),
                openV.or(other::openV),
                openDelayS.or(other::openDelayS),
                forwardV.or(other::forwardV),
                limitA.or(other::limitA),
                outputV.or(other::outputV),
                efficiencyPercent.or(other::efficiencyPercent),
                startV.or(other::startV),
                startDelayS.or(other::startDelayS),
                stopV.or(other::stopV),
                stopDelayS.or(other::stopDelayS));
    }

    /** Returns the figures by their keys, whatever the kind. */
    public Map<String, Optional<Double>> figures() {
        Map<String, Optional<Double>> figures = new LinkedHashMap<>();
        figures.put("resistanceMilliohm", resistanceMilliohm);
        figures.put("closeV", closeV);
        figures.put("closeDelayS", closeDelayS);
        figures.put("openV", openV);
        figures.put("openDelayS", openDelayS);
        figures.put("forwardV", forwardV);
        figures.put("limitA", limitA);
        figures.put("outputV", outputV);
        figures.put("efficiencyPercent", efficiencyPercent);
        figures.put("startV", startV);
        figures.put("startDelayS", startDelayS);
        figures.put("stopV", stopV);
        figures.put("stopDelayS", stopDelayS);
        return figures;
    }
}
