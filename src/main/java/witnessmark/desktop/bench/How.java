package witnessmark.desktop.bench;

import java.util.List;
import witnessmark.domain.HowStood;

/**
 * What holds for a figure besides its place, as typed and chosen.
 *
 * @param stood how the part stood
 * @param tool the text form of the tool's identity; empty when none is named
 * @param temperature of room and parts, as typed; empty when not said
 * @param by who measures
 */
record How(HowStood stood, String tool, String temperature, String by) {
    private static final String BETWEEN = "|";

    static How by(String who) {
        return new How(HowStood.NOT_SAID, "", "", who);
    }

    /** As it is kept in a draft. */
    String kept() {
        return String.join(BETWEEN, stood.name(), tool, temperature.replace(BETWEEN, " "), by.replace(BETWEEN, " "));
    }

    /** From a draft; what cannot be read there is not said. */
    static How from(String kept, How otherwise) {
        List<String> parts = List.of(kept.split("\\|", -1));
        if (parts.size() != 4) {
            return otherwise;
        }
        HowStood stood = List.of(HowStood.values()).stream()
                .filter(one -> one.name().equals(parts.get(0)))
                .findFirst()
                .orElse(HowStood.NOT_SAID);
        return new How(stood, parts.get(1), parts.get(2), parts.get(3));
    }

    How withStood(HowStood other) {
        return new How(other, tool, temperature, by);
    }

    How withTool(String other) {
        return new How(stood, other, temperature, by);
    }

    How withTemperature(String other) {
        return new How(stood, tool, other, by);
    }

    How withBy(String other) {
        return new How(stood, tool, temperature, other);
    }
}
