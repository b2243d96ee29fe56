package witnessmark.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Every file in a folder by name, with its size and the SHA-256 of its bytes: equal before and after means nothing was
 * touched. Of a very large file only the beginning is read.
 */
public record FolderState(Map<String, String> files) {
    private static final int MOST = 1 << 24;

    public static FolderState of(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(folder)) {
            all.forEach(path -> files.put(
                    path.getFileName().toString(), Files.isRegularFile(path) ? hash(path) : "not an ordinary file"));
        }
        return new FolderState(files);
    }

    static String hash(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(in.readNBytes(MOST));
            return Files.size(file) + " bytes " + HexFormat.of().formatHex(digest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
