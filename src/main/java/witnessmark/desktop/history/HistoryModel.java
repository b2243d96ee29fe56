package witnessmark.desktop.history;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.image.Component;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.engines.Amended;
import witnessmark.logbook.run.RunField;
import witnessmark.quantity.Moment;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;
import witnessmark.wording.ValueWords;

/** Words the history of one entry. */
public final class HistoryModel {
    /** The component of a run that names fields by their keys. */
    private static final String QUERIED = "queried";

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final ValueWords values;

    public HistoryModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.values = new ValueWords(texts, measures);
    }

    /** @param zone the team's, whose clock the times are shown by */
    public List<HistoryLine> lines(Entry<?> entry, List<Amended> history, ZoneId zone) {
        return history.stream().map(amended -> line(entry, amended, zone)).toList();
    }

    private HistoryLine line(Entry<?> entry, Amended amended, ZoneId zone) {
        return new HistoryLine(
                amended.at(),
                measures.fullMoment(Moment.of(amended.at(), zone)),
                amended.who(),
                amended.makes() ? texts.get("history.made") : changes(entry, amended.fields()),
                why(amended));
    }

    /** The reason somebody gave; else what was being done, which names the entry as the heading does. */
    private static String why(Amended amended) {
        for (Amended.Field field : amended.fields()) {
            Object because = field.after();
            if (because != null && field.name().equals(EntryImage.STRUCK_BECAUSE)) {
                return because.toString();
            }
        }
        return amended.why();
    }

    private String changes(Entry<?> entry, List<Amended.Field> fields) {
        List<String> all = new ArrayList<>();
        for (Amended.Field field : fields) {
            if (field.name().equals(EntryImage.STRUCK_BECAUSE)) {
                continue; // stands beside it, as the reason why
            }
            all.add(texts.get(
                    "history.field",
                    name(entry.fact().getClass(), field.name()),
                    value(field.name(), field.before()),
                    value(field.name(), field.after())));
        }
        return all.isEmpty() ? texts.get("history.nothing") : measures.row(all);
    }

    private String name(Class<? extends Fact> kind, String name) {
        for (Component component : RecordTypes.of(kind).components()) {
            if (component.name().equals(name)) {
                return records.field(kind, component);
            }
        }
        return texts.get("history.standing");
    }

    private String value(String name, @Nullable Object value) {
        if (value == null || value.equals("")) {
            return texts.get("history.empty");
        }
        return name.equals(QUERIED) ? queried(value.toString()) : values.word(value);
    }

    private String queried(String keys) {
        return measures.row(Stream.of(keys.split(" "))
                .flatMap(key -> RunField.of(key).stream())
                .map(records::word)
                .toList());
    }
}
