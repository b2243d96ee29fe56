package witnessmark.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Spot;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.Check;
import witnessmark.fit.result.Given;
import witnessmark.fit.result.Term;

/**
 * Bearings and journals. A clearance is the bore with its shells in and its cap tightened, less the largest of its
 * journal; where those were not measured, the clearance as somebody measured it.
 */
final class BearingChecks {
    private final Sheet sheet;

    BearingChecks(Sheet sheet) {
        this.sheet = sheet;
    }

    List<Answer> all() {
        List<Answer> answers = new ArrayList<>();
        answers.add(clearances(MeasureKind.MAIN_CLEARANCE, MeasureKind.MAIN_BORE, MeasureKind.MAIN_JOURNAL));
        answers.add(clearances(MeasureKind.BIG_END_CLEARANCE, MeasureKind.BIG_END_BORE, MeasureKind.PIN_JOURNAL));
        answers.add(journals(MeasureKind.JOURNAL_OVALITY, MeasureKind.MAIN_JOURNAL, BearingChecks::ovalityPairs));
        answers.add(journals(MeasureKind.JOURNAL_TAPER, MeasureKind.MAIN_JOURNAL, BearingChecks::taperPairs));
        answers.add(journals(MeasureKind.PIN_OVALITY, MeasureKind.PIN_JOURNAL, BearingChecks::ovalityPairs));
        answers.add(journals(MeasureKind.PIN_TAPER, MeasureKind.PIN_JOURNAL, BearingChecks::taperPairs));
        answers.add(housings());
        return answers;
    }

    private Answer clearances(MeasureKind clearance, MeasureKind bore, MeasureKind journal) {
        List<Check> checks = new ArrayList<>();
        for (int number : sheet.numbers(clearance)) {
            MeasurePlace place = new MeasurePlace(clearance, number, null);
            MeasurePlace borePlace = new MeasurePlace(bore, number, Spot.UPRIGHT);
            Given inside = sheet.measured(borePlace);
            Given shaft = largest(journal, number);
            Given read = sheet.measured(place);
            boolean neither = inside == null && shaft == null;
            boolean one = inside == null || shaft == null;
            checks.add(
                    neither || one && read != null // half of a difference says less than what was read as a whole
                            ? new Sum(sheet).add(place, read, Term.Part.PLUS).check(place)
                            : new Sum(sheet)
                                    .add(borePlace, inside, Term.Part.PLUS)
                                    .add(journalPlace(journal, number), shaft, Term.Part.MINUS)
                                    .check(place));
        }
        return Answers.of(clearance, checks, null);
    }

    private @Nullable Given largest(MeasureKind journal, int number) {
        return journal.spots().stream()
                .map(spot -> sheet.measured(new MeasurePlace(journal, number, spot)))
                .filter(Objects::nonNull)
                .max(Comparator.comparingLong(Given::value))
                .orElse(null);
    }

    private static MeasurePlace journalPlace(MeasureKind journal, int number) {
        return new MeasurePlace(journal, number, Spot.FRONT_UPRIGHT);
    }

    private interface Pairs {
        Stream<List<Spot>> get();
    }

    private static Stream<List<Spot>> ovalityPairs() {
        return Stream.of(List.of(Spot.FRONT_UPRIGHT, Spot.FRONT_ACROSS), List.of(Spot.REAR_UPRIGHT, Spot.REAR_ACROSS));
    }

    private static Stream<List<Spot>> taperPairs() {
        return Stream.of(List.of(Spot.FRONT_UPRIGHT, Spot.REAR_UPRIGHT), List.of(Spot.FRONT_ACROSS, Spot.REAR_ACROSS));
    }

    private Answer journals(MeasureKind kind, MeasureKind journal, Pairs pairs) {
        List<Check> checks = sheet.numbers(kind).stream()
                .map(number -> pairs.get()
                        .map(pair -> Spread.measured(
                                sheet,
                                new MeasurePlace(kind, number, null),
                                pair.stream()
                                        .map(spot -> new MeasurePlace(journal, number, spot))
                                        .toList()))
                        .reduce(BoreChecks::larger)
                        .orElseThrow())
                .toList();
        return Answers.of(kind, checks, null);
    }

    /** How far a big-end housing is from round: as the rod bench gave it, else the difference of its two directions. */
    private Answer housings() {
        List<Check> checks = new ArrayList<>();
        for (int number : sheet.numbers(MeasureKind.BIG_END_OVALITY)) {
            MeasurePlace place = new MeasurePlace(MeasureKind.BIG_END_OVALITY, number, null);
            Given bench = sheet.measured(place);
            List<MeasurePlace> housing = MeasureKind.BIG_END_HOUSING.spots().stream()
                    .map(spot -> new MeasurePlace(MeasureKind.BIG_END_HOUSING, number, spot))
                    .toList();
            boolean measured = housing.stream().allMatch(spot -> sheet.measured(spot) != null);
            checks.add(
                    bench == null && measured
                            ? Spread.measured(sheet, place, housing)
                            : new Sum(sheet).add(place, bench, Term.Part.PLUS).check(place));
        }
        return Answers.of(MeasureKind.BIG_END_OVALITY, checks, null);
    }
}
