package witnessmark.desktop.start;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javax.swing.JComponent;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.domain.Person;
import witnessmark.wording.Texts;

/** Asks who is writing: one of the people written down. No log-in; the name goes into the history of each entry. */
final class WhoPage implements Aside {
    private final StartContext context;
    private final Texts texts;
    private final Runnable close;
    private final ChoiceBox<String> who;
    private final Asking page;

    /**
     * @param addPerson shows the sheet that adds somebody
     * @param close takes this page away
     */
    WhoPage(StartContext context, Runnable addPerson, Runnable close) {
        this.context = context;
        this.texts = context.texts();
        this.close = close;
        who = new ChoiceBox<>(texts, Caption.of(texts.get("beforewego.who.name")), Function.identity());
        who.load(names(context), context.logbook().who());
        who.note(texts.get("beforewego.who.note"));
        Sheet sheet = new Sheet("fillx, aligny top", "[0::560,grow,fill][]", "");
        sheet.add(Lettering.line(texts.get("beforewego.who"), Styles.SECTION), "span, wrap");
        sheet.add(Lettering.paragraph(texts.get("beforewego.who.about"), Styles.NOTE), "span, growx, wmin 0, wrap 8");
        sheet.add(who, "growx");
        sheet.add(Buttons.plain(Caption.of(texts.get("beforewego.who.add")), addPerson), "aligny top, gaptop 20, wrap");
        page = new Asking(context, sheet, texts.get("beforewego.who.take"), this::take, close);
    }

    @Override
    public String heading() {
        return texts.get("beforewego.who");
    }

    @Override
    public JComponent component() {
        return page.component();
    }

    @Override
    public List<String> help() {
        return List.of("help.who");
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
