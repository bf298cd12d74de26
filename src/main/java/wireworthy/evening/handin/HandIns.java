package wireworthy.evening.handin;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Sheet;

/**
 * What was handed in for a sheet. Every file of the folder is in one of the two lists.
 *
 * @param taken in the order of the learners' numbers, one each
 * @param leftOut what does not count, in the order of the names
 */
public record HandIns(List<HandIn> taken, List<LeftOut> leftOut) {
    public HandIns {
        taken = List.copyOf(taken);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A file that does not count.
     *
     * @param what why, without a full stop
     * @param remedy what to do, without a full stop
     */
    public record LeftOut(String file, String what, String remedy) {
        LeftOut(final String file, final EveningProblem why) {
            this(file, why.what(), why.remedy());
        }

        /** For people. */
        public String text() {
            return file + ": " + what + ". " + remedy + ".";
        }
    }

    /**
     * Reads a folder; nothing in it is changed.
     *
     * @throws EveningProblem where the folder itself can't be read
     */
    public static HandIns read(final Path folder, final Sheet sheet) {
        return HandInFolder.read(folder, (files, all) -> {}).of(sheet);
    }

    static List<LeftOut> sorted(final List<LeftOut> leftOut) {
        return leftOut.stream().sorted(Comparator.comparing(LeftOut::file)).toList();
    }
}
