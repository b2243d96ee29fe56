package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.Part;

/** What a job is on, picked in one field: an engine, a part, a car, or nothing in particular. */
record JobSubject(
        @Nullable Entry<Engine> engine,
        @Nullable Entry<Part> part,
        @Nullable Entry<Car> car) {
    private static final String CAR = "car ";

    /** Every car, then every engine, then every part. */
    static List<Choice> choices(SheetSight sight) {
        List<Choice> choices = new ArrayList<>();
        for (Entry<Car> car : sight.facts().of(Car.class).where(each -> true)) {
            choices.add(Choice.of(CAR + car.id().text(), SheetWord.CAR, car.fact()));
        }
        choices.addAll(EngineOrPart.choices(sight));
        return choices;
    }

    /** An open job by what is to be done and what it is on: two alike can be told apart. */
    static Choice choice(SheetSight sight, Entry<Job> open) {
        Job job = open.fact();
        List<Object> facts = new ArrayList<>(List.of(SheetNote.of("job_named", job.what())));
        if (job.engine() != null) {
            facts.add(sight.facts().of(Engine.class).get(job.engine()));
        }
        if (job.part() != null) {
            facts.add(sight.facts().of(Part.class).get(job.part()));
        }
        if (job.car() != null) {
            facts.add(sight.facts().of(Car.class).get(job.car()));
        }
        return new Choice(open.id().text(), facts);
    }

    /** What is picked; nothing at all when nothing is. */
    static JobSubject read(ReadSheet in, SheetField field) {
        String key = in.text(field);
        if (key.startsWith(CAR)) {
            return new JobSubject(
                    null,
                    null,
                    in.sight().find(Car.class, key.substring(CAR.length())).orElse(null));
        }
        EngineOrPart on = key.isEmpty() ? null : EngineOrPart.read(in, field);
        return on == null ? new JobSubject(null, null, null) : new JobSubject(on.engine(), on.part(), null);
    }

    @Nullable
    Id<Engine> engineId() {
        return engine == null ? null : engine.id();
    }

    @Nullable
    Id<Part> partId() {
        return part == null ? null : part.id();
    }

    @Nullable
    Id<Car> carId() {
        return car == null ? null : car.id();
    }
}
