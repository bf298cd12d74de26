package wireworthy.window.check;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.function.Supplier;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.paper.schedule.Schedule;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.sheet.SheetWriter;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** The vehicle to take along: a circuit schedule to print, or its circuits as a spreadsheet. */
final class OnPaper extends KeptBox {
    private final VehicleModel model;
    private final Dialogs dialogs;
    private final Saving saving;
    private final ComboBox<PaperSize> size = new ComboBox<>();

    OnPaper(final VehicleModel model, final Saving saving, final Dialogs dialogs) {
        this.model = model;
        this.dialogs = dialogs;
        this.saving = saving;
        size.getItems().setAll(PaperSize.values());
        size.setValue(PaperSize.A4);
        size.setConverter(new SizeName());
        size.setAccessibleText(CheckTexts.of("paper.size"));
        final Under under = new Under();
        saving.said().subscribe(said -> under.say(said.text(), said.trouble()));
        getStyleClass().add(Styles.TIGHT);
        getChildren()
                .setAll(
                        Texts.subtitle(CheckTexts.of("paper")),
                        Texts.paragraph(CheckTexts.of("paper.what")),
                        Buttons.row(
                                Buttons.plain(CheckTexts.of("paper.save"), this::schedule),
                                size,
                                Buttons.plain(CheckTexts.of("sheet.save"), this::sheet)),
                        under);
    }

    /** What writes pages is loaded while a place for the file is being chosen. */
    private void schedule() {
        Pages.expect();
        final PaperSize chosen = size.getValue();
        final Supplier<CheckedVehicle> checked = model.checking().later(model.now());
        save("kind.schedule", ".pdf", () -> Schedule.pdf(checked.get(), chosen));
    }

    private void sheet() {
        final Vehicle vehicle = model.now();
        save(
                "kind.sheet",
                ".csv",
                () -> SheetWriter.text(vehicle, ',').getBytes(StandardCharsets.UTF_8));
    }

    private void save(final String kind, final String ending, final Supplier<byte[]> content) {
        final Path proposed = model.shelf().named(model.now().name(), ending);
        dialogs.save(getScene().getWindow(), CheckTexts.of(kind), proposed)
                .ifPresent(file -> saving.save(file, content));
    }

    private static final class SizeName extends StringConverter<PaperSize> {
        @Override
        public String toString(final PaperSize size) {
            return CheckTexts.of("paper." + size.name());
        }

        @Override
        public PaperSize fromString(final String text) {
            return PaperSize.valueOf(text);
        }
    }
}
