package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;
import witnessmark.quantity.Pressure;

/**
 * Units of pressure. A psi is the pound-force, 4.448 221 615 260 5 N, on the square of an inch of 25.4 mm, both exact
 * (NIST SP 811, 2008, appendix B.8: 6.894 757 kPa).
 */
public enum PressureUnit implements Unit<Pressure> {
    BAR("bar", "3.4 bar", Scale.of("100000"), "bar"),
    KILOPASCAL("kpa", "340 kPa", Scale.of("1000"), "kpa"),
    PSI("psi", "50 psi", Scale.of("0", "44482216152605", "6451600000"), "psi");

    private final String code;
    private final String example;
    private final Scale scale;
    private final List<String> words;

    PressureUnit(String code, String example, Scale scale, String... words) {
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
    public Pressure of(BigDecimal figure) {
        return new Pressure(scale.count(figure));
    }

    @Override
    public BigDecimal in(Pressure quantity, int decimals) {
        return scale.figure(quantity.pascals(), decimals);
    }
}
