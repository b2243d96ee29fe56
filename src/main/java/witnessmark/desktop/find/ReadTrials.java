package witnessmark.desktop.find;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Trial;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Makes trials findable by their names, by the designs in them, and by what is hoped for. */
final class ReadTrials {
    private final Texts texts;
    private final Measures measures;

    ReadTrials(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** Every one in force that has begun by then, the latest first. */
    List<Indexed> all(Facts facts, LocalDate today) {
        return facts.of(Trial.class).where(trial -> !trial.from().isAfter(today)).stream()
                .sorted(Comparator.comparing(
                                (Entry<Trial> trial) -> trial.fact().from())
                        .reversed())
                .map(trial -> one(facts, trial))
                .toList();
    }

    private Indexed one(Facts facts, Entry<Trial> trial) {
        Trial fact = trial.fact();
        String title = texts.get("beforewego.find.trial", fact.name());
        String tried = design(facts, fact.tried());
        String usual = fact.usual() == null ? "" : design(facts, fact.usual());
        String note = measures.row(List.of(tried, measures.date(fact.from())));
        return new Indexed(
                title,
                note,
                "",
                ReadRecords.words(title, note, usual, fact.hoped(), fact.because()),
                null,
                trial.id().text(),
                List.of());
    }

    private static String design(Facts facts, Id<PartDesign> id) {
        return facts.of(PartDesign.class).get(id).name();
    }
}
