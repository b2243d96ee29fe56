package witnessmark.logbook.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Quarantine;
import witnessmark.outcome.Outcome;

/** What has no time of its own stands in the way of nothing that is entered after it for the same day. */
class LaterThatDayTest extends ByHand {
    private void takenOffPutAsideAndLetOut() {
        own.save(new TakeOffPart(), "place", "H1", "fitted", "VS-1", "off_when", "10 Mar", "off_reason", "look")
                .orThrow();
        own.save(new PutPartAside(), "part", "VS-1", "since", "10 Mar", "why", "crack?", "by", "Jo")
                .orThrow();
        own.save(
                        new DecideAside(),
                        "when",
                        "10 Mar",
                        "decided",
                        SheetWord.LET_OUT.key(),
                        "decided_words",
                        "none",
                        "by",
                        "Jo")
                .orThrow();
    }

    private Outcome<?> fitAt(String time) {
        FitPart fit = new FitPart();
        Map<SheetField, String> typed =
                own.filled(fit, "place", "H1", "position", "valve springs", "part", "VS-1", "since", "10 Mar");
        typed.put(FitPart.SINCE_TIME, time);
        return own.sheets.save(fit, typed, "by hand");
    }

    private List<Fitment> stays() {
        return own
                .desk
                .view()
                .facts()
                .of(Fitment.class)
                .where(each -> each.part().equals(part("VS-1")))
                .stream()
                .map(Entry::fact)
                .toList();
    }

    @Test
    void a_part_let_out_on_a_day_is_fitted_at_a_time_of_that_day_in_one_save() {
        takenOffPutAsideAndLetOut();
        List<Fitment> before = stays();
        Quarantine aside = own.only(Quarantine.class);

        fitAt("15:00").orThrow();

        List<Fitment> stays = stays();
        assertThat(stays).hasSize(2);
        assertThat(stays.get(1).from().wallClock().toLocalTime()).isEqualTo(LocalTime.of(15, 0));
        Quarantine moved = own.only(Quarantine.class);
        assertThat(stays.get(0).to()).isNotNull().isLessThanOrEqualTo(moved.from());
        assertThat(moved.from()).isLessThan(moved.to());
        assertThat(moved.to()).isLessThanOrEqualTo(stays.get(1).from());
        assertThat(moved.from().day()).isEqualTo(aside.from().day());

        own.desk.undo().orThrow();
        assertThat(stays()).isEqualTo(before);
        assertThat(own.only(Quarantine.class)).isEqualTo(aside);
    }

    /** The day alone means after the last run: what ran that afternoon keeps its parts. */
    @Test
    void it_is_not_put_before_a_run() {
        own.save(new TakeOffPart(), "place", "H1", "fitted", "VS-1", "off_when", "10 Mar", "off_reason", "look")
                .orThrow();
        logRun("20 min", "8000", "16:00");
        own.save(new PutPartAside(), "part", "VS-1", "since", "10 Mar", "why", "crack?", "by", "Jo")
                .orThrow();
        own.save(
                        new DecideAside(),
                        "when",
                        "10 Mar",
                        "decided",
                        SheetWord.LET_OUT.key(),
                        "decided_words",
                        "none",
                        "by",
                        "Jo")
                .orThrow();
        Quarantine aside = own.only(Quarantine.class);
        assertThat(fitAt("15:00").didWork()).isFalse();
        assertThat(own.only(Quarantine.class)).isEqualTo(aside);
    }

    @Test
    void what_was_put_aside_without_a_time_is_let_out_at_a_time() {
        own.save(new TakeOffPart(), "place", "H1", "fitted", "VS-1", "off_when", "10 Mar", "off_reason", "look")
                .orThrow();
        own.save(new PutPartAside(), "part", "VS-1", "since", "10 Mar", "why", "crack?", "by", "Jo")
                .orThrow();
        own.save(
                        new DecideAside(),
                        "when",
                        "10 Mar",
                        "when_time",
                        "14:00",
                        "decided",
                        SheetWord.LET_OUT.key(),
                        "decided_words",
                        "none",
                        "by",
                        "Jo")
                .orThrow();
        Quarantine aside = own.only(Quarantine.class);
        assertThat(aside.from()).isLessThan(aside.to());
        assertThat(stays().get(0).to()).isLessThanOrEqualTo(aside.from());
    }
}
