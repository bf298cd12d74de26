package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.check.FuseWindow;
import wireworthy.window.figures.FuseNumberLine;
import wireworthy.window.parts.Badge;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** Which fuses fit: in words, and on a number line once both its ends are known. */
final class FuseSection {
    private FuseSection() {}

    static List<Node> of(final FuseWindow fuse) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(CheckTexts.of("fuse")));
        parts.add(Texts.paragraph(Texts.kept(fuse.text())));
        chosen(fuse).ifPresent(parts::add);
        fuse.advice().map(Texts::kept).map(Texts::soft).ifPresent(parts::add);
        if (fuse.known()) {
            parts.add(
                    Cards.card(
                            new FuseNumberLine(
                                    fuse.floor().orElseThrow(),
                                    fuse.ceiling().orElseThrow(),
                                    fuse.series().ratings(),
                                    fuse.between(),
                                    fuse.chosen(),
                                    CheckTexts.of("fuse.floor"),
                                    CheckTexts.of("fuse.ceiling"))));
        }
        return parts;
    }

    /** What the fuse the builder chose is beside its floor and its ceiling. */
    private static Optional<Node> chosen(final FuseWindow fuse) {
        if (fuse.chosen().isEmpty() || !fuse.known()) {
            return Optional.empty();
        }
        final double amps = fuse.chosen().getAsDouble();
        final String text = FigureText.of(amps, Dimension.CURRENT);
        if (fuse.chosenAboveCeiling()) {
            return said(Verdict.UNSOUND, "fuse.above", text);
        }
        return fuse.between().stream().anyMatch(each -> StandardSizes.same(each, amps))
                ? said(Verdict.SOUND, "fuse.fits", text)
                : said(Verdict.CAUTION, "fuse.odd", text);
    }

    private static Optional<Node> said(final Verdict verdict, final String key, final String amps) {
        return Optional.of(new Badge(verdict, CheckTexts.of(key, "fuse", Texts.kept(amps))));
    }
}
