package witnessmark.launch.jobsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.ledger.result.NoticeLeft;
import witnessmark.logbook.standing.StillOpen;
import witnessmark.report.JobSheet;
import witnessmark.wording.Measures;
import witnessmark.wording.MeterWords;
import witnessmark.wording.OutWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Rows of what is waited for besides jobs. */
final class OpenRows {
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final OutWords out;
    private final MeterWords meters;

    OpenRows(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.out = new OutWords(texts, measures);
        this.meters = new MeterWords(texts, measures);
    }

    /** Cars entered that have no engine in them. */
    JobSheet.Section bare(StillOpen open) {
        return section("beforewego.bare", "jobsheet.empty", "jobsheet.asked", open.bare(), this::bare);
    }

    /** Engines going with nothing in a needed position. */
    JobSheet.Section incomplete(StillOpen open) {
        return section(
                "beforewego.incomplete", "jobsheet.empty", "jobsheet.asked", open.incomplete(), this::incomplete);
    }

    /** All that can wait for others or for a quiet hour. */
    List<JobSheet.Section> sections(StillOpen open) {
        return List.of(
                section("beforewego.borrowed", "jobsheet.goesBack", "jobsheet.for", open.borrowed(), this::borrowed),
                section("beforewego.out.others", "jobsheet.back", "jobsheet.for", open.out(), this::away),
                section("jobsheet.low", "jobsheet.shelf", "jobsheet.order", open.low(), this::low),
                section("jobsheet.notices", "jobsheet.notice", "jobsheet.notice.left", open.notices(), this::notice),
                section("jobsheet.meters", "jobsheet.meter", "jobsheet.meter.both", open.meters(), this::meter));
    }

    private <T> JobSheet.Section section(
            String heading, String stands, String hand, List<T> all, Function<T, JobSheet.Row> row) {
        return new JobSheet.Section(
                texts.get(heading),
                texts.get(stands),
                texts.get(hand),
                all.stream().map(row).toList());
    }

    private static JobSheet.Row row(String what, String where, List<String> stands, String... hand) {
        return new JobSheet.Row(
                false,
                null,
                what,
                where,
                stands,
                Stream.of(hand).filter(line -> !line.isBlank()).toList());
    }

    private JobSheet.Row bare(StillOpen.BareCar bare) {
        Entry<Engine> meant = bare.meant();
        return row(
                texts.get("beforewego.job.car", bare.car().fact().name()),
                texts.get("beforewego.bare.entered", bare.event()),
                List.of(texts.get("beforewego.bare")),
                meant == null
                        ? texts.get("beforewego.bare.none")
                        : texts.get("beforewego.bare.meant", meant.fact().number()));
    }

    private JobSheet.Row incomplete(StillOpen.Incomplete engine) {
        List<String> empty =
                engine.empty().stream().map(position -> position.fact().name()).toList();
        return row(
                texts.get("beforewego.engine", engine.engine().fact().number()),
                texts.get("beforewego.car", engine.car()),
                List.of(texts.get("beforewego.incomplete.empty", measures.all(empty))),
                texts.get("beforewego.incomplete.fit"));
    }

    private JobSheet.Row borrowed(StillOpen.ToGoBack borrowed) {
        return row(
                texts.get("beforewego.part", records.label(records.word(borrowed.kind())), borrowed.mark()),
                texts.get(
                        "beforewego.borrowed.in",
                        borrowed.in(),
                        measures.shortDate(borrowed.fitment().fact().from().day())),
                List.of(back(borrowed, borrowed.wanted())));
    }

    private String back(StillOpen.ToGoBack borrowed, @Nullable Event wanted) {
        if (borrowed.home().isEmpty()) {
            return texts.get("beforewego.borrowed.unknown");
        }
        return wanted == null
                ? texts.get("beforewego.borrowed.to", borrowed.home())
                : texts.get(
                        borrowed.late() ? "beforewego.borrowed.late" : "beforewego.borrowed.before",
                        borrowed.home(),
                        measures.shortDate(wanted.firstDay()),
                        wanted.name());
    }

    private JobSheet.Row away(Away away) {
        List<String> stands = new ArrayList<>(List.of(out.promised(away), records.label(out.silent(away))));
        stands.removeIf(String::isEmpty);
        return row(
                records.label(out.what(away)),
                records.label(out.with(away)),
                stands,
                away.sent().fact().asked(),
                away.sent().fact().target());
    }

    private JobSheet.Row low(StillOpen.LowStock low) {
        return row(
                records.label(low.design().name()),
                "",
                List.of(texts.get(
                        "beforewego.open.low",
                        low.level().freeOfDesign(),
                        low.level().leastOfDesign())),
                low.level().onOrder() == 0
                        ? texts.get("beforewego.open.noneOrdered")
                        : texts.get("beforewego.open.onOrder", low.level().onOrder()));
    }

    private JobSheet.Row notice(NoticeLeft left) {
        return row(
                left.notice().fact().number(),
                left.notice().fact().maker(),
                List.of(left.notice().fact().asks()),
                measures.all(
                        left.parts().stream().map(part -> part.fact().mark()).toList()));
    }

    private JobSheet.Row meter(MeterStretch stretch) {
        return row(
                texts.get("beforewego.open.meter", stretch.meter().fact().mark(), meters.between(stretch)),
                "",
                List.of(meters.finding(stretch)),
                meters.both(stretch));
    }
}
