package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.domain.Position;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.Whereabouts;
import witnessmark.ledger.result.Stay;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** A borrowed part went back where it came from: it comes off, and is fitted there again when somebody says so. */
public final class GaveBack implements LogSheet {
    public static final SheetField BORROWED = choice("borrowed", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    /** When it was borrowed, where that was on the same day without a time and something ran in between. */
    public static final SheetField FITTED_AT = TakeOffPart.FITTED_AT;

    public static final SheetField AGAIN = choice("fitted_again", 2);
    public static final SheetField CONDITION = text("off_condition", 2);

    @Override
    public String key() {
        return "gave_back";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("gave_back", List.of(BORROWED, WHEN, WHEN_TIME, FITTED_AT), List.of(AGAIN, CONDITION)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        List<Entry<Fitment>> borrowed = borrowed(sight);
        if (borrowed.size() == 1) {
            out.put(BORROWED, borrowed.get(0).id().text());
        }
        out.put(WHEN, sight.today().toString());
        out.put(AGAIN, SheetWord.NO.key());
        return out;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(FITTED_AT)) {
            Moment when = SheetMoments.of(typed, WHEN, WHEN_TIME, sight).orElse(sight.now());
            return sight.find(Fitment.class, typed.text(BORROWED))
                    .filter(fitment -> asksWhenBorrowed(sight, fitment.fact(), when))
                    .isPresent();
        }
        return !field.equals(AGAIN)
                || sight.find(Fitment.class, typed.text(BORROWED))
                        .flatMap(fitment -> home(sight, fitment))
                        .isPresent();
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(AGAIN)) {
            return List.of(SheetWord.NO.choice(), SheetWord.YES.choice());
        }
        return field.equals(BORROWED)
                ? borrowed(sight).stream()
                        .map(fitment -> Choice.of(
                                fitment.id().text(),
                                SheetNote.of(
                                        "borrowed_in",
                                        sight.name(Part.class, fitment.fact().part()),
                                        Places.name(sight, fitment.fact()))))
                        .toList()
                : List.of();
    }

    @Override
    public void read(ReadSheet in) {
        SheetSight sight = in.sight();
        if (borrowed(sight).isEmpty()) {
            in.note(BORROWED, SheetNote.of("nothing_borrowed"));
        }
        @Nullable Entry<Fitment> fitment = in.chosen(BORROWED, Fitment.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.blame(WHEN, ProblemKind.CHANGE_INSIDE_RUN);
        in.blame(AGAIN, ProblemKind.TWO_PARTS_IN_POSITION);
        if (fitment == null || when == null) {
            return;
        }
        String part = sight.name(Part.class, fitment.fact().part());
        if (!fitment.fact().borrowed() || fitment.fact().to() != null) {
            in.wrong(BORROWED, ProblemKind.NOT_FOUND, RecordTypes.of(Fitment.class), part);
            return;
        }
        Optional<Fitment> home = home(sight, fitment);
        String place = home.map(stay -> Places.name(sight, stay)).orElse("");
        in.note(BORROWED, home.isEmpty() ? SheetNote.of("home_not_known") : SheetNote.of("goes_back_to", place));
        boolean again = home.isPresent() && in.is(AGAIN, SheetWord.YES);
        home.ifPresent(stay ->
                in.note(AGAIN, SheetNote.of("fitted_again", place, sight.name(Position.class, stay.position()))));
        String why = place.isEmpty() ? "given back" : "back to " + place;
        end(in, fitment, when, part, stands -> Places.ended(stands, when, why, in.text(CONDITION)));
        if (in.fine() && again) {
            home.ifPresent(stay -> in.make(AGAIN, fitted(stay, when)));
        }
    }

    private static void end(
            ReadSheet in, Entry<Fitment> fitment, Moment when, String part, UnaryOperator<Fitment> ended) {
        Fitment was = fitment.fact();
        if (asksWhenBorrowed(in.sight(), was, when)) {
            SameDay.OF_PARTS.end(in, fitment, when, FITTED_AT, part, ended);
        } else if (SameDay.OF_PARTS.is(was, when)) {
            SameDay.OF_PARTS.endLater(in, fitment, when, WHEN, part, ended);
        } else if (!was.from().isBefore(when)) {
            in.wrong(WHEN, ProblemKind.ENDS_BEFORE_IT_BEGINS, part, was.from(), when);
        } else if (in.fine()) {
            in.change(BORROWED, fitment, ended.apply(was));
        }
    }

    /** Borrowed on that day alone, which is after its last run, and something ran after it went back. */
    private static boolean asksWhenBorrowed(SheetSight sight, Fitment borrowed, Moment when) {
        return SameDay.OF_PARTS.is(borrowed, when) && !when.dayOnly() && EarlierThatDay.ranSince(sight, when);
    }

    private static Fitment fitted(Fitment stay, Moment from) {
        return new Fitment(
                stay.part(), stay.engine(), stay.car(), stay.position(), from, null, null, null, "", "", false);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Fitment.class, typed.text(BORROWED))
                .map(fitment -> sight.name(Part.class, fitment.fact().part()))
                .orElse(""));
    }

    /** Where it was before it was borrowed; empty when nothing says. */
    private static Optional<Fitment> home(SheetSight sight, Entry<Fitment> borrowed) {
        return sight.facts().of(Part.class).find(borrowed.fact().part()).flatMap(part -> {
            Stay before = new Whereabouts(sight.view().ledger()).of(part).before();
            return before == null
                    ? Optional.empty()
                    : Optional.of(before.fitment().fact());
        });
    }

    private static List<Entry<Fitment>> borrowed(SheetSight sight) {
        return sight.facts().of(Fitment.class).where(fitment -> fitment.borrowed() && fitment.to() == null);
    }
}
