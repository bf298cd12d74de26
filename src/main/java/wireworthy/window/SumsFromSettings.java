package wireworthy.window;

import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;

/** The sums in use as the settings hold them. */
record SumsFromSettings(SettingsKeeper settings, Runnable way) implements InUse {
    @Override
    public SumsInUse sums() {
        return settings.now().sums();
    }

    @Override
    public void change() {
        way.run();
    }
}
