package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitRank;
import witnessmark.logbook.port.StartingValue;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;

/**
 * A figure typed into a line of the list that is not what is set there already.
 *
 * @param amount in the counter's unit, more than 0
 * @param stands whether that very figure is set, so that only others beside it end
 * @param replaced what ends when it begins
 */
record NewFigure(ListedLimit line, long amount, boolean stands, List<Entry<Limit>> replaced) {
    /** Reads what is typed, and notes beside it what it starts from usually and what it takes the place of. */
    static Optional<NewFigure> read(
            ReadSheet in, ListedLimit line, List<StartingValue> starts, StandingLimit standing) {
        SheetField field = line.field();
        Long amount = RecordAmounts.limit(in, field, line.counter());
        if (amount == null) {
            in.note(field, with(nowSet(standing), starts, false));
            return Optional.empty();
        }
        NewFigure figure = new NewFigure(line, amount, standing.says(amount), standing.replacedBy(amount));
        in.note(field, with(Optional.of(figure.said(standing.from())), starts, true));
        for (Entry<Limit> old : figure.replaced) {
            if (old.fact().validFrom().isAfter(standing.from())) {
                in.wrong(
                        field,
                        ProblemKind.EARLIER_THAN,
                        ListLimits.FROM,
                        standing.from(),
                        old.fact().validFrom());
            }
        }
        return figure.stands && figure.replaced.isEmpty() ? Optional.empty() : Optional.of(figure);
    }

    /** Ends what it takes the place of; what began on that very day counted no day, and is put right instead. */
    void write(ReadSheet in, @Nullable Id<EngineDesign> design, LimitRank rank, String source, LocalDate from) {
        Limit limit = new Limit(
                line.workDue(),
                line.action(),
                design,
                line.kind(),
                null,
                null,
                null,
                null,
                line.counter(),
                amount,
                rank,
                source,
                from,
                null);
        boolean written = stands;
        for (Entry<Limit> old : replaced) {
            boolean sameDay = old.fact().validFrom().equals(from);
            in.change(line.field(), old, sameDay ? limit : ended(old.fact(), from.minusDays(1)));
            written |= sameDay;
        }
        if (!written) {
            in.make(line.field(), limit);
        }
    }

    private SheetNote said(LocalDate from) {
        LimitRange now = LimitRange.of(line.counter(), amount);
        if (replaced.isEmpty()) {
            return SheetNote.echo(stands ? "set_already" : "understood", now);
        }
        Limit old = replaced.get(0).fact();
        LimitRange before = LimitRange.of(line.counter(), old.amount());
        return old.validFrom().equals(from)
                ? SheetNote.echo("in_place_of", now, before)
                : SheetNote.echo("ends_before", now, before, from.minusDays(1));
    }

    private static Optional<SheetNote> nowSet(StandingLimit standing) {
        return standing.told().map(limit -> SheetNote.echo("now_set", LimitRange.of(limit.counter(), limit.amount())));
    }

    /** @param echo whether it says what was understood */
    private static SheetNote with(Optional<SheetNote> first, List<StartingValue> starts, boolean echo) {
        List<SheetNote> all = new ArrayList<>(first.stream().toList());
        starts.forEach(start -> all.add(start(start)));
        SheetNote said = all.stream()
                .reduce((before, next) -> SheetNote.echo("and_then", before, next))
                .orElse(SheetNote.echo("no_start"));
        return new SheetNote(said.key(), said.facts(), echo);
    }

    private static SheetNote start(StartingValue value) {
        List<Object> said = new ArrayList<>();
        Counter counter = value.counter();
        if (value.low() != null && value.high() != null) {
            said.add(new LimitRange(counter, value.low(), value.high()));
        }
        if (!value.note().isEmpty()) {
            said.add(value.note());
        }
        said.add(value.source());
        return new SheetNote("line", said, true);
    }

    private static Limit ended(Limit limit, LocalDate last) {
        return new Limit(
                limit.name(),
                limit.action(),
                limit.design(),
                limit.partKind(),
                limit.partDesign(),
                limit.part(),
                limit.engine(),
                limit.car(),
                limit.counter(),
                limit.amount(),
                limit.rank(),
                limit.source(),
                limit.validFrom(),
                last);
    }
}
