package wireworthy.window.figures;

import atlantafx.base.controls.ProgressSliderSkin;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringExpression;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A slider with what it moves and how that stands: "circuit current 9.3 A". */
final class KnobHandle extends VBox {
    private final Knob knob;
    private final Slider slider;

    KnobHandle(final Knob knob) {
        this.knob = knob;
        slider = new Slider(0, knob.last(), knob.stop().get());
        getStyleClass().add(Styles.HANDLE);
        slider.setSkin(new ProgressSliderSkin(slider));
        slider.setMajorTickUnit(1);
        slider.setMinorTickCount(0);
        slider.setSnapToTicks(true);
        slider.setBlockIncrement(1);
        slider.valueProperty().addListener(moved -> follow());
        knob.stop().addListener(moved -> catchUp());
        final StringExpression text = Bindings.createStringBinding(knob::text, knob.stop());
        slider.accessibleTextProperty().bind(Bindings.concat(knob.label(), ", ", text));
        getChildren().addAll(says(text), slider);
        visibleProperty().bind(knob.offered());
        managedProperty().bind(knob.offered());
    }

    private TextFlow says(final StringExpression text) {
        final Text name = new Text(knob.label() + "\u00a0");
        name.getStyleClass().add(Styles.HANDLE_NAME);
        final Text value = new Text();
        value.getStyleClass().add(Styles.HANDLE_VALUE);
        value.textProperty().bind(Bindings.createStringBinding(() -> Texts.kept(text.get()), text));
        return new TextFlow(name, value);
    }

    private void follow() {
        knob.stop().set((int) Math.round(slider.getValue()));
    }

    /** While a hand drags the slider it moves smoothly between the stops. */
    private void catchUp() {
        if (Math.round(slider.getValue()) != knob.stop().get()) {
            slider.setValue(knob.stop().get());
        }
    }
}
