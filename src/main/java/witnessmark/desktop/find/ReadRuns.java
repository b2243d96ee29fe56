package witnessmark.desktop.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Person;
import witnessmark.domain.Run;
import witnessmark.domain.StartKnown;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Makes runs findable, whatever their standing: what was struck out is told apart and can be restored on its sheet. */
final class ReadRuns {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    ReadRuns(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** Every run, the latest first. */
    List<Indexed> all(Facts facts) {
        return facts.of(Run.class).all().stream()
                .sorted(Comparator.comparing((Entry<Run> run) -> run.fact().start())
                        .reversed())
                .map(run -> one(facts, run))
                .toList();
    }

    Indexed one(Facts facts, Entry<Run> run) {
        Run fact = run.fact();
        String name = fact.name().isEmpty() ? records.label(records.word(fact.kind())) : fact.name();
        String event = fact.event() == null
                ? ""
                : facts.of(Event.class).get(fact.event()).name();
        String driver = fact.driver() == null
                ? ""
                : facts.of(Person.class).get(fact.driver()).name();
        String title = event.isEmpty() ? name : texts.get("beforewego.find.run", name, event);
        String note = note(facts, run);
        return new Indexed(
                title,
                note,
                "",
                ReadRecords.words(
                        title,
                        note,
                        fact.start().day().toString(),
                        driver,
                        records.word(fact.kind()),
                        fact.remarks(),
                        run.struckBecause()),
                PlaceId.RUN_SHEET,
                run.id().text());
    }

    /** What tells it from the other runs of its day: "Sun 5 Jul 2026, 15:02, 27 min 42 s, car 41, engine K03". */
    private String note(Facts facts, Entry<Run> run) {
        Run fact = run.fact();
        List<String> said = new ArrayList<>();
        said.add(measures.date(fact.start().day()));
        if (!fact.start().dayOnly()) {
            String out = measures.time(fact.start().wallClock().toLocalTime());
            said.add(fact.startKnown() == StartKnown.ESTIMATE ? measures.about(out) : out);
        }
        said.add(measures.running(fact.running()));
        if (fact.car() != null) {
            said.add(texts.get(
                    "beforewego.find.run.car",
                    facts.of(Car.class).get(fact.car()).name()));
        }
        said.add(texts.get(
                "beforewego.find.run.engine",
                facts.of(Engine.class).get(fact.engine()).number()));
        String note = measures.row(said);
        return run.inForce()
                ? note
                : texts.get("beforewego.find.run.standing", records.label(records.word(run.standing())), note);
    }
}
