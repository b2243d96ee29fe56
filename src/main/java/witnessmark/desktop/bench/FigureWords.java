package witnessmark.desktop.bench;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.NoteLine;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Entry;
import witnessmark.domain.HowStood;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Tool;
import witnessmark.fit.result.Bounds;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.WriteFigures;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.wording.BuildWords;
import witnessmark.wording.FitWords;
import witnessmark.wording.MeasureWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words the field in hand: what was understood, what is doubtful, how it stands, how it was taken. */
final class FigureWords {
    /** From this length on inches are spoken of, below it thousandths of one. */
    private static final long INCHES_FROM = 2_540_000;

    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final BuildWords builds;
    private final MeasureWords figures;
    private final RecordWords records;
    private final Verdicts verdicts;

    FigureWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.fit = new FitWords(texts, measures);
        this.builds = new BuildWords(texts, measures);
        this.figures = new MeasureWords(texts, measures);
        this.records = new RecordWords(texts);
        this.verdicts = new Verdicts(texts, fit);
    }

    /** What is said of a field, and how much it matters. */
    record Say(NoteLine.Level level, String words) {}

    /** The name of a place, as a heading. */
    String name(MeasurePlace place) {
        return records.label(fit.of(place));
    }

    /** The kind of a place, to be read from afar. */
    String kind(MeasurePlace place) {
        return records.label(records.word(place.kind()));
    }

    /** The place without its kind. */
    String where(MeasurePlace place) {
        return fit.where(place);
    }

    /** What is said under the field in hand. */
    Say say(BenchModel model, MeasurePlace place) {
        Optional<BenchModel.Entered> typed = model.entered(place);
        if (typed.isPresent() && !model.hows().reads(typed.get().how())) {
            How how = typed.get().how();
            return new Say(
                    NoteLine.Level.STOP,
                    texts.get(
                            "bench.say.temperature",
                            how.temperature(),
                            model.hows().example(how)));
        }
        if (typed.isPresent()) {
            return say(model, place, typed.get().text());
        }
        Optional<Measurement> written = model.page().figure(place);
        if (written.isEmpty()) {
            return new Say(NoteLine.Level.NOTE, texts.get("bench.say.nothing"));
        }
        String echo = understood(place.kind(), written.get().value());
        return model.takesBack(place)
                ? new Say(
                        NoteLine.Level.QUERY,
                        texts.get("bench.say.taken_back", written.get().typed()))
                : new Say(NoteLine.Level.NOTE, join(echo, stand(model, place).sentence()));
    }

    private Say say(BenchModel model, MeasurePlace place, String text) {
        WriteFigures.Understood read = model.read(place, text);
        Long parts = read.parts();
        if (parts == null) {
            return new Say(
                    model.wasLeft(place) ? NoteLine.Level.STOP : NoteLine.Level.NOTE,
                    texts.get("bench.say.unreadable", text, read.example()));
        }
        String echo = understood(place.kind(), parts);
        List<WriteFigures.Doubt> doubts = read.doubts();
        if (doubts.contains(WriteFigures.Doubt.UNLIKE_OTHERS)) {
            String low = fit.figure(place.kind(), Objects.requireNonNull(read.low()));
            String high = fit.figure(place.kind(), Objects.requireNonNull(read.high()));
            return new Say(
                    NoteLine.Level.QUERY,
                    low.equals(high)
                            ? texts.get("bench.say.unlike.one", echo, low)
                            : texts.get("bench.say.unlike", echo, low, high));
        }
        if (doubts.contains(WriteFigures.Doubt.SIDE_NOT_SAID)) {
            return new Say(NoteLine.Level.QUERY, texts.get("bench.say.side", echo));
        }
        String before = doubts.contains(WriteFigures.Doubt.REPEAT)
                ? texts.get(
                        "bench.say.repeat",
                        model.page().figure(place).map(Measurement::typed).orElse(""))
                : "";
        return new Say(
                NoteLine.Level.ECHO,
                join(join(echo, stand(model.typed(), place, parts).sentence()), before));
    }

    private static String join(String first, String second) {
        return first.isEmpty() || second.isEmpty() ? first + second : first + "; " + second;
    }

    /** The mark of a field, by what stands in it; what was left and cannot be read is not known. */
    BenchLines.Stand stand(BenchModel model, MeasurePlace place) {
        if (model.takesBack(place)) {
            return new BenchLines.Stand(null, "", "");
        }
        Long parts = parts(model, place);
        if (parts == null) {
            boolean refused = model.entered(place).isPresent() && model.wasLeft(place);
            return new BenchLines.Stand(refused ? SeamState.NOT_KNOWN : null, "", "");
        }
        return stand(model.typed(), place, parts);
    }

    private static @Nullable Long parts(BenchModel model, MeasurePlace place) {
        Optional<BenchModel.Entered> typed = model.entered(place);
        return typed.isPresent()
                ? model.read(place, typed.get().text()).parts()
                : model.page().figure(place).map(Measurement::value).orElse(null);
    }

    /** Why a field needs a look, short, behind its name: {@code Bore, cylinder 1 (can't read 'abc')}. */
    String look(BenchModel model, MeasurePlace place) {
        BenchModel.Entered typed = model.entered(place).orElseThrow();
        boolean temperature = !model.hows().reads(typed.how());
        Long parts = parts(model, place);
        String why = temperature
                ? texts.get("bench.look.temperature", typed.how().temperature())
                : texts.get(parts == null ? "bench.look.unreadable" : "bench.look.unlike", typed.text());
        return texts.get("bench.look.field", name(place), why);
    }

    private BenchLines.Stand stand(SheetPage page, MeasurePlace place, long parts) {
        Bounds bounds = page.bounds(place);
        if (!bounds.any()) {
            return new BenchLines.Stand(null, "", "");
        }
        boolean accepted = page.answer(place.kind()).stream()
                .flatMap(answer -> answer.checks().stream())
                .filter(check -> check.place().equals(place) && check.value() != null && check.value() == parts)
                .anyMatch(check -> page.accepts(check).isPresent());
        BenchLines.Stand stand = verdicts.stand(bounds.verdict(parts), accepted, "");
        return new BenchLines.Stand(
                stand.state(),
                stand.word(),
                texts.get("bench.say.stand", stand.word(), fit.bounds(place.kind(), bounds)));
    }

    /** {@code = 0.051 mm (2 thou)}, or where a sign is a side {@code 0.05 mm proud of the deck}. */
    String understood(MeasureKind kind, long parts) {
        if (kind.sided() && parts != 0) {
            return texts.get(
                    parts < 0 ? "bench.say.proud" : "bench.say.down",
                    figures.figure(kind.dimension(), Math.abs(parts)),
                    inches(Math.abs(parts)));
        }
        String figure = figures.figure(kind.dimension(), parts);
        return kind.dimension() == Dimension.LENGTH
                ? texts.get("bench.say.length", figure, inches(parts))
                : texts.get("bench.say.figure", figure);
    }

    private String inches(long parts) {
        boolean long_ = Math.abs(parts) >= INCHES_FROM;
        MeasureUnit unit = long_ ? MeasureUnit.INCH : MeasureUnit.THOU;
        int decimals = long_ ? 4 : 1;
        return texts.get("measures.figure", measures.number(unit.figure(parts, decimals), decimals), unit.sign());
    }

    /** The figure to be read out: as understood, or as typed where it cannot be read. */
    String far(BenchModel model, MeasurePlace place) {
        Long parts = parts(model, place);
        return parts == null ? model.text(place) : farFigure(place.kind(), parts);
    }

    private String farFigure(MeasureKind kind, long parts) {
        String figure = figures.figure(kind.dimension(), kind.sided() ? Math.abs(parts) : parts);
        return kind.sided() && parts != 0
                ? texts.get(parts < 0 ? "bench.far.proud" : "bench.far.down", figure)
                : figure;
    }

    /** How a written figure was taken: {@code pushed down, dial gauge DG-1, 20 °C, crew chief, 24 Jan}. */
    String taken(SheetPage page, MeasurePlace place, List<Entry<Tool>> tools) {
        return page.figure(place).map(figure -> builds.taken(figure, tools)).orElse("");
    }

    /** {@code DG-1, dial gauge}. */
    String tool(Entry<Tool> tool) {
        return builds.tool(tool.fact());
    }

    String stood(HowStood stood) {
        return records.label(records.word(stood));
    }

    /** A repeat: what was typed, when, by whom. */
    String repeat(Measurement figure) {
        return builds.repeat(figure);
    }
}
