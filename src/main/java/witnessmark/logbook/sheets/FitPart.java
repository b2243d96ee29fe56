package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.domain.StockBatch;
import witnessmark.ledger.result.Where;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Fits a part, a spare one or a new one; the part that is there comes off at the same moment. */
public final class FitPart implements LogSheet {
    public static final SheetField PLACE = choice("place", 1);
    public static final SheetField POSITION = choice("position", 1);
    public static final SheetField SINCE = of("since", FieldKind.DAY);
    public static final SheetField SINCE_TIME = of("since_time", FieldKind.CLOCK);
    public static final SheetField OFF_WHY = text("off_why", 2);
    public static final SheetField OFF_CONDITION = text("off_condition", 2);
    public static final SheetField PART = choice("part", 2);
    public static final SheetField MARK = text("mark", 1);
    public static final SheetField BOUGHT = of("bought", FieldKind.DAY);
    public static final SheetField PART_DESIGN = choice("part_design", 1);
    public static final SheetField PART_DESIGN_NAME = text("part_design_name", 1);
    public static final SheetField MAKER = text("maker", 1);
    public static final SheetField SINGLE_USE = choice("single_use", 1);
    /** Whether it is to go back where it came from. */
    public static final SheetField BORROWED = choice("to_go_back", 1);

    public static final SheetField ACCEPTED_WHY = NotAsListed.WHY;
    public static final SheetField ACCEPTED_BY = NotAsListed.BY;
    /** How known the hours of a new part are; see {@link AddEngine#HOURS_HOW}. */
    public static final SheetField HOURS_HOW = HoursSoFar.HOW;

    /** What {@link #PLACE} holds when this engine is picked. */
    public static String place(Id<Engine> engine) {
        return Places.key(engine);
    }

    /** What {@link #PART} holds when an item of this batch is picked. */
    public static String ofBatch(Id<StockBatch> batch) {
        return FromStock.key(batch);
    }

    @Override
    public String key() {
        return "fit_part";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("where", List.of(PLACE, POSITION, SINCE, SINCE_TIME), List.of(OFF_WHY, OFF_CONDITION)),
                SheetGroup.of(
                        "which_part",
                        List.of(PART, MARK, BOUGHT),
                        List.of(BORROWED),
                        List.of(PART_DESIGN, PART_DESIGN_NAME, MAKER, SINGLE_USE),
                        List.of(ACCEPTED_WHY, ACCEPTED_BY)),
                HoursSoFar.group());
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(SINCE, day(sight).toString());
        out.put(PART, SheetWord.NEW_PART.key());
        out.put(PART_DESIGN, SheetWord.NEW_DESIGN.key());
        out.put(SINGLE_USE, SheetWord.NO.key());
        out.put(BORROWED, SheetWord.NO.key());
        out.put(HoursSoFar.HOW, SheetWord.PART_NEW.key());
        out.put(ACCEPTED_BY, sight.who());
        return out;
    }

    /** Today once something ran today, as the part goes in after it; else yesterday evening, so that it takes what runs today. */
    private static LocalDate day(SheetSight sight) {
        LocalDate today = sight.today();
        boolean ran = !sight.facts()
                .of(Run.class)
                .where(run -> run.start().day().equals(today))
                .isEmpty();
        return ran ? today : today.minusDays(1);
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return Map.of(PLACE, Places.key(engine));
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(PLACE, SINCE, SINCE_TIME);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(PLACE)) {
            return Places.choices(sight);
        }
        if (field.equals(POSITION)) {
            return Places.place(sight, typed.text(PLACE))
                    .map(place -> positions(place, typed, sight))
                    .orElse(List.of());
        }
        if (field.equals(PART)) {
            return parts(kind(typed, sight), typed.is(BORROWED, SheetWord.YES), sight);
        }
        if (field.equals(PART_DESIGN)) {
            PartKind kind = kind(typed, sight);
            List<Choice> choices = new ArrayList<>(sight.all(PartDesign.class, design -> design.kind() == kind));
            choices.add(SheetWord.NEW_DESIGN.choice());
            return choices;
        }
        if (field.equals(SINGLE_USE) || field.equals(BORROWED)) {
            return List.of(SheetWord.NO.choice(), SheetWord.YES.choice());
        }
        return field.equals(HoursSoFar.HOW) ? HoursSoFar.choices() : List.of();
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean newPart = typed.is(PART, SheetWord.NEW_PART);
        if (field.equals(ACCEPTED_WHY) || field.equals(ACCEPTED_BY)) {
            return NotAsListed.of(typed, sight).isPresent();
        }
        if (field.equals(OFF_WHY) || field.equals(OFF_CONDITION)) {
            return there(typed, sight).isPresent();
        }
        if (field.equals(MARK)) {
            return newPart || FromStock.is(typed.text(PART));
        }
        if (field.equals(BORROWED)) {
            return !FromStock.is(typed.text(PART));
        }
        if (field.equals(BOUGHT) || field.equals(PART_DESIGN)) {
            return newPart;
        }
        if (field.equals(PART_DESIGN_NAME) || field.equals(MAKER) || field.equals(SINGLE_USE)) {
            return newPart && typed.is(PART_DESIGN, SheetWord.NEW_DESIGN);
        }
        return !field.key().startsWith("hours") || (newPart && HoursSoFar.asks(field, typed));
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Places.@Nullable Place place = Places.read(in, PLACE);
        Entry<Position> position = in.chosen(POSITION, Position.class);
        Moment since = values.moment(SINCE, SINCE_TIME);
        in.blame(SINCE, ProblemKind.FITTED_BEFORE_BOUGHT, ProblemKind.CHANGE_INSIDE_RUN);
        in.blame(POSITION, ProblemKind.TWO_PARTS_IN_POSITION, ProblemKind.POSITION_OF_ANOTHER_DESIGN);
        in.blame(
                PART,
                ProblemKind.PART_IN_TWO_PLACES,
                ProblemKind.SINGLE_USE_AGAIN,
                ProblemKind.STOCK_BELOW_NOTHING,
                ProblemKind.PART_IN_QUARANTINE,
                ProblemKind.PART_AWAY,
                ProblemKind.PART_SCRAPPED);
        if (place != null && position != null && !place.has(position.fact())) {
            in.wrong(POSITION, ProblemKind.NEEDED, POSITION);
        }
        Optional<Entry<Fitment>> there = place == null || position == null || since == null
                ? Optional.empty()
                : Places.in(in.sight(), place, position.id(), since);
        if (place != null && position != null && since != null) {
            around(in, place, position, since, there);
        }
        @Nullable PartToFit part = partToFit(in, values, since);
        borrowing(in, place, since);
        NotAsListed.@Nullable Accepted accepted = NotAsListed.read(in);
        if (place == null || position == null || since == null || part == null || !in.fine()) {
            return;
        }
        Id<Part> id = part.make(in, position.fact().kind());
        lender(in, id, place, since)
                .ifPresent(
                        from -> in.change(PART, from, Places.ended(from.fact(), since, "lent to " + place.name(), "")));
        Set<Id<?>> moved = EarlierThatDay.makeWay(in, SINCE, id, since);
        there.filter(fitment -> !moved.contains(fitment.id()))
                .ifPresent(fitment -> in.change(POSITION, fitment, ended(in, fitment.fact(), since)));
        boolean borrowed = !FromStock.is(in.text(PART)) && in.is(BORROWED, SheetWord.YES);
        in.make(
                PART,
                new Fitment(
                        id, place.engineId(), place.carId(), position.id(), since, null, null, null, "", "", borrowed));
        if (accepted != null) {
            accepted.make(in, place, id, since);
        }
    }

    /** Says which engine the part that is borrowed comes out of, or that it may be in one. */
    private static void borrowing(ReadSheet in, Places.@Nullable Place place, @Nullable Moment since) {
        if (!in.is(BORROWED, SheetWord.YES) || FromStock.is(in.text(PART))) {
            return;
        }
        in.note(BORROWED, SheetNote.of("may_be_fitted"));
        in.sight()
                .find(Part.class, in.text(PART))
                .filter(part -> place != null && since != null)
                .flatMap(part -> lender(in, part.id(), Objects.requireNonNull(place), Objects.requireNonNull(since)))
                .ifPresent(from -> in.note(
                        PART,
                        SheetNote.of(
                                "comes_out_of",
                                Places.name(in.sight(), from.fact()),
                                in.sight().name(Position.class, from.fact().position()))));
    }

    /** Where a part that is borrowed sits at that moment, when that is in another engine or car. */
    private static Optional<Entry<Fitment>> lender(ReadSheet in, Id<Part> part, Places.Place place, Moment at) {
        return in.is(BORROWED, SheetWord.YES)
                ? Places.goingOn(in.sight(), at).stream()
                        .filter(fitment -> fitment.fact().part().equals(part)
                                && fitment.fact().to() == null
                                && !place.holds(fitment.fact()))
                        .findFirst()
                : Optional.empty();
    }

    /** A part there is, one off the shelf, or a new one; made when the sheet is written. */
    private interface PartToFit {
        Id<Part> make(ReadSheet in, PartKind kind);
    }

    private static @Nullable PartToFit partToFit(ReadSheet in, ReadValues values, @Nullable Moment since) {
        if (in.is(PART, SheetWord.NEW_PART)) {
            NewPart made = newPart(in, values);
            HoursSoFar.Life life = HoursSoFar.read(in, values, since);
            return (into, kind) -> {
                Id<Part> part = make(into, made, kind);
                HoursSoFar.make(into, life, part, null);
                return part;
            };
        }
        if (FromStock.is(in.text(PART))) {
            FromStock taken = FromStock.read(in, PART, MARK);
            return taken == null || since == null ? null : (into, kind) -> taken.make(into, PART, MARK, since);
        }
        Entry<Part> spare = in.chosen(PART, Part.class);
        if (spare != null && spare.fact().ofSet() != null) {
            // the position counts as filled then, whatever else of the set is missing
            String set = in.sight().name(Part.class, spare.fact().ofSet());
            in.wrong(PART, ProblemKind.MEMBER_ALONE, spare.fact().mark(), set);
        }
        return spare == null ? null : (into, kind) -> spare.id();
    }

    /** Says what comes off; a part that is written down there from then on or later is in the way. */
    private static void around(
            ReadSheet in, Places.Place place, Entry<Position> position, Moment since, Optional<Entry<Fitment>> there) {
        in.note(
                POSITION,
                there.map(fitment -> comesOff(in, fitment.fact())).orElse(SheetNote.of("empty_position", since)));
        Places.nextIn(in.sight(), place, position.id(), since)
                .ifPresent(next -> in.wrong(
                        SINCE,
                        ProblemKind.FITTED_LATER,
                        in.sight().name(Position.class, position.id()),
                        place.name(),
                        in.sight().name(Part.class, next.fact().part()),
                        next.fact().from()));
    }

    private static SheetNote comesOff(ReadSheet in, Fitment fitment) {
        String part = in.sight().name(Part.class, fitment.part());
        Moment already = fitment.to();
        return already == null ? SheetNote.of("comes_off", part) : SheetNote.of("comes_off_earlier", part, already);
    }

    /** One that came off later by what is written keeps why and how it looked, where the sheet says nothing. */
    private static Fitment ended(ReadSheet in, Fitment fitment, Moment since) {
        String why = in.text(OFF_WHY);
        String condition = in.text(OFF_CONDITION);
        return Places.ended(
                fitment,
                since,
                why.isEmpty() ? fitment.why() : why,
                condition.isEmpty() ? fitment.condition() : condition);
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        String mark = typed.is(PART, SheetWord.NEW_PART) || FromStock.is(typed.text(PART))
                ? FromStock.mark(typed, sight)
                : sight.find(Part.class, typed.text(PART))
                        .map(part -> part.fact().mark())
                        .orElse("");
        return List.of(
                mark,
                Places.place(sight, typed.text(PLACE)).map(Places.Place::name).orElse(""));
    }

    /** A part not yet in the logbook. */
    private record NewPart(
            String mark,
            @Nullable LocalDate bought,
            @Nullable Entry<PartDesign> design,
            String designName) {}

    private static NewPart newPart(ReadSheet in, ReadValues values) {
        String mark = in.newName(MARK, Part.class);
        LocalDate bought = values.day(BOUGHT);
        if (in.text(BOUGHT).isEmpty()) {
            in.note(BOUGHT, SheetNote.of("if_known"));
        }
        boolean newDesign = in.is(PART_DESIGN, SheetWord.NEW_DESIGN);
        return new NewPart(
                mark,
                bought,
                newDesign ? null : in.chosen(PART_DESIGN, PartDesign.class),
                newDesign ? in.newName(PART_DESIGN_NAME, PartDesign.class) : "");
    }

    private static Id<Part> make(ReadSheet in, NewPart made, PartKind kind) {
        Id<PartDesign> design = made.design() != null
                ? made.design().id()
                : in.make(
                        PART_DESIGN_NAME,
                        new PartDesign(
                                made.designName(),
                                kind,
                                in.text(MAKER),
                                "",
                                in.is(SINGLE_USE, SheetWord.YES),
                                false,
                                "",
                                null));
        return in.make(MARK, new Part(made.mark(), design, "", "", made.bought(), null, null, null, null, null, ""));
    }

    /** The part in the position as things stand on the sheet. */
    private static Optional<Entry<Fitment>> there(SheetTyped typed, SheetSight sight) {
        Optional<Places.Place> place = Places.place(sight, typed.text(PLACE));
        Optional<Entry<Position>> position = sight.find(Position.class, typed.text(POSITION));
        return place.isEmpty() || position.isEmpty()
                ? Optional.empty()
                : Places.in(
                        sight,
                        place.get(),
                        position.get().id(),
                        SheetMoments.of(typed, SINCE, SINCE_TIME, sight).orElse(sight.now()));
    }

    private static @Nullable PartKind kind(SheetTyped typed, SheetSight sight) {
        return sight.find(Position.class, typed.text(POSITION))
                .map(position -> position.fact().kind())
                .orElse(null);
    }

    /** While none is picked for a part there is, those that take it; where none does, every one. */
    private static List<Choice> positions(Places.Place place, SheetTyped typed, SheetSight sight) {
        List<Choice> all = Places.positions(sight, place);
        PartKind kind = PartsNow.find(sight, typed.text(PART))
                .map(where -> kind(sight, where))
                .orElse(null);
        if (kind == null || !typed.text(POSITION).isEmpty()) {
            return all;
        }
        List<Choice> fit = all.stream()
                .filter(choice -> sight.find(Position.class, choice.key())
                        .filter(position -> position.fact().kind() == kind)
                        .isPresent())
                .toList();
        return fit.isEmpty() ? all : fit;
    }

    private static PartKind kind(SheetSight sight, Where where) {
        return sight.facts()
                .of(PartDesign.class)
                .get(where.part().fact().design())
                .kind();
    }

    /**
     * A new one, what lies on the shelf, and the spare parts of the kind; of any kind while no position is picked. One to
     * borrow may be fitted elsewhere.
     */
    private static List<Choice> parts(@Nullable PartKind kind, boolean borrowed, SheetSight sight) {
        List<Choice> choices = new ArrayList<>();
        choices.add(SheetWord.NEW_PART.choice());
        choices.addAll(FromStock.choices(sight, kind));
        choices.addAll(PartsNow.choices(
                sight,
                where -> PartsNow.inUse(where)
                        && (borrowed || where.fitment() == null)
                        && (kind == null || kind(sight, where) == kind)));
        return choices;
    }
}
