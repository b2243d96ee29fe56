package witnessmark.desktop.faces;

import java.awt.event.KeyEvent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import witnessmark.chart.FaceMap;
import witnessmark.chart.FaceShading;
import witnessmark.desktop.form.Buttons;
import witnessmark.desktop.form.Caption;
import witnessmark.desktop.form.FormKeys;
import witnessmark.desktop.form.Keys;
import witnessmark.desktop.shell.PlaceId;
import witnessmark.desktop.task.Latest;
import witnessmark.domain.FaceKind;
import witnessmark.domain.PartKind;
import witnessmark.fit.result.face.Face;
import witnessmark.logbook.View;
import witnessmark.logbook.faces.FaceInSight;
import witnessmark.logbook.faces.FaceLife;
import witnessmark.logbook.faces.FacePage;
import witnessmark.logbook.faces.LookLine;
import witnessmark.logbook.faces.SeeFaces;
import witnessmark.logbook.sheets.Prefilled;
import witnessmark.logbook.sheets.SheetField;
import witnessmark.logbook.sheets.WriteSkim;
import witnessmark.quantity.Length;
import witnessmark.wording.Measures;
import witnessmark.wording.RecordWords;
import witnessmark.wording.Texts;

/** The faces of heads, gaskets and blocks: reads them off the event thread and shows them. */
public final class FacesPage {
    private static final Logger LOG = LoggerFactory.getLogger(FacesPage.class);

    private final FacesContext context;
    private final Texts texts;
    private final Measures measures;
    private final RecordWords records;
    private final FaceLines lines;
    private final MapWords words;
    private final Latest reading;
    private final FacesPanel panel;
    private final TypedLook typing;
    private final JButton again;
    private FaceTurn turn = FaceTurn.AS_IT_LIES;
    private String part = "";
    private String look = "";
    /** The look in sight. */
    private String shown = "";
    /** Empty for nothing, null as long as nobody chose. */
    private @Nullable String against;

    private @Nullable Read read;

    public FacesPage(FacesContext context) {
        this.context = context;
        this.texts = context.tools().texts();
        this.measures = context.measures();
        this.records = new RecordWords(texts);
        this.lines = new FaceLines(texts, measures);
        this.words = new MapWords(texts, measures);
        this.reading = new Latest(context.tools().tasks());
        Asked asked = new Asked();
        this.panel = new FacesPanel(texts, lines, asked);
        this.typing = new TypedLook(context, panel.entry(), this::map, this::written);
        this.again = Buttons.plain(Caption.of(texts.get("facemap.again")), this::refresh);
        FormKeys.bindWithin(
                panel, Keys.menu(KeyEvent.VK_P), "wm-print", this::print); // where it shows, before the menus
        FormKeys.bindWithin(panel, Keys.plain(KeyEvent.VK_ESCAPE), "wm-close", typing::isOpen, asked::close);
    }

    public JComponent component() {
        return panel;
    }

    public JComponent firstFocus() {
        return panel.firstFocus();
    }

    /** What is read. */
    private record Read(View view, List<FacePage> pages, List<FaceLife> lives) {}

    /** Reads everything again. */
    public void refresh() {
        reading.run(
                texts.get("facemap.reading"),
                () -> {
                    View view = context.book().view();
                    List<FacePage> pages = SeeFaces.all(view);
                    return new Read(view, pages, FaceLife.of(view, pages));
                },
                this::show,
                this::failed);
    }

    /** Shows the faces of a part, by the text form of its identity. */
    public void open(String record) {
        turn = FaceTurn.AS_IT_LIES;
        part = record;
        look = "";
        against = null;
        refresh();
    }

    /** Whether a record is a part with a face. */
    public boolean has(String record) {
        return SeeFaces.parts(context.book().view()).stream()
                .anyMatch(each -> each.id().text().equals(record));
    }

    private void failed(Throwable thrown) {
        LOG.error("the faces could not be read", thrown);
        panel.failed(texts.get("facemap.failed"), again);
    }

    private void show(Read now) {
        read = now;
        context.window()
                .heading(PlaceId.MEASURING_BENCH, measures.date(now.view().day()));
        panel.editable(!now.view().readOnly());
        fill();
    }

    private void fill() {
        Read now = read;
        if (now == null) {
            return;
        }
        Optional<FacePage> chosen = now.pages().stream()
                .filter(page -> id(page).equals(part))
                .findFirst()
                .or(() -> SeeFaces.usual(now.pages()));
        panel.strips(lines.strips(now.lives()), lines.stripWords(now.lives()));
        if (chosen.isEmpty()) {
            panel.show(new FacesPanel.Shown(
                    "", "", "", false, false, texts.get("facemap.empty"), List.of(), List.of(), List.of()));
            return;
        }
        FacePage page = chosen.get();
        part = id(page);
        LookLine seen = seen(page);
        LookLine other = against(now, page, seen);
        shown = seen == null ? "" : seen.look().id().text();
        choices(now, page, seen, other);
        panel.beside().show(page.face(), seen, other);
        panel.show(new FacesPanel.Shown(
                words.title(page, seen, other),
                seen == null ? "" : words.note(page, seen),
                words.turn(kind(page, seen), turn),
                page.face() != null,
                page.kind() != PartKind.HEAD_GASKET,
                page.face() == null ? texts.get("facemap.no_outline") : "",
                page.kind() == PartKind.HEAD_GASKET ? List.of() : lines.standing(page),
                lines.skims(page),
                lines.effect(page, "")));
        map();
    }

    /** Draws the map of what is chosen and typed. */
    private void map() {
        FacePage page = page();
        Face face = page == null ? null : page.face();
        if (page == null || face == null) {
            panel.map().show(null, true, true, null);
            return;
        }
        LookLine seen = typing.isOpen() ? null : seen(page);
        LookLine other = typing.isOpen() ? seen(page) : read == null ? null : against(read, page, seen);
        FaceKind kind = typing.isOpen() && typing.face() != null ? typing.face() : kind(page, seen);
        FaceMap model = words.model(page, face, seen, other, typing.lines(face));
        panel.legend(
                model.shading() == null
                        ? texts.get("facemap.legend.none")
                        : texts.get(
                                "facemap.legend.between",
                                measures.length(Length.ofMillimetres(BigDecimal.valueOf(FaceShading.LOW)))),
                model.shading() != null);
        panel.map()
                .show(
                        model,
                        turn.exhaustBelow(face.outline(), kind),
                        turn.frontLeft(),
                        typing.isOpen()
                                ? place -> panel.entry()
                                        .marked(place, face.outline().width().nanometres() / 1e6)
                                : null);
        if (typing.isOpen()) {
            panel.map().choose(typing.inHand(other == null ? 0 : other.points().size()));
        }
    }

    private @Nullable FacePage page() {
        Read now = read;
        return now == null
                ? null
                : now.pages().stream()
                        .filter(page -> id(page).equals(part))
                        .findFirst()
                        .orElse(null);
    }

    private @Nullable LookLine seen(FacePage page) {
        return page.looks().stream()
                .filter(each -> each.look().id().text().equals(look))
                .findFirst()
                .or(page::foremost)
                .orElse(null);
    }

    private @Nullable LookLine against(Read now, FacePage page, @Nullable LookLine seen) {
        String chosen = against;
        if (chosen == null) {
            return seen == null ? null : page.behind(seen).orElse(null);
        }
        return now.pages().stream()
                .flatMap(each -> each.looks().stream())
                .filter(each -> each.look().id().text().equals(chosen))
                .findFirst()
                .orElse(null);
    }

    private static FaceKind kind(FacePage page, @Nullable LookLine look) {
        return look == null ? FacePage.face(page.kind()) : look.look().fact().face();
    }

    private void choices(Read now, FacePage page, @Nullable LookLine seen, @Nullable LookLine other) {
        List<FaceChoice> parts = now.pages().stream().map(this::choice).toList();
        List<FaceChoice> looks = page.looks().isEmpty()
                ? List.of(FaceChoice.none(texts.get("facemap.none")))
                : page.looks().stream().map(this::choice).toList();
        List<FaceChoice> others = new ArrayList<>();
        others.add(FaceChoice.none(texts.get("facemap.against.none")));
        SeeFaces.over(page, now.pages())
                .forEach(each -> each.looks().stream()
                        .filter(line -> line != seen)
                        .forEach(line -> others.add(over(each, line))));
        panel.choices(
                parts,
                choice(page),
                looks,
                seen == null ? looks.get(0) : choice(seen),
                others,
                others.stream()
                        .filter(each -> other != null
                                && each.key().equals(other.look().id().text()))
                        .findFirst()
                        .orElse(others.get(0)));
    }

    private FaceChoice choice(FacePage page) {
        String kind = records.word(page.kind());
        String mark = page.part().fact().mark();
        return new FaceChoice(
                id(page),
                page.engine() == null
                        ? texts.get("facemap.choice", mark, kind)
                        : texts.get(
                                "facemap.choice.engine",
                                mark,
                                kind,
                                page.engine().fact().number()));
    }

    private FaceChoice choice(LookLine line) {
        return new FaceChoice(
                line.look().id().text(),
                texts.get(
                        "facemap.look.choice",
                        measures.date(line.look().fact().at().day()),
                        records.word(line.look().fact().method())));
    }

    private FaceChoice over(FacePage page, LookLine line) {
        return new FaceChoice(
                line.look().id().text(),
                texts.get(
                        "facemap.against.choice",
                        page.part().fact().mark(),
                        measures.date(line.look().fact().at().day()),
                        records.word(line.look().fact().method())));
    }

    private static String id(FacePage page) {
        return page.part().id().text();
    }

    /** The face in sight; of none while nothing is read, or nothing has a face. */
    public Optional<FaceInSight> inSight() {
        FacePage page = page();
        Read now = read;
        if (page == null || now == null) {
            return Optional.empty();
        }
        LookLine seen = seen(page);
        LookLine other = against(now, page, seen);
        return Optional.of(new FaceInSight(
                page.part().id(),
                seen == null ? null : seen.look().id(),
                other == null ? null : other.look().id()));
    }

    /** What is written is printed; what is typed first has to be, unless the day is only looked at. */
    private void print() {
        if (typing.isDirty()) {
            context.window().say(texts.get("facesheet.first"));
        } else {
            context.print().run();
        }
    }

    private void written() {
        panel.entering(false);
        look = "";
        refresh();
    }

    /** What somebody asks of the page. */
    private final class Asked implements FacesPanel.Told {
        @Override
        public void chosen() {
            FaceChoice chosen = panel.which().chosen();
            FaceChoice seen = panel.look().chosen();
            FaceChoice over = panel.against().chosen();
            if (chosen != null && !chosen.key().equals(part)) {
                part = chosen.key();
                look = "";
                against = null;
                close();
            } else if (seen != null && !seen.key().equals(shown)) {
                look = seen.key();
                against = null;
            } else {
                against = over == null ? "" : over.key();
            }
            fill();
        }

        @Override
        public void turnOver() {
            turn = turn.mirror();
            fill();
        }

        @Override
        public void turnAbout() {
            turn = turn.turn();
            fill();
        }

        @Override
        public void write() {
            FacePage page = page();
            if (page != null && read != null && !read.view().readOnly()) {
                typing.open(page);
                panel.entering(true);
                map();
            }
        }

        @Override
        public void partPage() {
            context.window().go(PlaceId.ENGINES, part);
        }

        @Override
        public void print() {
            FacesPage.this.print();
        }

        @Override
        public void skim() {
            Map<SheetField, String> texts = new HashMap<>();
            FacePage page = page();
            if (page != null && page.kind() != PartKind.HEAD_GASKET) {
                texts.put(WriteSkim.PART, part);
            }
            context.write().accept(new Prefilled(new WriteSkim().key(), texts));
        }

        @Override
        public void open(String other) {
            FacesPage.this.open(other);
        }

        @Override
        public void inHand(int reading) {
            panel.map().choose(reading);
        }

        @Override
        public void skimInHand(String work) {
            FacePage page = page();
            if (page != null) {
                panel.effect(lines.effect(page, work));
            }
        }

        @Override
        public void changed() {
            typing.changed();
            map();
        }

        @Override
        public void save() {
            typing.save();
        }

        @Override
        public void close() {
            typing.close();
            panel.entering(false);
            map();
        }
    }

    FacesPanel panel() {
        return panel;
    }
}
