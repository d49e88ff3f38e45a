package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import curbwatt.scenarios.stock.DemoScenarios;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** However a demo scenario is damaged, it opens or is refused with places and sentences; nothing else comes out. */
class DamagedFilesTest {
    private static final int DAMAGES = 450;
    private static final Pattern TOKEN =
            Pattern.compile("//[^\\n]*|\"(?:[^\"\\\\]|\\\\.)*\"|-?[0-9]+(?:\\.[0-9]+)?|true|false|[\\[\\]{},:]");
    private static final List<String> STRANGE = List.of(
            "null",
            "true",
            "{}",
            "[]",
            "\"\"",
            "\"x\"",
            "-1",
            "0",
            "1e400",
            "1e-400",
            "2.5",
            "NaN",
            "123456789012345678901",
            "[[]]",
            "{\"place\": 3}",
            "\"\\u0000\"",
            "\"\\ud800\"",
            "'",
            "/*",
            "\\",
            "\t",
            "°");

    private final Scenarios scenarios = new Scenarios();

    @Test
    void nothingButProblemsComesOut() {
        int opened = 0;
        for (int seed = 0; seed < DAMAGES; seed++) {
            String text = damaged(
                    DemoScenarios.text(DemoScenarios.names()
                            .get(seed % DemoScenarios.names().size())),
                    new Random(seed));
            try {
                scenarios.read("damaged.json", text);
                opened++;
            } catch (ScenarioException e) {
                int at = seed;
                assertThat(e.problems())
                        .as("seed " + seed)
                        .isNotEmpty()
                        .allSatisfy(problem -> speaks(problem, text, at));
            }
        }
        assertThat(opened).as("opened all the same").isBetween(20, DAMAGES / 2);
    }

    private static void speaks(Problem problem, String text, int seed) {
        assertThat(problem.position().line())
                .as("line, seed " + seed)
                .isBetween(1, (int) text.lines().count() + 1);
        assertThat(problem.position().column()).as("column, seed " + seed).isPositive();
        assertThat(problem.message()).isNotBlank().doesNotContain("Exception", "null.", "\n");
        assertThat(problem.message().length()).isLessThan(400);
    }

    private static String damaged(String text, Random random) {
        List<MatchResult> tokens = TOKEN.matcher(text)
                .results()
                .filter(token -> !token.group().startsWith("//"))
                .toList();
        String damaged = text;
        for (int i = 0; i <= random.nextInt(3); i++) {
            MatchResult token = tokens.get(random.nextInt(tokens.size()));
            if (token.end() > damaged.length()) {
                continue;
            }
            damaged = damaged.substring(0, token.start())
                    + instead(token.group(), random)
                    + damaged.substring(token.end());
        }
        return random.nextInt(40) == 0 ? damaged.substring(0, random.nextInt(damaged.length())) : damaged;
    }

    private static String instead(String token, Random random) {
        boolean number = Character.isDigit(token.charAt(token.length() - 1));
        boolean text = token.startsWith("\"") && token.length() > 2;
        return switch (random.nextInt(6)) {
            case 0 -> "";
            case 1 -> STRANGE.get(random.nextInt(STRANGE.size()));
            case 2 -> number ? "-" + token : token + token;
            case 3 -> number ? "\"" + token + "\"" : text ? token.replaceFirst("[a-z]", "q") : ",";
            case 4 -> number ? token + random.nextInt(1000) : text ? "\"" + token.charAt(1) + token.substring(1) : "]";
            default ->
                number ? "0." + token.replaceAll("\\D", "") : text ? token.substring(0, token.length() - 1) : token;
        };
    }
}
