package witnessmark.ledger;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Chase;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.JobPart;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.SetMember;
import witnessmark.domain.Standing;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.quantity.Moment;

/**
 * Adds what happens to parts off the engine to a history of {@link HistoryGenerator}: quarantines, scrapping, parts and
 * engines away and asked after, orders, stock that comes and goes, jobs it is kept for. Moments lie on a grid of three
 * hours, so that some fall together. Not everything can be true together; what follows from it is defined all the same.
 */
final class ShelfGenerator {
    private static final Instant FIRST = Instant.parse("2026-03-20T00:00:00Z");
    private static final int MOMENTS = 16 * 8;
    private static final String SET = "R-0/1";

    private final SplittableRandom random;
    private final History history;
    private final Story story;
    private final List<Id<SentOut>> sent = new ArrayList<>();
    private final List<Id<StockBatch>> batches = new ArrayList<>();
    private final List<Id<Job>> jobs = new ArrayList<>();

    private ShelfGenerator(long seed) {
        this.random = new SplittableRandom(seed ^ 0x5e1f);
        this.history = HistoryGenerator.history(seed);
        this.story = history.story();
    }

    /** The history of a seed. */
    static History history(long seed) {
        return new ShelfGenerator(seed).made();
    }

    private History made() {
        // R-0/1 is split off R-0 in every history, and R-0/1/a off that.
        member(0, SET);
        if (chance(60)) {
            member(0, "2");
        }
        member(5, "R-0/1/a");
        if (chance(60)) {
            member(5, "b");
        }
        repeat(3 + random.nextInt(4), this::quarantine);
        repeat(random.nextInt(4), this::scrap);
        repeat(2 + random.nextInt(4), this::send);
        repeat(random.nextInt(6), this::chase);
        stock();
        return history;
    }

    private void member(int set, String mark) {
        story.add(new SetMember(history.parts().get(set), mark, 1), standing());
    }

    private void quarantine() {
        int from = random.nextInt(MOMENTS);
        Id<Part> part = part();
        story.add(new Quarantine(part, memberOf(part), moment(from), "blue", "", later(from), "", ""), standing());
    }

    private void scrap() {
        Id<Part> part = part();
        story.add(new Scrapping(part, memberOf(part), moment(random.nextInt(MOMENTS)), "bent", ""), standing());
    }

    private void send() {
        int from = random.nextInt(MOMENTS);
        @Nullable LocalDate promised = chance(60) ? day() : null;
        int what = random.nextInt(10);
        boolean order = what > 7;
        sent.add(story.add(
                new SentOut(
                        what < 6 ? part() : null,
                        what == 6 || what == 7 ? pick(history.engines()) : null,
                        order ? design() : null,
                        order ? 1 + random.nextInt(9) : null,
                        "the machinist",
                        "",
                        "",
                        moment(from),
                        promised,
                        later(from),
                        "",
                        "",
                        ""),
                standing()));
    }

    private void chase() {
        story.add(
                new Chase(
                        pick(sent),
                        moment(random.nextInt(MOMENTS)),
                        chance(50) ? "" : "soon",
                        chance(50) ? day() : null,
                        ""),
                standing());
    }

    private void stock() {
        Id<PartDesign> bolts = story.partDesign("bolts", PartKind.ROD_BOLTS, true);
        for (int i = 0; i < 3; i++) {
            @Nullable LocalDate useBy = chance(30) ? day() : null;
            batches.add(story.add(
                    new StockBatch(i == 0 ? design() : bolts, "lot " + i, "", useBy, "", random.nextInt(6), ""),
                    standing()));
        }
        for (int i = 0; i < 3; i++) {
            int asked = random.nextInt(MOMENTS);
            jobs.add(story.add(
                    new Job(
                            "a job",
                            null,
                            null,
                            null,
                            null,
                            "",
                            null,
                            null,
                            "",
                            null,
                            moment(asked),
                            "",
                            later(asked),
                            ""),
                    standing()));
        }
        repeat(
                12,
                () -> story.add(
                        new StockMove(
                                pick(batches),
                                moment(random.nextInt(MOMENTS)),
                                (chance(50) ? 1 : -1) * (1 + random.nextInt(6)),
                                pick(List.of(StockMoveKind.values())),
                                null,
                                chance(40) ? pick(jobs) : null,
                                "",
                                ""),
                        standing()));
        repeat(4, () -> story.add(new JobPart(pick(jobs), null, pick(batches), 1 + random.nextInt(5)), standing()));
        repeat(2, () -> story.add(new JobPart(pick(jobs), part(), null, 1), standing()));
    }

    private Id<PartDesign> design() {
        return story.facts().of(Part.class).get(history.parts().get(1)).design();
    }

    /** A part; the set and what was split off it rather than others. */
    private Id<Part> part() {
        return chance(60) ? history.parts().get(pick(List.of(0, 0, 5, 6))) : pick(history.parts());
    }

    private String memberOf(Id<Part> part) {
        int at = history.parts().indexOf(part);
        return chance(50) || at != 0 && at != 5 ? "" : pick(at == 0 ? List.of(SET, "2") : List.of("R-0/1/a", "b"));
    }

    private @Nullable Moment later(int from) {
        return chance(40) ? null : moment(from + 1 + random.nextInt(50));
    }

    private LocalDate day() {
        return LocalDate.parse("2026-03-18").plusDays(random.nextInt(20));
    }

    private static Moment moment(int grid) {
        return Moment.of(FIRST.plusSeconds(grid * 3L * 3600), Story.UTC);
    }

    private Standing standing() {
        return chance(90) ? Standing.IN_FORCE : chance(50) ? Standing.STRUCK_OUT : Standing.IN_CONFLICT;
    }

    private boolean chance(int percent) {
        return random.nextInt(100) < percent;
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private static void repeat(int times, Runnable what) {
        for (int i = 0; i < times; i++) {
            what.run();
        }
    }
}
