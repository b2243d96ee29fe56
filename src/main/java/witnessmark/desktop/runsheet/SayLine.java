package witnessmark.desktop.runsheet;

import java.util.Objects;
import java.util.function.Function;
import javax.swing.JComponent;
import witnessmark.desktop.form.LabelledBox;

/** Says a line under its field: short there, and in full in the tip and to screen readers. */
final class SayLine {
    private SayLine() {}

    static void on(
            LabelledBox box, FieldLine line, Function<FieldLine, String> shortly, Function<FieldLine, String> inFull) {
        String said = shortly.apply(line);
        switch (line.level()) {
            case NOTE -> box.note(said);
            case ECHO -> box.echo(said);
            case QUERY -> box.query(said);
            case STOP -> box.stop(said);
        }
        String full = inFull.apply(line);
        if (!full.equals(said)) {
            box.line().setToolTipText(full);
            JComponent input = (JComponent) Objects.requireNonNull(box.label().getLabelFor());
            input.getAccessibleContext().setAccessibleDescription(full);
        }
    }
}
