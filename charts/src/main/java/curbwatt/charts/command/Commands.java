package curbwatt.charts.command;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** What the program can be told to do, in the order in which help lists it. */
final class Commands {

    private static final List<Class<?>> ALL = List.of(
            RunCommand.class,
            DaysCommand.class,
            SettingsCommand.class,
            SizeCommand.class,
            IdleCommand.class,
            CompareCommand.class,
            OddsCommand.class,
            RechargeCommand.class,
            CheckCommand.class,
            WiringCommand.class,
            DutyCommand.class,
            PartsCommand.class,
            LabelCommand.class,
            DemoCommand.class,
            PageCommand.class);

    private Commands() {}

    /**
     * Adds those that a command line can be about: the one that its first word names, else all, for help lists them and a
     * misspelt one is told its neighbours. A line learns every option of every command that it is given, which takes as long
     * for all of them as a tenth of a run.
     */
    static void addTo(CommandLine line, String... args) {
        List<Class<?>> named = ALL.stream()
                .filter(type -> args.length > 0 && name(type).equals(args[0]))
                .limit(1)
                .toList();
        for (Class<?> type : named.isEmpty() ? ALL : named) {
            line.addSubcommand(type);
        }
    }

    private static String name(Class<?> type) {
        return type.getAnnotation(Command.class).name();
    }
}
