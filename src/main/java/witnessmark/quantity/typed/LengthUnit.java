package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;
import witnessmark.quantity.Length;

/**
 * Units of length. The inch is 25.4 mm exactly (NIST SP 811, 2008, appendix B.8); a thou is a thousandth of it.
 */
public enum LengthUnit implements Unit<Length> {
    MILLIMETRE("mm", "0.05 mm", Scale.of("1000000"), "mm"),
    MICROMETRE("um", "50 µm", Scale.of("1000"), "µm", "μm", "um"),
    INCH("in", "0.002 in", Scale.of("25400000"), "in", "\"", "″", "”", "in.", "inch", "inches"),
    THOU("thou", "2 thou", Scale.of("25400"), "thou");

    private final String code;
    private final String example;
    private final Scale scale;
    private final List<String> words;

    LengthUnit(String code, String example, Scale scale, String... words) {
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
    public Length of(BigDecimal figure) {
        return new Length(scale.count(figure));
    }

    @Override
    public BigDecimal in(Length quantity, int decimals) {
        return scale.figure(quantity.nanometres(), decimals);
    }
}
