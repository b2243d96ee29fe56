package witnessmark.logbook.shelf;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.Car;
import witnessmark.domain.Chase;
import witnessmark.domain.Engine;
import witnessmark.domain.EngineDesign;
import witnessmark.domain.Facts;
import witnessmark.domain.Fitment;
import witnessmark.domain.Id;
import witnessmark.domain.Job;
import witnessmark.domain.JobPart;
import witnessmark.domain.Limit;
import witnessmark.domain.LimitAction;
import witnessmark.domain.LimitRank;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.PartKind;
import witnessmark.domain.Position;
import witnessmark.domain.Quarantine;
import witnessmark.domain.Scrapping;
import witnessmark.domain.SentOut;
import witnessmark.domain.SetMember;
import witnessmark.domain.StockBatch;
import witnessmark.domain.StockMove;
import witnessmark.domain.StockMoveKind;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.ledger.Story;
import witnessmark.logbook.View;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;

/** A shelf with one part for each way in which a part can be somewhere, and stock that runs short. Invented. */
public final class SmallShelf {
    public static final LocalDate DAY = LocalDate.parse("2026-07-08");
    private static final ZoneId ZONE = Story.UTC;

    private final Story story = new Story();
    private final Id<EngineDesign> four = story.design("four");
    private final Id<Engine> k03 = story.engine("K03", four);
    private final Id<Engine> k06 = story.engine("K06", four);
    private final Id<Car> car = story.car("41");
    private final Id<Position> inlet = story.position(four, PartKind.VALVE_SPRINGS, "inlet springs", 1, true);
    private final Id<Position> exhaust = story.position(four, PartKind.VALVE_SPRINGS, "exhaust springs", 2, true);
    private final Id<Position> rods = story.position(four, PartKind.RODS, "rods", 3, true);
    private final Id<PartDesign> spring = story.partDesign("Orrow 18-16", PartKind.VALVE_SPRINGS, false);
    private final Id<PartDesign> rod = story.partDesign("Tarn 132", PartKind.RODS, false);
    private final Id<PartDesign> head = story.partDesign("Four head", PartKind.HEAD, false);
    private final Id<PartDesign> gasket = story.partDesign("Fenn 0.9", PartKind.HEAD_GASKET, true);

    private SmallShelf() {
        story.put(k03, car, at("01-02T08:00"), null);
        fittedParts();
        asideParts();
        stock();
    }

    /** Everything on it. */
    public static Facts facts() {
        return new SmallShelf().story.facts();
    }

    /** The shelf as of a day. */
    public static View view(LocalDate day) {
        Facts facts = facts();
        return new View(facts, day, ZONE, LifeLedger.of(facts, new AsOf(day, ZONE)), day.isBefore(DAY));
    }

    private void fittedParts() {
        Id<Part> springs = batched("VS-03", spring, "OR-2217");
        story.fit(springs, k03, inlet, at("01-28T18:00"), null);
        Id<Part> borrowed = batched("VS-06", spring, "OR-2217");
        story.fit(borrowed, k06, exhaust, at("01-28T18:00"), at("07-03T18:00"));
        story.add(new Fitment(borrowed, k03, null, exhaust, at("07-04T09:00"), null, null, null, "", "", true));
        story.add(new Limit(
                "renew valve springs",
                LimitAction.RENEW,
                null,
                PartKind.VALVE_SPRINGS,
                null,
                null,
                null,
                null,
                Counter.RUNNING,
                12 * 3_600_000L,
                LimitRank.BUILDER,
                "builder's sheet",
                LocalDate.parse("2026-01-01"),
                null));
        story.run(k03, car, at("03-07T10:00"), 600);
        story.run(k03, car, at("05-09T10:00"), 180);
        story.run(k06, null, at("04-11T10:00"), 90);
    }

    private void asideParts() {
        Id<Part> rodSet = story.part("RS-03", rod);
        for (int i = 1; i <= 4; i++) {
            story.add(new SetMember(rodSet, String.valueOf(i), i));
        }
        story.fit(rodSet, k06, rods, at("01-28T18:00"), at("06-27T17:00"));
        story.add(new Scrapping(rodSet, "3", at("06-27T18:00"), "bent", "Crew chief"));
        story.add(new Quarantine(rodSet, "4", at("06-27T18:00"), "beside the bent one", "Crew chief", null, "", ""));
        story.add(new Quarantine(
                story.part("PN-07", story.partDesign("Tarn 81", PartKind.PISTONS, false)),
                "",
                at("07-01T10:00"),
                "detonation mark on 2",
                "Engineer",
                null,
                "",
                ""));
        Id<SentOut> sent = story.add(new SentOut(
                story.part("HD-06", head),
                null,
                null,
                null,
                "machinist G1",
                "skim, pressure test",
                "0.10 off",
                at("06-22T08:00"),
                LocalDate.parse("2026-06-30"),
                null,
                "",
                "Crew chief",
                ""));
        story.add(new Chase(sent, at("07-01T09:00"), "in two days", LocalDate.parse("2026-07-03"), "Crew chief"));
        story.add(new Scrapping(
                story.part("CR-05", story.partDesign("Four crank", PartKind.CRANK, false)),
                "",
                at("06-16T12:00"),
                "pin 3 blue and undersize",
                "Builder"));
        story.part("VS-15", spring);
        Id<Part> split = story.part("RS-01", rod);
        story.add(new SetMember(split, "1", 1));
        story.add(new Part("RS-01/1", rod, "", "", null, null, null, split, "1", at("02-02T10:00"), ""));
    }

    private void stock() {
        Id<Job> job = story.add(new Job(
                "change the head gasket of K03",
                k03,
                null,
                null,
                null,
                "",
                null,
                null,
                "",
                null,
                at("07-06T10:00"),
                "Crew chief",
                null,
                ""));
        Id<StockBatch> old = batch(gasket, "FN-101", 3, null);
        Id<StockBatch> now = batch(gasket, "FN-118", 3, null);
        move(old, "01-10T10:00", 2);
        move(old, "05-20T10:00", -2);
        move(now, "05-02T10:00", 4);
        story.add(new JobPart(job, null, now, 2));
        Id<StockBatch> oil = batch(
                story.partDesign("10W-60", PartKind.OIL_AND_FILTER, true), "drum 7", 0, LocalDate.parse("2026-06-30"));
        move(oil, "03-01T10:00", 9);
        Id<StockBatch> bolts = batch(story.partDesign("Tarn rod bolt", PartKind.ROD_BOLTS, true), "T-44", 8, null);
        move(bolts, "03-01T10:00", 24);
        story.add(new SentOut(
                null,
                null,
                gasket,
                6,
                "Fenn",
                "",
                "",
                at("07-07T10:00"),
                LocalDate.parse("2026-07-15"),
                null,
                "",
                "Crew chief",
                ""));
        Id<Part> spare =
                story.facts().of(Part.class).named("VS-15").orElseThrow().id();
        story.add(new JobPart(job, spare, null, 1));
    }

    private Id<Part> batched(String mark, Id<PartDesign> design, String batch) {
        return story.add(new Part(mark, design, batch, "Orrow", null, null, null, null, null, null, ""));
    }

    private Id<StockBatch> batch(Id<PartDesign> design, String batch, int least, @Nullable LocalDate useBy) {
        return story.add(new StockBatch(design, batch, "", useBy, "B2", least, ""));
    }

    private void move(Id<StockBatch> batch, String at, int change) {
        story.add(new StockMove(
                batch, at(at), change, change > 0 ? StockMoveKind.BOUGHT : StockMoveKind.USED, null, null, "", ""));
    }

    /** A moment of 2026, such as 07-04T09:00. */
    private static Moment at(String monthAndTime) {
        return Story.at("2026-" + monthAndTime + "Z");
    }

    /** The marks of the parts in the order shown. */
    public static List<String> marks(Shelf shelf) {
        List<String> marks = new ArrayList<>();
        shelf.parts().forEach(part -> marks.add(part.mark()));
        return marks;
    }
}
