package witnessmark.logbook.tracing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Question;
import witnessmark.trace.result.Recognised;
import witnessmark.trace.result.TimeBase;
import witnessmark.trace.result.TraceForm;

/**
 * What somebody said of a trace because it does not say it, or says it wrong.
 *
 * @param entry the file in an archive, or null for the only one
 * @param rate samples a second, or null
 * @param time the unit of its time, or null
 * @param decimal its decimal mark, or null
 * @param dayFirst whether 03/04 is the third of April, or null
 * @param channels what columns measure, by their heading
 * @param units what columns are in, by their heading
 */
public record TraceAnswers(
        @Nullable String entry,
        @Nullable Double rate,
        TimeBase.@Nullable Kind time,
        @Nullable Character decimal,
        @Nullable Boolean dayFirst,
        Map<String, ChannelKind> channels,
        Map<String, ChannelUnit> units) {
    public TraceAnswers {
        channels = Map.copyOf(channels);
        units = Map.copyOf(units);
    }

    public static TraceAnswers none() {
        return new TraceAnswers(null, null, null, null, null, Map.of(), Map.of());
    }

    /** With the file in an archive that is meant. */
    public TraceAnswers entry(String name) {
        return new TraceAnswers(name, rate, time, decimal, dayFirst, channels, units);
    }

    /** With so many samples a second, whatever a column says. */
    public TraceAnswers rate(double perSecond) {
        return new TraceAnswers(entry, perSecond, null, decimal, dayFirst, channels, units);
    }

    /** With the time in this unit. */
    public TraceAnswers time(TimeBase.Kind unit) {
        return new TraceAnswers(entry, null, unit, decimal, dayFirst, channels, units);
    }

    /** With this decimal mark. */
    public TraceAnswers decimal(char mark) {
        return new TraceAnswers(entry, rate, time, mark, dayFirst, channels, units);
    }

    /** With the day before the month in its dates, or after it. */
    public TraceAnswers dayFirst(boolean first) {
        return new TraceAnswers(entry, rate, time, decimal, first, channels, units);
    }

    /** With a column as this channel; a unit said of it before stays where it can be one of it. */
    public TraceAnswers channel(String heading, ChannelKind kind) {
        Map<String, ChannelKind> kinds = new HashMap<>(channels);
        Map<String, ChannelUnit> in = new HashMap<>(units);
        kinds.values().removeIf(other -> other == kind && !kind.oftenMany());
        kinds.put(heading, kind);
        in.computeIfPresent(heading, (same, unit) -> kind.units().contains(unit) ? unit : null);
        return new TraceAnswers(entry, rate, time, decimal, dayFirst, kinds, in);
    }

    /** With a column in this unit. */
    public TraceAnswers unit(String heading, ChannelUnit unit) {
        Map<String, ChannelUnit> in = new HashMap<>(units);
        in.put(heading, unit);
        return new TraceAnswers(entry, rate, time, decimal, dayFirst, channels, in);
    }

    /** The form as it was understood, put right by what was said. */
    Outcome<TraceForm> putRight(TraceForm understood) {
        TraceForm form = understood;
        for (String heading : named()) {
            if (form.named(heading) < 0) {
                List<String> there =
                        form.columns().stream().map(ColumnForm::heading).toList();
                return Outcome.didNot(Problem.of(ProblemKind.TRACE_NO_SUCH_COLUMN, heading, String.join(", ", there)));
            }
        }
        for (Map.Entry<String, ChannelKind> said : channels.entrySet()) {
            int column = form.named(said.getKey());
            for (int i = 0; i < form.columns().size(); i++) { // one column of a kind
                boolean other = i != column && form.columns().get(i).kind() == said.getValue();
                form = other ? form.with(i, form.columns().get(i).as(ChannelKind.OTHER)) : form;
            }
            form = form.with(column, form.columns().get(column).as(said.getValue()));
        }
        for (Map.Entry<String, ChannelUnit> said : units.entrySet()) {
            int column = form.named(said.getKey());
            ColumnForm before = form.columns().get(column);
            if (before.kind().unit().measure() != said.getValue().measure()) {
                return Outcome.didNot(Problem.of(
                        ProblemKind.CANNOT_READ, said.getKey(), said.getValue().code(), codes(before.kind())));
            }
            form = form.with(column, before.in(said.getValue()));
        }
        form = decimal == null ? form : form.withDecimal(decimal);
        form = rate == null ? form : form.with(TimeBase.at(rate));
        form = dayFirst == null ? form : form.with(form.time().dayFirst(dayFirst));
        if (time != null && form.time().column() >= 0) {
            form = form.with(form.time().as(time));
        }
        return Outcome.worked(form);
    }

    private static List<String> codes(ChannelKind kind) {
        return kind.units().stream().map(ChannelUnit::code).toList();
    }

    private List<String> named() {
        List<String> named = new ArrayList<>(channels.keySet());
        named.addAll(units.keySet());
        return named;
    }

    /** The questions that stop and are not answered by this. */
    List<Question> open(Recognised recognised, TraceForm putRight) {
        return recognised.open().stream()
                .filter(question -> !answers(question, putRight))
                .toList();
    }

    private boolean answers(Question question, TraceForm putRight) {
        return switch (question.kind()) {
            case SAMPLE_RATE -> putRight.time().known();
            case TIME_UNIT, RATE_SAYS_OTHERWISE -> rate != null || time != null;
            case DECIMAL_MARK -> decimal != null;
            case UNIT ->
                putRight.columns().get(question.column()).from() == ColumnForm.From.PERSON
                        || putRight.columns().get(question.column()).kind().oftenMany();
            case WHICH_CHANNEL ->
                channels.containsValue((ChannelKind) question.facts().get(0));
            default -> false;
        };
    }
}
