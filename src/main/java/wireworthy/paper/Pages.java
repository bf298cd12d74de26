package wireworthy.paper;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Objects;
import java.util.TimeZone;
import java.util.concurrent.ForkJoinPool;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Pages being written. They become a PDF in the program's own fonts; nothing is fetched from
 * anywhere, and the same pages always give the same bytes.
 */
public final class Pages {
    /** PDF wants an identity and a day of each file; a fixed one keeps equal files equal. */
    private static final long IDENTITY = 1;

    private final Document document;
    private final Block body;

    /**
     * Empty pages.
     *
     * @param title what the file is called in a reader
     * @param foot what stands at the foot of every page
     * @param looks names of the style sheets they need besides the common one
     */
    public Pages(
            final String title, final PaperSize size, final String foot, final String... looks) {
        document = empty();
        final Element html = document.createElement("html");
        html.setAttribute("lang", "en");
        document.appendChild(html);
        final Block head = new Block(html).add("head");
        head.say("title", title);
        head.say("style", "@page { size: " + size.css() + "; }\n" + style("paper"));
        for (final String look : looks) {
            head.say("style", style(look));
        }
        body = new Block(html).add("body");
        body.say("div", "foot", foot);
    }

    /**
     * Writes a page for nobody, on another thread: whoever knows that pages will be wanted has the
     * fonts and the library that sets them loaded while something else is being read.
     */
    public static void expect() {
        ForkJoinPool.commonPool()
                .execute(
                        () -> {
                            final Pages pages = new Pages("", PaperSize.A4, "-");
                            pages.body().say("h1", "-").say("p", "-");
                            pages.body().add("table").add("tbody").add("tr").say("td", "-");
                            pages.pdf();
                        });
    }

    private static Document empty() {
        try {
            return DocumentBuilderFactory.newInstance().newDocumentBuilder().newDocument();
        } catch (final ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String style(final String name) {
        try (InputStream css = resource("/wireworthy/paper/" + name + ".css")) {
            return new String(css.readAllBytes(), StandardCharsets.UTF_8);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream resource(final String name) {
        return Objects.requireNonNull(Pages.class.getResourceAsStream(name), name);
    }

    /** Where the parts of the pages go. */
    public Block body() {
        return body;
    }

    /** The pages as a file. */
    public byte[] pdf() {
        XRLog.setLoggingEnabled(false);
        final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PDDocument pdf = new PDDocument();
                PdfBoxRenderer renderer = renderer(pdf)) {
            renderer.createPDFKeepOpen();
            pdf.setDocumentId(IDENTITY);
            pdf.getDocumentInformation().setCreationDate(day());
            pdf.getDocumentInformation().setModificationDate(day());
            pdf.save(bytes);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static Calendar day() {
        final Calendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        day.setTimeInMillis(0);
        return day;
    }

    private PdfBoxRenderer renderer(final PDDocument pdf) throws IOException {
        final PdfRendererBuilder builder = new PdfRendererBuilder();
        OwnFonts.into(builder, pdf);
        return builder.usePDDocument(pdf)
                .withW3cDocument(document, "about:blank")
                .withProducer("Wireworthy")
                .useUriResolver((base, uri) -> null)
                .useUnicodeLineBreaker(new LineEnds())
                .useObjectDrawerFactory(new CircuitDrawers())
                .useNamespaceHandler(new OwnTags())
                .buildPdfRenderer();
    }
}
