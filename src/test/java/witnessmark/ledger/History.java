package witnessmark.ledger;

import java.util.List;
import witnessmark.domain.Car;
import witnessmark.domain.Engine;
import witnessmark.domain.Id;
import witnessmark.domain.Part;

/**
 * A history made by {@link HistoryGenerator}.
 *
 * @param story what was written
 * @param engines every engine
 * @param cars every car
 * @param parts every part, set and member
 * @param asOf a day to look at it on
 */
public record History(Story story, List<Id<Engine>> engines, List<Id<Car>> cars, List<Id<Part>> parts, AsOf asOf) {}
