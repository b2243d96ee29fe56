package witnessmark.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Collection;
import java.util.TreeSet;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.logbook.port.Kept;

/**
 * Copies of photos: one folder beside all backups of a logbook, one in its second place. Each photo is there once, however many
 * copies of the logbook are; only those that are not there yet are copied, and none is ever taken away.
 */
final class PhotoCopies {
    /** The folder of them among the copies of a logbook. */
    static final String FOLDER = "photos";

    private static final Logger LOG = LoggerFactory.getLogger(PhotoCopies.class);

    /** What could not be copied, and what was said of the first. */
    record Left(int count, String said) {
        static final Left NOTHING = new Left(0, "");
    }

    private PhotoCopies() {}

    /** A second name for the same bytes, which nobody changes, where the disk can give one; else a copy. */
    static void linked(Path from, Path to) throws IOException {
        try {
            Files.createLink(to, from);
        } catch (UnsupportedOperationException | java.nio.file.FileSystemException e) {
            LOG.debug("no second name here: {}", to, e);
            SafeFiles.copy(from, to);
        }
    }

    /**
     * Brings those that are not there yet.
     *
     * @param from one such folder
     * @param to another
     * @param names which
     */
    static Left bring(Path from, Path to, Collection<String> names, CopiesElsewhere.Carry carry) {
        int count = 0;
        String said = "";
        for (String name : new TreeSet<>(names)) {
            if (!Kept.isName(name)) {
                continue;
            }
            Path within = Path.of(name.substring(0, 2), name);
            Path source = from.resolve(within);
            Path target = to.resolve(within);
            if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)
                    || !Files.isRegularFile(source, LinkOption.NOFOLLOW_LINKS)) {
                continue; // what is missing is said where it is shown
            }
            try {
                one(source, target, carry);
            } catch (IOException e) {
                LOG.warn("a photo is not copied: {}", target, e);
                said = count == 0 ? Faults.words(e) : said;
                count++;
            }
        }
        return count == 0 ? Left.NOTHING : new Left(count, said);
    }

    private static void one(Path source, Path target, CopiesElsewhere.Carry carry) throws IOException {
        SafeFiles.createPrivateFolder(SafeFiles.folderOf(target));
        Path aside = target.resolveSibling(target.getFileName() + CopyFolder.ASIDE);
        try {
            Files.deleteIfExists(aside); // left of one that was cut short
            carry.copy(source, aside);
            if (Files.mismatch(source, aside) != -1) {
                throw new IOException("what was written there reads otherwise");
            }
            SafeFiles.moveOver(aside, target);
        } finally {
            SafeFiles.remove(aside);
        }
    }
}
