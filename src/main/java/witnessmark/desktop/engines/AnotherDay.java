package witnessmark.desktop.engines;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Supplier;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.logbook.Desk;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** Looks at the logbook as of an earlier day, and says so over the window until somebody goes back. */
final class AnotherDay {
    private final Texts texts;
    private final Measures measures;
    private final witnessmark.desktop.shell.Desk window;
    private final Supplier<Desk> desk;

    AnotherDay(Texts texts, Measures measures, witnessmark.desktop.shell.Desk window, Supplier<Desk> desk) {
        this.texts = texts;
        this.measures = measures;
        this.window = window;
        this.desk = desk;
    }

    void look(LocalDate day) {
        desk.get().lookAsOf(day);
        window.notice(
                texts.get("engines.asOf.notice", measures.date(day)),
                List.of(Buttons.plain(Caption.of(texts.get("engines.asOf.back")), this::back)));
        window.changed();
    }

    void back() {
        desk.get().lookAsOf(null);
        window.dismissNotice();
        window.changed();
    }
}
