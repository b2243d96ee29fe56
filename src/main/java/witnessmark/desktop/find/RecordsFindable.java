package witnessmark.desktop.find;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.shell.Desk;
import witnessmark.desktop.shell.Findable;
import witnessmark.desktop.shell.Found;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.domain.Facts;
import witnessmark.quantity.typed.DayOrder;
import witnessmark.quantity.typed.TypedDate;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;

/** One group of records for the find field. All groups share one index, made anew when the logbook has changed. */
public final class RecordsFindable implements Findable {
    private final FindGroup group;
    private final Texts texts;
    private final Desk desk;
    private final IndexOfLatest index;
    private final Function<String, Optional<LocalDate>> day;
    private final Opened opened;

    /**
     * What opens what has no place of its own; each is told an identity as text.
     *
     * @param sheet shows an entry on its sheet
     * @param trace shows a trace
     * @param trial shows a trial
     */
    public record Opened(Consumer<String> sheet, Consumer<String> trace, Consumer<String> trial) {}

    private RecordsFindable(
            FindGroup group,
            Texts texts,
            Desk desk,
            IndexOfLatest index,
            Function<String, Optional<LocalDate>> day,
            Opened opened) {
        this.group = group;
        this.texts = texts;
        this.desk = desk;
        this.index = index;
        this.day = day;
        this.opened = opened;
    }

    /**
     * Every group, in the order they are shown.
     *
     * @param desk the window's, to go where a record is
     * @param facts everything written so far; asked off the event thread
     * @param today the day taken for today; asked off the event thread
     * @param order what stands first in a date of figures
     * @param opened opens what has no place of its own
     */
    public static List<Findable> all(
            Texts texts,
            Measures measures,
            Desk desk,
            Supplier<Facts> facts,
            Supplier<LocalDate> today,
            DayOrder order,
            Opened opened) {
        IndexOfLatest index = new IndexOfLatest(facts, today, new ReadRecords(texts, measures));
        Function<String, Optional<LocalDate>> day =
                typed -> TypedDate.read(typed, today.get(), order).only();
        return Arrays.stream(FindGroup.values())
                .map(group -> (Findable) new RecordsFindable(group, texts, desk, index, day, opened))
                .toList();
    }

    @Override
    public String group() {
        return texts.get(group.key());
    }

    @Override
    public String all(int count) {
        return texts.get(group.allKey(), count);
    }

    @Override
    public List<Found> find(String typed, int most) {
        return index.now().find(group, typed, day.apply(typed).orElse(null), most).stream()
                .map(this::found)
                .toList();
    }

    /** What opens records of a group that has no place of its own. */
    private @Nullable Consumer<String> opener() {
        return switch (group) {
            case JOBS -> opened.sheet();
            case TRACES -> opened.trace();
            case TRIALS -> opened.trial();
            default -> null;
        };
    }

    private Found found(Indexed record) {
        PlaceId place = record.place();
        Consumer<String> open = opener();
        if (open != null) {
            return new Found(record.title(), record.note(), () -> open.accept(record.record()));
        }
        return place == null
                ? Found.holding(
                        record.title(),
                        record.note(),
                        record.within().stream().map(this::found).toList())
                : new Found(record.title(), record.note(), () -> desk.go(place, record.record()));
    }
}
