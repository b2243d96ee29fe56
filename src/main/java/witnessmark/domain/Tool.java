package witnessmark.domain;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A wrench or a gauge.
 *
 * @param mark the mark the team gave it; unique
 * @param kind what it is
 * @param note anything else
 * @param outOfUse since when it may not be used, or null
 * @param why why not
 */
public record Tool(
        String mark, ToolKind kind, String note, @Nullable LocalDate outOfUse, String why) implements Fact {

    @Override
    public String knownAs() {
        return mark;
    }
}
