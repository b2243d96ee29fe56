package witnessmark.command;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import witnessmark.domain.Event;
import witnessmark.domain.PlannedRun;
import witnessmark.logbook.View;
import witnessmark.sample.SampleBooks;

/** The calendar of the sample season, read back by a library that reads iCalendar (biweekly), and held against RFC 5545. */
class CalendarTest {
    @TempDir
    private Path folder;

    private Shell shell;
    private String book;
    private Path file;

    @BeforeEach
    void bringInTheSeason() {
        shell = new Shell(folder);
        book = shell.sampleBook();
        file = folder.resolve("season.ics");
    }

    private List<VEvent> written(String day) throws Exception {
        assertThat(shell.run("calendar", book, file.toString(), "--as-of", day).code())
                .isZero();
        ICalendar calendar = Biweekly.parse(file.toFile()).first();
        assertThat(calendar.validate(calendar.getVersion()).isEmpty())
                .as("valid by RFC 5545")
                .isTrue();
        return calendar.getEvents();
    }

    @Test
    void every_event_to_come_and_each_of_its_runs_is_there_at_its_time() throws Exception {
        List<VEvent> events = written("2026-07-08");
        View view = new SampleBooks(folder.resolve("sample")).open().view();
        for (var event : view.facts().of(Event.class).all()) {
            boolean toCome = !event.fact().lastDay().isBefore(java.time.LocalDate.of(2026, 7, 8));
            assertThat(events.stream()
                            .anyMatch(one ->
                                    one.getUid().getValue().equals(event.id().text())))
                    .as(event.fact().name())
                    .isEqualTo(toCome);
        }
        VEvent round6 = titled(events, "Round 6, Thornacre");
        assertThat(round6.getDateStart().getValue().hasTime()).isFalse();
        assertThat(round6.getDescription().getValue()).contains("car 41, engine K03", "car 57, engine K06");
        for (var run : view.facts().of(PlannedRun.class).all()) {
            Event event = view.facts().of(Event.class).get(run.fact().event());
            if (event.name().equals("Round 6, Thornacre") && run.fact().out() != null) {
                Instant out = run.fact()
                        .day()
                        .atTime(run.fact().out())
                        .atZone(event.zone())
                        .toInstant();
                assertThat(titled(events, run.fact().name() + ", " + event.name())
                                .getDateStart()
                                .getValue()
                                .toInstant())
                        .isEqualTo(out);
            }
        }
    }

    @Test
    void what_must_be_done_is_on_the_day_the_truck_leaves_and_each_thing_has_an_identity_of_its_own() throws Exception {
        List<VEvent> events = written("2026-07-08");
        VEvent springs = events.stream()
                .filter(event -> event.getSummary().getValue().startsWith("Valve springs VS-03: renew valve springs"))
                .findFirst()
                .orElseThrow();
        assertThat(springs.getDescription().getValue()).startsWith("Must be done before Round 6, Thornacre");
        assertThat(Files.readString(file).replace("\r\n ", "")).contains("DTSTART;VALUE=DATE:20260724");
        assertThat(written("2026-07-07"))
                .as("the same thing keeps its identity")
                .anyMatch(event ->
                        event.getUid().getValue().equals(springs.getUid().getValue()));
        Set<String> ids = new HashSet<>();
        events.forEach(event -> assertThat(ids.add(event.getUid().getValue())).isTrue());
    }

    @Test
    void the_last_day_to_ask_for_an_entry_back_is_on_that_day() throws Exception {
        VEvent entry = titled(written("2026-07-08"), "Last day to ask back: Entry, Round 6, Thornacre, car 41");
        assertThat(entry.getDescription().getValue()).isEqualTo("520.00 EUR to ask back");
        String file = Files.readString(this.file).replace("\r\n ", "");
        String block = file.substring(file.indexOf(entry.getUid().getValue()));
        assertThat(block.substring(0, block.indexOf("END:VEVENT"))).contains("DTSTART;VALUE=DATE:20260711");
        assertThat(written("2026-07-12"))
                .as("the day after")
                .noneMatch(event -> event.getSummary().getValue().contains("Entry, Round 6"));
    }

    /** RFC 5545, 3.1: lines end in CRLF and are no longer than 75 octets. */
    @Test
    void lines_are_folded_as_the_standard_says() throws Exception {
        written("2026-07-08");
        String text = Files.readString(file);
        assertThat(text.replace("\r\n", "")).doesNotContain("\n");
        for (String line : text.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
        }
    }

    @Test
    void it_takes_the_place_of_an_earlier_calendar_and_of_nothing_else() throws Exception {
        written("2026-06-01");
        written("2026-07-08");
        Path other = Files.writeString(folder.resolve("other.txt"), "mine");
        Ran refused = new Ran(shell.run("calendar", book, other.toString()).code());
        assertThat(refused.code()).isEqualTo(1);
        assertThat(Files.readString(other)).isEqualTo("mine");
    }

    private record Ran(int code) {}

    private static VEvent titled(List<VEvent> events, String title) {
        return events.stream()
                .filter(event -> event.getSummary().getValue().equals(title))
                .findFirst()
                .orElseThrow();
    }
}
