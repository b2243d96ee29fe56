package witnessmark.logbook.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Cause;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Prevention;
import witnessmark.domain.Run;

/** Incidents to pick from, and what is written of one. */
final class Incidents {
    private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]{1,9})");
    private static final String FIRST = "INC-01";
    private static final int LATEST_RUNS = 40;

    private Incidents() {}

    /** The incidents as asked: the open ones first, each the latest first. */
    static List<Choice> choices(SheetSight sight, Predicate<Incident> asked) {
        return sight.facts().of(Incident.class).where(asked).stream()
                .sorted(Comparator.comparing(
                                (Entry<Incident> incident) -> incident.fact().closed() != null)
                        .thenComparing(incident -> incident.fact().at(), Comparator.reverseOrder()))
                .map(incident -> Choice.of(
                        incident.id().text(), incident.fact(), incident.fact().title()))
                .toList();
    }

    /** The one picked at first: the only one that is open; else none. */
    static String onlyOpen(SheetSight sight) {
        List<Choice> open = choices(sight, incident -> incident.closed() == null);
        return open.size() == 1 ? open.get(0).key() : "";
    }

    /** The one picked where an engine is in view: the only open one of that engine; what is picked stays where there is none. */
    static Map<SheetField, String> ofEngine(SheetField incident, Id<Engine> engine, SheetSight sight) {
        List<Choice> open = choices(sight, each -> each.closed() == null && engine.equals(each.engine()));
        return open.size() == 1 ? Map.of(incident, open.get(0).key()) : Map.of();
    }

    /** The name of what is picked. */
    static String name(SheetSight sight, String key) {
        return sight.find(Incident.class, key)
                .map(incident -> incident.fact().mark())
                .orElse("");
    }

    /** What the next one is called: the number after the highest that begins like the last. */
    static String nextMark(SheetSight sight) {
        List<Entry<Incident>> all = sight.facts().of(Incident.class).all();
        Optional<Matcher> last = all.stream()
                .max(Comparator.comparing(incident -> incident.fact().at()))
                .map(incident -> NUMBERED.matcher(incident.fact().mark()))
                .filter(Matcher::matches);
        if (last.isEmpty()) {
            return all.isEmpty() ? FIRST : "";
        }
        String before = last.get().group(1);
        int highest = 0;
        for (Entry<Incident> incident : all) {
            Matcher form = NUMBERED.matcher(incident.fact().mark());
            if (form.matches() && form.group(1).equals(before)) {
                highest = Math.max(highest, Integer.parseInt(form.group(2)));
            }
        }
        String number = Integer.toString(highest + 1);
        return before + "0".repeat(Math.max(0, last.get().group(2).length() - number.length())) + number;
    }

    /** The latest runs, the last first. */
    static List<Choice> runs(SheetSight sight) {
        return sight.facts().of(Run.class).where(run -> true).stream()
                .sorted(Comparator.comparing((Entry<Run> run) -> run.fact().start(), Comparator.reverseOrder()))
                .limit(LATEST_RUNS)
                .map(run -> Choice.of(run.id().text(), run(sight, run.fact())))
                .toList();
    }

    /** {@code Race 2, car 41, K03, Sun 26 Jul, 15:00}. */
    static SheetNote run(SheetSight sight, Run run) {
        Object name = run.name().isEmpty() ? run.kind() : run.name();
        String engine = sight.name(Engine.class, run.engine());
        return run.car() == null
                ? SheetNote.of("incident_run_bench", name, engine, run.start())
                : SheetNote.of("incident_run", name, sight.name(Car.class, run.car()), engine, run.start());
    }

    /** Blame that nobody was given yet, in hundredths of a percent. */
    static int left(SheetSight sight, Id<Incident> incident) {
        int given = causes(sight, incident).stream()
                .map(cause -> cause.fact().share())
                .mapToInt(share -> share == null ? 0 : share)
                .sum();
        return Math.max(0, Cause.WHOLE - given);
    }

    /** What is still missing before it can be closed with nothing left out; empty when nothing is. */
    static List<Object> missing(SheetSight sight, Id<Incident> incident) {
        List<Object> missing = new ArrayList<>();
        List<Entry<Cause>> causes = causes(sight, incident);
        int unshared = (int)
                causes.stream().filter(cause -> cause.fact().share() == null).count();
        int left = left(sight, incident);
        if (causes.isEmpty()) {
            missing.add(SheetNote.echo("incident_no_cause"));
        } else if (unshared > 0) {
            missing.add(SheetNote.echo("incident_unshared", unshared));
        } else if (left > 0) {
            missing.add(SheetNote.echo("incident_left", new Percent(left)));
        }
        boolean prevention = sight
                .facts()
                .of(Prevention.class)
                .where(each -> each.incident().equals(incident))
                .stream()
                .findAny()
                .isPresent();
        if (!prevention) {
            missing.add(SheetNote.echo("incident_no_prevention"));
        }
        return missing;
    }

    /** The same incident, closed or opened again. */
    static Incident ended(Incident was, witnessmark.quantity.@Nullable Moment closed, String by, String because) {
        return new Incident(
                was.mark(),
                was.title(),
                was.at(),
                was.found(),
                was.run(),
                was.event(),
                was.car(),
                was.engine(),
                was.severity(),
                was.seen(),
                was.before(),
                was.by(),
                closed,
                by,
                because,
                was.note());
    }

    private static List<Entry<Cause>> causes(SheetSight sight, Id<Incident> incident) {
        return sight.facts().of(Cause.class).where(cause -> cause.incident().equals(incident));
    }
}
