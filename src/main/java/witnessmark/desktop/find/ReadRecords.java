package witnessmark.desktop.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Person;
import witnessmark.domain.Run;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Makes the index of one revision: engines and parts by their marks, runs and events with the latest first. */
final class ReadRecords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    ReadRecords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    RecordIndex of(Facts facts) {
        Map<FindGroup, List<Indexed>> all = new EnumMap<>(FindGroup.class);
        all.put(FindGroup.ENGINES, engines(facts));
        all.put(FindGroup.PARTS, parts(facts));
        all.put(FindGroup.RUNS, runs(facts));
        all.put(FindGroup.EVENTS, events(facts));
        return new RecordIndex(all);
    }

    private List<Indexed> engines(Facts facts) {
        Map<Id<Engine>, Id<Car>> cars = new HashMap<>();
        facts.of(EngineInCar.class)
                .where(stay -> stay.to() == null)
                .forEach(stay -> cars.put(stay.fact().engine(), stay.fact().car()));
        List<Indexed> found = new ArrayList<>();
        facts.of(Engine.class)
                .inForce()
                .sorted(Comparator.comparing(engine -> engine.fact().number()))
                .forEach(engine -> {
                    Engine fact = engine.fact();
                    String design =
                            facts.of(EngineDesign.class).get(fact.design()).name();
                    Id<Car> car = cars.get(engine.id());
                    String where = car == null
                            ? texts.get("beforewego.find.noCar")
                            : texts.get(
                                    "beforewego.car",
                                    facts.of(Car.class).get(car).name());
                    found.add(new Indexed(
                            texts.get("beforewego.engine", fact.number()),
                            where,
                            Plain.serial(fact.number()),
                            words(
                                    texts.get("beforewego.engine", fact.number()),
                                    where,
                                    design,
                                    fact.owner(),
                                    fact.note()),
                            PlaceId.ENGINES,
                            engine.id().text()));
                });
        return found;
    }

    private List<Indexed> parts(Facts facts) {
        Map<Id<Part>, Fitment> fitted = new HashMap<>();
        facts.of(Fitment.class)
                .where(fitment -> fitment.to() == null)
                .forEach(fitment -> fitted.put(fitment.fact().part(), fitment.fact()));
        List<Indexed> found = new ArrayList<>();
        facts.of(Part.class)
                .inForce()
                .sorted(Comparator.comparing((Entry<Part> part) -> !fitted.containsKey(part.id()))
                        .thenComparing(part -> part.fact().mark()))
                .forEach(part -> {
                    Part fact = part.fact();
                    PartDesign design = facts.of(PartDesign.class).get(fact.design());
                    String title =
                            texts.get("beforewego.part", records.label(records.word(design.kind())), fact.mark());
                    String where = where(facts, fitted.get(part.id()));
                    found.add(new Indexed(
                            title,
                            where,
                            Plain.serial(fact.mark()),
                            words(
                                    title,
                                    where,
                                    design.name(),
                                    design.partNumber(),
                                    fact.batch(),
                                    fact.supplier(),
                                    fact.note()),
                            PlaceId.ENGINES,
                            part.id().text()));
                });
        return found;
    }

    private String where(Facts facts, @Nullable Fitment fitment) {
        if (fitment == null) {
            return texts.get("beforewego.shelf");
        }
        Id<Engine> engine = fitment.engine();
        Id<Car> car = fitment.car();
        return engine != null
                ? texts.get(
                        "beforewego.engine", facts.of(Engine.class).get(engine).number())
                : car == null
                        ? ""
                        : texts.get(
                                "beforewego.car", facts.of(Car.class).get(car).name());
    }

    private List<Indexed> runs(Facts facts) {
        List<Indexed> found = new ArrayList<>();
        facts.of(Run.class)
                .inForce()
                .sorted(Comparator.comparing((Entry<Run> run) -> run.fact().start())
                        .reversed())
                .forEach(run -> found.add(run(facts, run)));
        return found;
    }

    private Indexed run(Facts facts, Entry<Run> run) {
        Run fact = run.fact();
        String name = fact.name().isEmpty() ? records.label(records.word(fact.kind())) : fact.name();
        String event = fact.event() == null
                ? ""
                : facts.of(Event.class).get(fact.event()).name();
        String car = fact.car() == null
                ? ""
                : texts.get(
                        "beforewego.car", facts.of(Car.class).get(fact.car()).name());
        String driver = fact.driver() == null
                ? ""
                : facts.of(Person.class).get(fact.driver()).name();
        String engine = texts.get(
                "beforewego.engine", facts.of(Engine.class).get(fact.engine()).number());
        String day = measures.date(fact.start().day());
        String title = event.isEmpty() ? name : texts.get("beforewego.find.run", name, event);
        String note = car.isEmpty()
                ? texts.get("beforewego.comma", day, engine)
                : texts.get("beforewego.comma", texts.get("beforewego.comma", car, day), engine);
        return new Indexed(
                title,
                note,
                "",
                words(title, note, fact.start().day().toString(), driver, records.word(fact.kind()), fact.remarks()),
                PlaceId.RUN_SHEET,
                run.id().text());
    }

    /** An event leads to its last run, and before it has one to the first place. */
    private List<Indexed> events(Facts facts) {
        Map<Id<Event>, Entry<Run>> last = new HashMap<>();
        Map<Id<Event>, Integer> counts = new HashMap<>();
        facts.of(Run.class)
                .inForce()
                .sorted(Comparator.comparing(run -> run.fact().start()))
                .forEach(run -> {
                    Id<Event> event = run.fact().event();
                    if (event != null) {
                        last.put(event, run);
                        counts.merge(event, 1, Integer::sum);
                    }
                });
        List<Indexed> found = new ArrayList<>();
        facts.of(Event.class)
                .inForce()
                .sorted(Comparator.comparing(
                                (Entry<Event> event) -> event.fact().firstDay())
                        .reversed())
                .forEach(event -> {
                    Event fact = event.fact();
                    Entry<Run> run = last.get(event.id());
                    String note = texts.get(
                            "beforewego.find.event",
                            measures.date(fact.firstDay()),
                            counts.getOrDefault(event.id(), 0));
                    found.add(new Indexed(
                            fact.name(),
                            note,
                            "",
                            words(
                                    fact.name(),
                                    fact.circuit(),
                                    note,
                                    fact.firstDay().toString(),
                                    fact.note()),
                            run == null ? PlaceId.BEFORE_WE_GO : PlaceId.RUN_SHEET,
                            run == null ? event.id().text() : run.id().text()));
                });
        return found;
    }

    private static String words(@Nullable String... all) {
        StringBuilder words = new StringBuilder();
        for (String text : all) {
            if (text != null && !text.isBlank()) {
                words.append(text).append(' ');
            }
        }
        return Plain.words(words.toString());
    }
}
