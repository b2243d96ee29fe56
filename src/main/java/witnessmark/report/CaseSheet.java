package witnessmark.report;

import java.time.Instant;
import java.util.List;

/**
 * What stands on the case sheet of an incident, in words.
 *
 * @param title what it is: "Case INC-05"
 * @param board on the right of the board: how it stands
 * @param under sentences under the board, the first strongest
 * @param edge what stands at the edges in place of whose it is
 * @param day the day looked at
 * @param printed when it was printed, in words
 * @param made the same moment, for the file
 * @param caution what nobody may take it for, on every page
 * @param tables evidence, causes, actions, proof
 * @param pictures photos, two beside each other
 * @param notes small, at the end: what was left out
 */
public record CaseSheet(
        String title,
        String board,
        List<String> under,
        String edge,
        String day,
        String printed,
        Instant made,
        String caution,
        List<SeasonSheet.Section> tables,
        List<Picture> pictures,
        List<String> notes) {
    public CaseSheet {
        under = List.copyOf(under);
        tables = List.copyOf(tables);
        pictures = List.copyOf(pictures);
        notes = List.copyOf(notes);
    }

    /**
     * A photo.
     *
     * @param jpeg its bytes
     * @param words under it
     */
    @SuppressWarnings("ArrayRecordComponent") // made once and put on the paper
    public record Picture(byte[] jpeg, String words) {}
}
