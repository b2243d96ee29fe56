package witnessmark.desktop.builds;

import java.util.List;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JPanel;
import witnessmark.desktop.builds.BuildLines.JointLine;
import witnessmark.desktop.builds.BuildLines.PositionLine;
import witnessmark.desktop.form.Column;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.SheetTable;
import witnessmark.desktop.form.SheetTools;
import witnessmark.desktop.form.StateWords;
import witnessmark.desktop.form.Styles;
import witnessmark.wording.Texts;

/** The positions of a build, and under them its groups of fasteners. */
final class BuildTables {
    private static final int SAVED = 7;

    private final SheetTable<PositionLine> positions;
    private final SheetTable<JointLine> joints;
    private final ScrollPage scroll;
    private List<PositionLine> all = List.of();
    private final JPanel panel = new JPanel(new FormLayout(
            "insets 0, gap 0, fill, hidemode 3",
            "[0::,grow,fill]",
            "[220:220:,grow 65,fill]8[]4[152:152:,grow 35,fill]"));

    /**
     * @param beside what stands beside the field that finds a position
     * @param above what stands above the groups of fasteners
     */
    BuildTables(SheetTools tools, JComponent beside, JComponent above) {
        Texts texts = tools.texts();
        positions = new SheetTable<>(texts.get("builds.positions"), positionColumns(texts), PositionLine::row)
                .with(tools, "builds.positions")
                .filterStays(Lettering.line(texts.get("builds.positions"), Styles.SECTION), beside);
        positions.table().setToolTipText(texts.get("builds.positions.tip"));
        positions.whenEmpty(Lettering.paragraph(texts.get("builds.positions.none"), Styles.QUIET_INK));
        joints = new SheetTable<>(texts.get("builds.joints"), jointColumns(texts), JointLine::row);
        joints.table().setToolTipText(texts.get("builds.joints.tip"));
        joints.whenEmpty(Lettering.paragraph(texts.get("builds.joints.none"), Styles.QUIET_INK));
        panel.setOpaque(false);
        panel.add(positions, "grow, wrap, wmin 0");
        panel.add(above, "growx, wrap, wmin 0");
        panel.add(joints, "grow, wmin 0");
        scroll = new ScrollPage(panel);
    }

    private static List<Column<PositionLine>> positionColumns(Texts texts) {
        StateWords states = new StateWords(texts);
        return List.of(
                Column.<PositionLine>mark(texts.get("builds.column.mark"), PositionLine::state, states::of)
                        .worded()
                        .wide(106),
                Column.<PositionLine, Integer>text(
                                texts.get("builds.column.position"), PositionLine::position, PositionLine::turn)
                        .strong()
                        .wide(112),
                Column.<PositionLine>text(texts.get("builds.column.zone"), PositionLine::zone)
                        .wide(84)
                        .onAsking(),
                Column.<PositionLine>text(texts.get("builds.column.out"), PositionLine::out)
                        .wide(130)
                        .grow(),
                Column.<PositionLine>text(texts.get("builds.column.in"), PositionLine::in)
                        .wide(118),
                Column.<PositionLine, Long>figure(
                                texts.get("builds.column.ran"), PositionLine::ran, PositionLine::running)
                        .wide(70),
                Column.<PositionLine>text(texts.get("builds.column.left"), PositionLine::left)
                        .inked(PositionLine::state)
                        .wide(180)
                        .grow(),
                Column.<PositionLine>text(texts.get("builds.column.saved"), PositionLine::saved)
                        .wide(72));
    }

    private static List<Column<JointLine>> jointColumns(Texts texts) {
        return List.of(
                Column.<JointLine>mark(
                                texts.get("builds.column.mark"),
                                JointLine::state,
                                state ->
                                        texts.get("builds.tight." + state.name().toLowerCase(Locale.ROOT)))
                        .worded()
                        .wide(122),
                Column.<JointLine>text(texts.get("builds.column.group"), JointLine::group)
                        .strong()
                        .wide(240),
                Column.<JointLine>text(texts.get("builds.column.how"), JointLine::how)
                        .wide(300)
                        .grow());
    }

    JComponent component() {
        return scroll;
    }

    SheetTable<PositionLine> positions() {
        return positions;
    }

    SheetTable<JointLine> joints() {
        return joints;
    }

    void show(BuildLines lines) {
        all = lines.positions();
        boolean unsaved =
                lines.positions().stream().anyMatch(line -> !line.saved().isEmpty());
        positions.offer(SAVED, unsaved);
        positions.show(lines.positions());
        joints.show(lines.joints());
    }

    /** Goes on to the position after that row; out of a filter once it is through. */
    void after(String row) {
        if (!after(positions.shown(), row)) {
            after(all, row);
        }
    }

    private boolean after(List<PositionLine> rows, String row) {
        for (int i = 0; i + 1 < rows.size(); i++) {
            if (rows.get(i).row().equals(row)) {
                return positions.select(rows.get(i + 1).row());
            }
        }
        return false;
    }

    /** Selects a row of either list. */
    void select(String row) {
        positions.select(row);
        joints.select(row);
    }
}
