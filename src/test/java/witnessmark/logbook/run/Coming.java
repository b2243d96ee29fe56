package witnessmark.logbook.run;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Facts;
import witnessmark.domain.PlannedRun;
import witnessmark.domain.Run;

/** The coming runs of the sample's round 6 and 7 in the order of their timetables, put together the plain way. */
final class Coming {
    private Coming() {}

    static List<PlannedRun> after(Facts facts, Run run) {
        Comparator<PlannedRun> order = Comparator.comparingInt(PlannedRun::ordinal);
        List<PlannedRun> all =
                facts.of(PlannedRun.class).inForce().map(Entry::fact).toList();
        PlannedRun own = facts.of(PlannedRun.class).get(run.planned());
        return Stream.concat(
                        all.stream()
                                .filter(planned -> planned.event().equals(run.event()))
                                .filter(planned -> !planned.equals(own))
                                .sorted(order),
                        all.stream()
                                .filter(planned -> facts.of(Event.class)
                                        .get(planned.event())
                                        .name()
                                        .startsWith("Round 7"))
                                .sorted(order))
                .toList();
    }

    /** The name of a planned run's event, null for round 6, the event in hand. */
    static @Nullable String event(Facts facts, PlannedRun planned) {
        String name = facts.of(Event.class).get(planned.event()).name();
        return name.startsWith("Round 6") ? null : name;
    }
}
