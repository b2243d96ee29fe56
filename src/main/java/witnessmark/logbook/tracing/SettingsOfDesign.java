package witnessmark.logbook.tracing;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.LoggerFigures;
import witnessmark.domain.Trigger;
import witnessmark.domain.TriggerKind;
import witnessmark.quantity.EngineSpeed;
import witnessmark.quantity.Temperature;
import witnessmark.trace.result.TraceSetting;
import witnessmark.trace.result.TraceSettings;

/** By what figures traces of engines of a design are reduced: what the team wrote down, else what is usual. */
final class SettingsOfDesign {
    private TraceSettings settings = TraceSettings.usual();

    private SettingsOfDesign() {}

    static TraceSettings of(Facts facts, Id<EngineDesign> design) {
        SettingsOfDesign all = new SettingsOfDesign();
        all.speed(
                TraceSetting.OVER_REV_ABOVE,
                facts.of(EngineDesign.class).get(design).overRevAbove());
        facts.of(Trigger.class)
                .where(rule -> rule.design() == null || rule.design().equals(design))
                .forEach(rule -> all.rule(rule.fact()));
        facts.of(LoggerFigures.class).where(figures -> figures.design().equals(design)).stream()
                .reduce((one, later) -> later)
                .ifPresent(figures -> all.own(figures.fact()));
        return all.settings;
    }

    private void rule(Trigger rule) {
        if (rule.kind() == TriggerKind.WATER_ABOVE) {
            temperature(TraceSetting.WATER_LIMIT, new Temperature(Objects.requireNonNull(rule.figure())));
        } else if (rule.kind() == TriggerKind.OIL_ABOVE) {
            temperature(TraceSetting.OIL_LIMIT, new Temperature(Objects.requireNonNull(rule.figure())));
        }
    }

    private void own(LoggerFigures figures) {
        speed(TraceSetting.RUNNING_FROM, figures.runningAbove());
        speed(TraceSetting.LOADED_FROM, figures.loadedAbove());
        speed(TraceSetting.HIGH_SPEED_FROM, figures.highSpeedAbove());
        speed(TraceSetting.OIL_FLOOR_ABOVE, figures.oilFloorFrom());
        temperature(TraceSetting.HEAT_ARMED_BELOW, figures.coldBelow());
        temperature(TraceSetting.HEAT_COUNTED_ABOVE, figures.hotAbove());
        if (figures.oilFloor() != null) {
            set(TraceSetting.OIL_FLOOR, figures.oilFloor().inBar().doubleValue());
        }
        if (figures.hotFor() != null) {
            set(TraceSetting.HEAT_COUNTED_FOR, figures.hotFor().millis() / 1e3);
        }
    }

    private void speed(TraceSetting setting, @Nullable EngineSpeed speed) {
        if (speed != null) {
            set(setting, speed.rpm());
        }
    }

    private void temperature(TraceSetting setting, @Nullable Temperature temperature) {
        if (temperature != null) {
            set(setting, temperature.inCelsius().doubleValue());
        }
    }

    /** A figure that cannot be one of a trace leaves what is usual. */
    private void set(TraceSetting setting, double figure) {
        if (figure >= setting.least() && figure <= setting.most()) {
            settings = settings.with(setting, figure);
        }
    }
}
