package witnessmark.desktop.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Makes jobs findable, open ones first and then those done, the latest first. Each is read on its own sheet. */
final class ReadJobs {
    private final Texts texts;
    private final Measures measures;

    ReadJobs(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    List<Indexed> all(Facts facts) {
        return facts.of(Job.class)
                .inForce()
                .sorted(Comparator.comparing((Entry<Job> job) -> job.fact().done() != null)
                        .thenComparing(job -> last(job.fact()), Comparator.reverseOrder()))
                .map(job -> one(facts, job))
                .toList();
    }

    private static Moment last(Job job) {
        Moment done = job.done();
        return done == null ? job.asked() : done;
    }

    private Indexed one(Facts facts, Entry<Job> entry) {
        Job job = entry.fact();
        Moment done = job.done();
        List<String> said = new ArrayList<>();
        said.add(on(facts, job));
        said.add(
                done == null
                        ? texts.get(
                                "beforewego.find.job.open",
                                measures.date(job.asked().day()))
                        : texts.get("beforewego.find.job.done", measures.date(done.day())));
        said.add(done == null ? job.who() : job.result());
        said.removeIf(String::isBlank);
        String note = measures.row(said);
        String words = ReadRecords.words(
                job.what(),
                note,
                before(facts, job),
                job.who(),
                job.by(),
                job.waitingFor(),
                job.result(),
                job.asked().day().toString(),
                done == null ? null : done.day().toString());
        return new Indexed(job.what(), note, "", words, null, entry.id().text(), List.of());
    }

    private String on(Facts facts, Job job) {
        if (job.part() != null) {
            return texts.get(
                    "beforewego.job.part", facts.of(Part.class).get(job.part()).mark());
        }
        if (job.engine() != null) {
            return texts.get(
                    "beforewego.job.engine",
                    facts.of(Engine.class).get(job.engine()).number());
        }
        return job.car() == null
                ? ""
                : texts.get(
                        "beforewego.job.car", facts.of(Car.class).get(job.car()).name());
    }

    private static @Nullable String before(Facts facts, Job job) {
        return job.before() == null
                ? null
                : facts.of(Event.class).get(job.before()).name();
    }
}
