package witnessmark.logbook.run;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.Typed;

/** Reads one measured field and holds it against physics and against this engine's own last runs. */
final class ReadFigure {
    /** Digits with at most two decimals; with three a separator may have been meant for thousands. */
    private static final Pattern BARE = Pattern.compile("[0-9]+(?:[.,][0-9]{1,2})?");

    private final RunsBefore before;
    private final @Nullable Id<Engine> engine;
    private final boolean onDyno;

    /**
     * @param engine the engine that ran, or null while it is not known
     * @param onDyno whether the run is on the dyno, where an engine reads differently
     */
    ReadFigure(RunsBefore before, @Nullable Id<Engine> engine, boolean onDyno) {
        this.before = before;
        this.engine = engine;
        this.onDyno = onDyno;
    }

    /** What a field came to, with its measure when it has one. */
    record Result<T>(FieldReading reading, @Nullable T value) {}

    <T> Result<T> read(Figure<T> figure, String text) {
        if (text.isBlank()) {
            return new Result<>(FieldReading.fine(lastRun(figure)), null);
        }
        Typed<T> typed = figure.parse().apply(text.strip());
        if (typed instanceof Typed.Two<T> two) {
            return new Result<>(
                    FieldReading.wrong(Problem.of(
                            ProblemKind.TWO_READINGS, figure.field(), text.strip(), two.first(), two.second())),
                    null);
        }
        if (typed instanceof Typed.Unreadable<T> no) {
            Object example = example(figure).orElse(no.example());
            return new Result<>(FieldReading.wrong(Problem.unread(figure.field(), text.strip(), example)), null);
        }
        T value = ((Typed.Read<T>) typed).value();
        return new Result<>(judged(figure, text.strip(), value), value);
    }

    private <T> FieldReading judged(Figure<T> figure, String text, T value) {
        long number = figure.number().apply(value);
        if (number < figure.lowest() || number > figure.highest()) {
            return FieldReading.wrong(Problem.of(
                    ProblemKind.OUT_OF_RANGE,
                    figure.field(),
                    value,
                    figure.shown().apply(figure.lowest()),
                    figure.shown().apply(figure.highest())));
        }
        Optional<UsualBand> band = band(figure);
        if (band.isEmpty() || band.get().holds(number)) {
            return FieldReading.fine(plain(figure, text) ? beside(figure, value) : understood(value));
        }
        return unusual(figure, value, number, band.get());
    }

    private static Note understood(Object value) {
        return Note.of(Note.Kind.UNDERSTOOD, value);
    }

    /** A bare figure cannot be misread, so that the last run says more than an echo. A time can, always. */
    private static boolean plain(Figure<?> figure, String text) {
        return BARE.matcher(text).matches() && !(figure.shown().apply(0) instanceof RunningTime);
    }

    private <T> Note beside(Figure<T> figure, T value) {
        Note last = lastRun(figure);
        return last.kind() == Note.Kind.LAST_RUN ? last : understood(value);
    }

    private static <T> FieldReading unusual(Figure<T> figure, T value, long number, UsualBand band) {
        Object low = figure.shown().apply(band.low());
        Object high = figure.shown().apply(band.high());
        for (long scale : new long[] {10, 100}) {
            if (number % scale == 0 && band.holds(number / scale) && number / scale >= band.lowFence()) {
                T meant = figure.shown().apply(number / scale);
                return new FieldReading(
                        Note.of(Note.Kind.UNDERSTOOD, value),
                        Problem.of(ProblemKind.UNUSUAL_MEANT, figure.field(), value, low, high, meant),
                        figure.text().apply(meant));
            }
            if (band.holds(number * scale)) {
                T meant = figure.shown().apply(number * scale);
                return new FieldReading(
                        Note.of(Note.Kind.UNDERSTOOD, value),
                        Problem.of(ProblemKind.UNUSUAL_MEANT, figure.field(), value, low, high, meant),
                        figure.text().apply(meant));
            }
        }
        return new FieldReading(
                Note.of(Note.Kind.UNDERSTOOD, value),
                Problem.of(ProblemKind.UNUSUAL, figure.field(), value, low, high),
                null);
    }

    private <T> Optional<UsualBand> band(Figure<T> figure) {
        if (engine == null || figure.instrument() >= figure.highest()) {
            return Optional.empty();
        }
        List<Long> values = before.readings(engine, onDyno, run -> {
            T value = figure.of().apply(run);
            return value == null ? null : figure.number().apply(value);
        });
        return UsualBand.of(values, figure.instrument());
    }

    private <T> Note lastRun(Figure<T> figure) {
        if (figure.field() == RunField.OVER_REVS) {
            return Note.of(Note.Kind.NOT_READ);
        }
        if (engine == null) {
            return Note.of(Note.Kind.NONE);
        }
        return last(figure)
                .<Note>map(value -> Note.of(Note.Kind.LAST_RUN, value))
                .orElse(Note.of(Note.Kind.NOT_RECORDED_BEFORE));
    }

    private <T> Optional<T> last(Figure<T> figure) {
        return before.last(run -> run.engine().equals(engine)
                        && (run.car() == null) == onDyno
                        && figure.of().apply(run) != null)
                .map(run -> figure.of().apply(run.fact()));
    }

    /** What this engine can have read: its last figure, or its limiter where it has no last speed. */
    private <T> Optional<Object> example(Figure<T> figure) {
        Optional<Object> last = last(figure).map(value -> value);
        return last.isPresent() || figure.field() != RunField.HIGHEST ? last : limiter();
    }

    private Optional<Object> limiter() {
        if (engine == null) {
            return Optional.empty();
        }
        Facts facts = before.facts();
        return Optional.ofNullable(facts.of(EngineDesign.class)
                .get(facts.of(Engine.class).get(engine).design())
                .redLine());
    }
}
