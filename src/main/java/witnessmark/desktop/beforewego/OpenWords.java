package witnessmark.desktop.beforewego;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Refund;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Incident;
import witnessmark.domain.Job;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.DebrisIn;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.ledger.result.NoticeLeft;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.standing.StillOpen;
import witnessmark.quantity.RunningTime;
import witnessmark.wording.IncidentWords;
import witnessmark.wording.Measures;
import witnessmark.wording.MeterWords;
import witnessmark.wording.OutWords;
import witnessmark.wording.ProofWords;
import witnessmark.wording.RecordWords;
import witnessmark.wording.RefundWords;
import witnessmark.wording.Texts;
import witnessmark.wording.TrendWords;

/** What is still open, in words: each a title and two lines. */
final class OpenWords {
    /** Later answers are asked for when nothing was heard for this many days. */
    private static final int SILENT = 7;

    /** So many empty positions are named. */
    private static final int NAMED = 4;

    private final Texts texts;
    private final Measures measures;
    private final OutWords out;
    private final RecordWords records;
    private final RefundWords refunds;
    private final IncidentWords incidents;
    private final TrendWords trends;
    private final ProofWords proofs;

    OpenWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.out = new OutWords(texts, measures);
        this.records = new RecordWords(texts);
        this.refunds = new RefundWords(texts, measures);
        this.incidents = new IncidentWords(texts, measures);
        this.trends = new TrendWords(texts, measures);
        this.proofs = new ProofWords(texts, measures);
    }

    /**
     * A row for each job wanted for the next event or for one that has begun, and one for all that can wait.
     *
     * @param next the name of the next event; null when none is written down: then every job is a row
     */
    List<OutLine> jobs(StillOpen open, @Nullable String next) {
        List<StillOpen.OpenJob> now = open.jobs().stream()
                .filter(job -> next == null || job.late() || next.equals(job.before()))
                .toList();
        List<StillOpen.OpenJob> later =
                open.jobs().stream().filter(job -> !now.contains(job)).toList();
        List<OutLine> lines = new ArrayList<>(now.stream().map(this::job).toList());
        if (!later.isEmpty()) {
            lines.add(new OutLine(
                    texts.get("beforewego.jobs.later", later.size()),
                    later.get(0).job().fact().what(),
                    later.size() == 1
                            ? hand(later.get(0).job().fact())
                            : later.get(1).job().fact().what(),
                    later.get(0).job().id().text()));
        }
        return lines;
    }

    private OutLine job(StillOpen.OpenJob open) {
        Job job = open.job().fact();
        String on = switch (open.what()) {
            case PART -> texts.get("beforewego.job.part", open.on());
            case ENGINE -> texts.get("beforewego.job.engine", open.on());
            case CAR -> texts.get("beforewego.job.car", open.on());
            case NOTHING -> "";
        };
        String before = open.late() && open.before() != null ? texts.get("beforewego.job.late", open.before()) : "";
        return new OutLine(
                job.what(), joined(on, before), hand(job), open.job().id().text());
    }

    /** What it waits for; else who does it and how long it takes, as far as somebody said so. */
    private String hand(Job job) {
        if (!job.waitingFor().isBlank()) {
            return texts.get("beforewego.job.waits", job.waitingFor());
        }
        Integer minutes = job.minutesExpected();
        String time = minutes == null
                ? ""
                : texts.get("beforewego.job.takes", measures.running(new RunningTime(minutes * 60_000L)));
        String hand = joined(job.who(), time);
        return hand.isEmpty() ? texts.get("beforewego.job.nobody") : hand;
    }

    List<OutLine> out(StillOpen open) {
        return open.out().stream().map(this::out).toList();
    }

    private OutLine out(Away away) {
        return new OutLine(
                out.what(away),
                texts.get("beforewego.open.with", away.sent().fact().sentTo(), out.promised(away)),
                heard(away),
                away.sent().id().text());
    }

    private String heard(Away away) {
        if (away.daysSilent() >= SILENT) {
            return records.label(out.silent(away));
        }
        String day = measures.shortDate(away.heard().day());
        return texts.get(away.chase() == null ? "beforewego.open.sent" : "beforewego.open.heard", day);
    }

    List<OutLine> bare(StillOpen open) {
        return open.bare().stream().map(this::bare).toList();
    }

    List<OutLine> incomplete(StillOpen open) {
        return open.incomplete().stream().map(this::incomplete).toList();
    }

    /** What nobody logged, and where it can be settled. */
    List<OutLine> unlogged(StillOpen open) {
        return open.unlogged().stream().map(this::unlogged).toList();
    }

    private OutLine unlogged(StillOpen.Unlogged unlogged) {
        return new OutLine(
                texts.get(
                        "beforewego.unlogged.runs",
                        unlogged.car().fact().name(),
                        unlogged.runs().size(),
                        unlogged.event().fact().name()),
                few(unlogged.runs().stream().map(run -> run.fact().name()).toList()),
                texts.get("beforewego.unlogged.do"),
                unlogged.car().id().text(),
                Prefilled.missed(unlogged.event().id(), unlogged.car().id()));
    }

    private OutLine incomplete(StillOpen.Incomplete engine) {
        return new OutLine(
                texts.get("beforewego.incomplete.engine", engine.engine().fact().number(), engine.car()),
                texts.get(
                        "beforewego.incomplete.empty",
                        few(engine.empty().stream()
                                .map(position -> position.fact().name())
                                .toList())),
                texts.get("beforewego.incomplete.fit"),
                engine.engine().id().text(),
                Prefilled.partInto(engine.engine().id(), engine.empty().get(0).id()));
    }

    /** A few by name, the rest by number. */
    private String few(List<String> names) {
        return names.size() <= NAMED
                ? measures.all(names)
                : texts.get(
                        "beforewego.incomplete.more",
                        measures.row(names.subList(0, NAMED - 1)),
                        names.size() - NAMED + 1);
    }

    private OutLine bare(StillOpen.BareCar bare) {
        Entry<Engine> meant = bare.meant();
        return new OutLine(
                texts.get("beforewego.job.car", bare.car().fact().name()),
                texts.get("beforewego.bare.entered", bare.event()),
                meant == null
                        ? texts.get("beforewego.bare.none")
                        : texts.get("beforewego.bare.meant", meant.fact().number()),
                bare.car().id().text(),
                Prefilled.engineInto(bare.car().id(), meant == null ? null : meant.id()));
    }

    /** Incidents of what goes that are not closed. */
    List<OutLine> incidents(StillOpen open) {
        return open.incidents().stream().map(this::incident).toList();
    }

    /** Readings that get worse before any limit is passed; each leads to the engine's trends. */
    List<OutLine> readings(StillOpen open) {
        return open.readings().stream()
                .map(each -> new OutLine(
                        texts.get(
                                "beforewego.comma",
                                trends.where(each.engine().fact().number(), each.kind()),
                                trends.place(each.kind().kind(), each.place().place())),
                        trends.brief(each.kind(), each.place()),
                        trends.briefAhead(each.kind(), each.place()),
                        each.engine().id().text()))
                .toList();
    }

    private OutLine incident(StillOpen.OpenIncident open) {
        Incident incident = open.incident().fact();
        if (open.asksToBeOpened()) {
            return new OutLine(
                    incidents.name(incident),
                    proofs.headline(open.proof()),
                    texts.get("beforewego.incident.reopen"),
                    open.incident().id().text(),
                    Prefilled.reopening(open.incident().id()));
        }
        String on = records.label(incidents.on(open.car(), open.engine()));
        List<String> stands = new ArrayList<>(List.of(records.label(records.word(incident.severity()))));
        stands.addAll(incidents.stands(open.proof(), open.days()));
        return new OutLine(
                incidents.name(incident),
                open.again() == null ? on : joined(on, incidents.again(open.again())),
                measures.row(stands),
                open.incident().id().text());
    }

    /**
     * A row for what is to be asked back before the next event is over or is late already, and one for all that can wait.
     *
     * @param next the next event; null when none is written down: then everything is a row
     */
    List<OutLine> refunds(StillOpen open, @Nullable Event next) {
        List<Refund> now = open.refunds().stream()
                .filter(refund -> next == null || !refund.by().isAfter(next.lastDay()))
                .toList();
        List<OutLine> lines = new ArrayList<>(now.stream().map(this::refund).toList());
        List<Refund> later = open.refunds().subList(now.size(), open.refunds().size());
        if (!later.isEmpty()) {
            OutLine first = refund(later.get(0));
            lines.add(new OutLine(
                    texts.get("beforewego.refunds.later", later.size()),
                    first.title(),
                    first.second(),
                    first.record()));
        }
        return lines;
    }

    private OutLine refund(Refund refund) {
        return new OutLine(
                refunds.what(refund),
                refunds.still(refund),
                records.label(refunds.until(refund)),
                refund.line().id().text());
    }

    /** What is to go back to where it came from. */
    List<OutLine> borrowed(StillOpen open) {
        return open.borrowed().stream().map(this::borrowed).toList();
    }

    private OutLine borrowed(StillOpen.ToGoBack borrowed) {
        Event wanted = borrowed.wanted();
        String back = borrowed.home().isEmpty()
                ? texts.get("beforewego.borrowed.unknown")
                : wanted == null
                        ? texts.get("beforewego.borrowed.to", borrowed.home())
                        : texts.get(
                                borrowed.late() ? "beforewego.borrowed.late" : "beforewego.borrowed.before",
                                borrowed.home(),
                                measures.shortDate(wanted.firstDay()),
                                wanted.name());
        return new OutLine(
                texts.get("beforewego.part", records.label(records.word(borrowed.kind())), borrowed.mark()),
                texts.get(
                        "beforewego.borrowed.in",
                        borrowed.in(),
                        measures.shortDate(borrowed.fitment().fact().from().day())),
                back,
                borrowed.fitment().id().text(),
                Prefilled.backFrom(borrowed.fitment().id()));
    }

    /** What metal went through, what the shelf lacks, and what makers asked. */
    List<OutLine> others(StillOpen open) {
        return Stream.of(
                        open.debris().stream().map(this::debris),
                        open.low().stream().map(this::low),
                        open.notices().stream().map(this::notice),
                        open.meters().stream().map(this::meter))
                .flatMap(Function.identity())
                .toList();
    }

    private OutLine debris(DebrisIn debris) {
        return new OutLine(
                texts.get(
                        "beforewego.part",
                        records.label(records.word(debris.kind())),
                        debris.part().fact().mark()),
                out.debris(debris),
                texts.get("beforewego.debris.do"),
                debris.part().id().text());
    }

    private OutLine low(StillOpen.LowStock low) {
        return new OutLine(
                low.design().name(),
                texts.get(
                        "beforewego.open.low",
                        low.level().freeOfDesign(),
                        low.level().leastOfDesign()),
                low.level().onOrder() == 0
                        ? texts.get("beforewego.open.noneOrdered")
                        : texts.get("beforewego.open.onOrder", low.level().onOrder()),
                low.level().batch().id().text());
    }

    private OutLine meter(MeterStretch stretch) {
        MeterWords words = new MeterWords(texts, measures);
        return new OutLine(
                texts.get("beforewego.open.meter", stretch.meter().fact().mark(), words.between(stretch)),
                words.finding(stretch),
                words.both(stretch),
                stretch.to().id().text());
    }

    private OutLine notice(NoticeLeft left) {
        return new OutLine(
                texts.get(
                        "beforewego.open.notice",
                        left.notice().fact().number(),
                        left.notice().fact().maker()),
                left.notice().fact().asks(),
                texts.get(
                        "beforewego.open.parts",
                        measures.all(left.parts().stream()
                                .map(part -> part.fact().mark())
                                .toList())),
                left.parts().get(0).id().text());
    }

    private String joined(String first, String second) {
        return first.isEmpty() ? second : second.isEmpty() ? first : texts.get("beforewego.comma", first, second);
    }
}
