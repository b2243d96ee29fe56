package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Which file lies at a path: device and inode. Where the system has no such key (Windows) an open file can be neither
 * replaced nor removed, and any file there is taken for the same.
 *
 * @param present whether there is a file at all
 * @param key device and inode, or null where the system has none
 */
record FileKey(boolean present, @Nullable Object key) {
    static FileKey of(Path path) {
        try {
            return new FileKey(
                    true, Files.readAttributes(path, BasicFileAttributes.class).fileKey());
        } catch (IOException e) {
            return new FileKey(false, null);
        }
    }

    /** Whether the path still leads to this file. */
    boolean stillAt(Path path) {
        FileKey now = of(path);
        return now.present && Objects.equals(now.key, key);
    }
}
