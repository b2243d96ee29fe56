package witnessmark.desktop.runsheet;

import java.util.Optional;
import witnessmark.logbook.run.RunField;

/** What the actions of a sheet ask of what is seen. */
interface SheetView {
    /** While nothing is seen. */
    SheetView NOBODY = new SheetView() {
        @Override
        public void focus(RunField field) {
            // nothing is there to take the focus
        }

        @Override
        public Optional<RunField> focused() {
            return Optional.empty();
        }

        @Override
        public void written() {
            // nothing is there to forget
        }
    };

    /** Puts the caret into a field and selects what stands there. */
    void focus(RunField field);

    /** The field in focus. */
    Optional<RunField> focused();

    /** What was typed is written: from now on taking back means the logbook's last change, not the last letters. */
    void written();
}
