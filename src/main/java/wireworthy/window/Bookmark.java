package wireworthy.window;

/** Remembers where practice was left. */
interface Bookmark {
    /** Remembers nothing. */
    Bookmark NONE =
            new Bookmark() {
                @Override
                public String topic() {
                    return "";
                }

                @Override
                public String problem() {
                    return "";
                }

                @Override
                public void put(final String topic, final String problem) {}
            };

    /** The topic last chosen; empty where all were. */
    String topic();

    /** The problem that was being worked; empty before the first. */
    String problem();

    void put(String topic, String problem);
}
