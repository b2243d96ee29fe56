package witnessmark.logbook.jobsheet;

import org.jspecify.annotations.Nullable;
import witnessmark.domain.PartDesign;
import witnessmark.ledger.result.KeptForJob;
import witnessmark.ledger.result.Where;

/**
 * What is kept for a job, and where it lies.
 *
 * @param kept what, and how many
 * @param design what it is
 * @param where where a part is; null for items of a batch
 * @param place the number of the engine or name of the car the part is in; empty when it is in none
 */
public record JobNeed(
        KeptForJob kept, PartDesign design, @Nullable Where where, String place) {}
