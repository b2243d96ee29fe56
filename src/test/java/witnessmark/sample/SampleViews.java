package witnessmark.sample;

import java.time.LocalDate;
import java.time.ZoneId;
import witnessmark.domain.Facts;
import witnessmark.domain.LoggerForm;
import witnessmark.domain.Trace;
import witnessmark.domain.TraceMark;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.View;

/** The sample season in memory, without a file. */
public final class SampleViews {
    /** The day on whose evening it opens. */
    public static final LocalDate OPENING = LocalDate.of(2026, 7, 8);

    /** The day after which nothing is told any more. */
    public static final LocalDate WINTER = LocalDate.of(2026, 12, 18);

    public static final ZoneId ZONE = ZoneId.of("Europe/London");

    private SampleViews() {}

    /** On the evening it opens. */
    public static View opening() {
        return on(SampleFacts.opening(), OPENING);
    }

    /** What the sample has on the evening it opens, as if nobody had brought in a trace. */
    public static Facts untraced() {
        return Facts.none()
                .with(SampleFacts.rows().stream()
                        .filter(entry -> !(entry.fact() instanceof Trace
                                || entry.fact() instanceof TraceMark
                                || entry.fact() instanceof LoggerForm))
                        .toList());
    }

    /** Told to its end. */
    public static View end() {
        return on(SampleFacts.end(), WINTER);
    }

    /** Any facts, as of a day. */
    public static View on(Facts facts, LocalDate day) {
        return new View(facts, day, ZONE, LifeLedger.of(facts, new AsOf(day, ZONE)), false);
    }
}
