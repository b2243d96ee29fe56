package witnessmark.desktop.bench;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Id;
import witnessmark.domain.Tool;
import witnessmark.logbook.measuring.WriteFigures;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Temperature;
import witnessmark.quantity.typed.TemperatureUnit;
import witnessmark.quantity.typed.Typed;
import witnessmark.quantity.typed.TypedFigure;

/** Reads what holds besides a figure's place. */
final class Hows {
    private final TemperatureUnit unit;

    /** @param unit of a bare temperature */
    Hows(TemperatureUnit unit) {
        this.unit = unit;
    }

    /** Whether it can be written. */
    boolean reads(How how) {
        return how.temperature().isBlank() || read(how).only().isPresent();
    }

    /** A temperature that could be read. */
    String example(How how) {
        return read(how) instanceof Typed.Unreadable<Temperature> wrong ? wrong.example() : "";
    }

    private Typed<Temperature> read(How how) {
        return TypedFigure.read(how.temperature(), unit);
    }

    /**
     * As it is written.
     *
     * @param at when it was measured
     */
    WriteFigures.Setting setting(How how, Moment at) {
        @Nullable
        Temperature temperature =
                how.temperature().isBlank() ? null : read(how).only().orElse(null);
        @Nullable Id<Tool> tool = how.tool().isEmpty() ? null : Id.<Tool>parse(how.tool());
        return new WriteFigures.Setting(
                tool, temperature, how.stood(), at, how.by().strip());
    }
}
