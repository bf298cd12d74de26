package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import wireworthy.vehicle.check.FuseWindow;
import wireworthy.window.figures.FuseNumberLine;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Texts;

/** Which fuses fit: in words, and on a number line once both its ends are known. */
final class FuseSection {
    private FuseSection() {}

    static List<Node> of(final FuseWindow fuse) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(CheckTexts.of("fuse")));
        parts.add(Texts.paragraph(Texts.kept(fuse.text())));
        if (fuse.known()) {
            parts.add(
                    Cards.card(
                            new FuseNumberLine(
                                    fuse.floor().getAsDouble(),
                                    fuse.ceiling().getAsDouble(),
                                    fuse.series().ratings(),
                                    fuse.between())));
        }
        return parts;
    }
}
