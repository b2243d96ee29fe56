package witnessmark.fit;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;

/** The largest less the smallest of several figures. */
final class Spread {
    private static final Comparator<Check> BY_VALUE =
            Comparator.comparingLong(check -> Objects.requireNonNull(check.value()));
    private static final Comparator<Given> BY_FIGURE = Comparator.comparingLong(Given::value);

    private Spread() {}

    /** Of figures that were worked out; it lacks what any of them lacks. */
    static Check of(Sheet sheet, MeasureKind kind, List<Check> figures) {
        MeasurePlace place = new MeasurePlace(kind, null, null);
        Sum lacking = new Sum(sheet);
        figures.stream().filter(check -> check.value() == null).forEach(check -> lacking.add(check, Term.Part.PLUS));
        if (!lacking.complete()) {
            return lacking.check(place);
        }
        return new Sum(sheet)
                .add(figures.stream().max(BY_VALUE).orElseThrow(), Term.Part.PLUS)
                .add(figures.stream().min(BY_VALUE).orElseThrow(), Term.Part.MINUS)
                .check(place);
    }

    /** Of what was measured at some places; a place that was not is left out, two at least are needed. */
    static Check measured(Sheet sheet, MeasurePlace of, List<MeasurePlace> places) {
        List<Given> found =
                places.stream().map(sheet::measured).filter(Objects::nonNull).toList();
        if (found.size() < 2) {
            Sum lacking = new Sum(sheet);
            places.stream()
                    .filter(place -> sheet.measured(place) == null)
                    .forEach(place -> lacking.add(place, null, Term.Part.PLUS));
            return lacking.check(of);
        }
        Given high = found.stream().max(BY_FIGURE).orElseThrow();
        Given low = found.stream().min(BY_FIGURE).orElseThrow();
        return new Sum(sheet)
                .add(high.place(), high, Term.Part.PLUS)
                .add(low.place(), low, Term.Part.MINUS)
                .check(of);
    }
}
