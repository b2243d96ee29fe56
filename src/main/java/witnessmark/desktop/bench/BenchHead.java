package witnessmark.desktop.bench;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** Which build, what its sheet comes to, and who signed it. */
final class BenchHead extends JPanel {
    private final transient Texts texts;
    private final BuildChoice choice;
    private final SeamMark mark = new SeamMark(SeamState.NOT_KNOWN, "", "");
    private final JLabel headline = Lettering.cutLine("", Styles.SECTION);
    private final JLabel signed = Lettering.cutLine("", Styles.NOTE);
    private final JButton other;
    private final JButton speed;

    /**
     * @param chosen told the identity of another build
     * @param turn shows the answers where the sheet is seen alone, and back
     * @param print asks where to write the sheet's pages
     * @param atSpeed shows the fit at speed in place of the sheet, and back
     */
    BenchHead(Texts texts, Consumer<String> chosen, Runnable turn, Runnable print, Runnable atSpeed) {
        super(new MigLayout("insets 0, gap 14 0, fillx, hidemode 3", "[][24!][0::,grow,fill][][][]", "[bottom][top]"));
        this.texts = texts;
        setOpaque(false);
        choice = new BuildChoice(texts, chosen);
        other = Buttons.plain(Caption.of(texts.get("bench.turn.answers")), turn);
        add(choice, "cell 0 0, spany 2, w 120:300:300, aligny center");
        add(mark, "cell 1 0, spany 2, aligny center");
        add(headline, "cell 2 0, wmin 0");
        add(signed, "cell 2 1, wmin 0");
        speed = Buttons.plain(Caption.of(texts.get("bench.speed")), atSpeed);
        add(other, "cell 3 0, spany 2, aligny center");
        add(Buttons.plain(Caption.of(texts.get("buildsheet.button")), print), "cell 4 0, spany 2, aligny center");
        add(speed, "cell 5 0, spany 2, aligny center");
        other.setVisible(false);
        mark.setVisible(false);
    }

    void choices(List<BenchLines.Choice> all, BenchLines.@Nullable Choice chosen) {
        choice.show(all, chosen);
    }

    void show(BenchLines lines) {
        mark.setVisible(true);
        mark.show(lines.state(), texts.get("bench.mark"), lines.headline());
        mark.setIcon(new SeamIcon(lines.state()));
        headline.setText(lines.headline());
        signed.setText(lines.signed());
    }

    /** Puts a way to another page of the build behind all else. */
    void leadsTo(JButton page) {
        add(page, "cell 4 0, spany 2, aligny center");
    }

    /** What the button beside it does: nothing while both panes are seen. */
    void turn(boolean needed, boolean answersSeen) {
        other.setVisible(needed);
        other.setText(Caption.of(texts.get(answersSeen ? "bench.turn.sheet" : "bench.turn.answers"))
                .text());
    }

    /** What the button of the fit at speed does. */
    void speed(boolean seen) {
        Caption caption = Caption.of(texts.get(seen ? "bench.speed.back" : "bench.speed"));
        speed.setText(caption.text());
        speed.setMnemonic(caption.mnemonic());
    }

    JComponent firstFocus() {
        return choice.combo();
    }

    BuildChoice choice() {
        return choice;
    }
}
