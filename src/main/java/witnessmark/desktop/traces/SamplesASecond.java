package witnessmark.desktop.traces;

import java.util.OptionalDouble;
import witnessmark.desktop.form.FieldBox;
import witnessmark.trace.result.TimeBase;
import witnessmark.wording.Texts;

/** Reads how many samples there are a second out of a field; what is none is said under it. */
final class SamplesASecond {
    private SamplesASecond() {}

    static OptionalDouble read(FieldBox field, Texts texts) {
        String text = field.text().strip().replace(',', '.');
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double rate = Double.parseDouble(text);
            if (rate > 0 && rate <= TimeBase.FASTEST) {
                field.note("");
                return OptionalDouble.of(rate);
            }
            field.stop(texts.get("traces.answer.no_rate"));
        } catch (NumberFormatException e) {
            field.stop(texts.get("traces.answer.no_rate"));
        }
        return OptionalDouble.empty();
    }
}
