package witnessmark.logbook.run;

import com.fasterxml.uuid.Generators;
import com.fasterxml.uuid.impl.TimeBasedEpochGenerator;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Function;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Ids;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Today;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.sample.SampleFacts;

/** The sample season on a desk, on a day of its story. */
public final class SampleBook {
    /** The evening the sample opens on. */
    public static final LocalDate OPENING = LocalDate.parse("2026-07-08");

    public static final ZoneId LONDON = ZoneId.of("Europe/London");

    public static final FieldUnits UNITS = FieldUnits.metric(DayOrder.DAY_FIRST);

    private SampleBook() {}

    /** The facts of the season as it opens. */
    public static Facts facts() {
        return SampleFacts.opening();
    }

    /** In memory, on this day, at 09:41:12 in the team's zone. */
    public static Desk on(LocalDate day) {
        return on(day, MemoryLogbook::new);
    }

    public static Desk on(LocalDate day, Function<Facts, Logbook> book) {
        return new Desk(book.apply(facts()), new Day(day), "TE");
    }

    /** In memory, on this day, with a history in which the season was read from its folder. */
    public static Desk written(LocalDate day) {
        List<Entry<?>> season = SampleFacts.rows();
        return on(day, all -> {
            MemoryLogbook book = new MemoryLogbook(Facts.none());
            book.write(new Change("Team engineer", "read from the sample's season folder", season))
                    .orThrow();
            return book;
        });
    }

    public static Ids ids() {
        TimeBasedEpochGenerator inOrder = Generators.timeBasedEpochGenerator();
        return new Ids() {
            @Override
            public <F extends Fact> Id<F> next() {
                return new Id<>(inOrder.generate());
            }
        };
    }

    /** A day that stays. */
    public record Day(LocalDate day) implements Today {
        @Override
        public Instant now() {
            return Instant.parse(day + "T08:41:12Z");
        }
    }
}
