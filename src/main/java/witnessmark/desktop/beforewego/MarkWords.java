package witnessmark.desktop.beforewego;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.Life;
import witnessmark.desktop.form.SeamState;
import witnessmark.ledger.result.Expected;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.ReadingUse;
import witnessmark.ledger.result.UnprovenBuild;
import witnessmark.logbook.standing.MarkOn;
import witnessmark.logbook.standing.PartWithoutLimit;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.StandWords;
import witnessmark.wording.Texts;

/** Words one mark as the window shows it: its line, its strip. */
public final class MarkWords {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final StandWords stands;

    public MarkWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.stands = new StandWords(texts, measures);
    }

    /** What the reason itself says. */
    public StandWords.Said said(MarkOn on) {
        return stands.said(on.mark());
    }

    /** What the strip of a mark draws; not known where it says nothing. */
    public Life strip(MarkOn on) {
        Life life = life(on);
        return life == null ? Life.notKnown() : life;
    }

    /** The same, or null where a strip says nothing. */
    private static @Nullable Life life(MarkOn on) {
        LimitUse use = on.use();
        if (use == null) {
            return null;
        }
        if (!use.used().complete() && use.used().highest() == 0) {
            return Life.notKnown();
        }
        Expected expected = on.mark().expected();
        return Life.of(use.used().highest(), expected == null ? 0 : expected.likely(), use.amount());
    }

    MarkLine line(MarkOn on) {
        StandWords.Said said = said(on);
        String title = title(on);
        String where = where(on.engine(), on.car());
        return new MarkLine(
                on.subject() + " " + on.mark().reason().against(),
                SeamState.of(on.state()),
                title,
                where,
                place(on.engine(), on.car()),
                life(on),
                said.ran(),
                said.limit(),
                said.figures(),
                said.left(),
                said.due(),
                said.dueWords(),
                said.share(),
                on.mark().reason() instanceof UnprovenBuild unproven
                        ? unproven.build().id().text()
                        : on.subject(),
                on.mark().reason() instanceof UnprovenBuild,
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
                false,
                none,
                about(title, where, none));
    }

    private String tip(StandWords.Said said) {
        String whole = about(said.figures(), said.dueWords());
        return said.source().isEmpty() ? whole : texts.get("beforewego.tip", whole, said.source());
    }

    /** What it is on, short: "Valve springs VS-03", "Engine K03". */
    public String title(MarkOn on) {
        return stands.title(on.mark(), on.kind(), on.serial(), on.engine(), on.car());
    }

    /** What it is on in a cell of its car's line: "valve springs", "leak-down", "engine K03". */
    String inCell(MarkOn on) {
        if (on.mark().reason() instanceof ReadingUse use) {
            return records.word(use.limit().fact().kind());
        }
        return on.kind() != null ? records.word(on.kind()) : title(on);
    }

    private String where(@Nullable String engine, @Nullable String car) {
        return stands.where(engine, car);
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
