package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Standing;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.Desk;
import witnessmark.logbook.StrikeOut;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/**
 * One written entry on its sheet, as it was when it was opened. What is typed is read as for a new one, against a logbook
 * that is without it. The sheet is read twice, as it was written and as it is typed: only where the two differ is the
 * entry amended, so that a value nobody touched stays exactly as it is, whatever its text has room for.
 *
 * @param <F> the kind of entry
 */
public final class WrittenSheet<F extends Fact> implements TypedSheet {
    private final Desk desk;
    private final Ids ids;
    private final SheetUnits units;
    private final Entry<F> entry;
    private final CorrectSheet sheet;
    private final Map<SheetField, String> texts;
    private volatile @Nullable Without without;

    /** The logbook without the entry, for one revision of it. */
    private record Without(Facts all, SheetSight sight) {}

    /**
     * @param form the sheet it is written on
     * @param dates a day as people read it
     */
    WrittenSheet(
            Desk desk, Ids ids, SheetUnits units, Entry<F> entry, LogSheet form, Function<LocalDate, String> dates) {
        this.desk = desk;
        this.ids = ids;
        this.units = units;
        this.entry = entry;
        this.sheet = new CorrectSheet(form, entry);
        this.texts = Map.copyOf(ShownDays.in(sheet.fresh(sight()), dates, sight()));
    }

    /** The entry as it was written when it was opened. */
    public Entry<F> entry() {
        return entry;
    }

    public boolean isStruckOut() {
        return entry.standing() == Standing.STRUCK_OUT;
    }

    /** Whether the logbook says something else about this entry by now. */
    public boolean isOutdated() {
        return now().filter(now -> now.rev() == entry.rev()).isEmpty();
    }

    private Optional<? extends Entry<?>> now() {
        return desk.view().facts().of(entry.fact().getClass()).all().stream()
                .filter(each -> each.id().equals(entry.id()))
                .findFirst();
    }

    @Override
    public LogSheet sheet() {
        return sheet;
    }

    @Override
    public Map<SheetField, String> texts() {
        return texts;
    }

    /** Everything but this entry: where it is held against others, it is as if it had not been written. */
    @Override
    public SheetSight sight() {
        View view = desk.view();
        Without last = without;
        if (last != null && last.all() == view.facts()) {
            return last.sight();
        }
        Facts others =
                view.facts().with(List.of(new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, "", entry.rev())));
        View rest = new View(others, view.day(), view.zone(), view.ledger().after(others), view.readOnly());
        SheetSight sight = new SheetSight(rest, desk.today().day(), units, desk.who(), new StandingNow(rest));
        without = new Without(view.facts(), sight);
        return sight;
    }

    @Override
    public SheetReading read(Map<SheetField, String> typed) {
        SheetReading now = reading(typed);
        Map<SheetField, FieldResult> fields = new HashMap<>(now.fields());
        for (SheetField field : changed(typed)) {
            FieldResult result = now.of(field);
            fields.put(field, new FieldResult(was(field, result), result.problem(), result.readBack()));
        }
        return new SheetReading(now.asked(), fields, amended(now.entries()), now.blame(), now.blameByKind());
    }

    private SheetReading reading(Map<SheetField, String> typed) {
        return ReadSheet.correct(sheet, new SheetTyped(typed), sight(), ids, entry);
    }

    /** What is understood stays in sight; beside it what stood there before. */
    private SheetNote was(SheetField field, FieldResult result) {
        String text = texts.getOrDefault(field, "");
        Object before = sheet.choices(field, new SheetTyped(texts), sight()).stream()
                .filter(choice -> choice.key().equals(text))
                .findFirst()
                .map(choice -> (Object) choice)
                .orElse(text);
        return text.isEmpty()
                ? result.note()
                : result.note().echo() ? SheetNote.echo("and_was", result.note(), before) : SheetNote.of("was", before);
    }

    /** The fields in which something else stands than when it was opened; the reason is none of them. */
    public Set<SheetField> changed(Map<SheetField, String> typed) {
        Set<SheetField> changed = new LinkedHashSet<>();
        for (SheetField field : sheet.fields()) {
            String was = texts.getOrDefault(field, "").strip();
            if (!field.equals(CorrectSheet.BECAUSE)
                    && !typed.getOrDefault(field, "").strip().equals(was)) {
                changed.add(field);
            }
        }
        return changed;
    }

    /** The entry with what differs between the two readings; none when nothing does. */
    private List<Entry<?>> amended(List<Entry<?>> typed) {
        if (typed.isEmpty()) {
            return List.of();
        }
        List<Entry<?>> written = reading(texts).entries();
        RecordType<?> type = RecordTypes.of(entry.fact().getClass());
        @Nullable Object[] values = new Object[type.components().size()];
        for (int i = 0; i < values.length; i++) {
            Component component = type.components().get(i);
            Object now = component.value(typed.get(0).fact());
            boolean same = !written.isEmpty()
                    && Objects.equals(component.value(written.get(0).fact()), now);
            values[i] = same ? component.value(entry.fact()) : now;
        }
        @SuppressWarnings("unchecked") // made of the components of this very kind
        F fact = (F) type.of(values);
        List<Entry<?>> amended = new ArrayList<>();
        if (!fact.equals(entry.fact())) {
            amended.add(new Entry<>(entry.id(), fact, entry.standing(), entry.struckBecause(), entry.rev() + 1));
        }
        amended.addAll(typed.subList(1, typed.size())); // what goes along with it
        return amended;
    }

    /** What the correction brings in: what is wrong with the entry as it stands does not keep it from being put right. */
    @Override
    public List<FoundProblem> check(SheetReading reading) {
        if (reading.entries().isEmpty()) {
            return List.of();
        }
        Facts facts = desk.view().facts();
        List<Problem> before = WriteSheet.found(desk, facts, List.of(entry), reading).stream()
                .map(FoundProblem::problem)
                .toList();
        return WriteSheet.found(desk, facts.with(reading.entries()), reading.entries(), reading).stream()
                .filter(found -> !before.contains(found.problem()))
                .toList();
    }

    /** @throws IllegalStateException if the entry is struck out: it is restored first */
    @Override
    public Outcome<Optional<Written>> save(Map<SheetField, String> typed, String why) {
        if (isStruckOut()) {
            throw new IllegalStateException("an entry that is struck out is restored before it is corrected");
        }
        SheetReading reading = read(typed);
        List<Problem> stops = new ArrayList<>(reading.problems());
        check(reading).forEach(found -> stops.add(found.problem()));
        stops.removeIf(problem -> !problem.stops());
        if (!stops.isEmpty()) {
            return Outcome.didNot(stops);
        }
        return reading.entries().isEmpty()
                ? Outcome.worked(Optional.empty())
                : desk.write(why, reading.entries()).map(Optional::of);
    }

    /** Takes it out of every figure; it stays in the logbook. A reason is needed. */
    public Outcome<Written> strikeOut(String because, String why) {
        return new StrikeOut(desk).strikeOut(entry, because, why);
    }

    /** Puts it back in force. */
    public Outcome<Written> restore(String why) {
        return new StrikeOut(desk).restore(entry, why);
    }
}
