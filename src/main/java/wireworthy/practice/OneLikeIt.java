package wireworthy.practice;

import java.util.List;

/** Why a problem like the last one comes next, in a line. */
final class OneLikeIt {
    private OneLikeIt() {}

    /**
     * The reason that holds.
     *
     * @param running the answers to the last problem, the newest first; not all right and unaided
     */
    static String why(final List<Answered> running) {
        if (!running.get(0).right()) {
            return "The last one went wrong: here is one like it";
        }
        return running.stream().allMatch(Answered::right)
                ? "The last one was worked with help: here is one like it"
                : "The last one took more than one try: here is one like it";
    }
}
