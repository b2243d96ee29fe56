package witnessmark.desktop.beforewego;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/**
 * How long until a run goes out. Only while the day looked at is the day that the clock shows there: another day has no
 * now.
 */
final class Countdown {
    private final Texts texts;
    private final Measures measures;
    private final LocalDate seen;
    private final @Nullable Moment out;

    /**
     * @param seen the day looked at
     * @param out when it is to go out; null when no time is set
     */
    Countdown(Texts texts, Measures measures, LocalDate seen, @Nullable Moment out) {
        this.texts = texts;
        this.measures = measures;
        this.seen = seen;
        this.out = out;
    }

    /** "In 1 h 20 min, 14:05", "4 min ago, 14:05"; empty when there is nothing to count. */
    String at(Instant now) {
        if (out == null || !LocalDate.ofInstant(now, out.zone()).equals(seen)) {
            return "";
        }
        Duration left = Duration.between(now.truncatedTo(ChronoUnit.MINUTES), out.instant());
        String time = measures.time(out.wallClock().toLocalTime());
        String minutes = measures.running(new RunningTime(left.abs().toMillis()));
        return left.isZero()
                ? texts.get("beforewego.next.now", time)
                : texts.get(left.isNegative() ? "beforewego.next.ago" : "beforewego.next.in", minutes, time);
    }
}
