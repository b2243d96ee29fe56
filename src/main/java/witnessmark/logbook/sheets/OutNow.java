package witnessmark.logbook.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.SentOut;
import witnessmark.domain.image.RecordTypes;
import witnessmark.ledger.result.Away;
import witnessmark.outcome.ProblemKind;

/** What is out with others, to pick from. */
final class OutNow {
    private OutNow() {}

    static List<Choice> choices(SheetSight sight) {
        return open(sight).stream()
                .map(entry -> Choice.of(
                        entry.id().text(),
                        SheetNote.of(
                                "out_with",
                                known(sight, entry),
                                entry.fact().sentTo(),
                                entry.fact().from())))
                .toList();
    }

    /** What is known of it, to be worded; of what is sent later the name alone. */
    private static Object known(SheetSight sight, Entry<SentOut> entry) {
        return sight.standing().out().of(entry.id()).<Object>map(away -> away).orElse(name(sight, entry.fact()));
    }

    /** The key of what is out when it is alone; else empty. */
    static String onlyOne(SheetSight sight) {
        List<Entry<SentOut>> open = open(sight);
        return open.size() == 1 ? open.get(0).id().text() : "";
    }

    static Optional<SentOut> find(SheetSight sight, String key) {
        return sight.find(SentOut.class, key).map(Entry::fact);
    }

    /** What is picked, or null; what was asked of them, and for when, stands under it. */
    static @Nullable Entry<SentOut> read(ReadSheet in, SheetField field) {
        if (open(in.sight()).isEmpty()) {
            in.note(field, SheetNote.of("nothing_out"));
        }
        Entry<SentOut> out = in.chosen(field, SentOut.class);
        if (out == null) {
            return null;
        }
        if (out.fact().back() != null) {
            in.wrong(field, ProblemKind.NOT_FOUND, RecordTypes.of(SentOut.class), name(in.sight(), out.fact()));
            return null;
        }
        LocalDate promised =
                in.sight().standing().out().of(out.id()).map(Away::promised).orElse(null);
        in.note(
                field,
                promised == null ? SheetNote.of("nothing_promised_yet") : SheetNote.of("promised_for", promised));
        return out;
    }

    /** What it is, by the word people know it by. */
    static String name(SheetSight sight, SentOut sent) {
        Id<Part> part = sent.part();
        Id<Engine> engine = sent.engine();
        Id<PartDesign> design = sent.design();
        return part != null
                ? sight.name(Part.class, part)
                : engine != null
                        ? sight.name(Engine.class, engine)
                        : design != null ? sight.name(PartDesign.class, design) : "";
    }

    private static List<Entry<SentOut>> open(SheetSight sight) {
        return sight.facts().of(SentOut.class).where(sent -> sent.back() == null);
    }
}
