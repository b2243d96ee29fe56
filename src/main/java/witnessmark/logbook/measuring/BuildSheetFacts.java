package witnessmark.logbook.measuring;

import java.time.LocalDate;
import java.util.List;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Tool;
import witnessmark.quantity.Moment;

/**
 * What a printed build sheet is worded from.
 *
 * @param page the sheet
 * @param book everything written
 * @param open whether the build is open on the day looked at
 * @param tools what figures may have been measured with
 * @param logbook whose it is
 * @param day the day looked at
 * @param printed the moment it is printed
 */
public record BuildSheetFacts(
        SheetPage page,
        Facts book,
        boolean open,
        List<Entry<Tool>> tools,
        String logbook,
        LocalDate day,
        Moment printed) {
    public BuildSheetFacts {
        tools = List.copyOf(tools);
    }
}
