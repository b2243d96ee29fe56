package witnessmark.wording;

import java.util.ArrayList;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Joint;
import witnessmark.domain.Part;
import witnessmark.domain.TrackRepair;
import witnessmark.ledger.result.UnprovenBuild;

/** An unproven build in words, with its list: what was opened, went in, came out and went back, with what, before whom. */
public final class UnprovenWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final LifeWords lives;

    public UnprovenWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.lives = new LifeWords(texts, measures);
    }

    /** "Unproven build 4". */
    public String name(UnprovenBuild build) {
        return records.label(within(build));
    }

    /** The same inside a sentence: "unproven build 4". */
    public String within(UnprovenBuild build) {
        return texts.get("records.unproven", build.build().fact().number());
    }

    /** "Closed at the track 5 Jul, not measured". */
    public String closed(UnprovenBuild build) {
        return texts.get(
                "records.unproven.closed", measures.shortDate(build.since().day()));
    }

    /** "opened head, in HG-9, out HG-6, went back springs, wrench W-01, second pair of eyes Jo, ran 0.45 h since". */
    public String list(UnprovenBuild build) {
        TrackRepair repair = build.repair().fact();
        List<String> list = new ArrayList<>();
        add(
                list,
                "records.unproven.opened",
                measures.all(
                        build.build().fact().zones().stream().map(records::word).toList()));
        add(list, "records.unproven.in", marks(build.wentIn()));
        add(list, "records.unproven.out", marks(build.cameOut()));
        add(list, "records.unproven.back", repair.wentBack());
        add(
                list,
                "records.unproven.tool",
                build.tool() == null ? "" : build.tool().fact().mark());
        for (Entry<Joint> joint : build.joints()) {
            String fasteners = joint.fact().which().isEmpty()
                    ? records.word(joint.fact().fasteners())
                    : joint.fact().which();
            list.add(texts.get(
                    "records.unproven.tightened", fasteners, joint.fact().value()));
        }
        boolean isUntold = build.tool() != null && build.joints().isEmpty();
        add(list, isUntold ? "records.unproven.untold" : "records.unproven.note", repair.note());
        add(list, "records.unproven.second", repair.second());
        add(list, "records.unproven.ran", lives.life(build.ran()));
        return measures.row(list);
    }

    private void add(List<String> list, String key, String what) {
        if (!what.isEmpty()) {
            list.add(texts.get(key, what));
        }
    }

    private String marks(List<Entry<Part>> parts) {
        return parts.isEmpty()
                ? ""
                : measures.all(parts.stream().map(part -> part.fact().mark()).toList());
    }
}
