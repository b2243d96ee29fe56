package witnessmark.desktop.traces;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormFoot;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SideBySide;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The page: the file, what it leaves open, what the engine did and how it was read, and beside that its run. */
final class TracePanel extends JPanel {
    private static final String EMPTY = "empty";
    private static final String READING = "reading";
    private static final String FOUND = "found";
    private static final int SIDE = 430;
    private static final int BESIDE_FROM = 960;

    private final transient Texts texts;
    private final NoticeStrip notice = new NoticeStrip();
    private final JLabel file = Lettering.cutLine("", Styles.SECTION);
    private final JLabel about = Lettering.cutLine("", Styles.NOTE);
    private final CardLayout cards = new CardLayout();
    private final JPanel body = new JPanel(cards);
    private final JTabbedPane tabs = new JTabbedPane();
    private final JProgressBar bar = new JProgressBar(0, 1000);
    private final JLabel progress = Lettering.line(" ", Styles.FIELD_LABEL);
    private final JButton choose;
    private final JButton stop;
    private final JButton another;
    private final JButton log;
    private final JButton next;
    private final JButton first;
    private final JButton aside;
    private final JButton watch;
    private final JButton unwatch;
    private final JTextArea waiting = Lettering.paragraph("", Styles.STRONG);
    private final JTextArea watched = Lettering.paragraph("", Styles.FIELD_LABEL);
    private final JTextArea passed = Lettering.paragraph("", Styles.NOTE);
    private final JButton save;
    private final FormFoot foot;
    private final transient QuestionsPane questions;

    /** What the page does. */
    record Doing(
            Runnable choose,
            Runnable stop,
            Runnable log,
            Runnable next,
            Runnable aside,
            Runnable watch,
            Runnable unwatch,
            Runnable leave,
            Runnable save) {}

    TracePanel(Texts texts, Doing doing, QuestionsPane questions, DidPane did, ReadPane read, ForRunPane forRun) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]0[]8[0::,grow,fill]8[]"));
        this.texts = texts;
        this.questions = questions;
        setOpaque(false);
        choose = button("traces.choose", doing.choose());
        another = button("traces.another", doing.choose());
        stop = button("traces.stop", doing.stop());
        log = button("traces.log", doing.log());
        next = button("traces.next", doing.next());
        first = button("traces.first", doing.next());
        aside = button("traces.aside", doing.aside());
        watch = button("traces.watch", doing.watch());
        unwatch = button("traces.unwatch", doing.unwatch());
        save = Buttons.main(Caption.of(texts.get("traces.save")), Keys.menu(KeyEvent.VK_ENTER), doing.save());
        foot = new FormFoot(List.of(button("traces.leave", doing.leave()), another, next, aside, log, save));
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_TYPE, "underlined");
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TAB_HEIGHT, 28);
        tabs.putClientProperty(FlatClientProperties.STYLE, "background: $Wm.sheet");
        tabs.addTab(texts.get("traces.tab.did"), did.component());
        tabs.addTab(texts.get("traces.tab.read"), read.component());
        tabs.getAccessibleContext().setAccessibleName(texts.get("traces.tabs"));
        body.setOpaque(false);
        body.add(empty(), EMPTY);
        body.add(reading(), READING);
        body.add(found(questions, forRun), FOUND);
        add(notice, "cell 0 0, growx, gapbottom 6");
        add(head(), "cell 0 1, growx, wmin 0");
        add(body, "cell 0 2, grow, w 0:0:, h 0:0:");
        add(foot, "cell 0 3, growx, wmin 0");
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_ENTER), "wm-save", doing.save());
        FormKeys.bindWithin(this, Keys.plain(KeyEvent.VK_ESCAPE), "wm-leave", () -> {
            if (bar.isShowing()) {
                doing.stop().run();
            } else {
                doing.leave().run();
            }
        });
        showEmpty();
    }

    private JButton button(String key, Runnable work) {
        return Buttons.plain(Caption.of(texts.get(key)), work);
    }

    private JPanel head() {
        JPanel head = new JPanel(new FormLayout("insets 0, gap 12 0, fillx", "[pref!][0::,grow,fill]", "[baseline]"));
        head.setOpaque(false);
        head.add(file, "wmin 0, wmax 60%");
        head.add(about, "wmin 0");
        return head;
    }

    private JComponent empty() {
        Sheet sheet = new Sheet("fill, wrap, hidemode 3", "[0::,grow,center]", "push[]8[]14[]26[]8[]8[]8[]push");
        sheet.add(Lettering.line(texts.get("traces.empty"), Styles.SECTION), "wmin 0");
        sheet.add(Lettering.paragraph(texts.get("traces.empty.more"), Styles.FIELD_LABEL), "w 200:520:, wmin 0");
        sheet.add(choose);
        sheet.add(waiting, "w 200:520:, wmin 0");
        sheet.add(watched, "w 200:520:, wmin 0");
        sheet.add(passed, "w 200:520:, wmin 0");
        JPanel ways = new JPanel(new FormLayout("insets 0, gap 8, hidemode 3"));
        ways.setOpaque(false);
        List.of(first, watch, unwatch).forEach(ways::add);
        sheet.add(ways);
        return sheet;
    }

    private JComponent reading() {
        Sheet sheet = new Sheet("fill, wrap", "[0::,grow,center]", "push[]8[]14[]push");
        sheet.add(progress, "wmin 0");
        sheet.add(bar, "w 200:420:, h 8!");
        sheet.add(stop);
        bar.getAccessibleContext().setAccessibleName(texts.get("traces.reading.bar"));
        return sheet;
    }

    private JComponent found(QuestionsPane questions, ForRunPane forRun) {
        Sheet left = new Sheet("fill", "[0::,grow,fill]", "[0::,grow,fill]");
        left.add(tabs, "grow, wmin 0, h 420:420:");
        SideBySide both = new SideBySide(left, forRun.component(), SIDE, BESIDE_FROM);
        JPanel page =
                new JPanel(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]8[grow,fill]"));
        page.setOpaque(false);
        page.add(questions.component(), "cell 0 0, growx, wmin 0");
        page.add(both, "cell 0 1, grow, wmin 0");
        return new ScrollPage(page);
    }

    // Showing

    void showEmpty() {
        file.setText("");
        about.setText("");
        notice.dismiss();
        card(EMPTY);
    }

    /** @param why sentences, a line for each */
    void showFailed(String name, List<String> why) {
        file.setText(name);
        about.setText("");
        notice.say(why, List::of);
        card(EMPTY);
    }

    void showReading(String name) {
        file.setText(name);
        about.setText("");
        notice.dismiss();
        bar.setIndeterminate(true);
        progress.setText(texts.get("traces.reading"));
        card(READING);
    }

    /**
     * How far it is.
     *
     * @param share of it, in thousandths; -1 when that is not known
     */
    void progress(int share, String words) {
        bar.setIndeterminate(share < 0);
        bar.setValue(Math.max(0, share));
        progress.setText(words);
    }

    /**
     * What is read, its panes filled already.
     *
     * @param told what is to be known and needs no answer
     * @param figures whether anything was worked out
     */
    void showFound(String name, String said, List<String> told, boolean figures) {
        file.setText(name);
        about.setText(said);
        List<String> all = new ArrayList<>(told);
        notice.say(all, List::of);
        tabs.setEnabledAt(0, figures);
        if (!figures) {
            tabs.setSelectedIndex(1);
        }
        card(FOUND);
    }

    /** How the file was read comes into view. */
    void showRead() {
        tabs.setSelectedIndex(1);
    }

    /** Back to what the engine did, once it is known. */
    void showDid() {
        tabs.setSelectedIndex(0);
    }

    private void card(String name) {
        cards.show(body, name);
        boolean found = name.equals(FOUND);
        another.setVisible(found);
        log.setVisible(found);
        save.setVisible(found);
        revalidate();
        repaint();
    }

    /** What can be done now. */
    void can(boolean canLog, boolean canSave, boolean canSetAside, int left) {
        log.setEnabled(canLog);
        save.setEnabled(canSave);
        aside.setVisible(canSetAside);
        next.setVisible(left > 0 && save.isVisible());
        next.setText(Caption.of(texts.get("traces.next", left)).text());
        revalidate();
    }

    /**
     * What of the folder at the track.
     *
     * @param said what waits; empty for nothing
     * @param state which folder is watched and what became of it; empty for none
     * @param lines what lies in it and does not wait, each with why
     */
    void watching(String said, String state, List<String> lines) {
        waiting.setText(said);
        waiting.setVisible(!said.isEmpty());
        first.setVisible(!said.isEmpty());
        passed.setText(String.join("\n", lines));
        passed.setVisible(!lines.isEmpty());
        watched.setText(state.isEmpty() ? texts.get("traces.watch.none") : state);
        watch.setText(Caption.of(texts.get(state.isEmpty() ? "traces.watch" : "traces.watch.another"))
                .text());
        unwatch.setVisible(!state.isEmpty());
        revalidate();
    }

    void say(String line) {
        foot.draft(line);
    }

    JTabbedPane tabs() {
        return tabs;
    }

    JComponent firstFocus(TraceModel model, ForRunPane forRun) {
        return questions.firstOpen(model).orElseGet(forRun::first);
    }

    JButton chooseButton() {
        return choose;
    }

    JButton stopButton() {
        return stop;
    }

    JButton saveButton() {
        return save;
    }

    JButton asideButton() {
        return aside;
    }

    JButton logButton() {
        return log;
    }

    String said() {
        return notice.sentence();
    }

    boolean isReading() {
        return stop.isShowing() || bar.isShowing();
    }
}
