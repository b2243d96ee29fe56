package witnessmark.logbook.sheets;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Fact;
import witnessmark.domain.Limit;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.PriorLife;
import witnessmark.domain.RunOn;
import witnessmark.domain.SignedCheck;
import witnessmark.domain.SizeLimit;
import witnessmark.outcome.Problem;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Distance;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.TimeUnit;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedMeasure;
import witnessmark.quantity.typed.TypedTime;

/** Amounts of counters in fields. */
final class RecordAmounts {
    /** In which it is picked what a life carried in is counted in. */
    private static final SheetField PRIOR_COUNTER = SheetField.choice("counter", 1);

    private RecordAmounts() {}

    /** What the amounts of a fact are counted in. */
    static Counter counter(Fact fact, SheetSight sight) {
        if (fact instanceof PriorLife prior) {
            return prior.counter();
        }
        return fact instanceof RunOn runOn && runOn.limit() != null
                ? sight.facts().of(Limit.class).get(runOn.limit()).counter()
                : Counter.RUNNING;
    }

    /** What the figures of a fact of a build sheet measure; null where it is none. */
    static @Nullable Dimension dimension(Fact fact) {
        MeasureKind kind = fact instanceof Measurement measured
                ? measured.kind()
                : fact instanceof SizeLimit limit
                        ? limit.kind()
                        : fact instanceof SignedCheck check ? check.kind() : null;
        return kind == null ? null : kind.dimension();
    }

    /** The amount typed in a field of a written fact; null when it is wrong, and then noted. */
    static @Nullable Long read(ReadSheet in, SheetField field, Fact written) {
        Dimension dimension = dimension(written);
        if (dimension != null) {
            MeasureUnit unit = MeasureUnit.shown(dimension);
            TypedMeasure figure = new ReadValues(in).read(field, text -> TypedMeasure.read(text, unit, true));
            return figure == null ? null : figure.parts();
        }
        Counter counter = written instanceof PriorLife
                ? Counter.find(in.text(PRIOR_COUNTER)).orElse(counter(written, in.sight()))
                : counter(written, in.sight());
        return read(in, field, counter);
    }

    /** The figure of a limit, more than nothing; null when it is empty or wrong, and the latter is noted. */
    static @Nullable Long limit(ReadSheet in, SheetField field, Counter counter) {
        Long amount = read(in, field, counter);
        if (amount != null && amount > 0) {
            return amount;
        }
        if (amount != null || in.text(field).matches("[-\u2212].*")) {
            in.wrong(field, Problem.unread(field, in.text(field), "30"));
        }
        return null;
    }

    /** The amount typed in the unit the field asks for; null when it is empty or wrong, and the latter is noted. */
    static @Nullable Long read(ReadSheet in, SheetField field, Counter counter) {
        in.note(field, SheetNote.of("figure_in", counter));
        ReadValues values = new ReadValues(in);
        switch (counter.unit()) {
            case MILLISECOND -> {
                RunningTime time = values.echoed(field, text -> TypedTime.read(text, TimeUnit.HOUR));
                return time == null ? null : time.millis();
            }
            case METRE -> {
                Distance distance = values.<Distance>echoed(
                        field, text -> TypedFigure.read(text, in.sight().units().distance()));
                return distance == null ? null : distance.metres();
            }
            default -> {
                Integer count = values.echoed(field, TypedFigure::count);
                return count == null ? null : count.longValue();
            }
        }
    }
}
