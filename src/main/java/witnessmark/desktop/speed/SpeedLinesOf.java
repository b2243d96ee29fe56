package witnessmark.desktop.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;
import witnessmark.fit.result.Answer;
import witnessmark.fit.result.SpeedAnswer;
import witnessmark.logbook.measuring.SpeedPage;
import witnessmark.wording.FitWords;
import witnessmark.wording.Measures;
import witnessmark.wording.SpeedWords;
import witnessmark.wording.Texts;

/** Words a fit at speed. The same answer always gives the same lines. */
final class SpeedLinesOf {
    private final Texts texts;
    private final SpeedWords words;
    private final FitWords fit;
    private final SpeedChart chart;

    SpeedLinesOf(Texts texts, Measures measures) {
        this.texts = texts;
        this.words = new SpeedWords(texts, measures);
        this.fit = new FitWords(texts, measures);
        this.chart = new SpeedChart(texts, measures, words);
    }

    SpeedLines of(SpeedPage page) {
        SpeedAnswer answer = page.answer();
        SpeedAnswer.Verdict verdict = answer.verdict();
        Integer rpm = answer.judgedAt();
        return new SpeedLines(
                state(verdict),
                words.word(verdict),
                words.headline(answer, page.squish()),
                words.beside(answer),
                rpm == null
                        ? List.of()
                        : answer.nearest(rpm)
                                .map(side -> words.column(side, rpm))
                                .orElse(List.of()),
                words.rings(answer),
                words.conditions(answer.conditions()),
                words.missing(answer),
                loads(page),
                page.marks() == null ? List.of() : words.marks(page.marks()),
                tried(page),
                rpm == null ? Optional.empty() : answer.nearest(rpm).map(side -> chart.of(page, side)));
    }

    private List<String> loads(SpeedPage page) {
        List<String> lines = new ArrayList<>();
        int plain = page.loads().size() - page.overRevs();
        for (int i = 0; i < page.loads().size(); i++) {
            lines.add(words.load(page.loads().get(i), i >= plain));
        }
        return lines;
    }

    private List<String> tried(SpeedPage page) {
        List<String> lines = new ArrayList<>();
        if (page.whatIf().any()) {
            lines.add(texts.get("speed.whatif.tried"));
            add(lines, page.squish());
            add(lines, page.ratio());
        }
        return lines;
    }

    private void add(List<String> lines, @Nullable Answer atRest) {
        if (atRest != null) {
            lines.add(fit.answer(atRest));
        }
    }

    private static @Nullable SeamState state(SpeedAnswer.Verdict verdict) {
        return switch (verdict) {
            case TOUCHES -> SeamState.OVER;
            case NEAR -> SeamState.DUE;
            case ROOM -> SeamState.WITHIN;
            case NOT_KNOWN -> SeamState.NOT_KNOWN;
            case NO_MARGIN -> null;
        };
    }
}
