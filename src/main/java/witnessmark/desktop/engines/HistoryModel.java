package witnessmark.desktop.engines;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.engines.Amended;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words the history of one entry. */
final class HistoryModel {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;

    HistoryModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
    }

    /** @param zone the team's, whose clock the times are shown by */
    List<HistoryLine> lines(Entry<?> entry, List<Amended> history, ZoneId zone) {
        return history.stream().map(amended -> line(entry, amended, zone)).toList();
    }

    private HistoryLine line(Entry<?> entry, Amended amended, ZoneId zone) {
        return new HistoryLine(
                amended.at(),
                measures.fullMoment(Moment.of(amended.at(), zone)),
                amended.who(),
                amended.makes() ? texts.get("engines.history.made") : changes(entry, amended.fields()),
                why(amended));
    }

    /** The reason somebody gave; else what was being done, which names the entry as the heading does. */
    private static String why(Amended amended) {
        for (Amended.Field field : amended.fields()) {
            String because = field.after();
            if (because != null && field.name().equals(EntryImage.STRUCK_BECAUSE)) {
                return because;
            }
        }
        return amended.why();
    }

    private String changes(Entry<?> entry, List<Amended.Field> fields) {
        if (fields.isEmpty()) {
            return texts.get("engines.history.nothing");
        }
        List<String> all = new ArrayList<>();
        for (Amended.Field field : fields) {
            if (field.name().equals(EntryImage.STRUCK_BECAUSE)) {
                continue; // stands beside it, as the reason why
            }
            all.add(texts.get(
                    "engines.history.field",
                    name(entry.fact().getClass(), field.name()),
                    value(field.before()),
                    value(field.after())));
        }
        return measures.row(all);
    }

    /** The label of a column: that of the field it belongs to. */
    private String name(Class<? extends Fact> kind, String column) {
        for (Component component : RecordTypes.of(kind).components()) {
            boolean own = component.columns().stream().anyMatch(c -> c.name().equals(column));
            if (own) {
                return records.field(kind, component);
            }
        }
        return texts.get("engines.history.column." + column);
    }

    private String value(@Nullable String value) {
        return value == null || value.isEmpty() ? texts.get("engines.history.empty") : value;
    }
}
