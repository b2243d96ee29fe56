package witnessmark.logbook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import witnessmark.domain.Entry;
import witnessmark.logbook.port.KeptAside.Aside;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;

/**
 * Enters what a logbook could not take when it was saved: each change as it was to be, by whoever enters it now, and each to
 * be taken back by itself. One that does not fit any more, as when somebody corrected the entry meanwhile, is told and goes on
 * waiting; the others go in.
 */
public final class EnterKeptAside {
    private final Desk desk;

    public EnterKeptAside(Desk desk) {
        this.desk = desk;
    }

    /** What was one change. */
    private record Saving(String who, String why, Instant at) {}

    /**
     * Enters them.
     *
     * @param because what the history says of a change, made of any of its entries
     * @return how many entries went in; did-not when none did
     */
    public Outcome<Integer> enter(List<Aside> waiting, Function<Aside, String> because) {
        Map<Saving, List<Aside>> savings = new LinkedHashMap<>();
        for (Aside aside : waiting) {
            savings.computeIfAbsent(new Saving(aside.who(), aside.why(), aside.at()), any -> new ArrayList<>())
                    .add(aside);
        }
        int entered = 0;
        List<Problem> problems = new ArrayList<>();
        for (List<Aside> saving : savings.values()) {
            List<? extends Entry<?>> entries = saving.stream().map(Aside::entry).toList();
            Outcome<Written> written = desk.write(because.apply(saving.get(0)), entries);
            problems.addAll(written.problems());
            entered += written.didWork() ? saving.size() : 0;
        }
        return entered == 0 ? Outcome.didNot(problems) : Outcome.of(entered, problems);
    }
}
