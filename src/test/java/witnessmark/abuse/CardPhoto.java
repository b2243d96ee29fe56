package witnessmark.abuse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Photo;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.PhotoFile;
import witnessmark.picture.MadePictures;
import witnessmark.store.Garage;

/** Photos brought in from a card that lies on no watched disk, and whether their bytes are where they belong. */
final class CardPhoto {
    private static final String NAME = "IMG_of_a_card_";

    private CardPhoto() {}

    /** A picture on the card; each number another. */
    static Path onCard(int number) throws IOException {
        Path card = Files.createDirectories(Path.of(System.getProperty("java.io.tmpdir"))
                .resolve("card-" + ProcessHandle.current().pid()));
        card.toFile().deleteOnExit();
        Path file = Files.write(card.resolve(NAME + number + ".JPG"), MadePictures.photographed(48, 32, 1, number));
        file.toFile().deleteOnExit();
        return file;
    }

    /** What is written of one whose bytes were taken. */
    static Entry<Photo> of(PhotoFile taken) {
        return Garage.made(new Photo(
                taken.name(),
                taken.bytes().sha256(),
                taken.bytes().size(),
                taken.media(),
                taken.width(),
                taken.height(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                "liner",
                Garage.hour(1),
                "Ada"));
    }

    /** Photos of the card that are written and whose bytes are not there, or others: what must never be. */
    static List<String> bare(Logbook logbook) throws IOException {
        List<String> bare = new ArrayList<>();
        for (Entry<Photo> each : logbook.facts().of(Photo.class).all()) {
            String content = each.fact().content();
            Path lies =
                    logbook.photos().folder().resolve(content.substring(0, 2)).resolve(content);
            if (each.fact().name().startsWith(NAME)
                    && !(Files.isRegularFile(lies)
                            && sha256(Files.readAllBytes(lies)).equals(content))) {
                bare.add(each.fact().name());
            }
        }
        return bare;
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
