package wireworthy.window.evening;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wireworthy.evening.CodeNames;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.BegunSheets;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.handin.SheetFile;

/**
 * A sheet that was made or opened on this machine: nobody has to type its mark again.
 *
 * @param words its skills and its mark
 */
record KnownSheet(String mark, String words) {
    private static final int SKILLS = 3;

    /** Those that can still be made, the last one first. */
    static List<KnownSheet> of(final BegunSheets kept, final Shelf shelf) {
        final List<KnownSheet> all = new ArrayList<>();
        for (final SheetFile file : kept.sheets()) {
            try {
                all.add(of(Sheet.marked(file.mark(), shelf)));
            } catch (final EveningProblem e) {
                // It was made with other banks: it can be chosen no more.
            }
        }
        return List.copyOf(all);
    }

    private static KnownSheet of(final Sheet sheet) {
        final List<String> skills =
                sheet.templates().stream().map(each -> each.skill().words()).distinct().toList();
        final String some = skills.stream().limit(SKILLS).collect(Collectors.joining(", "));
        return new KnownSheet(
                sheet.mark(),
                EveningTexts.of(
                        skills.size() > SKILLS ? "known.more" : "known.one",
                        "problems",
                        sheet.problems(),
                        "skills",
                        some,
                        "mark",
                        sheet.mark()));
    }

    /** Keeps a sheet that was opened by its mark; what its file said of it stays. */
    static void keep(final Sheet sheet, final BegunSheets kept) {
        if (kept.sheet(sheet.mark()).isEmpty()) {
            final CodeNames numbers = CodeNames.numbers(sheet.learners());
            keep(new SheetFile(sheet.mark(), Explained.AT_THE_END, numbers), kept);
        }
    }

    /** Keeps a sheet, so that it can be chosen here. */
    static void keep(final SheetFile file, final BegunSheets kept) {
        try {
            kept.keep(file);
        } catch (final IOException e) {
            // Its mark has to be typed again next time; nothing else is lost by it.
        }
    }
}
