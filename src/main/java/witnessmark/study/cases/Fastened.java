package witnessmark.study.cases;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import witnessmark.domain.Engine;
import witnessmark.domain.Entry;
import witnessmark.domain.Facts;
import witnessmark.domain.Id;
import witnessmark.domain.Joint;
import witnessmark.quantity.Moment;

/** How the fasteners of an engine were tightened last. */
final class Fastened {
    private Fastened() {}

    /** Every group's last tightening by a moment, in each of its stages. */
    static Collection<Joint> last(Facts facts, Id<Engine> engine, Moment by) {
        Map<String, Joint> last = new LinkedHashMap<>();
        facts
                .of(Joint.class)
                .where(joint -> joint.engine().equals(engine) && !joint.at().isAfter(by))
                .stream()
                .map(Entry::fact)
                .sorted(Comparator.comparing(Joint::at))
                .forEach(joint -> last.put(group(joint), joint));
        return last.values();
    }

    private static String group(Joint joint) {
        return joint.fasteners() + " " + joint.which().strip().toLowerCase(Locale.ROOT) + " " + joint.stage();
    }
}
