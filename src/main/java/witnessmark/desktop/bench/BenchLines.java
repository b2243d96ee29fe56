package witnessmark.desktop.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.ColumnPane;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.lessons.LessonLine;
import witnessmark.domain.MeasurePlace;
import witnessmark.wording.FitWords;
import witnessmark.wording.Texts;

/**
 * A build sheet in words.
 *
 * @param build the text form of the build's identity
 * @param title which engine and which build
 * @param headline what the sheet comes to
 * @param state the mark beside it
 * @param signed how many places are measured, by whom it is signed and when, or that nobody signed it
 * @param typed whether it is with what is typed and not written
 * @param lacking which parts are not in the engine; empty when all are
 * @param contradictions figures that cannot all be right
 * @param asks what is to be asked before it is signed
 * @param steps what is measured, in measuring order
 * @param answers how it stands, worst first
 * @param joints what its joints pull with
 * @param lessons what lessons ask of it that is open
 */
record BenchLines(
        String build,
        String title,
        String headline,
        SeamState state,
        String signed,
        boolean typed,
        String lacking,
        List<String> contradictions,
        List<String> asks,
        List<Step> steps,
        List<AnswerLine> answers,
        List<JointLine> joints,
        List<LessonLine> lessons) {
    BenchLines {
        contradictions = List.copyOf(contradictions);
        asks = List.copyOf(asks);
        steps = List.copyOf(steps);
        answers = List.copyOf(answers);
        joints = List.copyOf(joints);
        lessons = List.copyOf(lessons);
    }

    /** Lines of a column as they are laid out: each with what it rests on. */
    static List<ColumnPane.Row> rows(Texts texts, List<FitWords.Line> lines) {
        return lines.stream()
                .map(line -> new ColumnPane.Row(
                        line.basis().isEmpty()
                                ? line.what()
                                : texts.get("bench.column.line", line.what(), line.basis()),
                        line.figure()))
                .toList();
    }

    /**
     * A tightened joint.
     *
     * @param stand what it comes to, in one line
     * @param column how that comes about
     * @param beside what is missing
     */
    record JointLine(Stand stand, List<FitWords.Line> column, List<String> beside) {
        JointLine {
            column = List.copyOf(column);
            beside = List.copyOf(beside);
        }
    }

    /**
     * A build to choose.
     *
     * @param id the text form of its identity
     * @param words engine, number, since when it is open or when it was closed
     */
    record Choice(String id, String words) {
        /** What screen readers say of it. */
        @Override
        public String toString() {
            return words;
        }
    }

    /** What is measured in one step of the build. */
    record Step(String heading, List<Grid> grids) {
        Step {
            grids = List.copyOf(grids);
        }
    }

    /**
     * One kind of figure.
     *
     * @param heading its name
     * @param unit the unit of bare figures, and what they may be
     * @param words whether a side is told in words, like {@code 0.05 proud}, which needs more room
     * @param columns what stands above the fields; empty where one figure is taken at a place
     * @param rows in measuring order
     */
    record Grid(String heading, String unit, boolean words, List<String> columns, List<Row> rows) {
        Grid {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }

        /** How many fields stand beside each other. */
        int width() {
            return Math.max(1, columns.size());
        }
    }

    /** A cylinder, a main bearing, or a spot of the engine's one. */
    record Row(String label, List<Cell> cells) {
        Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A field.
     *
     * @param place where
     * @param name what is measured there, with its unit, for screen readers
     * @param column which column it stands in
     */
    record Cell(MeasurePlace place, String name, int column) {}

    /**
     * How a figure stands.
     *
     * @param state its mark, or null where nothing is set to hold it against
     * @param word the word of the mark; empty without one
     * @param sentence in full
     */
    record Stand(@Nullable SeamState state, String word, String sentence) {}
}
