package witnessmark.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;

/** Picture files as cameras, telephones and ill will make them. The same seed gives the same bytes. */
public final class MadePictures {
    /** In the Exif of {@link #exif}: 51.5 degrees north. */
    public static final int DEGREES = 51;

    private MadePictures() {}

    /** Something with an upper left corner: red there, blue at the upper right, noise elsewhere. */
    public static BufferedImage image(int width, int height, long seed) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(seed);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(90 + random.nextInt(60), 90 + random.nextInt(60), 90));
        g.fillRect(0, 0, width, height);
        g.setColor(Color.RED);
        g.fillRect(0, 0, width / 2, height / 2);
        g.setColor(Color.BLUE);
        g.fillRect(width / 2, 0, width - width / 2, height / 2);
        for (int i = 0; i < 40; i++) {
            g.setColor(new Color(random.nextInt(0x1000000)));
            g.drawOval(random.nextInt(width), height / 2 + random.nextInt(height / 2), width / 8, height / 8);
        }
        g.dispose();
        return image;
    }

    /** @param format of ImageIO: jpg, png, gif, bmp */
    public static byte[] bytes(String format, int width, int height, long seed) {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(image(width, height, seed), format, out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A JPEG as a telephone makes it: with its place, its maker and a remark. */
    public static byte[] photographed(int width, int height, int turn, long seed) {
        byte[] jpeg = bytes("jpg", width, height, seed);
        byte[] exif = join("Exif\0\0".getBytes(StandardCharsets.US_ASCII), exif(turn));
        byte[] xmp =
                "http://ns.adobe.com/xap/1.0/\0<x exif:GPSLatitude=\"51,30N\"/>".getBytes(StandardCharsets.US_ASCII);
        byte[] said = "taken behind the old barn".getBytes(StandardCharsets.US_ASCII);
        return join(
                Arrays.copyOf(jpeg, 2),
                segment(0xE1, exif),
                segment(0xE1, xmp),
                segment(0xFE, said),
                Arrays.copyOfRange(jpeg, 2, jpeg.length),
                "a second picture behind the end, with its GPS".getBytes(StandardCharsets.US_ASCII));
    }

    /** A PNG with the same beside it, in chunks right after the first (PNG, third edition, 11.3). */
    public static byte[] photographedPng(int width, int height, int turn, long seed) throws IOException {
        byte[] png = bytes("png", width, height, seed);
        int afterHeader = 8 + 12 + 13;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(png, 0, afterHeader);
        chunk(out, "eXIf", exif(turn));
        chunk(out, "tEXt", "Comment\0taken behind the old barn".getBytes(StandardCharsets.US_ASCII));
        out.write(png, afterHeader, png.length - afterHeader);
        return out.toByteArray();
    }

    /** A TIFF stream with orientation, moment, offset and place, least significant byte first. */
    public static byte[] exif(int turn) {
        ByteBuffer out = ByteBuffer.allocate(240).order(ByteOrder.LITTLE_ENDIAN);
        out.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8);
        out.putShort((short) 3);
        entry(out, 0x0112, 3, 1, turn);
        entry(out, 0x8769, 4, 1, 50);
        entry(out, 0x8825, 4, 1, 80);
        out.putInt(0);
        out.position(50);
        out.putShort((short) 2);
        entry(out, 0x9003, 2, 20, 110);
        entry(out, 0x9011, 2, 7, 130);
        out.putInt(0);
        out.position(80);
        out.putShort((short) 2);
        entry(out, 0x0001, 2, 2, 'N');
        entry(out, 0x0002, 5, 3, 140);
        out.putInt(0);
        out.position(110);
        out.put("2026:05:03 16:07:09\0".getBytes(StandardCharsets.US_ASCII));
        out.put("+02:00\0".getBytes(StandardCharsets.US_ASCII));
        out.position(140);
        out.putInt(DEGREES).putInt(1).putInt(30).putInt(1).putInt(0).putInt(1);
        return out.array();
    }

    private static void entry(ByteBuffer out, int tag, int type, int count, int value) {
        out.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    private static byte[] segment(int marker, byte[] body) {
        int length = body.length + 2;
        return join(new byte[] {(byte) 0xFF, (byte) marker, (byte) (length >> 8), (byte) length}, body);
    }

    /** A GIF in which pictures follow each other: the blocks of one repeated. */
    public static byte[] moving(int frames, long seed) {
        byte[] gif = bytes("gif", 64, 48, seed);
        int colours = 13 + 3 * (2 << (gif[10] & 7));
        byte[] head = Arrays.copyOf(gif, colours);
        byte[] blocks = Arrays.copyOfRange(gif, colours, gif.length - 1);
        byte[] all = head;
        for (int i = 0; i < frames; i++) {
            all = join(all, blocks);
        }
        return join(all, new byte[] {0x3B});
    }

    /** A grey PNG of any size, written row by row: small on the disk where its rows are alike. */
    public static void largePng(Path file, int width, int height, boolean written) throws IOException {
        try (OutputStream out = Files.newOutputStream(file)) {
            out.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A});
            chunk(
                    out,
                    "IHDR",
                    ByteBuffer.allocate(13)
                            .putInt(width)
                            .putInt(height)
                            .put((byte) 8)
                            .array());
            if (written) {
                ByteArrayOutputStream packed = new ByteArrayOutputStream();
                Deflater quick = new Deflater(Deflater.BEST_SPEED);
                try (DeflaterOutputStream rows = new DeflaterOutputStream(packed, quick, 1 << 16)) {
                    byte[] row = new byte[width + 1];
                    Arrays.fill(row, 1, width / 2, (byte) 0xE0);
                    for (int y = 0; y < height; y++) {
                        rows.write(row);
                    }
                }
                quick.end();
                chunk(out, "IDAT", packed.toByteArray());
            }
            chunk(out, "IEND", new byte[0]);
        }
    }

    private static void chunk(OutputStream out, String kind, byte[] body) throws IOException {
        byte[] named = join(kind.getBytes(StandardCharsets.US_ASCII), body);
        CRC32 check = new CRC32();
        check.update(named);
        DataOutputStream data = new DataOutputStream(out);
        data.writeInt(body.length);
        data.write(named);
        data.writeInt((int) check.getValue());
    }

    static byte[] join(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
