package witnessmark.desktop.builds;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Function;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.form.TwoPanes;
import witnessmark.logbook.building.BuildField;
import witnessmark.wording.Texts;

/** The page: which build and how much of it is open, the lists, beside them the fields, and the foot. */
final class BuildPanel extends JPanel {
    private final transient Texts texts;
    private final NoticeStrip notice = new NoticeStrip();
    private final JLabel title = Lettering.cutLine("", Styles.SECTION);
    private final JLabel span = Lettering.cutLine("", Styles.NOTE);
    private final JLabel signed = Lettering.cutLine("", Styles.NOTE);
    private final SeamMark mark = new SeamMark(SeamState.NOT_KNOWN, "", "");
    private final JLabel headline = Lettering.cutLine("", Styles.STRONG);
    private final ChoiceBox<Option> earlier;
    private final JButton copy;
    private final JButton tighten;
    private final JButton sheet;
    private final JButton sign;
    private final JButton anew;
    private final JButton turn;
    private final transient BuildTables tables;
    private final transient SidePane side;
    private final TwoPanes panes;
    private final NoticeStrip refused = new NoticeStrip();
    private final FormFoot foot;

    /** What the page does. */
    record Doing(
            Runnable save,
            Runnable copy,
            Runnable tighten,
            Runnable sheet,
            Runnable sign,
            Runnable anew,
            Runnable leave) {}

    BuildPanel(SheetTools tools, Doing doing, SidePane side) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]0[]8[0::,grow,fill]8[]0[]"));
        this.texts = tools.texts();
        this.side = side;
        setOpaque(false);
        earlier = new ChoiceBox<>(texts, Caption.of(texts.get("builds.copy.from")), Option::words);
        copy = Buttons.plain(Caption.of(texts.get("builds.copy")), doing.copy());
        copy.setToolTipText(texts.get("builds.copy.tip"));
        tighten = Buttons.plain(Caption.of(texts.get("builds.tighten")), doing.tighten());
        sheet = Buttons.plain(Caption.of(texts.get("builds.sheet")), doing.sheet());
        sign = Buttons.plain(Caption.of(texts.get("builds.sign")), doing.sign());
        anew = Buttons.plain(Caption.of(texts.get("builds.anew")), doing.anew());
        turn = Buttons.plain(Caption.of(texts.get("builds.turn.side")), this::turn);
        tables = new BuildTables(tools, copying(), tightening());
        panes = new TwoPanes(tables.component(), side.component());
        foot = new FormFoot(List.of(
                Buttons.plain(Caption.of(texts.get("builds.leave")), doing.leave()),
                Buttons.main(Caption.of(texts.get("builds.save")), Keys.menu(KeyEvent.VK_ENTER), doing.save())));
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_ENTER), "wm-save", doing.save());
        add(notice, "cell 0 0, growx");
        add(head(), "cell 0 1, growx, wmin 0");
        add(panes, "cell 0 2, grow, w 0:0:, h 0:0:");
        add(refused, "cell 0 3, growx, wmin 0");
        add(foot, "cell 0 4, growx, wmin 0");
    }

    private JPanel head() {
        JPanel head = new JPanel(new FormLayout("insets 0, gap 12 2, fillx, hidemode 3", "[pref!][][0::,grow,fill][]"));
        head.setOpaque(false);
        JPanel buttons = new JPanel(new FormLayout("insets 0, gap 6 0, hidemode 3"));
        buttons.setOpaque(false);
        List.of(turn, sheet, sign, anew).forEach(buttons::add);
        head.add(title, "cell 0 0, wmin pref");
        head.add(mark, "cell 1 0");
        head.add(headline, "cell 2 0, wmin 0, spanx 2, growx");
        head.add(span, "cell 0 1, wmin 0, spanx 3, growx");
        head.add(buttons, "cell 3 1");
        head.add(signed, "cell 0 2, wmin 0, spanx 4, growx");
        turn.setVisible(false);
        return head;
    }

    private JPanel copying() {
        JPanel copying = new JPanel(new FormLayout("insets 0, gap 8", "[][]", "[center]"));
        copying.setOpaque(false);
        earlier.combo().setToolTipText(texts.get("builds.copy.from"));
        copying.add(earlier.combo(), "w 60:130:");
        copying.add(copy);
        return copying;
    }

    private JPanel tightening() {
        JPanel row = new JPanel(new FormLayout("insets 0, gap 8, fillx", "[0::,grow,fill][]", "[center]"));
        row.setOpaque(false);
        row.add(Lettering.cutLine(texts.get("builds.joints"), Styles.SECTION), "wmin 0");
        row.add(tighten);
        return row;
    }

    @Override
    public void doLayout() {
        super.doLayout();
        named();
    }

    private void named() {
        turn.setVisible(!panes.both());
        turn.setText(Caption.of(texts.get(panes.sideFirst() ? "builds.turn.lists" : "builds.turn.side"))
                .text());
    }

    void turn() {
        panes.sideFirst(!panes.sideFirst());
        named();
    }

    /** Where there is room for one of the two alone, the fields come into view, or the lists. */
    void bring(boolean fields) {
        if (!panes.both() && panes.sideFirst() != fields) {
            turn();
        }
    }

    void show(BuildLines lines) {
        notice.dismiss();
        title.setText(lines.title());
        span.setText(lines.span());
        signed.setText(lines.signed());
        signed.setVisible(!lines.signed().isEmpty());
        String worst = new StateWords(texts).of(lines.state());
        boolean any = !lines.gaps().isEmpty();
        mark.show(lines.state(), worst, lines.headline());
        mark.setVisible(any);
        headline.setText(
                any
                        ? texts.get("builds.open.worst", lines.headline(), worst.toLowerCase(texts.locale()))
                        : lines.headline());
        tables.show(lines);
        tighten.setEnabled(lines.open());
        sign.setVisible(!lines.open());
        anew.setVisible(!lines.open());
        copy.setEnabled(lines.open());
        earlier.combo().setEnabled(lines.open());
        foot.setVisible(lines.open());
    }

    /**
     * Builds whose parts list can be copied.
     *
     * @param keeps whether the one chosen stays chosen: on another build it is that one's own choice
     */
    void earlier(List<Option> builds, boolean keeps) {
        Option chosen = earlier.chosen();
        earlier.load(
                builds,
                keeps && builds.contains(chosen)
                        ? chosen
                        : builds.stream().findFirst().orElse(null));
        boolean any = !builds.isEmpty();
        earlier.combo().setVisible(any);
        copy.setVisible(any);
    }

    /** The build whose parts list is to be copied, by the text of its identity; empty for none. */
    String chosenEarlier() {
        Option chosen = earlier.chosen();
        return chosen == null ? "" : chosen.key();
    }

    /** What became of what is typed. */
    void foot(
            String draft,
            List<String> failures,
            List<BuildField> stopped,
            Function<BuildField, String> name,
            java.util.function.Consumer<BuildField> goTo) {
        foot.draft(draft);
        foot.look(
                texts.get("builds.look", stopped.size()),
                rest -> texts.get("builds.look.rest", rest),
                stopped,
                name,
                goTo);
        refused.say(failures, List::of);
    }

    void failed(String sentence, AbstractButton again) {
        notice.show(sentence, List.of(again));
    }

    JComponent firstFocus() {
        return tables.positions().table();
    }

    BuildTables tables() {
        return tables;
    }

    SidePane side() {
        return side;
    }

    JComboBox<Option> earlierCombo() {
        return earlier.combo();
    }
}
