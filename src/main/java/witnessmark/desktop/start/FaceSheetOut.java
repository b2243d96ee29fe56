package witnessmark.desktop.start;

import java.util.Optional;
import java.util.function.Supplier;
import witnessmark.domain.Part;
import witnessmark.logbook.View;
import witnessmark.logbook.faces.FaceInSight;
import witnessmark.logbook.faces.SeeFaces;

/** Writes the face on the bench as pages to print; where nobody was there yet, the first that was looked at. */
final class FaceSheetOut {
    static final String NOT_IN_NAMES = "[^\\p{L}\\p{N}._-]+";

    private final StartContext context;
    private final Reports reports;
    private Supplier<Optional<FaceInSight>> shown = Optional::empty;

    FaceSheetOut(StartContext context, Reports reports) {
        this.context = context;
        this.reports = reports;
    }

    /** Says which face is on the bench. */
    void shown(Supplier<Optional<FaceInSight>> face) {
        shown = face;
    }

    /** Asks where to, and writes the face that is shown by then; says so where there is none. */
    void writeOut() {
        View view = context.logbook().view();
        shown.get()
                .filter(face -> view.facts().of(Part.class).find(face.part()).isPresent())
                .or(() -> SeeFaces.usual(SeeFaces.all(view)).map(FaceInSight::of))
                .ifPresentOrElse(face -> out(view, face).writeOut(), () -> reports.say("facesheet.none"));
    }

    private FileOut out(View view, FaceInSight face) {
        return new FileOut(
                context,
                reports,
                "facesheet",
                ".pdf",
                context.choosing()::faceSheetToWrite,
                () -> file -> context.uses().faceSheet().write(context.logbook(), face, file),
                () -> view.facts().of(Part.class).get(face.part()).mark().replaceAll(NOT_IN_NAMES, "-"));
    }
}
