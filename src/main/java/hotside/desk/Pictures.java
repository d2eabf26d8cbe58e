// SPDX-License-Identifier: Apache-2.0
package hotside.desk;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** Writes what the screen shows to PNG files. */
final class Pictures {
    private Pictures() {}

    /** Writes aside, then moves, so that no half picture is ever left. */
    static void write(WritableImage image, Path file) throws IOException {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        PixelReader pixels = image.getPixelReader();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                picture.setRGB(x, y, pixels.getArgb(x, y));
            }
        }
        Path aside = file.resolveSibling(file.getFileName() + ".part");
        ImageIO.write(picture, "png", aside.toFile());
        Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
    }
}
