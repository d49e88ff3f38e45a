package curbwatt.engine.wiring;

/**
 * A circuit against one rule.
 *
 * @param rule the rule
 * @param figure what was found
 * @param limit what is allowed: a least value for {@link WiringRule#FUSE_PRESENT} and {@link
 *     WiringRule#WIRE_EXCEEDS_FUSE}, a most for
 *     the others
 * @param unit unit of both; empty for a ratio
 * @param met whether the circuit keeps the rule
 */
public record WiringFinding(WiringRule rule, double figure, double limit, String unit, boolean met) {

    static WiringFinding atMost(WiringRule rule, double figure, double limit, String unit) {
        return new WiringFinding(rule, figure, limit, unit, figure <= limit);
    }

    static WiringFinding atLeast(WiringRule rule, double figure, double limit, String unit) {
        return new WiringFinding(rule, figure, limit, unit, figure >= limit);
    }
}
