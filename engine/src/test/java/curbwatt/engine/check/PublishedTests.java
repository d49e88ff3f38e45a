package curbwatt.engine.check;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.platform.commons.annotation.Testable;
import org.junit.platform.commons.support.AnnotationSupport;
import org.junit.platform.commons.support.HierarchyTraversalMode;
import org.junit.platform.engine.support.descriptor.MethodSource;

/** Every test there is that checks published values, whether it ran or not. */
final class PublishedTests {

    private PublishedTests() {}

    /** Names of the test methods of every compiled class named {@code …PublishedTest}, and of those nested in one. */
    static Set<String> all() {
        Set<String> names = new TreeSet<>();
        for (String type : classes()) {
            try {
                Class<?> test = Class.forName(type, false, PublishedTests.class.getClassLoader());
                AnnotationSupport.findAnnotatedMethods(test, Testable.class, HierarchyTraversalMode.TOP_DOWN)
                        .forEach(method -> names.add(type + "#" + method.getName()));
            } catch (ClassNotFoundException e) {
                throw new IllegalStateException(e);
            }
        }
        return names;
    }

    static String name(MethodSource method) {
        return method.getClassName() + "#" + method.getMethodName();
    }

    private static List<String> classes() {
        Path folder = folder();
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> folder.relativize(file).toString())
                    .filter(file -> file.matches(".*PublishedTest(\\$.*)?\\.class"))
                    .map(file -> file.replaceAll("\\.class$", "").replaceAll("[/\\\\]", "."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path folder() {
        try {
            return Path.of(PublishedTests.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
