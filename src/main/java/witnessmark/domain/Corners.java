package witnessmark.domain;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import witnessmark.quantity.Length;

/**
 * Corners of an area on a face, in their order.
 *
 * @param all none, or three or more
 */
public record Corners(List<Corner> all) {
    private static final int FEWEST = 3;

    public Corners {
        all = List.copyOf(all);
        if (!all.isEmpty() && all.size() < FEWEST) {
            throw new IllegalArgumentException("an area has three corners or more");
        }
    }

    /**
     * One of them.
     *
     * @param x from the front end
     * @param y from the inlet edge
     */
    public record Corner(Length x, Length y) {}

    /**
     * Reads {@code 180 120, 230 120, 205 160}, millimetres; empty text is no corner.
     *
     * @throws IllegalArgumentException if it is no such text, or has one corner or two
     */
    public static Corners read(String text) {
        List<Corner> corners = new ArrayList<>();
        for (String pair : text.isBlank() ? new String[0] : text.split(",")) {
            String[] figures = pair.strip().split("\\s+");
            if (figures.length != 2) {
                throw new IllegalArgumentException("180 120, 230 120, 205 160");
            }
            corners.add(new Corner(
                    Length.ofMillimetres(new BigDecimal(figures[0])),
                    Length.ofMillimetres(new BigDecimal(figures[1]))));
        }
        return new Corners(corners);
    }

    /** As {@link #read} takes it. */
    public String text() {
        return all.stream()
                .map(corner -> corner.x().text() + " " + corner.y().text())
                .collect(Collectors.joining(", "));
    }

    /**
     * The mean of the corners.
     *
     * @throws IllegalStateException if there are none
     */
    public Corner middle() {
        if (all.isEmpty()) {
            throw new IllegalStateException("no corner has no middle");
        }
        return new Corner(
                new Length(all.stream()
                                .mapToLong(corner -> corner.x().nanometres())
                                .sum()
                        / all.size()),
                new Length(all.stream()
                                .mapToLong(corner -> corner.y().nanometres())
                                .sum()
                        / all.size()));
    }
}
