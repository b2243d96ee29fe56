package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Takes a part off: when, why, and how it looked. */
public final class TakeOffPart implements LogSheet {
    public static final SheetField PLACE = choice("place", 1);
    public static final SheetField FITTED = choice("fitted", 1);
    public static final SheetField WHEN = of("off_when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("off_time", FieldKind.CLOCK);
    /** When it went in, for one that was fitted on that day without a time. */
    public static final SheetField FITTED_AT = of("fitted_at", FieldKind.CLOCK);

    public static final SheetField WHY = text("off_reason", 2);
    public static final SheetField CONDITION = text("off_condition", 2);

    @Override
    public String key() {
        return "take_off";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "take_off", List.of(PLACE, FITTED, WHEN, WHEN_TIME), List.of(FITTED_AT), List.of(WHY, CONDITION)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(PLACE, Places.key(engine));
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(PLACE, WHEN, WHEN_TIME);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(PLACE)) {
            return Places.choices(sight);
        }
        Optional<Places.Place> place = Places.place(sight, typed.text(PLACE));
        if (!field.equals(FITTED) || place.isEmpty()) {
            return List.of();
        }
        Moment at = SheetMoments.of(typed, WHEN, WHEN_TIME, sight).orElse(sight.now());
        return sight
                .facts()
                .of(Fitment.class)
                .where(fitment -> place.get().holds(fitment) && SameDay.OF_PARTS.goesOn(fitment, at))
                .stream()
                .map(fitment -> Choice.of(
                        fitment.id().text(),
                        sight.facts().of(Position.class).get(fitment.fact().position()),
                        sight.facts().of(Part.class).get(fitment.fact().part())))
                .toList();
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(FITTED_AT)
                || sight.find(Fitment.class, typed.text(FITTED))
                        .filter(fitment -> SameDay.OF_PARTS.is(
                                fitment.fact(),
                                SheetMoments.of(typed, WHEN, WHEN_TIME, sight).orElse(sight.now())))
                        .isPresent();
    }

    @Override
    public void read(ReadSheet in) {
        String place = in.needed(PLACE);
        if (!place.isEmpty() && Places.place(in.sight(), place).isEmpty()) {
            in.wrong(PLACE, ProblemKind.NOT_FOUND, RecordTypes.of(witnessmark.domain.Engine.class), place);
        }
        @Nullable Entry<Fitment> fitment = in.chosen(FITTED, Fitment.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.blame(WHEN, ProblemKind.CHANGE_INSIDE_RUN);
        in.needed(WHY);
        if (fitment == null || when == null) {
            return;
        }
        in.note(FITTED, SheetNote.of("fitted_since", fitment.fact().from()));
        if (SameDay.OF_PARTS.is(fitment.fact(), when)) {
            SameDay.OF_PARTS.end(
                    in,
                    fitment,
                    when,
                    FITTED_AT,
                    in.sight().name(Part.class, fitment.fact().part()),
                    stands -> Places.ended(stands, when, in.text(WHY), in.text(CONDITION)));
            return;
        }
        if (!fitment.fact().from().isBefore(when)) {
            in.wrong(
                    WHEN,
                    ProblemKind.ENDS_BEFORE_IT_BEGINS,
                    in.sight().name(Part.class, fitment.fact().part()),
                    fitment.fact().from(),
                    when);
        }
        if (in.fine()) {
            in.change(FITTED, fitment, Places.ended(fitment.fact(), when, in.text(WHY), in.text(CONDITION)));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        Optional<Fitment> fitment =
                sight.find(Fitment.class, typed.text(FITTED)).map(Entry::fact);
        return List.of(
                fitment.map(fit -> sight.name(Part.class, fit.part())).orElse(""),
                fitment.map(fit -> Places.name(sight, fit)).orElse(""));
    }
}
