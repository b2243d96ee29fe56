package witnessmark.logbook.sheets;

import static witnessmark.logbook.sheets.SheetField.choice;
import static witnessmark.logbook.sheets.SheetField.of;
import static witnessmark.logbook.sheets.SheetField.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Entry;
import witnessmark.domain.Notice;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.StockBatch;
import witnessmark.ledger.Notices;
import witnessmark.outcome.ProblemKind;

/** A maker's notice by design, batch or serials: which parts are meant, and where each is now. */
public final class WriteNotice implements LogSheet {
    public static final SheetField NUMBER = text("notice_number", 1);
    public static final SheetField MAKER = text("maker", 1);
    public static final SheetField DATED = of("dated", FieldKind.DAY);
    public static final SheetField HOLDS = choice("notice_holds", 1);
    public static final SheetField DESIGN = choice("notice_design", 2);
    public static final SheetField BATCH = text("batch", 2);
    public static final SheetField MARKS = new SheetField("marks", FieldKind.LINES, 2);
    public static final SheetField ASKS = text("notice_asks", 4);
    public static final SheetField NOTE = text("note", 4);
    private static final int SHOWN = 12;

    @Override
    public String key() {
        return "write_notice";
    }

    @Override
    public List<SheetGroup> groups() {
        return List.of(
                SheetGroup.of("notice", List.of(NUMBER, MAKER, DATED, HOLDS), List.of(ASKS), List.of(NOTE)),
                SheetGroup.of("notice_meant", List.of(DESIGN, BATCH), List.of(MARKS)));
    }

    @Override
    public Map<SheetField, String> fresh(SheetSight sight) {
        return Map.of(
                HOLDS, SheetWord.NO.key(),
                DESIGN, SheetWord.ALL_DESIGNS.key());
    }

    @Override
    public List<Choice> choices(SheetField field, SheetTyped typed, SheetSight sight) {
        if (field.equals(HOLDS)) {
            return List.of(SheetWord.NO.choice(), SheetWord.YES.choice());
        }
        if (!field.equals(DESIGN)) {
            return List.of();
        }
        List<Choice> choices = new ArrayList<>();
        choices.add(SheetWord.ALL_DESIGNS.choice());
        choices.addAll(sight.all(PartDesign.class, design -> true));
        return choices;
    }

    @Override
    public void read(ReadSheet in) {
        String number = in.newName(NUMBER, Notice.class);
        LocalDate dated = new ReadValues(in).neededDay(DATED);
        in.note(HOLDS, SheetNote.of("notice_holds"));
        in.note(ASKS, SheetNote.of("notice_asks_example"));
        String asks = in.needed(ASKS);
        @Nullable
        Entry<PartDesign> design = in.is(DESIGN, SheetWord.ALL_DESIGNS) ? null : in.chosen(DESIGN, PartDesign.class);
        in.note(BATCH, SheetNote.of("all_batches"));
        in.blame(BATCH, ProblemKind.NOTICE_OF_NOTHING);
        String marks = String.join("; ", Words.listed(in.text(MARKS)));
        if (design == null && in.text(BATCH).isEmpty() && marks.isEmpty()) {
            if (in.is(DESIGN, SheetWord.ALL_DESIGNS)) { // else the design is what is wrong, and said
                in.wrong(BATCH, ProblemKind.NEEDED, BATCH);
            }
            return;
        }
        Notice notice = new Notice(
                number.isEmpty() ? "-" : number,
                in.text(MAKER),
                dated == null ? in.sight().today() : dated,
                design == null ? null : design.id(),
                in.text(BATCH),
                marks,
                asks,
                in.is(HOLDS, SheetWord.YES),
                in.text(NOTE));
        in.readBack(MARKS, meant(in.sight(), notice));
        if (in.fine()) {
            in.make(NUMBER, notice);
        }
    }

    /** Every part it means with where it is, and what lies on the shelf of its batch. */
    private static List<SheetNote> meant(SheetSight sight, Notice notice) {
        List<Entry<Part>> parts = Notices.parts(sight.facts(), notice);
        List<SheetNote> lines = new ArrayList<>();
        lines.add(SheetNote.of("parts_meant", parts.size()));
        parts.stream()
                .limit(SHOWN)
                .forEach(part -> PartsNow.find(sight, part.id().text())
                        .ifPresent(where -> lines.add(
                                SheetNote.of("part_meant", part.fact().mark(), PartsNow.there(sight, where)))));
        if (parts.size() > SHOWN) {
            lines.add(SheetNote.of("and_more", parts.size() - SHOWN));
        }
        sight.standing().stock().stream()
                .filter(level ->
                        notice.marks().isEmpty() && means(notice, level.batch().fact()))
                .forEach(level -> lines.add(
                        SheetNote.of("stock_meant", level.batch().fact().batch(), level.onShelf())));
        return lines;
    }

    private static boolean means(Notice notice, StockBatch batch) {
        return (notice.design() == null || notice.design().equals(batch.design()))
                && (notice.batch().isBlank() || Words.plain(notice.batch()).equals(Words.plain(batch.batch())));
    }

    @Override
    public List<String> about(SheetTyped typed, SheetSight sight) {
        return List.of(typed.text(NUMBER));
    }
}
