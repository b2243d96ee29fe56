package witnessmark.fit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.domain.GasketClass;
import witnessmark.domain.SizeLimit;

/**
 * A head gasket that lies on the shelf.
 *
 * @param design its name
 * @param made what it is made like, or null when not said
 * @param figures what its maker says of it
 */
public record Gasket(String design, @Nullable GasketClass made, List<SizeLimit> figures) {
    public Gasket {
        figures = List.copyOf(figures);
    }
}
