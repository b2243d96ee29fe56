package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Concession;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.FaceKind;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartKind;
import witnessmark.domain.Retimed;
import witnessmark.domain.Skim;
import witnessmark.domain.SkimPass;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.WorkResult;
import witnessmark.logbook.faces.FacePage;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Length;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Volume;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.TypedMeasure;

/** Writes down a skim in full: corners before, passes with what was seen after each, what was left, finish and chambers. */
public final class WriteSkim implements LogSheet {
    public static final SheetField PART = choice("skim_part", 2);
    public static final SheetField WHEN = of("work_day", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("work_time", FieldKind.CLOCK);
    public static final SheetField FRONT_EXHAUST = of("front_exhaust", FieldKind.LENGTH);
    public static final SheetField FRONT_INLET = of("front_inlet", FieldKind.LENGTH);
    public static final SheetField REAR_EXHAUST = of("rear_exhaust", FieldKind.LENGTH);
    public static final SheetField REAR_INLET = of("rear_inlet", FieldKind.LENGTH);
    public static final SheetField PASSES = new SheetField("passes", FieldKind.LINES, 4);
    public static final SheetField REMOVED = of("removed", FieldKind.LENGTH);
    public static final SheetField LEFT = of("thickness_left", FieldKind.LENGTH);
    public static final SheetField FLAT = of("flat_after", FieldKind.LENGTH);
    public static final SheetField BY = text("by", 1);
    public static final SheetField RA = text("ra_after", 1);
    public static final SheetField RZ = text("rz_after", 1);
    public static final SheetField CHAMBER_BEFORE = text("chamber_before", 1);
    public static final SheetField CHAMBER_AFTER = text("chamber_after", 1);
    public static final SheetField RETIMED = choice("retimed", 1);
    public static final SheetField ACCEPTED = text("accepted_thin", 3);
    public static final SheetField FOUND = text("found", 4);

    private static final Set<PartKind> KINDS = EnumSet.of(PartKind.HEAD, PartKind.BLOCK);
    /** Corners are read to 0.01 mm, before and after. */
    private static final long READING = 15_000;

    private static final Id<Work> UNWRITTEN = new Id<>(new UUID(0, 0));

    @Override
    public String key() {
        return "write_skim";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("skim", List.of(PART, WHEN, WHEN_TIME)),
                SheetGroup.of("skim_before", List.of(FRONT_EXHAUST, FRONT_INLET, REAR_EXHAUST, REAR_INLET)),
                SheetGroup.of("skim_passes", List.of(PASSES), List.of(REMOVED, LEFT, FLAT, BY)),
                SheetGroup.of(
                        "skim_after",
                        List.of(RA, RZ, CHAMBER_BEFORE, CHAMBER_AFTER),
                        List.of(RETIMED, ACCEPTED),
                        List.of(FOUND)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), RETIMED, Retimed.NOT_SAID.code());
    }

    @Override
    public Map<SheetField, String> picksFor(Id<Engine> engine, SheetSight sight) {
        return FaceParts.in(sight, engine, PartKind.HEAD)
                .map(head -> Map.of(PART, head.text()))
                .orElse(Map.of());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(PART)) {
            return FaceParts.choices(sight, KINDS);
        }
        return field.equals(RETIMED) ? Choice.words(Retimed.values()) : List.of();
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        boolean ofHead = field.equals(CHAMBER_BEFORE) || field.equals(CHAMBER_AFTER) || field.equals(RETIMED);
        return !ofHead
                || sight.find(Part.class, typed.text(PART))
                        .flatMap(part -> FaceParts.page(sight, part))
                        .filter(page -> page.kind() == PartKind.BLOCK)
                        .isEmpty();
    }

    @Override
    public void read(ReadSheet in) {
        ReadValues values = new ReadValues(in);
        Entry<Part> part = in.chosen(PART, Part.class);
        Optional<FacePage> page = FaceParts.page(in.sight(), part);
        Moment when = values.moment(WHEN, WHEN_TIME);
        in.note(PASSES, SheetNote.of("passes_example"));
        List<PassLine> passes = passes(in);
        Length sum = new Length(
                passes.stream().mapToLong(pass -> pass.depth().nanometres()).sum());
        Length removed = above0(in, values, REMOVED);
        if (removed == null) {
            in.note(REMOVED, SheetNote.of("removed_by_passes"));
            removed = passes.isEmpty() ? null : sum;
        } else if (!passes.isEmpty() && !sum.equals(removed)) {
            in.wrong(REMOVED, ProblemKind.PASSES_NOT_REMOVED, sum, removed);
        }
        Length left = above0(in, values, LEFT);
        Skim skim = skim(in, values, page);
        contradicts(in, skim, removed, left);
        boolean thin = tooThin(in, page, left);
        if (!in.fine() || part == null || when == null || skim == null) {
            return;
        }
        write(
                in,
                new Work(
                        WorkKind.SKIM,
                        when,
                        null,
                        part.id(),
                        WorkResult.DONE,
                        removed,
                        left,
                        in.text(BY),
                        in.text(FOUND)),
                skim,
                passes);
        if (thin) {
            concession(in, part, when, left);
        }
    }

    private static void write(ReadSheet in, Work work, Skim read, List<PassLine> passes) {
        Id<Work> written = in.make(PART, work);
        Id<Skim> skim = in.make(
                PART,
                new Skim(
                        written,
                        read.face(),
                        read.frontExhaust(),
                        read.frontInlet(),
                        read.rearExhaust(),
                        read.rearInlet(),
                        read.flatAfter(),
                        read.raNanometres(),
                        read.rzNanometres(),
                        read.chamberBefore(),
                        read.chamberAfter(),
                        read.retimed()));
        for (int i = 0; i < passes.size(); i++) {
            PassLine pass = passes.get(i);
            in.make(PASSES, new SkimPass(skim, i + 1, pass.depth(), pass.shadow(), pass.where()));
        }
    }

    /** What is under the least thickness is accepted as it is, or not written. */
    private static void concession(ReadSheet in, Entry<Part> part, Moment when, @Nullable Length left) {
        Fitment fitted = in.sight()
                .view()
                .ledger()
                .whereIs(part.id(), when)
                .map(Entry::fact)
                .orElse(null);
        in.make(
                ACCEPTED,
                new Concession(
                        fitted == null ? null : fitted.engine(),
                        null,
                        null,
                        part.id(),
                        when,
                        part.fact().mark() + " " + (left == null ? "" : left.text()) + " mm",
                        in.text(ACCEPTED),
                        in.text(BY),
                        null,
                        null));
    }

    private static List<PassLine> passes(ReadSheet in) {
        Optional<List<PassLine>> passes = PassLine.read(in.text(PASSES));
        if (passes.isEmpty()) {
            in.wrong(PASSES, ProblemKind.CANNOT_READ, PASSES, in.text(PASSES), "0.05 shadow between 2 and 3");
        }
        return passes.orElse(List.of());
    }

    /** As typed, of a work that is not written yet. */
    private static @Nullable Skim skim(ReadSheet in, ReadValues values, Optional<FacePage> page) {
        Length flat = values.length(FLAT);
        Integer ra = finish(in, values, RA);
        Integer rz = finish(in, values, RZ);
        if (flat != null && flat.nanometres() < 0) {
            in.wrong(FLAT, ProblemKind.CANNOT_READ, FLAT, in.text(FLAT), "0.01 mm");
            return null;
        }
        boolean block = page.filter(of -> of.kind() == PartKind.BLOCK).isPresent();
        Retimed retimed = block ? Retimed.NOT_SAID : in.word(RETIMED, Retimed.class);
        return retimed == null
                ? null
                : new Skim(
                        UNWRITTEN,
                        block ? FaceKind.DECK : FaceKind.HEAD,
                        above0(in, values, FRONT_EXHAUST),
                        above0(in, values, FRONT_INLET),
                        above0(in, values, REAR_EXHAUST),
                        above0(in, values, REAR_INLET),
                        flat,
                        ra,
                        rz,
                        block ? null : chamber(in, values, CHAMBER_BEFORE),
                        block ? null : chamber(in, values, CHAMBER_AFTER),
                        retimed);
    }

    /** The least corner before, less what is left, is what came off, as near as corners are read. */
    private static void contradicts(
            ReadSheet in, @Nullable Skim skim, @Nullable Length removed, @Nullable Length left) {
        if (skim == null || removed == null || left == null) {
            return;
        }
        skim.before().min(Length::compareTo).ifPresent(before -> {
            long off = before.nanometres() - left.nanometres();
            if (Math.abs(off - removed.nanometres()) > READING) {
                in.wrong(LEFT, ProblemKind.SKIM_NOT_AS_THICKNESS, new Length(off), removed);
            }
        });
    }

    private static boolean tooThin(ReadSheet in, Optional<FacePage> page, @Nullable Length left) {
        Length least = page.map(of -> of.limits().least()).orElse(null);
        in.note(ACCEPTED, SheetNote.of("accepted_thin"));
        if (least == null || left == null || left.compareTo(least) >= 0) {
            return false;
        }
        if (in.text(ACCEPTED).isEmpty()) {
            in.wrong(ACCEPTED, ProblemKind.BELOW_LEAST_THICKNESS, left, least);
        }
        return true;
    }

    private static @Nullable Length above0(ReadSheet in, ReadValues values, SheetField field) {
        Length length = values.length(field);
        if (length != null && length.nanometres() <= 0) {
            in.wrong(field, ProblemKind.CANNOT_READ, field, in.text(field), "117.86 mm");
            return null;
        }
        return length;
    }

    private static @Nullable Integer finish(ReadSheet in, ReadValues values, SheetField field) {
        in.note(field, SheetNote.of("in_sign", MeasureUnit.FINISH_MICROMETRE.sign()));
        Long parts = parts(in, values, field, MeasureUnit.FINISH_MICROMETRE, "0.6 µm");
        return parts == null ? null : Math.toIntExact(Math.min(parts, Integer.MAX_VALUE));
    }

    private static @Nullable Volume chamber(ReadSheet in, ReadValues values, SheetField field) {
        in.note(field, SheetNote.of("chamber_mean"));
        Long parts = parts(in, values, field, MeasureUnit.CUBIC_CENTIMETRE, "33.2 cc");
        return parts == null ? null : new Volume(parts);
    }

    private static @Nullable Long parts(
            ReadSheet in, ReadValues values, SheetField field, MeasureUnit unit, String example) {
        TypedMeasure typed = values.read(field, text -> TypedMeasure.read(text, unit, false));
        if (typed != null && typed.parts() <= 0) {
            in.wrong(field, ProblemKind.CANNOT_READ, field, in.text(field), example);
            return null;
        }
        return typed == null ? null : Long.valueOf(typed.parts());
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Part.class, typed.text(PART))
                .map(part -> part.fact().mark())
                .orElse(""));
    }
}
