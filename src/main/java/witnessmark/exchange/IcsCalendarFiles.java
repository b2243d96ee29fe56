package witnessmark.exchange;

import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.text.ICalWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Date;
import java.util.List;
import witnessmark.logbook.port.CalendarEntry;
import witnessmark.logbook.port.CalendarFiles;
import witnessmark.outcome.Outcome;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;

/** Calendars as iCalendar, RFC 5545: days as dates, clock times in UTC. */
public final class IcsCalendarFiles implements CalendarFiles {
    /** The library folds by characters, the standard by 75 octets: so many characters have no more, whichever they are. */
    private static final int SHORT_LINE = 25;

    private static final String BEGINS = "BEGIN:VCALENDAR";

    private final WholeFile files;

    public IcsCalendarFiles() {
        this(new RealDisk());
    }

    IcsCalendarFiles(Disk disk) {
        this.files = new WholeFile(disk);
    }

    /** At the place there is the calendar as it was, or the whole new one. */
    @Override
    public Outcome<Integer> write(List<CalendarEntry> entries, Instant made, Path file) {
        try {
            if (Files.exists(file) && !isCalendar(file)) {
                return Outcome.didNot(Problem.of(ProblemKind.FILE_EXISTS, file.toString()));
            }
            files.write(text(entries, made).getBytes(StandardCharsets.UTF_8), file);
            return Outcome.worked(entries.size());
        } catch (IOException e) {
            return Outcome.didNot(WriteFailure.problem(file, e));
        }
    }

    private static boolean isCalendar(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (var in = Files.newInputStream(file)) {
            return new String(in.readNBytes(BEGINS.length()), StandardCharsets.UTF_8).equals(BEGINS);
        }
    }

    private static String text(List<CalendarEntry> entries, Instant made) throws IOException {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Witness Mark//logbook//EN");
        for (CalendarEntry entry : entries) {
            calendar.addEvent(event(entry, made));
        }
        StringWriter text = new StringWriter();
        try (ICalWriter writer = new ICalWriter(text, ICalVersion.V2_0)) {
            writer.getVObjectWriter().getFoldedLineWriter().setLineLength(SHORT_LINE);
            writer.write(calendar);
        }
        return text.toString();
    }

    private static VEvent event(CalendarEntry entry, Instant made) {
        VEvent event = new VEvent();
        event.setUid(entry.id());
        event.setDateTimeStamp(Date.from(made));
        event.setSummary(entry.title());
        if (!entry.where().isEmpty()) {
            event.setLocation(entry.where());
        }
        if (!entry.note().isEmpty()) {
            event.setDescription(entry.note());
        }
        if (entry.at() == null) {
            event.setDateStart(day(entry.first()), false);
            event.setDateEnd(day(entry.last().plusDays(1)), false); // the end is the first day no longer in it
        } else {
            Instant at = Instant.ofEpochMilli(entry.at().epochMillis());
            event.setDateStart(Date.from(at), true);
            if (entry.lasts() != null) {
                event.setDateEnd(Date.from(at.plusMillis(entry.lasts().millis())), true);
            }
        }
        return event;
    }

    /** A day as the library wants it: where the clocks of this machine begin it. */
    private static Date day(LocalDate day) {
        return Date.from(day.atStartOfDay(ZoneId.systemDefault()).toInstant());
    }
}
