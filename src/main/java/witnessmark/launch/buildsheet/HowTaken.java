package witnessmark.launch.buildsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import witnessmark.domain.Entry;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Tool;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.wording.BuildWords;
import witnessmark.wording.FitWords;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Words how the figures of a kind were taken: once for all taken alike. */
final class HowTaken {
    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final BuildWords builds;

    HowTaken(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.fit = new FitWords(texts, measures);
        this.builds = new BuildWords(texts, measures);
    }

    /** How they were taken, what was noted beside them, and what was measured more than once. */
    List<String> notes(SheetPage page, MeasureKind kind, List<Entry<Tool>> tools) {
        List<Measurement> all = page.figures().stream()
                .map(Entry::fact)
                .filter(figure -> figure.kind() == kind)
                .toList();
        List<Measurement> counting = all.stream().filter(Measurement::inUse).toList();
        Map<String, List<MeasurePlace>> alike = counting.stream()
                .collect(Collectors.groupingBy(
                        figure -> builds.taken(figure, tools),
                        LinkedHashMap::new,
                        Collectors.mapping(Measurement::place, Collectors.toList())));
        List<String> notes = new ArrayList<>();
        alike.forEach((taken, places) -> notes.add(alike.size() == 1 ? taken : at(places, taken)));
        counting.stream()
                .filter(figure -> !figure.note().isBlank())
                .forEach(figure -> notes.add(at(List.of(figure.place()), figure.note())));
        List<String> repeats = all.stream()
                .filter(figure -> !figure.inUse())
                .map(figure -> at(List.of(figure.place()), builds.repeat(figure)))
                .toList();
        if (!repeats.isEmpty()) {
            notes.add(texts.get("buildsheet.repeats", texts.get("bench.repeats"), String.join("; ", repeats)));
        }
        return notes;
    }

    private String at(List<MeasurePlace> places, String words) {
        return texts.get(
                "fit.pair", measures.row(places.stream().map(fit::where).toList()), words);
    }
}
