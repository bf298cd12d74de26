package wireworthy.window.evening;

import java.nio.file.Path;
import java.util.List;
import wireworthy.evening.handin.HandInFolder;
import wireworthy.evening.handin.HandIns;
import wireworthy.evening.summary.NextWeek;
import wireworthy.evening.summary.Summary;

/** How far one is with the hand-ins of an evening. */
sealed interface AfterState {
    /** No folder is chosen. */
    record Nothing() implements AfterState {}

    /** So many files of all have been read. */
    record Reading(int files, int all) implements AfterState {}

    /** The folder can't be read. */
    record Refused(String trouble) implements AfterState {}

    /**
     * None of its files counts.
     *
     * @param trouble why the sheet can't be made again; empty where there is none
     * @param leftOut every file with its reason
     * @param damaged those that are called as hand-ins and can't be read, by name
     */
    record None(Path folder, String trouble, List<HandIns.LeftOut> leftOut, List<String> damaged)
            implements AfterState {
        public None {
            leftOut = List.copyOf(leftOut);
            damaged = List.copyOf(damaged);
        }
    }

    /**
     * Read and summed up.
     *
     * @param sheets all sheets that there are hand-ins of
     */
    record Read(
            HandInFolder folder,
            List<HandInFolder.Belonging> sheets,
            HandIns handIns,
            Summary summary,
            NextWeek nextWeek)
            implements AfterState {
        public Read {
            sheets = List.copyOf(sheets);
        }
    }
}
