package witnessmark.desktop.bench;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JTextField;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.NoteLine;
import witnessmark.desktop.form.SeamIcon;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.form.TextUndo;
import witnessmark.desktop.form.Traversal;

/** A field of the sheet: the figure as typed, its mark at the right edge. Enter goes on, Shift+Enter back. */
final class FigureField extends JTextField {
    private static final int MARK = 16;

    private final BenchLines.Cell cell;
    private final transient TextUndo undo;
    private transient BenchModel.@Nullable Basis told;
    private @Nullable SeamState state;

    FigureField(BenchLines.Cell cell) {
        this.cell = cell;
        setColumns(5);
        setHorizontalAlignment(TRAILING);
        putClientProperty(
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
        getAccessibleContext().setAccessibleName(cell.name());
        Traversal.enterMovesBothWays(this);
        undo = TextUndo.install(this);
    }

    BenchLines.Cell cell() {
        return cell;
    }

    /** Puts in what stands there. Where it stands already the caret and what can be taken back stay. */
    void load(String text) {
        if (!text.equals(getText())) {
            setText(text);
            undo.clear();
        }
    }

    /** Whether something else is to be said of it than was; from now on this is said. */
    boolean isNews(BenchModel.Basis now) {
        boolean news = !now.is(told);
        told = now;
        return news;
    }

    /** Shows how what stands there stands, and tells screen readers. */
    void stand(BenchLines.Stand stand, FigureWords.Say say) {
        if (stand.state() != state) {
            state = stand.state();
            putClientProperty(
                    FlatClientProperties.TEXT_FIELD_TRAILING_ICON, state == null ? null : new SeamIcon(state, MARK));
        }
        NoteLine.tell(say.level(), say.words(), this);
    }

    @Nullable
    SeamState state() {
        return state;
    }
}
