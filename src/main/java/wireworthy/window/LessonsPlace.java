package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wireworthy.lessons.Lesson;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.LessonProblem;
import wireworthy.lessons.LessonWords;
import wireworthy.lessons.Lessons;
import wireworthy.record.SumsInUse;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.PageView;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.SideAndPage;
import wireworthy.window.parts.SideList;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Solver;

/** The lessons: their contents at the left, the open one at the right. */
public final class LessonsPlace implements Place {
    private static final String LESSON = "lesson:";
    private static final String TABLE = "table:";

    private final Supplier<Lessons> source;
    private final Solver solver;
    private final LessonDesk desk;
    private final VBox side = new VBox();
    private final SideAndPage place = new SideAndPage(side, LessonTexts.of("contents"));
    private final SideList<LessonHeading> contents =
            new SideList<>(LessonTexts.of("title"), LessonHeading::title, this::note, this::opened);
    private final PageView view = new PageView();
    private final Label nothing = Texts.soft("");
    private Optional<LessonFinder> finder = Optional.empty();
    private Optional<OpenLesson> inView = Optional.empty();
    private Optional<Lessons> lessons = Optional.empty();
    private SumsInUse sumsShown = SumsInUse.USUAL;
    private Background background = Background.atOnce();

    /**
     * @param source what lessons there are, read already or about to be; called once
     * @param solver works the examples and the live figures
     */
    public LessonsPlace(
            final Supplier<Lessons> source, final Solver solver, final LessonDesk desk) {
        this.source = source;
        this.solver = solver;
        this.desk = desk;
    }

    @Override
    public String id() {
        return "lessons";
    }

    @Override
    public String title() {
        return LessonTexts.of("title");
    }

    @Override
    public Parent build(final Shell shell) {
        background = shell.background();
        side.getStyleClass().add(Styles.SIDE);
        side.getChildren().add(contents);
        VBox.setVgrow(contents, Priority.ALWAYS);
        return place;
    }

    /** Skills may have changed since the contents were last seen. */
    @Override
    public void shown() {
        if (lessons.isEmpty()) {
            show(read());
        } else {
            contents.refresh();
            openAnewUnlessBy(desk.inUse().sums());
        }
    }

    /** What a lesson shows goes by the sums in use. */
    private void openAnewUnlessBy(final SumsInUse sums) {
        if (!sums.equals(sumsShown)) {
            contents.chosen().ifPresent(it -> open(it, desk.lastScreen()));
        }
    }

    /** The field is made here, after the first frame, which waits for nothing that is not seen. */
    private void addFinder(final Lessons all) {
        final LessonFinder field =
                new LessonFinder(() -> new LessonWords(all), background, this::found);
        field.setOnAction(
                enter -> {
                    contents.requestFocus();
                    contents.choose(any -> true);
                });
        finder = Optional.of(field);
        nothing.visibleProperty().bind(nothing.textProperty().isNotEmpty());
        nothing.managedProperty().bind(nothing.visibleProperty());
        side.getChildren().addAll(0, List.of(field, nothing));
    }

    /** With nothing looked for the open lesson is chosen again. */
    private void found(final List<LessonHeading> headings) {
        contents.getItems().setAll(headings);
        nothing.setText(headings.isEmpty() ? LessonTexts.of("find.none") : "");
        if (!looksFor()) {
            desk.last().ifPresent(this::open);
        }
    }

    private boolean looksFor() {
        return finder.filter(LessonFinder::looksFor).isPresent();
    }

    @Override
    public void find() {
        place.showSide();
        finder.ifPresent(Node::requestFocus);
    }

    /** Opens a lesson; nothing happens where there is none of this id. */
    public void open(final String id) {
        if (looksFor()) {
            finder.ifPresent(TextField::clear);
        }
        contents.choose(it -> it.id().equals(id));
    }

    /** Takes the headings and finds the lesson that is seen first. */
    private Optional<String> read() {
        final Lessons all = source.get();
        final List<String> ids = all.contents().stream().map(LessonHeading::id).toList();
        final Optional<String> first =
                desk.last().filter(ids::contains).or(() -> ids.stream().findFirst());
        lessons = Optional.of(all);
        return first;
    }

    private void show(final Optional<String> first) {
        lessons.ifPresent(all -> contents.getItems().setAll(all.contents()));
        first.ifPresentOrElse(this::open, this::none);
        NextFrame.then(place, this::readTheRest);
    }

    private void readTheRest() {
        lessons.ifPresent(this::addFinder);
        background.run(this::fetched, any -> contents.refresh());
        background.run(this::problems, this::say);
    }

    private boolean fetched() {
        desk.fetch();
        return true;
    }

    private void none() {
        place.show(Pages.page(title(), Texts.paragraph(LessonTexts.of("none"))));
    }

    private List<LessonProblem> problems() {
        return lessons.map(Lessons::problems).orElse(List.of());
    }

    private void say(final List<LessonProblem> problems) {
        if (!problems.isEmpty()) {
            final VBox list = new VBox(Texts.paragraph(LessonTexts.of("unread")));
            problems.forEach(each -> list.getChildren().add(Texts.soft(each.text())));
            final ScrollPane scroll =
                    Pages.scroll(LessonTexts.of("unread.list"), new Notice(Verdict.CAUTION, list));
            scroll.getStyleClass().add(Styles.SIDE_NOTE);
            side.getChildren().add(scroll);
        }
    }

    private String note(final LessonHeading heading) {
        final String id = heading.id();
        final String read = LessonTexts.of(desk.hasRead(id) ? "read" : "not-read");
        final String noted = desk.state(heading.skills()).map(it -> read + ", " + it).orElse(read);
        return foreign(id) ? noted + ", " + LessonTexts.of("foreign.note") : noted;
    }

    private boolean foreign(final String id) {
        return lessons.filter(all -> all.foreign(id)).isPresent();
    }

    private void opened(final LessonHeading heading) {
        final boolean again = desk.last().equals(Optional.of(heading.id()));
        final int screen = again ? desk.lastScreen() : 0;
        open(heading, finder.flatMap(it -> it.screen(heading)).orElse(screen));
    }

    private void open(final LessonHeading heading, final int at) {
        lessons.ifPresent(
                all -> all.opening(heading.id()).ifPresent(lesson -> open(all, lesson, at)));
    }

    /** The first screen can be read while the others are still being read and built. */
    private void open(final Lessons all, final Lesson opening, final int at) {
        final LessonHeading heading = opening.heading();
        sumsShown = desk.inUse().sums();
        inView.ifPresent(OpenLesson::close);
        final LessonPage page =
                new LessonPage(opening, foreign(heading.id()), solver, desk, this::follow);
        final OpenLesson lesson = new OpenLesson(page, view);
        inView = Optional.of(lesson);
        page.add(opening.screens());
        view.turnTo(heading.title(), page);
        place.show(view);
        desk.opened(heading.id());
        NextFrame.then(place, () -> addOthers(all, opening, lesson, page, at));
    }

    private void addOthers(
            final Lessons all,
            final Lesson opening,
            final OpenLesson lesson,
            final LessonPage page,
            final int at) {
        final String id = opening.heading().id();
        background.run(
                () -> all.lesson(id),
                whole -> {
                    final List<Lesson.Screen> screens =
                            whole.map(Lesson::screens).orElse(List.of());
                    final int shown = Math.min(opening.screens().size(), screens.size());
                    lesson.add(
                            screens.subList(shown, screens.size()),
                            () -> {
                                whole.ifPresent(it -> page.add(print(it)));
                                lesson.watchFrom(at, desk, () -> read(id));
                            });
                });
    }

    private LessonPrint print(final Lesson lesson) {
        return new LessonPrint(lesson, sumsShown, solver, desk.files(), background);
    }

    private void read(final String id) {
        if (!desk.hasRead(id)) {
            desk.read(id);
            contents.refresh();
        }
    }

    private void follow(final String target) {
        if (target.startsWith(LESSON)) {
            open(target.substring(LESSON.length()));
        } else if (target.startsWith(TABLE)) {
            desk.table(target.substring(TABLE.length()));
        }
    }
}
