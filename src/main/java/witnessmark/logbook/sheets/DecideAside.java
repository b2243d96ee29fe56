package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Part;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.quantity.Moment;

/** Decides about a part in quarantine: it may be fitted again, or it is taken out of use. */
public final class DecideAside implements LogSheet {
    public static final SheetField ASIDE = choice("aside", 2);
    public static final SheetField WHEN = of("when", FieldKind.DAY);
    public static final SheetField WHEN_TIME = of("when_time", FieldKind.CLOCK);
    public static final SheetField DECIDED = choice("decided", 1);
    public static final SheetField WORDS = text("decided_words", 3);
    public static final SheetField BY = text("by", 1);

    @Override
    public String key() {
        return "decide_aside";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("decide_aside", List.of(ASIDE, WHEN, WHEN_TIME), List.of(DECIDED, WORDS), List.of(BY)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        List<Entry<Quarantine>> open = open(sight);
        return Map.of(
                ASIDE,
                open.size() == 1 ? open.get(0).id().text() : "",
                WHEN,
                sight.today().toString(),
                BY,
                sight.who());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        return switch (field.key()) {
            case "aside" ->
                open(sight).stream()
                        .map(entry -> Choice.of(
                                entry.id().text(),
                                SheetNote.of(
                                        "aside_since",
                                        name(sight, entry.fact()),
                                        entry.fact().from(),
                                        entry.fact().why())))
                        .toList();
            case "decided" -> List.of(SheetWord.LET_OUT.choice(), SheetWord.SCRAP_IT.choice());
            default -> List.of();
        };
    }

    @Override
    public void read(ReadSheet in) {
        if (open(in.sight()).isEmpty()) {
            in.note(ASIDE, SheetNote.of("nothing_aside"));
        }
        @Nullable Entry<Quarantine> entry = in.chosen(ASIDE, Quarantine.class);
        Moment when = new ReadValues(in).moment(WHEN, WHEN_TIME);
        in.needed(DECIDED);
        in.note(WORDS, SheetNote.of("decided_example"));
        String words = in.needed(WORDS);
        String by = in.needed(BY);
        if (entry == null || when == null) {
            return;
        }
        Quarantine aside = entry.fact();
        in.note(ASIDE, SheetNote.of("aside_by", aside.by(), aside.from()));
        Moment from = Ending.begun(in, WHEN, aside.from(), when);
        if (!in.fine() || from == null) {
            return;
        }
        Ending.makeRoom(in, WHEN, aside.part(), aside.from(), from);
        in.change(
                ASIDE,
                entry,
                new Quarantine(aside.part(), aside.member(), from, aside.why(), aside.by(), when, words, by));
        if (in.is(DECIDED, SheetWord.SCRAP_IT)) {
            in.make(DECIDED, new Scrapping(aside.part(), aside.member(), when, words, by));
        }
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(sight.find(Quarantine.class, typed.text(ASIDE))
                .map(entry -> name(sight, entry.fact()))
                .orElse(""));
    }

    private static String name(SheetSight sight, Quarantine aside) {
        return (sight.name(Part.class, aside.part()) + " " + aside.member()).strip();
    }

    private static List<Entry<Quarantine>> open(SheetSight sight) {
        return sight.facts().of(Quarantine.class).where(aside -> aside.to() == null);
    }
}
