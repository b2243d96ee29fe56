package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitRank;
import witnessmark.domain.RunOn;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.Mark;
import witnessmark.ledger.result.PrintedDate;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.Moment;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.typed.DistanceUnit;
import witnessmark.quantity.typed.TypedFigure;

/** Signs that something goes on past its limit, up to a figure the team writes; none is proposed. */
public final class SignRunOn implements LogSheet {
    public static final SheetField LIMIT = choice("run_on_limit", 4);
    public static final SheetField UP_TO = text("up_to", 1);
    public static final SheetField ASKED = choice("asked", 1);
    public static final SheetField ADVISER = text("adviser", 2);
    public static final SheetField ADVICE = text("advice", 4);
    public static final SheetField WHY = text("run_on_why", 4);
    public static final SheetField WHEN = of("run_on_day", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("run_on_time", FieldKind.CLOCK);
    public static final SheetField BY = text("run_on_by", 2);

    @Override
    public String key() {
        return "sign_run_on";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("run_on", List.of(LIMIT), List.of(UP_TO, ASKED, ADVISER), List.of(ADVICE), List.of(WHY)),
                SheetGroup.of("signed", List.of(WHEN, WHEN_TIME, BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(WHEN, sight.today().toString(), BY, sight.who());
    }

    @Override
    public boolean asks(SheetField field, SheetTyped typed, SheetSight sight) {
        return !(field.equals(ADVISER) || field.equals(ADVICE)) || typed.is(ASKED, SheetWord.SOMEBODY_ASKED);
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(LIMIT)) {
            return new PassableLimits(sight).choices();
        }
        return field.equals(ASKED)
                ? List.of(SheetWord.SOMEBODY_ASKED.choice(), SheetWord.NOBODY_ASKED.choice())
                : List.of();
    }

    @Override
    public Map<Choice, SheetNote> notOffered(SheetField field, SheetTyped typed, SheetSight sight) {
        return field.equals(LIMIT) ? new PassableLimits(sight).neverOffered() : Map.of();
    }

    @Override
    public void read(ReadSheet in) {
        PassableLimits limits = new PassableLimits(in.sight());
        Mark mark = mark(in, limits);
        Long upTo = mark == null ? typedAlone(in) : upTo(in, limits, mark);
        LimitRank rank = mark == null ? LimitRank.OWN : PassableLimits.rank(mark);
        if (rank == LimitRank.OWN) {
            in.note(ASKED, mark == null ? SheetNote.NONE : SheetNote.of("own_limit"));
        } else {
            in.note(ASKED, SheetNote.of("limit_of", rank));
            in.needed(ASKED);
        }
        in.blame(ASKED, ProblemKind.NOBODY_ASKED);
        in.blame(UP_TO, ProblemKind.RUN_ON_NOT_PAST_LIMIT);
        boolean asked = in.is(ASKED, SheetWord.SOMEBODY_ASKED);
        String adviser = asked ? in.needed(ADVISER) : "";
        String advice = asked ? in.needed(ADVICE) : "";
        String why = in.needed(WHY);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        String by = in.needed(BY);
        if (!in.fine() || mark == null || upTo == null || when == null) {
            return;
        }
        in.make(
                LIMIT,
                new RunOn(
                        mark.reason() instanceof LimitUse use ? use.limit().id() : null,
                        mark.reason() instanceof ReadingUse use ? use.limit().id() : null,
                        mark.part(),
                        mark.part() == null ? mark.engine() : null,
                        mark.part() == null && mark.engine() == null ? mark.car() : null,
                        upTo,
                        when,
                        by,
                        adviser,
                        advice,
                        why));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        PassableLimits limits = new PassableLimits(sight);
        Optional<Mark> mark = limits.passable(typed.text(LIMIT));
        return List.of(
                mark.map(limits::name).orElse(""),
                mark.map(PassableLimits::limit).orElse(""));
    }

    /** The limit picked; one that is never passed is refused with the reason. */
    private static @Nullable Mark mark(ReadSheet in, PassableLimits limits) {
        if (limits.neverPassed() > 0) {
            in.note(LIMIT, SheetNote.of("never_passed", limits.neverPassed(), limits.neverNamed()));
        } else if (limits.choices().isEmpty()) {
            in.note(LIMIT, SheetNote.of("nothing_over"));
        }
        String key = in.needed(LIMIT);
        Mark mark = limits.passable(key).orElse(null);
        Mark never = limits.never(key).orElse(null);
        if (never != null && never.reason() instanceof PrintedDate date) {
            in.wrong(LIMIT, ProblemKind.PRINTED_DATE_NOT_PASSED, limits.name(never), date.useBy());
        } else if (never != null) {
            in.wrong(LIMIT, ProblemKind.RULE_BOOK_NOT_PASSED, PassableLimits.limit(never));
        } else if (mark == null && !key.isEmpty()) {
            in.wrong(LIMIT, ProblemKind.NOT_FOUND, RecordTypes.of(Limit.class), key);
        }
        return mark;
    }

    private static @Nullable Long typedAlone(ReadSheet in) {
        in.needed(UP_TO);
        return null;
    }

    /** The figure at which the run-on ends, past what is used now; or null and noted. */
    private static @Nullable Long upTo(ReadSheet in, PassableLimits limits, Mark mark) {
        in.needed(UP_TO);
        LimitUse use = mark.reason() instanceof LimitUse limit ? limit : null;
        Counter counter = use == null ? Counter.RUNNING : use.used().counter();
        long used = use == null ? limits.running(mark) : use.used().highest();
        in.note(
                UP_TO,
                use == null
                        ? SheetNote.of("ran_now", new SheetAmount(counter, used))
                        : SheetNote.of(
                                counter == Counter.AGE ? "used_now_months" : "used_now",
                                new SheetAmount(counter, used)));
        Long upTo = figure(in, limits, counter, use);
        if (upTo != null && upTo <= used) {
            in.wrong(UP_TO, ProblemKind.RUN_ON_OVER_ALREADY, limits.name(mark));
            return null;
        }
        return upTo;
    }

    private static @Nullable Long figure(ReadSheet in, PassableLimits limits, Counter counter, @Nullable LimitUse use) {
        ReadValues values = new ReadValues(in);
        switch (counter.unit()) {
            case MILLISECOND -> {
                RunningTime time = values.hours(UP_TO);
                return time == null ? null : time.millis();
            }
            case METRE -> {
                Distance distance = values.echoed(
                        UP_TO, text -> TypedFigure.<Distance, DistanceUnit>read(text, DistanceUnit.KILOMETRE));
                return distance == null ? null : distance.metres();
            }
            default -> {
                Integer count = values.echoed(UP_TO, TypedFigure::count);
                return count == null
                        ? null
                        : Long.valueOf(use != null && counter == Counter.AGE ? limits.days(use, count) : count);
            }
        }
    }
}
