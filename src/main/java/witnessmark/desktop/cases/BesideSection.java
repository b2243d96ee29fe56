package witnessmark.desktop.cases;

import java.util.List;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.chart.FaceMap;
import witnessmark.desktop.faces.FaceMapView;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Styles;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.wording.Texts;

/** An incident beside another: what both had, what only one had, and the marks of both on one face. */
final class BesideSection extends JPanel {
    private static final Logger LOG = LoggerFactory.getLogger(BesideSection.class);

    private final Texts texts;
    private final transient CaseDoing doing;
    private final transient BesideWords model;
    private final transient Latest reading;
    private final ChoiceBox<BesideLines.Other> other;
    private final JTextArea joined = Lettering.paragraph("", Styles.ECHO);
    private final JPanel groups =
            new JPanel(new FormLayout("insets 0, gap 12 2, fillx", "[0:130:,fill][0::,grow,fill]"));
    private final FaceMapView map;
    private final JTextArea legend = Lettering.paragraph("", Styles.NOTE);
    private final JPanel marks = new JPanel(new FormLayout("insets 0, gap 0 1, fillx, wrap", "[0::,grow,fill]"));
    private String incident = "";

    BesideSection(CaseDoing doing) {
        super(new FormLayout("insets 0, gap 0 3, fillx, hidemode 3, wrap", "[0::,grow,fill]"));
        this.doing = doing;
        this.texts = doing.tools().texts();
        this.model = new BesideWords(texts, doing.measures());
        this.reading = new Latest(doing.tools().tasks());
        setOpaque(false);
        groups.setOpaque(false);
        marks.setOpaque(false);
        other = new ChoiceBox<>(texts, Caption.of(texts.get("cases.beside.other")), BesideLines.Other::words);
        other.onChange(this::read);
        map = new FaceMapView(texts.get("cases.beside.map"), said -> {});
        map.setFocusable(false); // what is on it stands below, mark by mark
        JPanel head = new JPanel(new FormLayout("insets 0, gap 0, fillx", "[0::,grow,fill]8[]", "[baseline]"));
        head.setOpaque(false);
        head.add(Lettering.cutLine(texts.get("cases.beside"), Styles.SECTION), "wmin 0");
        head.add(Buttons.link(
                Caption.of(texts.get("cases.beside.link")),
                () -> doing.write().accept(Prefilled.linking(Id.<Incident>parse(incident)))));
        add(new Hairline(), "growx, wmin 0, gaptop 6");
        add(head, "growx, wmin 0");
        add(other, "growx, wmin 0");
        add(joined, "growx, wmin 0");
        add(groups, "growx, wmin 0");
        add(legend, "growx, wmin 0, gaptop 6");
        add(map, "growx, wmin 0, h 248!");
        add(marks, "growx, wmin 0");
    }

    /** @param of the incident in view, as the text form of its identity */
    void show(List<BesideLines.Other> others, String of) {
        BesideLines.Other before = of.equals(incident) ? other.chosen() : null;
        incident = of;
        setVisible(!others.isEmpty());
        BesideLines.Other again = before == null
                ? null
                : others.stream()
                        .filter(each -> each.id().equals(before.id()))
                        .findFirst()
                        .orElse(null);
        BesideLines.Other linked =
                others.stream().filter(BesideLines.Other::linked).findFirst().orElse(null);
        other.load(others, again != null ? again : linked);
        read();
    }

    private void read() {
        BesideLines.Other chosen = other.chosen();
        if (chosen == null) {
            reading.drop();
            none();
            return;
        }
        String one = incident;
        reading.run(
                texts.get("cases.beside.reading"),
                () -> model.lines(doing.view().get(), one, chosen.id()),
                this::put,
                thrown -> {
                    LOG.error("two incidents could not be laid beside each other", thrown);
                    none();
                    joined.setText(texts.get("cases.beside.failed"));
                    joined.setVisible(true);
                });
    }

    private void none() {
        joined.setVisible(false);
        groups.removeAll();
        marks.removeAll();
        lay(null);
    }

    private void put(BesideLines lines) {
        joined.setText(lines.joined());
        joined.setVisible(!lines.joined().isEmpty());
        groups.removeAll();
        lines.groups().forEach(this::put);
        marks.removeAll();
        lines.marks().forEach(mark -> marks.add(Lettering.paragraph(mark, Styles.FIELD_LABEL), "growx, wmin 0"));
        legend.setText(lines.legend());
        lay(lines);
    }

    private void lay(@Nullable BesideLines lines) {
        FaceMap drawn = lines == null ? null : lines.map();
        boolean mapped = drawn != null;
        legend.setVisible(mapped);
        map.setVisible(mapped);
        marks.setVisible(mapped);
        map.show(drawn, lines != null && lines.exhaustBelow(), true, null);
        revalidate();
        repaint();
    }

    private void put(BesideLines.Group group) {
        groups.add(Lettering.cutLine(group.title(), Styles.STRONG), "newline, span 2, growx, wmin 0, gaptop 4");
        for (BesideLines.Row row : group.rows()) {
            groups.add(Lettering.cutLine(row.aspect(), Styles.NOTE), "newline, aligny top, wmin 0");
            groups.add(Lettering.paragraph(row.things(), Styles.FIELD_LABEL), "growx, wmin 0");
        }
    }
}
