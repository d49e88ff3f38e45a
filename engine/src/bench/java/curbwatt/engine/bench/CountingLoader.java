package curbwatt.engine.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Loads the engine once more, with {@link CountedMath} where it calls {@code Math}: the name of the class is exchanged in the
 * constant pool, where it stands as a length and its letters. Nothing in a class file points past it.
 */
final class CountingLoader extends ClassLoader {

    private static final byte[] MATH = constant("java/lang/Math");
    private static final byte[] COUNTED = constant(CountedMath.class.getName().replace('.', '/'));

    private CountingLoader(ClassLoader parent) {
        super(parent);
    }

    /** Calls of the functions that take long in one run of the standard scene in long steps, the making of it aside. */
    static Map<String, Long> callsInLongSteps() {
        try {
            Class<?> scene =
                    new CountingLoader(CountingLoader.class.getClassLoader()).loadClass(CountedRun.class.getName());
            Supplier<?> run = (Supplier<?>) scene.getConstructor().newInstance();
            CountedMath.takeCalls();
            if (run.get() == null) {
                throw new IllegalStateException("the counted run gave nothing");
            }
            return CountedMath.takeCalls();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("the counted run could not be made", e);
        }
    }

    private static byte[] constant(String name) {
        byte[] letters = name.getBytes(StandardCharsets.US_ASCII);
        // 1: a string of the constant pool
        return ByteBuffer.allocate(3 + letters.length)
                .put((byte) 1)
                .putShort((short) letters.length)
                .put(letters)
                .array();
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (!name.startsWith("curbwatt.engine.") || name.equals(CountedMath.class.getName())) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> loaded = findLoadedClass(name);
            if (loaded != null) {
                return loaded;
            }
            byte[] bytes = exchanged(bytes(name));
            return defineClass(name, bytes, 0, bytes.length);
        }
    }

    private byte[] bytes(String name) throws ClassNotFoundException {
        try (InputStream in = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
            if (in == null) {
                throw new ClassNotFoundException(name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] exchanged(byte[] bytes) {
        for (int at = 0; at + MATH.length <= bytes.length; at++) {
            if (ByteBuffer.wrap(bytes, at, MATH.length).equals(ByteBuffer.wrap(MATH))) {
                return ByteBuffer.allocate(bytes.length - MATH.length + COUNTED.length)
                        .put(bytes, 0, at)
                        .put(COUNTED)
                        .put(bytes, at + MATH.length, bytes.length - at - MATH.length)
                        .array();
            }
        }
        return bytes;
    }
}
