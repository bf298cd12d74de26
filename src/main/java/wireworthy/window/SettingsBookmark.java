package wireworthy.window;

import wireworthy.record.SettingsKeeper;

/** The bookmark of practice in the settings. */
record SettingsBookmark(SettingsKeeper settings) implements Bookmark {
    @Override
    public String topic() {
        return settings.now().leftOff().topic();
    }

    @Override
    public String problem() {
        return settings.now().leftOff().problem();
    }

    @Override
    public void put(final String topic, final String problem) {
        settings.change(it -> it.withLeftOff(at -> at.withProblem(topic, problem)));
    }
}
