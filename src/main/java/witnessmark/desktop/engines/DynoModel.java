package witnessmark.desktop.engines;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import witnessmark.chart.Axis;
import witnessmark.chart.Chart;
import witnessmark.chart.ChartTable;
import witnessmark.chart.Dot;
import witnessmark.chart.Line;
import witnessmark.domain.DynoSheet;
import witnessmark.domain.Entry;
import witnessmark.logbook.dyno.SeeDyno;
import witnessmark.study.result.CurvePoint;
import witnessmark.study.result.DynoAnswer;
import witnessmark.study.result.DynoPull;
import witnessmark.study.result.PullPoint;
import witnessmark.wording.DynoWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Words the dyno sheets of an engine and describes their charts. The same answer always gives the same lines. */
final class DynoModel {
    private static final String DASH = "–";

    private final Texts texts;
    private final Measures measures;
    private final DynoWords words;
    private final RecordWords records;

    DynoModel(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.words = new DynoWords(texts, measures);
        this.records = new RecordWords(texts);
    }

    /**
     * What is shown of the sheets in hand.
     *
     * @param answer what the first of them comes to
     * @param basis what that rests on
     * @param power the curves of power, or null where nothing of it is corrected
     * @param torque the curves of torque, or null likewise
     * @param table the curves at round speeds
     */
    record Shown(
            String answer,
            List<String> basis,
            @Nullable Chart power,
            @Nullable Chart torque,
            ChartTable table) {
        Shown {
            basis = List.copyOf(basis);
        }
    }

    /** A line for each sheet, the newest first. */
    List<DynoLine> lines(List<DynoAnswer> answers) {
        return answers.stream().map(this::line).toList();
    }

    private DynoLine line(DynoAnswer of) {
        CurvePoint power = of.power();
        CurvePoint torque = of.torque();
        LocalDate day = of.run().fact().start().day();
        return new DynoLine(
                of.sheet().id().text(),
                day,
                measures.date(day),
                power == null ? DASH : words.one(power.power()),
                torque == null ? DASH : words.one(torque.torque()),
                Double.isNaN(of.change().peak()) ? "" : words.signed(of.change().peak()),
                power == null
                        ? texts.get("engines.dyno.notCorrected")
                        : words.verdict(of.change().verdict()));
    }

    /**
     * What is shown for the rows chosen: one alone comes with its baseline.
     *
     * @param all the newest first
     * @param chosen identities; the newest of them is in hand
     */
    Optional<Shown> shown(List<DynoAnswer> all, List<String> chosen) {
        List<DynoAnswer> picked = all.stream()
                .filter(answer -> chosen.contains(answer.sheet().id().text()))
                .toList();
        if (picked.isEmpty()) {
            return Optional.empty();
        }
        DynoAnswer inHand = picked.get(0);
        List<DynoAnswer> drawn = drawn(all, picked, inHand);
        String answer = words.answer(inHand, sheet -> day(all, sheet));
        ChartTable table = table(drawn);
        boolean curve = !inHand.mean().isEmpty();
        return Optional.of(new Shown(
                answer,
                words.basis(inHand).stream().map(records::label).toList(),
                curve ? chart(answer, note(inHand, picked, drawn), drawn, true, table) : null,
                curve ? chart(texts.get("engines.dyno.torque"), "", drawn, false, table) : null,
                table));
    }

    /** Only what is of one dyno and one correction is laid over one another; four at most, the baseline among them. */
    private static List<DynoAnswer> drawn(List<DynoAnswer> all, List<DynoAnswer> picked, DynoAnswer inHand) {
        List<DynoAnswer> drawn = new ArrayList<>();
        for (DynoAnswer each : picked) {
            if (alike(each, inHand) && drawn.size() < Chart.MOST_IN_COLOUR) {
                drawn.add(each);
            }
        }
        Entry<DynoSheet> baseline = inHand.change().baseline();
        Optional<DynoAnswer> first = all.stream()
                .filter(each -> baseline != null && each.sheet().id().equals(baseline.id()) && alike(each, inHand))
                .filter(each -> !drawn.contains(each))
                .findFirst();
        if (first.isPresent() && drawn.size() == Chart.MOST_IN_COLOUR) {
            drawn.remove(drawn.size() - 1);
        }
        first.ifPresent(drawn::add);
        return drawn;
    }

    private static boolean alike(DynoAnswer one, DynoAnswer other) {
        return !one.mean().isEmpty()
                && one.sheet().fact().dyno().equals(other.sheet().fact().dyno())
                && one.factor().correction() == other.factor().correction();
    }

    private static @Nullable LocalDate day(List<DynoAnswer> all, DynoSheet sheet) {
        return all.stream()
                .filter(each -> each.sheet().fact().equals(sheet))
                .map(each -> each.run().fact().start().day())
                .findFirst()
                .orElse(null);
    }

    private String note(DynoAnswer inHand, List<DynoAnswer> picked, List<DynoAnswer> drawn) {
        String note = texts.get(
                "engines.dyno.note",
                words.factor(inHand.factor()),
                inHand.sheet().fact().dyno(),
                inHand.pulls().size());
        long left = picked.stream().filter(each -> !drawn.contains(each)).count();
        return left == 0 ? note : texts.get("engines.dyno.note.left", note, left);
    }

    private Chart chart(String finding, String note, List<DynoAnswer> drawn, boolean power, ChartTable table) {
        List<Line> lines = new ArrayList<>();
        for (DynoAnswer each : drawn) {
            lines.add(mean(each, power));
        }
        if (!drawn.isEmpty()) {
            drawn.get(0).pulls().forEach(pull -> lines.add(pull(drawn.get(0), pull, power)));
        }
        return new Chart(
                finding,
                note,
                new Axis.Figures(power ? "" : texts.get("engines.dyno.across"), false, this::whole),
                new Axis.Figures(
                        texts.get(power ? "engines.dyno.up.power" : "engines.dyno.up.torque"), false, this::whole),
                lines,
                List.of(),
                List.of(),
                List.of(),
                description(drawn, power),
                table);
    }

    private Line mean(DynoAnswer of, boolean power) {
        String day = measures.shortDate(of.run().fact().start().day());
        String id = of.sheet().id().text();
        return new Line(
                id,
                day,
                Line.Path.STRAIGHT,
                false,
                of.mean().stream()
                        .map(point -> new Dot(
                                point.rpm(),
                                power ? point.power() : point.torque(),
                                texts.get(
                                        "engines.dyno.point",
                                        day,
                                        words.rpm(point.rpm()),
                                        words.one(point.power()),
                                        words.one(point.torque()),
                                        point.pulls()),
                                id))
                        .toList());
    }

    /** One pull of the sheet in hand, faint behind its mean. */
    private Line pull(DynoAnswer of, DynoPull pull, boolean power) {
        String day = measures.shortDate(of.run().fact().start().day());
        ToDoubleFunction<PullPoint> height = power ? PullPoint::power : PullPoint::corrected;
        return new Line(
                of.sheet().id().text() + " " + pull.number(),
                "",
                Line.Path.STRAIGHT,
                true,
                pull.points().stream()
                        .map(point -> new Dot(
                                point.rpm(),
                                height.applyAsDouble(point),
                                texts.get(
                                        "engines.dyno.pullPoint",
                                        day,
                                        pull.number(),
                                        words.rpm(point.rpm()),
                                        words.one(point.power()),
                                        words.one(point.corrected()),
                                        words.one(point.observed())),
                                of.sheet().id().text()))
                        .toList());
    }

    private String description(List<DynoAnswer> drawn, boolean power) {
        List<String> peaks = new ArrayList<>();
        for (DynoAnswer each : drawn) {
            CurvePoint at = power ? each.power() : each.torque();
            if (at != null) {
                peaks.add(texts.get(
                        "engines.dyno.peak",
                        measures.shortDate(each.run().fact().start().day()),
                        power ? words.kilowatts(at) : words.newtonMetres(at)));
            }
        }
        return texts.get(
                power ? "engines.dyno.description.power" : "engines.dyno.description.torque",
                drawn.size(),
                measures.row(peaks));
    }

    /** Power of each at round speeds, and the change from the last of them, the oldest, to the first. */
    private ChartTable table(List<DynoAnswer> drawn) {
        List<String> headings = new ArrayList<>(List.of(texts.get("engines.dyno.across")));
        for (DynoAnswer each : drawn) {
            headings.add(texts.get(
                    "engines.dyno.table.power",
                    measures.shortDate(each.run().fact().start().day())));
        }
        boolean two = drawn.size() > 1;
        if (two) {
            headings.add(texts.get("engines.dyno.table.change"));
        }
        if (drawn.isEmpty()) {
            return new ChartTable(headings, List.of());
        }
        DynoAnswer last = drawn.get(drawn.size() - 1);
        List<List<String>> rows = new ArrayList<>();
        for (SeeDyno.Beside at : SeeDyno.beside(drawn.get(0), last)) {
            List<String> row = new ArrayList<>(List.of(whole(at.rpm())));
            for (DynoAnswer each : drawn) {
                row.add(SeeDyno.beside(each, last).stream()
                        .filter(other -> other.rpm() == at.rpm())
                        .map(other -> words.one(new PullPoint(at.rpm(), other.now(), other.now()).power()))
                        .findFirst()
                        .orElse(DASH));
            }
            if (two) {
                row.add(words.signed(at.change()));
            }
            rows.add(row);
        }
        return new ChartTable(headings, rows);
    }

    private String whole(double figure) {
        return measures.number(BigDecimal.valueOf(figure).setScale(0, RoundingMode.HALF_UP), 0);
    }
}
