package witnessmark.desktop.traces;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChoiceBox;
import witnessmark.desktop.form.FieldBox;
import witnessmark.desktop.form.FocusStays;
import witnessmark.desktop.form.FormLayout;
import witnessmark.desktop.form.Hairline;
import witnessmark.desktop.form.Lettering;
import witnessmark.desktop.form.Sheet;
import witnessmark.desktop.form.Styles;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.tracing.BroughtBefore;
import witnessmark.logbook.tracing.BroughtTrace;
import witnessmark.logbook.tracing.LikelyRun;
import witnessmark.logbook.tracing.TraceField;
import witnessmark.logbook.tracing.TraceProposal;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Of which run it is, what would become the run's, and what is kept. */
final class ForRunPane {
    /** More are not offered: who looks for another run begins on its page. */
    private static final int OFFERED = 60;

    private final Texts texts;
    private final ForRunModel words;
    private final Problems problems;
    private final Sheet sheet = new Sheet("hidemode 3, fillx, wrap", "[0::,grow,fill]", "");
    private final ChoiceBox<Integer> part;
    private final ChoiceBox<Choice> run;
    private final JPanel said = column();
    private final JPanel grid = new JPanel(new FormLayout(
            "insets 0, gap 12 2, fillx, hidemode 3, wrap 3",
            "[0::,grow 100,fill][0::,grow 110,fill][0::,grow 90,fill]"));
    private final JCheckBox keep;
    private final FieldBox note;
    private final Map<TraceField, JCheckBox> ticks = new EnumMap<>(TraceField.class);
    private final Asked asked;
    private List<ForRunModel.Line> lines = List.of();
    private @Nullable JButton there;

    /** What somebody does here. */
    interface Asked {
        void part(int number);

        void run(@Nullable Id<Run> run);

        /** Something that changes nothing of what is shown. */
        void say(Consumer<TraceModel> what);

        /** Somebody wants to see the run it was brought in for. */
        void go(Id<Run> run);

        /** Somebody wants to say how the time is written. */
        void time();
    }

    /** A run that can be picked; none of them without an id. */
    record Choice(@Nullable Id<Run> id, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    ForRunPane(Texts texts, ForRunModel words, Problems problems, Asked asked) {
        this.texts = texts;
        this.words = words;
        this.problems = problems;
        this.asked = asked;
        part = new ChoiceBox<>(
                texts, Caption.of(texts.get("traces.part")), number -> texts.get("traces.part.number", number + 1));
        run = new ChoiceBox<>(texts, Caption.of(texts.get("traces.which")), Choice::words);
        keep = Buttons.tick(Caption.of(texts.get("traces.keep")), yes -> asked.say(file -> file.keep(yes)));
        note = new FieldBox(Caption.of(texts.get("traces.note")));
        part.onChange(() -> asked.part(Objects.requireNonNull(part.chosen())));
        run.onChange(() -> asked.run(Objects.requireNonNull(run.chosen()).id()));
        note.onChange(() -> say(asked, note.text()));
        grid.setOpaque(false);
        sheet.add(part, "growx, wmin 0");
        sheet.add(run, "growx, wmin 0");
        sheet.add(said, "growx, wmin 0");
        sheet.add(grid, "growx, wmin 0, gaptop 4");
        sheet.add(keep, "growx, wmin 0, gaptop 8");
        sheet.add(note, "growx, wmin 0, gaptop 4");
    }

    private static void say(Asked asked, String note) {
        asked.say(file -> file.note(note));
    }

    private static JPanel column() {
        JPanel column = new JPanel(new FormLayout("insets 0, gap 0 4, fillx, wrap, hidemode 3", "[0::,grow,fill]"));
        column.setOpaque(false);
        return column;
    }

    JComponent component() {
        return sheet;
    }

    /** What has the focus on arrival: the run, or the way to the one it was brought in for before. */
    JComponent first() {
        return there == null ? run.combo() : there;
    }

    ChoiceBox<Choice> run() {
        return run;
    }

    ChoiceBox<Integer> part() {
        return part;
    }

    JCheckBox tick(TraceField field) {
        return Objects.requireNonNull(ticks.get(field));
    }

    JCheckBox keep() {
        return keep;
    }

    FieldBox note() {
        return note;
    }

    /** Nothing was worked out of the file yet, so that nothing is known of its run. */
    void showUnread() {
        shown(false);
        said.removeAll();
        said.add(Lettering.paragraph(texts.get("traces.which.unread"), Styles.FIELD_LABEL), "growx, wmin 0");
        sheet.revalidate();
        sheet.repaint();
    }

    private void shown(boolean yes) {
        part.setVisible(yes);
        run.setVisible(yes);
        grid.setVisible(yes);
        keep.setVisible(yes);
        note.setVisible(yes);
    }

    void show(TraceModel model, Facts facts, UnderstoodWords sizes) {
        BroughtTrace trace = model.trace().orElseThrow();
        int parts = trace.parts().size();
        shown(true);
        part.setVisible(parts > 1);
        part.load(IntStream.range(0, parts).boxed().toList(), model.part());
        part.note(texts.get(model.isDone(model.part()) ? "traces.part.done" : "traces.part.open"));
        choices(model, facts);
        said.removeAll();
        there = null;
        model.before().ifPresent(before -> showBefore(before, facts, parts > 1));
        if (model.before().isPresent()) {
            sheet.revalidate();
            sheet.repaint();
            return;
        }
        if (model.isDone(model.part())) {
            said.add(Lettering.paragraph(texts.get("traces.done"), Styles.STRONG), "growx, wmin 0");
        } else {
            model.proposal().ifPresent(now -> now.problems().forEach(this::say));
        }
        grid(model);
        Kept kept = trace.kept();
        keep.setEnabled(kept != null);
        keep.setSelected(kept != null && model.keeps());
        keep.setText(
                kept != null ? texts.get("traces.keep.size", sizes.size(kept.size())) : texts.get("traces.keep.not"));
        if (!note.text().equals(model.note())) {
            note.load(model.note());
        }
        sheet.revalidate();
        sheet.repaint();
    }

    /** It is in the logbook: nothing is offered but the way there. */
    private void showBefore(BroughtBefore before, Facts facts, boolean parts) {
        shown(false);
        part.setVisible(parts);
        said.add(Lettering.paragraph(words.before(before, facts), Styles.STRONG), "growx, wmin 0");
        said.add(Lettering.paragraph(texts.get("traces.before.more"), Styles.FIELD_LABEL), "growx, wmin 0");
        JButton go = Buttons.plain(
                Caption.of(texts.get("traces.before.go")),
                () -> asked.go(before.run().id()));
        said.add(go, "growx 0");
        there = go;
    }

    private void say(Problem problem) {
        said.add(
                Lettering.paragraph(problems.sentence(problem), problem.stops() ? Styles.STOP : Styles.QUERY),
                "growx, wmin 0");
        if (problem.kind() == ProblemKind.TRACE_TIME_BASE) {
            said.add(Buttons.plain(Caption.of(texts.get("traces.say_time")), asked::time), "growx 0");
        }
    }

    private void choices(TraceModel model, Facts facts) {
        List<Choice> offered = new ArrayList<>();
        offered.add(new Choice(null, texts.get("traces.which.pick")));
        Optional<LikelyRun> chosen = model.run();
        List<LikelyRun> all = new ArrayList<>(
                model.runs().subList(0, Math.min(OFFERED, model.runs().size())));
        chosen.filter(each -> !all.contains(each)).ifPresent(each -> all.add(0, each));
        all.forEach(each -> offered.add(new Choice(each.run().id(), words.run(each.run(), facts))));
        Id<Run> id = chosen.map(each -> each.run().id()).orElse(null);
        run.load(
                offered,
                offered.stream()
                        .filter(each -> Objects.equals(each.id(), id))
                        .findFirst()
                        .orElse(offered.get(0)));
        chosen.map(words::because).ifPresentOrElse(run::note, () -> run.query(texts.get("traces.which.none")));
    }

    private void grid(TraceModel model) {
        Optional<TraceProposal> proposal = model.proposal();
        List<ForRunModel.Line> now = proposal.map(words::lines).orElse(List.of());
        boolean open = proposal.isPresent() && !proposal.get().stops() && !model.isDone(model.part());
        if (!now.equals(lines) || grid.getComponentCount() == 0) {
            lines = now;
            FocusStays.on(sheet, this::layOutGrid, () -> run.combo());
        }
        grid.setVisible(!lines.isEmpty());
        ticks.forEach((field, tick) -> {
            tick.setSelected(model.taken().contains(field));
            tick.setEnabled(open);
        });
    }

    private void layOutGrid() {
        grid.removeAll();
        ticks.clear();
        grid.add(Lettering.cutLine(texts.get("traces.grid.take"), Styles.FIELD_LABEL), "wmin 0");
        grid.add(Lettering.cutLine(texts.get("traces.grid.run"), Styles.FIELD_LABEL), "wmin 0");
        grid.add(Lettering.cutLine(texts.get("traces.grid.trace"), Styles.FIELD_LABEL), "wmin 0");
        grid.add(new Hairline(), "span, growx, wmin 0, gapbottom 2");
        for (ForRunModel.Line line : lines) {
            Consumer<Boolean> told = take -> asked.say(file -> file.tick(line.field(), take));
            JCheckBox tick = Buttons.tick(new Caption(line.name(), -1), told);
            tick.getAccessibleContext()
                    .setAccessibleName(texts.get("traces.grid.said", line.name(), own(line), line.trace()));
            ticks.put(line.field(), tick);
            grid.add(tick, "wmin 0");
            JLabel own = Lettering.cutLine(own(line), line.same() ? Styles.FIELD_LABEL : Styles.QUIET_INK);
            grid.add(own, "wmin 0");
            grid.add(Lettering.cutLine(line.trace(), line.same() ? Styles.FIELD_LABEL : Styles.STRONG), "wmin 0");
        }
    }

    private String own(ForRunModel.Line line) {
        return line.known().isEmpty() ? line.own() : texts.get("traces.grid.known", line.own(), line.known());
    }
}
