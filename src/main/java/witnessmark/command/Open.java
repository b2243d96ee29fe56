package witnessmark.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.ToIntBiFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import witnessmark.logbook.Desk;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Today;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedDate;

/** The logbook a command works on, and who works. */
final class Open {
    @Parameters(index = "0", paramLabel = "LOGBOOK", descriptionKey = "command.logbook")
    @SuppressWarnings("NullAway.Init") // a required parameter
    private Path path;

    @Option(names = "--who", paramLabel = "NAME", descriptionKey = "command.who")
    private @Nullable String who;

    /**
     * Opens the logbook, works on it, and closes it whatever happens.
     *
     * @param answer where it says what it comes to
     * @param asOf the day to look at it as of, as typed, or null for today
     */
    int with(Answer answer, @Nullable String asOf, ToIntBiFunction<Desk, Answer> work) {
        return with(answer, asOf, false, work);
    }

    /** The same for a command that writes: where nothing can be written the reason is the whole answer. */
    int toWrite(Answer answer, ToIntBiFunction<Desk, Answer> work) {
        return with(answer, null, true, work);
    }

    /** The same with a logbook that was asked for already. */
    int with(Outcome<Logbook> opened, Answer answer, ToIntBiFunction<Desk, Answer> work) {
        return with(opened, answer, null, false, work);
    }

    private int with(Answer answer, @Nullable String asOf, boolean writes, ToIntBiFunction<Desk, Answer> work) {
        return with(answer.tools().files().open(path), answer, asOf, writes, work);
    }

    private int with(
            Outcome<Logbook> opened,
            Answer answer,
            @Nullable String asOf,
            boolean writes,
            ToIntBiFunction<Desk, Answer> work) {
        Tools tools = answer.tools();
        if (!opened.didWork()) {
            return answer.didNot(opened.problems());
        }
        try (Logbook logbook = opened.orThrow()) {
            if (writes && logbook.readOnly().isPresent()) {
                return answer.didNot(opened.problems());
            }
            answer.problems(opened.problems());
            Desk desk = desk(answer, logbook, who);
            if (asOf != null) {
                Typed<LocalDate> day = TypedDate.read(asOf, desk.today().day(), DayOrder.DAY_FIRST);
                if (day.only().isEmpty()) {
                    return answer.didNot(List.of(unread(tools, asOf, day)));
                }
                desk.lookAsOf(day.only().get());
            }
            return work.applyAsInt(desk, answer);
        }
    }

    /**
     * An open logbook on its day; where that is not known as it should be, the answer says so.
     *
     * @param who who works, or null for whoever the computer says
     */
    static Desk desk(Answer answer, Logbook logbook, @Nullable String who) {
        Tools tools = answer.tools();
        Outcome<Today> today = tools.today().apply(logbook);
        answer.problems(today.problems());
        return new Desk(logbook, today.orThrow(), who == null ? tools.person() : who);
    }

    private static Problem unread(Tools tools, String asOf, Typed<LocalDate> day) {
        String field = tools.texts().get("command.asof.word");
        if (day instanceof Typed.Two<LocalDate> two) {
            return Problem.of(ProblemKind.TWO_READINGS, field, asOf, two.first(), two.second());
        }
        List<String> examples = day instanceof Typed.Unreadable<LocalDate> no ? no.examples() : List.of();
        return Problem.of(ProblemKind.CANNOT_READ, field, asOf, examples);
    }

    Path path() {
        return path;
    }
}
