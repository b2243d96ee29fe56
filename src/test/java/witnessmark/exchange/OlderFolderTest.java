package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.history.Amendment;
import witnessmark.domain.image.EntryImage;
import witnessmark.domain.image.RecordTypes;
import witnessmark.logbook.Desk;
import witnessmark.logbook.ImportSeason;
import witnessmark.logbook.port.Change;
import witnessmark.logbook.port.Logbook;
import witnessmark.outcome.Place;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.sample.FixedToday;
import witnessmark.store.Holder;
import witnessmark.store.SqliteLogbookFiles;

/** A folder written before something was corrected in the logbook is read again into that logbook. */
class OlderFolderTest {
    private final CsvSeasonFolders folders = Folders.unsynced();

    @TempDir
    private Path place;

    private Logbook book;
    private Desk desk;
    private ImportSeason importing;
    private Path older;
    private String was = "";

    @BeforeEach
    void a_folder_is_written() {
        SqliteLogbookFiles files =
                new SqliteLogbookFiles(place, System::currentTimeMillis, () -> "device", new Holder("pit", "Ada"));
        book = files.create(place.resolve("team.witness")).orThrow();
        List<Entry<?>> small = folders.read(SeasonText.small().in(place.resolve("small")), Facts.none())
                .orThrow();
        book.write(new Change("Ada", "begun", small)).orThrow();
        desk = new Desk(book, new FixedToday(LocalDate.of(2026, 12, 31)), "Bea");
        importing = new ImportSeason(desk, folders);
        older = place.resolve("older");
        folders.write(book.facts(), older).orThrow();
    }

    @AfterEach
    void close() {
        book.close();
    }

    @Test
    void nothing_is_new_in_what_was_just_written() {
        ImportSeason.Reading reading = importing.read(older).orThrow();
        assertThat(reading.same()).isEqualTo(images().size());
        assertThat(reading.differing()).isZero();
        assertThat(reading.keeping().entries()).isEmpty();
        assertThat(reading.taking().entries()).isEmpty();
        assertThat(reading.keeping().leftOut()).isZero();
    }

    @Test
    void a_folder_of_before_a_column_was_there_says_nothing_of_it() throws IOException {
        Path designs = older.resolve("engine-designs.csv");
        String before = Files.readString(designs);
        assertThat(before).contains(",note,mains,");
        String[] rows = before.split("\n");
        for (int i = 0; i < rows.length; i++) {
            rows[i] = i == 0 ? rows[i].replace(",mains,", ",") : rows[i].replaceFirst(",(?=,,$)", "");
        }
        Files.writeString(designs, String.join("\n", rows) + "\n");

        ImportSeason.Reading reading = importing.read(older).orThrow();

        assertThat(reading.keeping().leftOut()).isZero();
        assertThat(reading.differing()).isZero();
        assertThat(reading.same()).isEqualTo(images().size());
    }

    @Test
    void what_was_corrected_since_stays_and_is_told_with_both_values() {
        amend(note("crack-tested"));
        Map<UUID, Map<String, @Nullable Object>> before = images();

        ImportSeason.Reading reading = importing.read(older).orThrow();

        assertThat(reading.differing()).isEqualTo(1);
        assertThat(reading.same()).isEqualTo(before.size() - 1);
        assertThat(reading.keeping().entries()).isEmpty();
        assertThat(reading.keeping().stops()).isFalse();
        assertThat(reading.keeping().leftOut()).isZero();
        assertThat(reading.keeping().problems()).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(ProblemKind.DIFFERS_FROM_LOGBOOK);
            assertThat(problem.facts().subList(3, 5)).containsExactly(was, "crack-tested");
            assertThat(place(problem).file()).isEqualTo("engines.csv");
            assertThat(place(problem).row()).isGreaterThan(1);
            assertThat(place(problem).column()).isEqualTo("note");
        });
        assertThat(images()).isEqualTo(before);
    }

    @Test
    void the_folders_value_is_written_when_asked_and_undo_brings_the_correction_back() {
        amend(note("crack-tested"));
        Map<UUID, Map<String, @Nullable Object>> corrected = images();

        ImportSeason.Plan taking = importing.read(older).orThrow().taking();
        assertThat(taking.problems()).isEmpty();
        importing.write(taking, false, "Bea, from older", "older taken in").orThrow();

        assertThat(engine().fact().note()).isEqualTo(was);
        List<Amendment> history = book.history("engine", engine().id().value());
        assertThat(history).hasSize(3);
        assertThat(history.get(2).who()).isEqualTo("Bea, from older");
        assertThat(history.get(2).before()).containsEntry("note", "crack-tested");
        desk.undo().orThrow();
        assertThat(images()).isEqualTo(corrected);
    }

    @Test
    void what_was_struck_out_since_stays_struck_out() {
        Entry<Run> run = run();
        amend(new Entry<>(run.id(), run.fact(), Standing.STRUCK_OUT, "another car", run.rev() + 1));
        ImportSeason.Reading reading = importing.read(older).orThrow();
        assertThat(reading.keeping().entries()).isEmpty();
        assertThat(reading.keeping().problems()).singleElement().satisfies(problem -> {
            assertThat(place(problem).column()).isEqualTo("standing");
            assertThat(problem.facts().subList(3, 5)).containsExactly("in force", "struck out: another car");
        });
    }

    /** The folder calls the first car 41, which is another car's name here by now. */
    @Test
    void a_name_that_moved_on_in_the_logbook_is_no_fault_of_an_older_folder() {
        Entry<Car> first = car("41");
        amend(new Entry<>(first.id(), new Car("7", ""), Standing.IN_FORCE, null, first.rev() + 1));
        amend(new Entry<>(Id.parse(Folders.id(900)), new Car("41", "the new one"), Standing.IN_FORCE, null, 1));

        ImportSeason.Reading reading = importing.read(older).orThrow();

        assertThat(reading.keeping().stops()).isFalse();
        assertThat(reading.keeping().entries()).isEmpty();
        assertThat(reading.keeping().problems())
                .extracting(Problem::kind)
                .containsOnly(ProblemKind.DIFFERS_FROM_LOGBOOK);
        assertThat(reading.taking().problems()).extracting(Problem::kind).contains(ProblemKind.NAME_TAKEN);
        assertThat(reading.taking().entries()).isEmpty();
        assertThat(reading.taking().leftOut()).isEqualTo(1);
    }

    /** A car that is new in the folder bears the name that an older car was given here meanwhile. */
    @Test
    void a_new_row_with_a_name_that_was_given_here_since_is_left_out_with_its_place() {
        Entry<Car> first = car("41");
        amend(new Entry<>(first.id(), new Car("99", ""), Standing.IN_FORCE, null, first.rev() + 1));
        SeasonText season = SeasonText.small().handMade();
        season.text("cars.csv", "id,name,note\n" + first.id().text() + ",41,\n" + Folders.id(901) + ",99,new\n");

        ImportSeason.Reading reading =
                importing.read(season.in(place.resolve("changed"))).orThrow();

        assertThat(reading.keeping().problems())
                .extracting(Problem::kind)
                .containsExactly(ProblemKind.NAME_TAKEN, ProblemKind.DIFFERS_FROM_LOGBOOK);
        assertThat(place(reading.keeping().problems().get(0))).isEqualTo(new Place("cars.csv", 3, null));
        assertThat(reading.keeping().entries()).isEmpty();
        assertThat(reading.taking().stops()).isFalse();
        assertThat(reading.taking().entries()).hasSize(2);
    }

    private static Place place(Problem problem) {
        Place place = problem.place();
        assertThat(place).isNotNull();
        return place;
    }

    private Entry<Engine> note(String note) {
        Entry<Engine> engine = engine();
        was = engine.fact().note();
        Map<String, @Nullable Object> image = EntryImage.of(engine);
        image.put("note", note);
        return EntryImage.entry(RecordTypes.of(Engine.class), engine.id().value(), image, engine.rev() + 1);
    }

    private Entry<Engine> engine() {
        return book.facts().of(Engine.class).find(Id.parse(Folders.id(11))).orElseThrow();
    }

    private Entry<Run> run() {
        return book.facts().of(Run.class).find(Id.parse(Folders.id(30))).orElseThrow();
    }

    private Entry<Car> car(String name) {
        return book.facts().of(Car.class).named(name).orElseThrow();
    }

    private void amend(Entry<?> entry) {
        book.write(new Change("Ada", "corrected", List.of(entry))).orThrow();
    }

    private Map<UUID, Map<String, @Nullable Object>> images() {
        Map<UUID, Map<String, @Nullable Object>> images = new TreeMap<>();
        RecordTypes.all()
                .forEach(type -> book.facts()
                        .of(type.kind())
                        .all()
                        .forEach(entry -> images.put(entry.id().value(), EntryImage.of(entry))));
        return images;
    }
}
