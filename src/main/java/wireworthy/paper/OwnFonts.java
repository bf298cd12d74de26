package wireworthy.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/**
 * The program's own fonts, each read once for all pages. No others are looked for: the writer of
 * pages would read every font of the machine and leave a list of them in the home folder.
 */
final class OwnFonts implements FontMapper {
    private static final String FAMILY = "Andika";
    private static final String FILES = "/wireworthy/fonts/Andika-";
    private static final TrueTypeFont REGULAR = read("Regular");
    private static final TrueTypeFont BOLD = read("Bold");
    private static final TrueTypeFont ITALIC = read("Italic");

    static {
        FontMappers.set(new OwnFonts());
    }

    private OwnFonts() {}

    /** Without ligatures: text copied from the page has an f and an i where it shows them. */
    private static TrueTypeFont read(final String face) {
        final String name = FILES + face + ".ttf";
        try (InputStream file =
                Objects.requireNonNull(OwnFonts.class.getResourceAsStream(name), name)) {
            final TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            font.setEnableGsub(false);
            return font;
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Has pages written in them. */
    static void into(final PdfRendererBuilder builder, final PDDocument pdf) throws IOException {
        into(builder, pdf, REGULAR, 400, FontStyle.NORMAL);
        into(builder, pdf, BOLD, 700, FontStyle.NORMAL);
        into(builder, pdf, ITALIC, 400, FontStyle.ITALIC);
    }

    private static void into(
            final PdfRendererBuilder builder,
            final PDDocument pdf,
            final TrueTypeFont font,
            final int weight,
            final FontStyle style)
            throws IOException {
        final PDType0Font embedded = PDType0Font.load(pdf, font, true);
        builder.useFont(new PDFontSupplier(embedded), FAMILY, weight, style, true);
    }

    @Override
    public FontMapping<TrueTypeFont> getTrueTypeFont(
            final String name, final @Nullable PDFontDescriptor like) {
        return new FontMapping<>(REGULAR, true);
    }

    @Override
    public FontMapping<FontBoxFont> getFontBoxFont(
            final String name, final @Nullable PDFontDescriptor like) {
        return new FontMapping<>(REGULAR, false);
    }

    @Override
    public CIDFontMapping getCIDFont(
            final String name, final @Nullable PDFontDescriptor like, final PDCIDSystemInfo signs) {
        return new CIDFontMapping(null, REGULAR, true);
    }
}
