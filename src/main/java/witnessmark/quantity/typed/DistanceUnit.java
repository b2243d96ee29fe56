package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;
import witnessmark.quantity.Distance;

/**
 * Units of distance. The mile is the international one, 1 609.344 m exactly (NIST SP 811, 2008, appendix B.8).
 */
public enum DistanceUnit implements Unit<Distance> {
    KILOMETRE("km", "39.8 km", Scale.of("1000"), "km"),
    MILE("mi", "24.7 mi", Scale.of("1609.344"), "mi", "mile", "miles"),
    METRE("m", "3980 m", Scale.of("1"), "m");

    private final String code;
    private final String example;
    private final Scale scale;
    private final List<String> words;

    DistanceUnit(String code, String example, Scale scale, String... words) {
        this.code = code;
        this.example = example;
        this.scale = scale;
        this.words = List.of(words);
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public List<String> words() {
        return words;
    }

    @Override
    public String example() {
        return example;
    }

    @Override
    public Distance of(BigDecimal figure) {
        return new Distance(scale.count(figure));
    }

    @Override
    public BigDecimal in(Distance quantity, int decimals) {
        return scale.figure(quantity.metres(), decimals);
    }
}
