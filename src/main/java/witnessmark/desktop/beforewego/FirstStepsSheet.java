package witnessmark.desktop.beforewego;

import javax.swing.JButton;
import javax.swing.JLabel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.logbook.standing.FirstSteps;
import witnessmark.wording.Texts;

/** How a new logbook is begun, in order; what is done ticks itself off. */
final class FirstStepsSheet {
    /** Under the buttons, its words where theirs begin. */
    private static final String LINK = "skip 1, span 2, growx 0, pad 0 -14 0 -14, gaptop 8, wrap";

    private final Sheet sheet = new Sheet("fillx, aligny top", "[18!]14[260:pref:,fill]16[0::,grow,fill]", "");
    private final Texts texts;
    private final BeginActions actions;
    private final Runnable importSeason;
    private JButton next = new JButton();

    FirstStepsSheet(Texts texts, BeginActions actions, Runnable importSeason) {
        this.texts = texts;
        this.actions = actions;
        this.importSeason = importSeason;
    }

    Sheet component() {
        return sheet;
    }

    void show(FirstSteps steps) {
        sheet.removeAll();
        sheet.add(Lettering.line(texts.get("beforewego.steps"), Styles.SECTION), "span, wrap");
        sheet.add(Lettering.paragraph(texts.get("beforewego.steps.note"), Styles.NOTE), "span, growx, wmin 0, wrap 8");
        JButton car = step("beforewego.step.car", steps.car(), actions.addCar());
        JButton engine = step("beforewego.step.engine", steps.engine(), actions.addEngine());
        JButton run = step("beforewego.step.run", steps.run(), actions.logRun());
        next = !steps.car() ? car : !steps.engine() ? engine : run;
        Styles.as(Styles.MAIN, next);
        if (steps.engine()) {
            sheet.add(Buttons.link(Caption.of(texts.get("beforewego.step.limits")), actions.listLimits()), LINK);
        }
        sheet.add(Buttons.link(Caption.of(texts.get("beforewego.step.import")), importSeason), LINK);
        sheet.revalidate();
        sheet.repaint();
    }

    /** The step to be done next. */
    JButton next() {
        return next;
    }

    private JButton step(String key, boolean done, Runnable work) {
        sheet.add(new Hairline(), "span, growx, wrap 8");
        sheet.add(new JLabel(new TickIcon(done)));
        Caption caption = Caption.of(texts.get(key));
        JButton button = Buttons.plain(caption, work);
        if (done) {
            button.getAccessibleContext().setAccessibleName(texts.get("beforewego.step.done", caption.text()));
            button.setText(texts.get("beforewego.step.done", caption.text()));
        }
        sheet.add(button, "growx");
        sheet.add(Lettering.cutLine(texts.get(key + ".note"), Styles.NOTE), "wmin 0, wrap 8");
        return button;
    }
}
