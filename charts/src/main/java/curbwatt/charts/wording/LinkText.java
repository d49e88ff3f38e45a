package curbwatt.charts.wording;

import curbwatt.engine.link.BatteryLink;

/** What kind of link joins the batteries, and when it acts. */
public final class LinkText {

    private LinkText() {}

    /** The link in a clause: "charge-sensing relay, closes at 13.30 V after 10 s, opens below 12.80 V after 30 s". */
    public static String settings(BatteryLink link) {
        if (link instanceof BatteryLink.ChargeRelay relay) {
            return "charge-sensing relay, closes at " + PlainText.volts(relay.closeV()) + delay(relay.closeDelayS())
                    + ", opens below " + PlainText.volts(relay.openV()) + delay(relay.openDelayS());
        }
        if (link instanceof BatteryLink.Diode diode) {
            return "diode, from the starter node alone, keeps " + PlainText.volts(diode.forwardV());
        }
        if (link instanceof BatteryLink.DcDcCharger charger) {
            return "charger, at most " + PlainText.amperes(charger.limitA()) + " at "
                    + PlainText.volts(charger.outputV()) + ", starts at " + PlainText.volts(charger.startV())
                    + delay(charger.startDelayS()) + ", stops below " + PlainText.volts(charger.stopV())
                    + delay(charger.stopDelayS());
        }
        return "cable, always joined";
    }

    private static String delay(double delayS) {
        return delayS > 0 ? " after " + PlainText.time(delayS) : "";
    }
}
