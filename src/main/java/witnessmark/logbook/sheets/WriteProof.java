package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.ProofBy;
import witnessmark.domain.ProofSeen;
import witnessmark.domain.ProofWanted;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Writes down a look or a reading that was asked for as proof, and whether it was as asked for. */
public final class WriteProof implements LogSheet {
    public static final SheetField WANTED = choice("proof_wanted", 4);
    public static final SheetField MET = choice("proof_met", 1);
    public static final SheetField ENGINE = choice("proof_engine", 1);
    public static final SheetField WHEN = of("proof_on", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("proof_time", FieldKind.CLOCK);
    public static final SheetField WORDS = text("proof_words", 3);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "proof_seen";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(SheetGroup.of(
                "proof_seen", List.of(WANTED), List.of(MET, ENGINE, WHEN, WHEN_TIME), List.of(WORDS, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        Map<SheetField, String> out = new HashMap<>();
        out.put(WHEN, sight.today().toString());
        out.put(BY, sight.who());
        return out;
    }

    @Override
    public Set<SheetField> kept() {
        return Set.of(WHEN, BY);
    }

    @Override
    public boolean oneAfterTheOther() {
        return true;
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "proof_wanted" -> wanted(sight);
            case "proof_met" -> List.of(SheetWord.YES.choice(), SheetWord.NO.choice());
            case "proof_engine" -> Choice.orNone(sight.all(Engine.class, engine -> true));
            default -> List.of();
        };
    }

    /** Looks and readings; running counts by itself. The latest asked for first. */
    private static List<Choice> wanted(SheetSight sight) {
        return sight.facts().of(ProofWanted.class).where(each -> each.kind() != ProofBy.RUNNING).stream()
                .sorted(Comparator.comparing(
                                (Entry<ProofWanted> each) -> each.fact().set())
                        .reversed())
                .map(each -> Choice.of(
                        each.id().text(),
                        sight.name(Incident.class, each.fact().incident()),
                        each.fact().what()))
                .toList();
    }

    @Override
    public Map<SheetField, String> follows(SheetField picked, SheetTyped typed, SheetSight sight) {
        return picked.equals(WANTED)
                ? sight.find(ProofWanted.class, typed.text(WANTED))
                        .flatMap(wanted -> sight.facts()
                                .of(Incident.class)
                                .find(wanted.fact().incident()))
                        .map(incident -> incident.fact().engine())
                        .map(engine -> Map.of(ENGINE, engine.text()))
                        .orElse(Map.of())
                : Map.of();
    }

    @Override
    public void read(ReadSheet in) {
        Entry<ProofWanted> wanted = in.chosen(WANTED, ProofWanted.class);
        String met = in.needed(MET);
        Entry<Engine> engine = in.text(ENGINE).isEmpty() ? null : in.chosen(ENGINE, Engine.class);
        Moment at = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.note(WORDS, SheetNote.of("proof_words_example"));
        String words = in.needed(WORDS);
        String by = in.needed(BY);
        if (wanted != null && at != null && at.isBefore(wanted.fact().set())) {
            in.wrong(
                    WHEN,
                    ProblemKind.ENDS_BEFORE_IT_BEGINS,
                    wanted.fact().what(),
                    wanted.fact().set(),
                    at);
        }
        if (wanted != null && at != null && !met.isEmpty() && in.fine()) {
            Id<Engine> on = engine == null ? null : engine.id();
            in.make(WORDS, new ProofSeen(wanted.id(), at, on, null, in.is(MET, SheetWord.YES), null, null, words, by));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(ProofWanted.class, typed.text(WANTED))
                .map(wanted -> sight.name(Incident.class, wanted.fact().incident()))
                .orElse(""));
    }
}
