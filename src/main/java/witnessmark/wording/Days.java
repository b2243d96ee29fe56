package witnessmark.wording;

import java.time.LocalDate;
import java.time.LocalTime;
import witnessmark.quantity.Moment;

/** Days and times as shown. A moment shows what the clocks showed where it happened; a day always has its weekday. */
final class Days {
    private final Texts texts;

    Days(Texts texts) {
        this.texts = texts;
    }

    String date(LocalDate day) {
        return texts.get("measures.date", weekday(day), text(day.getDayOfMonth()), month(day), text(day.getYear()));
    }

    String shortDate(LocalDate day) {
        return texts.get("measures.date.short", text(day.getDayOfMonth()), month(day));
    }

    /** @param about whether its time is only estimated; the day is known all the same */
    String moment(Moment moment, boolean about) {
        LocalDate day = moment.day();
        String shown = texts.get("measures.date.weekday", weekday(day), text(day.getDayOfMonth()), month(day));
        return timed(shown, moment, about);
    }

    String fullMoment(Moment moment, boolean about) {
        return timed(date(moment.day()), moment, about);
    }

    /** The time of day on a 24 hour clock, to the minute begun. */
    String time(LocalTime time) {
        return texts.get("measures.time", twoFigures(time.getHour()), twoFigures(time.getMinute()));
    }

    private String timed(String day, Moment moment, boolean about) {
        if (moment.dayOnly()) {
            return day;
        }
        String time = time(moment.wallClock().toLocalTime());
        return texts.get("measures.moment", day, about ? texts.get("measures.about", time) : time);
    }

    String weekday(LocalDate day) {
        return texts.get("measures.weekday." + day.getDayOfWeek().getValue());
    }

    private String month(LocalDate day) {
        return texts.get("measures.month." + day.getMonthValue());
    }

    private static String text(int figure) {
        return Integer.toString(figure);
    }

    private static String twoFigures(int figure) {
        return figure < 10 ? "0" + figure : text(figure);
    }
}
