package witnessmark.desktop.bench;

import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
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
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.form.TwoPanes;
import witnessmark.desktop.lessons.LessonsView;
import witnessmark.desktop.speed.SpeedSide;
import witnessmark.domain.MeasurePlace;
import witnessmark.wording.Texts;

/** The page: which build above, its sheet, and beside it how its figures stand. */
final class BenchPanel extends JPanel {
    private final transient Texts texts;
    private final NoticeStrip notice = new NoticeStrip();
    private final JTextArea empty;
    private final BenchHead head;
    private final GridsView grids;
    private final AnswersView answers;
    private final JointsView joints;
    private final transient LessonsView lessons;
    private final Sheet asked = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");
    private final NoticeStrip refused = new NoticeStrip();
    private final FormFoot foot;
    private final LeftPane left;
    private final ScrollPage sidePage;
    private final TwoPanes panes;
    private String build = "";
    private @Nullable BenchLines shown;
    private final transient SpeedSide speed;

    /**
     * @param told hears of the fields
     * @param chosen told the identity of another build
     * @param sign opens what signs the sheet
     * @param print asks where to write the sheet's pages
     * @param save writes what is typed
     * @param lessons shows what lessons ask
     * @param speed what is seen in place of the sheet when somebody asks for it
     */
    BenchPanel(
            Texts texts,
            InHand inHand,
            GridsView.Told told,
            Consumer<String> chosen,
            Runnable sign,
            Runnable print,
            Runnable save,
            LessonsView lessons,
            SpeedSide speed) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[][]10[][0::,fill,grow]"));
        this.texts = texts;
        this.lessons = lessons;
        setOpaque(false);
        head = new BenchHead(texts, chosen, this::turn, print, this::turnToSpeed);
        this.speed = speed;
        grids = new GridsView(texts, told);
        answers = new AnswersView(texts);
        joints = new JointsView(texts);
        empty = Lettering.paragraph(texts.get("bench.empty"), Styles.QUIET_INK);
        empty.setVisible(false);
        foot = new FormFoot(List.of(
                Buttons.plain(Caption.of(texts.get("bench.sign")), sign),
                Buttons.main(Caption.of(texts.get("bench.save")), Keys.menu(KeyEvent.VK_ENTER), save)));
        foot.keepRoom();
        left = new LeftPane(inHand, grids.component(), refused, foot);
        sidePage = new ScrollPage(side());
        panes = new TwoPanes(left, sidePage);
        FormKeys.bindWithin(this, Keys.menu(KeyEvent.VK_ENTER), "wm-save", save);
        add(notice, "cell 0 0, growx");
        add(head, "cell 0 1, growx, wmin 0");
        add(empty, "cell 0 2, growx, wmin 0");
        add(panes, "cell 0 3, grow, w 0:0:, h 0:0:");
        speed.visible(false);
        add(speed.component(), "cell 0 3, grow, w 0:0:, h 0:0:");
    }

    private JPanel side() {
        JPanel side = new JPanel(new FormLayout("insets 0, gap 0 10, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        side.setOpaque(false);
        asked.add(Lettering.line(texts.get("lessons.line.asked"), Styles.SECTION));
        asked.add(lessons.component(), "growx, wmin 0");
        asked.setVisible(false);
        side.add(asked, "growx, wmin 0");
        side.add(answers.component(), "growx, wmin 0");
        side.add(joints.component(), "growx, wmin 0");
        return side;
    }

    @Override
    public void doLayout() {
        super.doLayout();
        head.turn(panes.isVisible() && !panes.both(), panes.sideFirst());
    }

    /** The fit at speed in place of the sheet, and back. */
    void turnToSpeed() {
        boolean seen = !speed.component().isVisible();
        speed.visible(seen);
        panes.setVisible(!seen);
        head.speed(seen);
        revalidate();
        repaint();
        (seen ? speed.firstFocus() : head.firstFocus()).requestFocusInWindow();
    }

    void turn() {
        panes.sideFirst(!panes.sideFirst());
        head.turn(!panes.both(), panes.sideFirst());
    }

    void none() {
        notice.dismiss();
        head.setVisible(false);
        panes.setVisible(false);
        speed.visible(false);
        head.speed(false);
        empty.setVisible(true);
    }

    void show(List<BenchLines.Choice> all, BenchLines lines) {
        notice.dismiss();
        head.setVisible(true);
        panes.setVisible(!speed.component().isVisible());
        empty.setVisible(false);
        head.choices(
                all,
                all.stream()
                        .filter(choice -> choice.id().equals(lines.build()))
                        .findFirst()
                        .orElse(null));
        grids.show(lines.steps());
        lines(lines);
        if (!lines.build().equals(build)) {
            build = lines.build();
            left.fromTop();
            sidePage.fromTop();
        }
    }

    /** How it stands, on the same sheet. */
    void lines(BenchLines lines) {
        if (lines == shown) {
            return;
        }
        shown = lines;
        head.show(lines);
        grids.lacking(lines.lacking());
        answers.show(lines);
        joints.show(lines.joints());
        asked.setVisible(!lines.lessons().isEmpty());
        lessons.show(lines.lessons());
    }

    /** Puts a way to the page of the build where it is looked for. */
    void leadsTo(String words, Runnable page) {
        head.leadsTo(Buttons.plain(Caption.of(words), page));
        grids.leadsTo(Caption.of(words).text(), page);
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    /** An earlier day is only looked at. */
    void editable(boolean yes) {
        grids.editable(yes);
        foot.setVisible(yes);
    }

    /** A field that needs a look, and why. */
    record Look(MeasurePlace place, String words) {}

    /** What became of what is typed. */
    void foot(String draft, String failure, List<Look> looks) {
        foot.draft(draft);
        foot.look(
                texts.get("bench.look", looks.size()),
                rest -> texts.get("bench.look.rest", rest),
                looks,
                look -> look.words().replace("&", "&&"),
                look -> focus(look.place()));
        refused.say(List.of(failure), List::of);
    }

    void large(boolean yes) {
        left.large(yes);
    }

    /** Goes to a field; the sheet comes into view for it. */
    void focus(MeasurePlace place) {
        if (!panes.both() && panes.sideFirst()) {
            turn();
        }
        grids.field(place).ifPresent(field -> {
            grids.hold(field);
            field.requestFocusInWindow();
            field.selectAll();
        });
    }

    JComponent firstFocus() {
        return head.firstFocus();
    }

    GridsView grids() {
        return grids;
    }

    AnswersView answers() {
        return answers;
    }

    LessonsView lessons() {
        return lessons;
    }

    JointsView joints() {
        return joints;
    }

    BenchHead head() {
        return head;
    }
}
