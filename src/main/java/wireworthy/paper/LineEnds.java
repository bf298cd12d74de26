package wireworthy.paper;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.BitSet;
import java.util.Locale;
import wireworthy.rules.FigureAndUnit;

/** Where a line may end: as usual, but never between a figure and its unit or within a unit. */
final class LineEnds implements FSTextBreaker {
    private final BreakIterator usual = BreakIterator.getLineInstance(Locale.US);
    private BitSet inside = new BitSet();

    @Override
    public void setText(final String text) {
        usual.setText(text);
        inside = FigureAndUnit.inside(text);
    }

    @Override
    public int next() {
        int at = usual.next();
        while (at != BreakIterator.DONE && inside.get(at)) {
            at = usual.next();
        }
        return at;
    }
}
