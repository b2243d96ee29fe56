package witnessmark.desktop.beforewego;

import java.nio.file.Path;
import java.time.LocalDate;
import witnessmark.domain.Facts;
import witnessmark.ledger.AsOf;
import witnessmark.ledger.LifeLedger;
import witnessmark.logbook.Desk;
import witnessmark.logbook.View;
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

    static View of(Facts facts, LocalDate day) {
        var zone = Desk.zoneOf(facts);
        return new View(facts, day, zone, LifeLedger.of(facts, new AsOf(day, zone)), false);
    }
}
