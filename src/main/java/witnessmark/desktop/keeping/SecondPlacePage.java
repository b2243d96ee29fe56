package witnessmark.desktop.keeping;

import java.awt.event.KeyEvent;
import java.time.InstantSource;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.shell.Aside;
import witnessmark.logbook.CopyElsewhere.Look;
import witnessmark.wording.Texts;

/** How things stand with the second place, for as long as somebody looks: a stick may come and go meanwhile. */
final class SecondPlacePage implements Aside {
    private final Texts texts;
    private final ElsewhereWords words;
    private final InstantSource clock;
    private final Runnable gone;
    private final JPanel page = new JPanel(new FormLayout("insets 0, fill", "[0::,grow,fill]", "[grow,fill]"));
    private final JTextArea line = Lettering.paragraph(" ", Styles.STRONG);
    private final JTextArea sentence = Lettering.paragraph(" ", Styles.FIELD_LABEL);
    private final JButton close;
    private final JButton stop;
    private final JButton choose;
    private final JButton change;

    /**
     * What the buttons do.
     *
     * @param close leaves the page, as Esc does
     * @param stop makes no more copies there
     * @param choose asks for a place
     * @param gone told when something else stands in the place of the page
     */
    record Ways(Runnable close, Runnable stop, Runnable choose, Runnable gone) {}

    SecondPlacePage(Texts texts, ElsewhereWords words, InstantSource clock, Ways ways) {
        this.texts = texts;
        this.words = words;
        this.clock = clock;
        this.gone = ways.gone();
        this.close = button("keeping.close", ways.close());
        this.stop = button("keeping.elsewhere.stop", ways.stop());
        this.choose = Styles.as(Styles.MAIN, button("keeping.elsewhere.choose", ways.choose()));
        this.change = button("keeping.elsewhere.change", ways.choose());
        page.setOpaque(false);
        page.add(sheet(), "grow");
        FormKeys.bindWithin(page, Keys.plain(KeyEvent.VK_ESCAPE), "close", ways.close());
    }

    /** Says how things stand now. */
    void show(Look look) {
        line.setText(words.line(look, clock.instant()));
        Styles.as(ElsewhereWords.isOnlyHere(look) ? Styles.QUERY : Styles.STRONG, line);
        sentence.setText(words.sentence(look, clock.instant()));
        boolean chosen = look.place() != null;
        stop.setVisible(chosen);
        change.setVisible(chosen);
        choose.setVisible(!chosen);
    }

    @Override
    public String heading() {
        return texts.get("keeping.elsewhere");
    }

    @Override
    public JComponent component() {
        return page;
    }

    @Override
    public JComponent firstFocus() {
        return choose.isVisible() ? choose : close;
    }

    @Override
    public List<String> help() {
        return List.of("help.elsewhere");
    }

    @Override
    public void gone() {
        gone.run();
    }

    private Sheet sheet() {
        Sheet sheet = new Sheet("fill, hidemode 3", "[0::,grow,fill]", "");
        sheet.add(Lettering.cutLine(heading(), Styles.SECTION), "wmin 0, wrap");
        sheet.add(line, "growx, wmin 0, wrap 4");
        sheet.add(sentence, "growx, wmin 0, wrap 4");
        sheet.add(
                Lettering.paragraph(texts.get("keeping.elsewhere.about"), Styles.FIELD_LABEL), "growx, wmin 0, wrap 4");
        JPanel foot = new JPanel(new FormLayout("insets 0, gap 8, alignx right, hidemode 3"));
        foot.setOpaque(false);
        List.of(stop, change, close, choose).forEach(foot::add);
        sheet.add(foot, "growx, pushy, aligny top");
        return sheet;
    }

    private JButton button(String key, Runnable work) {
        return Buttons.plain(Caption.of(texts.get(key)), work);
    }
}
