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
        return texts.get("engines.unproven_build", build.build().fact().number());
    }

    /** "Closed at the track 5 Jul, not measured". */
    public String closed(UnprovenBuild build) {
        return texts.get(
                "engines.unproven_build.closed",
                measures.shortDate(build.since().day()));
    }

    /** "opened head, in HG-9, out HG-6, went back springs, wrench W-01, second pair of eyes Jo, ran 0.45 h since". */
    public String list(UnprovenBuild build) {
        TrackRepair repair = build.repair().fact();
        List<String> list = new ArrayList<>();
        add(
                list,
                "engines.unproven_build.opened",
                measures.all(
                        build.build().fact().zones().stream().map(records::word).toList()));
        add(list, "engines.unproven_build.in", marks(build.wentIn()));
        add(list, "engines.unproven_build.out", marks(build.cameOut()));
        add(list, "engines.unproven_build.back", repair.wentBack());
        add(
                list,
                "engines.unproven_build.tool",
                build.tool() == null ? "" : build.tool().fact().mark());
        for (Entry<Joint> joint : build.joints()) {
            String fasteners = joint.fact().which().isEmpty()
                    ? records.word(joint.fact().fasteners())
                    : joint.fact().which();
            list.add(texts.get(
                    "engines.unproven_build.tightened", fasteners, joint.fact().value()));
        }
        boolean isUntold = build.tool() != null && build.joints().isEmpty();
        add(list, isUntold ? "engines.unproven_build.untold" : "engines.unproven_build.note", repair.note());
        add(list, "engines.unproven_build.second", repair.second());
        add(list, "engines.unproven_build.ran", lives.life(build.ran()));
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
