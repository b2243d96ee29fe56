package witnessmark.abuse;

import static witnessmark.desktop.testing.Hand.await;
import static witnessmark.desktop.testing.Hand.button;
import static witnessmark.desktop.testing.Hand.onEventThread;

import java.awt.Frame;
import java.awt.event.WindowEvent;
import witnessmark.launch.Main;

/**
 * The shipped program, started as people start it and closed by its window as soon as that is up. Where it says that it
 * waits for a last copy somebody leaves at once; that goes to standard output.
 */
final class LeavingProgram {
    private LeavingProgram() {}

    public static void main(String[] args) throws Exception {
        Main.main(new String[0]);
        await(() -> Frame.getFrames().length > 0 && Frame.getFrames()[0].isShowing());
        onEventThread(() -> {
            Frame frame = Frame.getFrames()[0];
            frame.dispatchEvent(new WindowEvent(frame, WindowEvent.WINDOW_CLOSING));
        });
        await(() -> button("Leave now").isPresent());
        System.out.println("told");
        onEventThread(() -> button("Leave now").orElseThrow().doClick(0));
    }
}
