package curbwatt.engine.verdict;

import java.util.List;

/**
 * The answer to a scenario's requirements.
 *
 * @param findings one for each requirement, in the order asked
 * @param doubts what a reader must know
 */
public record Verdict(List<Finding> findings, List<Doubt> doubts) {

    /** Copies the lists. */
    public Verdict {
        findings = List.copyOf(findings);
        doubts = List.copyOf(doubts);
    }

    /** Whether every requirement was met. */
    public boolean isMet() {
        return findings.stream().allMatch(Finding::met);
    }
}
