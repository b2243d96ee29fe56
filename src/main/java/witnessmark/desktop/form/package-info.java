/**
 * The parts every place is built from: marks, strips, fields with their note line, tables, sheets. It differs from
 * {@code shell} in that nothing here knows of places or of the window. Open {@link witnessmark.desktop.form.FieldBox}
 * for forms, {@link witnessmark.desktop.form.SheetTable} for lists, {@link witnessmark.desktop.form.SeamMark} for state.
 */
@NullMarked
package witnessmark.desktop.form;

import org.jspecify.annotations.NullMarked;
