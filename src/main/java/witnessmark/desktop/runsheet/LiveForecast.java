package witnessmark.desktop.runsheet;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.task.Later;
import witnessmark.desktop.task.Latest;
import witnessmark.desktop.task.Tasks;
import witnessmark.logbook.run.RunReading;
import witnessmark.logbook.run.TypedRun;
import witnessmark.wording.Texts;

/** Works out what the run on a sheet does, a moment after typing stops. Event thread only. */
final class LiveForecast {
    private static final Logger LOG = LoggerFactory.getLogger(LiveForecast.class);
    private static final Duration QUIET = Duration.ofMillis(120);

    private final Texts texts;
    private final RunSheetModel model;
    private final Latest forecasts;
    private final Later soon;
    private @Nullable RunReading last;

    private LiveForecast(Tasks tasks, Texts texts, RunSheetModel model) {
        this.texts = texts;
        this.model = model;
        this.forecasts = new Latest(tasks);
        this.soon = tasks.later(QUIET, this::forecast);
    }

    /** Follows a model from now on. */
    static LiveForecast of(Tasks tasks, Texts texts, RunSheetModel model) {
        LiveForecast forecast = new LiveForecast(tasks, texts, model);
        model.onChange(forecast::look);
        return forecast;
    }

    /** Looks whether there is something new to work out. */
    void look() {
        if (model.reading() != last) {
            last = model.reading();
            soon.poke();
        }
    }

    private void forecast() {
        RunReading reading = model.reading();
        if (reading.run() == null) {
            forecasts.drop();
            model.does(reading, Optional.empty());
            return;
        }
        TypedRun sheet = model.sheet();
        forecasts.run(
                texts.get("runsheet.forecasting"),
                () -> sheet.does(reading),
                answer -> model.does(reading, answer),
                thrown -> {
                    LOG.error("what a run does could not be worked out", thrown);
                    model.does(reading, Optional.empty());
                });
    }
}
