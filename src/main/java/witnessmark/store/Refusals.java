package witnessmark.store;

import java.sql.SQLException;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Run;
import witnessmark.domain.image.RecordTypes;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Moment;

/** Turns a refusal of the database into the problem people know, with names in place of ids. */
final class Refusals {
    private static final Pattern GUARD = Pattern.compile("\\(([A-Z_]+)\\)\\s*$");

    private final Facts facts;
    private final Names names;

    /** @param facts as they stand within the refused transaction */
    Refusals(Facts facts) {
        this.facts = facts;
        this.names = new Names(facts);
    }

    Problem of(Entry<?> refused, SQLException e) {
        Matcher guard = GUARD.matcher(String.valueOf(e.getMessage()));
        Problem known = guard.find() ? of(refused, guard.group(1)) : null;
        if (known != null) {
            return known;
        }
        return Problem.of(
                ProblemKind.REFUSED_BY_LOGBOOK,
                RecordTypes.of(refused.fact().getClass()).name(),
                names.of(refused),
                Faults.rule(e));
    }

    /** The problem behind a guard's code; null when there is no more to say than the database does. */
    private @Nullable Problem of(Entry<?> refused, String code) {
        Fact fact = refused.fact();
        if (code.equals("NAME_TAKEN")) {
            return Problem.of(
                    ProblemKind.NAME_TAKEN, RecordTypes.of(fact.getClass()).name(), names.of(refused));
        }
        Problem aside = new AsideRefusals(facts, names).of(refused, code);
        if (aside != null) {
            return aside;
        }
        if (fact instanceof Fitment fitment) {
            return fitment(refused, fitment, code);
        }
        if (fact instanceof EngineInCar in) {
            return engineInCar(refused, in, code);
        }
        return fact instanceof Run run && code.equals("PLANNED_RUN_TAKEN") ? planned(refused, run) : null;
    }

    private @Nullable Problem fitment(Entry<?> refused, Fitment wanted, String code) {
        String place = names.place(wanted);
        String part = names.part(wanted.part());
        if (code.equals("TWO_PARTS_IN_POSITION")) {
            Fitment there = other(
                    refused,
                    Fitment.class,
                    f -> f.position().equals(wanted.position())
                            && same(f.engine(), wanted.engine())
                            && same(f.car(), wanted.car())
                            && Moment.overlap(f.from(), f.to(), wanted.from(), wanted.to()));
            return there == null
                    ? null
                    : Problem.of(
                            ProblemKind.TWO_PARTS_IN_POSITION,
                            names.position(wanted.position()),
                            place,
                            names.part(there.part()),
                            part,
                            later(there.from(), wanted.from()));
        }
        boolean singleUse = code.equals("SINGLE_USE_AGAIN");
        Fitment there = other(
                refused,
                Fitment.class,
                f -> f.part().equals(wanted.part())
                        && (singleUse || Moment.overlap(f.from(), f.to(), wanted.from(), wanted.to())));
        if (there == null) {
            return null;
        }
        if (singleUse) {
            return Problem.of(ProblemKind.SINGLE_USE_AGAIN, part, names.place(there));
        }
        return code.equals("PART_IN_TWO_PLACES")
                ? Problem.of(
                        ProblemKind.PART_IN_TWO_PLACES,
                        part,
                        names.place(there),
                        place,
                        later(there.from(), wanted.from()))
                : null;
    }

    private @Nullable Problem engineInCar(Entry<?> refused, EngineInCar wanted, String code) {
        boolean byEngine = code.equals("ENGINE_IN_TWO_CARS");
        EngineInCar there = other(
                refused,
                EngineInCar.class,
                e -> (byEngine ? e.engine().equals(wanted.engine()) : e.car().equals(wanted.car()))
                        && Moment.overlap(e.from(), e.to(), wanted.from(), wanted.to()));
        if (there == null) {
            return null;
        }
        Moment moment = later(there.from(), wanted.from());
        if (byEngine) {
            return Problem.of(
                    ProblemKind.ENGINE_IN_TWO_CARS,
                    names.engine(wanted.engine()),
                    names.car(there.car()),
                    names.car(wanted.car()),
                    moment);
        }
        return code.equals("TWO_ENGINES_IN_CAR")
                ? Problem.of(
                        ProblemKind.TWO_ENGINES_IN_CAR,
                        names.car(wanted.car()),
                        names.engine(there.engine()),
                        names.engine(wanted.engine()),
                        moment)
                : null;
    }

    private @Nullable Problem planned(Entry<?> refused, Run wanted) {
        Run there = other(
                refused,
                Run.class,
                run -> run.perhapsSame() == null
                        && same(run.planned(), wanted.planned())
                        && same(run.car(), wanted.car()));
        return there == null
                ? null
                : Problem.of(
                        ProblemKind.PLANNED_RUN_TAKEN,
                        names.planned(wanted.planned()),
                        names.car(wanted.car()),
                        there.start());
    }

    private <F extends Fact> @Nullable F other(Entry<?> refused, Class<F> kind, Predicate<F> asked) {
        return facts.of(kind).where(asked).stream()
                .filter(entry -> !entry.id().value().equals(refused.id().value()))
                .map(Entry::fact)
                .findFirst()
                .orElse(null);
    }

    private static boolean same(@Nullable Object one, @Nullable Object other) {
        return java.util.Objects.equals(one, other);
    }

    private static Moment later(Moment one, Moment other) {
        return one.isBefore(other) ? other : one;
    }
}
