package wireworthy.window.check;

import java.util.function.Supplier;
import wireworthy.window.parts.KeptBox;

/** The working behind a line that opens; drawn only while it is open. */
final class WorkingSection extends KeptBox implements Refreshing {
    private final Supplier<Workings> workings;
    private final Redrawn<Workings> drawn = new Redrawn<>(Workings::drawn);
    private final Disclosure disclosure;

    WorkingSection(final Supplier<Workings> workings) {
        this.workings = workings;
        disclosure = new Disclosure(CheckTexts.of("working"), this::opened);
        getChildren().setAll(disclosure);
    }

    private Redrawn<Workings> opened() {
        drawn.show(workings.get());
        return drawn;
    }

    @Override
    public void refresh() {
        if (disclosure.isOpen()) {
            opened();
        }
    }
}
