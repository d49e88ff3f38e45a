package curbwatt.charts.report;

import curbwatt.charts.run.RosterStory;
import curbwatt.charts.wording.EventText;
import curbwatt.charts.wording.PlainText;
import curbwatt.charts.wording.RosterText;
import curbwatt.engine.days.BatteryDays;
import curbwatt.engine.days.Day;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.Load;
import curbwatt.engine.result.BatteryDay;
import curbwatt.engine.wear.DepthClass;
import curbwatt.engine.wear.LifeEstimate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The tables of a roster's report.
 *
 * @param story the roster and its result
 */
record DaysTables(RosterStory story) {

    /** More days than a reader would read line by line are gathered into weeks. */
    private static final int MOST_DAYS = 62;

    private static final int WEEK_DAYS = 7;
    private static final int DEPTH_CLASSES = 10;
    private static final double DAY_S = 86400;
    private static final double HOUR_S = 3600;
    private static final String NONE = "–";

    private static final Set<EventKind> TOLD = Set.of(
            EventKind.CUTOFF_TRIPPED,
            EventKind.RUN_TIME_LIMIT_REACHED,
            EventKind.ENGINE_DID_NOT_START,
            EventKind.FUSE_OPENED,
            EventKind.PACK_STOPPED,
            EventKind.LOAD_DROPPED_OUT,
            EventKind.RESTART_MARGIN_LOST,
            EventKind.VOLTAGE_COLLAPSED);

    List<Table> all() {
        List<Table> tables = new ArrayList<>(List.of(batteries(), depths(), life(), course()));
        List<List<Event>> mishaps = mishaps();
        if (!mishaps.isEmpty()) {
            tables.add(events(mishaps));
        }
        return tables;
    }

    /** What went wrong, the same with the same part gathered, in the order in which it first happened. */
    private List<List<Event>> mishaps() {
        double countedS = DAY_S * story.result().countedDays().size();
        Set<String> loads = story.scenario().vehicle().loads().map(Load::name).collect(Collectors.toSet());
        Map<String, List<Event>> gathered = story.result().run().events().stream()
                .filter(event -> TOLD.contains(event.kind()) && event.timeS() < countedS)
                // what a load draws between its on-times runs as a load of its own, which nobody has heard of
                .filter(event -> event.kind() != EventKind.LOAD_DROPPED_OUT || loads.contains(event.subject()))
                .collect(Collectors.groupingBy(DaysTables::group, LinkedHashMap::new, Collectors.toList()));
        return List.copyOf(gathered.values());
    }

    /** A start belongs to a phase whose name has the day in it; starts are one group all the same. */
    private static String group(Event event) {
        return event.kind() == EventKind.ENGINE_DID_NOT_START
                ? event.kind().name()
                : event.kind() + " " + event.subject();
    }

    private Table batteries() {
        return Table.of(
                "batteries",
                "Batteries",
                "A trend is the change of the charge in seven days, over the second half of the repeats of the pattern."
                        + " A full discharge is one capacity taken out.",
                List.of(
                        "Battery",
                        "#Capacity, Ah",
                        "#Charge, %",
                        "#Lowest, %",
                        "#Trend, % a week",
                        "#Taken out, Ah",
                        "#Put back, Ah",
                        "#Full discharges",
                        "#Deepest swing, %"),
                story.result().batteries().stream().map(DaysTables::battery).toList());
    }

    private static List<String> battery(BatteryDays battery) {
        return List.of(
                battery.battery(),
                PlainText.number(battery.capacityAh(), 1),
                share(battery.startChargeFraction()) + " → " + share(battery.endChargeFraction()),
                share(battery.lowestChargeFraction()),
                battery.trend()
                        .map(trend -> PlainText.number(100 * trend.weeklyFraction(), 2))
                        .orElse(NONE),
                PlainText.number(battery.throughput().dischargedAh(), 1),
                PlainText.number(battery.throughput().chargedAh(), 1),
                PlainText.number(battery.fullDischarges(), 1),
                share(battery.cycles().deepestFraction()));
    }

    private Table depths() {
        List<List<DepthClass>> classes = story.result().batteries().stream()
                .map(battery -> battery.cycles().byDepth(DEPTH_CLASSES))
                .toList();
        List<String> heads = new ArrayList<>(List.of("Depth"));
        story.result().batteries().forEach(battery -> heads.add("#" + battery.battery()));
        return Table.of(
                "depths",
                "Cycles by depth",
                "Swings of the charge, counted by the rainflow method: small ones inside a large one are cycles of their"
                        + " own. Those left open at the end count half.",
                heads,
                IntStream.range(0, DEPTH_CLASSES)
                        .filter(place ->
                                classes.stream().anyMatch(all -> all.get(place).halfCycles() > 0))
                        .mapToObj(place -> depth(classes, place))
                        .toList());
    }

    private static List<String> depth(List<List<DepthClass>> classes, int place) {
        DepthClass first = classes.get(0).get(place);
        List<String> line = new ArrayList<>(List.of(
                PlainText.number(100 * first.fromFraction(), 0) + " to " + PlainText.percent(first.toFraction())));
        classes.forEach(all -> line.add(PlainText.number(all.get(place).cycles(), 1)));
        return line;
    }

    private Table life() {
        return Table.of(
                "life",
                "Life by cycling alone",
                "If it went on like this. Published cycle counts are orders of magnitude: the range is what their spread"
                        + " makes of it. Heat, standing empty and vibration are not in it. For iron phosphate, and after a"
                        + " failed start, there is no estimate.",
                List.of("Battery", "#Used up in the run, %", "#At least, years", "#Middle, years", "#At most, years"),
                story.result().batteries().stream().map(this::life).toList());
    }

    private List<String> life(BatteryDays battery) {
        return battery.life()
                .filter(life -> story.result().failedStartDay().isEmpty() && Double.isFinite(life.highDays()))
                .map(life -> life(battery.battery(), life))
                .orElse(List.of(battery.battery(), NONE, NONE, NONE, NONE));
    }

    private static List<String> life(String name, LifeEstimate life) {
        return List.of(
                name,
                PlainText.number(100 * life.wornFraction(), 1),
                RosterText.years(life.lowDays()),
                RosterText.years(life.middleDays()),
                RosterText.years(life.highDays()));
    }

    /** Day by day, or week by week where there are many. */
    private Table course() {
        List<Day> days = story.result().countedDays();
        boolean weeks = days.size() > MOST_DAYS;
        int step = weeks ? WEEK_DAYS : 1;
        List<String> heads = new ArrayList<>(List.of(weeks ? "Days" : "Day"));
        if (!weeks) {
            heads.add("Plan");
        }
        boolean pair = story.result().batteries().size() > 1;
        story.result()
                .batteries()
                .forEach(battery -> heads.addAll(List.of(
                        pair ? "#Lowest, %, " + battery.battery() : "#Lowest charge, %",
                        "#At the end, %",
                        "#Out, Ah",
                        "#In, Ah")));
        heads.addAll(List.of("#Trips", "#Starts", "#Engine, h"));
        return Table.of(
                "days",
                weeks ? "Week by week" : "Day by day",
                weeks ? "Each line is seven days, the last what is left; days.json has every day." : "",
                heads,
                IntStream.iterate(0, from -> from < days.size(), from -> from + step)
                        .mapToObj(from -> days.subList(from, Math.min(from + step, days.size())))
                        .map(some -> course(some, !weeks))
                        .toList());
    }

    private static List<String> course(List<Day> days, boolean plan) {
        Day first = days.get(0);
        Day last = days.get(days.size() - 1);
        List<String> line = new ArrayList<>();
        line.add(days.size() == 1 ? String.valueOf(first.day()) : first.day() + " to " + last.day());
        if (plan) {
            line.add(first.plan());
        }
        for (int i = 0; i < first.batteries().size(); i++) {
            int place = i;
            List<BatteryDay> course =
                    days.stream().map(day -> day.batteries().get(place)).toList();
            line.add(share(course.stream()
                    .mapToDouble(BatteryDay::lowestChargeFraction)
                    .min()
                    .orElseThrow()));
            line.add(share(course.get(course.size() - 1).endChargeFraction()));
            line.add(PlainText.number(
                    course.stream().mapToDouble(BatteryDay::dischargedAh).sum(), 1));
            line.add(PlainText.number(
                    course.stream().mapToDouble(BatteryDay::chargedAh).sum(), 1));
        }
        int failed = days.stream().mapToInt(Day::failedStarts).sum();
        line.add(String.valueOf(days.stream().mapToInt(Day::trips).sum()));
        line.add(days.stream().mapToInt(Day::starts).sum() + (failed > 0 ? ", " + failed + " failed" : ""));
        line.add(PlainText.number(days.stream().mapToDouble(Day::engineRunS).sum() / HOUR_S, 1));
        return line;
    }

    private static Table events(List<List<Event>> mishaps) {
        return Table.of(
                "events",
                "What went wrong",
                "Each with its first time, and how often in all. Times are those of steady loads, and approximate.",
                List.of("First", "Event", "#Charge then, %", "#How often", "#Days"),
                mishaps.stream().map(DaysTables::mishap).toList());
    }

    private static List<String> mishap(List<Event> events) {
        Event first = events.get(0);
        int day = day(first);
        return List.of(
                "day " + day + ", " + PlainText.clock(first.timeS() - DAY_S * (day - 1)),
                EventText.sentence(first),
                share(first.stateOfChargeFraction()),
                String.valueOf(events.size()),
                String.valueOf(events.stream().map(DaysTables::day).distinct().count()));
    }

    private static int day(Event event) {
        return (int) (event.timeS() / DAY_S) + 1;
    }

    private static String share(double fraction) {
        return PlainText.number(100 * fraction, 1);
    }
}
