package witnessmark.desktop.cases;

import javax.swing.JComponent;

/** The parts of the investigation that a page puts where they belong. */
public final class CaseView {
    private final EvidenceSection evidence;

    public CaseView(CaseDoing doing) {
        this.evidence = new EvidenceSection(doing);
    }

    /** Findings against causes. */
    public JComponent evidence() {
        return evidence;
    }

    public void show(CaseLines lines) {
        evidence.show(lines);
    }

    EvidenceSection section() {
        return evidence;
    }
}
