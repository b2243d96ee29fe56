package witnessmark.logbook.sheets;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.PartKind;
import witnessmark.logbook.port.StartingValue;
import witnessmark.quantity.Counter;

/**
 * One line of the list of limits: what is done to a kind of part, counted in what.
 *
 * @param field where its figure is typed
 */
record ListedLimit(SheetField field, PartKind kind, LimitAction action, Counter counter) {
    static ListedLimit of(PartKind kind, LimitAction action, Counter counter) {
        String key = String.join("_", "list", kind.code(), action.code(), counter.code())
                .replaceAll("[ -]", "_");
        SheetLabel label = new SheetLabel(SheetNote.of("listed_limit", kind, action), counter);
        return new ListedLimit(new SheetField(key, FieldKind.TEXT, 1, label), kind, action, counter);
    }

    boolean starts(StartingValue value) {
        return value.part() == kind && value.action() == action && value.counter() == counter;
    }

    /** Whether a limit is this one in engines of a design; null for all designs. */
    boolean is(Limit limit, @Nullable Id<EngineDesign> design) {
        return limit.partKind() == kind
                && limit.action() == action
                && limit.counter() == counter
                && Objects.equals(limit.design(), design)
                && limit.partDesign() == null
                && limit.part() == null
                && limit.engine() == null
                && limit.car() == null;
    }

    /** The work due, as people write it down. */
    String workDue() {
        return switch (action) {
            case LOOK -> "look at " + kind.code();
            case CRACK_TEST -> "crack-test " + kind.code();
            case SKIM -> "skim " + kind.code();
            case REBUILD -> "rebuild with " + kind.code();
            case RENEW -> "renew " + kind.code();
        };
    }
}
