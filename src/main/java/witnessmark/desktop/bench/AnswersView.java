package witnessmark.desktop.bench;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.ColumnPane;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.OpenRow;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.MeasureKind;
import witnessmark.logbook.measuring.Finding;
import witnessmark.wording.Texts;

/** How the figures stand, worst first: a line for each kind, which opens to what it rests on. */
final class AnswersView {
    private final Sheet sheet = new Sheet("fillx, hidemode 3, wrap", "[0::,grow,fill]", "");
    private final Texts texts;
    private final Map<MeasureKind, OpenRow> rows = new EnumMap<>(MeasureKind.class);
    private final Map<Line, OpenRow> built = new HashMap<>();
    private Ways ways = (line, under) -> {};
    private List<AnswerLine> shown = List.of();
    private List<String> contradictions = List.of();
    private List<String> asks = List.of();
    private boolean typed;
    private @Nullable MeasureKind open;

    /** What a row shows: one that shows the same is used again. */
    private record Line(MeasureKind kind, BenchLines.Stand stand) {}

    /** What can be done about an answer; puts it under what is told of it. */
    interface Ways {
        void add(AnswerLine line, JPanel under);
    }

    AnswersView(Texts texts) {
        this.texts = texts;
        sheet.getAccessibleContext().setAccessibleName(texts.get("bench.answers"));
    }

    Sheet component() {
        return sheet;
    }

    void ways(Ways others) {
        ways = others;
    }

    void show(BenchLines lines) {
        if (!lines.answers().equals(shown)
                || !lines.contradictions().equals(contradictions)
                || !lines.asks().equals(asks)
                || lines.typed() != typed) {
            typed = lines.typed();
            asks = lines.asks();
            shown = lines.answers();
            contradictions = lines.contradictions();
            put();
        }
    }

    /** Opens one kind, or closes all. */
    void open(@Nullable MeasureKind kind) {
        open = kind;
        put();
    }

    private void put() {
        sheet.removeAll();
        rows.clear();
        built.keySet()
                .retainAll(shown.stream()
                        .map(line -> new Line(line.kind(), line.stand()))
                        .toList());
        sheet.add(Lettering.line(texts.get(typed ? "bench.answers.typed" : "bench.answers"), Styles.SECTION));
        contradictions.forEach(
                sentence -> sheet.add(Lettering.paragraph(sentence, Styles.STOP), "growx, wmin 0, gaptop 2"));
        asks.forEach(sentence -> sheet.add(note(sentence), "growx, wmin 0, gaptop 2"));
        for (Finding.Group group : Finding.Group.values()) {
            List<AnswerLine> of =
                    shown.stream().filter(line -> line.group() == group).toList();
            if (!of.isEmpty()) {
                sheet.add(
                        Lettering.line(
                                texts.get("bench.group." + group.name().toLowerCase(Locale.ROOT), of.size()),
                                Styles.NOTE),
                        "gaptop 6");
                of.forEach(this::row);
            }
        }
        if (shown.isEmpty()) {
            sheet.add(Lettering.paragraph(texts.get("bench.answers.none"), Styles.QUIET_INK), "growx, wmin 0");
        }
        sheet.revalidate();
        sheet.repaint();
    }

    private void row(AnswerLine line) {
        sheet.add(new Hairline(), "growx, wmin 0");
        OpenRow row = built.computeIfAbsent(new Line(line.kind(), line.stand()), this::build);
        row.getAccessibleContext()
                .setAccessibleDescription(texts.get(line.kind() == open ? "bench.answer.close" : "bench.answer.open"));
        rows.put(line.kind(), row);
        sheet.add(row, OpenRow.LIST);
        if (line.kind() == open) {
            sheet.add(under(line), "growx, wmin 0, gapleft 34, gapbottom 6");
        }
    }

    private OpenRow build(Line line) {
        BenchLines.Stand stand = line.stand();
        String about = texts.get("bench.answer.about", stand.word(), stand.sentence());
        OpenRow row = new OpenRow("[24!]10[0::,grow,fill]", about, () -> toggle(line.kind()));
        row.add(Verdicts.mark(stand), "aligny top");
        row.add(Lettering.through(stand.sentence(), Styles.FIELD_LABEL), "growx, wmin 0");
        return row;
    }

    private void toggle(MeasureKind kind) {
        open(kind == open ? null : kind);
        Optional.ofNullable(rows.get(kind)).ifPresent(OpenRow::requestFocusInWindow);
    }

    /** The line of a kind. */
    Optional<OpenRow> row(MeasureKind kind) {
        return Optional.ofNullable(rows.get(kind));
    }

    private JPanel under(AnswerLine line) {
        JPanel under = new JPanel(new FormLayout("insets 0, gap 8 2, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        under.setOpaque(false);
        line.beside().forEach(said -> under.add(note(said), "growx, wmin 0"));
        line.accepted().forEach(said -> under.add(Lettering.paragraph(said, Styles.ECHO), "growx, wmin 0"));
        if (!line.column().isEmpty()) {
            under.add(
                    Lettering.paragraph(texts.get("bench.column", line.columnOf()), Styles.ECHO),
                    "growx, wmin 0, gaptop 4");
            under.add(ColumnPane.sum(BenchLines.rows(texts, line.column())), "growx, wmin 0");
        }
        ways.add(line, under);
        if (!line.places().isEmpty()) {
            under.add(Lettering.line(texts.get("bench.places"), Styles.ECHO), "gaptop 4");
            line.places().forEach(place -> under.add(place(place), "growx, wmin 0"));
        }
        if (!line.caution().isEmpty()) {
            under.add(note(line.caution()), "growx, wmin 0, gaptop 4");
        }
        return under;
    }

    private static JTextArea note(String said) {
        return Lettering.paragraph(said, Styles.NOTE);
    }

    private static JPanel place(BenchLines.Stand place) {
        JPanel line = new JPanel(new FormLayout("insets 0, gap 6, fillx", "[24!][0::,grow,fill]"));
        line.setOpaque(false);
        line.add(Verdicts.mark(place), "aligny top");
        line.add(note(place.sentence()), "growx, wmin 0");
        return line;
    }
}
