package witnessmark.domain;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import witnessmark.quantity.Length;
import witnessmark.quantity.Pressure;

/**
 * What bolts or studs of a design are, as far as their pull is worked out of it. One entry for a design; what is null
 * was not written down.
 *
 * @param design of the fasteners
 * @param count how many an engine has, 1 or more, or null
 * @param diameter nominal diameter of the thread
 * @param nutFactor torque over pull times diameter, above 0 and not above 1, for the one lubricant; or null
 * @param lubricant what the nut factor holds for; empty while there is none
 * @param stretchedDiameter of the shank that stretches, or null
 * @param stretchedLength of the shank that stretches, or null
 * @param modulusGigapascals modulus of elasticity, or null: not written down
 * @param proofNewtons pull it takes without staying longer, or null
 * @param makersPullNewtons pull its maker names when it is tightened as he says, or null
 * @param chosenFor highest gas pressure it was chosen to hold, or null
 * @param source where it is written
 */
public record Fastener(
        Id<PartDesign> design,
        @Nullable Integer count,
        Length diameter,
        @Nullable BigDecimal nutFactor,
        String lubricant,
        @Nullable Length stretchedDiameter,
        @Nullable Length stretchedLength,
        @Nullable Integer modulusGigapascals,
        @Nullable Integer proofNewtons,
        @Nullable Integer makersPullNewtons,
        @Nullable Pressure chosenFor,
        String source)
        implements Fact {
    public Fastener {
        if (diameter.nanometres() <= 0
                || notAbove0(stretchedDiameter)
                || notAbove0(stretchedLength)
                || notAbove0(count)
                || notAbove0(modulusGigapascals)
                || notAbove0(proofNewtons)
                || notAbove0(makersPullNewtons)
                || chosenFor != null && chosenFor.pascals() <= 0) {
            throw new IllegalArgumentException("what a fastener measures is above 0");
        }
        if (nutFactor != null && (nutFactor.signum() <= 0 || nutFactor.compareTo(BigDecimal.ONE) > 0)) {
            throw new IllegalArgumentException("a nut factor is above 0 and not above 1");
        }
        nutFactor = nutFactor == null ? null : Decimals.plain(nutFactor);
    }

    private static boolean notAbove0(@Nullable Length length) {
        return length != null && length.nanometres() <= 0;
    }

    private static boolean notAbove0(@Nullable Integer figure) {
        return figure != null && figure <= 0;
    }
}
