package witnessmark.logbook;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Team;
import witnessmark.domain.history.Amendment;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Today;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * An open logbook on the desk: who writes, which day is taken for today, the lives as they stand, and what can be
 * taken back. Writing blocks and is done off the event thread, one change at a time; {@link #view()} may be called
 * from any thread.
 */
public final class Desk {
    private static final int UNDO_DEPTH = 200;

    private final Logbook logbook;
    private final Today today;
    private volatile String who;
    private final Deque<Done> done = new ArrayDeque<>();
    private final Deque<Done> takenBack = new ArrayDeque<>();
    private volatile @Nullable View view;
    private volatile @Nullable LocalDate asOf;
    private volatile @Nullable Instant lastWritten;

    /** A change of this session, with the words its history carries. */
    public record Done(UUID change, String why) {}

    /**
     * @param logbook the open file
     * @param today the day taken for today
     * @param who who writes, as the team calls him or her
     */
    public Desk(Logbook logbook, Today today, String who) {
        this.logbook = logbook;
        this.today = today;
        this.who = who;
    }

    public Logbook logbook() {
        return logbook;
    }

    /** The team's name, or the name of the file while no team is written down. */
    public String name() {
        return view().facts()
                .of(Team.class)
                .inForce()
                .findFirst()
                .map(entry -> entry.fact().name())
                .orElse(String.valueOf(logbook.path().getFileName()));
    }

    public Today today() {
        return today;
    }

    public String who() {
        return who;
    }

    /**
     * From now on what is written carries this name. It is no log-in: the team knows who sits there.
     *
     * @throws IllegalArgumentException if there is no name
     */
    public void writesNow(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("somebody writes");
        }
        who = name.strip();
    }

    /** Everything as of the day looked at: one immutable whole for one revision. */
    public View view() {
        Facts facts = logbook.facts();
        LocalDate day = day();
        View last = view;
        if (last != null && last.facts() == facts && last.day().equals(day)) {
            return last;
        }
        ZoneId zone = zoneOf(facts);
        LifeLedger ledger =
                last != null && last.day().equals(day) && last.zone().equals(zone)
                        ? last.ledger().after(facts)
                        : LifeLedger.of(facts, new AsOf(day, zone));
        View next = new View(facts, day, zone, ledger, asOf != null);
        view = next;
        return next;
    }

    /**
     * Looks at the logbook as of an earlier day; it is read-only until this is called with null.
     *
     * @param earlier the day, or null for today
     */
    public void lookAsOf(@Nullable LocalDate earlier) {
        asOf = earlier;
    }

    /** The day looked at: today, or the earlier day chosen. */
    public LocalDate day() {
        LocalDate earlier = asOf;
        return earlier != null ? earlier : today.day();
    }

    /** The team's zone; UTC until a team is written down. */
    public static ZoneId zoneOf(Facts facts) {
        return facts.of(Team.class)
                .inForce()
                .findFirst()
                .map(e -> e.fact().zone())
                .orElse(ZoneOffset.UTC);
    }

    /**
     * Writes entries in one change that can be taken back.
     *
     * @param why what is being done, in words, for the history and the undo command
     * @param next the entries as they are to stand
     */
    public Outcome<Written> write(String why, List<? extends Entry<?>> next) {
        return write(why, next, List.of());
    }

    /**
     * The same, with bytes that the entries name.
     *
     * @param kept to be kept beside them
     */
    public Outcome<Written> write(String why, List<? extends Entry<?>> next, List<Kept> kept) {
        return writeFrom(who, why, next, kept);
    }

    /** The same for entries that nobody typed here: the history names where they are from in place of who writes. */
    Outcome<Written> writeFrom(String from, String why, List<? extends Entry<?>> next, List<Kept> kept) {
        return remembered(why, toLogbook(new Change(from, why, next, kept)));
    }

    private Outcome<Written> remembered(String why, Outcome<Written> written) {
        // what changed nothing has nothing to take back
        if (written.didWork() && !written.orThrow().amendments().isEmpty()) {
            push(done, new Done(written.orThrow().change(), why));
            takenBack.clear();
        }
        return written;
    }

    /** When something was last saved from this desk; nothing yet when empty. May be called from any thread. */
    public Optional<Instant> lastWritten() {
        return Optional.ofNullable(lastWritten);
    }

    /** What {@link #undo()} would take back. */
    public Optional<Done> undoable() {
        return Optional.ofNullable(done.peek());
    }

    /** What {@link #redo()} would do again. */
    public Optional<Done> redoable() {
        return Optional.ofNullable(takenBack.peek());
    }

    /** Takes the last change of this session back by writing its opposite. */
    public Outcome<Written> undo() {
        return undo(UnaryOperator.identity());
    }

    /**
     * The same.
     *
     * @param because the reason with which entries that were new are struck out, made from the words of the change
     */
    public Outcome<Written> undo(UnaryOperator<String> because) {
        return move(done, takenBack, because);
    }

    /** Does the change last taken back again. */
    public Outcome<Written> redo() {
        return move(takenBack, done, UnaryOperator.identity());
    }

    private Outcome<Written> move(Deque<Done> from, Deque<Done> to, UnaryOperator<String> because) {
        Done last = from.peek();
        if (last == null) {
            return Outcome.didNot(Problem.of(ProblemKind.NOTHING_TO_UNDO));
        }
        String reason = because.apply(last.why());
        Outcome<Written> written = Opposite.of(logbook.facts(), logbook.amendments(last.change()), reason)
                .then(entries -> toLogbook(new Change(who, reason, entries)));
        if (written.didWork()) {
            from.pop();
            push(to, new Done(written.orThrow().change(), last.why()));
        }
        return written;
    }

    private Outcome<Written> toLogbook(Change change) {
        LocalDate earlier = asOf;
        if (earlier != null) {
            return Outcome.didNot(Problem.of(ProblemKind.AS_OF_EARLIER_DAY, earlier));
        }
        Outcome<Written> written = logbook.write(change);
        if (written.didWork()) {
            List<Amendment> amendments = written.orThrow().amendments();
            if (!amendments.isEmpty()) {
                lastWritten = Instant.ofEpochMilli(
                        amendments.get(amendments.size() - 1).clock().millis());
            }
        }
        return written;
    }

    private static void push(Deque<Done> stack, Done change) {
        stack.push(change);
        while (stack.size() > UNDO_DEPTH) {
            stack.removeLast();
        }
    }
}
