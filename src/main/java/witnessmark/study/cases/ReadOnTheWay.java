package witnessmark.study.cases;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingLimit;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.ReadingLimits;
import witnessmark.ledger.ReadingSeries;
import witnessmark.ledger.result.ReadingUse.Broken;

/** What was read of an engine and of the parts in it then, each judged by its grade and the limits that stood on that day. */
final class ReadOnTheWay {
    /** How a reading stands by itself. */
    enum Judged {
        GOOD,
        WORSE,
        /** A figure that nobody limited. */
        NOT
    }

    /** A reading, judged. */
    record Read(Entry<Reading> reading, Judged judged) {}

    private final LifeLedger ledger;
    private final Entry<Engine> engine;

    ReadOnTheWay(LifeLedger ledger, Entry<Engine> engine) {
        this.ledger = ledger;
        this.engine = engine;
    }

    List<Read> all() {
        List<Read> all = new ArrayList<>();
        for (ReadingSeries series : ReadingSeries.all(ledger)) {
            for (int i = 0; i < series.readings().size(); i++) {
                Entry<Reading> reading = series.readings().get(i);
                if (ours(reading.fact())) {
                    all.add(new Read(reading, judged(series.upTo(i + 1))));
                }
            }
        }
        return all;
    }

    private boolean ours(Reading reading) {
        Id<Part> part = reading.part();
        return engine.id().equals(reading.engine())
                || reading.engine() == null
                        && part != null
                        && ledger.whereIs(part, reading.at())
                                .map(there -> there.fact().engine())
                                .filter(engine.id()::equals)
                                .isPresent();
    }

    private Judged judged(ReadingSeries upToIt) {
        Reading reading = upToIt.last().fact();
        if (reading.grade() != null && reading.grade().badness() > 0) {
            return Judged.WORSE;
        }
        boolean any = reading.grade() != null;
        for (ReadingLimit limit : limits(reading)) {
            if (ReadingLimits.broken(limit, reading, upToIt.baseline().fact()) != Broken.NONE) {
                return Judged.WORSE;
            }
            any |= limit.atMost() != null
                    || limit.atLeast() != null
                    || limit.fallAtMost() != null
                    || limit.changeAtMost() != null;
        }
        return any ? Judged.GOOD : Judged.NOT;
    }

    private List<ReadingLimit> limits(Reading reading) {
        LocalDate day = reading.at().day();
        PartKind kind = kind(reading.part());
        return ledger
                .facts()
                .of(ReadingLimit.class)
                .where(limit -> limit.kind() == reading.kind()
                        && limit.partKind() == kind
                        && !day.isBefore(limit.validFrom())
                        && (limit.validTo() == null || !day.isAfter(limit.validTo()))
                        && ReadingLimits.meant(limit, engine.id(), engine.fact().design()))
                .stream()
                .map(Entry::fact)
                .toList();
    }

    private @Nullable PartKind kind(@Nullable Id<Part> part) {
        return part == null
                ? null
                : ledger.facts()
                        .of(PartDesign.class)
                        .get(ledger.facts().of(Part.class).get(part).design())
                        .kind();
    }
}
