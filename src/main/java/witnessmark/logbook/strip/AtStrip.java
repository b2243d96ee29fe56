package witnessmark.logbook.strip;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.FindingPlace;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Part;
import witnessmark.domain.SetMember;
import witnessmark.logbook.View;
import witnessmark.quantity.Moment;
import witnessmark.study.result.StripLine;
import witnessmark.study.strip.Strips;

/**
 * What a finding on an engine is of: which build, which parts sat there, and which of a set. The same whether it is written on the
 * strip report or on a sheet.
 */
public final class AtStrip {
    private final View view;
    private final Id<Engine> engine;
    private final @Nullable Entry<Build> build;
    private final Moment then;

    private AtStrip(View view, Id<Engine> engine, @Nullable Entry<Build> build, Moment then) {
        this.view = view;
        this.engine = engine;
        this.build = build;
        this.then = then;
    }

    /** At the strip for a build: its parts are those that sat there when the engine was opened. */
    public static AtStrip of(View view, Entry<Build> build) {
        return new AtStrip(
                view, build.fact().engine(), build, build.fact().opened().before());
    }

    /** On an engine at a moment, without a build: its parts are those that sat there then. */
    public static AtStrip of(View view, Id<Engine> engine, Moment then) {
        return new AtStrip(view, engine, null, then);
    }

    /** The build in which an engine is apart at a moment; empty where it is together. */
    public static Optional<Entry<Build>> openAt(View view, Id<Engine> engine, Moment at) {
        return view
                .facts()
                .of(Build.class)
                .where(build -> build.engine().equals(engine)
                        && !build.opened().isAfter(at)
                        && (build.closed() == null || build.closed().isAfter(at)))
                .stream()
                .findFirst();
    }

    /** The parts that sat there, in the order of their positions. */
    public List<Entry<Part>> parts() {
        return view.ledger().fittedAt(engine, then).entrySet().stream()
                .sorted(Comparator.comparing(position -> position.getKey().text()))
                .map(position -> position.getValue().fact())
                .map(Fitment::part)
                .distinct()
                .flatMap(part -> view.facts().of(Part.class).find(part).stream())
                .toList();
    }

    /** Which of them is at a place; empty where none is or several may be meant. */
    public Optional<Id<Part>> part(StripLine line) {
        return Optional.ofNullable(new Strips(view.ledger()).part(engine, line, then))
                .map(Entry::id);
    }

    /**
     * A finding there.
     *
     * @param incident of which it is evidence, or null
     * @param part on which part, or null; where it is a set whose members are written down by number, it is of that member
     */
    public Finding finding(
            @Nullable Id<Incident> incident, @Nullable Id<Part> part, Where where, What what, Moment at, String by) {
        return made(
                incident,
                engine,
                build == null ? null : build.id(),
                member(part, where.number()),
                part,
                where,
                what,
                at,
                by);
    }

    /** A finding that speaks to an incident and is on no engine. */
    public static Finding elsewhere(
            @Nullable Id<Incident> incident, @Nullable Id<Part> part, Where where, What what, Moment at, String by) {
        return made(incident, null, null, "", part, where, what, at, by);
    }

    private static Finding made(
            @Nullable Id<Incident> incident,
            @Nullable Id<Engine> engine,
            @Nullable Id<Build> build,
            String member,
            @Nullable Id<Part> part,
            Where where,
            What what,
            Moment at,
            String by) {
        return new Finding(
                incident,
                engine,
                build,
                part,
                member,
                where.place(),
                where.number(),
                where.spot(),
                what.mark(),
                what.how(),
                null,
                null,
                null,
                null,
                at,
                by,
                what.words(),
                null,
                null);
    }

    /** @param spot where there, beginning with its side */
    public record Where(
            @Nullable FindingPlace place, @Nullable Integer number, String spot) {}

    /** @param words never empty without a mark */
    public record What(@Nullable FindingMark mark, @Nullable HowMarked how, String words) {}

    /** The member of a set that bears the number, where its members are written down so. */
    private String member(@Nullable Id<Part> part, @Nullable Integer number) {
        return part == null || number == null
                ? ""
                : view.facts().of(SetMember.class).where(member -> member.set().equals(part)).stream()
                        .map(member -> member.fact().mark())
                        .filter(mark -> mark.equals(Integer.toString(number)))
                        .findFirst()
                        .orElse("");
    }
}
