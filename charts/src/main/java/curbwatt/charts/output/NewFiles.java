package curbwatt.charts.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;

/** Files that a user will edit: laid beside what is there, never over it. */
public final class NewFiles {

    private NewFiles() {}

    /**
     * Writes the files into a folder, which is made if need be.
     *
     * @param folder the folder
     * @param files contents by name
     * @throws FolderRefusedException if one of the names is taken; then nothing is written
     */
    public static void write(Path folder, Map<String, byte[]> files) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new FolderRefusedException(folder + " is a file, not a folder");
        }
        for (String name : files.keySet()) {
            if (Files.exists(folder.resolve(name))) {
                throw new FolderRefusedException(folder.resolve(name) + " is there already; it stays untouched");
            }
        }
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                Files.write(folder.resolve(file.getKey()), file.getValue(), StandardOpenOption.CREATE_NEW);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("could not write into " + folder, e);
        }
    }
}
