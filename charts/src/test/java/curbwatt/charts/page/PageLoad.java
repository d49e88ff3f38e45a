package curbwatt.charts.page;

import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * Measures the page under load: clients that turn a knob for a while, each waiting for its answer before it turns on. Prints
 * how often which status came, how long answers took, and the memory that was in use at the start, in the middle and at the
 * end. Not a test; {@code .ci/measure-page} runs it.
 */
final class PageLoad {

    private static final int CLIENTS = 50;
    private static final double LENGTH_S = 60;

    private PageLoad() {}

    /** Measures for a minute, or for as many seconds as the first argument says. */
    public static void main(String[] args) throws InterruptedException {
        double lengthS = args.length > 0 ? Double.parseDouble(args[0]) : LENGTH_S;
        String text = DemoScenarios.text("lane-watch");
        List<Double> tookMs = Collections.synchronizedList(new ArrayList<>());
        Map<Integer, Integer> statuses = Collections.synchronizedMap(new TreeMap<>());
        List<Throwable> faults = Collections.synchronizedList(new ArrayList<>());
        try (PageServer server = PageServer.start(0, new FirstScenario("demo:lane-watch", text), faults::add)) {
            URI address = server.address().resolve("/run");
            // a first answer, so that classes are loaded before memory is looked at
            ask(HttpClient.newHttpClient(), address, "warm", text);
            double beforeMb = usedMb();
            long endNs = System.nanoTime() + (long) (1e9 * lengthS);
            List<Thread> clients = new ArrayList<>();
            for (int i = 0; i < CLIENTS; i++) {
                String tab = "tab-" + i;
                Thread client = new Thread(() -> turn(address, tab, text, endNs, tookMs, statuses));
                client.start();
                clients.add(client);
            }
            Thread.sleep((long) (500 * lengthS));
            double middleMb = usedMb();
            for (Thread client : clients) {
                client.join();
            }
            List<Double> sorted = tookMs.stream().sorted().toList();
            System.out.printf(
                    Locale.ROOT,
                    "%d clients that turned a knob for %.0f s, each waiting for its answer, got %d answers, by status %s; half"
                            + " within %.0f ms, 95 in 100 within %.0f ms.%nFaults of the program: %d; work left under way: %d;"
                            + " memory in use before, in the middle and after: %.0f, %.0f and %.0f MB.%n",
                    CLIENTS,
                    lengthS,
                    sorted.size(),
                    statuses,
                    sorted.get(sorted.size() / 2),
                    sorted.get((int) (0.95 * sorted.size())),
                    faults.size(),
                    server.underWay(),
                    beforeMb,
                    middleMb,
                    usedMb());
        }
    }

    private static void turn(
            URI address, String tab, String text, long endNs, List<Double> tookMs, Map<Integer, Integer> statuses) {
        HttpClient client = HttpClient.newHttpClient();
        for (int turn = 0; System.nanoTime() < endNs; turn++) {
            long startNs = System.nanoTime();
            int status = ask(
                    client, address, tab, text.replace("\"tripV\": 12.2", "\"tripV\": " + (11.2 + 0.05 * (turn % 20))));
            tookMs.add((System.nanoTime() - startNs) / 1e6);
            statuses.merge(status, 1, Integer::sum);
        }
    }

    private static int ask(HttpClient client, URI address, String tab, String text) {
        try {
            return client.send(
                            HttpRequest.newBuilder(address)
                                    .header("Content-Type", "application/json")
                                    .header("Curbwatt-Tab", tab)
                                    .POST(HttpRequest.BodyPublishers.ofString(text))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString())
                    .statusCode();
        } catch (IOException e) {
            return -1;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return -1;
        }
    }

    private static double usedMb() {
        System.gc();
        return ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() / 1e6;
    }
}
