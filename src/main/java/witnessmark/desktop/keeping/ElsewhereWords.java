package witnessmark.desktop.keeping;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.CopyElsewhere.Look;
import witnessmark.outcome.Problem;
import witnessmark.outcome.ProblemKind;
import witnessmark.wording.Measures;
import witnessmark.wording.Problems;
import witnessmark.wording.Texts;

/** Where else the logbook is kept, in a line and in a sentence. */
final class ElsewhereWords {
    /** A weekday alone tells a day within this. */
    private static final Duration WEEKDAY_TELLS = Duration.ofDays(6);

    private final Texts texts;
    private final Measures measures;
    private final Problems problems;
    private final ZoneId zone;

    ElsewhereWords(Texts texts, Measures measures, Problems problems, ZoneId zone) {
        this.texts = texts;
        this.measures = measures;
        this.problems = problems;
        this.zone = zone;
    }

    /** "Only on this laptop since Fri 18:10", "Second copy Fri 18:11". */
    String line(Look look, Instant now) {
        if (look.place() == null) {
            return texts.get("keeping.elsewhere.none");
        }
        Instant since = look.onlyHereSince();
        Instant written = look.written();
        if (since != null || written == null) {
            return since == null
                    ? texts.get("keeping.elsewhere.none")
                    : texts.get("keeping.elsewhere.onlyHere", moment(since, now));
        }
        String key = isOnSameDisk(look) ? "keeping.elsewhere.sameDisk" : "keeping.elsewhere.written";
        return texts.get(key, moment(written, now));
    }

    /** Whether something that was saved is lost with this computer. */
    static boolean isOnlyHere(Look look) {
        return look.onlyHereSince() != null;
    }

    private static boolean isOnSameDisk(Look look) {
        return look.known().stream().anyMatch(known -> known.kind() == ProblemKind.PLACE_ON_SAME_DISK);
    }

    /** The same with the place, when it was last written, what is in the way, and what is worth knowing of the place. */
    String sentence(Look look, Instant now) {
        String said = ofPlace(look, now);
        for (Problem known : look.known()) {
            said = texts.get("keeping.elsewhere.both", said, problems.sentence(known));
        }
        return said;
    }

    private String ofPlace(Look look, Instant now) {
        Path place = look.place();
        if (place == null) {
            return texts.get("keeping.elsewhere.none.tip");
        }
        Instant written = look.written();
        String last = written == null
                ? texts.get("keeping.elsewhere.never", place)
                : texts.get("keeping.elsewhere.last", place, moment(written, now));
        if (!look.problems().isEmpty()) {
            return texts.get(
                    "keeping.elsewhere.both",
                    last,
                    problems.sentence(look.problems().get(0)));
        }
        if (!look.there()) {
            return texts.get("keeping.elsewhere.both", last, texts.get(waits(look), place));
        }
        return last;
    }

    /** A copy that takes its time. */
    String slow(Path place, Instant since, Instant now) {
        return texts.get("keeping.elsewhere.slow", place, moment(since, now));
    }

    private static String waits(Look look) {
        return look.onlyHereSince() == null ? "keeping.elsewhere.away" : "keeping.elsewhere.waits";
    }

    private String moment(Instant moment, Instant now) {
        ZonedDateTime at = moment.atZone(zone);
        LocalDate day = at.toLocalDate();
        boolean near = Duration.between(moment, now).abs().compareTo(WEEKDAY_TELLS) < 0;
        String when = near ? measures.weekday(day) : measures.shortDate(day);
        return texts.get("keeping.elsewhere.moment", when, measures.time(at.toLocalTime()));
    }

    /** The day and time of a copy in a list, to the second: two are often made within a minute. */
    String full(@Nullable Instant moment) {
        if (moment == null) {
            return "";
        }
        ZonedDateTime at = moment.atZone(zone);
        return texts.get(
                "keeping.copies.moment",
                measures.date(at.toLocalDate()),
                measures.time(at.toLocalTime()),
                at.getSecond() < 10 ? "0" + at.getSecond() : Integer.toString(at.getSecond()));
    }
}
