package curbwatt.engine.bench;

import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.Recorder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordedMethod;
import jdk.jfr.consumer.RecordingFile;

/**
 * Where a run in long steps spends its time: the methods that the flight recorder found at work.
 *
 * @param samples number of times it looked
 * @param methods share of the samples in a method itself, the largest first
 * @param packages share of the samples in methods of a package, the largest first
 */
record Profile(int samples, List<Share> methods, List<Share> packages) {

    private static final String EVENT = "jdk.ExecutionSample";

    /**
     * A share of the samples.
     *
     * @param name of the method or the package
     * @param fraction its share
     */
    record Share(String name, double fraction) {}

    /** Watches runs of the standard scene for a time, after some to warm up. */
    static Profile ofLongSteps(double lengthS) throws IOException {
        Simulation scene = FlashingScene.standard().simulation();
        runFor(scene, lengthS);
        Path file = Files.createTempFile("profile", ".jfr");
        try (Recording recording = new Recording()) {
            recording.enable(EVENT).withPeriod(Duration.ofMillis(10));
            recording.start();
            runFor(scene, lengthS);
            recording.stop();
            recording.dump(file);
            return of(RecordingFile.readAllEvents(file));
        } finally {
            Files.delete(file);
        }
    }

    private static void runFor(Simulation scene, double lengthS) {
        long endNs = System.nanoTime() + Math.round(1e9 * lengthS);
        while (System.nanoTime() < endNs) {
            if (scene.run(Recorder.none(), StepControl.usual(), Fidelity.ENVELOPE)
                            .steps()
                    == 0) {
                throw new IllegalStateException("a run took no step");
            }
        }
    }

    private static Profile of(List<RecordedEvent> events) {
        List<RecordedMethod> working = events.stream()
                .filter(event -> event.getEventType().getName().equals(EVENT))
                .filter(event -> event.getThread("sampledThread").getJavaThreadId()
                        == Thread.currentThread().getId())
                .map(event -> event.getStackTrace().getFrames().get(0).getMethod())
                .toList();
        return new Profile(
                working.size(),
                shares(working, method -> simple(type(method)) + "." + method.getName()),
                shares(working, method -> room(type(method))));
    }

    private static List<Share> shares(List<RecordedMethod> methods, Function<RecordedMethod, String> name) {
        Map<String, Long> counts =
                methods.stream().collect(Collectors.groupingBy(name, TreeMap::new, Collectors.counting()));
        return counts.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed())
                .map(entry -> new Share(entry.getKey(), (double) entry.getValue() / methods.size()))
                .toList();
    }

    /** Name of the class a method stands in; what the machine made of a lambda counts as the class that has the lambda. */
    private static String type(RecordedMethod method) {
        String name = method.getType().getName();
        int made = Math.max(name.indexOf("$$"), name.indexOf('+'));
        return made < 0 ? name : name.substring(0, made);
    }

    private static String simple(String type) {
        return type.substring(type.lastIndexOf('.') + 1);
    }

    private static String room(String type) {
        return type.substring(0, Math.max(0, type.lastIndexOf('.'))).replace("curbwatt.engine.", "");
    }
}
