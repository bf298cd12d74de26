package wireworthy.evening.wish;

import wireworthy.evening.handin.Explained;
import wireworthy.paper.PaperSize;

/**
 * How a sheet is handed out.
 *
 * @param explained when those at a laptop are told what is right
 */
public record Handout(PaperSize paper, Explained explained) {
    public static final Handout USUAL = new Handout(PaperSize.A4, Explained.AT_THE_END);

    public Handout withPaper(final PaperSize now) {
        return new Handout(now, explained);
    }

    public Handout withExplained(final Explained now) {
        return new Handout(paper, now);
    }
}
