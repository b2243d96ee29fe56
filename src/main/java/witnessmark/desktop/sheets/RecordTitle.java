package witnessmark.desktop.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Coded;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.RecordTypes;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** What a written entry is called: its kind, what it is about, and when. */
final class RecordTitle {
    /** Kinds of word that say what an entry is about. */
    private static final Set<String> KINDS = Set.of("kind", "counter", "how");
    /** Texts that say what an entry without a name is about. */
    private static final Set<String> WORDS = Set.of("name", "why", "done", "place", "toldBy");

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    RecordTitle(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** {@code fitment, VS-03, K03, valve springs, Sun 5 Jul 2026}. */
    String of(Entry<?> entry, Facts facts) {
        List<String> all = new ArrayList<>(List.of(records.one(entry.fact().getClass())));
        all.add(what(entry.fact(), facts));
        all.add(when(entry.fact()));
        all.removeIf(String::isEmpty);
        return measures.row(all);
    }

    /** What was told of a run and which run that was, in one line; empty when nothing was told. */
    String told(Run run, Facts facts) {
        if (run.remarks().isBlank()) {
            return "";
        }
        String which = run.name().isEmpty() ? records.word(run.kind()) : run.name();
        String on = run.car() == null
                ? facts.of(Engine.class).get(run.engine()).number()
                : texts.get(
                        "sheets.choice.engine_elsewhere",
                        facts.of(Car.class).get(run.car()).name());
        return texts.get(
                "sheets.job_of_run",
                run.remarks().strip().replaceAll("\\s+", " "),
                on,
                which,
                measures.date(run.start().day()));
    }

    /** What it is about, without kind and day. */
    String what(Fact fact, Facts facts) {
        List<String> all = new ArrayList<>();
        String known = fact.knownAs();
        if (known != null) {
            all.add(known);
        }
        for (Component component : RecordTypes.of(fact.getClass()).components()) {
            String said = said(component, component.value(fact), facts);
            if (!said.isEmpty() && !all.contains(said)) {
                all.add(said);
            }
        }
        return measures.row(all);
    }

    private String said(Component component, @Nullable Object value, Facts facts) {
        Class<? extends Fact> kind = component.refersTo();
        if (kind != null && value instanceof Id<?> id) {
            return name(kind, id, facts);
        }
        if (KINDS.contains(component.name())) {
            return value instanceof Counter counter
                    ? records.counter(counter)
                    : value instanceof Coded word ? records.word(word) : "";
        }
        return value instanceof String text && WORDS.contains(component.name()) ? text : "";
    }

    private static <F extends Fact> String name(Class<F> kind, Id<?> id, Facts facts) {
        return facts.of(kind)
                .find(new Id<>(id.value()))
                .map(entry -> Optional.ofNullable(entry.fact().knownAs()).orElse(""))
                .orElse("");
    }

    /** The day it happened, or from which it counts; empty for what has neither. */
    String when(Fact fact) {
        LocalDate day = day(fact);
        return day == null ? "" : measures.date(day);
    }

    static @Nullable LocalDate day(Fact fact) {
        Moment happened = fact.happened();
        if (happened != null) {
            return happened.day();
        }
        return RecordTypes.of(fact.getClass()).components().stream()
                .map(component -> component.value(fact))
                .filter(LocalDate.class::isInstance)
                .map(LocalDate.class::cast)
                .findFirst()
                .orElse(null);
    }

    /** The kind of entry in the plural, as a label. */
    String many(Class<? extends Fact> kind) {
        return records.label(records.many(kind));
    }

    /** Whether it is struck out, in words; empty while it is in force. */
    String standing(Entry<?> entry) {
        String because = entry.struckBecause();
        return switch (entry.standing()) {
            case IN_FORCE -> "";
            case STRUCK_OUT -> texts.get("sheets.list.struck", because == null ? "" : because);
            case IN_CONFLICT -> texts.get("sheets.list.conflict");
        };
    }
}
