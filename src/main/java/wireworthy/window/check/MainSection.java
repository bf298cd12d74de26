package wireworthy.window.check;

import java.util.List;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.FuseFault;
import wireworthy.vehicle.check.FuseWindow;
import wireworthy.vehicle.check.VoltsLost;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/** The main fuse and its cable: which fuses fit, a short circuit behind it, the volts lost. */
final class MainSection extends KeptBox {
    private final Redrawn<FuseWindow> fuse = new Redrawn<>(FuseSection::of);
    private final Told<String> fault = new Told<>(text -> List.of(Line.soft(text)));
    private final Told<VoltsLost> volts = new Told<>(VoltsSection::told);

    MainSection() {
        getStyleClass().add(Styles.TIGHT);
        getChildren().setAll(fuse, fault, volts);
    }

    void show(final CheckedVehicle checked) {
        fuse.show(checked.mainFuse());
        checked.faults().stream()
                .filter(it -> it.index() == CheckedVehicle.WHOLE)
                .map(FuseFault::text)
                .forEach(fault::show);
        volts.show(checked.mainVolts());
    }
}
