package witnessmark.desktop.start;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.ImportSeason;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words what was read or found before anything is done about it. */
final class ReportModel {
    private final Texts texts;
    private final Problems problems;
    private final Measures measures;
    private final RecordWords records;

    ReportModel(Texts texts, Problems problems, Measures measures) {
        this.texts = texts;
        this.problems = problems;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** The problems as rows, in the order they were found. */
    List<ProblemLine> lines(List<Problem> found) {
        List<ProblemLine> lines = new ArrayList<>();
        for (Problem problem : found) {
            Place place = problem.place();
            lines.add(new ProblemLine(
                    lines.size() + 1,
                    place == null ? "" : problems.place(place),
                    problems.happened(new Problem(problem.kind(), problem.facts(), null)),
                    problems.remedy(problem),
                    problems.sentence(problem)));
        }
        return lines;
    }

    /** "312 rows: 1 team, 163 parts, 69 runs …", the kinds in the order of the files. */
    String rows(ImportSeason.Plan plan, boolean folders) {
        Map<Class<? extends Fact>, Integer> counts = new LinkedHashMap<>();
        plan.entries().stream()
                .<Class<? extends Fact>>map(entry -> entry.fact().getClass())
                .sorted(Comparator.comparingInt(ReportModel::turn))
                .forEach(kind -> counts.merge(kind, 1, Integer::sum));
        if (counts.isEmpty()) {
            return texts.get("beforewego.import.nothing");
        }
        List<String> kinds = counts.entrySet().stream()
                .map(kind -> texts.get(
                        "beforewego.import.kind",
                        kind.getValue(),
                        kind.getValue() == 1 ? records.one(kind.getKey()) : records.many(kind.getKey())))
                .toList();
        String key = folders ? "beforewego.import.rowsTaken" : "beforewego.import.rows";
        return texts.get(key, plan.entries().size(), measures.all(kinds));
    }

    /** The curves and the photos that come along. */
    List<String> samples(ImportSeason.Plan plan) {
        List<String> along = new ArrayList<>();
        if (plan.samples() > 0) {
            along.add(texts.get("beforewego.import.samples", plan.samples()));
        }
        if (plan.photos() > 0) {
            along.add(texts.get("beforewego.import.photos", plan.photos()));
        }
        return along;
    }

    /** What the problems mean for the reading. */
    String verdict(ImportSeason.Reading reading, ImportSeason.Plan plan) {
        long stops = plan.problems().stream().filter(Problem::stops).count();
        long queries = plan.problems().stream()
                .filter(problem -> !problem.stops() && problem.kind() != ProblemKind.DIFFERS_FROM_LOGBOOK)
                .count();
        if (!reading.unread().isEmpty()) {
            return texts.get("beforewego.import.unread", measures.all(reading.unread()));
        }
        if (stops > 0) {
            return texts.get("beforewego.import.bad", stops, queries);
        }
        return queries > 0 ? texts.get("beforewego.import.queried", queries) : texts.get("beforewego.import.good");
    }

    /** What the logbook has of the folder's rows already, and which values stand after this choice. */
    Optional<String> known(ImportSeason.Reading reading, boolean folders) {
        if (reading.differing() > 0) {
            String key = folders
                    ? "beforewego.import.overwrites"
                    : reading.unread().isEmpty() ? "beforewego.import.keeps" : "beforewego.import.keepsUnread";
            return Optional.of(texts.get(key, reading.same(), reading.differing()));
        }
        return reading.same() > 0 ? Optional.of(texts.get("beforewego.import.same", reading.same())) : Optional.empty();
    }

    private static int turn(Class<? extends Fact> kind) {
        return RecordTypes.all().indexOf(RecordTypes.of(kind));
    }

    /** How many entries there are of one kind. */
    static long count(List<Entry<?>> entries, Class<? extends Fact> kind) {
        return entries.stream().filter(entry -> kind.isInstance(entry.fact())).count();
    }
}
