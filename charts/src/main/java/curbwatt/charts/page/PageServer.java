package curbwatt.charts.page;

import com.sun.net.httpserver.HttpServer;
import curbwatt.scenarios.assemble.Scenarios;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/** The page's server, on 127.0.0.1 and ::1 alone. It stops when it is closed. */
public final class PageServer implements AutoCloseable {

    /** More than browsers on one machine ask at a time; whoever comes beyond is turned away. */
    private static final int MOST_THREADS = 128;

    private static final int WAITING = 64;

    private final List<HttpServer> servers;
    private final ExecutorService threads;
    private final TabWork work;
    private final WarmUp warmUp;

    private PageServer(List<HttpServer> servers, ExecutorService threads, TabWork work, WarmUp warmUp) {
        this.servers = List.copyOf(servers);
        this.threads = threads;
        this.work = work;
        this.warmUp = warmUp;
    }

    /**
     * Starts the server.
     *
     * @param port where it listens; 0: any free port
     * @param first the scenario that a fresh page shows
     * @param faults hears of what is the program's fault
     * @throws PortTakenException if something else listens there
     */
    public static PageServer start(int port, FirstScenario first, Consumer<Throwable> faults) {
        limitServer();
        List<HttpServer> servers = new ArrayList<>();
        try {
            HttpServer main = HttpServer.create(new InetSocketAddress(address(127, 0, 0, 1), port), WAITING);
            servers.add(main);
            int taken = main.getAddress().getPort();
            try {
                byte[] one = new byte[16];
                one[15] = 1;
                servers.add(HttpServer.create(new InetSocketAddress(InetAddress.getByAddress(one), taken), WAITING));
            } catch (IOException e) {
                // a machine without IPv6 has one address of its own
            }
            ExecutorService threads = threads();
            TabWork work = new TabWork();
            WarmUp warmUp =
                    new WarmUp(new Scenarios(), Turns.of(Runtime.getRuntime().availableProcessors()), new PageRun());
            Gate gate = gate(taken, first, work, warmUp, faults);
            servers.forEach(server -> {
                server.createContext("/", gate);
                server.setExecutor(threads);
                server.start();
            });
            return new PageServer(servers, threads, work, warmUp);
        } catch (BindException e) {
            throw new PortTakenException(port);
        } catch (IOException e) {
            throw new UncheckedIOException("the page's server could not start", e);
        }
    }

    /** Runs a scenario a few times beside all else, so that the first turns of a knob meet compiled code. */
    public void warmUp(FirstScenario first) {
        threads.execute(() -> warmUp.run(first));
    }

    /** Where the page is. */
    public URI address() {
        return URI.create("http://127.0.0.1:" + servers.get(0).getAddress().getPort() + "/");
    }

    /** The addresses that it listens on. */
    List<InetAddress> listensOn() {
        return servers.stream().map(server -> server.getAddress().getAddress()).toList();
    }

    /** How many pieces of work are under way for tabs. */
    int underWay() {
        return work.size();
    }

    @Override
    public void close() {
        servers.forEach(server -> server.stop(0));
        threads.shutdownNow();
    }

    private static Gate gate(int port, FirstScenario first, TabWork work, WarmUp warmUp, Consumer<Throwable> faults) {
        Scenarios scenarios = warmUp.scenarios();
        int cores = Runtime.getRuntime().availableProcessors();
        Map<String, Endpoint> endpoints = Map.of(
                "/start", new StartEndpoint(scenarios, first),
                "/demo", new DemoEndpoint(scenarios),
                "/open", new OpenEndpoint(scenarios),
                "/run", new RunEndpoint(scenarios, work, warmUp.turns(), warmUp.runs()),
                // a study leaves a core to those who turn knobs
                "/map", new MapEndpoint(scenarios, work, Turns.of(Math.max(1, cores - 1))));
        return new Gate(RequestGuard.ofPort(port), endpoints, StaticFiles.shipped(), faults);
    }

    /** Small answers at once, and an end to questions that never finish. The server reads these when it is first made. */
    private static void limitServer() {
        Map<String, String> limits = Map.of(
                "sun.net.httpserver.nodelay", "true",
                "sun.net.httpserver.maxReqTime", "20",
                "sun.net.httpserver.maxReqHeaders", "60",
                "jdk.httpserver.maxConnections", "400");
        limits.forEach((name, value) -> {
            if (System.getProperty(name) == null) {
                System.setProperty(name, value);
            }
        });
    }

    private static InetAddress address(int... bytes) throws IOException {
        byte[] address = new byte[bytes.length];
        for (int i = 0; i < bytes.length; i++) {
            address[i] = (byte) bytes[i];
        }
        return InetAddress.getByAddress(address);
    }

    private static ExecutorService threads() {
        AtomicInteger number = new AtomicInteger();
        return new ThreadPoolExecutor(0, MOST_THREADS, 30, TimeUnit.SECONDS, new SynchronousQueue<>(), work -> {
            Thread thread = new Thread(work, "page " + number.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        });
    }
}
