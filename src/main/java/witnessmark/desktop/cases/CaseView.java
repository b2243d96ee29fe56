package witnessmark.desktop.cases;

import javax.swing.JComponent;

/** The parts of the investigation that a page puts where they belong. */
public final class CaseView {
    private final WaySection way;
    private final EvidenceSection evidence;

    public CaseView(CaseDoing doing) {
        this.way = new WaySection(doing.tools());
        this.evidence = new EvidenceSection(doing);
    }

    /** The engine's way up to it. */
    public JComponent way() {
        return way;
    }

    /** Findings against causes. */
    public JComponent evidence() {
        return evidence;
    }

    public void show(CaseLines lines) {
        way.show(lines.way());
        evidence.show(lines);
    }

    WaySection waySection() {
        return way;
    }

    EvidenceSection section() {
        return evidence;
    }
}
