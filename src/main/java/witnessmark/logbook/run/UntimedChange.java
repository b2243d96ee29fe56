package witnessmark.logbook.run;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.logbook.View;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/**
 * Asks about parts, or an engine, that went in on the day of a new run without a time. A day alone means after its last run, so that
 * the run would go to what was there before; whoever fitted a part at noon and runs in the afternoon must hear of it.
 */
final class UntimedChange {
    private UntimedChange() {}

    static void ask(View view, Which which, Map<RunField, FieldReading> out) {
        Id<Engine> engine = which.engine();
        LocalDate day = which.day();
        FieldReading outAt = out.get(RunField.OUT_AT);
        if (engine == null || day == null || outAt == null || outAt.problem() != null) {
            return;
        }
        Problem changed = engineChanged(view, which, engine, day);
        if (changed != null) {
            out.put(RunField.OUT_AT, new FieldReading(outAt.note(), changed, null));
            return;
        }
        Moment end = Moment.endOf(day, view.zone());
        List<String> marks = view.ledger().fittedAt(engine, end).values().stream()
                .filter(fitted -> fitted.fact().from().epochMillis() == end.epochMillis())
                .map(fitted ->
                        view.facts().of(Part.class).get(fitted.fact().part()).mark())
                .toList();
        if (!marks.isEmpty()) {
            Problem asked = Problem.of(ProblemKind.FITTED_WITHOUT_TIME, marks, day);
            out.put(RunField.OUT_AT, new FieldReading(outAt.note(), asked, null));
        }
    }

    /** The run goes to the engine that was in the car until the end of the day. */
    private static @Nullable Problem engineChanged(View view, Which which, Id<Engine> takes, LocalDate day) {
        Id<Car> car = which.car();
        return car == null
                ? null
                : RunsBefore.changesOn(view.facts(), car, day)
                        .filter(in -> in.from().dayOnly() && !in.engine().equals(takes))
                        .findFirst()
                        .map(in -> Problem.of(
                                ProblemKind.ENGINE_CHANGED_WITHOUT_TIME,
                                number(view, in.engine()),
                                number(view, takes),
                                day))
                        .orElse(null);
    }

    private static String number(View view, Id<Engine> engine) {
        return view.facts().of(Engine.class).get(engine).number();
    }
}
