package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.ledger.JointDoubts;
import witnessmark.ledger.result.JointDoubt;
import witnessmark.quantity.Moment;

/** Something outside its limit or its specification is accepted as it is: what, why, and who signs. */
public final class AcceptAsIs implements LogSheet {
    public static final SheetField ON = choice("accepted_on", 2);
    /** A figure of a build sheet; asked for only where the sheet was opened for one. */
    public static final SheetField FIGURE = choice("accepted_figure", 2);

    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField WHAT = text("accepted_what", 4);
    public static final SheetField WHY = NotAsListed.WHY;
    public static final SheetField BY = NotAsListed.BY;
    private static final String PART = EngineOrPart.partKey("");

    @Override
    public String key() {
        return "accept";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "accept", List.of(ON, WHEN, WHEN_TIME), List.of(FIGURE), List.of(WHAT), List.of(WHY, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(ON, Places.key(engine));
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(FIGURE)) {
            return SheetFigure.read(sight, typed.text(FIGURE))
                    .map(figure -> List.of(SheetWord.NONE.choice(), figure.choice()))
                    .orElse(List.of());
        }
        if (!field.equals(ON)) {
            return List.of();
        }
        List<Choice> choices = new ArrayList<>(Places.choices(sight));
        PartsNow.choices(sight, PartsNow::inUse)
                .forEach(choice -> choices.add(new Choice(EngineOrPart.partKey(choice.key()), choice.facts())));
        return choices;
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !field.equals(FIGURE)
                || SheetFigure.read(sight, typed.text(FIGURE)).isPresent();
    }

    @Override
    public void read(ReadSheet in) {
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.note(WHAT, SheetNote.of("accepted_example"));
        Places.place(in.sight(), in.text(ON)).ifPresent(on -> accepted(in, on.engineId(), in.text(WHAT)));
        String what = in.needed(WHAT);
        in.note(WHY, SheetNote.of("accepted_why_example"));
        String why = in.needed(WHY);
        String by = in.needed(BY);
        boolean ofPart = in.text(ON).startsWith(PART);
        @Nullable EngineOrPart picked = ofPart ? EngineOrPart.read(in, ON) : null;
        Places.@Nullable Place place = ofPart ? null : Places.read(in, ON);
        if (!in.fine() || when == null) {
            return;
        }
        @Nullable Id<Part> part = picked == null ? null : picked.partId();
        @Nullable
        Fitment fitted = part == null
                ? null
                : in.sight()
                        .view()
                        .ledger()
                        .whereIs(part, when)
                        .map(Entry::fact)
                        .orElse(null);
        @Nullable Id<Engine> engine = place == null ? (fitted == null ? null : fitted.engine()) : place.engineId();
        @Nullable Id<Car> car = place == null ? (fitted == null ? null : fitted.car()) : place.carId();
        @Nullable
        SheetFigure figure = SheetFigure.read(in.sight(), in.text(FIGURE))
                .filter(of -> of.build().fact().engine().equals(engine))
                .orElse(null);
        @Nullable
        Entry<Build> build = figure != null ? figure.build() : TightenJoint.openBuild(in.sight(), engine, when);
        in.make(
                ON,
                new Concession(
                        engine,
                        car,
                        build == null ? null : build.id(),
                        part,
                        when,
                        what,
                        why,
                        by,
                        figure == null ? null : figure.kind(),
                        figure == null ? null : figure.number()));
    }

    /** Which joints in doubt it settles, by the name of the wrench; or how it would. */
    private static void accepted(ReadSheet in, @Nullable Id<Engine> engine, String what) {
        if (engine == null) {
            return;
        }
        for (JointDoubt doubt : new JointDoubts(in.sight().view().ledger()).of(engine)) {
            String wrench = doubt.tool().fact().mark();
            boolean named = JointDoubts.names(what, wrench);
            in.note(WHAT, SheetNote.of(named ? "accepts_joints" : "names_wrench", wrench));
            if (named) {
                return;
            }
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        String key = typed.text(ON);
        return List.of(
                key.startsWith(PART)
                        ? EngineOrPart.of(sight, key).map(EngineOrPart::name).orElse("")
                        : Places.place(sight, key).map(Places.Place::name).orElse(""));
    }
}
