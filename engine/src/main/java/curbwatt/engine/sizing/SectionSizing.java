package curbwatt.engine.sizing;

import java.util.ArrayList;
import java.util.List;

/**
 * A duty cycle sized section by section, before any correction: section k is the cycle up to the end of its k-th
 * period, and its capacity the sum over those periods of the change of current times the factor for the time from that
 * change to the section's end. The largest section governs; capacity for loads at no known time is added on top.
 *
 * @param sectionsAh capacity of each section (Ah)
 * @param randomAh capacity for loads whose time is unknown (Ah)
 */
public record SectionSizing(List<Double> sectionsAh, double randomAh) {

    /** Refuses no section. */
    public SectionSizing {
        sectionsAh = List.copyOf(sectionsAh);
        if (sectionsAh.isEmpty()) {
            throw new IllegalArgumentException("sectionsAh is empty; a duty cycle has a period at least");
        }
    }

    /** Sizes a duty cycle without random loads. */
    public static SectionSizing of(List<DutyPeriod> cycle, CapacityFactor factor) {
        return of(cycle, List.of(), factor);
    }

    /**
     * Sizes a duty cycle.
     *
     * @param cycle the periods in order
     * @param random loads that may come at any time; sized as a cycle of their own and added
     * @param factor capacity for each ampere
     */
    public static SectionSizing of(List<DutyPeriod> cycle, List<DutyPeriod> random, CapacityFactor factor) {
        double randomAh = random.isEmpty()
                ? 0
                : sections(random, factor).stream()
                        .mapToDouble(Double::doubleValue)
                        .max()
                        .orElseThrow();
        return new SectionSizing(sections(cycle, factor), randomAh);
    }

    private static List<Double> sections(List<DutyPeriod> cycle, CapacityFactor factor) {
        List<Double> sections = new ArrayList<>();
        for (int end = 0; end < cycle.size(); end++) {
            double sectionAh = 0;
            double leftS = 0;
            for (int period = end; period >= 0; period--) {
                leftS += cycle.get(period).durationS();
                double beforeA = period == 0 ? 0 : cycle.get(period - 1).currentA();
                double changeA = cycle.get(period).currentA() - beforeA;
                sectionAh += changeA == 0 ? 0 : changeA * factor.perAmpereH(leftS);
            }
            sections.add(sectionAh);
        }
        return sections;
    }

    /** Place of the section that governs, from 0. */
    public int governing() {
        int largest = 0;
        for (int i = 1; i < sectionsAh.size(); i++) {
            if (sectionsAh.get(i) > sectionsAh.get(largest)) {
                largest = i;
            }
        }
        return largest;
    }

    /** Capacity before corrections (Ah). */
    public double uncorrectedAh() {
        return sectionsAh.get(governing()) + randomAh;
    }
}
