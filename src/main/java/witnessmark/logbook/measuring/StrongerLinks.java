package witnessmark.logbook.measuring;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Build;
import witnessmark.domain.Entry;
import witnessmark.domain.GasketClass;
import witnessmark.domain.Grade;
import witnessmark.domain.Reading;
import witnessmark.domain.ReadingKind;
import witnessmark.fit.result.StrongerLink;
import witnessmark.logbook.View;

/** Finds where a build has a stronger head gasket than the one before, and what was read that speaks for the settings. */
final class StrongerLinks {
    private static final Set<ReadingKind> EVIDENCE = EnumSet.of(ReadingKind.PLUG, ReadingKind.BORESCOPE);

    private final View view;
    private final BuildSheets sheets;

    StrongerLinks(View view) {
        this.view = view;
        this.sheets = new BuildSheets(view);
    }

    Optional<StrongerLink> of(Entry<Build> build) {
        Entry<Build> last = view.facts()
                .of(Build.class)
                .inForce()
                .filter(other -> other.fact().engine().equals(build.fact().engine())
                        && other.fact().opened().isBefore(build.fact().opened()))
                .max(Comparator.comparing(other -> other.fact().opened()))
                .orElse(null);
        @Nullable GasketClass before = last == null ? null : sheets.sheet(last).gasket();
        @Nullable GasketClass now = sheets.sheet(build).gasket();
        if (last == null || before == null || now == null || now.compareTo(before) <= 0) {
            return Optional.empty();
        }
        List<Grade> read = view.facts()
                .of(Reading.class)
                .inForce()
                .map(Entry::fact)
                .filter(reading -> build.fact().engine().equals(reading.engine())
                        && EVIDENCE.contains(reading.kind())
                        && !reading.at().isBefore(last.fact().opened())
                        && view.ledger().asOf().counts(reading.at()))
                .flatMap(reading -> Optional.ofNullable(reading.grade()).stream())
                .toList();
        int clean = (int) read.stream().filter(grade -> grade == Grade.CLEAN).count();
        return Optional.of(new StrongerLink(before, now, clean, read.size() - clean));
    }
}
