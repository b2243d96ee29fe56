package witnessmark.desktop.find;

import java.time.LocalDate;
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
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/**
 * Makes the index of one revision: engines and parts by their marks; builds, runs, events and jobs with the latest first.
 */
final class ReadRecords {
    private final Texts texts;
    private final RecordWords records;
    private final ReadBuilds builds;
    private final ReadRuns runs;
    private final ReadDynoSheets dyno;
    private final ReadTraces traces;
    private final ReadTrials trials;
    private final ReadIncidents incidents;
    private final ReadEvents events;
    private final ReadJobs jobs;

    ReadRecords(Texts texts, Measures measures) {
        this.texts = texts;
        this.records = new RecordWords(texts);
        this.builds = new ReadBuilds(texts, measures);
        this.runs = new ReadRuns(texts, measures);
        this.dyno = new ReadDynoSheets(texts, measures);
        this.traces = new ReadTraces(texts, measures);
        this.trials = new ReadTrials(texts, measures);
        this.incidents = new ReadIncidents(texts, measures);
        this.events = new ReadEvents(texts, measures, runs);
        this.jobs = new ReadJobs(texts, measures);
    }

    /** @param today the day taken for today: the event that comes next has a place of its own */
    RecordIndex of(Facts facts, LocalDate today) {
        Map<FindGroup, List<Indexed>> all = new EnumMap<>(FindGroup.class);
        all.put(FindGroup.ENGINES, engines(facts));
        all.put(FindGroup.BUILDS, builds.all(facts));
        all.put(FindGroup.PARTS, parts(facts));
        all.put(FindGroup.DYNO, dyno.all(facts));
        all.put(FindGroup.RUNS, runs.all(facts));
        all.put(FindGroup.TRACES, traces.all(facts));
        all.put(FindGroup.TRIALS, trials.all(facts, today));
        all.put(FindGroup.INCIDENTS, incidents.all(facts));
        all.put(FindGroup.EVENTS, events.all(facts, today));
        all.put(FindGroup.JOBS, jobs.all(facts));
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
                            PlaceId.PARTS_SHELF,
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

    static String words(@Nullable String... all) {
        StringBuilder words = new StringBuilder();
        for (String text : all) {
            if (text != null && !text.isBlank()) {
                words.append(text).append(' ');
            }
        }
        return Plain.words(words.toString());
    }
}
