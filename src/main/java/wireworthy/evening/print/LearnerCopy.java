package wireworthy.evening.print;

import static wireworthy.evening.print.SheetPages.TEXTS;

import java.util.List;
import java.util.Locale;
import wireworthy.paper.Block;
import wireworthy.paper.PaperSize;
import wireworthy.practice.Exercise;

/** One learner's copy of a sheet. */
final class LearnerCopy {
    private final PaperSize size;
    private final String mark;
    private final String learner;
    private final String chosenFor;
    private final List<Exercise> exercises;

    LearnerCopy(
            final PaperSize size,
            final String mark,
            final String learner,
            final String chosenFor,
            final List<Exercise> exercises) {
        this.size = size;
        this.mark = mark;
        this.learner = learner;
        this.chosenFor = chosenFor;
        this.exercises = exercises;
    }

    void into(final Block body, final boolean last) {
        final Block copy = body.add("div", look(last));
        copy.say("div", "foot", TEXTS.of("foot.learner", "learner", learner, "mark", mark));
        final Block head = copy.add("table", "plain").add("tr");
        final Block left = head.add("td", "copy-title");
        left.say("h1", TEXTS.of("sheet.title")).say("p", TEXTS.of("mark", "mark", mark));
        final Block right = head.add("td", "copy-learner");
        right.say("p", "small", TEXTS.of("learner")).say("p", "name", learner);
        copy.say("p", "small", TEXTS.of("sheet.note"));
        if (!chosenFor.isEmpty()) {
            copy.say("p", "small", chosenFor);
        }
        for (int i = 0; i < exercises.size(); i++) {
            new ProblemOnPaper(i + 1, exercises.get(i)).into(copy);
        }
    }

    /** The rooms for the working are as high as the paper allows. */
    private String look(final boolean last) {
        return (last ? "copy last on-" : "copy on-") + size.name().toLowerCase(Locale.ROOT);
    }
}
