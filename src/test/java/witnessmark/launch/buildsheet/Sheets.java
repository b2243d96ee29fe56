package witnessmark.launch.buildsheet;

import java.time.Instant;
import java.util.UUID;
import witnessmark.domain.Build;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fact;
import witnessmark.domain.Facts;
import witnessmark.domain.HowStood;
import witnessmark.domain.Id;
import witnessmark.domain.MeasurePlace;
import witnessmark.domain.Measurement;
import witnessmark.domain.Standing;
import witnessmark.logbook.View;
import witnessmark.logbook.measuring.BuildSheetFacts;
import witnessmark.logbook.measuring.SeeBuildSheet;
import witnessmark.logbook.measuring.SheetPage;
import witnessmark.logbook.measuring.WriteBuildSheet;
import witnessmark.logbook.run.SampleBook;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleViews;

/** The builds of the sample as they are printed, and figures for them. */
final class Sheets {
    static final Moment PRINTED = Moment.of(Instant.parse("2026-07-08T18:00:00Z"), SampleViews.ZONE);

    private Sheets() {}

    static View sample() {
        return view(SampleBook.facts());
    }

    static View view(Facts facts) {
        return SampleViews.on(facts, SampleBook.OPENING);
    }

    static Entry<Build> build(View view, String engine, int number) {
        Id<Engine> found =
                view.facts().of(Engine.class).named(engine).orElseThrow().id();
        return SeeBuildSheet.build(view, found, number).orElseThrow();
    }

    static SheetPage page(View view, String engine, int number) {
        return SeeBuildSheet.of(view, build(view, engine, number).id()).orElseThrow();
    }

    static BuildSheetFacts facts(View view, String engine, int number) {
        return WriteBuildSheet.facts(view, build(view, engine, number).id(), "Marrowgate Racing", PRINTED)
                .orElseThrow();
    }

    static <F extends Fact> Entry<F> entry(F fact) {
        return new Entry<>(new Id<>(UUID.randomUUID()), fact, Standing.IN_FORCE, null, 1);
    }

    static Measurement figure(
            Id<Build> build, MeasurePlace at, long value, boolean inUse, HowStood stood, String note) {
        return new Measurement(
                build,
                at.kind(),
                at.number(),
                at.spot(),
                value,
                "",
                Moment.of(Instant.parse("2026-07-01T12:00:00Z"), SampleViews.ZONE),
                null,
                null,
                stood,
                inUse,
                "Crew chief",
                note);
    }
}
