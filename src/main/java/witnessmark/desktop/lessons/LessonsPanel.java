package witnessmark.desktop.lessons;

import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** Every lesson on one sheet: what was learned, what it asks, and beside it which build sheets asked it. */
final class LessonsPanel extends JPanel {
    private final transient Texts texts;
    private final transient LessonsAsked asked;
    private final NoticeStrip notice = new NoticeStrip();
    private final JLabel sum = Lettering.cutLine("", Styles.STRONG);
    private final JButton write;
    private final Sheet sheet = new Sheet("fillx, hidemode 3", "[0::,grow 60,fill]24[24!][0::,grow 40,fill]", "");

    LessonsPanel(Texts texts, LessonsAsked asked) {
        super(new FormLayout("insets 0, gap 0, fill, hidemode 3", "[0::,grow,fill]", "[]0[]8[0::,grow,fill]"));
        this.texts = texts;
        this.asked = asked;
        setOpaque(false);
        write = Buttons.plain(Caption.of(texts.get("lessons.page.write")), asked.write());
        JPanel head = new JPanel(new FormLayout("insets 0, gap 8, fillx", "[0::,grow,fill][][]", "[center]"));
        head.setOpaque(false);
        head.add(sum, "wmin 0");
        head.add(write);
        head.add(Buttons.plain(Caption.of(texts.get("lessons.page.leave")), asked.leave()));
        add(notice, "cell 0 0, growx");
        add(head, "cell 0 1, growx, wmin 0");
        add(new ScrollPage(sheet), "cell 0 2, grow, w 0:0:, h 0:0:");
    }

    JComponent firstFocus() {
        return write;
    }

    void show(LessonsLines lines) {
        notice.dismiss();
        sum.setText(lines.sum());
        FocusStays.on(sheet, () -> fill(lines.lessons()), this::firstFocus);
    }

    void failed(String sentence, AbstractButton again) {
        notice.show(sentence, List.of(again));
    }

    private void fill(List<LessonsLines.Lesson> lessons) {
        sheet.removeAll();
        boolean first = true;
        for (LessonsLines.Lesson lesson : lessons) {
            if (!first) {
                sheet.add(new Hairline(), "newline, span 3, growx, gaptop 8, gapbottom 4");
            }
            first = false;
            int rows = Math.max(1, lesson.asked().size());
            sheet.add(told(lesson), "newline, spany " + rows + ", aligny top, growx, wmin 0");
            lesson.asked().forEach(each -> put(each, each == lesson.asked().get(0)));
            if (lesson.asked().isEmpty()) {
                sheet.add(Lettering.paragraph(lesson.never(), Styles.NOTE), "span 2, aligny top, growx, wmin 0");
            }
        }
        sheet.revalidate();
        sheet.repaint();
    }

    private JPanel told(LessonsLines.Lesson lesson) {
        JPanel told = new JPanel(new FormLayout("insets 0, gap 0 2, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        told.setOpaque(false);
        told.add(Lettering.paragraph(lesson.what(), Styles.STRONG), "growx, wmin 0");
        told.add(Lettering.paragraph(lesson.asks(), Styles.FIELD_LABEL), "growx, wmin 0");
        told.add(Lettering.paragraph(lesson.concerns(), Styles.NOTE), "growx, wmin 0");
        told.add(Lettering.paragraph(lesson.since(), Styles.NOTE), "growx, wmin 0");
        if (!lesson.withdrawn().isEmpty()) {
            told.add(Lettering.paragraph(lesson.withdrawn(), Styles.ECHO), "growx, wmin 0");
        }
        told.add(ways(lesson), "wmin 0");
        return told;
    }

    private JPanel ways(LessonsLines.Lesson lesson) {
        JPanel ways = new JPanel(new FormLayout("insets 0, gap 10 0"));
        ways.setOpaque(false);
        String incident = lesson.incident();
        if (incident != null) {
            ways.add(Buttons.link(
                    new Caption(lesson.from(), -1), () -> asked.incident().accept(incident)));
        }
        if (lesson.withdrawn().isEmpty()) {
            JButton withdraw = Buttons.link(
                    Caption.of(texts.get("lessons.page.withdraw")),
                    () -> asked.withdraw().accept(lesson.id()));
            withdraw.getAccessibleContext()
                    .setAccessibleName(texts.get(
                            "lessons.pair",
                            Caption.of(texts.get("lessons.page.withdraw")).text(),
                            lesson.what()));
            ways.add(withdraw);
        }
        return ways;
    }

    private void put(LessonsLines.Asked on, boolean first) {
        String row = first ? "" : "newline, skip 1, ";
        sheet.add(new SeamMark(on.state(), on.word(), on.name()), row + "aligny top, gaptop 4");
        JPanel said = new JPanel(new FormLayout("insets 0, gap 0, fillx, wrap", "[0::,grow,fill]"));
        said.setOpaque(false);
        JButton build =
                Buttons.link(new Caption(on.name(), -1), () -> asked.build().accept(on.build()));
        said.add(build, "growx 0");
        said.add(Lettering.paragraph(on.stands(), Styles.NOTE), "growx, wmin 0, gapleft 8");
        sheet.add(said, "aligny top, growx, wmin 0");
    }
}
