package witnessmark.trace.result;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import witnessmark.domain.Coded;

/** How the characters of a text file are written as bytes. */
public enum TextCoding implements Coded {
    UTF_8("UTF-8", StandardCharsets.UTF_8),
    UTF_16_LE("UTF-16LE", StandardCharsets.UTF_16LE),
    UTF_16_BE("UTF-16BE", StandardCharsets.UTF_16BE),
    /** ISO 8859-1: what is no UTF-8 is read as this. */
    LATIN_1("ISO-8859-1", StandardCharsets.ISO_8859_1);

    private final String code;
    private final Charset charset;

    TextCoding(String code, Charset charset) {
        this.code = code;
        this.charset = charset;
    }

    @Override
    public String code() {
        return code;
    }

    public Charset charset() {
        return charset;
    }

    /** Whether two bytes make a character. */
    public boolean wide() {
        return this == UTF_16_LE || this == UTF_16_BE;
    }
}
