package curbwatt.engine.bench;

import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.record.Recorder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** The chapter on studies and on memory. */
final class StudyChapter {

    private static final double LEAST_GAIN = 1.8;
    private static final double LEAST_BYTES_PER_STEP = 1;

    private final List<Measured> studies;
    private final List<Measured> memory;

    StudyChapter(Laboratory laboratory) {
        studies = laboratory.studies();
        memory = laboratory.memory();
    }

    void writeStudies(Page page) {
        double mapS = seconds("settingsMap", 2);
        double oddsS = seconds("odds", 2);
        double yearS = seconds("dutyYear", 1);
        double gain = gain();
        page.say("## Studies");
        page.say("Of the same scene, in long steps. The year is one of daily duty, its loads as steady means.");
        page.table("what", "measured", "target", "")
                .row("861 settings of a cutoff, two threads", Page.figure(mapS) + " s", "under 1 s", Page.met(mapS < 1))
                .row(
                        "10 000 draws of the odds, two threads",
                        Page.figure(oddsS) + " s",
                        "under 5 s",
                        Page.met(oddsS < 5))
                .row("the same in a program just started", Page.figure(seconds("oddsAtOnce", 2)) + " s", "", "")
                .row("365 days of duty, one thread", Page.figure(yearS) + " s", "under 1 s", Page.met(yearS < 1))
                .row(
                        "two threads over one, 861 settings, turn and turn about",
                        Page.figure(gain) + " ×",
                        "at least 1.8 ×",
                        Page.met(gain >= LEAST_GAIN))
                .end();
    }

    /** How many times as quick two threads are as one: the middle of the rounds, each with its own machine's load. */
    private double gain() {
        List<Measured> one = maps(1);
        List<Measured> two = maps(2);
        double[] gains = IntStream.range(0, one.size())
                .mapToDouble(round -> one.get(round).ms() / two.get(round).ms())
                .sorted()
                .toArray();
        return gains[gains.length / 2];
    }

    private List<Measured> maps(int threads) {
        return studies.stream()
                .filter(each -> each.is("settingsMap", "threads", threads))
                .toList();
    }

    private double seconds(String method, int threads) {
        return studies.stream()
                        .filter(one -> one.is(method, "threads", threads))
                        .mapToDouble(Measured::ms)
                        .average()
                        .orElseThrow()
                / 1000;
    }

    void writeMemory(Page page) throws IOException, InterruptedException {
        page.say("## Memory");
        page.say(
                "What a run without a trace allocates, by the length of the scene, all of it before the cutoff opens; in steps"
                        + " far finer than usual, so that what each of them allocates would show. All in one Java machine, warmed up"
                        + " together: the same code, compiled twice, allocates some hundred bytes more or less.");
        page.table("scene", "long steps: number", "allocated", "edge by edge: number", "allocated");
        for (double durationH : Laboratory.DURATIONS_H) {
            page.row(
                    Page.figure(durationH) + " h",
                    String.valueOf(steps("longSteps", durationH)),
                    Page.figure(bytes("longSteps", durationH)) + " B",
                    String.valueOf(steps("edgeByEdge", durationH)),
                    Page.figure(bytes("edgeByEdge", durationH)) + " B");
        }
        page.end();
        double longBytes = bytesPerStep("longSteps");
        double edgeBytes = bytesPerStep("edgeByEdge");
        String year = tracedYear();
        page.table("what", "measured", "target", "")
                .row(
                        "each further long step",
                        Page.figure(longBytes) + " B",
                        "nothing",
                        Page.met(Math.abs(longBytes) < LEAST_BYTES_PER_STEP))
                .row(
                        "each further step edge by edge",
                        Page.figure(edgeBytes) + " B",
                        "nothing",
                        Page.met(Math.abs(edgeBytes) < LEAST_BYTES_PER_STEP))
                .row(
                        "a year of duty with a trace, a line every quarter of an hour, `-Xmx64m`",
                        year.isEmpty() ? "did not fit" : year,
                        "fits",
                        Page.met(!year.isEmpty()))
                .end();
    }

    private double bytesPerStep(String method) {
        double shortH = Laboratory.DURATIONS_H[0];
        double longH = Laboratory.DURATIONS_H[Laboratory.DURATIONS_H.length - 1];
        return (bytes(method, longH) - bytes(method, shortH)) / (steps(method, longH) - steps(method, shortH));
    }

    private double bytes(String method, double durationH) {
        return memory.stream()
                .filter(one -> one.is(method, "durationH", durationH))
                .findFirst()
                .orElseThrow()
                .allocatedBytes()
                .orElseThrow();
    }

    private static long steps(String method, double durationH) {
        FlashingScene standard = FlashingScene.standard();
        return new FlashingScene(standard.loads(), standard.flashHz(), durationH)
                .simulation()
                .run(
                        Recorder.none(),
                        FlashingScene.control(Laboratory.FINEST_V),
                        method.equals("longSteps") ? Fidelity.ENVELOPE : Fidelity.RESOLVED)
                .steps();
    }

    private static String tracedYear() throws IOException, InterruptedException {
        Path said = Files.createTempFile("year", ".txt");
        try {
            int exit = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-Xmx64m",
                            "-XX:+UseSerialGC",
                            "-cp",
                            System.getProperty("java.class.path"),
                            TracedYear.class.getName(),
                            said.toString())
                    .inheritIO()
                    .start()
                    .waitFor();
            return exit == 0 ? Files.readString(said) : "";
        } finally {
            Files.delete(said);
        }
    }
}
