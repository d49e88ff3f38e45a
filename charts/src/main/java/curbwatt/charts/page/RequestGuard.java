package curbwatt.charts.page;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Lets in what the page itself asks, and nothing that another page makes a browser ask.
 *
 * <p>A name of somebody else's that leads to this machine is known by its Host; a request from somebody else's page by its
 * Origin and by what the browser says of where it came from.
 *
 * @param hosts names under which the page is reached, port included
 */
record RequestGuard(Set<String> hosts) {

    /** Copies the set. */
    RequestGuard {
        hosts = Set.copyOf(hosts);
    }

    /** A guard for a page on a port of this machine. */
    static RequestGuard ofPort(int port) {
        return new RequestGuard(Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port));
    }

    /**
     * Checks a question before anything of it is read.
     *
     * @throws RefusedException if it is none of the page's
     */
    void check(Visit visit) {
        List<String> host = visit.headers("Host");
        if (host.size() != 1 || !hosts.contains(host.get(0))) {
            throw new RefusedException(421, "This page answers under the addresses of this machine alone.");
        }
        List<String> origin = visit.headers("Origin");
        if (origin.size() > 1 || origin.stream().anyMatch(from -> !from.equals("http://" + host.get(0)))) {
            throw new RefusedException(403, "This page answers no other page.");
        }
        boolean asksItself = Set.of("same-origin", "none")
                .contains(visit.header("Sec-Fetch-Site").orElse("none"));
        boolean isLink = visit.path().equals("/") && isNavigation(visit);
        if (!asksItself && !isLink) {
            throw new RefusedException(403, "This page answers no other page.");
        }
        if (visit.method().equals("POST") && !isJson(visit.header("Content-Type"))) {
            throw new RefusedException(415, "Send application/json.");
        }
    }

    /** A link elsewhere may lead to the page's own front door. */
    private static boolean isNavigation(Visit visit) {
        return visit.method().equals("GET")
                && visit.header("Sec-Fetch-Mode").filter("navigate"::equals).isPresent();
    }

    private static boolean isJson(Optional<String> type) {
        return type.map(text -> text.split(";", 2)[0].strip())
                .filter("application/json"::equals)
                .isPresent();
    }
}
