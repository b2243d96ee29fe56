package witnessmark.desktop.start;

import witnessmark.desktop.form.FormKeys;
import java.awt.event.KeyEvent;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import witnessmark.desktop.beforewego.Aside;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.Person;
import witnessmark.wording.Texts;

/** Asks who is writing: one of the people written down. No log-in; the name goes into the history of each entry. */
final class WhoPage implements Aside {
    private final StartContext context;
    private final Texts texts;
    private final Runnable close;
    private final ChoiceBox<String> who;
    private final JPanel page = new JPanel(new MigLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));

    /**
     * @param addPerson shows the sheet that adds somebody
     * @param close takes this page away
     */
    WhoPage(StartContext context, Runnable addPerson, Runnable close) {
        this.context = context;
        this.texts = context.texts();
        this.close = close;
        who = new ChoiceBox<>(Caption.of(texts.get("beforewego.who.name")), Function.identity());
        who.load(names(context), context.logbook().who());
        who.note(texts.get("beforewego.who.note"));
        Sheet sheet = new Sheet("fillx, aligny top", "[0::560,grow,fill][]", "");
        sheet.add(Lettering.line(texts.get("beforewego.who"), Styles.SECTION), "span, wrap");
        sheet.add(Lettering.paragraph(texts.get("beforewego.who.about"), Styles.NOTE), "span, growx, wmin 0, wrap 8");
        sheet.add(who, "growx");
        sheet.add(Buttons.plain(Caption.of(texts.get("beforewego.who.add")), addPerson), "aligny top, gaptop 20, wrap");
        JPanel foot = new JPanel(new MigLayout("insets 0, gap 8", "push[][]"));
        foot.setOpaque(false);
        foot.add(Buttons.plain(Caption.of(texts.get("beforewego.cancel")), close), "tag cancel");
        foot.add(
                Buttons.main(Caption.of(texts.get("beforewego.who.take")), Keys.menu(KeyEvent.VK_ENTER), this::take),
                "tag ok");
        sheet.add(foot, "growx, gaptop 10, wrap");
        page.setOpaque(false);
        page.add(new ScrollPage(sheet), "grow");
        FormKeys.bindWithin(page, Keys.menu(KeyEvent.VK_ENTER), "take", this::take);
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "cancel", close);
    }

    @Override
    public String heading() {
        return texts.get("beforewego.who");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return who.combo();
    }

    /** Whoever writes now, the people written down, and whoever the computer says sits here. */
    static List<String> names(StartContext context) {
        Set<String> names = new LinkedHashSet<>();
        names.add(context.logbook().who());
        context.logbook()
                .logbook()
                .facts()
                .of(Person.class)
                .inForce()
                .map(person -> person.fact().name())
                .sorted(String.CASE_INSENSITIVE_ORDER)
                .forEach(names::add);
        names.add(context.here().who());
        return List.copyOf(names);
    }

    private void take() {
        String name = who.chosen();
        if (name != null) {
            context.logbook().writesNow(name);
            new LastWriter(context.settings(), context.logbook().logbook().path()).is(name);
            context.window().writing(name);
        }
        close.run();
    }
}
