package witnessmark.desktop.beforewego;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.EventEntry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.PriorKind;
import witnessmark.domain.PriorLife;
import witnessmark.domain.Standing;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
import witnessmark.quantity.Counter;
import witnessmark.quantity.Moment;
import witnessmark.sample.SampleBooks;

/** Views for tests of the window, which need no file open. */
final class Views {
    static final LocalDate DAY = LocalDate.of(2026, 7, 8);

    private Views() {}

    /** Everything in the sample season, read through a real store. */
    static Facts sample(Path folder) {
        Desk desk = new SampleBooks(folder).open();
        Facts facts = desk.logbook().facts();
        desk.logbook().close();
        return facts;
    }

    /** The same season in a team that writes down no entries of cars for events. */
    static Facts withoutEntries(Facts facts) {
        return facts.with(facts.of(EventEntry.class).all().stream()
                .map(entry ->
                        new Entry<>(entry.id(), entry.fact(), Standing.STRUCK_OUT, "not kept here", entry.rev() + 1))
                .toList());
    }

    /** The same season in which an engine was told, in one figure, to have run so long before its first day. */
    static Facts told(Facts facts, String engine, long hours, PriorKind kind) {
        long amount = hours * 3_600_000;
        Moment before = Moment.endOf(LocalDate.of(2025, 1, 1), Desk.zoneOf(facts));
        Id<Engine> id = facts.of(Engine.class).named(engine).orElseThrow().id();
        PriorLife life = new PriorLife(
                null, id, Counter.RUNNING, kind, amount, amount, amount, before, "by word of its builder");
        return facts.with(List.of(new Entry<>(new Id<>(new UUID(7, 7)), life, Standing.IN_FORCE, null, 1)));
    }

    static View of(Facts facts, LocalDate day) {
        var zone = Desk.zoneOf(facts);
        return new View(facts, day, zone, LifeLedger.of(facts, new AsOf(day, zone)), false);
    }
}
