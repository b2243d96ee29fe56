package witnessmark.desktop.builds;

import java.util.List;
import org.jspecify.annotations.Nullable;
import witnessmark.desktop.form.SeamState;
import witnessmark.desktop.lessons.LessonLine;

/**
 * The page of a build in words.
 *
 * @param title "K05, build 3"
 * @param span its zones, when it was opened and closed
 * @param signed who signed its sheet
 * @param headline how much is still open
 * @param state the worst of it
 * @param open whether anything can still be typed
 */
record BuildLines(
        String title,
        String span,
        String signed,
        String headline,
        SeamState state,
        boolean open,
        List<PositionLine> positions,
        List<JointLine> joints,
        List<LessonLine> lessons,
        List<GapLine> gaps) {
    BuildLines {
        positions = List.copyOf(positions);
        joints = List.copyOf(joints);
        lessons = List.copyOf(lessons);
        gaps = List.copyOf(gaps);
    }

    /**
     * A position within reach.
     *
     * @param row the row of its fields
     * @param turn where it stands when the build is read out
     * @param out what came out, or comes out once this is saved
     * @param in what is in it, or goes in
     * @param ran what that had run
     * @param left how that stands
     * @param saved empty, or that it is not saved yet
     * @param about all of it in full, a line for each
     */
    record PositionLine(
            String row,
            int turn,
            SeamState state,
            String zone,
            String position,
            String out,
            String in,
            String ran,
            @Nullable Long running,
            String left,
            String saved,
            String about) {}

    /**
     * A group of fasteners, or one that is being written.
     *
     * @param row the row of its fields while it is not written; else what tells it from the others
     * @param how how it was tightened, with method, value and lubricant together
     * @param about the same in full, a line for each stage
     */
    record JointLine(String row, SeamState state, String group, String how, String about) {}

    /**
     * Something that is still open.
     *
     * @param row the row it is about, or null
     * @param way where it is put right, where that is none of its rows; else null
     */
    record GapLine(
            SeamState state,
            String words,
            @Nullable String row,
            @Nullable Way way) {
        /** Where something is put right. */
        enum Way {
            SHEET,
            LESSONS
        }
    }
}
