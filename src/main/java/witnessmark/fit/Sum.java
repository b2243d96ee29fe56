package witnessmark.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.FitVerdict;
import witnessmark.domain.MeasurePlace;
import witnessmark.fit.result.Basis;
import witnessmark.fit.result.Bounds;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;
import witnessmark.fit.result.ToTwenty;
import witnessmark.mechanics.FirstOrder;

/** A column of figures being added up, which remembers what it lacked. */
final class Sum {
    private static final double COVERAGE = 2;

    private final Sheet sheet;
    private final List<Term> terms = new ArrayList<>();
    private final List<MeasurePlace> missing = new ArrayList<>();
    private double variance;
    private boolean marginKnown = true;

    Sum(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Adds the figure of a place, measured or as designed. */
    Sum add(MeasurePlace place, Term.Part part) {
        return add(place, sheet.given(place), part);
    }

    /** Adds a figure, or notes that the place's is missing. */
    Sum add(MeasurePlace place, @Nullable Given given, Term.Part part) {
        if (given == null) {
            missing.add(place);
            return this;
        }
        return add(Term.of(given, part), half(part));
    }

    /** Adds a figure worked out by another sum; where that lacks something, so does this. */
    Sum add(Check worked, Term.Part part) {
        if (worked.value() == null) {
            worked.missing().stream().filter(place -> !missing.contains(place)).forEach(missing::add);
            return this;
        }
        Long margin = worked.margin();
        if (margin == null) {
            marginKnown = false;
        } else {
            double standard = margin / COVERAGE * half(part);
            variance += standard * standard;
        }
        terms.add(Term.of(new Given(worked.place(), worked.value(), Basis.WORKED_OUT, ""), part));
        return this;
    }

    /** Adds a line ready made. */
    Sum add(Term term, double perPart) {
        Long width = term.given().basis() == Basis.MEASURED
                ? Usual.halfWidth(term.given().place().kind())
                : null;
        if (term.given().basis() == Basis.MEASURED && width == null) {
            marginKnown = false;
        }
        if (width != null) {
            double standard = FirstOrder.withinHalfWidth(width) * perPart;
            variance += standard * standard;
        }
        terms.add(term);
        return this;
    }

    /** Notes a figure that is missing. */
    Sum lacking(MeasurePlace place) {
        missing.add(place);
        return this;
    }

    /** Takes in an uncertainty of a line that is worked out. */
    void spread(double standard) {
        variance += standard * standard;
    }

    private static double half(Term.Part part) {
        return part == Term.Part.PLUS_HALF || part == Term.Part.MINUS_HALF ? 0.5 : 1;
    }

    boolean complete() {
        return missing.isEmpty();
    }

    long value() {
        return AtTwenty.together(terms).stream().mapToLong(Term::counts).sum();
    }

    /** Expanded uncertainty, or null where a figure's is not known. */
    @Nullable
    Long margin() {
        double all = variance + brought();
        return marginKnown && all > 0 ? Math.round(COVERAGE * Math.sqrt(all)) : null;
    }

    /** What bringing sizes to 20 °C adds to the variance. */
    private double brought() {
        double sum = 0;
        for (Term term : AtTwenty.together(terms)) {
            ToTwenty brought = term.given().toTwenty();
            if (brought != null) {
                double standard = FirstOrder.withinHalfWidth(brought.halfWidth()) * half(term.part());
                sum += standard * standard;
            }
        }
        return sum;
    }

    /** The sum as a check of that figure. */
    Check check(MeasurePlace of) {
        return check(of, value(), margin());
    }

    /** A figure made of the sum, as a check. */
    Check check(MeasurePlace of, long value, @Nullable Long margin) {
        Bounds bounds = sheet.bounds(of.kind(), of.spot());
        List<Term> together = AtTwenty.together(terms);
        return complete()
                ? new Check(of, value, margin, bounds, bounds.verdict(value), together, missing)
                : new Check(of, null, null, bounds, FitVerdict.NOT_MEASURED, together, missing);
    }
}
