package curbwatt.engine.study.odds;

/** How the draws are spread over what is possible. */
public enum Sampling {
    /**
     * Evenly: a Sobol sequence (primitive polynomials and direction numbers of Joe and Kuo), in several replicates, each
     * moved as a whole by a random shift modulo 1 (Cranley and Patterson 1976), so that the replicates are independent
     * and say how far off their mean may be.
     */
    SOBOL,
    /** Each draw at random, independent of all others. */
    SEEDED
}
