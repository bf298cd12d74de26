package wireworthy.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Counts pages. */
public final class PageCount {
    private PageCount() {}

    /** How many pages a PDF of ours has. */
    public static int of(final byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages();
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
