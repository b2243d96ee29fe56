package witnessmark.logbook.strip;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.Finding;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.Photo;
import witnessmark.ledger.AsOf;
import witnessmark.logbook.View;
import witnessmark.study.strip.Strips;

/** Sees what was found when engines were opened, as far as it was written by the day looked at. */
public final class SeeStrip {
    private SeeStrip() {}

    /** The builds for which engines were opened by that day: those still open first, then the last opened first. */
    public static List<Entry<Build>> builds(View view) {
        AsOf asOf = view.ledger().asOf();
        return view.facts().of(Build.class).where(build -> asOf.counts(build.opened())).stream()
                .sorted(Comparator.comparing((Entry<Build> build) -> !open(view, build))
                        .thenComparing(Comparator.comparing(
                                        (Entry<Build> build) -> build.fact().opened())
                                .reversed()))
                .toList();
    }

    /** Whether the engine was still apart at the end of that day. */
    public static boolean open(View view, Entry<Build> build) {
        return build.fact().closed() == null
                || !view.ledger().asOf().counts(build.fact().closed());
    }

    /** The report of a build; empty where there is no such build by that day. */
    public static Optional<StripPage> of(View view, Id<Build> build) {
        return builds(view).stream()
                .filter(each -> each.id().equals(build))
                .findFirst()
                .map(each -> page(view, each));
    }

    private static StripPage page(View view, Entry<Build> build) {
        return new StripPage(
                new Strips(view.ledger()).of(build), open(view, build), incidents(view, build), photos(view));
    }

    /** What an engine was opened for is an incident of it, the last first. */
    private static List<Entry<Incident>> incidents(View view, Entry<Build> build) {
        return view
                .facts()
                .of(Incident.class)
                .where(incident -> build.fact().engine().equals(incident.engine())
                        && view.ledger().asOf().counts(incident.at()))
                .stream()
                .sorted(Comparator.comparing(
                                (Entry<Incident> incident) -> incident.fact().at())
                        .reversed())
                .toList();
    }

    private static Map<Id<Finding>, Long> photos(View view) {
        return view.facts()
                .of(Photo.class)
                .inForce()
                .map(photo -> photo.fact().finding())
                .filter(Objects::nonNull)
                .collect(Collectors.groupingBy(id -> id, HashMap::new, Collectors.counting()));
    }
}
