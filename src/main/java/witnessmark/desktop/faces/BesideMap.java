package witnessmark.desktop.faces;

import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.SeamMark;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.Styles;
import witnessmark.fit.result.face.Face;
import witnessmark.logbook.faces.LookLine;
import witnessmark.wording.Texts;

/** Beside the map: its low zones, how flat it is, every reading as a list, straightedge and marks. */
final class BesideMap extends JPanel {
    private final transient Texts texts;
    private final transient FaceLines lines;
    private final SheetTable<FaceLines.PointLine> points;
    private final JPanel zones = column();
    private final JPanel flat = column();
    private final JPanel rest = column();
    private final JLabel flatTitle;
    private final JLabel pointsTitle;
    private final JButton deeper;
    private final JTextArea deepest = Lettering.paragraph("", Styles.NOTE);

    BesideMap(Texts texts, FaceLines lines, IntConsumer inHand) {
        super(new FormLayout("insets 0, gap 0 4, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        this.texts = texts;
        this.lines = lines;
        setOpaque(false);
        points = new SheetTable<FaceLines.PointLine>(
                        texts.get("facemap.points"),
                        List.of(
                                Column.text(texts.get("facemap.points.place"), FaceLines.PointLine::place)
                                        .wide(180)
                                        .grow(),
                                Column.figure(
                                                texts.get("facemap.points.depth"),
                                                FaceLines.PointLine::depth,
                                                FaceLines.PointLine::depth)
                                        .wide(46),
                                Column.figure(
                                                texts.get("facemap.points.then"),
                                                FaceLines.PointLine::then,
                                                FaceLines.PointLine::then)
                                        .wide(46),
                                Column.figure(
                                                texts.get("facemap.points.change"),
                                                FaceLines.PointLine::change,
                                                FaceLines.PointLine::change)
                                        .wide(58)),
                        FaceLines.PointLine::index)
                .whole();
        points.onSelect(row -> inHand.accept(row == null ? -1 : row.index()));
        flatTitle = Lettering.line(texts.get("facemap.flat"), Styles.SECTION);
        pointsTitle = Lettering.line(texts.get("facemap.points"), Styles.SECTION);
        deeper = Buttons.link(Caption.of(texts.get("facemap.flat.deeper")), this::deeper);
        deepest.setVisible(false);
        add(zones, "growx, wmin 0");
        add(flatTitle, "gaptop 8");
        add(flat, "growx, wmin 0");
        add(deeper, "growx 0, alignx leading");
        add(deepest, "growx, wmin 0");
        add(pointsTitle, "gaptop 8");
        add(points, "growx, wmin 0");
        add(rest, "growx, wmin 0");
    }

    private static JPanel column() {
        JPanel panel = new JPanel(new FormLayout("insets 0, gap 6 2, fillx", "[0::,grow,fill]"));
        panel.setOpaque(false);
        return panel;
    }

    /** The minimum zone lies one click deeper than the plane of least squares. */
    private void deeper() {
        deepest.setVisible(!deepest.isVisible());
        revalidate();
    }

    void show(@Nullable Face face, @Nullable LookLine look, @Nullable LookLine then) {
        zones.removeAll();
        flat.removeAll();
        rest.removeAll();
        zones.add(Lettering.line(texts.get("facemap.zones"), Styles.SECTION), "span, wrap");
        if (look == null || face == null) {
            points.show(List.of());
            setVisible(false);
            return;
        }
        setVisible(true);
        lines.zones(look).forEach(this::zone);
        if (look.findings().isEmpty()) {
            zones.add(
                    Lettering.paragraph(
                            texts.get(look.low().isEmpty() ? "facemap.zones.none" : "facemap.zones.healthy"),
                            Styles.NOTE),
                    "span, growx, wmin 0, wrap");
        }
        boolean read = !look.points().isEmpty();
        flatTitle.setVisible(read);
        flat.setVisible(read);
        pointsTitle.setVisible(read);
        points.setVisible(read);
        points.offer(2, then != null);
        points.offer(3, then != null);
        flat.add(Lettering.paragraph(lines.flat(look), Styles.NOTE), "span, growx, wmin 0");
        deepest.setVisible(deepest.isVisible() && look.flat().minimumZone() != null);
        deeper.setVisible(look.flat().minimumZone() != null);
        deepest.setText(lines.deeper(look));
        points.show(lines.points(face, look, then));
        section("facemap.edges", lines.edges(look));
        section("facemap.marks", lines.marks(face, look));
        revalidate();
        repaint();
    }

    private void zone(FaceLines.ZoneLine line) {
        JPanel row = new JPanel(new FormLayout("insets 0, gap 6 2, fillx", "[26!][0::,grow,fill]"));
        row.setOpaque(false);
        row.add(new SeamMark(line.state(), line.word(), line.sentence()), "aligny top");
        row.add(Lettering.paragraph(line.sentence(), Styles.ROW_TITLE), "growx, wmin 0, wrap");
        for (String under : line.under()) {
            row.add(Lettering.paragraph(under, Styles.NOTE), "skip, growx, wmin 0, wrap");
        }
        zones.add(row, "growx, wmin 0, wrap");
    }

    private void section(String heading, List<String> said) {
        if (!said.isEmpty()) {
            rest.add(Lettering.line(texts.get(heading), Styles.SECTION), "span, gaptop 8, wrap");
            said.forEach(line -> rest.add(Lettering.paragraph(line, Styles.NOTE), "span, growx, wmin 0, wrap"));
        }
    }

    /** Puts the row of a reading in hand. */
    void choose(int index) {
        points.select(index);
    }
}
