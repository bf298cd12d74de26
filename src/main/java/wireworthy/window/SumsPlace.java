package wireworthy.window;

import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.facts.CableTables;
import wireworthy.record.Craft;
import wireworthy.record.Region;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;
import wireworthy.record.WireSizes;
import wireworthy.texts.Language;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.OneOf;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/**
 * Where the sums in use are chosen: a page like any other, which can be left at any time. It is the
 * first that is seen.
 */
public final class SumsPlace implements Place {
    static final String ID = "sums";

    private final SettingsKeeper settings;
    private final Runnable leave;
    private final Label summary = Texts.strong("");
    private final VBox oneByOne = new VBox();
    private Runnable toFirst = () -> {};

    /**
     * @param leave goes on to where the person left off
     */
    public SumsPlace(final SettingsKeeper settings, final Runnable leave) {
        this.settings = settings;
        this.leave = leave;
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return SumsTexts.of("title");
    }

    @Override
    public Parent build(final Shell shell) {
        final boolean first = settings.now().chosen().isEmpty();
        oneByOne.getStyleClass().add(Styles.SUMS);
        final VBox page =
                new VBox(
                        Texts.title(SumsTexts.of(first ? "first.title" : "title")),
                        Texts.paragraph(SumsTexts.of(first ? "first.say" : "say")),
                        choices(shell),
                        summary,
                        Texts.soft(SumsTexts.of("in-words")),
                        new Notice(Verdict.CAUTION, SumsTexts.of("first-say")),
                        Texts.subtitle(SumsTexts.of("one-by-one")),
                        oneByOne);
        page.getStyleClass().addAll(Styles.PAGE, Styles.SUMS);
        say();
        showOneByOne();
        return Pages.withFoot(
                Pages.scroll(title(), page),
                Buttons.row(Buttons.main(SumsTexts.of(first ? "begin" : "done"), leave)));
    }

    @Override
    public void shown() {
        toFirst.run();
    }

    private SumsInUse sums() {
        return settings.now().sums();
    }

    /** What was picked, or the usual where nothing was, is what is in use from now on. */
    @Override
    public void left() {
        settings.change(it -> it.withSums(it.sums()));
    }

    private Node choices(final Shell shell) {
        final SumsInUse now = sums();
        final OneOf<Craft> craft =
                new OneOf<>(
                        SumsTexts.of("craft"),
                        List.of(Craft.values()),
                        value -> SumsTexts.of("craft", value),
                        now.craft(),
                        value -> anew(it -> it.withCraft(value)));
        toFirst = craft::focus;
        final OneOf<WireSizes> sizes =
                new OneOf<>(
                        SumsTexts.of("sizes"),
                        List.of(WireSizes.values()),
                        value -> SumsTexts.of("sizes", value),
                        now.sizes(),
                        value -> anew(it -> it.withSizes(value)));
        final OneOf<Region> region =
                new OneOf<>(
                        SumsTexts.of("region"),
                        List.of(Region.values()),
                        value -> SumsTexts.of("region", value),
                        now.region(),
                        value -> {
                            anew(it -> it.withRegion(value));
                            sizes.choose(WireSizes.usual(value));
                        });
        return Cards.card(
                language(shell),
                explained("craft", craft),
                explained("region", region),
                explained("sizes", sizes));
    }

    /** What a choice is for, in half a sentence. */
    private static Node explained(final String choice, final Node row) {
        return new VBox(row, Texts.soft(SumsTexts.of(choice + ".say")));
    }

    private static Node language(final Shell shell) {
        return new OneOf<>(
                SumsTexts.of("language"),
                Language.all(),
                Language::name,
                Language.inUse(),
                shell::speak);
    }

    /** With other circumstances the usual table, limit and margin hold again. */
    private void anew(final UnaryOperator<SumsInUse> how) {
        change(how);
        showOneByOne();
    }

    private void change(final UnaryOperator<SumsInUse> how) {
        settings.change(it -> it.withSums(how.apply(it.sums())));
        say();
    }

    private void say() {
        summary.setText(SumsTexts.of("in-use", "sums", SumsTexts.all(sums())));
    }

    private void showOneByOne() {
        oneByOne.getChildren().setAll(table(), limit(), margin());
    }

    private Node table() {
        final Label why = Texts.soft("");
        final SumsInUse now = sums();
        why.setText(whyTable(now.cableTable()));
        return new VBox(
                new OneOf<>(
                        SumsTexts.of("which-table"),
                        SumsInUse.tables(),
                        id -> SumsTexts.name(CableTables.named(id)),
                        now.cableTable(),
                        id -> {
                            change(it -> it.withCableTable(id));
                            why.setText(whyTable(id));
                        }),
                why);
    }

    private static String whyTable(final String id) {
        return SumsTexts.of("why-table." + id);
    }

    private Node limit() {
        final SumsInUse now = sums();
        return new VBox(
                new OneOf<>(
                        SumsTexts.of("which-limit"),
                        SumsInUse.LIMITS,
                        SumsTexts::limitText,
                        now.dropLimit(),
                        share -> change(it -> it.withDropLimit(share))),
                Texts.soft(SumsTexts.of("why-limit", now.craft())));
    }

    private Node margin() {
        return new VBox(
                new OneOf<>(
                        SumsTexts.of("which-margin"),
                        SumsInUse.MARGINS,
                        SumsTexts::marginText,
                        sums().margin(),
                        factor -> change(it -> it.withMargin(factor))),
                Texts.soft(SumsTexts.of("why-margin")));
    }
}
