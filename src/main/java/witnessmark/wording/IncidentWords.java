package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Incident;
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
}
