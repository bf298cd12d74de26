package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.geometry.Insets;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.rules.Quantity;
import wireworthy.texts.Language;
import wireworthy.window.Background;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;
import wireworthy.window.Screens.Setting;
import wireworthy.window.parts.Scrolling;
import wireworthy.window.parts.Styles;

/** Where things stand in the place: what could start a fire is in sight first. */
@FxTest
class CheckLayoutTest {
    private static final int LAMPS = 0;
    private static final int STRIPS = 1;
    private static final int TAP = 4;
    private static final String SUMS = "Look under \"The sums\": ";

    @TempDir private Path folder;
    private VehicleModel model;
    private CheckDesk desk;
    private Scene scene;

    @BeforeEach
    void begin() {
        model = Models.in(folder);
        model.openExample();
        desk = new CheckDesk(model, new Proposed(), Background.atOnce());
        scene = new Scene(new Group());
    }

    @AfterEach
    void close() {
        model.close();
        Language.use(Language.ENGLISH);
    }

    private void look(final Setting setting, final Spot spot) {
        model.choose(spot);
        scene = Screens.scene(desk, setting);
    }

    private void circuit(final Setting setting, final int index) {
        look(setting, new Spot.OfCircuit(index));
    }

    private static Stream<Node> all(final Parent part) {
        return part.getChildrenUnmodifiable().stream()
                .flatMap(
                        it ->
                                it instanceof Parent inner
                                        ? Stream.concat(Stream.of(it), all(inner))
                                        : Stream.of(it));
    }

    private static boolean isSeen(final Node node) {
        return Stream.iterate(node, it -> it != null, Node::getParent).allMatch(Node::isVisible);
    }

    private static Bounds at(final Node node) {
        return node.localToScene(node.getLayoutBounds());
    }

    private Optional<Node> saying(final String words) {
        return all(desk)
                .filter(it -> it instanceof Labeled said && says(said, words))
                .filter(CheckLayoutTest::isSeen)
                .findFirst();
    }

    private static boolean says(final Labeled part, final String words) {
        return part.getText() != null && part.getText().startsWith(words);
    }

    private double topOf(final String words) {
        return at(saying(words).orElseThrow(() -> new AssertionError("not said: " + words)))
                .getMinY();
    }

    private TextField field(final String id) {
        return all(desk)
                .filter(it -> it instanceof TextField && id.equals(it.getId()))
                .map(TextField.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private List<TextField> fields() {
        return all(desk)
                .filter(it -> it instanceof TextField && isSeen(it))
                .map(TextField.class::cast)
                .sorted(Comparator.comparing(it -> at(it).getMinY()))
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void whatCouldStartAFireIsInSightBeforeAnythingIsScrolled(final Setting setting) {
        circuit(setting, TAP);
        assertThat(topOf("could start a fire")).isLessThan(topOf("This could start a fire"));
        assertThat(at(saying("This could start a fire").orElseThrow()).getMaxY())
                .isLessThan(scene.getHeight());
    }

    @ParameterizedTest
    @EnumSource(names = {"LARGE", "LARGEST"})
    void inOneColumnHowItStandsIsAboveTheFormAndTheRestBelow(final Setting setting) {
        circuit(setting, TAP);
        final double form = at(fields().get(0)).getMinY();
        assertThat(topOf("This could start a fire")).isLessThan(form);
        assertThat(topOf("Which fuse")).isGreaterThan(form);
    }

    /** A page can be made wider and narrower again, and so can the text. */
    @Test
    void whatIsSaidFirstComesBackBesideTheForm() {
        circuit(Setting.LARGEST, TAP);
        scene.setRoot(new Group());
        scene = Screens.scene(desk, Setting.LIGHT);
        final Bounds fire = at(saying("This could start a fire").orElseThrow());
        assertThat(fire.getMinX()).isGreaterThan(at(fields().get(0)).getMaxX());
        assertThat(fire.getMinY()).isLessThan(topOf("Which fuse"));
        scene.setRoot(new Group());
        scene = Screens.scene(desk, Setting.LARGEST);
        assertThat(topOf("This could start a fire")).isLessThan(at(fields().get(0)).getMinY());
    }

    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "LARGE", "LARGEST"})
    void aFireThatIsTypedDoesNotMoveAwayTheField(final Setting setting) {
        circuit(setting, LAMPS);
        final TextField fuse = field("circuits[0].given.fuse");
        fuse.requestFocus();
        Screens.settle(scene);
        final double before = at(fuse).getMinY();
        fuse.setText("100 A");
        Screens.settle(scene);
        assertThat(saying("This could start a fire")).isPresent();
        assertThat(at(fuse).getMinY()).isCloseTo(before, within(2.0));
        fuse.setText("5 A");
        Screens.settle(scene);
        assertThat(saying("This could start a fire")).isEmpty();
        assertThat(at(fuse).getMinY()).isCloseTo(before, within(2.0));
    }

    /** What is said has left its room by then, and that is given back. */
    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "LARGE", "LARGEST"})
    void theNextFieldStaysWhereOneGoesToIt(final Setting setting) {
        circuit(setting, TAP);
        final TextField length = field("circuits[4].given.one-way-length");
        length.requestFocus();
        Scrolling.into(length);
        Screens.settle(scene);
        EntryList.circuit(model, TAP - 1).given(List.of(Quantity.FUSE)).get(0).type("5 A");
        Screens.settle(scene);
        assertThat(saying("This could start a fire")).isEmpty();
        final TextField section = field("circuits[4].given.section");
        final double before = at(section).getMinY();
        section.requestFocus();
        Screens.settle(scene);
        assertThat(at(section).getMinY()).isCloseTo(before, within(2.0));
    }

    @ParameterizedTest
    @EnumSource
    void aFigureOfOnesOwnThatIsNotSoundIsNamedWhereTheStateIs(final Setting setting) {
        circuit(setting, STRIPS);
        assertThat(topOf("One of your figures is not sound")).isLessThan(topOf("Which fuse"));
        assertThat(saying(SUMS + "drop, 0.35\u00a0V.")).isPresent();
        assertThat(at(saying(SUMS + "drop, 0.35\u00a0V.").orElseThrow()).getMaxY())
                .isLessThan(scene.getHeight());
    }

    /** What the state says is explained before figures that matter less. */
    @ParameterizedTest
    @EnumSource
    void whatBringsTheStateAboutStandsBeforeOwnFigures(final Setting setting) {
        EntryList.circuit(model, LAMPS).own(Quantity.FUSE_FLOOR).type("90 A");
        circuit(setting, LAMPS);
        assertThat(topOf("More is lost than the limit allows"))
                .isLessThan(topOf("One of your figures is not sound"));
    }

    @Test
    void severalFiguresOfOnesOwnAreNamedTogether() {
        EntryList.circuit(model, STRIPS).own(Quantity.FUSE_FLOOR).type("9 A");
        circuit(Setting.LIGHT, STRIPS);
        assertThat(saying("2 of your figures are not sound")).isPresent();
        EntryList.circuit(model, STRIPS).own(Quantity.FUSE_FLOOR).type("");
        EntryList.circuit(model, STRIPS).own(Quantity.DROP).type("");
        Screens.settle(scene);
        assertThat(saying("2 of your figures")).isEmpty();
        assertThat(saying("One of your figures")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void ofTheWholeVehicleFireIsSaidBeforeAnythingIsAsked(final Setting setting) {
        look(setting, Spot.Fixed.WHOLE);
        final double asked = at(fields().get(0)).getMinY();
        assertThat(topOf("This could start a fire")).isLessThan(asked);
        assertThat(topOf("All together")).isGreaterThan(asked);
    }

    @ParameterizedTest
    @EnumSource(names = {"LIGHT", "SMALL", "LARGEST"})
    void whileTheVoltageOfTheWholeIsTypedItsFieldStays(final Setting setting) {
        look(setting, Spot.Fixed.WHOLE);
        final TextField volts = field("supply.given.supply-voltage");
        volts.requestFocus();
        Scrolling.into(volts);
        Screens.settle(scene);
        final double before = at(volts).getMinY();
        for (final String typed : List.of("", "1", "24 V", "2", "12.8 V")) {
            volts.setText(typed);
            Screens.settle(scene);
            assertThat(at(volts).getMinY()).as(typed).isCloseTo(before, within(2.0));
        }
    }

    /** The way to begin comes before what can be filled in later. */
    @ParameterizedTest
    @EnumSource
    void howToBeginStandsBeforeTheFields(final Setting setting) {
        model.begin();
        look(setting, Spot.Fixed.WHOLE);
        assertThat(topOf(CheckTexts.of("begin"))).isLessThan(topOf(CheckTexts.of("begin.example")));
        assertThat(topOf(CheckTexts.of("begin.example"))).isLessThan(at(fields().get(0)).getMinY());
    }

    @Test
    void onASmallScreenEveryWayToBeginIsInSight() {
        model.begin();
        look(Setting.SMALL, Spot.Fixed.WHOLE);
        assertThat(at(saying(CheckTexts.of("begin.example")).orElseThrow()).getMaxY())
                .isLessThan(scene.getHeight());
    }

    /**
     * Where the circuits go is said at the top; taking them in, and leaving, is always in sight.
     */
    @ParameterizedTest
    @EnumSource
    void aSpreadsheetCanBeTakenInOrLeftWithoutScrolling(final Setting setting) throws IOException {
        final Path file = folder.resolve("sums.csv");
        Files.writeString(file, "Circuit;Power (W);Fuse;Run (m);Cable\nPump;60;10;4;2.5\n");
        desk.readSheet(file);
        scene = Screens.scene(desk, setting);
        for (final String way : List.of("Add to \"The Heron\"", "As a new vehicle", "Leave it")) {
            assertThat(at(saying(way).orElseThrow()).getMaxY())
                    .as(way)
                    .isLessThanOrEqualTo(scene.getHeight());
        }
        final Node where = saying("Nothing is taken in yet. \"The Heron\" is open").orElseThrow();
        assertThat(at(where).getMaxY()).isLessThan(topOf("Leave it"));
    }

    /** What comes out ends where it ends in the other lines, and the fields begin together. */
    @ParameterizedTest
    @EnumSource
    void figuresStandInColumnsAndNoNameIsBrokenInAWord(final Setting setting) {
        look(setting, Spot.Fixed.SUPPLY);
        final List<OwnLine> lines =
                all(desk).filter(OwnLine.class::isInstance).map(OwnLine.class::cast).toList();
        assertThat(lines).hasSizeGreaterThan(6);
        assertThat(lines.stream().map(line -> at(line.getChildren().get(1)).getMaxX()).distinct())
                .hasSize(1);
        assertThat(lines.stream().map(line -> at(line.getChildren().get(2)).getMinX()).distinct())
                .hasSize(1);
        assertThat(lines.stream().map(line -> (Label) line.getChildren().get(0)))
                .allMatch(CheckLayoutTest::hasRoomForItsWords);
    }

    private static boolean hasRoomForItsWords(final Label name) {
        return Stream.of(name.getText().split(" "))
                .map(Text::new)
                .peek(word -> word.setFont(name.getFont()))
                .allMatch(word -> word.getLayoutBounds().getWidth() <= name.getWidth() + 0.5);
    }

    @ParameterizedTest
    @EnumSource(names = {"LARGE", "LARGEST"})
    void inOneColumnAllBeginsAtTheSameEdge(final Setting setting) {
        look(setting, Spot.Fixed.MAIN);
        final double edge = at(fields().get(0)).getMinX();
        final Node state = desk.lookup(".standing .badge");
        final Node sums = saying(CheckTexts.of("sums")).orElseThrow();
        assertThat(List.of(at(state).getMinX(), at(sums).getMinX()))
                .allSatisfy(left -> assertThat(left).isCloseTo(edge, within(1.0)));
        final Node parts = desk.lookup("." + Styles.CONTENTS);
        if (parts != null) {
            assertThat(at(parts).getMinX()).isCloseTo(edge, within(1.0));
        }
    }

    private void open() {
        all(desk)
                .filter(it -> it.getStyleClass().contains(Styles.DISCLOSURE))
                .toList()
                .forEach(line -> ((ToggleButton) line).setSelected(true));
        Screens.settle(scene);
    }

    /** However many lines their labels take, and what is said under them. */
    @ParameterizedTest
    @EnumSource
    void fieldsOfARowStandOnOneEdge(final Setting setting) {
        circuit(setting, TAP);
        open();
        final List<TextField> fields =
                fields().stream().filter(it -> it.getParent() instanceof EntryField).toList();
        assertThat(fields).hasSizeGreaterThan(15);
        for (final TextField one : fields) {
            for (final TextField other : fields) {
                final double apart = Math.abs(at(one).getMinY() - at(other).getMinY());
                assertThat(apart < 1.0 || apart > one.getHeight())
                        .as("%s, %s: %s", one.getId(), other.getId(), apart)
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void noEntryLiesOnAnother(final Setting setting) {
        model.addCircuit();
        scene = Screens.scene(desk, setting);
        open();
        final List<Bounds> entries =
                all(desk)
                        .filter(it -> it instanceof EntryBox && isSeen(it))
                        .map(CheckLayoutTest::at)
                        .toList();
        assertThat(entries).hasSizeGreaterThan(15);
        for (final Bounds one : entries) {
            assertThat(entries.stream().filter(other -> lieOnEachOther(one, other))).hasSize(1);
        }
    }

    private static boolean lieOnEachOther(final Bounds one, final Bounds other) {
        return one.getMinX() < other.getMaxX() - 1
                && other.getMinX() < one.getMaxX() - 1
                && one.getMinY() < other.getMaxY() - 1
                && other.getMinY() < one.getMaxY() - 1;
    }

    /** What is taken, or an example, can be read to its end. */
    @ParameterizedTest
    @EnumSource
    void noPromptIsCut(final Setting setting) {
        for (final Language language : Language.all()) {
            Language.use(language);
            noPromptIsCutInTheLanguage(setting);
        }
    }

    private void noPromptIsCutInTheLanguage(final Setting setting) {
        for (final Spot spot : List.of(Spot.Fixed.SUPPLY, Spot.Fixed.MAIN, new Spot.OfCircuit(9))) {
            model.openExample();
            model.addCircuit();
            scene.setRoot(new Group());
            look(setting, spot);
            open();
            assertThat(fields().stream().filter(CheckLayoutTest::isPromptCut))
                    .extracting(TextField::getPromptText)
                    .isEmpty();
        }
    }

    private static boolean isPromptCut(final TextField field) {
        final Text prompt = new Text(field.getPromptText());
        prompt.setFont(field.getFont());
        final Insets insets = field.getInsets();
        return prompt.getLayoutBounds().getWidth()
                > field.getWidth() - insets.getLeft() - insets.getRight();
    }

    /** The chip has the sign that the list beside it has. */
    @Test
    void eachStateHasOneSign() {
        assertThat(Stream.of(State.values()).collect(Collectors.groupingBy(State::icon)))
                .allSatisfy(
                        (icon, states) ->
                                assertThat(
                                                states.stream()
                                                        .map(it -> it.text().charAt(0))
                                                        .distinct())
                                        .as("%s of %s", icon, states)
                                        .hasSize(1));
        circuit(Setting.LIGHT, STRIPS);
        assertThat(((Label) desk.lookup(".standing .badge")).getGraphic().getStyle())
                .isEqualTo(State.DIFFERS.icon().node().getStyle());
    }

    @Test
    void notesBeginWhereOtherTextsBegin() {
        look(Setting.LIGHT, Spot.Fixed.WHOLE);
        final Node name = fields().get(0);
        final Node notes = all(desk).filter(TextArea.class::isInstance).findFirst().orElseThrow();
        final double words = at(notes.lookup(".text")).getMinX() - at(notes).getMinX();
        assertThat(words)
                .isCloseTo(at(name.lookup(".text")).getMinX() - at(name).getMinX(), within(2.0));
    }
}
