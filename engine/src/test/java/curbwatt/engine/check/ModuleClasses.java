package curbwatt.engine.check;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The compiled main classes of the module whose test asks, and nothing else.
 *
 * <p>Rules over an empty set of classes pass in silence, so the classes are held against the module's source files.
 */
public final class ModuleClasses {

    private ModuleClasses() {}

    /**
     * Imports them.
     *
     * @param test a test class of the module
     * @throws IllegalStateException if a source file has no compiled class
     */
    public static JavaClasses of(Class<?> test) {
        Path target = target(test);
        Path compiled = target.resolve("classes");
        JavaClasses classes = new ClassFileImporter()
                .withImportOption(location -> !location.contains("/package-info.class"))
                .importPath(compiled);
        Set<String> missing =
                sources(target.resolveSibling("src").resolve("main").resolve("java"));
        missing.removeAll(classes.stream().map(JavaClass::getName).collect(Collectors.toSet()));
        if (!missing.isEmpty()) {
            throw new IllegalStateException("no compiled class in " + compiled + " for " + missing);
        }
        return classes;
    }

    private static Path target(Class<?> test) {
        try {
            return Path.of(test.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .getParent();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Set<String> sources(Path folder) {
        if (!Files.isDirectory(folder)) {
            return new TreeSet<>();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.map(file -> folder.relativize(file).toString())
                    .filter(name -> name.endsWith(".java") && !name.endsWith("-info.java"))
                    .map(name ->
                            name.substring(0, name.length() - ".java".length()).replaceAll("[/\\\\]", "."))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
