package witnessmark.trace.result;

import witnessmark.domain.ChannelKind;
import witnessmark.domain.ChannelUnit;
import witnessmark.domain.Coded;

/**
 * One column of a trace.
 *
 * @param heading as it stands in the file, without its unit
 * @param kind what it measures
 * @param unit the unit its figures are in; of the same measure as the kind's own
 * @param from who says so
 */
public record ColumnForm(String heading, ChannelKind kind, ChannelUnit unit, From from) {
    /** Who says the unit. */
    public enum From implements Coded {
        /** Nobody: the kind's own was taken. */
        TAKEN("taken"),
        FILE("file"),
        /** Somebody who was asked. */
        PERSON("person");

        private final String code;

        From(String code) {
            this.code = code;
        }

        @Override
        public String code() {
            return code;
        }
    }

    public ColumnForm {
        if (kind.unit().measure() != unit.measure() && !kind.oftenMany()) {
            throw new IllegalArgumentException(kind + " is not in " + unit);
        }
    }

    /** A column of which nothing is worked out. */
    public static ColumnForm other(String heading) {
        return new ColumnForm(heading, ChannelKind.OTHER, ChannelUnit.UNSAID, From.TAKEN);
    }

    /** As a channel of this kind: in the unit that was said if that can be, else in the kind's own. */
    public ColumnForm as(ChannelKind other) {
        boolean fits = other.unit().measure() == unit.measure() || other.oftenMany();
        return new ColumnForm(heading, other, fits ? unit : other.unit(), fits ? from : From.TAKEN);
    }

    /** In the unit somebody said. */
    public ColumnForm in(ChannelUnit other) {
        return new ColumnForm(heading, kind, other, From.PERSON);
    }

    /** Whether the file or a person says the unit. */
    public boolean stated() {
        return from != From.TAKEN;
    }

    /** A figure of the file in the unit of the kind. */
    public double reckoned(double figure) {
        return kind.oftenMany() ? figure : unit.to(kind.unit(), figure);
    }
}
