package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Incident;

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

    /** "open 23 days". */
    public String open(long days) {
        return texts.get("incidents.open", days);
    }
}
