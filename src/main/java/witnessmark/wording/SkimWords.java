package witnessmark.wording;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Retimed;
import witnessmark.domain.SkimPass;
import witnessmark.domain.SkimShadow;
import witnessmark.fit.result.face.CleanUp;
import witnessmark.fit.result.face.SkimEffect;
import witnessmark.quantity.Dimension;
import witnessmark.quantity.Length;
import witnessmark.quantity.Volume;

/** What a skim took, how deep the low place was, and what it did to the engine. */
public final class SkimWords {
    private final Texts texts;
    private final Measures measures;
    private final MeasureWords figures;
    private final RecordWords records;

    public SkimWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.figures = new MeasureWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /** {@code 0.05 mm + 0.03 mm + 0.02 mm}; empty for none. */
    public String passes(List<SkimPass> passes) {
        String all = "";
        for (SkimPass pass : passes) {
            String one = figures.bare(Dimension.LENGTH, pass.depth().nanometres());
            all = all.isEmpty() ? one : texts.get("faces.passes.plus", all, one);
        }
        return all;
    }

    /** Each pass with what was seen after it. */
    public List<String> eachPass(List<SkimPass> passes) {
        return passes.stream()
                .map(pass -> texts.get("faces.pass", measures.length(pass.depth()), seen(pass)))
                .toList();
    }

    private String seen(SkimPass pass) {
        return switch (pass.shadow()) {
            case LEFT ->
                pass.where().isBlank()
                        ? texts.get("faces.pass.left")
                        : texts.get("faces.pass.left.where", pass.where());
            case CLEAN -> texts.get("faces.pass.clean");
            case NOT_SAID -> texts.get("faces.pass.not_said");
        };
    }

    /** Bounds of the low place by the passes. */
    public String cleanUp(CleanUp cleanUp) {
        if (!cleanUp.seen()) {
            return texts.get("faces.cleanup.unseen");
        }
        Length upTo = cleanUp.upTo();
        if (upTo == null) {
            return texts.get("faces.cleanup.over", measures.length(cleanUp.over()));
        }
        return cleanUp.over().nanometres() == 0
                ? texts.get("faces.cleanup.upto", measures.length(upTo))
                : texts.get("faces.cleanup.between", measures.length(cleanUp.over()), measures.length(upTo));
    }

    /** A mean chamber, to a tenth of a cubic centimetre: no burette is read finer. */
    public String chamber(@Nullable Volume volume) {
        return volume == null
                ? ""
                : texts.get(
                        "measures.figure",
                        measures.number(Dimension.VOLUME.shown(volume.microlitres()), 1),
                        figures.sign(Dimension.VOLUME));
    }

    /** A finish, from nanometres. */
    public String finish(@Nullable Integer nanometres) {
        return nanometres == null ? "" : figures.figure(Dimension.ROUGHNESS, nanometres);
    }

    /** A compression ratio. */
    public String ratio(@Nullable Double ratio) {
        return ratio == null ? "" : measures.number(BigDecimal.valueOf(ratio), 2);
    }

    /** What is left until the least thickness. */
    public String left(@Nullable Length left, @Nullable Length least) {
        if (least == null) {
            return texts.get("faces.left.no_least");
        }
        if (left == null) {
            return texts.get("faces.left.not_measured", measures.length(least));
        }
        return left.nanometres() < 0
                ? texts.get("faces.left.past", measures.length(new Length(-left.nanometres())), measures.length(least))
                : texts.get("faces.left", measures.length(left), measures.length(least));
    }

    /** What a skim did, line by line. */
    public List<String> effect(SkimEffect effect, Retimed retimed) {
        List<String> lines = new ArrayList<>();
        if (effect.ratioBefore() != null && effect.ratioAfter() != null) {
            lines.add(texts.get(
                    effect.ratioRests() ? "faces.effect.ratio.worked_out" : "faces.effect.ratio",
                    ratio(effect.ratioBefore()),
                    ratio(effect.ratioAfter())));
        }
        effect.valves().forEach(valve -> lines.add(valve(valve)));
        if (effect.cam() != null && effect.crank() != null) {
            String key = switch (retimed) {
                case YES -> "faces.effect.cam.retimed";
                case NO -> "faces.effect.cam.not_retimed";
                case NOT_SAID -> "faces.effect.cam";
            };
            lines.add(texts.get(key, degrees(effect.crank(), 1), degrees(effect.cam(), 2)));
        }
        lines.add(texts.get("faces.effect.squish"));
        if (!effect.missing().isEmpty()) {
            lines.add(texts.get(
                    "faces.effect.missing",
                    measures.all(effect.missing().stream().map(records::word).toList())));
        }
        return lines;
    }

    private String valve(SkimEffect.Valve valve) {
        String name = records.label(records.word(valve.kind()));
        Length before = valve.before();
        Length most = valve.lostMost();
        if (before == null) {
            return texts.get("faces.effect.valve.not_measured", name, measures.length(valve.lostLeast()));
        }
        if (valve.measured() != null) {
            return texts.get("faces.effect.valve", name, measures.length(before), measures.length(valve.measured()));
        }
        return most == null
                ? texts.get(
                        "faces.effect.valve.lost.open",
                        name,
                        measures.length(before),
                        measures.length(valve.lostLeast()))
                : texts.get(
                        "faces.effect.valve.lost",
                        name,
                        measures.length(before),
                        measures.length(valve.lostLeast()),
                        measures.length(most));
    }

    private String degrees(double figure, int decimals) {
        return measures.number(BigDecimal.valueOf(figure), decimals);
    }

    /** What was seen after a pass, as a word. */
    public String shadow(SkimShadow shadow) {
        return records.word(shadow);
    }
}
