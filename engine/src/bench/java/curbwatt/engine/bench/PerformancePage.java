package curbwatt.engine.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Measures everything and writes the page, whole. */
public final class PerformancePage {

    private PerformancePage() {}

    /**
     * Measures.
     *
     * @param arguments the page's file; what the machine is called; and how patient to be: 1, or less for a try
     */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        Laboratory laboratory = new Laboratory(Double.parseDouble(arguments[2]));
        Page page = new Page();
        page.say("# How quick the engine is");
        page.say(
                "Written by `.ci/measure-performance`, all figures from one run on one machine: %s; %d processors; %s %s. "
                        + "Java Microbenchmark Harness 1.37, serial collector, warmed up; means. A target is missed where it says so.",
                arguments[1],
                Runtime.getRuntime().availableProcessors(),
                System.getProperty("java.vm.name"),
                System.getProperty("java.vm.version"));
        page.say(
                "How quick the page follows a hand, and how it bears fifty of them, is in [performance-page](performance-page.md);"
                        + " how soon the program has a report, in [performance-start](performance-start.md).");
        SceneChapter scene = new SceneChapter(laboratory);
        scene.write(page);
        StudyChapter studies = new StudyChapter(laboratory);
        studies.writeStudies(page);
        studies.writeMemory(page);
        CostChapter cost = new CostChapter(laboratory, scene.longStepsMs());
        cost.writeCurves(page);
        cost.writeProfile(page);
        cost.writeFloor(page);
        if (laboratory.patience() < 1) {
            page.say("These figures are of a try in a hurry, and prove nothing.");
        }
        Path file = Path.of(arguments[0]).toAbsolutePath();
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        Files.writeString(fresh, page.toString(), StandardCharsets.UTF_8);
        Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
    }
}
