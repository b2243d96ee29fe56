package witnessmark.abuse;

import static witnessmark.desktop.testing.Hand.await;
import static witnessmark.desktop.testing.Hand.button;
import static witnessmark.desktop.testing.Hand.field;
import static witnessmark.desktop.testing.Hand.onEventThread;

import java.time.LocalTime;
import javax.swing.JTextField;
import witnessmark.launch.Main;

/**
 * The shipped program, started as people start it, with somebody at its run sheet who saves one run after another by
 * the sheet's own button. Each time the window has acknowledged one, its running time in seconds goes to standard
 * output. It goes on until the process is killed.
 */
final class SavingProgram {
    private SavingProgram() {}

    public static void main(String[] args) {
        try {
            save();
        } catch (Exception e) {
            e.printStackTrace();
            Runtime.getRuntime().halt(1);
        }
    }

    private static void save() throws Exception {
        Main.main(new String[0]);
        await(() -> button("Log a run").isPresent());
        onEventThread(() -> button("Log a run").orElseThrow().doClick(0));
        await(() -> field("Running time, min").isPresent() && button("Save run").isPresent());
        for (int i = 0; i < 120; i++) {
            int seconds = 301 + i;
            String out = LocalTime.MIN.plusMinutes(10L * i + 1).toString();
            onEventThread(() -> {
                field("Out at").orElseThrow().setText(out);
                field("Running time, min").orElseThrow().setText(seconds + " s");
                button("Save run").orElseThrow().doClick(0);
            });
            await(() -> field("Running time, min")
                    .map(JTextField::getText)
                    .orElse("?")
                    .isEmpty());
            System.out.println("saved " + seconds);
        }
    }
}
