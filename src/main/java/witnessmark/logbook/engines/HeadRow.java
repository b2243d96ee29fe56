package witnessmark.logbook.engines;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Fitment;
import witnessmark.domain.Part;
import witnessmark.domain.PartDesign;
import witnessmark.domain.Work;
import witnessmark.ledger.result.Life;
import witnessmark.quantity.Moment;

/**
 * One head, on an engine or off it.
 *
 * @param head which one
 * @param design what it is
 * @param fitment the fitment it is in; when it is off, the last it was in; null when it was never fitted
 * @param engine the engine of that fitment, or null
 * @param off whether it is off the engine
 * @param first when its first entry happened, when that is after the day looked at: then nothing is known yet; or null
 * @param running its whole running time
 * @param skim its last skim that did not fail, or null when none is written down
 * @param sinceSkim its running time since that skim; its whole life when there was none
 */
public record HeadRow(
        Entry<Part> head,
        PartDesign design,
        @Nullable Entry<Fitment> fitment,
        @Nullable Entry<Engine> engine,
        boolean off,
        @Nullable Moment first,
        Life running,
        @Nullable Entry<Work> skim,
        Life sinceSkim) {}
