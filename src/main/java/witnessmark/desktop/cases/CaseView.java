package witnessmark.desktop.cases;

import javax.swing.JComponent;

/** The parts of the investigation that a page puts where they belong. */
public final class CaseView {
    private final WaySection way;
    private final EvidenceSection evidence;
    private final PromptSection prompts;
    private final BesideSection beside;

    public CaseView(CaseDoing doing) {
        this.way = new WaySection(doing.tools());
        this.evidence = new EvidenceSection(doing);
        this.prompts = new PromptSection(doing);
        this.beside = new BesideSection(doing);
    }

    /** The engine's way up to it. */
    public JComponent way() {
        return way;
    }

    /** Findings against causes. */
    public JComponent evidence() {
        return evidence;
    }

    /** What the trade asks. */
    public JComponent prompts() {
        return prompts;
    }

    /** The incident beside another. */
    public JComponent beside() {
        return beside;
    }

    public void show(CaseLines lines) {
        way.show(lines.way());
        evidence.show(lines);
        prompts.show(lines.prompts(), lines.incident());
        beside.show(lines.others(), lines.incident());
    }
}
