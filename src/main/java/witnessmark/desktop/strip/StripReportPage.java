package witnessmark.desktop.strip;

import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.photos.PhotoStrip;
import witnessmark.desktop.shell.OneChange;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.Build;
import witnessmark.domain.Finding;
import witnessmark.domain.FindingMark;
import witnessmark.domain.HowMarked;
import witnessmark.domain.Id;
import witnessmark.domain.Incident;
import witnessmark.domain.PartSpot;
import witnessmark.logbook.View;
import witnessmark.logbook.port.Written;
import witnessmark.logbook.strip.WriteStrip;
import witnessmark.outcome.Outcome;
import witnessmark.wording.RecordWords;
import witnessmark.wording.StripWords;
import witnessmark.wording.Texts;

/** The strip report: reads it off the event thread, shows it, and writes what is said of its positions. */
public final class StripReportPage {
    private static final Logger LOG = LoggerFactory.getLogger(StripReportPage.class);

    private final StripContext context;
    private final Texts texts;
    private final StripModel model;
    private final StripWords words;
    private final RecordWords records;
    private final OneChange change;
    private final WriteStrip writing;
    private final Latest reading;
    private final Beside beside = new Beside();
    private final StripPanel panel;
    private final JButton again;
    private Runnable print = () -> {};
    private String wanted = "";
    private String build = "";
    private StripModel.@Nullable Shown shown;

    public StripReportPage(StripContext context) {
        this.context = context;
        this.texts = context.tools().texts();
        this.model = new StripModel(texts, context.measures());
        this.words = new StripWords(texts, context.measures());
        this.records = new RecordWords(texts);
        this.change =
                new OneChange(texts, context.measures(), context.tools().tasks(), context.window(), context.undo());
        this.writing = new WriteStrip(context.book(), context.ids());
        this.reading = new Latest(context.tools().tasks());
        this.panel = new StripPanel(texts, new Table(), beside, this::chosen);
        this.again = Buttons.plain(Caption.of(texts.get("strip.page.again")), this::refresh);
        FormKeys.bindWithin(
                panel, Keys.menu(KeyEvent.VK_P), "wm-print", this::print); // where it shows, before the menus
    }

    /** Does what is asked for when the strip in view is to be printed. */
    public void onPrint(Runnable work) {
        print = work;
    }

    /** What stands in a field is written as the field is left, while it is asked where the pages go. */
    private void print() {
        panel.table().requestFocusInWindow();
        print.run();
    }

    /** The build of which the strip is in view; empty where there is none. */
    public Optional<Id<Build>> buildShown() {
        return build.isEmpty() ? Optional.empty() : Optional.of(Id.parse(build));
    }

    public JComponent component() {
        return panel;
    }

    public JComponent firstFocus() {
        return panel.firstFocus();
    }

    /** Puts the photos of a finding beside it. */
    public void with(PhotoStrip photos) {
        panel.side().with(photos);
    }

    StripPanel panel() {
        return panel;
    }

    /** The strip in view. */
    String build() {
        return build;
    }

    /** What is read. */
    private record Read(View view, Optional<StripModel.Shown> shown) {}

    /** Reads everything again. */
    public void refresh() {
        String asked = wanted;
        reading.run(
                texts.get("strip.page.reading"),
                () -> {
                    View view = context.book().view();
                    return new Read(view, model.read(view, asked));
                },
                this::show,
                this::failed);
    }

    private void failed(Throwable thrown) {
        LOG.error("what was found at a strip could not be read", thrown);
        panel.failed(texts.get("strip.page.failed"), again);
    }

    private void show(Read now) {
        context.window()
                .heading(
                        PlaceId.MEASURING_BENCH,
                        context.measures().date(now.view().day()));
        shown = now.shown().orElse(null);
        StripModel.Shown found = shown;
        if (found == null) {
            panel.none(texts.get("strip.page.empty"));
            return;
        }
        boolean another = !found.build().key().equals(build);
        build = found.build().key();
        wanted = build;
        panel.show(found, another);
    }

    private void chosen() {
        StripChoice.Of chosen = panel.which().chosen();
        if (chosen != null && !chosen.key().equals(build)) {
            open(chosen.key());
        }
    }

    /** Shows the strip of a build, by the text form of its identity, from its first position. */
    public void open(String record) {
        wanted = record;
        refresh();
    }

    private Optional<WriteStrip.Where> where() {
        return panel.table()
                .inLine()
                .flatMap(row -> panel.table()
                        .inHand()
                        .map(cell -> new WriteStrip.Where(Id.<Build>parse(build), row.line(), cell.number())));
    }

    private boolean readOnly() {
        return shown == null || shown.readOnly();
    }

    private String why(WriteStrip.Where where, String what) {
        StripModel.Shown now = shown;
        return texts.get(
                "strip.page.why",
                now == null ? "" : now.build().words(),
                words.position(where.line(), where.number()),
                what);
    }

    private void writes(WriteStrip.Where where, String what, Supplier<Outcome<Written>> work) {
        String why = why(where, what);
        change.write(why, () -> work.get().map(written -> Optional.of(why)), said -> {
            panel.side().refused();
            refresh();
        });
    }

    /** What the table asks for. */
    private final class Table implements StripTable.Asked {
        @Override
        public void inHand() {
            StripModel.Shown now = shown;
            Optional<StripLines.Row> row = panel.table().inLine();
            Optional<StripLines.Cell> cell = panel.table().inHand();
            if (now == null || row.isEmpty() || cell.isEmpty()) {
                panel.side().showNone();
            } else {
                where().ifPresent(where -> panel.side().show(where, cell.get(), now.incidents(), now.readOnly()));
            }
        }

        @Override
        public void how(HowMarked how) {
            if (readOnly()) {
                context.window().say(texts.get("strip.page.read_only"));
                return;
            }
            Id<Finding> finding = panel.side().keysAreOf();
            where().ifPresent(where -> writes(
                    where, records.word(how), () -> writing.how(where, finding, how, why(where, records.word(how)))));
        }

        @Override
        public void mark(@Nullable Character letter) {
            panel.side().ask(letter);
        }

        @Override
        public void takeAway() {
            beside.takeAway();
        }
    }

    /** What the fields beside ask for. */
    private final class Beside implements StripTold {
        @Override
        public void mark(StripInHand at, @Nullable Id<Finding> of, FindingMark mark, @Nullable PartSpot on) {
            String what = records.word(mark);
            writes(
                    at.where(),
                    what,
                    () -> writing.mark(at.where(), of, new WriteStrip.Seen(mark, on), why(at.where(), what)));
        }

        @Override
        public void another(StripInHand at, FindingMark mark, @Nullable PartSpot on) {
            String what = records.word(mark);
            writes(
                    at.where(),
                    what,
                    () -> writing.another(at.where(), new WriteStrip.Seen(mark, on), why(at.where(), what)));
        }

        @Override
        public void words(StripInHand at, String spot, String said) {
            Id<Finding> finding = at.finding();
            if (finding != null) {
                String what = Stream.of(spot, said)
                        .filter(each -> !each.isEmpty())
                        .findFirst()
                        .orElseGet(() -> texts.get("strip.page.why.wordless"));
                writes(at.where(), what, () -> writing.told(finding, spot, said, why(at.where(), what)));
            }
        }

        @Override
        public void incident(StripInHand at, StripChoice.Of incident) {
            Id<Finding> finding = at.finding();
            if (finding != null) {
                String what = texts.get("strip.page.why.evidence", incident.words());
                writes(
                        at.where(),
                        what,
                        () -> writing.evidenceOf(
                                finding,
                                incident.key().isEmpty() ? null : Id.<Incident>parse(incident.key()),
                                why(at.where(), what)));
            }
        }

        @Override
        public void place(StripInHand at, @Nullable Id<Finding> finding, @Nullable PartSpot on) {
            String what = texts.get("strip.page.drawing.place");
            writes(at.where(), what, () -> writing.placed(at.where(), finding, on, why(at.where(), what)));
        }

        @Override
        public void correct() {
            Id<Finding> finding = panel.side().keysAreOf();
            if (finding != null && !readOnly()) {
                context.correct().accept(finding.text());
            }
        }

        @Override
        public void takeAway() {
            if (!panel.side().hasMark() || readOnly()) {
                return;
            }
            Id<Finding> finding = panel.side().keysAreOf();
            String what = texts.get("strip.page.why.away", panel.side().word());
            where().ifPresent(where -> writes(
                    where,
                    what,
                    () -> writing.takeAway(where, finding, texts.get("strip.page.why.reason"), why(where, what))));
        }

        @Override
        public void back() {
            panel.table().requestFocusInWindow();
        }
    }
}
