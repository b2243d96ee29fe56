package witnessmark.desktop.builds;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.ScrollPage;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.lessons.LessonLine;
import witnessmark.desktop.lessons.LessonsView;
import witnessmark.domain.Coded;
import witnessmark.domain.Zone;
import witnessmark.logbook.building.BuildField;
import witnessmark.logbook.building.BuildField.Name;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Beside the lists: the fields of the row in hand, those of the build as a whole, and what is still open. */
final class SidePane {
    private final Texts texts;
    private final Told told;
    private final JLabel inHand = Lettering.cutLine("", Styles.SECTION);
    private final JTextArea about = Lettering.paragraph("", Styles.QUIET_INK);
    private final FieldsPane position;
    private final FieldsPane joint;
    private final FieldsPane whole;
    private final JButton drop;
    private final JPanel zones = new JPanel(new FormLayout("insets 0, gap 10 2, wrap 3", "[][][]"));
    private final Map<Zone, JCheckBox> ticks = new LinkedHashMap<>();
    private final LessonsView lessons;
    private final JLabel asked;
    private final GapsView gaps;
    private final JLabel stillOpen;
    private final ScrollPage scroll;
    private boolean loading;

    /** What is told from here. */
    interface Told extends FieldsPane.Told {
        /** The group in hand is not to be written after all. */
        void dropped();

        /** Something still open is to be put right. */
        void open(BuildLines.GapLine gap);

        /** A lesson is to be answered. */
        void answer(LessonLine lesson);

        /** The incident of a lesson is to be seen. */
        void incident(LessonLine lesson);

        /** Where the page begins. */
        JComponent first();
    }

    SidePane(Texts texts, Told told) {
        this.texts = texts;
        this.told = told;
        asked = Lettering.line(texts.get("lessons.line.asked"), Styles.SECTION);
        lessons = new LessonsView(texts, told::answer, told::incident, told::first);
        stillOpen = Lettering.line(texts.get("builds.open"), Styles.SECTION);
        position = new FieldsPane(texts, positionFields(), told);
        joint = new FieldsPane(texts, jointFields(), told);
        whole = new FieldsPane(texts, wholeFields(), told);
        drop = Buttons.plain(Caption.of(texts.get("builds.joint.drop")), told::dropped);
        gaps = new GapsView(texts, told::open, told::first);
        fillZones();
        Sheet sheet = new Sheet("hidemode 3, wrap", "[0::,grow,fill]", "");
        sheet.add(inHand, "wmin 0");
        sheet.add(about, "wmin 0, growx");
        sheet.add(position.component(), "wmin 0, growx");
        sheet.add(joint.component(), "wmin 0, growx");
        sheet.add(drop, "growx 0");
        sheet.add(Lettering.line(texts.get("builds.whole"), Styles.SECTION), "gaptop 12");
        sheet.add(zones, "wmin 0");
        sheet.add(whole.component(), "wmin 0, growx");
        sheet.add(asked, "gaptop 12");
        sheet.add(lessons.component(), "wmin 0, growx");
        sheet.add(stillOpen, "gaptop 12");
        sheet.add(gaps.component(), "wmin 0, growx");
        sheet.add(Lettering.paragraph(texts.get("builds.caution"), Styles.NOTE), "wmin 0, growx, gaptop 12");
        scroll = new ScrollPage(sheet);
    }

    private static Map<Name, Integer> positionFields() {
        Map<Name, Integer> spans = new LinkedHashMap<>();
        spans.put(Name.OUT, 6);
        spans.put(Name.WHY, 6);
        spans.put(Name.CONDITION, 6);
        spans.put(Name.MEMBER, 6);
        spans.put(Name.SENT_TO, 3);
        spans.put(Name.ASKED, 3);
        spans.put(Name.IN, 6);
        spans.put(Name.MARK, 3);
        spans.put(Name.ACCEPTED, 6);
        return spans;
    }

    private static Map<Name, Integer> jointFields() {
        Map<Name, Integer> spans = new LinkedHashMap<>();
        spans.put(Name.FASTENERS, 6);
        spans.put(Name.WHICH, 4);
        spans.put(Name.STAGE, 2);
        spans.put(Name.METHOD, 2);
        spans.put(Name.VALUE, 2);
        spans.put(Name.LUBRICANT, 2);
        spans.put(Name.TOOL, 6);
        spans.put(Name.TIGHTENED_BY, 3);
        spans.put(Name.LOOKED_ON, 3);
        return spans;
    }

    private static Map<Name, Integer> wholeFields() {
        Map<Name, Integer> spans = new LinkedHashMap<>();
        spans.put(Name.OPENED, 3);
        spans.put(Name.OPENED_TIME, 3);
        spans.put(Name.NOTE, 6);
        spans.put(Name.WHEN, 3);
        spans.put(Name.WHEN_TIME, 3);
        spans.put(Name.CLOSED, 3);
        spans.put(Name.CLOSED_TIME, 3);
        spans.put(Name.SIGNED, 3);
        spans.put(Name.SECOND, 3);
        spans.put(Name.WORDS, 6);
        return spans;
    }

    private void fillZones() {
        RecordWords records = new RecordWords(texts);
        zones.setOpaque(false);
        for (Zone zone : Zone.values()) {
            JCheckBox tick = Buttons.tick(Caption.of(records.label(records.word(zone))), on -> {
                if (!loading) {
                    told.typed(BuildField.of(Name.ZONES), ticked());
                }
            });
            ticks.put(zone, tick);
            zones.add(tick);
        }
    }

    private String ticked() {
        return ticks.entrySet().stream()
                .filter(each -> each.getValue().isSelected())
                .map(each -> each.getKey().code())
                .collect(Collectors.joining(","));
    }

    JComponent component() {
        return scroll;
    }

    /**
     * Shows what stands in the fields and what is said of them.
     *
     * @param title of the row in hand
     * @param said what is said under a field
     */
    void show(
            BuildModel model,
            BuildLines lines,
            String title,
            Options options,
            Function<BuildField, FieldsPane.Said> said) {
        String row = model.inHand().orElse("");
        boolean ofPosition = BuildField.position(row).isPresent();
        boolean ofJoint = BuildField.joint(row).isPresent();
        inHand.setText(title);
        inHand.setVisible(!title.isEmpty());
        String all = about(lines, row);
        about.setText(all);
        about.setVisible(!all.isEmpty());
        position.component().setVisible(ofPosition && lines.open());
        joint.component().setVisible(ofJoint && lines.open());
        drop.setVisible(ofJoint && lines.open());
        if (ofPosition) {
            position.show(row, model, options, said, lines.open());
        } else if (ofJoint) {
            joint.show(row, model, options, said, lines.open());
        }
        whole.component().setVisible(lines.open());
        whole.show(BuildField.BUILD, model, options, said, lines.open());
        zones(model, lines.open());
        boolean seen = model.page().isPresent();
        asked.setVisible(!lines.lessons().isEmpty());
        lessons.component().setVisible(!lines.lessons().isEmpty());
        lessons.show(lines.lessons());
        stillOpen.setVisible(seen);
        gaps.component().setVisible(seen);
        gaps.show(lines.gaps());
        scroll.revalidate();
    }

    /** All there is to say of a row, in full. */
    private static String about(BuildLines lines, String row) {
        return Stream.concat(
                        lines.positions().stream()
                                .filter(line -> line.row().equals(row))
                                .map(BuildLines.PositionLine::about),
                        lines.joints().stream()
                                .filter(line -> line.row().equals(row))
                                .map(BuildLines.JointLine::about))
                .findFirst()
                .orElse("");
    }

    /** What was opened stays ticked: it is written. */
    private void zones(BuildModel model, boolean open) {
        loading = true;
        Set<Zone> written = model.written() == null
                ? EnumSet.noneOf(Zone.class)
                : model.written().build().fact().zones();
        Set<Zone> typed = EnumSet.noneOf(Zone.class);
        for (String code : model.text(BuildField.of(Name.ZONES)).split(",")) {
            Coded.find(Zone.class, code).ifPresent(typed::add);
        }
        ticks.forEach((zone, tick) -> {
            tick.setSelected(written.contains(zone) || typed.contains(zone));
            tick.setEnabled(open && !written.contains(zone));
        });
        loading = false;
    }

    /** The fields of the row in hand. */
    private Optional<FieldsPane> pane(String row) {
        return BuildField.position(row).isPresent()
                ? Optional.of(position)
                : BuildField.joint(row).isPresent() ? Optional.of(joint) : Optional.empty();
    }

    Optional<JComponent> first(String row) {
        return pane(row).flatMap(FieldsPane::first);
    }

    /** The input of a field, where its row is in hand. */
    Optional<JComponent> input(BuildField field) {
        return field.name() == Name.ZONES
                ? firstZone()
                : Optional.ofNullable(pane(field.row()).orElse(whole).input(field.name()))
                        .filter(JComponent::isVisible);
    }

    /** The first way to an answer to a lesson. */
    Optional<JComponent> firstLesson() {
        return lessons.firstAnswer();
    }

    Optional<JComponent> firstZone() {
        return ticks.values().stream()
                .filter(JCheckBox::isEnabled)
                .map(each -> (JComponent) each)
                .findFirst();
    }
}
