package witnessmark.architecture;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ModifiersTree;

/** A stated exception from a length rule: {@code @SuppressWarnings("length: the reason")} on the class or method. */
final class LengthException {
    private LengthException() {}

    static boolean on(ModifiersTree modifiers) {
        return modifiers.getAnnotations().stream().anyMatch(LengthException::is);
    }

    static boolean is(AnnotationTree annotation) {
        return annotation.getAnnotationType().toString().equals("SuppressWarnings")
                && annotation.getArguments().toString().contains("\"length: ");
    }
}
