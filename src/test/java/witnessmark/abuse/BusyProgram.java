package witnessmark.abuse;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import witnessmark.domain.BudgetLine;
import witnessmark.domain.CostLine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Fitment;
import witnessmark.domain.Incident;
import witnessmark.domain.IncidentPart;
import witnessmark.domain.Measurement;
import witnessmark.domain.Run;
import witnessmark.domain.SignOff;
import witnessmark.domain.SignedCheck;
import witnessmark.domain.Work;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Drafts.Draft;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Outcome;
import witnessmark.store.RandomFacts;
import witnessmark.store.TestLogbooks;

/**
 * A program that works in a logbook until it is killed, one piece of work after another in an order by chance: runs,
 * fitments, work, corrections, costs with their incidents, figures of a build sheet and its signing with all checks, an
 * import of something of every kind at once, drafts, backups. It says on standard output what it begins and what it was
 * told is saved.
 */
final class BusyProgram {
    /** What is written together, by kind. */
    private static final List<List<Class<? extends Fact>>> TOGETHER = List.of(
            List.of(Run.class),
            List.of(Run.class),
            List.of(Fitment.class),
            List.of(Work.class),
            List.of(CostLine.class, BudgetLine.class),
            List.of(Incident.class, IncidentPart.class, CostLine.class),
            List.of(Measurement.class),
            List.of(SignOff.class, SignedCheck.class, SignedCheck.class, SignedCheck.class));

    private final Logbook logbook;
    private final Random random;
    private final RandomFacts facts;

    private BusyProgram(Logbook logbook, long seed) {
        this.logbook = logbook;
        this.random = new Random(seed);
        this.facts = new RandomFacts(seed);
    }

    /** @param args the folder of the logbook, a seed */
    public static void main(String[] args) {
        TestLogbooks logbooks = new TestLogbooks(Path.of(args[0]));
        System.out.println("opens");
        Logbook logbook = logbooks.open(); // which brings an older one to the newest form
        System.out.println("made");
        BusyProgram program = new BusyProgram(logbook, Long.parseLong(args[1]));
        while (true) {
            program.work();
        }
    }

    private void work() {
        int what = random.nextInt(TOGETHER.size() + 5);
        if (what < TOGETHER.size()) {
            List<Entry<?>> entries = new ArrayList<>();
            for (Class<? extends Fact> kind : TOGETHER.get(what)) {
                entries.add(facts.fresh(RecordTypes.of(kind), logbook.facts().with(entries)));
            }
            write(entries);
        } else if (what == TOGETHER.size()) {
            write(facts.oneOfEach(logbook.facts()));
        } else if (what == TOGETHER.size() + 1) {
            System.out.println("backup " + logbook.backUp().orThrow());
        } else if (what == TOGETHER.size() + 2) {
            String text = "half a run " + random.nextInt(1_000_000);
            System.out.println("drafts " + text);
            logbook.drafts().keep("run", "", new Draft(Map.of("text", text), Instant.now()));
            System.out.println("drafted " + text);
        } else {
            write(List.of(facts.edited(facts.any(logbook.facts()), logbook.facts())));
        }
    }

    private void write(List<Entry<?>> entries) {
        String all = entries.stream()
                .map(entry -> entry.id().text() + ":" + entry.rev())
                .collect(Collectors.joining(" "));
        System.out.println("begins " + all);
        Outcome<?> written = TestLogbooks.write(logbook, entries);
        System.out.println(written.didWork() ? "saved " + all : "refused");
    }
}
