package witnessmark.desktop.engines;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.engines.LifeMark.Kind;
import witnessmark.domain.Build;
import witnessmark.domain.Incident;
import witnessmark.domain.Run;
import witnessmark.domain.Severity;
import witnessmark.domain.Work;
import witnessmark.domain.WorkKind;
import witnessmark.domain.Zone;
import witnessmark.logbook.engines.Happening;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.wording.Amounts;
import witnessmark.wording.IncidentWords;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** Turns what happened to an engine into marks with words. */
final class LifeMarks {
    private static final double PER_MINUTE = 60_000.0;

    private final Texts texts;
    private final Measures measures;
    private final Amounts amounts;
    private final RecordWords records;
    private final IncidentWords incidents;

    LifeMarks(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.amounts = new Amounts(texts, measures);
        this.records = new RecordWords(texts);
        this.incidents = new IncidentWords(texts, measures);
    }

    /**
     * @param happenings in the order of time
     * @param end where what goes on ends: the end of the day looked at
     */
    List<LifeMark> of(List<Happening> happenings, long end) {
        return happenings.stream().map(happening -> mark(happening, end)).toList();
    }

    private LifeMark mark(Happening happening, long end) {
        if (happening instanceof Happening.Ran ran) {
            return ran(ran);
        }
        if (happening instanceof Happening.Built built) {
            return built(built, end);
        }
        if (happening instanceof Happening.Worked worked) {
            return worked(worked);
        }
        if (happening instanceof Happening.InCar stay) {
            return plain(stay, Kind.CAR, end, texts.get("engines.line.car", stay.car()), stay(stay));
        }
        if (happening instanceof Happening.Told told) {
            String hours = amounts.range(
                    Counter.RUNNING,
                    told.source().fact().lowest().millis(),
                    told.source().fact().highest().millis());
            String label = texts.get("engines.line.told", hours);
            return plain(told, Kind.TOLD, end, label, told(told, hours));
        }
        if (happening instanceof Happening.Broke broke) {
            return broke(broke);
        }
        Happening.Missed missed = (Happening.Missed) happening;
        return plain(missed, Kind.MISSED, missed.from().epochMillis(), "", missed(missed));
    }

    private LifeMark ran(Happening.Ran ran) {
        Run run = ran.source().fact();
        Integer overRevs = run.overRevs();
        Kind kind =
                run.perhapsSame() != null ? Kind.DOUBTFUL : overRevs != null && overRevs > 0 ? Kind.OVER_REV : Kind.RUN;
        List<String> said = new ArrayList<>();
        said.add(measures.fullStart(run));
        said.add(run.name().isEmpty() ? records.word(run.kind()) : run.name());
        add(said, ran.event());
        add(said, ran.car() == null ? null : texts.get("engines.line.car", ran.car()));
        said.add(measures.running(run.running()));
        add(said, run.highest() == null ? null : measures.speed(run.highest()));
        add(said, overRevs != null && overRevs > 0 ? amounts.amount(Counter.OVER_REVS, overRevs) : null);
        add(said, kind == Kind.DOUBTFUL ? texts.get("engines.line.doubtful") : null);
        return new LifeMark(
                ran.source(),
                kind,
                run.start().epochMillis(),
                run.back().epochMillis(),
                run.running().millis() / PER_MINUTE,
                "",
                measures.row(said));
    }

    private LifeMark built(Happening.Built built, long end) {
        Build build = built.source().fact();
        boolean rebuild = build.zones().contains(Zone.BOTTOM_END);
        Moment to = built.to();
        String day = measures.shortDate((to == null ? build.opened() : to).day());
        String label = texts.get(
                to == null ? "engines.line.openSince" : rebuild ? "engines.line.rebuilt" : "engines.line.closed",
                day,
                zones(build));
        List<String> said = new ArrayList<>();
        said.add(texts.get("engines.line.build", build.number(), zones(build)));
        said.add(
                to == null
                        ? texts.get("engines.line.buildOpen", measures.fullMoment(build.opened()))
                        : texts.get(
                                "engines.line.buildClosed",
                                measures.fullMoment(build.opened()),
                                measures.fullMoment(to)));
        add(said, build.note());
        return plain(built, rebuild ? Kind.REBUILD : Kind.BUILD, end, label, measures.row(said));
    }

    private String zones(Build build) {
        return build.zones().size() == Zone.values().length
                ? texts.get("engines.line.everything")
                : measures.all(build.zones().stream().map(records::word).collect(Collectors.toList()));
    }

    private LifeMark worked(Happening.Worked worked) {
        Work work = worked.source().fact();
        boolean skim = work.kind() == WorkKind.SKIM;
        List<String> said = new ArrayList<>();
        said.add(measures.fullMoment(work.at()));
        String kind = records.word(work.kind());
        said.add(worked.part() == null ? kind : texts.get("engines.line.work", kind, worked.part()));
        add(said, work.removed() == null ? null : texts.get("engines.line.removed", measures.length(work.removed())));
        said.add(records.word(work.result()));
        add(said, work.by());
        add(said, work.note());
        String label = !skim || worked.part() == null
                ? ""
                : work.removed() == null
                        ? texts.get("engines.line.skim", worked.part())
                        : texts.get("engines.line.skimRemoved", worked.part(), measures.length(work.removed()));
        return plain(worked, skim ? Kind.SKIM : Kind.WORK, work.at().epochMillis(), label, measures.row(said));
    }

    private String stay(Happening.InCar stay) {
        Moment to = stay.to();
        String from = measures.fullMoment(stay.from());
        String span = to == null
                ? texts.get("engines.line.inCar", stay.car(), from)
                : texts.get("engines.line.wasInCar", stay.car(), from, measures.fullMoment(to));
        String note = stay.source().fact().note();
        return note.isEmpty() ? span : texts.get("engines.comma", span, note);
    }

    private String told(Happening.Told told, String hours) {
        return texts.get(
                "engines.line.toldBy",
                measures.date(told.from().day()),
                measures.date(told.to().day()),
                hours,
                told.source().fact().toldBy());
    }

    private LifeMark broke(Happening.Broke broke) {
        Incident incident = broke.source().fact();
        String severity = records.word(incident.severity());
        String name = incident.mark().isBlank() ? incident.title() : incident.mark();
        List<String> said = new ArrayList<>();
        said.add(measures.fullMoment(incident.at()));
        said.add(incidents.name(incident));
        said.add(severity);
        add(said, broke.event());
        add(said, broke.car() == null ? null : texts.get("engines.line.car", broke.car()));
        return plain(
                broke,
                kind(incident.severity()),
                incident.at().epochMillis(),
                texts.get("engines.line.incident", name, severity),
                measures.row(said));
    }

    private static Kind kind(Severity severity) {
        return switch (severity) {
            case NOTE -> Kind.NOTED;
            case LOST_TIME, LOST_RUN -> Kind.LOST;
            case RETIRED, WITHDRAWN_BY_US, STOPPED_BY_OFFICIALS, DID_NOT_START, ENGINE_DESTROYED -> Kind.STOPPED;
        };
    }

    private String missed(Happening.Missed missed) {
        List<String> said = new ArrayList<>();
        said.add(measures.fullMoment(missed.from()));
        said.add(missed.event());
        said.add(records.word(missed.source().fact().how()));
        add(said, missed.source().fact().words());
        return measures.row(said);
    }

    private static LifeMark plain(Happening happening, Kind kind, long end, String label, String words) {
        Moment to = happening.to();
        return new LifeMark(
                happening.source(),
                kind,
                happening.from().epochMillis(),
                Math.max(happening.from().epochMillis(), to == null ? end : to.epochMillis()),
                0,
                label,
                words);
    }

    private static void add(List<String> said, @Nullable String words) {
        if (words != null && !words.isBlank()) {
            said.add(words);
        }
    }
}
