package witnessmark.desktop.shell;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** What this program is, what it cannot tell, where it keeps things, and whose work it uses. */
final class AboutPage {
    private final Texts texts;
    private final AboutFacts facts;

    AboutPage(Texts texts, AboutFacts facts) {
        this.texts = texts;
        this.facts = facts;
    }

    JComponent component() {
        JPanel page = new JPanel(new FormLayout("insets 0, gap 14, fillx, wrap", "[0::,grow,fill]"));
        page.setOpaque(false);
        page.add(program());
        page.add(listed("shell.about.cautions", "shell.about.caution."));
        page.add(licences());
        return new ScrollPage(page);
    }

    private Sheet program() {
        Sheet sheet = new Sheet("[pref:pref:,fill][0::,grow,fill][]");
        sheet.add(Lettering.line(texts.get("shell.program"), Styles.SECTION), "span, wrap 8");
        sheet.add(Lettering.paragraph(texts.get("shell.about.job"), Styles.FIELD_LABEL), "span, growx, wmin 0, wrap 8");
        fact(sheet, texts.get("shell.about.version"), facts.version());
        fact(sheet, texts.get("shell.about.java"), System.getProperty("java.version"));
        for (AboutFacts.Kept kept : facts.paths()) {
            sheet.add(Lettering.line(kept.what(), Styles.QUIET_INK));
            JLabel path = Lettering.cutLine(kept.path(), Styles.FIELD_LABEL);
            sheet.add(path, "wmin 0");
            var copy = Buttons.link(Caption.of(texts.get("shell.about.copy")), () -> copy(kept.path()));
            copy.getAccessibleContext().setAccessibleName(texts.get("shell.about.copyPath", kept.what()));
            sheet.add(copy, "wrap");
        }
        return sheet;
    }

    private static void fact(Sheet sheet, String what, String value) {
        sheet.add(Lettering.line(what, Styles.QUIET_INK));
        sheet.add(Lettering.line(value, Styles.FIELD_LABEL), "wmin 0, span, wrap");
    }

    private Sheet listed(String heading, String stem) {
        Sheet sheet = new Sheet("[0::,grow,fill]");
        sheet.add(Lettering.line(texts.get(heading), Styles.SECTION), "wrap 8");
        for (int i = 1; texts.has(stem + i); i++) {
            sheet.add(Lettering.paragraph(texts.get(stem + i), Styles.FIELD_LABEL), "growx, wmin 0, wrap 6");
        }
        return sheet;
    }

    private Sheet licences() {
        Sheet sheet = new Sheet("[pref:pref:,fill][0::,grow,fill]");
        sheet.add(Lettering.line(texts.get("shell.about.licences"), Styles.SECTION), "span, wrap 8");
        for (int i = 1; texts.has("shell.about.library." + i); i++) {
            sheet.add(Lettering.line(texts.get("shell.about.library." + i), Styles.FIELD_LABEL));
            sheet.add(Lettering.line(texts.get("shell.about.licence." + i), Styles.QUIET_INK), "wmin 0, wrap");
        }
        return sheet;
    }

    private static void copy(String path) {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(path), null);
    }
}
