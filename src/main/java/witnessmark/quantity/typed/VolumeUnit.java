package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;
import witnessmark.quantity.Volume;

/**
 * Units of volume. The quart is the US liquid quart: a quarter of a gallon of 231 cubic inches, 0.946 352 946 L exactly
 * (NIST SP 811, 2008, appendix B.8: 9.463 529 E-04 m³).
 */
public enum VolumeUnit implements Unit<Volume> {
    LITRE("l", "0.3 L", Scale.of("1000000"), "l", "litre", "litres", "liter", "liters"),
    MILLILITRE("ml", "300 ml", Scale.of("1000"), "ml", "cc"),
    US_QUART("qt", "0.5 qt", Scale.of("946352.946"), "qt", "us qt", "quart", "quarts");

    private final String code;
    private final String example;
    private final Scale scale;
    private final List<String> words;

    VolumeUnit(String code, String example, Scale scale, String... words) {
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
    public Volume of(BigDecimal figure) {
        return new Volume(scale.count(figure));
    }

    @Override
    public BigDecimal in(Volume quantity, int decimals) {
        return scale.figure(quantity.microlitres(), decimals);
    }
}
