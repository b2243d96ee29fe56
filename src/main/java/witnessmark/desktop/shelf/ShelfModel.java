package witnessmark.desktop.shelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;
import witnessmark.domain.Part;
import witnessmark.domain.StockBatch;
import witnessmark.ledger.result.LimitUse;
import witnessmark.ledger.result.StockLevel;
import witnessmark.logbook.engines.FittedTime;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.shelf.Shelf;
import witnessmark.logbook.shelf.ShelfPart;
import witnessmark.logbook.shelf.SinceWork;
import witnessmark.logbook.shelf.StockRow;
import witnessmark.wording.Amounts;
import witnessmark.wording.LifeWords;
import witnessmark.wording.Measures;
import witnessmark.wording.ReasonWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;
import witnessmark.wording.WhereWords;

/** Words the shelf. The same answer always gives the same lines. */
final class ShelfModel {
    private final Texts texts;
    private final Measures measures;
    private final WhereWords where;
    private final LifeWords lives;
    private final Amounts amounts;
    private final ReasonWords reasons;
    private final RecordWords records;

    ShelfModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.where = new WhereWords(texts, measures);
        this.lives = new LifeWords(texts, measures);
        this.amounts = new Amounts(texts, measures);
        this.reasons = new ReasonWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    ShelfLines lines(Shelf shelf) {
        List<ShelfLine> parts = shelf.parts().stream().map(this::line).toList();
        Map<Whereabout, List<ShelfLine>> under = new EnumMap<>(Whereabout.class);
        for (Whereabout choice : Whereabout.values()) {
            under.put(
                    choice,
                    parts.stream()
                            .filter(line -> line.shownUnder().contains(choice))
                            .toList());
        }
        return new ShelfLines(
                measures.date(shelf.day()),
                shelf.needHand(),
                parts,
                under,
                shelf.stock().stream().map(this::line).toList(),
                shelf.parts().stream().anyMatch(part -> !part.counted().isEmpty()));
    }

    private ShelfLine line(ShelfPart part) {
        Part fact = part.row().part().fact();
        SinceWork since = part.since();
        return new ShelfLine(
                part.row().part().id().text(),
                state(part),
                fact.mark(),
                records.label(records.word(part.row().design().kind())),
                design(part),
                part.row().first() == null
                        ? where.where(part.where(), place(part))
                        : texts.get(
                                "shelf.notYet", measures.date(part.row().first().day())),
                where.since(part.where()),
                part.where().since(),
                lives.life(part.row().running()),
                part.row().running().highest(),
                row(part.counted().stream().map(this::counted).toList()),
                since == null ? "" : since(since),
                since == null ? null : Long.valueOf(since.ran().highest()),
                worst(part),
                note(part),
                under(part),
                Prefilled.about(part.where(), part.whole()),
                part.onTrial());
    }

    /** What nothing is held against is not known; what is out of use or away stands for itself. */
    private static SeamState state(ShelfPart part) {
        if (part.gone()) {
            return SeamState.SCRAP;
        }
        return part.worst() == null
                ? SeamState.NOT_KNOWN
                : SeamState.of(part.worst().state());
    }

    private String design(ShelfPart part) {
        String batch = part.row().part().fact().batch();
        String name = part.row().design().name();
        return batch.isEmpty() ? name : texts.get("shelf.design.batch", name, batch);
    }

    /** "K03, car 41", "car 41". */
    private String place(ShelfPart part) {
        if (part.there() == null) {
            return "";
        }
        String named = named(part.there());
        return part.car() == null
                ? named
                : texts.get("shelf.place.both", named, texts.get("shelf.place.car", part.car()));
    }

    private String named(FittedTime time) {
        return time.engine() == null ? texts.get("shelf.place.car", time.place()) : time.place();
    }

    /** "41 of 60 heat cycles". */
    private String counted(LimitUse use) {
        return texts.get(
                "shelf.counted",
                lives.life(use.used()),
                amounts.amount(use.used().counter(), use.amount()));
    }

    private String since(SinceWork since) {
        String ran = lives.life(since.ran());
        boolean skim = since.work() == SinceWork.Work.SKIM;
        return since.at() == null
                ? texts.get(skim ? "shelf.since.noSkim" : "shelf.since.noRebuild")
                : texts.get(skim ? "shelf.since.skim" : "shelf.since.rebuild", ran);
    }

    private String worst(ShelfPart part) {
        if (part.gone()) {
            return "";
        }
        return part.worst() == null
                ? texts.get("shelf.noLimit")
                : reasons.why(part.worst().mark());
    }

    private String note(ShelfPart part) {
        List<String> said = new ArrayList<>(where.why(part.where()));
        if (part.where().borrowed()) {
            said.add(where.goesBack(part.before() == null ? "" : named(part.before())));
        }
        part.keptFor()
                .forEach(job -> said.add(texts.get("shelf.keptFor", job.fact().what())));
        String note = part.row().part().fact().note();
        if (!note.isBlank()) {
            said.add(note);
        }
        return row(said);
    }

    private String row(List<String> said) {
        return said.isEmpty() ? "" : measures.row(said);
    }

    private static Set<Whereabout> under(ShelfPart part) {
        return Arrays.stream(Whereabout.values())
                .filter(choice -> choice.holds(part))
                .collect(Collectors.toSet());
    }

    private StockLine line(StockRow row) {
        StockLevel level = row.level();
        StockBatch batch = level.batch().fact();
        @Nullable LocalDate useBy = batch.useBy();
        String stands = where.stands(level);
        boolean past = level.pastUse() && level.onShelf() > 0;
        return new StockLine(
                level.batch().id().text(),
                level.isShort() || past ? SeamState.OVER : SeamState.WITHIN,
                batch.batch(),
                row.design().name(),
                level.onShelf(),
                level.kept(),
                level.free(),
                level.leastOfDesign() == 0 ? texts.get("shelf.stock.noLeast") : measures.number(level.leastOfDesign()),
                level.leastOfDesign() == 0 ? null : Integer.valueOf(level.leastOfDesign()),
                stands.isEmpty() ? texts.get("shelf.stock.enough") : stands,
                useBy == null ? "" : measures.date(useBy),
                useBy,
                batch.shelf(),
                Prefilled.about(level.batch().id()));
    }
}
