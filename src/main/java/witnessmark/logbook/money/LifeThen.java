package witnessmark.logbook.money;

import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.LimitAction;
import witnessmark.domain.Part;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Limits;
import witnessmark.ledger.result.Life;
import witnessmark.ledger.result.LimitUse;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;

/**
 * What parts had run by a moment, by what the logbook says now: the ledger as of that day, without the runs that went
 * out later on it.
 */
public final class LifeThen {
    private final Moment at;
    private final LifeLedger ledger;
    private final Limits limits;

    private LifeThen(Moment at, LifeLedger ledger) {
        this.at = at;
        this.ledger = ledger;
        this.limits = new Limits(ledger);
    }

    /**
     * The lives by a moment.
     *
     * @param zone the team's
     */
    public static LifeThen at(Facts facts, Moment at, ZoneId zone) {
        AsOf day = new AsOf(at.instant().atZone(zone).toLocalDate(), zone);
        List<Entry<Run>> later =
                facts.of(Run.class).where(run -> run.start().isAfter(at) && day.counts(run.start())).stream()
                        .map(run -> new Entry<>(run.id(), run.fact(), Standing.STRUCK_OUT, "", run.rev()))
                        .toList();
        return new LifeThen(at, LifeLedger.of(later.isEmpty() ? facts : facts.with(later), day));
    }

    /** The moment of these lives. */
    public Moment at() {
        return at;
    }

    /** A part's running, with how it is known. */
    public Life running(Id<Part> part) {
        return ledger.life(part, Counter.RUNNING);
    }

    /** A part's running, and the nearest running limit that stood on it. */
    public Ran of(Id<Part> part) {
        Life life = running(part);
        RunningTime limit = limits.ofPart(part).stream()
                .filter(use -> use.limit().fact().action() == LimitAction.RENEW
                        && use.used().counter() == Counter.RUNNING) // others do not count the whole life
                .min(Comparator.comparingLong(LimitUse::amount))
                .map(use -> new RunningTime(use.amount()))
                .orElse(null);
        return new Ran(new RunningTime(life.total()), !life.complete(), limit);
    }

    /**
     * What a part had run.
     *
     * @param ran its running
     * @param atLeast some of its life was not known, so it had run that much or more
     * @param limit the running at which it was to be renewed, the nearest of several, or null
     */
    public record Ran(
            RunningTime ran, boolean atLeast, @Nullable RunningTime limit) {}
}
