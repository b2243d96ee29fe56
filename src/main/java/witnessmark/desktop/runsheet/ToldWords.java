package witnessmark.desktop.runsheet;

import java.time.LocalDate;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.ledger.result.Life;
import witnessmark.logbook.run.Note;
import witnessmark.logbook.told.ToldField;
import witnessmark.outcome.Problem;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.Amounts;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** The sentences of the form for running told by others. */
final class ToldWords {
    private final Texts texts;
    private final Measures measures;
    private final Problems problems;
    private final Amounts amounts;
    private final LifeWords lives;

    ToldWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.problems = new Problems(texts, measures);
        this.amounts = new Amounts(texts, measures);
        this.lives = new LifeWords(texts, measures);
    }

    Texts texts() {
        return texts;
    }

    String label(ToldField field) {
        return texts.get("runsheet.told.field." + field.key());
    }

    String line(FieldLine line) {
        Problem problem = line.problem();
        if (problem != null) {
            return ShortFacts.sentence(texts, problem, this::figure).orElseGet(() -> problems.note(problem));
        }
        Note note = line.note();
        return note.kind() == Note.Kind.UNDERSTOOD
                ? texts.get("runsheet.note.understood", figure(note.facts().get(0)))
                : "";
    }

    String inFull(FieldLine line) {
        Problem problem = line.problem();
        return problem == null ? line(line) : problems.note(problem);
    }

    String sentence(Problem problem) {
        return problems.typed(problem);
    }

    /** {@code K21: 25 to 31 h, of that 8 to 14 h told}. */
    String life(String engine, Life life) {
        String total = lives.life(life);
        return life.toldHighest() == 0
                ? texts.get("runsheet.told.life", engine, total)
                : texts.get(
                        "runsheet.told.life_told",
                        engine,
                        total,
                        amounts.range(life.counter(), life.toldLowest(), life.toldHighest()));
    }

    String engine(Entry<Engine> engine) {
        return engine.fact().number();
    }

    private String figure(Object fact) {
        if (fact instanceof RunningTime time) {
            return measures.hours(time);
        }
        return fact instanceof LocalDate day ? measures.date(day) : String.valueOf(fact);
    }
}
