package witnessmark.wording;

import java.math.BigDecimal;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Joint;
import witnessmark.domain.PartKind;
import witnessmark.ledger.result.JointDoubt;

/** Joints that a wrench tightened, in words, and by how much it was wrong. */
public final class JointWords {
    private static final BigDecimal PARTS = new BigDecimal(100);

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    public JointWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** "Tightened with W2, 11 % low". */
    public String name(JointDoubt doubt) {
        return records.label(within(doubt));
    }

    /** The same inside a sentence: "tightened with W2, 11 % low". */
    public String within(JointDoubt doubt) {
        return texts.get("engines.joint_doubt", doubt.tool().fact().mark(), error(doubt.asFound()));
    }

    /** "Calibrated 19 Jun". */
    public String found(JointDoubt doubt) {
        return texts.get(
                "engines.joint_doubt.found",
                measures.shortDate(doubt.calibration().fact().day()));
    }

    /** "main caps 1 to 5 on 30 Jan, rod bolts, all eight, on 17 Apr". */
    public String list(JointDoubt doubt) {
        return list(doubt.joints());
    }

    /** The same of any joints; a group that was tightened by stages is said once. */
    public String list(List<Entry<Joint>> joints) {
        return measures.row(joints.stream()
                .map(Entry::fact)
                .map(joint -> texts.get(
                        "engines.joint_doubt.joint",
                        group(joint),
                        measures.shortDate(joint.at().day())))
                .distinct()
                .toList());
    }

    /** "main caps 1 to 5, rod bolts": what they are, without when. */
    public String groups(JointDoubt doubt) {
        return measures.row(doubt.joints().stream()
                .map(Entry::fact)
                .map(joint ->
                        joint.fasteners() == PartKind.OTHER && !joint.which().isBlank()
                                ? joint.which()
                                : records.word(joint.fasteners()))
                .distinct()
                .toList());
    }

    /** "11 % low", from hundredths of a percent. */
    public String error(int asFound) {
        return texts.get(
                asFound < 0 ? "engines.joint_doubt.low" : "engines.joint_doubt.high",
                new BigDecimal(Math.abs(asFound))
                        .divide(PARTS)
                        .stripTrailingZeros()
                        .toPlainString());
    }

    private String group(Joint joint) {
        String fasteners = records.word(joint.fasteners());
        boolean other = joint.fasteners() == PartKind.OTHER && !joint.which().isBlank();
        return other
                ? joint.which()
                : joint.which().isBlank() ? fasteners : texts.get("engines.comma", fasteners, joint.which());
    }
}
