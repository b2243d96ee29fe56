package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Coded;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Id;
import witnessmark.domain.Standing;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.money.LifeThen;
import witnessmark.logbook.port.Ids;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** A sheet being read: takes the typed text field by field, notes what is wrong, and collects the entries made. */
final class ReadSheet {
    private final SheetTyped typed;
    private final SheetSight sight;
    private final Ids ids;
    private final @Nullable Entry<?> corrected;
    private final Map<SheetField, FieldResult> results = new LinkedHashMap<>();
    private final List<Entry<?>> entries = new ArrayList<>();
    private final Map<Id<?>, SheetField> blame = new HashMap<>();
    private final Map<ProblemKind, SheetField> blameByKind = new EnumMap<>(ProblemKind.class);

    /** Whether nothing may be worked out that takes a while. */
    private final boolean hurried;

    private boolean waits;

    private ReadSheet(SheetTyped typed, SheetSight sight, Ids ids, @Nullable Entry<?> corrected, boolean hurried) {
        this.typed = typed;
        this.sight = sight;
        this.ids = ids;
        this.corrected = corrected;
        this.hurried = hurried;
    }

    static SheetReading read(LogSheet sheet, SheetTyped typed, SheetSight sight, Ids ids) {
        return read(sheet, new ReadSheet(typed, sight, ids, null, false));
    }

    /** The same where nothing has to be worked out for it that takes a while; empty otherwise. */
    static Optional<SheetReading> glance(LogSheet sheet, SheetTyped typed, SheetSight sight, Ids ids) {
        ReadSheet in = new ReadSheet(typed, sight, ids, null, true);
        SheetReading reading = read(sheet, in);
        return in.waits ? Optional.empty() : Optional.of(reading);
    }

    /** The same for an entry that is written: what the sheet makes takes its place. */
    static SheetReading correct(LogSheet sheet, SheetTyped typed, SheetSight sight, Ids ids, Entry<?> corrected) {
        return read(sheet, new ReadSheet(typed, sight, ids, corrected, false));
    }

    private static SheetReading read(LogSheet sheet, ReadSheet in) {
        SheetTyped typed = in.typed;
        SheetSight sight = in.sight;
        sheet.read(in);
        Set<SheetField> asked = new LinkedHashSet<>();
        for (SheetField field : sheet.fields()) {
            if (sheet.asks(field, typed, sight)) {
                asked.add(field);
            }
        }
        boolean stops = in.results.values().stream().anyMatch(FieldResult::stops);
        return new SheetReading(asked, in.results, stops ? List.of() : in.entries, in.blame, in.blameByKind);
    }

    SheetSight sight() {
        return sight;
    }

    /** What parts had run by a moment; empty while nobody may wait for it. */
    Optional<LifeThen> then(Moment at) {
        Optional<LifeThen> then = hurried
                ? sight.standing().known(at)
                : Optional.of(sight.standing().then(at));
        waits |= then.isEmpty();
        return then;
    }

    SheetTyped typed() {
        return typed;
    }

    String text(SheetField field) {
        return typed.text(field);
    }

    /** Whether something written is corrected, rather than something new written down. */
    boolean isCorrecting() {
        return corrected != null;
    }

    /** What is corrected, as it is written. */
    <F extends Fact> Optional<F> corrected(Class<F> kind) {
        return Optional.ofNullable(corrected)
                .map(Entry::fact)
                .filter(kind::isInstance)
                .map(kind::cast);
    }

    boolean is(SheetField field, SheetWord word) {
        return typed.is(field, word);
    }

    /** Whether nothing read so far stops the sheet: only then can entries be made of it. */
    boolean fine() {
        return results.values().stream().noneMatch(FieldResult::stops);
    }

    /** Text that has to be there. */
    String needed(SheetField field) {
        String text = text(field);
        if (text.isEmpty()) {
            wrong(field, ProblemKind.NEEDED, field);
        }
        return text;
    }

    /** A name that has to be there and that nothing of the kind has yet. */
    String newName(SheetField field, Class<? extends Fact> kind) {
        String name = needed(field);
        if (!name.isEmpty() && sight.facts().of(kind).named(name).isPresent()) {
            wrong(field, ProblemKind.NAME_TAKEN, RecordTypes.of(kind), name);
        }
        return name;
    }

    /** The entry picked, or null; it has to be picked, and to be there still. */
    <F extends Fact> @Nullable Entry<F> chosen(SheetField field, Class<F> kind) {
        String key = needed(field);
        if (key.isEmpty()) {
            return null;
        }
        Optional<Entry<F>> found = sight.find(kind, key);
        if (found.isEmpty()) {
            wrong(field, ProblemKind.NOT_FOUND, RecordTypes.of(kind), key);
        }
        return found.orElse(null);
    }

    /** The word picked from a closed list, or null; it has to be picked. */
    <E extends Enum<E> & Coded> @Nullable E word(SheetField field, Class<E> list) {
        String code = needed(field);
        Optional<E> found = Coded.find(list, code);
        if (found.isEmpty() && !code.isEmpty()) {
            wrong(field, ProblemKind.CANNOT_READ, field, code, list.getEnumConstants()[0]);
        }
        return found.orElse(null);
    }

    void wrong(SheetField field, ProblemKind kind, Object... facts) {
        wrong(field, Problem.of(kind, facts));
    }

    void wrong(SheetField field, Problem problem) {
        FieldResult now = result(field);
        results.put(field, new FieldResult(now.note(), problem, now.readBack()));
    }

    void note(SheetField field, SheetNote note) {
        FieldResult now = result(field);
        results.put(field, new FieldResult(note, now.problem(), now.readBack()));
    }

    void readBack(SheetField field, List<SheetNote> lines) {
        FieldResult now = result(field);
        results.put(field, new FieldResult(now.note(), now.problem(), lines));
    }

    /**
     * Makes a new entry.
     *
     * @param field beside which a contradiction about it is shown
     */
    <F extends Fact> Id<F> make(SheetField field, F fact) {
        Entry<?> written = corrected;
        if (written != null && written.fact().getClass() == fact.getClass()) {
            Id<F> same = new Id<>(written.id().value());
            return put(field, new Entry<>(same, fact, written.standing(), written.struckBecause(), written.rev() + 1));
        }
        Id<F> id = ids.next();
        return put(field, new Entry<>(id, fact, Standing.IN_FORCE, null, 1));
    }

    /**
     * Makes an entry stand otherwise.
     *
     * @param field beside which a contradiction about it is shown
     */
    <F extends Fact> Id<F> change(SheetField field, Entry<F> entry, F fact) {
        return put(field, new Entry<>(entry.id(), fact, entry.standing(), entry.struckBecause(), entry.rev() + 1));
    }

    /**
     * Strikes an entry out.
     *
     * @param because why, not blank
     */
    <F extends Fact> void strike(SheetField field, Entry<F> entry, String because) {
        put(field, new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, because, entry.rev() + 1));
    }

    /** Shows problems of this kind beside this field, whichever entry they are about. */
    void blame(SheetField field, ProblemKind... kinds) {
        for (ProblemKind kind : kinds) {
            blameByKind.put(kind, field);
        }
    }

    private <F extends Fact> Id<F> put(SheetField field, Entry<F> entry) {
        entries.add(entry);
        blame.put(entry.id(), field);
        return entry.id();
    }

    private FieldResult result(SheetField field) {
        return results.getOrDefault(field, FieldResult.EMPTY);
    }
}
