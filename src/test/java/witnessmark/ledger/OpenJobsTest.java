package witnessmark.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import witnessmark.domain.Entry;
import witnessmark.domain.Event;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.Notice;
import witnessmark.domain.NoticeDone;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Scrapping;
import witnessmark.domain.Standing;
import witnessmark.ledger.result.NoticeLeft;
import witnessmark.quantity.Moment;

/** Jobs that are open and notices that are not answered, against a plain walk over what was written. */
class OpenJobsTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/London");
    private static final LocalDate FIRST = LocalDate.of(2026, 3, 1);

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void a_job_is_open_from_the_day_it_was_asked_for_until_the_day_it_was_done(long seed) {
        Random random = new Random(seed);
        List<Entry<?>> all = new ArrayList<>();
        List<Entry<Event>> events = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            LocalDate day = FIRST.plusDays(random.nextInt(40));
            events.add(made(random, new Event("Event " + i, "", day, day, ZONE, null, "")));
        }
        List<Entry<Job>> jobs = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            int asked = random.nextInt(30);
            Moment done = random.nextBoolean() ? at(asked + random.nextInt(20), 23) : null;
            Id<Event> before = random.nextInt(3) == 0
                    ? null
                    : events.get(random.nextInt(3)).id();
            jobs.add(made(
                    random,
                    new Job(
                            "job " + i,
                            null,
                            null,
                            null,
                            before,
                            "",
                            null,
                            null,
                            "",
                            null,
                            at(asked, i),
                            "Ann",
                            done,
                            "")));
        }
        all.addAll(events);
        all.addAll(jobs);
        Facts facts = Facts.none().with(all);
        for (int day = 0; day < 50; day += 7) {
            LocalDate looked = FIRST.plusDays(day);
            List<String> expected = jobs.stream()
                    .map(Entry::fact)
                    .filter(job -> !job.asked().day().isAfter(looked))
                    .filter(job -> job.done() == null || job.done().day().isAfter(looked))
                    .sorted(Comparator.comparing((Job job) -> events.stream()
                                    .filter(event -> event.id().equals(job.before()))
                                    .map(event -> event.fact().firstDay())
                                    .findFirst()
                                    .orElse(LocalDate.MAX))
                            .thenComparing(job -> job.asked()))
                    .map(Job::what)
                    .toList();
            assertThat(OpenJobs.of(facts, new AsOf(looked, ZONE)))
                    .extracting(job -> job.fact().what())
                    .containsExactlyElementsOf(expected);
        }
    }

    @Test
    void a_notice_is_left_until_every_part_of_the_batch_is_answered_or_scrapped() {
        Random random = new Random(1);
        Entry<PartDesign> gasket =
                made(random, new PartDesign("gasket", PartKind.HEAD_GASKET, "", "", true, false, "", null));
        Entry<Part> one = part(random, gasket, "G1", "H1-2540");
        Entry<Part> other = part(random, gasket, "G2", "h1 2540");
        Entry<Part> another = part(random, gasket, "G3", "H1-2541");
        Entry<Notice> notice = made(
                random,
                new Notice("N1", "maker", FIRST.plusDays(5), null, "H1-2540", "", "look at the rivets", true, ""));
        Facts facts = Facts.none().with(List.of(gasket, one, other, another, notice));
        assertThat(left(facts, 4)).isEmpty();
        assertThat(left(facts, 5)).containsExactly("G1", "G2");
        facts = facts.with(List.of(
                made(random, new NoticeDone(notice.id(), one.id(), at(8, 12), "tight", "Ann")),
                made(random, new Scrapping(other.id(), "", at(10, 12), "used", "Ann"))));
        assertThat(left(facts, 7)).containsExactly("G1", "G2");
        assertThat(left(facts, 9)).containsExactly("G2");
        assertThat(left(facts, 10)).isEmpty();
    }

    private static List<String> left(Facts facts, int day) {
        return Notices.left(facts, new AsOf(FIRST.plusDays(day), ZONE)).stream()
                .map(NoticeLeft::parts)
                .flatMap(List::stream)
                .map(part -> part.fact().mark())
                .toList();
    }

    private static Entry<Part> part(Random random, Entry<PartDesign> design, String mark, String batch) {
        return made(random, new Part(mark, design.id(), batch, "", null, null, null, null, null, null, ""));
    }

    private static Moment at(int day, int hour) {
        return Moment.of(
                FIRST.plusDays(day).atTime(LocalTime.of(hour, 0)).atZone(ZONE).toInstant(), ZONE);
    }

    private static <F extends Fact> Entry<F> made(Random random, F fact) {
        return new Entry<>(new Id<>(new UUID(random.nextLong(), random.nextLong())), fact, Standing.IN_FORCE, null, 1);
    }
}
