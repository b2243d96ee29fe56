package witnessmark.desktop.faces;

import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.chart.LifeRows;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.NoticeStrip;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SideBySide;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The page: which face above, its map with what is said of it beside, its skims under it, and all lives side by side. */
final class FacesPanel extends JPanel {
    private static final int SIDE = 380;
    private static final int BOTH_FROM = 900;

    private final transient Texts texts;
    private final NoticeStrip notice = new NoticeStrip();
    private final ChoiceBox<FaceChoice> which;
    private final ChoiceBox<FaceChoice> look;
    private final ChoiceBox<FaceChoice> against;
    private final JTextArea title = Lettering.paragraph(" ", Styles.SECTION);
    private final JTextArea note = Lettering.paragraph(" ", Styles.NOTE);
    private final JTextArea empty = Lettering.paragraph("", Styles.QUIET_INK);
    private final FaceMapView map;
    private final JTextArea turned = Lettering.paragraph(" ", Styles.NOTE);
    private final Legend levels;
    private final JTextArea legend = Lettering.paragraph(" ", Styles.NOTE);
    private final JLabel readout = Lettering.cutLine(" ", Styles.ECHO);
    private final JPanel drawing =
            new JPanel(new FormLayout("insets 0, gap 8 2, fillx, hidemode 3", "[][0::,grow,fill][][]"));
    private final JPanel side = new Sheet("fillx, wrap, hidemode 3", "[0::,grow,fill]", "");
    private final BesideMap beside;
    private final FaceEntry entry;
    private final SheetTable<FaceLines.SkimRow> skims;
    private final JPanel skimRoom = new Sheet("fillx, wrap, hidemode 3", "[0::,grow,fill]", "");
    private final JPanel standing = plain();
    private final JPanel effect = plain();
    private final StripsView strips;
    private final JButton write;
    private final JButton print;

    /** What hears of the page. */
    interface Told extends FaceEntry.Told {
        void chosen();

        void turnOver();

        void turnAbout();

        void write();

        /** The page of the part it belongs to. */
        void partPage();

        void print();

        void skim();

        void open(String part);

        void inHand(int reading);

        /** A skim of the ledger is in hand, by the identity of its work; empty for none. */
        void skimInHand(String work);
    }

    FacesPanel(Texts texts, FaceLines lines, Told told) {
        super(new FormLayout("insets 0, gap 0, fill", "[0::,grow,fill]", "[grow,fill]"));
        this.texts = texts;
        setOpaque(false);
        which = choice("facemap.which", told::chosen);
        look = choice("facemap.look", told::chosen);
        against = choice("facemap.against", told::chosen);
        map = new FaceMapView(texts.get("facemap.map.name"), said -> readout.setText(said.isEmpty() ? " " : said));
        levels = new Legend(texts.get("facemap.legend.name"));
        beside = new BesideMap(texts, lines, told::inHand);
        entry = new FaceEntry(texts, told);
        skims = skims();
        skims.onSelect(row -> told.skimInHand(row == null ? "" : row.id()));
        strips = new StripsView(texts.get("facemap.strips.name"), told::open, said -> {});
        write = Buttons.plain(Caption.of(texts.get("facemap.write")), told::write);
        print = Buttons.plain(Caption.of(texts.get("facesheet.button")), told::print);
        side.add(print, "split 2, pushx, growx 0, alignx trailing");
        side.add(write, "growx 0");
        side.add(beside, "growx, wmin 0");
        side.add(entry, "growx, wmin 0");
        entry.setVisible(false);
        JPanel page = new JPanel(new FormLayout("insets 0, gap 0 6, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        page.setOpaque(false);
        page.add(notice, "growx");
        page.add(head(), "growx, wmin 0");
        page.add(new SideBySide(mapRoom(told), side, SIDE, BOTH_FROM), "growx, wmin 0");
        page.add(ledger(told), "growx, wmin 0, gaptop 8");
        page.add(lives(), "growx, wmin 0, gaptop 8");
        add(new ScrollPage(page), "grow, w 0:0:, h 0:0:");
    }

    private static JPanel plain() {
        JPanel panel = new JPanel(new FormLayout("insets 0, gap 0 2, fillx, wrap", "[0::,grow,fill]"));
        panel.setOpaque(false);
        return panel;
    }

    private ChoiceBox<FaceChoice> choice(String key, Runnable changed) {
        ChoiceBox<FaceChoice> box = new ChoiceBox<>(texts, Caption.of(texts.get(key)), FaceChoice::words);
        box.combo().getAccessibleContext().setAccessibleName(texts.get(key + ".name"));
        box.onChange(changed);
        return box;
    }

    private JPanel head() {
        JPanel head = new JPanel(new FormLayout(
                "insets 0, gap 14 0, fillx", "[0::,grow 80,fill][0::,grow 100,fill][0::,grow 120,fill]", "[bottom]"));
        head.setOpaque(false);
        head.add(which, "wmin 0");
        head.add(look, "wmin 0");
        head.add(against, "wmin 0");
        return head;
    }

    private JPanel mapRoom(Told told) {
        JButton partPage = Buttons.link(Caption.of(texts.get("facemap.part.page")), told::partPage);
        JPanel room = new Sheet("fillx, hidemode 3", "[][0::,grow,fill][][]", "");
        room.add(title, "split 2, span, growx, pushx, wmin 0");
        room.add(partPage, "growx 0, aligny top, wrap");
        room.add(note, "span, growx, wmin 0, wrap");
        room.add(empty, "span, growx, wmin 0, wrap");
        room.add(drawing, "span, growx, wmin 0");
        drawing.setOpaque(false);
        drawing.add(map, "span, growx, wmin 0, wrap");
        drawing.add(readout, "span, growx, wmin 0, wrap");
        drawing.add(levels, "aligny top, gaptop 2");
        drawing.add(legend, "span, growx, wmin 0, wrap");
        drawing.add(turned, "span 2, growx, wmin 0");
        drawing.add(Buttons.link(Caption.of(texts.get("facemap.turn.over")), told::turnOver));
        drawing.add(Buttons.link(Caption.of(texts.get("facemap.turn.about")), told::turnAbout));
        return room;
    }

    private JPanel ledger(Told told) {
        JPanel room = skimRoom;
        room.add(Lettering.line(texts.get("facemap.skims"), Styles.SECTION), "split 2, growx");
        room.add(Buttons.plain(Caption.of(texts.get("facemap.skim")), told::skim), "growx 0");
        room.add(standing, "growx, wmin 0");
        room.add(skims, "growx, wmin 0");
        room.add(effect, "growx, wmin 0");
        return room;
    }

    private JPanel lives() {
        JPanel room = new Sheet("fillx, wrap", "[0::,grow,fill]", "");
        room.add(Lettering.line(texts.get("facemap.strips"), Styles.SECTION));
        room.add(Lettering.paragraph(texts.get("facemap.strips.note"), Styles.NOTE), "growx, wmin 0");
        room.add(strips, "growx, wmin 0");
        return room;
    }

    private SheetTable<FaceLines.SkimRow> skims() {
        List<Column<FaceLines.SkimRow>> columns = IntStream.range(0, FaceLines.HEADINGS.size())
                .mapToObj(i -> column(i, FaceLines.HEADINGS.get(i)))
                .toList();
        return new SheetTable<>(texts.get("facemap.skims"), columns, FaceLines.SkimRow::id)
                .whenEmpty(Lettering.line(texts.get("facemap.skims.none"), Styles.QUIET_INK))
                .whole();
    }

    private Column<FaceLines.SkimRow> column(int index, String heading) {
        Column<FaceLines.SkimRow> column = Column.text(texts.get("facemap.skims." + heading), row -> row.cell(index));
        return switch (heading) {
            case "cleanup" -> column.wide(130).grow();
            case "passes" -> column.wide(120);
            case "day" -> column.wide(108);
            case "ratio" -> column.wide(100);
            case "off", "room" -> column.wide(84);
            default -> column.wide(60);
        };
    }

    void choices(
            List<FaceChoice> parts,
            FaceChoice part,
            List<FaceChoice> looks,
            FaceChoice chosen,
            List<FaceChoice> others,
            FaceChoice other) {
        which.load(parts, part);
        look.load(looks, chosen);
        against.load(others, other);
    }

    /** What stands on the page. */
    record Shown(
            String title,
            String note,
            String turned,
            boolean drawn,
            boolean skimmed,
            String empty,
            List<String> standing,
            List<FaceLines.SkimRow> skims,
            List<String> effect) {
        Shown {
            standing = List.copyOf(standing);
            skims = List.copyOf(skims);
            effect = List.copyOf(effect);
        }
    }

    void show(Shown shown) {
        notice.dismiss();
        title.setText(shown.title());
        note.setText(shown.note());
        note.setVisible(!shown.note().isEmpty());
        turned.setText(shown.turned());
        empty.setText(shown.empty());
        empty.setVisible(!shown.empty().isEmpty());
        drawing.setVisible(shown.drawn());
        lines(standing, shown.standing());
        skims.show(shown.skims());
        skimRoom.setVisible(shown.skimmed());
        effect(shown.effect());
        revalidate();
        repaint();
    }

    /** What a skim did. */
    void effect(List<String> said) {
        lines(effect, said);
        revalidate();
    }

    private static void lines(JPanel panel, List<String> said) {
        panel.removeAll();
        said.forEach(line -> panel.add(Lettering.paragraph(line, Styles.NOTE), "growx, wmin 0"));
    }

    /** What the blue of the map means; without a blue only that there is none. */
    void legend(String said, boolean filled) {
        legend.setText(said);
        levels.setVisible(filled);
    }

    void strips(LifeRows rows, String words) {
        strips.show(rows, words);
    }

    void failed(String sentence, JButton again) {
        notice.show(sentence, List.of(again));
    }

    /** Shows what is typed in place of what is said of the look, or the other way round. */
    void entering(boolean yes) {
        entry.setVisible(yes);
        beside.setVisible(!yes);
        write.setVisible(!yes);
        print.setVisible(!yes);
        revalidate();
    }

    void editable(boolean yes) {
        write.setEnabled(yes);
    }

    JComponent firstFocus() {
        return which.combo();
    }

    ChoiceBox<FaceChoice> which() {
        return which;
    }

    ChoiceBox<FaceChoice> look() {
        return look;
    }

    ChoiceBox<FaceChoice> against() {
        return against;
    }

    FaceMapView map() {
        return map;
    }

    BesideMap beside() {
        return beside;
    }

    FaceEntry entry() {
        return entry;
    }
}
