package curbwatt.engine.check;

import static java.lang.System.Logger.Level.INFO;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.platform.engine.TestExecutionResult;
import org.junit.platform.engine.TestExecutionResult.Status;
import org.junit.platform.engine.reporting.ReportEntry;
import org.junit.platform.engine.support.descriptor.MethodSource;
import org.junit.platform.launcher.TestExecutionListener;
import org.junit.platform.launcher.TestIdentifier;
import org.junit.platform.launcher.TestPlan;

/**
 * Writes the validation page after a run in which every {@code …PublishedTest} passed.
 *
 * <p>The build hands in the page's path; without it, as in an editor, nothing is written. After a run of some of them,
 * or
 * one in which one failed, the page on disk is left as it is.
 */
public final class ValidationListener implements TestExecutionListener {

    private static final String PAGE = "curbwatt.validation.page";

    private final List<ValidationRow> rows = new ArrayList<>();
    private final Set<String> passed = new TreeSet<>();
    private final Set<String> failed = new TreeSet<>();

    @Override
    public synchronized void reportingEntryPublished(TestIdentifier test, ReportEntry entry) {
        if (Published.isEntry(entry.getKeyValuePairs())) {
            MethodSource method = method(test).orElseThrow();
            rows.add(new ValidationRow(
                    method.getClassName(),
                    method.getMethodName(),
                    Published.of(entry.getKeyValuePairs()),
                    Double.parseDouble(entry.getKeyValuePairs().get("ours"))));
        }
    }

    @Override
    public synchronized void executionFinished(TestIdentifier test, TestExecutionResult result) {
        String name = method(test).map(PublishedTests::name).orElseGet(test::getDisplayName);
        (result.getStatus() == Status.SUCCESSFUL ? passed : failed).add(name);
    }

    @Override
    public synchronized void testPlanExecutionFinished(TestPlan plan) {
        String page = System.getProperty(PAGE);
        if (page == null || rows.isEmpty()) {
            return;
        }
        Set<String> missing = PublishedTests.all();
        failed.retainAll(missing);
        missing.removeAll(passed);
        missing.removeAll(failed);
        if (missing.isEmpty() && failed.isEmpty()) {
            write(Path.of(page), ValidationPage.text(rows));
        } else {
            System.getLogger(PAGE).log(INFO, "page left as it is; failed: {0}; not run: {1}", failed, missing);
        }
    }

    private static Optional<MethodSource> method(TestIdentifier test) {
        return test.getSource().filter(MethodSource.class::isInstance).map(MethodSource.class::cast);
    }

    private static void write(Path page, String text) {
        try {
            if (Files.exists(page) && Files.readString(page).equals(text)) {
                return;
            }
            Files.createDirectories(page.getParent());
            Path aside = page.resolveSibling(page.getFileName() + ".new");
            Files.writeString(aside, text);
            Files.move(aside, page, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
