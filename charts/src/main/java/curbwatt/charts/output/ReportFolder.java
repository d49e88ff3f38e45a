package curbwatt.charts.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder of files that appears whole or not at all.
 *
 * <p>Files are laid into a new folder beside the target, which then takes the target's place. A folder that is already
 * there
 * is replaced only if it is empty or holds nothing but files of a report.
 *
 * @param path where the folder shall be
 * @param mark file that every folder of this kind has
 * @param ours relative names, with {@code /}, that a folder of this kind may hold
 */
public record ReportFolder(Path path, String mark, Pattern ours) {

    /** Files of a run or a study: a page, a result, tables and charts. */
    public static ReportFolder ofReport(Path path) {
        return new ReportFolder(
                path,
                "result.json",
                Pattern.compile("report\\.html|result\\.json|[a-z-]+\\.csv|charts(/[a-z-]+\\.(svg|png))?"));
    }

    /** Files of a battery label. */
    public static ReportFolder ofLabel(Path path) {
        return new ReportFolder(path, "label.json", Pattern.compile("label\\.json|charts(/[a-z-]+\\.(svg|png))?"));
    }

    /** Files of a roster. */
    public static ReportFolder ofDays(Path path) {
        return new ReportFolder(
                path, "days.json", Pattern.compile("report\\.html|days\\.json|charts(/[a-z-]+\\.(svg|png))?"));
    }

    /**
     * Looks whether the folder may be written, and writes nothing.
     *
     * @throws FolderRefusedException if something is there that is not ours
     */
    public void check() {
        if (!Files.exists(path)) {
            Path above = path.toAbsolutePath().getParent();
            while (above != null && !Files.exists(above)) {
                above = above.getParent();
            }
            if (above == null || !Files.isDirectory(above) || !Files.isWritable(above)) {
                throw new FolderRefusedException(
                        path + " can't be made: " + above + " is not a folder that can be written");
            }
            return;
        }
        if (!Files.isDirectory(path)) {
            throw new FolderRefusedException(path + " is a file; name a folder with --out");
        }
        List<String> there = names();
        for (String name : there) {
            if (!ours.matcher(name).matches()) {
                throw new FolderRefusedException(path + " holds '" + name
                        + "', which is not part of a report; it stays untouched. Name another folder" + " with --out");
            }
        }
        if (!there.isEmpty() && !there.contains(mark)) {
            throw new FolderRefusedException(
                    path + " does not look like a report: it holds no " + mark + ". Name another folder with --out");
        }
    }

    /**
     * Writes the files.
     *
     * @param files contents by relative name, with {@code /}
     * @throws FolderRefusedException if something is there that is not ours
     * @throws UncheckedIOException if the disk refuses; what was there is then there still
     */
    public void write(Map<String, byte[]> files) {
        check();
        try {
            Path parent = path.toAbsolutePath().getParent();
            Files.createDirectories(parent);
            Path fresh = parent.resolve(".curbwatt-" + ProcessHandle.current().pid());
            delete(fresh);
            Files.createDirectory(fresh);
            try {
                for (Map.Entry<String, byte[]> file : files.entrySet()) {
                    Path target = fresh.resolve(file.getKey());
                    Files.createDirectories(target.getParent());
                    Files.write(target, file.getValue());
                }
                replaceBy(fresh, parent);
            } finally {
                delete(fresh);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("could not write " + path, e);
        }
    }

    private void replaceBy(Path fresh, Path parent) throws IOException {
        if (!Files.exists(path)) {
            Files.move(fresh, path);
            return;
        }
        Path old = parent.resolve(fresh.getFileName() + "-old");
        delete(old);
        Files.move(path, old);
        try {
            Files.move(fresh, path);
        } catch (IOException e) {
            Files.move(old, path);
            throw e;
        }
        delete(old);
    }

    private List<String> names() {
        try (Stream<Path> all = Files.walk(path, 2)) {
            return all.filter(each -> !each.equals(path))
                    .map(each -> path.relativize(each).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new FolderRefusedException(path + " can't be read: " + e.getMessage());
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.sorted((a, b) -> b.compareTo(a)).toList();
        }
        for (Path each : all) {
            Files.delete(each);
        }
    }
}
