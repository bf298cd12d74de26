package wireworthy.window;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.lessons.Block;
import wireworthy.lessons.Figure;
import wireworthy.lessons.Lesson;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.paper.lesson.LessonOnPaper;
import wireworthy.record.Region;
import wireworthy.record.SumsInUse;
import wireworthy.record.WholeFile;
import wireworthy.window.figures.LiveFigures;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.working.Solver;

/** At the foot of a lesson: saves it as pages to print. */
final class LessonPrint extends VBox {
    private final Lesson lesson;
    private final SumsInUse sums;
    private final Solver solver;
    private final FileAsking files;
    private final Background background;
    private final Label said = Texts.soft("");

    LessonPrint(
            final Lesson lesson,
            final SumsInUse sums,
            final Solver solver,
            final FileAsking files,
            final Background background) {
        this.lesson = lesson;
        this.sums = sums;
        this.solver = solver;
        this.files = files;
        this.background = background;
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        getStyleClass().add(Styles.TIGHT);
        getChildren().setAll(Buttons.row(Buttons.plain(LessonTexts.of("print"), this::save)), said);
    }

    /** What writes pages is loaded while a place for the file is being chosen. */
    void save() {
        Pages.expect();
        files.save(this, LessonTexts.of("print"), lesson.heading().id(), "pdf")
                .ifPresent(this::save);
    }

    private void save(final Path file) {
        final Map<Figure, String> words = words();
        final LessonOnPaper paper = new LessonOnPaper(solver, words::get);
        background.run(() -> written(file, paper), said::setText);
    }

    private String written(final Path file, final LessonOnPaper paper) {
        try {
            WholeFile.write(file, paper.pdf(lesson, size()));
            return LessonTexts.of("print.saved", "file", file);
        } catch (final IOException e) {
            return LessonTexts.of("print.not-saved", "file", file);
        }
    }

    private PaperSize size() {
        return sums.region() == Region.NORTH_AMERICA ? PaperSize.LETTER : PaperSize.A4;
    }

    /** Figures are made here, on the window's thread, as they are for the screen. */
    private Map<Figure, String> words() {
        final Map<Figure, String> words = new HashMap<>();
        lesson.screens().stream()
                .flatMap(screen -> screen.blocks().stream())
                .filter(Block.LiveFigure.class::isInstance)
                .map(block -> ((Block.LiveFigure) block).figure())
                .forEach(each -> words.put(each, LiveFigures.words(each.by(sums), solver)));
        return words;
    }
}
