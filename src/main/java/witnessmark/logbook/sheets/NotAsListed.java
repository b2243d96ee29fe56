package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Concession;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.ledger.PartsList;
import witnessmark.quantity.Moment;

/** A part that is not what the parts list names for its position: fitted all the same, it is accepted as it is. */
record NotAsListed(String fitted, String listed) {
    static final SheetField WHY = text("accepted_why", 3);
    static final SheetField BY = text("accepted_by", 1);

    /** Why it is accepted, and who signs. */
    record Accepted(NotAsListed what, String why, String by) {
        void make(ReadSheet in, Places.Place place, Id<Part> part, Moment at) {
            Entry<Build> build = TightenJoint.openBuild(in.sight(), place.engineId(), at);
            in.make(
                    WHY,
                    new Concession(
                            place.engineId(),
                            place.carId(),
                            build == null ? null : build.id(),
                            part,
                            at,
                            what.listed() + " \u2192 " + what.fitted(),
                            why,
                            by,
                            null,
                            null));
        }
    }

    /** What the part on the sheet is and what is listed there instead; empty when it is as listed, or nothing is. */
    static Optional<NotAsListed> of(SheetTyped typed, SheetSight sight) {
        Optional<Places.Place> place = Places.place(sight, typed.text(FitPart.PLACE));
        Optional<Entry<Position>> position = sight.find(Position.class, typed.text(FitPart.POSITION));
        String fitted = fitted(typed, sight);
        if (place.isEmpty() || position.isEmpty() || fitted.isEmpty()) {
            return Optional.empty();
        }
        LocalDate day = SheetMoments.of(typed, FitPart.SINCE, FitPart.SINCE_TIME, sight)
                .map(Moment::day)
                .orElse(sight.today());
        return PartsList.names(
                        sight.facts(), place.get().engineId(), position.get().id(), day)
                .map(design -> sight.name(PartDesign.class, design))
                .filter(listed -> !listed.equals(fitted))
                .map(listed -> new NotAsListed(fitted, listed));
    }

    /** The name of the design of what is to be fitted; empty while none is said. */
    private static String fitted(SheetTyped typed, SheetSight sight) {
        String part = typed.text(FitPart.PART);
        if (typed.is(FitPart.PART, SheetWord.NEW_PART)) {
            return typed.is(FitPart.PART_DESIGN, SheetWord.NEW_DESIGN)
                    ? typed.text(FitPart.PART_DESIGN_NAME)
                    : sight.find(PartDesign.class, typed.text(FitPart.PART_DESIGN))
                            .map(design -> design.fact().name())
                            .orElse("");
        }
        return FromStock.picked(sight, part)
                .map(batch -> batch.fact().design())
                .or(() -> sight.find(Part.class, part).map(spare -> spare.fact().design()))
                .map(design -> sight.name(PartDesign.class, design))
                .orElse("");
    }

    /** The signature, or null when none is asked for or something of it is missing. */
    static @Nullable Accepted read(ReadSheet in) {
        NotAsListed what = of(in.typed(), in.sight()).orElse(null);
        if (what == null) {
            return null;
        }
        in.note(FitPart.PART, SheetNote.of("not_listed", what.listed()));
        in.note(WHY, SheetNote.of("accepted_why_example"));
        return new Accepted(what, in.needed(WHY), in.needed(BY));
    }
}
