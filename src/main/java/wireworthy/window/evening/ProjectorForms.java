package wireworthy.window.evening;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wireworthy.evening.Sheet;
import wireworthy.rules.Skill;
import wireworthy.window.FileAsking;
import wireworthy.window.IntoView;
import wireworthy.window.NextFrame;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.PickList;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** The forms in which it is chosen what is thrown on the wall. */
final class ProjectorForms {
    private static final String SHEET_FILE = "json";
    private static final int LONGEST_MARK = 20;

    private final ProjectorSetup setup;
    private final FileAsking files;
    private final BiConsumer<Sheet, Begin> wall;
    private final CheckBox told = new CheckBox(ProjectorTexts.of("told-at-once"));
    private final TextField mark = new TextField();
    private final Label trouble = Texts.paragraph("");
    private final VBox known = new VBox();
    private final VBox problems = new VBox();
    private boolean atOnce;

    /**
     * How to begin.
     *
     * @param problem counted from 1
     * @param toldAtOnce whether it is said at once where an answer comes from
     */
    record Begin(int problem, boolean toldAtOnce) {}

    ProjectorForms(
            final ProjectorSetup setup,
            final FileAsking files,
            final BiConsumer<Sheet, Begin> wall) {
        this.setup = setup;
        this.files = files;
        this.wall = wall;
        told.setWrapText(true);
        mark.setAccessibleText(ProjectorTexts.of("mark"));
        mark.setPromptText(ProjectorTexts.of("mark.prompt"));
        mark.getStyleClass().add(Styles.MARK_FIELD);
        mark.setPrefColumnCount(LONGEST_MARK);
        mark.setOnAction(event -> openMark());
        trouble.textProperty().bind(setup.said());
        trouble.managedProperty().bind(setup.said().isNotEmpty());
        problems.getStyleClass().add(Styles.TIGHT);
        known.getStyleClass().add(Styles.TIGHT);
        setup.known().subscribe(this::show);
        setup.sheet().subscribe(this::opened);
    }

    private void openMark() {
        atOnce = false;
        setup.mark(mark.getText());
    }

    private void show(final List<KnownSheet> sheets) {
        known.setManaged(!sheets.isEmpty());
        known.getChildren().clear();
        if (!sheets.isEmpty()) {
            known.getChildren().add(Texts.strong(EveningTexts.of("known")));
            sheets.forEach(each -> known.getChildren().add(open(each)));
        }
    }

    private Button open(final KnownSheet sheet) {
        final Button open =
                Buttons.plain(
                        sheet.words(),
                        () -> {
                            mark.setText(sheet.mark());
                            openMark();
                        });
        open.setMinHeight(Region.USE_PREF_SIZE);
        return open;
    }

    /** A sheet by its mark or a file, and from which of its problems to begin. */
    Node sheet() {
        return Cards.card(
                known,
                Texts.strong(ProjectorTexts.of("mark")),
                Buttons.row(
                        mark,
                        Buttons.plain(ProjectorTexts.of("open"), this::openMark),
                        Buttons.plain(ProjectorTexts.of("open-file"), this::openFile)),
                trouble,
                told,
                problems);
    }

    private void openFile() {
        atOnce = false;
        files.open(mark, EveningTexts.of("laptop.file.do"), SHEET_FILE).ifPresent(setup::file);
    }

    /** Problems on a skill. */
    Node skill() {
        final List<Skill> skills = List.of(Skill.values());
        return picked(
                ProjectorTexts.of("skill"),
                skills.stream().map(Skill::words).toList(),
                ProjectorTexts.of("draw"),
                Optional.of(told),
                at -> {
                    atOnce = true;
                    setup.skill(skills.get(at));
                });
    }

    /** A live figure of the lessons. */
    static Node figures(final List<ProjectorFigure> all, final Consumer<ProjectorFigure> wall) {
        return picked(
                ProjectorTexts.of("figure"),
                all.stream().map(ProjectorFigure::inList).toList(),
                ProjectorTexts.of("show"),
                Optional.empty(),
                at -> wall.accept(all.get(at)));
    }

    private void opened(final Optional<Sheet> opened) {
        problems.getChildren().clear();
        opened.ifPresent(
                sheet -> {
                    if (atOnce) {
                        wall.accept(sheet, new Begin(1, told.isSelected()));
                    } else {
                        problems.getChildren().setAll(setup.held() ? held(sheet) : begin(sheet));
                        IntoView.bring(problems);
                    }
                });
    }

    /** The wall would show the working of what is being answered on this machine. */
    private List<Node> held(final Sheet sheet) {
        return List.of(
                new Notice(Verdict.CAUTION, ProjectorTexts.of("held")),
                Buttons.row(
                        Buttons.plain(
                                ProjectorTexts.of("held.do"),
                                () -> {
                                    setup.lead();
                                    problems.getChildren().setAll(begin(sheet));
                                })));
    }

    private List<Node> begin(final Sheet sheet) {
        final List<String> all =
                IntStream.range(0, sheet.problems())
                        .mapToObj(
                                i ->
                                        ProjectorTexts.of(
                                                "begin.problem",
                                                "number",
                                                i + 1,
                                                "skill",
                                                sheet.templates().get(i).skill().words()))
                        .toList();
        final Button show = Buttons.main(ProjectorTexts.of("show"), () -> {});
        final PickList list =
                new PickList(
                        ProjectorTexts.of("begin"),
                        all,
                        at ->
                                show.setOnAction(
                                        event ->
                                                wall.accept(
                                                        sheet,
                                                        new Begin(at + 1, told.isSelected()))),
                        show::fire);
        list.button(0).setSelected(true);
        NextFrame.then(problems, list::focus);
        final String whose = sheet.plan().ownNumbers() ? "numbers.own" : "numbers.same";
        return List.of(
                Texts.soft(ProjectorTexts.of(whose)),
                Texts.strong(ProjectorTexts.of("begin")),
                Buttons.row(show),
                list);
    }

    private static Node picked(
            final String name,
            final List<String> texts,
            final String does,
            final Optional<Node> option,
            final Consumer<Integer> done) {
        final Button show = Buttons.main(does, () -> {});
        final PickList list =
                new PickList(
                        name, texts, at -> show.setOnAction(event -> done.accept(at)), show::fire);
        list.button(0).setSelected(true);
        final VBox card = Cards.card(Texts.strong(name), Buttons.row(show));
        option.ifPresent(card.getChildren()::add);
        card.getChildren().add(list);
        return card;
    }
}
