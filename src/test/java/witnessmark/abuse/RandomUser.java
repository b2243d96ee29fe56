package witnessmark.abuse;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import witnessmark.domain.Car;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.Desk;
import witnessmark.logbook.StrikeOut;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Drafts.Draft;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.run.CorrectRun;
import witnessmark.logbook.run.FieldUnits;
import witnessmark.logbook.run.RunField;
import witnessmark.logbook.run.RunSheet;
import witnessmark.logbook.run.WrittenRun;
import witnessmark.outcome.Outcome;
import witnessmark.quantity.Counter;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.FixedToday;
import witnessmark.sample.SampleBooks;
import witnessmark.store.TestLogbooks;

/**
 * Somebody who does one thing after another at random on a copy of the sample, at the run sheet as the window has it, and
 * a list of what was saved kept beside by other means: seconds by run.
 */
final class RandomUser implements AutoCloseable {
    private static final FieldUnits UNITS = FieldUnits.metric(DayOrder.DAY_FIRST);
    private static final LocalDate TODAY = LocalDate.of(2029, 12, 31);
    private static final LocalDate FIRST = LocalDate.of(2026, 7, 9);
    private static final int OF_A_DAY = 30;
    private static final int MINUTES_APART = 20;
    private static final int SHORTEST = 200;
    private static final int LONGEST = 1_000;
    private static final int UNDONE_AT_MOST = 200;

    /** A change of one run: how many seconds it counted before and after. */
    private record Step(Id<Run> run, int before, int after) {}

    private final TestLogbooks logbooks;
    private final Random random;
    private final Map<String, Integer> counts;
    private final Map<Id<Run>, Integer> seconds = new HashMap<>();
    private final List<Id<Run>> logged = new ArrayList<>();
    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> takenBack = new ArrayDeque<>();
    private final List<String> wrong = new ArrayList<>();
    private final long atFirst;
    private Desk desk;
    private RunSheet sheet;
    private int runs;

    RandomUser(Path folder, Random random, Map<String, Integer> counts) {
        this.random = random;
        this.counts = counts;
        new SampleBooks(folder).open().logbook().close();
        this.logbooks = new TestLogbooks(folder);
        begin();
        this.atFirst = life();
    }

    private void begin() {
        Logbook logbook = logbooks.files
                .open(logbooks.folder.resolve("sample-season.witness"))
                .orThrow();
        desk = new Desk(logbook, new FixedToday(TODAY), "Somebody");
        sheet = new RunSheet(desk, SampleBooks.ids(), UNITS);
        done.clear();
        takenBack.clear();
    }

    List<String> wrong() {
        return wrong;
    }

    /** Makes the list wrong by a second. */
    void miscount() {
        seconds.merge(seconds.keySet().iterator().next(), 1, Integer::sum);
    }

    void act() {
        int what = random.nextInt(100);
        if (what < 40) {
            log();
        } else if (what < 52) {
            correct();
        } else if (what < 60) {
            strikeOrRestore();
        } else if (what < 74) {
            undo();
        } else if (what < 82) {
            redo();
        } else if (what < 90) {
            typeNonsense();
        } else if (what < 94) {
            lookBack();
        } else if (what < 97) {
            draft();
        } else if (what < 99) {
            compare();
        } else {
            backUpAndOpenAgain();
        }
    }

    private Map<RunField, String> typed() {
        Id<Car> car =
                desk.view().facts().of(Car.class).named("41").orElseThrow().id();
        Map<RunField, String> typed = new EnumMap<>(sheet.fresh(car));
        typed.put(RunField.DATE, FIRST.plusDays(runs / OF_A_DAY).toString());
        typed.put(
                RunField.OUT_AT,
                LocalTime.of(8, 0)
                        .plusMinutes((long) MINUTES_APART * (runs % OF_A_DAY))
                        .toString());
        return typed;
    }

    private void log() {
        int length = anyLength();
        Map<RunField, String> typed = typed();
        typed.put(RunField.RUNNING, length + " s");
        typed.put(RunField.REMARKS, random.nextInt(4) == 0 ? anyText() : "");
        var written = sheet.save(typed, "run");
        runs++;
        if (told("log", written)) {
            Id<Run> run = new Id<>(written.orThrow().amendments().get(0).record());
            logged.add(run);
            Run fact = entry(run).fact();
            stepped(new Step(run, 0, fact.perhapsSame() == null ? length : 0));
        }
    }

    private void correct() {
        Id<Run> id = any();
        if (id == null || !entry(id).inForce() || entry(id).fact().perhapsSame() != null) {
            return;
        }
        WrittenRun run = new CorrectRun(desk, UNITS).open(id).orElseThrow();
        int length = anyLength();
        Map<RunField, String> typed = new EnumMap<>(run.texts());
        typed.put(RunField.RUNNING, length + " s");
        var written = run.save(typed, "correcting");
        if (told("correct", written) && written.orThrow().isPresent()) {
            stepped(new Step(id, seconds.get(id), length));
        }
    }

    private void strikeOrRestore() {
        Id<Run> id = any();
        if (id == null) {
            return;
        }
        Entry<Run> entry = entry(id);
        if (entry.inForce()) {
            if (told("strike out", new StrikeOut(desk).strikeOut(entry, "because", "striking out"))) {
                stepped(new Step(id, seconds.get(id), 0));
            }
        } else if (told("restore", new StrikeOut(desk).restore(entry, "restoring"))) {
            boolean counts = entry(id).fact().perhapsSame() == null;
            stepped(new Step(id, 0, counts ? (int) (entry(id).fact().running().millis() / 1_000) : 0));
        }
    }

    private void stepped(Step step) {
        seconds.put(step.run(), step.after());
        done.push(step);
        while (done.size() > UNDONE_AT_MOST) {
            done.removeLast();
        }
        takenBack.clear();
    }

    private void undo() {
        Step last = done.peek();
        Outcome<?> written = desk.undo();
        if (written.didWork() != (last != null)) {
            wrong.add("taking back: " + written.problems());
        }
        if (written.didWork() && last != null) {
            takenBack.push(done.pop());
            seconds.put(last.run(), last.before());
            counts.merge("taken back", 1, Integer::sum);
        }
    }

    private void redo() {
        Step last = takenBack.peek();
        Outcome<?> written = desk.redo();
        if (written.didWork() != (last != null)) {
            wrong.add("doing again: " + written.problems());
        }
        if (written.didWork() && last != null) {
            done.push(takenBack.pop());
            seconds.put(last.run(), last.after());
            counts.merge("done again", 1, Integer::sum);
        }
    }

    private void typeNonsense() {
        Map<RunField, String> typed = typed();
        for (int i = 0; i < 3; i++) {
            typed.put(RunField.values()[random.nextInt(RunField.values().length)], anyText());
        }
        sheet.does(sheet.read(typed));
        counts.merge("nonsense typed", 1, Integer::sum);
    }

    private void lookBack() {
        desk.lookAsOf(FIRST.plusDays(random.nextInt(60)));
        desk.view().ledger().carLife(car(), Counter.RUNNING);
        if (sheet.save(typed(), "on an earlier day").didWork()) {
            wrong.add("written on an earlier day");
        }
        desk.lookAsOf(null);
        counts.merge("earlier days", 1, Integer::sum);
    }

    private void draft() {
        desk.logbook().drafts().keep("run", "", new Draft(Map.of("text", anyText()), Instant.ofEpochSecond(runs)));
        counts.merge("drafts", 1, Integer::sum);
    }

    private void backUpAndOpenAgain() {
        desk.logbook().backUp().orThrow();
        desk.logbook().close();
        begin();
        counts.merge("opened again", 1, Integer::sum);
    }

    /** Holds the life of the car against the list, and the ledger that went along against one made anew. */
    void compare() {
        long expected = seconds.values().stream().mapToLong(Integer::longValue).sum() * 1_000;
        long life = life() - atFirst;
        if (life != expected) {
            wrong.add("the car ran " + life + " ms, saved were " + expected);
        }
        View view = desk.view();
        LifeLedger anew = LifeLedger.of(view.facts(), new AsOf(view.day(), view.zone()));
        for (Counter counter : Counter.values()) {
            if (!anew.carLife(car(), counter).equals(view.ledger().carLife(car(), counter))) {
                wrong.add("the ledger that went along counts other " + counter);
            }
        }
        counts.merge("compared", 1, Integer::sum);
    }

    private long life() {
        return desk.view().ledger().carLife(car(), Counter.RUNNING).total();
    }

    private Id<Car> car() {
        return desk.view().facts().of(Car.class).named("41").orElseThrow().id();
    }

    private boolean told(String what, Outcome<?> outcome) {
        counts.merge(outcome.didWork() ? "saved" : what + " refused", 1, Integer::sum);
        return outcome.didWork();
    }

    private Id<Run> any() {
        return logged.isEmpty() ? null : logged.get(random.nextInt(logged.size()));
    }

    private Entry<Run> entry(Id<Run> id) {
        return desk.view().facts().of(Run.class).find(id).orElseThrow();
    }

    private int anyLength() {
        return SHORTEST + random.nextInt(LONGEST - SHORTEST);
    }

    private String anyText() {
        return OddTexts.all().get(random.nextInt(OddTexts.all().size()));
    }

    @Override
    public void close() {
        desk.logbook().close();
    }
}
