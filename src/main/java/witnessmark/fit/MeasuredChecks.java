package witnessmark.fit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;

/** Figures that are held against their limits as they were measured, and bolts by what they kept of their stretch. */
final class MeasuredChecks {
    /** Those other checks speak of. */
    private static final Set<MeasureKind> ELSEWHERE =
            EnumSet.of(MeasureKind.MAIN_CLEARANCE, MeasureKind.BIG_END_CLEARANCE, MeasureKind.BIG_END_OVALITY);

    private final Sheet sheet;

    MeasuredChecks(Sheet sheet) {
        this.sheet = sheet;
    }

    List<Answer> all() {
        List<Answer> answers = new ArrayList<>();
        for (MeasureKind kind : MeasureKind.values()) {
            boolean limited = sheet.places(kind).stream()
                    .anyMatch(place -> sheet.bounds(kind, place.spot()).any());
            if (!kind.workedOut() && !ELSEWHERE.contains(kind) && limited) {
                answers.add(measured(kind));
            }
        }
        answers.add(growth());
        return answers;
    }

    /** Every place that was measured; where none was, the first of each number, so that what is missing is said. */
    private Answer measured(MeasureKind kind) {
        List<Check> checks = new ArrayList<>();
        Integer lacking = null;
        boolean any = false;
        for (MeasurePlace place : sheet.places(kind)) {
            Given figure = sheet.measured(place);
            boolean newNumber = place.number() == null ? !any : !place.number().equals(lacking);
            if (figure != null) {
                checks.add(new Sum(sheet).add(place, figure, Term.Part.PLUS).check(place));
                any = true;
            } else if (newNumber && noneAt(place)) {
                checks.add(new Sum(sheet).add(place, null, Term.Part.PLUS).check(place));
                lacking = place.number();
                any = true;
            }
        }
        return Answers.of(kind, checks, null);
    }

    private boolean noneAt(MeasurePlace wanted) {
        return sheet.places(wanted.kind()).stream()
                .filter(place -> place.at(wanted.kind(), wanted.number()))
                .allMatch(place -> sheet.measured(place) == null);
    }

    /**
     * What a rod bolt is longer by than before it was tightened. One whose length before stands on the sheet is asked
     * about when it comes out again; one that was never measured cannot be, and that is said.
     */
    private Answer growth() {
        List<Check> checks = new ArrayList<>();
        for (int number : sheet.numbers(MeasureKind.BOLT_GROWTH)) {
            for (Spot bolt : MeasureKind.BOLT_GROWTH.spots()) {
                MeasurePlace after = new MeasurePlace(MeasureKind.BOLT_AFTER, number, bolt);
                MeasurePlace before = new MeasurePlace(MeasureKind.BOLT_BEFORE, number, bolt);
                if (sheet.measured(after) != null || sheet.measured(before) == null) {
                    checks.add(new Sum(sheet)
                            .add(after, sheet.measured(after), Term.Part.PLUS)
                            .add(before, sheet.measured(before), Term.Part.MINUS)
                            .check(new MeasurePlace(MeasureKind.BOLT_GROWTH, number, bolt)));
                }
            }
        }
        return Answers.of(MeasureKind.BOLT_GROWTH, checks, null);
    }
}
