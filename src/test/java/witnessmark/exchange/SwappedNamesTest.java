package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Standing;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordType;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.Desk;
import witnessmark.logbook.ImportSeason;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Logbook;
import witnessmark.logbook.port.Written;
import witnessmark.outcome.Outcome;
import witnessmark.sample.FixedToday;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;

/**
 * Two records exchange their names in one logbook, and its season folder is read into a copy of the logbook as it was
 * before. Everything that refers to the two by their names still means the same two afterwards.
 */
class SwappedNamesTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 12, 31);

    private final CsvSeasonFolders folders = new CsvSeasonFolders();

    @TempDir
    private Path place;

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"car", "engine", "part", "position", "event", "person", "part_design"})
    void a_folder_in_which_two_names_were_exchanged_is_read_with_every_reference_right(String table) {
        try (Logbook here = filled("here");
                Logbook there = filled("there")) {
            Map<UUID, Map<String, @Nullable Object>> before = images(there.facts());
            RecordType<?> type = RecordTypes.named(table).orElseThrow();
            Outcome<Written> exchanged =
                    here.write(new Change("Ada", "names exchanged", exchanged(type, here.facts())));
            assertThat(exchanged.problems()).isEmpty();
            Path folder = place.resolve("exchanged");
            folders.write(here.facts(), folder).orThrow();

            ImportSeason into = new ImportSeason(new Desk(there, new FixedToday(TODAY), "Bea"), folders);
            ImportSeason.Reading reading = into.read(folder).orThrow();
            Outcome<Written> written = into.write(reading.taking(), false, "Bea", "read");

            assertThat(written.problems()).isEmpty();
            assertThat(images(there.facts())).isEqualTo(images(here.facts())).isNotEqualTo(before);
            assertThat(written.orThrow().amendments())
                    .as("the two, and nothing else")
                    .hasSize(2);
            assertThat(there.verify()).isEmpty();
        }
    }

    /** Changed by hand in one table alone, a name means who has it now, as in the folder's other tables. */
    @Test
    void a_table_changed_by_hand_moves_what_names_it_or_changes_nothing() {
        try (Logbook there = filled("there")) {
            Map<UUID, Map<String, @Nullable Object>> before = images(there.facts());
            SeasonText season =
                    SeasonText.small().cell("cars.csv", 1, "name", "57").cell("cars.csv", 2, "name", "41");
            ImportSeason into = new ImportSeason(new Desk(there, new FixedToday(TODAY), "Bea"), folders);

            ImportSeason.Reading reading =
                    into.read(season.in(place.resolve("by-hand"))).orThrow();
            Outcome<Written> written = into.write(reading.taking(), false, "Bea", "read");

            if (written.didWork()) {
                Facts again = Facts.none()
                        .with(folders.read(season.in(place.resolve("again")), Facts.none())
                                .orThrow());
                assertThat(images(there.facts())).isEqualTo(images(again));
            } else {
                assertThat(written.problems()).allMatch(problem -> problem.place() != null);
                assertThat(images(there.facts())).isEqualTo(before);
            }
            assertThat(there.verify()).isEmpty();
        }
    }

    private Logbook filled(String name) {
        Path folder = place.resolve(name);
        SqliteLogbookFiles files = new SqliteLogbookFiles(
                folder, System::currentTimeMillis, () -> "device-" + name, new Holder("bench", "Ada"));
        folder.toFile().mkdirs();
        Logbook logbook = files.create(folder.resolve("team.witness")).orThrow();
        List<Entry<?>> small = folders.read(SeasonText.small().in(place.resolve("small")), Facts.none())
                .orThrow();
        logbook.write(new Change("Ada", "begun", small)).orThrow();
        return logbook;
    }

    /** The first two in force that could be taken for each other, with each other's name. */
    private static <F extends Fact> List<Entry<?>> exchanged(RecordType<F> type, Facts facts) {
        List<Entry<F>> inForce = new ArrayList<>(facts.of(type.kind()).inForce().toList());
        Entry<F> one = inForce.get(0);
        Entry<F> other = inForce.get(1);
        return List.of(named(type, one, name(type, other)), named(type, other, name(type, one)));
    }

    private static int nameAt(RecordType<?> type) {
        for (int i = 0; i < type.components().size(); i++) {
            if (List.of("name", "number", "mark")
                    .contains(type.components().get(i).name())) {
                return i;
            }
        }
        throw new AssertionError(type + " has no name");
    }

    private static @Nullable Object name(RecordType<?> type, Entry<?> entry) {
        return type.components().get(nameAt(type)).value(entry.fact());
    }

    private static <F extends Fact> Entry<F> named(RecordType<F> type, Entry<F> entry, @Nullable Object name) {
        @Nullable Object[] values = new Object[type.components().size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = i == nameAt(type) ? name : type.components().get(i).value(entry.fact());
        }
        return new Entry<>(entry.id(), type.of(values), Standing.IN_FORCE, null, entry.rev() + 1);
    }

    private static Map<UUID, Map<String, @Nullable Object>> images(Facts facts) {
        Map<UUID, Map<String, @Nullable Object>> images = new TreeMap<>();
        RecordTypes.all()
                .forEach(type -> facts.of(type.kind())
                        .all()
                        .forEach(entry -> images.put(entry.id().value(), EntryImage.of(entry))));
        return images;
    }
}
