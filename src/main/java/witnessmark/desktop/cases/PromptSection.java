package witnessmark.desktop.cases;

import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Texts;

/** What the trade asks of a failure with such marks, marked as that; each cause can be taken as one to consider. */
final class PromptSection extends JPanel {
    private final Texts texts;
    private final transient CaseDoing doing;
    private final JButton toggle;
    private final JPanel body = new JPanel(new FormLayout("insets 0, gap 0 2, fillx, wrap", "[0::,grow,fill]"));
    private transient PromptLines shown = PromptLines.NONE;
    private String incident = "";

    PromptSection(CaseDoing doing) {
        super(new FormLayout("insets 0, gap 0 3, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        this.doing = doing;
        this.texts = doing.tools().texts();
        setOpaque(false);
        body.setOpaque(false);
        toggle = Buttons.link(Caption.of(texts.get("cases.prompts.show")), () -> open(!body.isVisible()));
        JPanel head = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[0::,grow,fill]8[]", "[baseline]"));
        head.setOpaque(false);
        head.add(Lettering.cutLine(texts.get("cases.prompts"), Styles.SECTION), "wmin 0");
        head.add(toggle);
        add(new Hairline(), "growx, wmin 0, gaptop 6");
        add(head, "growx, wmin 0");
        add(body, "growx, wmin 0");
    }

    private void open(boolean yes) {
        body.setVisible(yes);
        Caption.of(texts.get(yes ? "cases.prompts.hide" : "cases.prompts.show")).on(toggle);
        revalidate();
    }

    void show(PromptLines lines, String of) {
        if (lines.equals(shown) && of.equals(incident)) {
            return;
        }
        boolean another = !of.equals(incident);
        shown = lines;
        incident = of;
        body.removeAll();
        body.add(Lettering.paragraph(texts.get("cases.prompts.note"), Styles.NOTE), "growx, wmin 0");
        lines.all().forEach(this::put);
        if (another) {
            open(lines.atOnce());
        }
        revalidate();
    }

    private void put(PromptLines.Prompt prompt) {
        JPanel head = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[0:pref:]8[0::,grow,fill]", "[baseline]"));
        head.setOpaque(false);
        JLabel name = Lettering.cutLine(prompt.name(), Styles.STRONG);
        head.add(name, "wmin 0");
        head.add(Lettering.cutLine(prompt.by(), Styles.NOTE), "wmin 0");
        body.add(head, "growx, wmin 0, gaptop 6");
        body.add(Lettering.paragraph(prompt.look(), Styles.FIELD_LABEL), "growx, wmin 0");
        body.add(Lettering.paragraph(prompt.ask(), Styles.FIELD_LABEL), "growx, wmin 0");
        if (!prompt.causes().isEmpty()) {
            body.add(Lettering.paragraph(texts.get("cases.prompts.causes"), Styles.NOTE), "growx, wmin 0");
        }
        prompt.causes().forEach(cause -> body.add(cause(cause, prompt.predicts()), "growx 0, wmin 0"));
    }

    /** Words that take a cause as one to consider: its sheet, filled. */
    private JButton cause(String cause, String predicts) {
        JButton link = Buttons.link(
                new Caption(cause, -1),
                () -> doing.write().accept(Prefilled.considering(Id.<Incident>parse(incident), cause, predicts)));
        String take = texts.get("cases.prompts.take", cause);
        link.getAccessibleContext().setAccessibleName(take);
        link.setToolTipText(take);
        return link;
    }
}
