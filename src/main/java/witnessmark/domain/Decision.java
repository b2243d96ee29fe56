package witnessmark.domain;

import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;

/**
 * A question that was put, and what was decided.
 *
 * @param mark the short name it goes by; unique
 * @param question what was to be decided
 * @param asked when it was put
 * @param engine about which engine, or null
 * @param car about which car, or null
 * @param event before or at which event, or null
 * @param answers the incident that raised it, or null
 * @param adviser who was asked; empty when nobody was
 * @param advice what the adviser said; empty when nobody was asked
 * @param decided when it was decided, or null while it is open
 * @param decidedBy who decided; empty while it is open
 * @param dissent who thought otherwise, and why; empty when nobody
 * @param outcome what came of it; empty while not known
 * @param verdict how it looks afterwards, or null while not known
 * @param ledTo the incident that came of it, or null
 * @param note anything else
 */
public record Decision(
        String mark,
        String question,
        Moment asked,
        @Nullable Id<Engine> engine,
        @Nullable Id<Car> car,
        @Nullable Id<Event> event,
        @Nullable Id<Incident> answers,
        String adviser,
        String advice,
        @Nullable Moment decided,
        String decidedBy,
        String dissent,
        String outcome,
        @Nullable Verdict verdict,
        @Nullable Id<Incident> ledTo,
        String note)
        implements Fact {
    public Decision {
        if (question.isBlank()) {
            throw new IllegalArgumentException("a decision says what the question is");
        }
        if (decided != null && decided.isBefore(asked)) {
            throw new IllegalArgumentException("a question is decided after it was put");
        }
    }

    @Override
    public String knownAs() {
        return mark;
    }

    @Override
    public Moment happened() {
        return asked;
    }
}
