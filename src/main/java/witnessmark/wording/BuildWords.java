package witnessmark.wording;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.HowStood;
import witnessmark.domain.MeasureKind;
import witnessmark.domain.Measurement;
import witnessmark.domain.SignOff;
import witnessmark.domain.Tool;

/** What a build sheet says besides its figures, alike on the bench and on paper. */
public final class BuildWords {
    private static final Set<MeasureKind> COMPUTED = EnumSet.of(
            MeasureKind.VALVE_TO_PISTON_INLET,
            MeasureKind.VALVE_TO_PISTON_EXHAUST,
            MeasureKind.CROWN_TO_HEAD,
            MeasureKind.SQUISH_WIRE,
            MeasureKind.RING_OVER_BORE,
            MeasureKind.RING_OVER_CROWN);
    private static final Set<MeasureKind> FASTENERS = EnumSet.of(
            MeasureKind.BOLT_BEFORE, MeasureKind.BOLT_STRETCH, MeasureKind.BOLT_AFTER, MeasureKind.BOLT_GROWTH);

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final MeasureWords figures;

    public BuildWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.figures = new MeasureWords(texts, measures);
    }

    /** {@code K05, build 3}. */
    public String name(Engine engine, Build build) {
        return texts.get("bench.build", engine.number(), build.number());
    }

    /** By whom a sheet is signed and when; without a signing that nobody signed it, or who closed the build. */
    public String signed(@Nullable SignOff signed, Build build) {
        if (signed == null) {
            return build.signedBy().isBlank()
                    ? texts.get("bench.signed.not")
                    : texts.get("bench.signed.build", build.signedBy());
        }
        String day = measures.date(signed.at().day());
        return signed.seenByTwo()
                ? texts.get("bench.signed.two", day, signed.by(), signed.second())
                : texts.get("bench.signed.one", day, signed.by());
    }

    /** How a figure was taken: {@code Taken pushed down, DG-1, dial gauge, 20 °C, crew chief, 24 Jan}. */
    public String taken(Measurement figure, List<Entry<Tool>> tools) {
        List<String> parts = new ArrayList<>();
        if (figure.stood() != HowStood.NOT_SAID) {
            parts.add(records.word(figure.stood()));
        }
        tools.stream().filter(tool -> tool.id().equals(figure.tool())).forEach(tool -> parts.add(tool(tool.fact())));
        if (figure.temperature() != null) {
            parts.add(measures.temperature(figure.temperature()));
        }
        parts.add(figure.by());
        parts.add(measures.shortDate(figure.at().day()));
        parts.removeIf(String::isBlank);
        return texts.get("bench.taken", measures.row(parts));
    }

    /** {@code DG-1, dial gauge}. */
    public String tool(Tool tool) {
        return texts.get("bench.tool", tool.mark(), records.word(tool.kind()));
    }

    /** A figure that was measured again: what it was, when, by whom. */
    public String repeat(Measurement figure) {
        return texts.get(
                "bench.repeat",
                figures.figure(figure.kind(), figure.value(), figure.typed()),
                measures.shortDate(figure.at().day()),
                figure.by());
    }

    /** What is always to be said with a kind of figure; empty for nothing. */
    public String caution(MeasureKind kind) {
        return COMPUTED.contains(kind)
                ? texts.get("fit.caution.computed")
                : FASTENERS.contains(kind) ? texts.get("fit.caution.fasteners") : "";
    }
}
