package witnessmark.desktop.testing;

import java.awt.Component;
import java.awt.Container;
import java.awt.FocusTraversalPolicy;
import java.util.ArrayList;
import java.util.List;

/** Where Tab goes. The window must be showing. */
public final class TabWalk {
    private static final int MOST = 500;

    private TabWalk() {}

    /** The components in the order of Tab, from the first until it comes round. */
    public static List<Component> from(Component first) {
        Container root = first.getFocusCycleRootAncestor();
        FocusTraversalPolicy policy = root.getFocusTraversalPolicy();
        List<Component> visited = new ArrayList<>();
        Component at = first;
        do {
            visited.add(at);
            at = policy.getComponentAfter(root, at);
        } while (at != null && at != first && visited.size() < MOST);
        return visited;
    }

    /** The same by accessible names. */
    public static List<String> namesFrom(Component first) {
        return from(first).stream().map(Words::name).toList();
    }
}
