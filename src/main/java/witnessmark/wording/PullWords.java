package witnessmark.wording;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import witnessmark.domain.Joint;
import witnessmark.domain.JointMethod;
import witnessmark.domain.PartKind;
import witnessmark.fit.Pulls;
import witnessmark.fit.result.Pull;

/** What tightened fasteners pull with, in words; the value always with its method and lubricant beside it. */
public final class PullWords {
    private static final int DECIMALS = 1;

    private final Texts texts;
    private final Measures measures;
    private final FitWords fit;
    private final RecordWords records;

    public PullWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.fit = new FitWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /** Which fasteners, to what, how and on what: {@code Head studs, all ten: 95 N·m by torque on moly paste}. */
    public String joint(Joint joint) {
        String fasteners = records.label(records.word(joint.fasteners()));
        String name = joint.which().isBlank()
                ? fasteners
                : joint.fasteners() == PartKind.OTHER
                        ? records.label(joint.which())
                        : texts.get("fit.pull.which", fasteners, joint.which());
        String method = records.word(joint.method());
        return joint.lubricant().isBlank()
                ? texts.get("fit.pull.joint.bare", name, joint.value(), method)
                : texts.get("fit.pull.joint", name, joint.value(), method, joint.lubricant());
    }

    /** The joint and what it comes to, in one line. */
    public String sentence(Pull pull) {
        return texts.get("fit.pull.sentence", joint(pull.joint()), comesTo(pull));
    }

    private String comesTo(Pull pull) {
        Pull.Range each = pull.each();
        Pull.Hold hold = pull.hold();
        if (each == null) {
            return texts.get("fit.pull.not_known");
        }
        String range = range(each);
        return hold == null
                ? texts.get("fit.pull.each", range)
                : texts.get("fit.pull.holds", range, range(hold.clamp()), force(hold.gas()));
    }

    /** The word of the mark. */
    public String finding(Pull.Finding finding) {
        return texts.get("fit.pull.finding." + finding.name().toLowerCase(Locale.ROOT));
    }

    /** How the pull comes about, and what it holds against, line by line. */
    public List<FitWords.Line> column(Pull pull) {
        List<FitWords.Line> lines = new ArrayList<>();
        pull.inputs().forEach(input -> lines.add(line(pull, input)));
        Pull.Range each = pull.each();
        Pull.Way way = pull.way();
        if (each == null || way == null) {
            return lines;
        }
        lines.add(new FitWords.Line(
                texts.get("fit.pull.way." + way.name().toLowerCase(Locale.ROOT)), force(each.likely()), ""));
        lines.add(new FitWords.Line(
                texts.get(
                        "fit.pull.scatter",
                        records.word(pull.joint().method()),
                        scatter(pull.joint().method())),
                texts.get("fit.pull.between", force(each.least()), force(each.most())),
                ""));
        if (pull.proof() != null) {
            lines.add(new FitWords.Line(texts.get("fit.pull.proof"), force(pull.proof()), ""));
        }
        if (pull.hold() != null) {
            held(pull.hold(), lines);
        }
        return lines;
    }

    private void held(Pull.Hold hold, List<FitWords.Line> lines) {
        lines.add(new FitWords.Line(
                texts.get("fit.pull.share", hold.count(), hold.cylinders()), range(hold.clamp()), ""));
        lines.add(new FitWords.Line(
                texts.get(
                        "fit.pull.gas",
                        measures.pressure(hold.pressure()),
                        fit.of(hold.bore().place()),
                        fit.figure(hold.bore().place().kind(), hold.bore().value())),
                force(hold.gas()),
                hold.assumed() ? texts.get("fit.pull.assumed.pressure") : ""));
        lines.add(new FitWords.Line(
                texts.get("fit.pull.times"),
                texts.get(
                        "fit.pull.between",
                        times(hold.clamp().least(), hold.gas()),
                        times(hold.clamp().most(), hold.gas())),
                ""));
    }

    private FitWords.Line line(Pull pull, Pull.Input input) {
        String key = "fit.pull.input." + input.what().name().toLowerCase(Locale.ROOT);
        BigDecimal value = BigDecimal.valueOf(input.value());
        String figure = switch (input.what()) {
            case TORQUE -> texts.get("measures.figure", measures.number(value, DECIMALS), "N·m");
            case NUT_FACTOR -> measures.number(value, 3);
            case DIAMETER, STRETCH, SHANK_DIAMETER, SHANK_LENGTH ->
                texts.get("measures.figure", measures.number(value, 3), "mm");
            case MODULUS -> texts.get("measures.figure", measures.number(value, 0), "GPa");
            case MAKERS_PULL -> force(Math.round(input.value()));
        };
        return new FitWords.Line(
                texts.get(key, pull.joint().lubricant()),
                figure,
                input.assumed() ? texts.get("fit.pull.assumed.steel") : "");
    }

    /** What is missing, a sentence each. */
    public List<String> lacks(Pull pull) {
        return pull.lacks().stream()
                .map(lack -> texts.get(
                        "fit.pull.lacks." + lack.name().toLowerCase(Locale.ROOT),
                        pull.joint().value(),
                        pull.joint().lubricant().isBlank()
                                ? texts.get("fit.pull.no_lubricant")
                                : pull.joint().lubricant()))
                .toList();
    }

    private String range(Pull.Range range) {
        return texts.get(
                "fit.pull.range", force(range.likely()), kilonewtons(range.least()), kilonewtons(range.most()));
    }

    /** In kilonewtons with one decimal. */
    public String force(long newtons) {
        return texts.get("measures.figure", kilonewtons(newtons), "kN");
    }

    private String kilonewtons(long newtons) {
        return measures.number(BigDecimal.valueOf(newtons, 3), DECIMALS);
    }

    private String times(long clamp, long gas) {
        return texts.get("fit.pull.times.figure", measures.number(BigDecimal.valueOf((double) clamp / gas), DECIMALS));
    }

    private static int scatter(JointMethod method) {
        return (int) Math.round(Pulls.scatter(method) * 100);
    }
}
