package witnessmark.logbook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Photo;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.port.Kept;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.SeasonFolders;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/**
 * The bytes that records of a folder name. A record whose bytes are missing or spoilt is taken all the same, and goes on
 * naming them: its figures do not rest on them, and once the file is there another reading brings it along.
 */
final class BesideRows {
    private final Set<String> lacking;
    private final Set<String> there;
    private final Set<String> photos;
    private final SeasonFolders.Beside found;

    private BesideRows(Set<String> lacking, Set<String> there, Set<String> photos, SeasonFolders.Beside found) {
        this.photos = photos;
        this.lacking = lacking;
        this.there = there;
        this.found = found;
    }

    /** Looks for what the rows read name, and for what records of the logbook name and it has not got. */
    static BesideRows of(SeasonFolders folders, Path folder, Logbook logbook, List<Entry<?>> read) {
        Set<String> there = logbook.keptNames().fold(Set::copyOf, problems -> Set.of());
        Set<String> lacking = named(logbook.facts());
        lacking.removeAll(there);
        Set<String> wanted = named(read);
        wanted.removeAll(there);
        wanted.addAll(lacking);
        return new BesideRows(lacking, there, photos(logbook.facts(), read), folders.beside(folder, wanted));
    }

    /** What goes into the logbook with some of the rows. */
    List<Kept> with(List<Entry<?>> rows) {
        Set<String> wanted = named(rows);
        wanted.addAll(lacking);
        return found.whole().stream()
                .filter(kept -> wanted.contains(kept.sha256()))
                .toList();
    }

    private static Set<String> photos(Facts facts, List<Entry<?>> read) {
        Set<String> names = new HashSet<>();
        Stream.concat(facts.of(Photo.class).all().stream(), read.stream())
                .map(entry -> entry.fact().beside())
                .filter(Objects::nonNull)
                .forEach(names::add);
        return names;
    }

    /** How many of these are photos. */
    int photos(List<Kept> kept) {
        return (int)
                kept.stream().filter(each -> photos.contains(each.sha256())).count();
    }

    /** What of the bytes of some of the rows does not come with them. */
    List<Problem> problems(List<Entry<?>> rows) {
        Map<String, Integer> missing = new LinkedHashMap<>();
        Set<String> others = new TreeSet<>();
        int missingPhotos = 0;
        for (Entry<?> row : rows) {
            String file = RecordTypes.of(row.fact().getClass()).file();
            for (String name : named(List.of(row))) {
                if (there.contains(name)) {
                    continue;
                }
                if (found.others().contains(name)) {
                    others.add(name);
                } else if (found.missing().contains(name)
                        && name.equals(row.fact().beside())) {
                    missingPhotos++;
                } else if (found.missing().contains(name)) {
                    missing.merge(file, 1, Integer::sum);
                }
            }
        }
        lacking.stream().filter(found.others()::contains).forEach(others::add);
        List<Problem> problems = new ArrayList<>();
        missing.forEach((file, count) ->
                problems.add(Problem.of(ProblemKind.KEPT_MISSING, count).at(new Place(file, 0, null))));
        if (missingPhotos > 0) {
            problems.add(Problem.of(ProblemKind.PHOTOS_NOT_IN_FOLDER, missingPhotos));
        }
        others.forEach(
                name -> problems.add(Problem.of(ProblemKind.KEPT_NOT_AS_NAMED).at(new Place("kept/" + name, 0, null))));
        return problems;
    }

    private static Set<String> named(Facts facts) {
        Set<String> names = new HashSet<>();
        for (RecordType<?> type : RecordTypes.all()) {
            names.addAll(named(facts.of(type.kind()).all()));
        }
        return names;
    }

    /** What entries name as kept in the logbook or beside it. */
    static Set<String> named(Iterable<? extends Entry<?>> entries) {
        Set<String> names = new HashSet<>();
        for (Entry<?> entry : entries) {
            Stream.of(entry.fact().kept(), entry.fact().beside())
                    .filter(Objects::nonNull)
                    .forEach(names::add);
        }
        return names;
    }
}
