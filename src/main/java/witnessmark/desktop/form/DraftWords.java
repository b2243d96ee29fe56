package witnessmark.desktop.form;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import witnessmark.logbook.port.Drafts;
import witnessmark.wording.Measures;
import witnessmark.wording.Texts;
import witnessmark.wording.Units;

/** What is said of a draft: when it was kept and where, and of one that turns up where it was not typed, where it was. */
public final class DraftWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ENGLISH);

    private final Texts texts;
    private final Measures measures;

    public DraftWords(Texts texts) {
        this.texts = texts;
        this.measures = new Measures(texts, Units.METRIC); // its days alone are asked
    }

    /**
     * What became of a draft that was to be kept.
     *
     * @param at when it was kept; its day is said too where that is not today
     */
    public String kept(Drafts.Kept kept, Instant at, ZoneId zone, Instant now) {
        String when = when(at, zone, now);
        return switch (kept) {
            case IN_LOGBOOK -> texts.get("form.draft.kept", when);
            case IN_FALLBACK_FILE -> texts.get("form.draft.kept_aside", when);
            case NOT_KEPT -> texts.get("form.draft.not_kept", when);
        };
    }

    /** What is said of a draft that stands on the form again. */
    public String found(Drafts.Draft draft, ZoneId zone, Instant now) {
        @Nullable String elsewhere = draft.typedIn();
        return elsewhere == null
                ? kept(Drafts.Kept.IN_LOGBOOK, draft.keptAt(), zone, now)
                : texts.get("form.draft.typed_in", when(draft.keptAt(), zone, now), elsewhere);
    }

    private String when(Instant at, ZoneId zone, Instant now) {
        ZonedDateTime moment = at.atZone(zone);
        LocalDate day = moment.toLocalDate();
        String clock = CLOCK.format(moment);
        return day.equals(now.atZone(zone).toLocalDate())
                ? clock
                : texts.get("form.draft.day", measures.weekday(day), measures.shortDate(day), clock);
    }
}
