package wireworthy.vehicle.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;

/** Spreadsheets written down as text, taken in. */
final class Sheets {
    private Sheets() {}

    static Sheet read(final byte[] bytes) {
        final SheetRead read = SheetReader.read(bytes);
        assertThat(read).isInstanceOf(SheetRead.Whole.class);
        return ((SheetRead.Whole) read).sheet();
    }

    static Sheet read(final String text) {
        return read(text.getBytes(StandardCharsets.UTF_8));
    }

    static SheetImport taken(final String text) {
        return taken(read(text));
    }

    /** Taken in by the guessed mapping; every row is accounted for. */
    static SheetImport taken(final Sheet sheet) {
        final SheetImport taken = SheetImport.of(sheet, Mapping.guess(sheet));
        assertThat(taken.rows())
                .extracting(RowOutcome::line)
                .as("lines of the rows accounted for")
                .isEqualTo(sheet.rows().stream().map(SheetRow::line).toList());
        return taken;
    }

    static List<RowOutcome.Kind> kinds(final SheetImport taken) {
        return taken.rows().stream().map(RowOutcome::kind).toList();
    }
}
