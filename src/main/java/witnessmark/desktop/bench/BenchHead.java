package witnessmark.desktop.bench;

import com.formdev.flatlaf.util.UIScale;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** Which build, what its sheet comes to, and who signed it; in two rows where one would cut them. */
final class BenchHead extends JPanel {
    private static final int CHOICE = 300;
    private static final int GAP = 14;
    private static final int MARK = 24;

    private final transient Texts texts;
    private final BuildChoice choice;
    private final SeamMark mark = new SeamMark(SeamState.NOT_KNOWN, "", "");
    private final JLabel headline = Lettering.cutLine("", Styles.SECTION);
    private final JLabel signed = Lettering.cutLine("", Styles.NOTE);
    private final JPanel buttons = new JPanel(new FormLayout("insets 0, gap 8 0, hidemode 3"));
    private final JButton other;
    private final JButton speed;
    private boolean inTwoRows = true;

    /**
     * @param chosen told the identity of another build
     * @param turn shows the answers where the sheet is seen alone, and back
     * @param print asks where to write the sheet's pages
     * @param atSpeed shows the fit at speed in place of the sheet, and back
     */
    BenchHead(Texts texts, Consumer<String> chosen, Runnable turn, Runnable print, Runnable atSpeed) {
        this.texts = texts;
        setOpaque(false);
        choice = new BuildChoice(texts, chosen);
        FormKeys.bindInWindow(this, Keys.alt(KeyEvent.VK_B), "wm-which-build", this::toChoice);
        other = Buttons.plain(Caption.of(texts.get("bench.turn.answers")), turn);
        speed = Buttons.plain(Caption.of(texts.get("bench.speed")), atSpeed);
        tip(speed, "bench.speed.tip");
        JButton paper = Buttons.plain(Caption.of(texts.get("buildsheet.button")), print);
        paper.setToolTipText(texts.get("bench.print.tip", Keys.words(Keys.menu(KeyEvent.VK_P))));
        buttons.setOpaque(false);
        buttons.add(other);
        buttons.add(paper);
        buttons.add(speed);
        add(choice);
        add(mark);
        add(headline);
        add(signed);
        add(buttons);
        place(false);
        other.setVisible(false);
        mark.setVisible(false);
    }

    /** Says in its tooltip what a button does, and by which letter it is reached. */
    private void tip(JButton button, String key) {
        String said = texts.get(key);
        int letter = button.getMnemonic();
        button.setToolTipText(letter == 0 ? said : texts.get("bench.tip", said, Keys.words(Keys.alt(letter))));
    }

    private void toChoice() {
        if (isShowing()) {
            choice.combo().requestFocusInWindow();
        }
    }

    @Override
    public void doLayout() {
        int beside = UIScale.scale(CHOICE + MARK + 3 * GAP) + buttons.getPreferredSize().width;
        int whole = headline.getPreferredSize().width;
        int words = Math.max(whole, signed.getPreferredSize().width * 2 / 3); // who signed it may be cut
        boolean cut = getWidth() > 0 && beside + words > getWidth();
        if (cut != inTwoRows) {
            place(cut);
            revalidate();
        }
        super.doLayout();
    }

    /** Nothing is taken out on the way: the focus would be lost. */
    private void place(boolean two) {
        inTwoRows = two;
        FormLayout layout = two
                ? new FormLayout("insets 0, gap 10 0, fillx, hidemode 3", "[24!][0::,grow,fill][]", "[]4[][]")
                : new FormLayout("insets 0, gap 14 0, fillx, hidemode 3", "[][24!][0::,grow,fill][]", "[bottom][top]");
        setLayout(layout);
        if (two) {
            layout.addLayoutComponent(choice, "cell 0 0, spanx 2, w 120:420:420, growx 0");
            layout.addLayoutComponent(buttons, "cell 2 0");
            layout.addLayoutComponent(mark, "cell 0 1, spany 2, aligny center");
            layout.addLayoutComponent(headline, "cell 1 1, spanx 2, wmin 0");
            layout.addLayoutComponent(signed, "cell 1 2, spanx 2, wmin 0");
        } else {
            layout.addLayoutComponent(choice, "cell 0 0, spany 2, w 120:300:300, aligny center");
            layout.addLayoutComponent(mark, "cell 1 0, spany 2, aligny center");
            layout.addLayoutComponent(headline, "cell 2 0, wmin 0");
            layout.addLayoutComponent(signed, "cell 2 1, wmin 0");
            layout.addLayoutComponent(buttons, "cell 3 0, spany 2, aligny center");
        }
    }

    void choices(List<BenchLines.Choice> all, BenchLines.@Nullable Choice chosen) {
        choice.show(all, chosen);
    }

    void show(BenchLines lines) {
        mark.setVisible(true);
        mark.show(lines.state(), texts.get("bench.mark"), lines.headline());
        mark.setIcon(new SeamIcon(lines.state()));
        headline.setText(lines.headline());
        headline.setToolTipText(lines.headline());
        signed.setText(lines.signed());
        signed.setToolTipText(lines.signed());
        revalidate();
    }

    /** Puts a way to another page of the build before the last button. */
    void leadsTo(JButton page) {
        tip(page, "bench.page.tip");
        buttons.add(page, buttons.getComponentCount() - 1);
    }

    /** What the button beside it does: nothing while both panes are seen. */
    void turn(boolean needed, boolean answersSeen) {
        other.setVisible(needed);
        words(other, answersSeen ? "bench.turn.sheet" : "bench.turn.answers");
    }

    /** What the button of the fit at speed does. */
    void speed(boolean seen) {
        words(speed, seen ? "bench.speed.back" : "bench.speed");
        tip(speed, seen ? "bench.speed.back.tip" : "bench.speed.tip");
    }

    private void words(JButton button, String key) {
        Caption caption = Caption.of(texts.get(key));
        button.setText(caption.text());
        button.setMnemonic(caption.mnemonic());
    }

    JComponent firstFocus() {
        return choice.combo();
    }

    BuildChoice choice() {
        return choice;
    }
}
