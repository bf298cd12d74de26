package wireworthy.window;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;
import wireworthy.window.stand.HeldPlot;
import wireworthy.window.stand.SkillCard;
import wireworthy.window.stand.SkillMap;
import wireworthy.window.stand.Stand;
import wireworthy.window.stand.StandTexts;

/** Where I stand: the map of the skills, what the record says of each, and how many held when. */
public final class StandPlace implements Place {
    static final String ID = "stand";

    private final Supplier<Stand> reading;
    private final SkillCard.Ways ways;
    private VBox left = new VBox();
    private VBox right = new VBox();
    private Parent page = right;
    private Optional<Shell> shell = Optional.empty();

    /**
     * @param reading works where the learner stands, away from the window
     * @param ways where one goes from a skill
     */
    public StandPlace(final Supplier<Stand> reading, final SkillCard.Ways ways) {
        this.reading = reading;
        this.ways = ways;
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return StandTexts.of("title");
    }

    @Override
    public Parent build(final Shell in) {
        shell = Optional.of(in);
        left = new VBox(Texts.title(title()), Texts.soft(StandTexts.of("reading")));
        right = new VBox();
        page = new Bench(left, title(), right, StandTexts.of("map"));
        return page;
    }

    /** Reads anew, as every answer changes it. */
    @Override
    public void shown() {
        shell.ifPresent(in -> in.background().run(reading, stand -> show(stand, in)));
    }

    private void show(final Stand stand, final Shell in) {
        final SkillCard card = new SkillCard(stand, ways);
        final SkillMap map = new SkillMap(stand, stand.first().skill(), card::show);
        left.getChildren()
                .setAll(
                        Texts.title(title()),
                        Texts.paragraph(StandTexts.summary(stand)),
                        card,
                        Buttons.row(
                                Buttons.plain(
                                        StandTexts.of("back"), () -> in.go(PracticePlace.ID))));
        stand.clockBehind()
                .ifPresent(
                        last ->
                                left.getChildren()
                                        .add(
                                                1,
                                                new Notice(
                                                        Verdict.CAUTION,
                                                        StandTexts.clock(stand.today(), last))));
        right.getChildren()
                .setAll(
                        Texts.subtitle(StandTexts.of("map")),
                        Texts.soft(StandTexts.of("map.say")),
                        map,
                        Texts.subtitle(StandTexts.of("plot")),
                        Cards.card(new HeldPlot(stand)),
                        Texts.soft(StandTexts.held(stand)));
        right.getStyleClass().add(Styles.TIGHT);
        NextFrame.then(page, map::focus);
    }
}
