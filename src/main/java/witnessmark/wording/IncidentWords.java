package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.study.result.ProofOfCase;
import witnessmark.study.result.ProofState;

/** An incident in words. */
public final class IncidentWords {
    private final Texts texts;
    private final Measures measures;

    public IncidentWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
    }

    /** "INC-05 Big end no. 3 again"; what it was alone where it has no mark. */
    public String name(Incident incident) {
        return incident.mark().isBlank()
                ? incident.title()
                : texts.get("incidents.name", incident.mark(), incident.title());
    }

    /**
     * "car 57, K05"; empty for neither.
     *
     * @param car the name of its car, or null
     * @param engine the number of its engine, or null
     */
    public String on(@Nullable String car, @Nullable String engine) {
        List<String> on = new ArrayList<>();
        if (car != null) {
            on.add(texts.get("incidents.car", car));
        }
        if (engine != null) {
            on.add(engine);
        }
        return measures.row(on);
    }

    /**
     * How far one that is not closed is: how bad it was and open for how long, or how far it holds; what was done at once cannot
     * be told apart.
     */
    public List<String> stands(ProofOfCase proof, long days) {
        List<String> stands = new ArrayList<>();
        RunningTime needed = proof.needed();
        boolean holding = proof.state() == ProofState.HOLDING && needed != null;
        stands.add(
                holding
                        ? texts.get(
                                "incidents.stands.holding",
                                measures.hours(proof.ran()),
                                measures.hours(Objects.requireNonNull(needed)))
                        : open(days));
        if (!proof.together().isEmpty()) {
            stands.add(texts.get("incidents.stands.together", proof.together().size()));
        }
        return stands;
    }

    /** "again after INC-03". */
    public String again(String before) {
        return texts.get("incidents.again_after", before);
    }

    /** "open 23 days". */
    public String open(long days) {
        return texts.get("incidents.open", days);
    }

    /** When and how it was found, on what, where, how bad it was, and who wrote it. */
    public String told(Facts facts, Incident incident) {
        RecordWords records = new RecordWords(texts);
        List<String> all = new ArrayList<>();
        all.add(measures.fullMoment(incident.at()));
        all.add(records.word(incident.found()));
        all.add(on(car(facts, incident), engine(facts, incident)));
        if (incident.event() != null) {
            all.add(facts.of(Event.class).get(incident.event()).name());
        }
        all.add(records.word(incident.severity()));
        all.add(texts.get("incidents.by", incident.by()));
        all.removeIf(String::isEmpty);
        return measures.row(all);
    }

    /** When, by whom and why it was closed; empty while it is not. */
    public String closed(Incident incident) {
        Moment closed = incident.closed();
        return closed == null
                ? ""
                : texts.get(
                        "incidents.closed.because",
                        measures.date(closed.day()),
                        incident.closedBy(),
                        incident.closedBecause());
    }

    /** What a part of it had run, as it was written. */
    public String had(IncidentPart part) {
        RunningTime ran = part.ran();
        if (ran == null) {
            return texts.get("incidents.ran.not_known");
        }
        String key = part.atLeast() ? "incidents.ran.least" : "incidents.ran";
        return part.limit() == null
                ? texts.get(key, measures.hours(ran))
                : texts.get(key + ".of", measures.hours(ran), measures.hours(part.limit()));
    }

    /** The name of its car, or null where it is of none. */
    public static @Nullable String car(Facts facts, Incident incident) {
        return incident.car() == null
                ? null
                : facts.of(Car.class).get(incident.car()).name();
    }

    /** The number of its engine, or null where it is of none. */
    public static @Nullable String engine(Facts facts, Incident incident) {
        return incident.engine() == null
                ? null
                : facts.of(Engine.class).get(incident.engine()).number();
    }
}
