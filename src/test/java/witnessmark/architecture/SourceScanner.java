package witnessmark.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Walks one source after another and reports places in it. */
abstract class SourceScanner extends TreeScanner<@Nullable Void, SourceScanner.Report> {

    /** Takes findings in one source. */
    record Report(CompilationUnitTree unit, SourcePositions positions, Consumer<String> sink) {
        void found(Tree tree, String what) {
            sink.accept(
                    "%s:%d %s".formatted(SourceTree.shown(path()), line(positions.getStartPosition(unit, tree)), what));
        }

        String text() {
            return SourceTree.text(path());
        }

        /** Lines from the first of a tree to its last, both counted. */
        long lines(Tree tree) {
            return line(positions.getEndPosition(unit, tree)) - line(positions.getStartPosition(unit, tree)) + 1;
        }

        private Path path() {
            return Path.of(unit.getSourceFile().toUri());
        }

        private long line(long position) {
            return unit.getLineMap().getLineNumber(position);
        }
    }
}
