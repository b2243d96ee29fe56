package witnessmark.trace.text;

import java.util.List;
import java.util.Optional;
import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.trace.result.ColumnForm;
import witnessmark.trace.result.Question;

/** Whether the figures of a channel are those of its unit; if not it is asked, never assumed. */
final class Plausible {
    /** No racing engine turns no faster than this; a tenth or a thousandth is written. Common practice, no source. */
    private static final double SLOW_ENGINE = 1500;

    private static final double THOUSANDS = 20;

    private Plausible() {}

    /**
     * @param low a figure that few are below, as the file has it
     * @param high a figure that few are above
     * @param whole whether they are of the whole file, in which an engine does not only idle
     */
    static Optional<Question> ask(int column, ColumnForm form, double low, double high, boolean whole) {
        ChannelKind kind = form.kind();
        if (kind.oftenMany() || form.from() == ColumnForm.From.PERSON || !(low <= high)) {
            return Optional.empty();
        }
        double highReckoned = form.reckoned(high);
        double lowReckoned = form.reckoned(low);
        boolean tooHigh = highReckoned > kind.plausibleHigh();
        boolean tooLow = !kind.possible(lowReckoned) && lowReckoned < kind.plausibleLow();
        boolean tooSlow = whole && slow(form, highReckoned);
        if (!tooHigh && !tooLow && !tooSlow) {
            return Optional.empty();
        }
        List<String> others = kind.units().stream()
                .filter(unit -> unit != form.unit() && fits(form.in(unit), low, high, tooSlow))
                .map(ChannelUnit::code)
                .toList();
        boolean oddButStated = form.stated() && others.isEmpty();
        return oddButStated
                ? Optional.empty()
                : Optional.of(
                        Question.of(Question.Kind.UNIT, column, form.heading(), kind, form.unit(), low, high, others));
    }

    private static boolean slow(ColumnForm form, double high) {
        if (form.kind() == ChannelKind.ENGINE_SPEED) {
            return high > 1 && high < SLOW_ENGINE;
        }
        return form.kind() == ChannelKind.THROTTLE && !form.stated() && high > 0.2 && high <= 1.0;
    }

    private static boolean fits(ColumnForm form, double low, double high, boolean tooSlow) {
        double top = form.reckoned(high);
        boolean plausible = top <= form.kind().plausibleHigh()
                && (form.reckoned(low) >= form.kind().plausibleLow()
                        || form.kind().possible(form.reckoned(low)))
                && top >= form.kind().plausibleLow();
        if (!tooSlow) {
            return plausible;
        }
        boolean engine = form.kind() == ChannelKind.ENGINE_SPEED;
        boolean scale = form.unit() != ChannelUnit.THOUSAND_RPM || high < THOUSANDS;
        return plausible && scale && top >= (engine ? SLOW_ENGINE : 20);
    }
}
