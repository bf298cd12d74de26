package wireworthy.window.check;

import java.util.List;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Vocabulary;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The form of the supply, or of the main fuse with its cable. */
final class PartForm extends KeptBox implements Refreshing {
    private PartForm(
            final String key,
            final EntryList entries,
            final List<Quantity> first,
            final List<Quantity> all) {
        getStyleClass().add(Styles.FORM);
        getChildren()
                .setAll(
                        Texts.title(CheckTexts.of("spot." + key)),
                        Texts.soft(CheckTexts.of(key + ".what")),
                        new EntryFields(entries.given(first)),
                        new Disclosure(
                                CheckTexts.of(key + ".more"),
                                () -> new EntryFields(entries.others(all, first))));
    }

    static PartForm supply(final VehicleModel model) {
        return new PartForm(
                "supply", EntryList.supply(model), EntryList.BATTERY, Vocabulary.SUPPLY);
    }

    static PartForm main(final VehicleModel model) {
        return new PartForm("main", EntryList.main(model), EntryList.MAIN_CABLE, Vocabulary.MAIN);
    }

    @Override
    public void refresh() {
        Refresh.all(getChildren());
    }
}
