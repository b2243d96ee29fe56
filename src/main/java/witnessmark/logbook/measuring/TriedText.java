package witnessmark.logbook.measuring;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.fit.result.WhatIf;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.typed.MeasureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedFigure;
import witnessmark.quantity.typed.TypedMeasure;

/**
 * Reads what somebody would like to try at speed, each as it was typed; what is left empty is as it is.
 *
 * @param whatIf what can be read
 * @param unread what cannot, with an example of what could
 */
public record TriedText(WhatIf whatIf, Map<Tried, String> unread) {
    private static final String SPEED = "8200";
    private static final String FIGURE = "0.2";

    public TriedText {
        unread = Map.copyOf(unread);
    }

    /** What can be tried, in the order it is asked for. */
    public enum Tried {
        RED_LINE(null),
        GASKET(MeasureUnit.MILLIMETRE),
        CROWN_CUT(MeasureUnit.MILLIMETRE),
        DECK_SKIM(MeasureUnit.MILLIMETRE),
        HEAD_SKIM(MeasureUnit.MILLIMETRE),
        ROD_AREA(MeasureUnit.SQUARE_MILLIMETRE);

        private final @Nullable MeasureUnit unit;

        Tried(@Nullable MeasureUnit unit) {
            this.unit = unit;
        }

        /** What a figure without a unit is in; null for revolutions a minute. */
        public @Nullable MeasureUnit unit() {
            return unit;
        }

        /** A cut may be nothing; a speed, a gasket's thickness and a section may not. */
        private boolean takesNothing() {
            return this == CROWN_CUT || this == DECK_SKIM || this == HEAD_SKIM;
        }
    }

    /** @param typed texts by what they try; blank or not there as it is */
    public static TriedText of(Map<Tried, String> typed) {
        Map<Tried, Long> read = new EnumMap<>(Tried.class);
        Map<Tried, String> unread = new EnumMap<>(Tried.class);
        typed.forEach((tried, text) -> {
            if (!text.isBlank()) {
                read(tried, text, read, unread);
            }
        });
        Long line = read.get(Tried.RED_LINE);
        return new TriedText(
                new WhatIf(
                        read.get(Tried.ROD_AREA),
                        read.get(Tried.GASKET),
                        read.get(Tried.CROWN_CUT),
                        read.get(Tried.DECK_SKIM),
                        read.get(Tried.HEAD_SKIM),
                        line == null ? null : Integer.valueOf(line.intValue())),
                unread);
    }

    private static void read(Tried tried, String text, Map<Tried, Long> read, Map<Tried, String> unread) {
        MeasureUnit unit = tried.unit();
        Long figure;
        String example = unit == null ? SPEED : FIGURE;
        if (unit == null) {
            figure = TypedFigure.engineSpeed(text)
                    .only()
                    .map(EngineSpeed::rpm)
                    .map(Long::valueOf)
                    .orElse(null);
        } else {
            Typed<TypedMeasure> typed = TypedMeasure.read(text, unit, false);
            figure = typed.only().map(TypedMeasure::parts).orElse(null);
            example = typed instanceof Typed.Unreadable<TypedMeasure> no ? no.example() : example;
        }
        if (figure == null || figure < 0 || figure == 0 && !tried.takesNothing()) {
            unread.put(tried, example);
        } else {
            read.put(tried, figure);
        }
    }
}
