package witnessmark.desktop.cases;

import java.util.List;
import witnessmark.wording.WayLines;

/**
 * The investigation of an incident in words.
 *
 * @param incident the text form of its identity
 * @param mark the short name it goes by
 * @param way the engine's way up to it
 * @param evidence findings against causes
 * @param prompts what the trade asks
 * @param others incidents it can be laid beside
 */
public record CaseLines(
        String incident,
        String mark,
        WayLines way,
        EvidenceLines evidence,
        PromptLines prompts,
        List<BesideLines.Other> others) {
    static final CaseLines NONE = new CaseLines("", "", WayLines.NONE, EvidenceLines.NONE, PromptLines.NONE, List.of());

    public CaseLines {
        others = List.copyOf(others);
    }
}
