package witnessmark.wording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import witnessmark.domain.Build;
import witnessmark.domain.Car;
import witnessmark.domain.EngineInCar;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Incident;
import witnessmark.domain.OverRev;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.domain.Run;
import witnessmark.domain.TraceMark;
import witnessmark.domain.TriggerKind;
import witnessmark.domain.Work;
import witnessmark.ledger.result.HeldBy;
import witnessmark.study.result.WayTo;
import witnessmark.study.result.WayTo.Kind;

/** Words an engine's way up to a failure. */
public final class WayWords {
    /** So many parts are named; of more only their number is said. */
    private static final int NAMED = 2;

    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final ReadingWords readings;

    public WayWords(Texts texts, Measures measures) {
        this.texts = texts;
        this.measures = measures;
        this.records = new RecordWords(texts);
        this.readings = new ReadingWords(texts, measures);
    }

    /** All of it; {@link WayLines#NONE} where there is none. */
    public WayLines lines(Facts facts, Optional<WayTo> way) {
        if (way.isEmpty()) {
            return WayLines.NONE;
        }
        WayTo to = way.get();
        List<WayLines.Point> points =
                to.points().stream().map(point -> point(facts, point)).toList();
        String engine = to.engine().fact().number();
        String since = texts.get(to.rebuilt() == null ? "cases.way.since.first" : "cases.way.since.rebuilt");
        return new WayLines(texts.get("cases.way", engine), said(to, since), points);
    }

    /** "Hours since it was rebuilt. Last found as it should be on 5 May, 4.0 h before." */
    private String said(WayTo to, String since) {
        return to.lastGood()
                .map(good -> texts.get(
                        "cases.way.said", since, measures.shortDate(good.at().day()), measures.hours(good.before())))
                .orElseGet(() -> texts.get("cases.way.said.never", since));
    }

    private WayLines.Point point(Facts facts, WayTo.Point point) {
        List<String> seen = new ArrayList<>();
        List<String> changed = new ArrayList<>();
        List<String> whole = new ArrayList<>();
        for (WayTo.Step step : point.steps()) {
            boolean change = step.kind() == Kind.CHANGED || step.kind() == Kind.REBUILT;
            List<String> said = change ? changed : seen;
            boolean named = step.kind() == Kind.FAILURE || step.kind() == Kind.BROKE;
            said.add(named ? 0 : said.size(), brief(facts, step)); // its name stays where the rest is cut
            whole.add(texts.get("cases.way.kind." + step.kind().name().toLowerCase(Locale.ROOT), full(facts, step)));
        }
        String hours =
                point.atLeast() ? measures.atLeast(measures.hours(point.hours())) : measures.hours(point.hours());
        String day = measures.shortDate(point.at().day());
        boolean last = point.steps().stream().anyMatch(step -> step.kind() == Kind.FAILURE);
        return new WayLines.Point(
                day,
                hours,
                last ? "" : measures.hours(point.before()),
                String.join("; ", seen),
                String.join("; ", changed),
                point.steps().stream().map(WayTo.Step::kind).toList(),
                last
                        ? texts.get("cases.way.point.last", day, hours, String.join(" ", whole))
                        : texts.get(
                                "cases.way.point",
                                day,
                                hours,
                                measures.hours(point.before()),
                                String.join(" ", whole)));
    }

    private String brief(Facts facts, WayTo.Step step) {
        return switch (step.kind()) {
            case GOOD -> texts.get("cases.way.good");
            case REBUILT -> texts.get("cases.way.rebuilt");
            case FAILURE, BROKE ->
                step.of().stream()
                        .map(each -> ((Incident) each.fact()).mark())
                        .reduce((one, next) -> one)
                        .orElse("");
            case CHANGED -> changed(facts, step.of(), false);
            case SYMPTOM -> symptoms(step, false);
        };
    }

    private String full(Facts facts, WayTo.Step step) {
        return switch (step.kind()) {
            case GOOD -> good(step.of());
            case REBUILT ->
                measures.all(step.of().stream()
                        .map(each -> build((Build) each.fact()))
                        .toList());
            case FAILURE, BROKE ->
                measures.all(step.of().stream()
                        .map(each -> (Incident) each.fact())
                        .map(each -> texts.get("incidents.name", each.mark(), each.title()))
                        .toList());
            case CHANGED -> changed(facts, step.of(), true);
            case SYMPTOM -> symptoms(step, true);
        };
    }

    /** {@code leak-down 4, 4, 5 and 5 %; filter clean}, in the order read. */
    private String good(List<Entry<?>> all) {
        Map<ReadingKind, List<String>> kinds = new LinkedHashMap<>();
        for (Entry<?> each : all) {
            Reading reading = (Reading) each.fact();
            kinds.computeIfAbsent(reading.kind(), none -> new ArrayList<>()).add(readings.of(reading));
        }
        List<String> said = new ArrayList<>();
        kinds.forEach((kind, values) -> {
            List<String> distinct = values.stream().distinct().toList();
            said.add(texts.get("cases.way.reading", records.word(kind), measures.all(distinct)));
        });
        return String.join("; ", said);
    }

    private String build(Build build) {
        return texts.get("cases.way.build", build.number(), build.note());
    }

    private String changed(Facts facts, List<Entry<?>> all, boolean whole) {
        List<String> said = new ArrayList<>();
        List<Part> fitted = new ArrayList<>();
        for (Entry<?> each : all) {
            Fact fact = each.fact();
            if (fact instanceof Build build) {
                said.add(whole ? build(build) : texts.get("cases.way.build.brief", build.number()));
            } else if (fact instanceof Fitment fitment) {
                fitted.add(facts.of(Part.class).get(fitment.part()));
            } else if (fact instanceof EngineInCar stay) {
                said.add(texts.get(
                        "cases.way.car", facts.of(Car.class).get(stay.car()).name()));
            } else if (fact instanceof Work work) {
                said.add(
                        whole && !work.note().isEmpty()
                                ? texts.get("cases.way.reading", records.word(work.kind()), work.note())
                                : records.word(work.kind()));
            }
        }
        if (!fitted.isEmpty()) {
            said.add(whole ? parts(facts, fitted) : partsBrief(facts, fitted));
        }
        return String.join("; ", said);
    }

    private String parts(Facts facts, List<Part> fitted) {
        return measures.all(fitted.stream()
                .map(part -> texts.get("cases.way.part", records.word(kind(facts, part)), part.mark()))
                .toList());
    }

    /** Oil comes last: what else was fitted says more. */
    private String partsBrief(Facts facts, List<Part> fitted) {
        List<String> kinds = fitted.stream()
                .map(part -> kind(facts, part))
                .sorted(Comparator.comparing(kind -> kind == PartKind.OIL_AND_FILTER))
                .map(records::word)
                .distinct()
                .toList();
        return kinds.size() > NAMED ? texts.get("cases.way.parts", fitted.size()) : measures.all(kinds);
    }

    private static PartKind kind(Facts facts, Part part) {
        return facts.of(PartDesign.class).get(part.design()).kind();
    }

    private String symptoms(WayTo.Step step, boolean whole) {
        List<String> said = new ArrayList<>();
        for (Entry<?> each : step.of()) {
            Fact fact = each.fact();
            if (fact instanceof Reading reading) {
                said.add(reading(reading, whole));
            } else if (fact instanceof OverRev over) {
                said.add(texts.get("cases.way.over_rev", measures.speed(over.peak())));
            } else if (fact instanceof TraceMark mark) {
                said.add(records.word(mark.kind()));
            } else if (fact instanceof Run run) {
                step.broke().stream()
                        .filter(broke -> broke.cause().id().equals(each.id()))
                        .map(HeldBy::rule)
                        .filter(Objects::nonNull)
                        .map(Entry::fact)
                        .filter(rule -> rule.kind() != TriggerKind.SPEED_ABOVE || !overRev(step, each))
                        .forEach(rule -> said.add(texts.get("cases.way.run", run.name(), rule.name())));
            }
        }
        List<String> distinct = said.stream().distinct().toList();
        return whole || distinct.size() <= NAMED
                ? measures.all(distinct)
                : texts.get("cases.way.signs", distinct.size());
    }

    /** Whether the step tells the speed of a run already. */
    private static boolean overRev(WayTo.Step step, Entry<?> run) {
        return step.of().stream()
                .anyMatch(each ->
                        each.fact() instanceof OverRev over && over.run().equals(run.id()));
    }

    private String reading(Reading reading, boolean whole) {
        String what = records.word(reading.kind());
        String named = reading.place().isEmpty() ? what : texts.get("cases.way.part", what, reading.place());
        String said = texts.get("cases.way.reading", named, readings.of(reading));
        return whole && !reading.note().isEmpty() ? texts.get("cases.way.noted", said, reading.note()) : said;
    }
}
