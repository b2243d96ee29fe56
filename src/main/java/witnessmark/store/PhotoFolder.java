package witnessmark.store;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Photo;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.PhotoFile;
import witnessmark.logbook.port.Photos;
import witnessmark.logbook.port.Pixels;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.picture.Picture;
import witnessmark.picture.Pictures;

/**
 * The folder {@code NAME.photos} beside a logbook: {@code ab/SHA-256} are the bytes as they came, {@code small} holds small
 * pictures that may be deleted at any time. A file is written aside, brought to the disk, and only then named; one that is there
 * is never written over.
 */
final class PhotoFolder implements Photos {
    private static final Logger LOG = LoggerFactory.getLogger(PhotoFolder.class);
    private static final String ENDING = ".photos";
    private static final String LOGBOOK = ".witness";
    private static final String SMALL_ONES = "small";
    private static final String JPEG = "jpg";

    private final Path folder;
    private final Path copies;
    private final boolean readOnly;

    /**
     * @param folder where they lie
     * @param copies another such folder, in which one that is missing is looked for
     * @param readOnly whether none is put there
     */
    PhotoFolder(Path folder, Path copies, boolean readOnly) {
        this.folder = folder;
        this.copies = copies;
        this.readOnly = readOnly;
    }

    /** Where the photos of a logbook lie. */
    static Path beside(Path logbook) {
        String name = String.valueOf(logbook.getFileName());
        String stem = name.endsWith(LOGBOOK) ? name.substring(0, name.length() - LOGBOOK.length()) : name;
        return logbook.resolveSibling(stem + ENDING);
    }

    @Override
    public Path folder() {
        return folder;
    }

    @Override
    public Outcome<PhotoFile> look(Path file) {
        String name = String.valueOf(file.getFileName());
        try {
            if (!Files.isRegularFile(file)) {
                return Outcome.didNot(Problem.of(ProblemKind.NO_SUCH_FILE, file));
            }
            long size = Files.size(file);
            if (size == 0) {
                return Outcome.didNot(Problem.of(ProblemKind.PHOTO_EMPTY, name));
            }
            Picture picture = Pictures.look(file);
            Optional<Problem> refused = PhotoWords.refused(name, size, picture);
            if (refused.isPresent()) {
                return Outcome.didNot(refused.get());
            }
            boolean sized = picture.width() > 0 && picture.height() > 0;
            PhotoFile found = new PhotoFile(
                    name,
                    Kept.at(digest(file), (int) size, () -> Files.newInputStream(file)),
                    picture.media().mime(),
                    sized ? picture.width() : null,
                    sized ? picture.height() : null,
                    picture.taken(),
                    picture.offset());
            List<Problem> known = PhotoWords.toBeKnown(name, picture);
            return known.isEmpty() ? Outcome.worked(found) : new Outcome.WorkedExcept<>(found, known);
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, file, Faults.words(e)));
        }
    }

    @Override
    public Outcome<PhotoFile> take(Path file) {
        if (readOnly) {
            return Outcome.didNot(Problem.of(ProblemKind.OPEN_READ_ONLY));
        }
        return look(file).then(found -> {
            try {
                put(found.bytes());
                return Outcome.worked(found);
            } catch (IOException e) {
                return Outcome.didNot(Faults.writing(folder, e));
            }
        });
    }

    /**
     * Puts bytes there unless they are there.
     *
     * @throws IOException if they cannot be read or written, or are not what they were said to be
     */
    void put(Kept kept) throws IOException {
        Path file = file(kept.sha256());
        if (isWhole(file, kept.sha256())) {
            return;
        }
        SafeFiles.createPrivateFolder(SafeFiles.folderOf(file));
        Path aside = folder.resolve(UUID.randomUUID() + CopyFolder.ASIDE);
        try {
            SafeFiles.createPrivate(aside);
            MessageDigest digest = sha256();
            try (InputStream in = new DigestInputStream(kept.open(), digest);
                    var out = Files.newOutputStream(aside, StandardOpenOption.WRITE)) {
                in.transferTo(out);
            }
            if (!HexFormat.of().formatHex(digest.digest()).equals(kept.sha256())) {
                throw new IOException("it was changed while it was read");
            }
            SafeFiles.sync(aside);
            name(aside, file);
        } finally {
            SafeFiles.remove(aside);
        }
    }

    /** Gives it its name; what lies there and is something else gets another one first. */
    private void name(Path aside, Path file) throws IOException {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            Files.move(file, file.resolveSibling(file.getFileName() + ".spoilt-" + UUID.randomUUID()));
        }
        Files.move(aside, file);
        SafeFiles.syncFolder(SafeFiles.folderOf(file));
        SafeFiles.syncFolder(folder);
    }

    /**
     * Takes what a change brings for photos.
     *
     * @param facts as they stand
     * @return the change with what is left to be kept in the logbook itself; null when nothing is left of it
     * @throws IOException if bytes cannot be read or written, or are not what they were said to be
     */
    @Nullable
    Change taken(Change change, Facts facts) throws IOException {
        if (change.kept().isEmpty()) {
            return change;
        }
        Set<String> named = named(facts);
        change.next().forEach(entry -> {
            if (entry.fact() instanceof Photo photo) {
                named.add(photo.content());
            }
        });
        List<Kept> others = new ArrayList<>();
        for (Kept kept : change.kept()) {
            if (named.contains(kept.sha256())) {
                put(kept);
            } else {
                others.add(kept);
            }
        }
        return change.next().isEmpty() && others.isEmpty()
                ? null
                : new Change(change.who(), change.why(), change.next(), others);
    }

    /** Brings those that photos of these facts name into a folder of copies, as far as they are not there; what did not get there. */
    List<Problem> bring(Facts facts, Path to, CopiesElsewhere.Carry carry) {
        PhotoCopies.Left left = PhotoCopies.bring(folder, to, named(facts), carry);
        return left.count() == 0
                ? List.of()
                : List.of(Problem.of(ProblemKind.PHOTOS_NOT_COPIED, left.count(), to, left.said()));
    }

    @Override
    public List<Problem> check(Facts facts) {
        return facts.of(Photo.class)
                .inForce()
                .map(Entry::fact)
                .map(this::whole)
                .flatMap(file -> file.problems().stream())
                .toList();
    }

    /** What photos name, struck out or not. */
    private static Set<String> named(Facts facts) {
        Set<String> named = new HashSet<>();
        facts.of(Photo.class).all().forEach(entry -> named.add(entry.fact().content()));
        return named;
    }

    /** The bytes of that name, wherever they are found; empty when there are none. */
    Outcome<Optional<Kept>> kept(String sha256) {
        Optional<Path> file = found(sha256);
        if (file.isEmpty()) {
            return Outcome.worked(Optional.empty());
        }
        Path path = file.get();
        try {
            long size = Files.size(path);
            return size < 1 || size > Kept.MOST || !isWhole(path, sha256)
                    ? Outcome.didNot(Problem.of(ProblemKind.PHOTO_CHANGED, sha256, path))
                    : Outcome.worked(Optional.of(Kept.at(sha256, (int) size, () -> Files.newInputStream(path))));
        } catch (IOException e) {
            return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, path, Faults.words(e)));
        }
    }

    /** Every name under which something lies there. */
    List<String> names() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder, 2)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(Kept::isName)
                    .toList();
        } catch (IOException | java.io.UncheckedIOException e) {
            LOG.warn("the photos cannot be listed: {}", folder, e);
            return List.of();
        }
    }

    /** The file, brought back from the copies where it is missing; empty when it is nowhere. */
    private Optional<Path> found(String sha256) {
        Path file = file(sha256);
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.of(file);
        }
        Path copy = copies.resolve(sha256.substring(0, 2)).resolve(sha256);
        if (!isWhole(copy, sha256)) {
            return Optional.empty();
        }
        try {
            put(Kept.at(sha256, (int) Files.size(copy), () -> Files.newInputStream(copy)));
            LOG.info("a missing photo was brought back from the backups: {}", file);
            return Optional.of(file);
        } catch (IOException e) {
            LOG.warn("a missing photo is shown from the backups: {}", copy, e);
            return Optional.of(copy);
        }
    }

    private Path file(String sha256) {
        return folder.resolve(sha256.substring(0, 2)).resolve(sha256);
    }

    @Override
    public Outcome<Pixels> small(Photo photo) {
        Path small = folder.resolve(SMALL_ONES).resolve(photo.content() + "." + JPEG);
        try {
            Optional<BufferedImage> made = Files.isRegularFile(small, LinkOption.NOFOLLOW_LINKS)
                    ? Pictures.draw(small, SMALL)
                    : Optional.empty();
            if (made.isPresent()) {
                return Outcome.worked(pixels(made.get()));
            }
        } catch (IOException e) {
            LOG.info("a small picture is made anew: {}", small, e);
        }
        Outcome<BufferedImage> drawn = image(photo, SMALL);
        if (drawn.didWork()) {
            keepSmall(drawn.orThrow(), small);
        }
        return drawn.map(PhotoFolder::pixels);
    }

    /** Where it cannot be written it is made again the next time. */
    private void keepSmall(BufferedImage image, Path small) {
        Path aside = folder.resolve(UUID.randomUUID() + CopyFolder.ASIDE);
        try {
            SafeFiles.createPrivateFolder(SafeFiles.folderOf(small));
            SafeFiles.createPrivate(aside);
            Files.write(aside, jpeg(image));
            SafeFiles.moveOver(aside, small);
        } catch (IOException e) {
            LOG.info("a small picture is not kept: {}", small, e);
        } finally {
            SafeFiles.remove(aside);
        }
    }

    @Override
    public Outcome<Pixels> drawn(Photo photo, int longest) {
        return image(photo, longest).map(PhotoFolder::pixels);
    }

    @Override
    public Outcome<byte[]> forPaper(Photo photo, int longest) {
        return image(photo, longest).then(image -> {
            try {
                return Outcome.worked(jpeg(image));
            } catch (IOException e) {
                return Outcome.didNot(Problem.of(ProblemKind.PHOTO_NOT_DRAWN, photo.name(), photo.media()));
            }
        });
    }

    @Override
    public Outcome<byte[]> withoutPlace(Photo photo) {
        return whole(photo).then(file -> {
            try {
                return Pictures.bare(file)
                        .map(Outcome::worked)
                        .orElseGet(() ->
                                Outcome.didNot(Problem.of(ProblemKind.PHOTO_PLACE_STAYS, photo.name(), photo.media())));
            } catch (IOException e) {
                return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, file, Faults.words(e)));
            }
        });
    }

    private Outcome<BufferedImage> image(Photo photo, int longest) {
        return whole(photo).then(file -> {
            try {
                return Pictures.draw(file, longest)
                        .map(Outcome::worked)
                        .orElseGet(() ->
                                Outcome.didNot(Problem.of(ProblemKind.PHOTO_NOT_DRAWN, photo.name(), photo.media())));
            } catch (IOException e) {
                return Outcome.didNot(Problem.of(ProblemKind.CANNOT_READ_FILE, file, Faults.words(e)));
            }
        });
    }

    /** Its file, if that is there and is what it was. */
    private Outcome<Path> whole(Photo photo) {
        Optional<Path> file = found(photo.content());
        if (file.isEmpty()) {
            return Outcome.didNot(Problem.of(ProblemKind.PHOTO_MISSING, photo.name(), folder));
        }
        return isWhole(file.get(), photo.content())
                ? Outcome.worked(file.get())
                : Outcome.didNot(Problem.of(ProblemKind.PHOTO_CHANGED, photo.name(), file.get()));
    }

    private static boolean isWhole(Path file, String sha256) {
        try {
            return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && digest(file).equals(sha256);
        } catch (IOException e) {
            LOG.warn("a photo cannot be read: {}", file, e);
            return false;
        }
    }

    private static byte[] jpeg(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (!ImageIO.write(image, JPEG, out)) {
            throw new IOException("nothing here writes a JPEG");
        }
        return out.toByteArray();
    }

    private static Pixels pixels(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        return new Pixels(w, h, image.getRGB(0, 0, w, h, null, 0, w));
    }

    private static String digest(Path file) throws IOException {
        MessageDigest digest = sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            in.transferTo(java.io.OutputStream.nullOutputStream());
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
