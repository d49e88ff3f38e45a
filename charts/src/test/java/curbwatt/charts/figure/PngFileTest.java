package curbwatt.charts.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Random;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PngFileTest {

    @ParameterizedTest
    @CsvSource({"1, 1", "1, 7", "640, 3", "333, 257"})
    void javasOwnReaderSeesTheSamePixels(int width, int height) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(width);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, random.nextInt());
            }
        }
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(PngFile.of(image)));
        assertThat(read.getWidth()).isEqualTo(width);
        assertThat(read.getHeight()).isEqualTo(height);
        assertThat(IntStream.range(0, width * height)
                        .filter(i -> read.getRGB(i % width, i / width) != image.getRGB(i % width, i / width)))
                .isEmpty();
    }
}
