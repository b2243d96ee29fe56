package witnessmark.desktop.photos;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Engine;
import witnessmark.domain.Facts;
import witnessmark.domain.Part;
import witnessmark.domain.Photo;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words a photo. */
final class PhotoWords {
    private final Texts texts;
    private final Measures measures;

    PhotoWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** What it shows; its file where nobody wrote that. */
    String title(Photo photo) {
        return photo.caption().isBlank() ? photo.name() : photo.caption();
    }

    /** When: "taken 3 May 16:07", or when it was put in. */
    String when(Photo photo) {
        return photo.taken() == null
                ? texts.get("photos.put", measures.moment(photo.at()))
                : measures.moment(photo.taken());
    }

    /** Of what, when, by whom, and the file. */
    String about(Photo photo, Facts facts) {
        List<String> all = new ArrayList<>();
        if (photo.engine() != null) {
            all.add(facts.of(Engine.class).get(photo.engine()).number());
        }
        if (photo.part() != null) {
            all.add(facts.of(Part.class).get(photo.part()).mark());
        }
        if (photo.number() != null) {
            all.add(texts.get("photos.number", photo.number()));
        }
        all.add(
                photo.taken() == null
                        ? texts.get("photos.put", measures.fullMoment(photo.at()))
                        : texts.get("photos.taken", measures.fullMoment(photo.taken())));
        all.add(texts.get("photos.by", photo.by()));
        if (photo.width() != null && photo.height() != null) {
            all.add(texts.get("photos.pixels", photo.width(), photo.height()));
        }
        if (!title(photo).equals(photo.name())) {
            all.add(photo.name());
        }
        return measures.row(all);
    }
}
