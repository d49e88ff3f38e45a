package curbwatt.charts.page;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import java.net.ConnectException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.net.URI;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who the page's server answers, and what it never does. */
class PageGuardTest {

    private static PageServer server;
    private static URI page;

    @BeforeAll
    static void start() {
        server = PageServer.start(
                0, new FirstScenario("demo:lane-watch", DemoScenarios.text("lane-watch")), fault -> {});
        page = server.address();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void itListensOnThisMachinesOwnAddressesAlone() throws IOException {
        assertThat(server.listensOn()).isNotEmpty().allMatch(InetAddress::isLoopbackAddress);
        List<InetAddress> others = NetworkInterface.networkInterfaces()
                .flatMap(NetworkInterface::inetAddresses)
                .filter(address -> address instanceof Inet4Address && !address.isLoopbackAddress())
                .toList();
        for (InetAddress other : others) {
            assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> new Socket(other, page.getPort()).close()))
                    .isInstanceOf(ConnectException.class);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.example", "evil.example:PORT", "127.0.0.1", "127.0.0.1:1", "0.0.0.0:PORT", ""})
    void aNameOfSomebodyElsesIsRefused(String host) throws IOException {
        String named = host.replace("PORT", String.valueOf(page.getPort()));
        assertThat(Asked.raw(page, "GET / HTTP/1.1\r\nHost: " + named + "\r\nConnection: close\r\n\r\n")
                        .status())
                .isEqualTo(421);
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "localhost", "[::1]"})
    void itsOwnNamesAreAnswered(String host) throws IOException {
        Asked answer = Asked.raw(
                page, "GET / HTTP/1.1\r\nHost: " + host + ":" + page.getPort() + "\r\nConnection: close\r\n\r\n");
        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.body()).startsWith("<!doctype html>");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Origin: http://evil.example\r\n",
                "Origin: null\r\n",
                "Origin: https://127.0.0.1:1\r\n",
                "Sec-Fetch-Site: cross-site\r\n",
                "Sec-Fetch-Site: same-site\r\n"
            })
    void whatAnotherPageAsksIsRefused(String headers) throws IOException {
        assertThat(Asked.get(page, "/start", headers).status()).isEqualTo(403);
    }

    @Test
    void aLinkElsewhereMayLeadToTheFrontDoorAndNowhereElse() throws IOException {
        String followed = "Sec-Fetch-Site: cross-site\r\nSec-Fetch-Mode: navigate\r\n";
        assertThat(Asked.get(page, "/", followed).status()).isEqualTo(200);
        assertThat(Asked.get(page, "/start", followed).status()).isEqualTo(403);
    }

    @Test
    void aFormOfAnotherPageCantSendAScenario() throws IOException {
        String question = Asked.question(page, "/run", "a", "{}").replace("application/json", "text/plain");
        assertThat(Asked.raw(page, question).status()).isEqualTo(415);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../../../../etc/passwd",
                "/%2e%2e/%2e%2e/etc/passwd",
                "/..%2f..%2fetc%2fpasswd",
                "/page/page.html",
                "//etc/passwd",
                "/main.js/",
                "/curbwatt/stock/demo/lane-watch.json"
            })
    void aPathNeverBecomesTheNameOfAFile(String path) throws IOException {
        Asked answer = Asked.get(page, path, "");
        assertThat(answer.status()).isIn(400, 404);
        assertThat(answer.body()).doesNotContain("root:").doesNotContain("<!doctype");
    }

    @ParameterizedTest
    @ValueSource(strings = {"../night-closure", "/etc/passwd", "%2e%2e%2fx", ""})
    void aDemoIsTakenFromTheListAlone(String name) throws IOException {
        Asked answer = Asked.get(page, "/demo?name=" + name, "");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.json().at("/problems/0/message").stringValue()).startsWith("There is no demo scenario");
    }

    @Test
    void everyAnswerForbidsWhatThePageDoesNotNeed() throws IOException {
        for (String path : List.of("/", "/main.js", "/start", "/nothing")) {
            assertThat(Asked.get(page, path, "").head())
                    .containsIgnoringCase(
                            "content-security-policy: default-src 'none'; script-src 'self'; style-src 'self'")
                    .doesNotContain("unsafe")
                    .containsIgnoringCase("x-content-type-options: nosniff")
                    .containsIgnoringCase("frame-ancestors 'none'")
                    .containsIgnoringCase("referrer-policy: no-referrer");
        }
    }

    @Test
    void noFileOfThePageComesFromElsewhere() throws IOException {
        for (String path : List.of("/", "/page.css", "/parts.css", "/main.js", "/api.js", "/share.js", "/dom.js")) {
            assertThat(Asked.get(page, path, "").body().replace("http://www.w3.org/2000/svg", ""))
                    .as(path)
                    .doesNotContain("http://")
                    .doesNotContain("https://")
                    .doesNotContain("innerHTML")
                    .doesNotContain(" style=");
        }
    }

    @Test
    void aTextThatIsTooLongIsRefused() throws IOException {
        assertThat(Asked.post(page, "/open", "a", "x".repeat(4_000_001)).status())
                .isEqualTo(413);
    }

    @Test
    void aMethodThatAnEndpointDoesNotKnowIsRefused() throws IOException {
        assertThat(Asked.get(page, "/run", "").status()).isEqualTo(405);
        assertThat(Asked.post(page, "/main.js", "a", "{}").status()).isEqualTo(405);
    }

    @Test
    void whatTheBrowserHasAlreadyIsNotSentAgain() throws IOException {
        String tag = Asked.get(page, "/main.js", "").head().replaceAll("(?is).*etag: (\\S+).*", "$1");
        Asked again = Asked.get(page, "/main.js", "If-None-Match: " + tag + "\r\n");
        assertThat(again.status()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
    }
}
