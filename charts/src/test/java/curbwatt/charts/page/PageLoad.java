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
import java.util.Map;
import java.util.TreeMap;

/**
 * Measures the page under load: clients that turn a knob for a while, each waiting for its answer before it turns on. Prints
 * how often which status came, how long answers took, and the memory that was in use at the start, in the middle and at the
 * end. Not a test; {@code docs/performance-page.md} says how to run it.
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
            System.out.printf("memory in use: %.0f MB%n", usedMb());
            long endNs = System.nanoTime() + (long) (1e9 * lengthS);
            List<Thread> clients = new ArrayList<>();
            for (int i = 0; i < CLIENTS; i++) {
                String tab = "tab-" + i;
                Thread client = new Thread(() -> turn(address, tab, text, endNs, tookMs, statuses));
                client.start();
                clients.add(client);
            }
            Thread.sleep((long) (500 * lengthS));
            System.out.printf("memory in use: %.0f MB%n", usedMb());
            for (Thread client : clients) {
                client.join();
            }
            System.out.printf("memory in use: %.0f MB%n", usedMb());
            List<Double> sorted = tookMs.stream().sorted().toList();
            System.out.printf(
                    "%d clients, %.0f s, %d answers %s, %d faults; median %.0f ms, 95 in 100 below %.0f ms; under way %d%n",
                    CLIENTS,
                    lengthS,
                    sorted.size(),
                    statuses,
                    faults.size(),
                    sorted.get(sorted.size() / 2),
                    sorted.get((int) (0.95 * sorted.size())),
                    server.underWay());
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
