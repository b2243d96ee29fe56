package witnessmark.desktop.trials;

import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.ChartCopy;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.Aside;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Id;
import witnessmark.logbook.View;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.sheets.SetUpTrial;
import witnessmark.logbook.trials.SeeTrials;
import witnessmark.wording.Texts;

/** The page of a trial, in the place of the parts shelf: reads trials off the event thread and shows one. */
public final class TrialAside implements Aside {
    private static final Logger LOG = LoggerFactory.getLogger(TrialAside.class);

    private final TrialsContext context;
    private final Texts texts;
    private final TrialModel model;
    private final Latest reading;
    private final TrialPanel panel;
    private List<TrialLines> all = List.of();
    private @Nullable String wanted;
    private @Nullable TrialLines shown;
    private boolean asTable;

    public TrialAside(TrialsContext context) {
        this.context = context;
        this.texts = context.texts();
        this.model = new TrialModel(texts, context.measures());
        this.reading = new Latest(context.tasks());
        this.panel = new TrialPanel(context.tools(), new Done());
        FormKeys.bindWithin(
                panel,
                Keys.plain(KeyEvent.VK_ESCAPE),
                "wm-leave",
                () -> context.asked().dismiss().run());
    }

    @Override
    public String heading() {
        return texts.get("trialview.heading");
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public JComponent firstFocus() {
        return panel.lives();
    }

    @Override
    public List<String> help() {
        return List.of("help.trialview");
    }

    @Override
    public void changed() {
        read();
    }

    /** Shows a trial by the text form of its identity. */
    public void open(String trial) {
        wanted = trial;
        context.asked().show().accept(this);
        read();
    }

    /** Shows the trial that was looked at last, else the first that goes on. */
    public void open() {
        context.asked().show().accept(this);
        read();
    }

    /** Shows the trial of a part's design, by the text form of the part's identity. */
    public void openPart(String part) {
        SeeTrials.ofPart(context.view().get(), Id.parse(part))
                .ifPresentOrElse(
                        trial -> open(trial.text()), () -> context.window().say(texts.get("trialview.ofNone")));
    }

    private void read() {
        reading.run(
                texts.get("trialview.reading"),
                () -> {
                    View view = context.view().get();
                    return SeeTrials.all(view).stream().map(model::lines).toList();
                },
                this::show,
                failure -> {
                    LOG.error("how trials stand could not be worked out", failure);
                    panel.failed(
                            texts.get("trialview.failed"),
                            Buttons.plain(Caption.of(texts.get("trialview.again")), this::read));
                });
    }

    private void show(List<TrialLines> read) {
        panel.fine();
        all = read;
        Optional<TrialLines> next = read.stream()
                .filter(each -> each.trial().equals(wanted))
                .findFirst()
                .or(() -> read.stream().findFirst());
        shown = next.orElse(null);
        next.ifPresentOrElse(now -> panel.show(all, now, asTable), panel::nothing);
    }

    TrialPanel panel() {
        return panel;
    }

    /** What the widgets tell. */
    private final class Done implements TrialPanel.Doing {
        @Override
        public void trial(TrialLines chosen) {
            wanted = chosen.trial();
            show(all);
        }

        @Override
        public void setUp() {
            context.asked().write().accept(Prefilled.empty(new SetUpTrial().key()), TrialAside.this::open);
        }

        @Override
        public void judge() {
            TrialLines now = shown;
            if (now != null) {
                context.asked().write().accept(Prefilled.judging(Id.parse(now.trial())), TrialAside.this::open);
            }
        }

        @Override
        public void table() {
            asTable = !asTable;
            show(all);
        }

        @Override
        public void copy() {
            TrialLines now = shown;
            BufferedImage picture = panel.lives().picture();
            if (now != null && picture != null) {
                Toolkit.getDefaultToolkit()
                        .getSystemClipboard()
                        .setContents(new ChartCopy(picture, now.chart().table().tabbed()), null);
                context.window().say(texts.get("form.chart.copied"));
            }
        }

        @Override
        public void leave() {
            context.asked().dismiss().run();
        }

        @Override
        public void part(String record) {
            context.asked().part().accept(record);
        }

        @Override
        public void found(FoundLine line) {
            if (line.incident()) {
                context.asked().incident().accept(line.record());
            } else {
                context.asked().correct().accept(line.record(), TrialAside.this::open);
            }
        }
    }
}
