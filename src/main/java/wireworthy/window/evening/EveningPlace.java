package wireworthy.window.evening;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Parent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wireworthy.evening.summary.NextWeek;
import wireworthy.record.SettingsKeeper;
import wireworthy.window.Place;
import wireworthy.window.Shell;
import wireworthy.window.parts.SideAndPage;
import wireworthy.window.parts.SideList;
import wireworthy.window.parts.Styles;

/** An evening class prepared, held and looked back on: its parts at the side, the chosen one. */
public final class EveningPlace implements Place {
    /** The name under which the settings keep this place. */
    public static final String ID = "evening";

    private final List<EveningPart> parts;
    private final SettingsKeeper settings;
    private final Map<EveningPart, Parent> built = new HashMap<>();
    private final SideList<EveningPart> list =
            new SideList<>(
                    name(),
                    part -> EveningTexts.of(part.key()),
                    part -> EveningTexts.of(part.key() + ".note"),
                    this::show);
    private final VBox side = new VBox(list);
    private final SideAndPage page = new SideAndPage(side, EveningTexts.of("parts"));
    private Optional<Shell> shell = Optional.empty();
    private Optional<EveningPart> inView = Optional.empty();

    /**
     * @param parts in the order of the side, at least one
     * @param settings keep which was last open: a learner's laptop is to open where it is answered
     */
    public EveningPlace(final List<EveningPart> parts, final SettingsKeeper settings) {
        this.parts = List.copyOf(parts);
        this.settings = settings;
    }

    /** With all its parts. */
    public static EveningPlace of(
            final EveningDesk desk, final ProjectorDesk figures, final SettingsKeeper settings) {
        final MakePart make = new MakePart(desk);
        final Way way = new Way();
        final EveningPlace place =
                new EveningPlace(
                        List.of(
                                make,
                                new LaptopPart(desk),
                                new ProjectorPart(desk, figures),
                                new AfterPart(desk, way)),
                        settings);
        way.to =
                next -> {
                    place.open(make.key());
                    make.begin(next);
                };
        return place;
    }

    /** The way from a part to another one, known once there is a place. */
    private static final class Way implements Consumer<NextWeek> {
        private Consumer<NextWeek> to = next -> {};

        @Override
        public void accept(final NextWeek next) {
            to.accept(next);
        }
    }

    @Override
    public String id() {
        return ID;
    }

    /** What stands on its terminal, in the language in use. */
    public static String name() {
        return EveningTexts.of("title");
    }

    @Override
    public String title() {
        return name();
    }

    @Override
    public Parent build(final Shell window) {
        shell = Optional.of(window);
        side.getStyleClass().addAll(Styles.SIDE, Styles.EVENING_SIDE);
        VBox.setVgrow(list, Priority.ALWAYS);
        list.getItems().setAll(parts);
        final String last = settings.now().leftOff().part();
        if (!list.choose(part -> part.key().equals(last))) {
            list.choose(any -> true);
        }
        return page;
    }

    @Override
    public void shown() {
        inView.ifPresent(EveningPart::shown);
    }

    @Override
    public void left() {
        inView.ifPresent(EveningPart::left);
    }

    /** Chooses the part of a key. */
    void open(final String key) {
        list.choose(part -> part.key().equals(key));
    }

    private void show(final EveningPart part) {
        inView.ifPresent(EveningPart::left);
        inView = Optional.of(part);
        settings.change(it -> it.withLeftOff(at -> at.withPart(part.key())));
        page.show(built.computeIfAbsent(part, it -> it.build(shell.orElseThrow())));
        part.shown();
    }
}
