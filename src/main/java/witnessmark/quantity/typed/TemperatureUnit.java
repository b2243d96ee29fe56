package witnessmark.quantity.typed;

import java.math.BigDecimal;
import java.util.List;
import witnessmark.quantity.Temperature;

/**
 * Units of temperature: 0 °C is 273.15 K, and a temperature in °F is that in K times 9/5 less 459.67, both exact (NIST SP
 * 811, 2008, appendix B.8).
 */
public enum TemperatureUnit implements Unit<Temperature> {
    CELSIUS("degc", "96 °C", Scale.of("273.15", "1000", "1"), "°c", "c", "ºc"),
    FAHRENHEIT("degf", "205 °F", Scale.of("459.67", "5000", "9"), "°f", "f", "ºf");

    private final String code;
    private final String example;
    private final Scale scale;
    private final List<String> words;

    TemperatureUnit(String code, String example, Scale scale, String... words) {
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
    public Temperature of(BigDecimal figure) {
        return new Temperature(scale.count(figure));
    }

    @Override
    public BigDecimal in(Temperature quantity, int decimals) {
        return scale.figure(quantity.millikelvin(), decimals);
    }
}
