package witnessmark.desktop.find;

import java.util.Comparator;
import java.util.List;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Run;
import witnessmark.domain.Trace;
import witnessmark.wording.Measures;
import witnessmark.wording.SeenTraceWords;
import witnessmark.wording.Texts;

/** Makes traces findable by the run they are of, and by the name of their file. */
final class ReadTraces {
    private final Texts texts;
    private final Measures measures;
    private final SeenTraceWords words;

    ReadTraces(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new SeenTraceWords(texts, measures);
    }

    /** Every one in force whose run is, the latest first. */
    List<Indexed> all(Facts facts) {
        record Of(Entry<Trace> trace, Run run) {}
        return facts.of(Trace.class)
                .inForce()
                .flatMap(trace -> facts.of(Run.class).find(trace.fact().run()).filter(Entry::inForce).stream()
                        .map(run -> new Of(trace, run.fact())))
                .sorted(Comparator.comparing((Of of) -> of.run().start()).reversed())
                .map(of -> one(facts, of.trace(), of.run()))
                .toList();
    }

    private Indexed one(Facts facts, Entry<Trace> trace, Run run) {
        String title = texts.get(
                "beforewego.find.trace",
                facts.of(Engine.class).get(run.engine()).number(),
                words.run(run));
        String note = measures.row(
                List.of(measures.date(run.start().day()), trace.fact().name()));
        return new Indexed(
                title,
                note,
                "",
                ReadRecords.words(
                        title, note, run.start().day().toString(), trace.fact().note()),
                null,
                trace.id().text(),
                List.of());
    }
}
