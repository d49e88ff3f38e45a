package curbwatt.engine.vehicle;

import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.protection.PackProtection;
import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * A second battery on a node of its own, the equipment node, and what joins it to the starter node.
 *
 * @param installation the battery in its place
 * @param startChargeFraction its state of charge at the scene's start, at rest, 0.05 … 1
 * @param protection protection inside the pack, if it has one
 * @param linkName name of the link, as the user calls it
 * @param link what joins the nodes
 */
public record AuxiliaryBattery(
        BatteryInstallation installation,
        double startChargeFraction,
        Optional<PackProtection> protection,
        String linkName,
        BatteryLink link) {

    /** A battery without a protection of its own. */
    public AuxiliaryBattery(
            BatteryInstallation installation, double startChargeFraction, String linkName, BatteryLink link) {
        this(installation, startChargeFraction, Optional.empty(), linkName, link);
    }

    /** Refuses missing parts and a charge out of range. */
    public AuxiliaryBattery {
        Objects.requireNonNull(installation, "installation");
        Require.inside("startChargeFraction", startChargeFraction, 0.05, 1, "");
        Objects.requireNonNull(protection, "protection");
        Objects.requireNonNull(linkName, "linkName");
        Objects.requireNonNull(link, "link");
    }

    /** The same protection and link with another battery. */
    public AuxiliaryBattery with(BatteryInstallation other) {
        return new AuxiliaryBattery(other, startChargeFraction, protection, linkName, link);
    }
}
