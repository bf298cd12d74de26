package wireworthy.paper;

import com.openhtmltopdf.css.extend.StylesheetFactory;
import com.openhtmltopdf.css.sheet.StylesheetInfo;
import com.openhtmltopdf.simple.extend.XhtmlCssOnlyNamespaceHandler;
import org.jspecify.annotations.Nullable;

/**
 * The tags of pages, which look as our style sheets say: each part of a page is held against every
 * rule, and those for forms, links and pictures would be most of them.
 */
final class OwnTags extends XhtmlCssOnlyNamespaceHandler {
    @Override
    public @Nullable StylesheetInfo getDefaultStylesheet(final StylesheetFactory factory) {
        return null;
    }
}
