package curbwatt.charts.report;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SensedTrip;
import curbwatt.charts.wording.LinkText;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.LinkSummary;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The tables that a report has only where there are two batteries, or a cutoff that senses elsewhere than at the
 * starter
 * battery.
 *
 * @param story the run
 */
record BatteryTables(RunStory story) {

    List<Table> all() {
        List<Table> tables = new ArrayList<>();
        Optional<AuxiliaryBattery> auxiliary = story.scenario().vehicle().auxiliary();
        Optional<LinkSummary> link = story.result().link();
        if (auxiliary.isPresent()) {
            tables.add(batteries());
        }
        List<SensedTrip> sensed = SensedTrip.of(story);
        if (auxiliary.isPresent() && link.isPresent()) {
            tables.add(link(auxiliary.get(), link.get()));
        }
        if (!sensed.isEmpty()) {
            tables.add(sensed(sensed));
        }
        return tables;
    }

    private Table sensed(List<SensedTrip> trips) {
        return Table.of(
                "sensed",
                "Where the cutoffs sensed",
                "Lowest voltages in the "
                        + PlainText.time(Math.max(1, story.trace().spacingS()))
                        + " before the first trip: a cutoff that senses behind a feed sees less than its battery has.",
                List.of(
                        "Cutoff",
                        "Senses at",
                        "Opens",
                        "#Sensed, V",
                        "#Starter node, V",
                        "#Equipment node, V",
                        "#Battery above sensed, V"),
                trips.stream().map(BatteryTables::sensed).toList());
    }

    private static List<String> sensed(SensedTrip trip) {
        String place = trip.cutoff().sense() instanceof SensePoint.FeedEnd end
                ? "the end of " + PlainText.quoted(end.circuit())
                : "the equipment node";
        return List.of(
                trip.cutoff().name(),
                place,
                PlainText.after(trip.tripS()),
                PlainText.number(trip.sensedMinV(), 2),
                PlainText.number(trip.starterMinV(), 2),
                trip.equipmentMinV().isPresent()
                        ? PlainText.number(trip.equipmentMinV().getAsDouble(), 2)
                        : "–",
                PlainText.number(trip.apartV(), 2));
    }

    private Table batteries() {
        return Table.of(
                "batteries",
                "Batteries",
                "Charge drawn from and given to each at its terminals; the freezing margin is the least distance of its"
                        + " temperature above the freezing point of its electrolyte.",
                List.of(
                        "Battery",
                        "On",
                        "#Charge, %",
                        "#Lowest, %",
                        "#Drawn, Ah",
                        "#Given, Ah",
                        "#Lowest, V",
                        "#Freezing margin, K"),
                List.of(
                        battery(story.result().batteries().get(0), "starter node"),
                        battery(story.result().batteries().get(1), "equipment node")));
    }

    private static List<String> battery(BatterySummary battery, String node) {
        return List.of(
                battery.battery(),
                node,
                share(battery.startChargeFraction()) + " → " + share(battery.endChargeFraction()),
                share(battery.lowestChargeFraction()),
                PlainText.number(battery.dischargedAh(), 1),
                PlainText.number(battery.chargedAh(), 1),
                PlainText.number(battery.lowestV(), 2),
                Double.isFinite(battery.smallestFreezingMarginK())
                        ? PlainText.number(battery.smallestFreezingMarginK(), 0)
                        : "–");
    }

    private static Table link(AuxiliaryBattery auxiliary, LinkSummary link) {
        String settings = LinkText.settings(auxiliary.link());
        return Table.of(
                "link",
                "Link between the batteries",
                settings.substring(0, 1).toUpperCase(Locale.ROOT) + settings.substring(1) + ".",
                List.of("Link", "#Closed for", "#To equipment, Ah", "#Back to starter, Ah", "#Largest current, A"),
                List.of(List.of(
                        link.link(),
                        PlainText.time(link.closedS()),
                        PlainText.number(link.toEquipmentAh(), 1),
                        PlainText.number(link.toStarterAh(), 1),
                        PlainText.number(link.peakA(), 0))));
    }

    private static String share(double fraction) {
        return PlainText.number(100 * fraction, 1);
    }
}
