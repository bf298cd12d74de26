package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import wireworthy.evening.Difficulty;
import wireworthy.evening.Pick;
import wireworthy.evening.SystemVoltage;
import wireworthy.evening.handin.Explained;
import wireworthy.evening.wish.Handout;
import wireworthy.evening.wish.Made;
import wireworthy.evening.wish.Wanted;
import wireworthy.paper.PaperSize;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;
import wireworthy.window.FileAsking;
import wireworthy.window.NextFrame;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.OneOf;
import wireworthy.window.parts.SomeOf;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** What goes on a sheet, for whom, and how it is handed out. */
final class MakeForm extends VBox {
    private final MakeModel model;
    private final FileAsking files;
    private final TemplateLines templates;
    private final VBox which = new VBox();
    private final VBox picking = new VBox();
    private final VBox rest = new VBox();
    private Optional<SomeOf<Skill>> skills = Optional.empty();

    MakeForm(final MakeModel model, final FileAsking files, final TemplateLines templates) {
        this.model = model;
        this.files = files;
        this.templates = templates;
        which.getStyleClass().add(Styles.EVENING_FORM);
        picking.getStyleClass().add(Styles.EVENING_FORM);
        rest.getStyleClass().add(Styles.EVENING_FORM);
        getStyleClass().add(Styles.EVENING_FORM);
        getChildren()
                .setAll(
                        Texts.title(EveningTexts.of("make")),
                        Texts.soft(EveningTexts.of("make.reading")));
        model.replaced().subscribe(wish -> wish.ifPresent(any -> fill()));
        model.made().subscribe(made -> skills.ifPresent(some -> some.say(this::skill)));
    }

    /** What one starts from stays, so that the keyboard stays on it. */
    private void fill() {
        fillWhich();
        if (rest.getChildren().isEmpty()) {
            getChildren()
                    .setAll(
                            Texts.title(EveningTexts.of("make")),
                            new StartFrom(model),
                            mark(),
                            rest);
            fillRest();
        } else {
            NextFrame.then(rest, this::fillRest);
        }
    }

    private void fillRest() {
        rest.getChildren()
                .setAll(
                        subtitle("make.which"),
                        which,
                        subtitle("make.who"),
                        new WhoForm(model, files),
                        subtitle("make.out"),
                        paper(),
                        explained(),
                        Texts.soft(EveningTexts.of("make.explained.note")));
    }

    private static Label subtitle(final String key) {
        return Texts.subtitle(EveningTexts.of(key));
    }

    private Node mark() {
        final TextField mark = new TextField();
        mark.setAccessibleText(EveningTexts.of("make.mark"));
        mark.setOnAction(event -> model.openMark(mark.getText()));
        final Label said = Texts.soft("");
        said.textProperty().bind(model.comesFrom().markSaid());
        said.managedProperty().bind(model.comesFrom().markSaid().isNotEmpty());
        final VBox part =
                new VBox(
                        Texts.strong(EveningTexts.of("make.mark")),
                        Buttons.row(
                                mark,
                                Buttons.plain(
                                        EveningTexts.of("make.mark.do"),
                                        () -> model.openMark(mark.getText()))),
                        said);
        part.getStyleClass().add(Styles.ONE_OF);
        return part;
    }

    private void wanted(final UnaryOperator<Wanted> how) {
        model.change(it -> it.withWanted(how.apply(it.wanted())));
    }

    private void fillWhich() {
        final Wanted now = model.wish().wanted();
        final List<Node> parts = new ArrayList<>();
        parts.add(
                new OneOf<>(
                        EveningTexts.of("make.picked-by"),
                        List.of(false, true),
                        one -> EveningTexts.of("make.one-by-one." + one),
                        now.oneByOne(),
                        this::oneByOne));
        if (model.hasOwnBanks()) {
            parts.add(
                    new OneOf<>(
                            EveningTexts.of("make.banks"),
                            List.of(false, true),
                            own -> EveningTexts.of("make.own-banks." + own),
                            now.ownBanks(),
                            own -> wanted(it -> it.withOwnBanks(own))));
        }
        parts.add(picking);
        which.getChildren().setAll(parts);
        fillPicking();
    }

    private void fillPicking() {
        final Wanted now = model.wish().wanted();
        skills = Optional.empty();
        picking.getChildren()
                .setAll(
                        now.oneByOne()
                                ? List.of(new TemplatePicker(model, templates))
                                : bySkill(now));
    }

    /** How it is picked stays, so that the keyboard stays on it. */
    private void oneByOne(final boolean one) {
        wanted(it -> it.withOneByOne(one));
        NextFrame.then(picking, this::fillPicking);
    }

    private List<Node> bySkill(final Wanted now) {
        final SomeOf<Skill> some =
                new SomeOf<>(
                        EveningTexts.of("make.skills"),
                        Arrays.asList(Skill.values()),
                        this::skill,
                        now.skills(),
                        on -> wanted(it -> it.withSkills(on)));
        skills = Optional.of(some);
        return List.of(
                some,
                new CountField(
                        EveningTexts.of("make.problems"),
                        now.problems(),
                        Pick.MOST_PROBLEMS,
                        count -> wanted(it -> it.withProblems(count))),
                new SomeOf<>(
                        EveningTexts.of("make.difficulty"),
                        Arrays.asList(Difficulty.values()),
                        Difficulty::id,
                        now.difficulties(),
                        on -> wanted(it -> it.withDifficulties(on))),
                new OneOf<>(
                        EveningTexts.of("make.wire"),
                        List.of(
                                Optional.<WireSizes>empty(),
                                Optional.of(WireSizes.MM2),
                                Optional.of(WireSizes.AWG)),
                        size ->
                                EveningTexts.of(
                                        "make.wire." + size.map(WireSizes::name).orElse("any")),
                        now.sizes(),
                        size -> wanted(it -> it.withSizes(size))),
                new SomeOf<>(
                        EveningTexts.of("make.volts"),
                        Arrays.asList(SystemVoltage.values()),
                        it -> EveningTexts.of("make.volts.of", "volts", it.volts()),
                        now.voltages(),
                        on -> wanted(it -> it.withVoltages(on))));
    }

    /** A skill with how many kinds of problem it has as things stand. */
    private String skill(final Skill skill) {
        final EnumSet<Skill> known = EnumSet.noneOf(Skill.class);
        model.made().get().map(Made::fitting).ifPresent(it -> known.addAll(it.keySet()));
        return known.contains(skill)
                ? EveningTexts.of(
                        "make.skill",
                        "skill",
                        skill.words(),
                        "count",
                        model.made().get().orElseThrow().fitting().getOrDefault(skill, 0))
                : skill.words();
    }

    private void handout(final UnaryOperator<Handout> how) {
        model.change(it -> it.withHandout(how.apply(it.handout())));
    }

    private Node paper() {
        return new OneOf<>(
                EveningTexts.of("make.paper"),
                Arrays.asList(PaperSize.values()),
                size -> EveningTexts.of("make.paper." + size.name()),
                model.wish().handout().paper(),
                size -> handout(it -> it.withPaper(size)));
    }

    private Node explained() {
        return new OneOf<>(
                EveningTexts.of("make.explained"),
                Arrays.asList(Explained.values()),
                when -> EveningTexts.of("make.explained." + when.id()),
                model.wish().handout().explained(),
                when -> handout(it -> it.withExplained(when)));
    }
}
