package curbwatt.engine.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What published rules and the practice of the trade say of a circuit. Advice from figures, not a certificate: it has
 * not seen the
 * truck.
 *
 * @param plan the circuit
 * @param dropV drop at the mean current, V
 * @param peakDropV drop at the peak, V
 * @param findings one for each rule that applies
 * @param fuse smallest fuse sold that carries load and peak; empty if no blade fuse does
 * @param cable smallest vehicle cable that carries that fuse (without one, the load) and keeps the drop; empty if none
 *     does
 * @param metric the same of the metric sizes
 */
public record WireAdvice(
        CircuitPlan plan,
        double dropV,
        double peakDropV,
        List<WiringFinding> findings,
        Optional<FuseRating> fuse,
        Optional<WireSize> cable,
        Optional<WireSize> metric) {
    private static final double CONTINUOUS_SHARE = 0.8;
    private static final double WIRE_OVER_FUSE_RATIO = 1.25;

    /** Copies the list. */
    public WireAdvice {
        findings = List.copyOf(findings);
    }

    /** Returns the advice for a circuit. */
    public static WireAdvice of(CircuitPlan plan) {
        Optional<FuseRating> fuse = smallestFuse(plan);
        return new WireAdvice(
                plan,
                plan.dropV(plan.current().meanA()),
                plan.dropV(plan.current().peakA()),
                findings(plan),
                fuse,
                smallest(WireSize.vehicleCables(), plan, fuse),
                smallest(WireSize.metric(), plan, fuse));
    }

    /** Whether every rule is kept. */
    public boolean allMet() {
        return findings.stream().allMatch(WiringFinding::met);
    }

    private static List<WiringFinding> findings(CircuitPlan plan) {
        List<WiringFinding> findings = new ArrayList<>();
        CircuitCurrent current = plan.current();
        findings.add(WiringFinding.atMost(
                WiringRule.DROP,
                plan.dropV(current.meanA()) / plan.systemV(),
                plan.dropLimit().fraction(),
                ""));
        double wireA = wireA(plan);
        findings.add(WiringFinding.atMost(WiringRule.WIRE_CARRIES_LOAD, current.heatingA(), wireA, "A"));
        findings.add(WiringFinding.atLeast(WiringRule.FUSE_PRESENT, plan.fuse().isPresent() ? 1 : 0, 1, ""));
        plan.fuse().ifPresent(fuse -> {
            double ratedA = fuse.rating().ratedA();
            findings.add(WiringFinding.atMost(WiringRule.FUSE_PROTECTS_WIRE, ratedA, wireA, "A"));
            findings.add(WiringFinding.atLeast(WiringRule.WIRE_EXCEEDS_FUSE, wireA / ratedA, WIRE_OVER_FUSE_RATIO, ""));
            findings.add(WiringFinding.atMost(
                    WiringRule.FUSE_CARRIES_LOAD, current.heatingA() / fuse.effectiveA(), CONTINUOUS_SHARE, ""));
            findings.add(WiringFinding.atMost(
                    WiringRule.FUSE_OUTLASTS_PEAK, current.peakS(), fuse.earliestS(current.peakA()), "s"));
        });
        return findings;
    }

    /**
     * Rating of the plan's wire; that of a wire thinner than the table is taken as none, of a thicker one as the
     * table's last.
     */
    private static double wireA(CircuitPlan plan) {
        Ampacity ampacity = new Ampacity();
        double copperMm2 =
                Math.min(plan.run().material().copperAreaMm2(plan.run().areaMm2()), ampacity.mostMm2());
        return ampacity.covers(copperMm2)
                ? ampacity.limitA(copperMm2, plan.place().space(), plan.place().bundled())
                : 0;
    }

    private static Optional<FuseRating> smallestFuse(CircuitPlan plan) {
        CircuitCurrent current = plan.current();
        double leastA = current.heatingA()
                / CONTINUOUS_SHARE
                / InstalledFuse.ambientShare(plan.place().ambientC());
        return Stream.of(FuseType.BLADE, FuseType.MAXI)
                .flatMap(type -> type.ratingsA().stream().map(ratingA -> new FuseRating(type, ratingA)))
                .filter(rating -> rating.ratedA() >= leastA)
                .filter(rating -> new InstalledFuse(rating, plan.place().ambientC()).earliestS(current.peakA())
                        >= current.peakS())
                .findFirst();
    }

    private static Optional<WireSize> smallest(List<WireSize> sizes, CircuitPlan plan, Optional<FuseRating> fuse) {
        double neededA = fuse.map(FuseRating::ratedA).orElse(plan.current().heatingA());
        double mostV = plan.dropLimit().fraction() * plan.systemV();
        return sizes.stream()
                .filter(size -> wireA(plan.inCopper(size)) >= neededA)
                .filter(size -> plan.inCopper(size).dropV(plan.current().meanA()) <= mostV)
                .findFirst();
    }
}
