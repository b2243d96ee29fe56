package witnessmark.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.history.Amendment;

/**
 * What this computer last saw in the logbook at one place, kept outside the file: no file can tell by itself that it is
 * an older copy of itself, or that the log of its last writes ends too early. It is written after each commit, so that
 * it never knows more than the disk has, and nobody waits for it: two slots take turns, each sealed, and one that a power
 * cut tore leaves the other. That it cannot be written is logged and hurts nothing.
 *
 * <p>What turns out to be missing is kept beside until the file has it again or somebody goes on without it, since the
 * witness itself goes on with the file.
 */
final class Witness implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Witness.class);
    private static final int SLOT = 4_096;
    private static final int SLOTS = 2;
    private static final String MISSING = ".missing";

    private final Path file;
    private final Canonical canonical;
    private @Nullable FileChannel channel;
    private @Nullable ChainEnds seen;
    private long writings;

    /** @param file made when something is first seen */
    Witness(Path file, Canonical canonical) {
        this.file = file;
        this.canonical = canonical;
        read();
    }

    /**
     * Holds the file against what was seen in it, and goes on with what is in it now.
     *
     * @param goOn whether it is open to be written; else it is only looked at
     * @return what was seen in it and is missing, now or since an earlier opening
     */
    Optional<ChainEnds.Missing> compare(Database database, boolean goOn) throws SQLException {
        ChainEnds before = seen;
        Optional<ChainEnds.Missing> missing = before == null ? Optional.empty() : before.missingIn(database);
        if (missing.isEmpty()) {
            missing = missingSinceEarlier(database, goOn);
        } else if (goOn && before != null) {
            keepMissing(before, missing.get());
        }
        if (goOn && (before == null || !before.areThoseOf(database))) {
            put(ChainEnds.of(database));
        }
        return missing;
    }

    /** Takes note of what was written in the file just now. */
    void saw(List<Amendment> written) {
        ChainEnds before = seen;
        if (before != null && !written.isEmpty()) {
            put(before.after(written));
        }
    }

    /** Brings it to the disk; for moments at which nobody waits. */
    void settle() {
        try {
            FileChannel open = channel;
            if (open != null && open.isOpen()) {
                open.force(false);
            }
        } catch (IOException e) {
            gaveUp(e);
        }
    }

    /** What is missing is missing: it is not told again. */
    void acceptMissing() {
        LOG.info("somebody goes on without what is missing: {}", missingFile());
        SafeFiles.remove(missingFile());
    }

    /** Another file is put in that place on purpose: what was seen of the one before says nothing of it. */
    void forget() {
        close();
        seen = null;
        SafeFiles.remove(file);
        SafeFiles.remove(missingFile());
    }

    @Override
    public void close() {
        settle();
        FileChannel open = channel;
        channel = null;
        try {
            if (open != null) {
                open.close();
            }
        } catch (IOException e) {
            LOG.debug("the witness cannot be closed: {}", file, e);
        }
    }

    private Optional<ChainEnds.Missing> missingSinceEarlier(Database database, boolean goOn) throws SQLException {
        Path kept = missingFile();
        if (!Files.exists(kept)) {
            return Optional.empty();
        }
        try {
            String text = Files.readString(kept);
            int end = Math.max(0, text.indexOf('\n'));
            if (ChainEnds.read(text.substring(end + 1)).missingIn(database).isPresent()) {
                return Optional.of(ChainEnds.Missing.read(text.substring(0, end))); // as it was before it went on
            }
            if (goOn) {
                SafeFiles.remove(kept); // the right file is back
            }
            return Optional.empty();
        } catch (IOException | IllegalArgumentException e) {
            LOG.warn("what is missing cannot be read: {}", kept, e);
            return Optional.empty();
        }
    }

    private void keepMissing(ChainEnds ends, ChainEnds.Missing missing) {
        try {
            SafeFiles.write(missingFile(), missing.text() + "\n" + ends.text());
        } catch (IOException e) {
            LOG.warn("what is missing is told this once only: {}", file, e);
        }
    }

    private Path missingFile() {
        return file.resolveSibling(file.getFileName() + MISSING);
    }

    private void put(ChainEnds ends) {
        seen = ends;
        writings++;
        byte[] text = sealed(writings + "\n" + ends.text()).getBytes(StandardCharsets.UTF_8);
        if (text.length > SLOT) {
            LOG.warn("too many computers wrote in this logbook for the witness: {}", file);
            return;
        }
        ByteBuffer slot = ByteBuffer.allocate(SLOT).put(text).position(0).limit(SLOT);
        try {
            long at = writings % SLOTS * SLOT;
            FileChannel open = opened();
            while (slot.hasRemaining()) {
                open.write(slot, at + slot.position());
            }
        } catch (IOException e) {
            gaveUp(e);
        }
    }

    private FileChannel opened() throws IOException {
        FileChannel open = channel;
        if (open == null || !open.isOpen()) {
            SafeFiles.createPrivateFolder(SafeFiles.folderOf(file));
            if (!Files.exists(file)) {
                SafeFiles.createPrivate(file);
            }
            open = FileChannel.open(file, StandardOpenOption.WRITE);
            channel = open;
        }
        return open;
    }

    /** For now: the next writing tries again. */
    private void gaveUp(IOException e) {
        LOG.warn("the witness cannot be written: {}", file, e);
        FileChannel open = channel;
        channel = null;
        try {
            if (open != null) {
                open.close();
            }
        } catch (IOException closing) {
            LOG.debug("nor closed", closing);
        }
    }

    private void read() {
        if (!Files.exists(file)) {
            return;
        }
        try {
            byte[] all = Files.readAllBytes(file);
            for (int at = 0; at < SLOTS * SLOT && at < all.length; at += SLOT) {
                take(new String(all, at, Math.min(SLOT, all.length - at), StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            LOG.warn("the witness cannot be read: {}", file, e);
        }
    }

    /** One slot: the latest that is whole counts. */
    private void take(String slot) {
        int zeros = slot.indexOf('\0');
        String text = zeros < 0 ? slot : slot.substring(0, zeros);
        int end = text.indexOf('\n');
        String rest = end < 0 ? "" : text.substring(end + 1);
        int count = rest.indexOf('\n');
        if (count < 0 || !sealed(rest).equals(text)) {
            LOG.debug("half a slot: {}", file);
            return;
        }
        try {
            long number = Long.parseLong(rest.substring(0, count));
            if (number > writings) {
                seen = ChainEnds.read(rest.substring(count + 1));
                writings = number;
            }
        } catch (IllegalArgumentException e) {
            LOG.warn("the witness cannot be read: {}", file, e);
        }
    }

    private String sealed(String text) {
        return canonical.hash(text) + "\n" + text;
    }
}
