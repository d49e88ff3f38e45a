package curbwatt.charts.page;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpHandler;
import curbwatt.charts.output.JsonObject;
import curbwatt.scenarios.problem.ScenarioException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Where every question comes in: checked, handed to its endpoint, and answered with a sentence if that fails.
 *
 * @param guard says who may ask
 * @param endpoints by path
 * @param files what is asked for by any other path
 * @param faults hears of what is the program's fault
 */
record Gate(RequestGuard guard, Map<String, Endpoint> endpoints, StaticFiles files, Consumer<Throwable> faults)
        implements HttpHandler {

    /** Nothing from elsewhere, nothing inside a frame, no code but the page's files, no text taken for markup. */
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " font-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none';"
                    + " require-trusted-types-for 'script'; trusted-types 'none'";

    /** Copies the map. */
    Gate {
        endpoints = Map.copyOf(endpoints);
    }

    @Override
    public void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            Visit visit = new Visit(exchange);
            protect(visit);
            try {
                guard.check(visit);
                answer(visit);
            } catch (RefusedException e) {
                refuse(visit, e.status(), e.getMessage());
            } catch (ScenarioException e) {
                visit.send(422, new JsonObject().with("problems", ProblemJson.of(e.problems())));
            } catch (StoppedException e) {
                stopped(visit, e);
            } catch (UncheckedIOException e) {
                // nobody listens any more: nobody needs an answer
            } catch (RuntimeException | StackOverflowError e) {
                faults.accept(e);
                refuse(
                        visit,
                        500,
                        "The program failed (" + e.getClass().getSimpleName() + "). This is our fault, not yours.");
            }
        }
    }

    private static void protect(Visit visit) {
        visit.answerHeader("Content-Security-Policy", POLICY);
        visit.answerHeader("X-Content-Type-Options", "nosniff");
        visit.answerHeader("Referrer-Policy", "no-referrer");
        visit.answerHeader("Cross-Origin-Opener-Policy", "same-origin");
        visit.answerHeader("Cross-Origin-Resource-Policy", "same-origin");
        visit.answerHeader("Cross-Origin-Embedder-Policy", "require-corp");
        visit.answerHeader("Permissions-Policy", "camera=(), geolocation=(), microphone=(), usb=(), serial=()");
    }

    private void answer(Visit visit) throws IOException {
        Endpoint endpoint = endpoints.get(visit.path());
        if (endpoint == null) {
            files.answer(visit);
        } else if (endpoint.method().equals(visit.method())) {
            endpoint.answer(visit);
        } else {
            visit.answerHeader("Allow", endpoint.method());
            throw new RefusedException(405, "Ask with " + endpoint.method() + ".");
        }
    }

    private static void stopped(Visit visit, StoppedException why) throws IOException {
        if (why.superseded()) {
            refuse(visit, 409, "Something newer was asked meanwhile.");
        } else {
            refuse(
                    visit,
                    503,
                    "This takes longer than the page waits. Shorten the scene, or compute it with the command 'curbwatt run'.");
        }
    }

    private static void refuse(Visit visit, int status, String message) throws IOException {
        if (visit.exchange().getResponseCode() == -1) {
            visit.send(status, new JsonObject().with("message", message));
        }
    }
}
