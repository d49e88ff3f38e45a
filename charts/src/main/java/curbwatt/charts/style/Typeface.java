package curbwatt.charts.style;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;

/**
 * The typeface that ships with the program: Inter, regular and semi-bold.
 *
 * <p>Java draws no text at all on a machine without fonts or without fontconfig, the bundled ones included. It is
 * therefore told, before it looks, that this typeface is all there is. Where that comes too late because something
 * else drew first, the machine's own fonts have been found and nothing is lost.
 */
public final class Typeface {

    private static final String REGULAR = "Inter-Regular";
    private static final String STRONG = "Inter-SemiBold";
    private static final String CONFIGURATION = "sun.awt.fontconfig";

    private final Font regular;
    private final Font strong;

    private Typeface() {
        try {
            Path folder = Files.createTempDirectory("curbwatt-font");
            folder.toFile().deleteOnExit();
            File regularFile = copy(REGULAR + ".ttf", folder);
            File strongFile = copy(STRONG + ".ttf", folder);
            if (System.getProperty(CONFIGURATION) == null && !hasOwnFontSystem()) {
                Path configuration = folder.resolve("fontconfig.properties");
                Files.writeString(configuration, configuration(regularFile), StandardCharsets.ISO_8859_1);
                configuration.toFile().deleteOnExit();
                System.setProperty(CONFIGURATION, configuration.toString());
            }
            this.regular = Font.createFont(Font.TRUETYPE_FONT, regularFile);
            this.strong = Font.createFont(Font.TRUETYPE_FONT, strongFile);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface could not be laid in the temporary folder", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the bundled typeface is damaged", e);
        }
    }

    /**
     * The typeface, ready for drawing. The first call in a process lays two small files in the temporary folder,
     * removed at its end, and turns off the search for a screen; every picture makes it by itself.
     *
     * @throws UncheckedIOException if the temporary folder can't be written
     */
    public static Typeface prepare() {
        return Loaded.TYPEFACE;
    }

    /** Regular weight at a size (px). */
    public Font regular(float size) {
        return regular.deriveFont(size);
    }

    /** Semi-bold weight at a size (px). */
    public Font strong(float size) {
        return strong.deriveFont(size);
    }

    /**
     * Rules of a style sheet that carry the typeface, families {@code Inter} and {@code Inter SemiBold}; about 32
     * kB.
     */
    public static String css() {
        return face("Inter", REGULAR) + face("Inter SemiBold", STRONG);
    }

    private static String face(String family, String file) {
        return "@font-face{font-family:'" + family + "';src:url(data:font/woff2;base64,"
                + Base64.getEncoder().encodeToString(bytes(file + ".woff2")) + ") format('woff2')}\n";
    }

    private static File copy(String name, Path folder) throws IOException {
        Path file = folder.resolve(name);
        Files.write(file, bytes(name));
        file.toFile().deleteOnExit();
        return file.toFile();
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Typeface.class.getResourceAsStream("/curbwatt/font/" + name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled typeface " + name + " can't be read", e);
        }
    }

    private static boolean hasOwnFontSystem() {
        String system = System.getProperty("os.name");
        return system.startsWith("Windows") || system.startsWith("Mac");
    }

    /** Every name that Java knows of itself leads to the one file. */
    private static String configuration(File font) {
        StringBuilder lines = new StringBuilder("version=1\nsequence.allfonts=default\n");
        for (String name : List.of("allfonts", "serif", "sansserif", "monospaced", "dialog", "dialoginput")) {
            if (name.equals("allfonts")) {
                lines.append("allfonts.default=Inter\n");
                continue;
            }
            for (String style : List.of("plain", "bold", "italic", "bolditalic")) {
                lines.append(name).append('.').append(style).append(".default=Inter\n");
            }
        }
        return lines.append("filename.Inter=")
                .append(font.getPath())
                .append('\n')
                .toString();
    }

    /** Laid down once, when first asked for. */
    private static final class Loaded {
        private static final Typeface TYPEFACE;

        static {
            // No picture needs a screen, and looking for one fails on a machine that has none.
            if (System.getProperty("java.awt.headless") == null) {
                System.setProperty("java.awt.headless", "true");
            }
            TYPEFACE = new Typeface();
        }

        private Loaded() {}
    }
}
