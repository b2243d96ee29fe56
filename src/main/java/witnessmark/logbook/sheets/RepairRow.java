package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.Stock;
import witnessmark.ledger.result.StockLevel;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * One position touched in a track repair: what comes out of it and what goes in, a spare part, one from the shelf by
 * batch, a new one, or nothing.
 *
 * @param position where
 * @param part what goes in
 * @param mark the mark of one that has none yet
 * @param condition how that which came out looked
 */
record RepairRow(SheetField position, SheetField part, SheetField mark, SheetField condition) {
    private static final String BATCH = "batch:";

    /** When it was opened and closed, on which engine, in which build, for what, and who signs. */
    record Repair(
            Places.Place place,
            Id<Engine> engine,
            Id<Build> build,
            Moment opened,
            Moment closed,
            String why,
            String by) {}

    static RepairRow numbered(int number) {
        return new RepairRow(
                SheetField.choice("touched_" + number, 1),
                SheetField.choice("goes_in_" + number, 1),
                SheetField.text("goes_in_mark_" + number, 1),
                SheetField.text("came_out_like_" + number, 1));
    }

    List<SheetField> fields() {
        return List.of(position, part, mark, condition);
    }

    boolean isFilled(SheetTyped typed) {
        return !typed.text(position).isEmpty();
    }

    /** Whether a field of this row is asked for, once the row is. */
    boolean asks(SheetField field, SheetTyped typed, SheetSight sight, Optional<Places.Place> place, Moment opened) {
        if (field.equals(mark)) {
            return typed.is(part, SheetWord.NEW_PART) || typed.text(part).startsWith(BATCH);
        }
        return !field.equals(condition) || there(typed, sight, place, opened).isPresent();
    }

    /** What can be picked to go in: of the batch or from the shelf first, then spare parts, a new one, nothing. */
    List<Choice> parts(SheetTyped typed, SheetSight sight, Optional<Places.Place> place, Moment opened) {
        PartKind kind = kind(typed, sight);
        List<Choice> choices = new ArrayList<>();
        if (kind == null) {
            return choices;
        }
        for (StockLevel level :
                new Stock(sight.facts(), new AsOf(sight.today(), sight.view().zone())).all()) {
            PartDesign design =
                    sight.facts().of(PartDesign.class).get(level.batch().fact().design());
            if (design.kind() == kind && level.onShelf() > 0) {
                choices.add(Choice.of(
                        BATCH + level.batch().id().text(),
                        SheetNote.of(
                                "of_batch", design.name(), level.batch().fact().batch(), level.onShelf())));
            }
        }
        Set<Id<Part>> fitted = Places.goingOn(sight, sight.now()).stream()
                .map(fitment -> fitment.fact().part())
                .collect(Collectors.toSet());
        for (Entry<Part> spare : sight.facts().of(Part.class).where(spare -> true)) {
            PartDesign design =
                    sight.facts().of(PartDesign.class).get(spare.fact().design());
            if (design.kind() == kind && !fitted.contains(spare.id()) && !usedUp(sight, spare, design)) {
                choices.add(Choice.of(spare.id().text(), spare.fact(), design));
            }
        }
        if (design(typed, sight, place, opened).isPresent()) {
            choices.add(SheetWord.NEW_PART.choice());
        }
        choices.add(SheetWord.NOTHING.choice());
        return choices;
    }

    /** Notes what comes out, and what is wrong; what is read is written by {@link #write}. */
    void read(ReadSheet in, Places.@Nullable Place place, Moment opened, Set<String> before) {
        Entry<Position> where = in.chosen(position, Position.class);
        in.needed(part);
        if (where == null || place == null) {
            return;
        }
        if (!place.has(where.fact()) || !before.add(in.text(position))) {
            in.wrong(position, ProblemKind.NEEDED, position);
            return;
        }
        Optional<Entry<Fitment>> there = Places.in(in.sight(), place, where.id(), opened);
        in.note(
                position,
                there.map(fitment -> SheetNote.of(
                                "comes_off",
                                in.sight().name(Part.class, fitment.fact().part())))
                        .orElse(SheetNote.of("empty_position", opened)));
        Places.nextIn(in.sight(), place, where.id(), opened)
                .ifPresent(next -> in.wrong(
                        position,
                        ProblemKind.FITTED_LATER,
                        where.fact().name(),
                        place.name(),
                        in.sight().name(Part.class, next.fact().part()),
                        next.fact().from()));
        if (asks(mark, in.typed(), in.sight(), Optional.of(place), opened)) {
            in.newName(mark, Part.class);
        }
    }

    /** Takes off what was there and fits what goes in. */
    void write(ReadSheet in, Repair repair) {
        Id<Position> where =
                in.sight().find(Position.class, in.text(position)).orElseThrow().id();
        Optional<Entry<Fitment>> there = Places.in(in.sight(), repair.place(), where, repair.opened());
        there.ifPresent(fitment -> in.change(position, fitment, off(fitment.fact(), repair, in.text(condition))));
        Id<Part> goesIn = goesIn(in, repair);
        if (goesIn != null) {
            in.make(
                    part,
                    new Fitment(
                            goesIn,
                            repair.engine(),
                            null,
                            where,
                            repair.closed(),
                            null,
                            repair.build(),
                            null,
                            "",
                            "",
                            false));
        }
    }

    private @Nullable Id<Part> goesIn(ReadSheet in, Repair repair) {
        String key = in.text(part);
        if (in.is(part, SheetWord.NOTHING)) {
            return null;
        }
        if (in.is(part, SheetWord.NEW_PART)) {
            Id<PartDesign> design = design(in.typed(), in.sight(), Optional.of(repair.place()), repair.opened())
                    .orElseThrow();
            return make(in, design, "", "");
        }
        if (!key.startsWith(BATCH)) {
            return Objects.requireNonNull(in.chosen(part, Part.class)).id();
        }
        Entry<StockBatch> batch =
                in.sight().find(StockBatch.class, key.substring(BATCH.length())).orElseThrow();
        Id<Part> made = make(
                in, batch.fact().design(), batch.fact().batch(), batch.fact().supplier());
        in.make(part, new StockMove(batch.id(), repair.closed(), -1, StockMoveKind.USED, made, null, repair.by(), ""));
        return made;
    }

    private Id<Part> make(ReadSheet in, Id<PartDesign> design, String batch, String supplier) {
        return in.make(mark, new Part(in.text(mark), design, batch, supplier, null, null, null, null, null, null, ""));
    }

    private static Fitment off(Fitment fitment, Repair repair, String condition) {
        return new Fitment(
                fitment.part(),
                fitment.engine(),
                fitment.car(),
                fitment.position(),
                fitment.from(),
                repair.opened(),
                fitment.buildIn(),
                repair.build(),
                repair.why(),
                condition,
                fitment.borrowed());
    }

    private Optional<Entry<Fitment>> there(
            SheetTyped typed, SheetSight sight, Optional<Places.Place> place, Moment opened) {
        return sight.find(Position.class, typed.text(position))
                .flatMap(where -> place.flatMap(in -> Places.in(sight, in, where.id(), opened)));
    }

    /** The design of a new part: that of the one that comes out, or else of the last of its kind. */
    private Optional<Id<PartDesign>> design(
            SheetTyped typed, SheetSight sight, Optional<Places.Place> place, Moment opened) {
        PartKind kind = kind(typed, sight);
        return there(typed, sight, place, opened)
                .map(fitment ->
                        sight.facts().of(Part.class).get(fitment.fact().part()).design())
                .or(() -> sight.facts().of(PartDesign.class).where(design -> design.kind() == kind).stream()
                        .reduce((earlier, later) -> later)
                        .map(Entry::id));
    }

    private @Nullable PartKind kind(SheetTyped typed, SheetSight sight) {
        return sight.find(Position.class, typed.text(position))
                .map(where -> where.fact().kind())
                .orElse(null);
    }

    /** A part that is fitted once, and was. */
    private static boolean usedUp(SheetSight sight, Entry<Part> spare, PartDesign design) {
        return design.singleUse()
                && !sight.facts()
                        .of(Fitment.class)
                        .where(fitment -> spare.id().equals(fitment.part()))
                        .isEmpty();
    }
}
