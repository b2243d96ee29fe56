package witnessmark.logbook.run;

import java.util.function.Function;
import java.util.function.LongFunction;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Run;
import witnessmark.quantity.typed.Typed;

/**
 * How one measured field of the sheet is read and judged.
 *
 * @param <T> what it measures
 * @param field which field
 * @param parse text to measure
 * @param text a measure as it would be typed into the field without its unit
 * @param of the measure in a run, or null when not recorded
 * @param number the measure as a whole number of its unit
 * @param shown a whole number of its unit as what is shown
 * @param lowest below this nothing of the kind reads, in the unit
 * @param highest above this nothing of the kind reads, in the unit
 * @param instrument differences below this are the instrument's, in the unit
 */
record Figure<T>(
        RunField field,
        Function<String, Typed<T>> parse,
        Function<T, String> text,
        Function<Run, @Nullable T> of,
        Function<T, Long> number,
        LongFunction<T> shown,
        long lowest,
        long highest,
        long instrument) {}
