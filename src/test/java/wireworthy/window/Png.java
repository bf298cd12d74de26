package wireworthy.window;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.PixelReader;

/** Writes an image as a PNG file (ISO/IEC 15948): 8 bits a channel, no transparency. */
final class Png {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    private Png() {}

    static void write(final Image image, final Path file) throws IOException {
        Files.createDirectories(file.getParent());
        try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(file))) {
            out.write(SIGNATURE);
            chunk(out, "IHDR", header(image));
            chunk(out, "IDAT", pixels(image));
            chunk(out, "IEND", new byte[0]);
        }
    }

    private static byte[] header(final Image image) throws IOException {
        final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        final DataOutputStream data = new DataOutputStream(bytes);
        data.writeInt((int) image.getWidth());
        data.writeInt((int) image.getHeight());
        data.write(new byte[] {8, 2, 0, 0, 0});
        return bytes.toByteArray();
    }

    private static byte[] pixels(final Image image) throws IOException {
        final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        final int width = (int) image.getWidth();
        final int[] row = new int[width];
        final PixelReader reader = image.getPixelReader();
        try (DataOutputStream data = new DataOutputStream(new DeflaterOutputStream(bytes))) {
            for (int y = 0; y < image.getHeight(); y++) {
                data.writeByte(0);
                reader.getPixels(0, y, width, 1, PixelFormat.getIntArgbInstance(), row, 0, width);
                for (final int colour : row) {
                    data.writeByte(colour >> 16);
                    data.writeShort(colour);
                }
            }
        }
        return bytes.toByteArray();
    }

    private static void chunk(final DataOutputStream out, final String type, final byte[] data)
            throws IOException {
        final byte[] name = type.getBytes(StandardCharsets.US_ASCII);
        final CRC32 sum = new CRC32();
        sum.update(name);
        sum.update(data);
        out.writeInt(data.length);
        out.write(name);
        out.write(data);
        out.writeInt((int) sum.getValue());
    }
}
