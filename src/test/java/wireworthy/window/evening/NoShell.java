package wireworthy.window.evening;

import javafx.scene.Node;
import javafx.scene.Parent;
import wireworthy.window.Background;
import wireworthy.window.Shell;

/** A window that does nothing; a test overrides what it looks at. */
class NoShell implements Shell {
    @Override
    public void go(final String placeId) {}

    @Override
    public void lay(final Node card) {}

    @Override
    public void lift() {}

    @Override
    public void cover(final Parent whole) {}

    @Override
    public void uncover() {}

    @Override
    public void fullScreen() {}

    @Override
    public Background background() {
        return Background.atOnce();
    }
}
