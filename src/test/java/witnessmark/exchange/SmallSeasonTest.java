package witnessmark.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.HowKnown;
import witnessmark.domain.Id;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Position;
import witnessmark.domain.Run;
import witnessmark.domain.Standing;
import witnessmark.domain.image.RecordTypes;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Distance;
import witnessmark.quantity.Moment;
import witnessmark.quantity.Pressure;
import witnessmark.quantity.RunningTime;
import witnessmark.quantity.Temperature;

/**
 * A season folder typed out by hand holds the form of the files still: whatever the program comes to be, folders that
 * teams have kept must read and be written as they are.
 */
class SmallSeasonTest {
    private final CsvSeasonFolders folders = Folders.unsynced();

    @TempDir
    Path place;

    @Test
    void every_kind_of_record_is_in_it() {
        assertThat(SeasonText.small().files().keySet())
                .containsAll(RecordTypes.all().stream().map(type -> type.file()).toList());
    }

    @Test
    void it_reads_with_no_problem_and_is_written_back_byte_for_byte() {
        Path typed = SeasonText.small().in(place.resolve("typed"));
        folders.write(read(typed), place.resolve("written")).orThrow();
        assertThat(Folders.texts(place.resolve("written"))).isEqualTo(Folders.texts(typed));
    }

    @Test
    void figures_are_read_in_the_units_of_their_headings() {
        Run run = read(SeasonText.small().in(place)).of(Run.class).get(Id.parse(Folders.id(30)));
        assertThat(run.running()).isEqualTo(new RunningTime(1_440_000));
        assertThat(run.loaded()).isEqualTo(new RunningTime(980_500));
        assertThat(run.distance()).isEqualTo(new Distance(33_000));
        assertThat(run.oilPressure()).isEqualTo(new Pressure(460_000));
        // 273.15 K is 0 degrees Celsius (BIPM, SI Brochure, 9th edition, 2.3.1)
        assertThat(run.ambient()).isEqualTo(new Temperature(272_650));
        assertThat(run.start()).isEqualTo(Moment.parse("2026-04-11T09:30:00+01:00[Europe/London]"));
        assertThat(run.asTyped()).isEqualTo("running=24:00\nlaps=15");
        assertThat(run.remarks()).isEqualTo("=SUM(A1) was on the board");
        assertThat(run.track()).isNull();
    }

    @Test
    void names_are_read_as_the_rows_they_mean() {
        Facts facts = read(SeasonText.small().in(place));
        Fitment fitment = facts.of(Fitment.class).all().get(0).fact();
        Position position = facts.of(Position.class).get(fitment.position());
        assertThat(position.name()).isEqualTo("rods");
        assertThat(position.design()).isNotNull();
        assertThat(fitment.engine()).isEqualTo(Id.parse(Folders.id(11)));
        Run pulls = facts.of(Run.class).get(Id.parse(Folders.id(31)));
        assertThat(pulls.knownBy().byCounter())
                .containsOnly(entry(Counter.RUNNING, HowKnown.HOUR_METER), entry(Counter.PULLS, HowKnown.TOLD));
        assertThat(facts.of(Run.class).get(Id.parse(Folders.id(32))).perhapsSame())
                .isEqualTo(Id.parse(Folders.id(30)));
    }

    @Test
    void a_struck_out_row_and_its_reason_come_through() {
        Entry<Engine> twice = read(SeasonText.small().in(place))
                .of(Engine.class)
                .find(Id.parse(Folders.id(12)))
                .orElseThrow();
        assertThat(twice.standing()).isEqualTo(Standing.STRUCK_OUT);
        assertThat(twice.struckBecause()).isEqualTo("the same engine twice");
    }

    @Test
    void a_field_with_quotes_and_lines_is_read_as_it_was_typed() {
        PartDesign springs = read(SeasonText.small().in(place))
                .of(PartDesign.class)
                .all()
                .get(1)
                .fact();
        assertThat(springs.partNumber()).isEqualTo("V \"290\"");
        assertThat(springs.specification()).isEqualTo("290 N at 36.5 mm\n700 N at 26.1 mm");
    }

    @Test
    void a_part_split_from_a_set_carries_what_it_was_there() {
        Part split =
                read(SeasonText.small().in(place)).of(Part.class).all().get(2).fact();
        assertThat(split.mark()).isEqualTo("VS-03-3B");
        assertThat(split.memberMark()).isEqualTo("3B");
        assertThat(split.ofSet()).isEqualTo(Id.parse(Folders.id(17)));
        assertThat(split.splitAt()).isEqualTo(Moment.parse("2026-05-06T18:00:00+01:00[Europe/London]"));
        assertThat(split.useBy()).isNull();
    }

    private Facts read(Path folder) {
        var read = folders.read(folder, Facts.none());
        assertThat(read.problems()).isEmpty();
        return Facts.none().with(read.orThrow());
    }
}
