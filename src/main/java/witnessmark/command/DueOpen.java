package witnessmark.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.cost.result.Refund;
import witnessmark.domain.CostLine;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Incident;
import witnessmark.domain.Job;
import witnessmark.domain.Part;
import witnessmark.domain.SentOut;
import witnessmark.ledger.result.Away;
import witnessmark.ledger.result.DebrisIn;
import witnessmark.ledger.result.MeterStretch;
import witnessmark.ledger.result.NoticeLeft;
import witnessmark.logbook.standing.StillOpen;
import witnessmark.study.result.LimitAhead;
import witnessmark.study.result.PlaceTrend;
import witnessmark.wording.IncidentWords;
import witnessmark.wording.MeterWords;
import witnessmark.wording.OutWords;
import witnessmark.wording.ProofWords;
import witnessmark.wording.RefundWords;
import witnessmark.wording.TrendWords;

/** What {@code due} says is still open: jobs, what is with others, what the shelf lacks, makers' notices. */
final class DueOpen {
    private final Tools tools;
    private final StillOpen open;
    private final OutWords out;

    DueOpen(Tools tools, StillOpen open) {
        this.tools = tools;
        this.open = open;
        this.out = new OutWords(tools.texts(), tools.measures());
    }

    /** One line each under a heading with their number; no heading where there is none. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        add(lines, "command.due.bare", open.bare().stream().map(this::bare).toList());
        add(
                lines,
                "command.due.incomplete",
                open.incomplete().stream().map(this::incomplete).toList());
        add(
                lines,
                "command.due.unlogged",
                open.unlogged().stream().map(this::unlogged).toList());
        add(
                lines,
                "command.due.readings",
                open.readings().stream().map(this::reading).toList());
        add(lines, "command.due.jobs", open.jobs().stream().map(this::job).toList());
        add(
                lines,
                "command.due.incidents",
                open.incidents().stream().map(this::incident).toList());
        add(
                lines,
                "command.due.refunds",
                open.refunds().stream().map(this::refund).toList());
        add(lines, "command.due.out", open.out().stream().map(this::out).toList());
        add(
                lines,
                "command.due.borrowed",
                open.borrowed().stream().map(this::borrowed).toList());
        add(
                lines,
                "command.due.debris",
                open.debris().stream().map(this::debris).toList());
        add(lines, "command.due.low", open.low().stream().map(this::low).toList());
        add(
                lines,
                "command.due.notices",
                open.notices().stream().map(this::notice).toList());
        add(lines, "command.due.meters", open.meters().stream().map(this::meter).toList());
        return lines;
    }

    private void add(List<String> lines, String heading, List<String> rows) {
        if (!rows.isEmpty()) {
            lines.add(tools.texts().get(heading, rows.size()));
            rows.forEach(row -> lines.add("  " + row));
        }
    }

    private String bare(StillOpen.BareCar bare) {
        Entry<Engine> meant = bare.meant();
        String car = tools.texts().get("command.due.car", bare.car().fact().name());
        return car + "; "
                + (meant == null
                        ? tools.texts().get("beforewego.bare.none")
                        : tools.texts()
                                .get("beforewego.bare.meant", meant.fact().number()));
    }

    private String incomplete(StillOpen.Incomplete engine) {
        return engine.engine().fact().number() + ", "
                + tools.texts()
                        .get("beforewego.incomplete.empty", tools.measures().all(names(engine)));
    }

    private String unlogged(StillOpen.Unlogged unlogged) {
        return tools.texts()
                        .get(
                                "beforewego.unlogged.runs",
                                unlogged.car().fact().name(),
                                unlogged.runs().size(),
                                unlogged.event().fact().name())
                + ": "
                + tools.measures()
                        .all(unlogged.runs().stream()
                                .map(run -> run.fact().name())
                                .toList());
    }

    private static List<String> names(StillOpen.Incomplete engine) {
        return engine.empty().stream().map(position -> position.fact().name()).toList();
    }

    private String job(StillOpen.OpenJob open) {
        Job job = open.job().fact();
        String on = open.on().isEmpty() ? "" : " (" + open.on() + ")";
        String before = open.before() == null ? "" : "; " + tools.texts().get("command.due.before", open.before());
        String waits =
                job.waitingFor().isBlank() ? "" : "; " + tools.texts().get("command.due.waits", job.waitingFor());
        return job.what() + on + before + waits;
    }

    private String reading(StillOpen.Going going) {
        TrendWords words = new TrendWords(tools.texts(), tools.measures());
        return words.where(going.engine().fact().number(), going.kind()) + "; "
                + words.heading(going.kind(), going.place()) + ". " + words.rests(going.kind(), going.place());
    }

    private String incident(StillOpen.OpenIncident open) {
        Incident incident = open.incident().fact();
        IncidentWords words = new IncidentWords(tools.texts(), tools.measures());
        List<String> said = new ArrayList<>();
        if (open.asksToBeOpened()) {
            said.add(new ProofWords(tools.texts(), tools.measures()).headline(open.proof()));
            said.add(tools.texts().get("beforewego.incident.reopen"));
            return words.name(incident) + "; " + String.join(". ", said);
        }
        said.add(words.on(open.car(), open.engine()));
        said.add(open.again() == null ? "" : words.again(open.again()));
        said.add(tools.words().word(incident.severity()));
        said.addAll(words.stands(open.proof(), open.days()));
        said.removeIf(String::isEmpty);
        return words.name(incident) + "; " + tools.measures().row(said);
    }

    private String debris(DebrisIn debris) {
        return debris.part().fact().mark() + "; " + new OutWords(tools.texts(), tools.measures()).debris(debris);
    }

    private String refund(Refund refund) {
        RefundWords words = new RefundWords(tools.texts(), tools.measures());
        return words.what(refund) + ": " + words.still(refund) + ", " + words.until(refund);
    }

    private String out(Away away) {
        return tools.measures().row(List.of(out.what(away), out.with(away), out.promised(away)));
    }

    private String borrowed(StillOpen.ToGoBack borrowed) {
        Event wanted = borrowed.wanted();
        String back = borrowed.home().isEmpty()
                ? tools.texts().get("beforewego.borrowed.unknown")
                : wanted == null
                        ? tools.texts().get("beforewego.borrowed.to", borrowed.home())
                        : tools.texts()
                                .get(
                                        borrowed.late() ? "beforewego.borrowed.late" : "beforewego.borrowed.before",
                                        borrowed.home(),
                                        tools.measures().date(wanted.firstDay()),
                                        wanted.name());
        return tools.words().word(borrowed.kind()) + " " + borrowed.mark() + ", " + borrowed.in() + "; " + back;
    }

    private String low(StillOpen.LowStock low) {
        return low.design().name() + ": "
                + tools.texts()
                        .get(
                                "beforewego.open.low",
                                low.level().freeOfDesign(),
                                low.level().leastOfDesign());
    }

    private String meter(MeterStretch stretch) {
        MeterWords words = new MeterWords(tools.texts(), tools.measures());
        return stretch.meter().fact().mark() + ", " + words.between(stretch) + ": " + words.finding(stretch);
    }

    private String notice(NoticeLeft left) {
        return left.notice().fact().number() + ": " + String.join(", ", marks(left));
    }

    private static List<String> marks(NoticeLeft left) {
        return left.parts().stream().map(Entry::fact).map(Part::mark).toList();
    }

    /** The same as values: days as ISO 8601, work in minutes. */
    void json(ObjectNode root) {
        ArrayNode bare = root.putArray("carsWithoutEngine");
        open.bare().forEach(each -> {
            Entry<Engine> meant = each.meant();
            bare.addObject()
                    .put("car", each.car().fact().name())
                    .put("event", each.event())
                    .put("meant", meant == null ? null : meant.fact().number());
        });
        ArrayNode incomplete = root.putArray("incomplete");
        open.incomplete().forEach(each -> {
            ArrayNode empty = incomplete
                    .addObject()
                    .put("engine", each.engine().fact().number())
                    .put("car", each.car())
                    .putArray("empty");
            names(each).forEach(empty::add);
        });
        ArrayNode unlogged = root.putArray("notLogged");
        open.unlogged().forEach(each -> {
            ArrayNode runs = unlogged.addObject()
                    .put("car", each.car().fact().name())
                    .put("event", each.event().fact().name())
                    .putArray("runs");
            each.runs().forEach(run -> runs.add(run.fact().name()));
        });
        ArrayNode readings = root.putArray("readings");
        open.readings().forEach(each -> reading(readings.addObject(), each));
        ArrayNode jobs = root.putArray("jobs");
        open.jobs().forEach(each -> job(jobs.addObject(), each));
        ArrayNode incidents = root.putArray("incidents");
        open.incidents().forEach(each -> incident(incidents.addObject(), each));
        ArrayNode refunds = root.putArray("refunds");
        open.refunds().forEach(each -> refund(refunds.addObject(), each));
        ArrayNode out = root.putArray("outWithOthers");
        open.out().forEach(each -> out(out.addObject(), each));
        borrowed(root.putArray("toGoBack"));
        debris(root.putArray("debris"));
        ArrayNode low = root.putArray("lowStock");
        open.low()
                .forEach(each -> low.addObject()
                        .put("design", each.design().name())
                        .put("free", each.level().freeOfDesign())
                        .put("least", each.level().leastOfDesign())
                        .put("onOrder", each.level().onOrder()));
        ArrayNode meters = root.putArray("meters");
        open.meters().forEach(each -> Meters.add(meters.addObject(), each));
        ArrayNode notices = root.putArray("notices");
        open.notices().forEach(each -> {
            ArrayNode parts = notices.addObject()
                    .put("number", each.notice().fact().number())
                    .put("asks", each.notice().fact().asks())
                    .putArray("parts");
            marks(each).forEach(parts::add);
        });
    }

    private void debris(ArrayNode debris) {
        open.debris()
                .forEach(each -> debris.addObject()
                        .put("part", each.part().fact().mark())
                        .put("car", each.car().fact().name())
                        .put("engine", each.engine().fact().number())
                        .put("since", each.filter().fact().at().text()));
    }

    private void borrowed(ArrayNode borrowed) {
        open.borrowed().forEach(each -> {
            Event wanted = each.wanted();
            borrowed.addObject()
                    .put("part", each.mark())
                    .put("in", each.in())
                    .put("since", each.fitment().fact().from().text())
                    .put("backTo", each.home())
                    .put("before", wanted == null ? null : wanted.name())
                    .put("by", wanted == null ? null : text(wanted.firstDay()));
        });
    }

    private static void job(ObjectNode node, StillOpen.OpenJob open) {
        Job job = open.job().fact();
        node.put("what", job.what())
                .put("on", open.on())
                .put("before", open.before())
                .put("late", open.late())
                .put("who", job.who())
                .put("minutesExpected", job.minutesExpected())
                .put("waitingFor", job.waitingFor());
    }

    private static void reading(ObjectNode node, StillOpen.Going going) {
        PlaceTrend place = going.place();
        node.put("engine", going.engine().fact().number())
                .put(
                        "part",
                        going.kind().part() == null
                                ? null
                                : going.kind().part().fact().mark())
                .put("kind", going.kind().kind().code())
                .put("place", place.place())
                .put("call", TrendsText.code(place.call()))
                .put("trend", TrendsText.code(place.trend()))
                .put("chance", place.chance());
        ArrayNode figures = node.putArray("figures");
        place.counted().forEach(read -> figures.add(read.figure()));
        LimitAhead next = place.next();
        if (next != null) {
            node.putObject("limit")
                    .put("figure", next.figure())
                    .put("hoursSoonest", next.soonest())
                    .put("hoursLikely", next.likely());
        }
    }

    private static void incident(ObjectNode node, StillOpen.OpenIncident open) {
        Incident incident = open.incident().fact();
        node.put("mark", incident.mark())
                .put("title", incident.title())
                .put("at", incident.at().text())
                .put("car", open.car())
                .put("engine", open.engine())
                .put("severity", incident.severity().code())
                .put("daysOpen", open.days())
                .put("again", open.again())
                .put("reopen", open.asksToBeOpened())
                .put("doneTogether", open.proof().together().size());
    }

    private static void refund(ObjectNode node, Refund refund) {
        CostLine line = refund.line().fact();
        node.put("what", line.what())
                .put("event", refund.event() == null ? null : refund.event().name())
                .put("car", refund.car() == null ? null : refund.car().name())
                .put("paid", line.paid().text())
                .put("stillToCome", refund.still().text())
                .put("by", text(refund.by()))
                .put("daysLeft", refund.daysLeft())
                .put("late", refund.late());
    }

    private void out(ObjectNode node, Away away) {
        SentOut sent = away.sent().fact();
        node.put("what", out.what(away))
                .put("with", sent.sentTo())
                .put("since", sent.from().text())
                .put("promised", text(away.promised()))
                .put("daysLate", away.daysLate())
                .put("daysSilent", away.daysSilent());
    }

    private static @Nullable String text(@Nullable Object day) {
        return day == null ? null : day.toString();
    }
}
