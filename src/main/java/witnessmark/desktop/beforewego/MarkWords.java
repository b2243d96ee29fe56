package witnessmark.desktop.beforewego;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.SeamState;
import witnessmark.ledger.result.MarkState;
import witnessmark.ledger.result.PrintedDate;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.PartWithoutLimit;
import witnessmark.quantity.Counter;
import witnessmark.wording.Amounts;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;
import witnessmark.wording.UnprovenWords;

/** Words one mark. Every figure is one the ledger worked out; what is not known says what is missing. */
public final class MarkWords {
    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final RecordWords records;
    private final HeldWords held;
    private final LimitWords limits;
    private final ReadingUseWords readings;
    private final UnprovenWords unproven;

    public MarkWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.records = new RecordWords(texts);
        this.held = new HeldWords(texts, measures);
        this.limits = new LimitWords(texts, measures);
        this.readings = new ReadingUseWords(texts, measures);
        this.unproven = new UnprovenWords(texts, measures);
    }

    /**
     * What the reason itself says.
     *
     * @param life what the strip draws, or null when a strip says nothing
     * @param ran what was used or read: "12.87 h"
     * @param limit against what: "12 h"
     * @param figures both in a sentence
     * @param left how it stands: "0.9 h over now"
     * @param due what falls due
     * @param dueWords the same with what more is to be said
     * @param share what is used of the limit, or null
     * @param source where it is written, or empty
     */
    public record Said(
            @Nullable Life life,
            String ran,
            String limit,
            String figures,
            String left,
            String due,
            String dueWords,
            @Nullable Double share,
            String source) {}

    public Said said(MarkOn on) {
        return on.mark()
                .reason()
                .fold(held::of, use -> limits.of(on, use), use -> readings.of(on, use), this::printed, this::unproven);
    }

    /** What the strip of a mark draws; not known where it says nothing. */
    public Life strip(MarkOn on) {
        Life life = said(on).life();
        return life == null ? Life.notKnown() : life;
    }

    MarkLine line(MarkOn on) {
        Said said = said(on);
        String title = title(on);
        String where = where(on.engine(), on.car());
        return new MarkLine(
                on.subject() + " " + on.mark().reason().against(),
                SeamState.of(on.state()),
                title,
                where,
                place(on.engine(), on.car()),
                said.life(),
                said.ran(),
                said.limit(),
                said.figures(),
                said.left(),
                said.due(),
                said.dueWords(),
                said.share(),
                on.subject(),
                tip(said),
                about(title, where, said.figures(), said.left(), said.dueWords()));
    }

    /** A part nobody wrote a limit for: not known, and said so. */
    MarkLine line(PartWithoutLimit part) {
        String title = texts.get("beforewego.part", records.label(records.word(part.kind())), part.mark());
        String where = where(part.engine(), part.car());
        String none = texts.get("beforewego.limit.none");
        return new MarkLine(
                part.part().text(),
                SeamState.NOT_KNOWN,
                title,
                where,
                place(part.engine(), part.car()),
                Life.notKnown(),
                new LifeWords(texts, measures).life(part.ran()),
                none,
                none,
                texts.get("beforewego.left.noLimit"),
                "",
                "",
                null,
                part.part().text(),
                none,
                about(title, where, none));
    }

    private String tip(Said said) {
        String whole = about(said.figures(), said.dueWords());
        return said.source().isEmpty() ? whole : texts.get("beforewego.tip", whole, said.source());
    }

    private Said unproven(UnprovenBuild build) {
        String due = texts.get("beforewego.unproven.due");
        return new Said(
                null, "", "", unproven.list(build), unproven.name(build), due, unproven.closed(build), null, "");
    }

    private Said printed(PrintedDate date) {
        String useBy = texts.get("beforewego.printed", measures.date(date.useBy()));
        String left = date.state() == MarkState.OVER
                ? texts.get("beforewego.left.over", amounts.over(Counter.AGE, -date.daysLeft()))
                : amounts.left(Counter.AGE, date.daysLeft());
        return new Said(
                null,
                "",
                measures.date(date.useBy()),
                useBy,
                left,
                texts.get("beforewego.printed.due"),
                texts.get("beforewego.printed.due"),
                null,
                "");
    }

    /** What it is on, short: "Valve springs VS-03", "Engine K03". */
    public String title(MarkOn on) {
        if (on.mark().reason() instanceof ReadingUse use && on.serial() == null) {
            return records.label(records.word(use.limit().fact().kind()));
        }
        if (on.kind() != null && on.serial() != null) {
            return texts.get("beforewego.part", records.label(records.word(on.kind())), on.serial());
        }
        return on.engine() != null
                ? texts.get("beforewego.engine", on.engine())
                : texts.get("beforewego.car", String.valueOf(on.car()));
    }

    /** What it is on in a cell of its car's line: "valve springs", "leak-down", "engine K03". */
    String inCell(MarkOn on) {
        if (on.mark().reason() instanceof ReadingUse use) {
            return records.word(use.limit().fact().kind());
        }
        return on.kind() != null ? records.word(on.kind()) : title(on);
    }

    String where(@Nullable String engine, @Nullable String car) {
        if (engine == null) {
            return car == null ? texts.get("beforewego.shelf") : texts.get("beforewego.car", car);
        }
        return car == null
                ? texts.get("beforewego.engine.noCar", engine)
                : texts.get("beforewego.engine.car", engine, car);
    }

    private String place(@Nullable String engine, @Nullable String car) {
        if (engine == null) {
            return car == null ? texts.get("beforewego.shelf") : texts.get("beforewego.car", car);
        }
        return car == null ? engine : texts.get("beforewego.place", engine, car);
    }

    private String about(String first, String... more) {
        List<String> said = new ArrayList<>(List.of(first));
        for (String next : more) {
            if (!next.isEmpty()) {
                said.add(next);
            }
        }
        String all = said.get(0);
        for (String next : said.subList(1, said.size())) {
            all = texts.get("beforewego.comma", all, next);
        }
        return all;
    }
}
