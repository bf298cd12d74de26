package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import wireworthy.rules.Skill;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Single problems picked one by one, a skill at a time. */
final class TemplatePicker extends VBox {
    private final MakeModel model;
    private final TemplateLines lines;
    private final ComboBox<Skill> skill = new ComboBox<>();
    private final VBox list = new VBox();
    private final Label picked = Texts.soft("");

    TemplatePicker(final MakeModel model, final TemplateLines lines) {
        this.model = model;
        this.lines = lines;
        skill.getItems().setAll(Skill.values());
        skill.setConverter(new Name());
        skill.setAccessibleText(EveningTexts.of("make.of-skill"));
        skill.setMaxWidth(Double.MAX_VALUE);
        skill.valueProperty().addListener((any, before, now) -> find());
        list.getStyleClass().add(Styles.PICK_LIST);
        getStyleClass().add(Styles.ONE_OF);
        getChildren()
                .setAll(
                        Texts.strong(EveningTexts.of("make.of-skill")),
                        skill,
                        list,
                        picked,
                        Buttons.row(Buttons.plain(EveningTexts.of("make.pick-none"), this::none)));
        say();
        lines.skill(
                now(),
                model.wish().wanted().ownBanks(),
                first -> skill.setValue(first.orElse(Skill.DROP)));
    }

    private List<String> now() {
        return model.wish().wanted().templates();
    }

    private void find() {
        final Skill of = skill.getValue();
        lines.of(
                of,
                model.wish().wanted().ownBanks(),
                found -> {
                    if (of == skill.getValue()) {
                        list.getChildren().setAll(found.stream().map(this::box).toList());
                    }
                });
    }

    private CheckBox box(final TemplateLines.Line line) {
        final CheckBox box = new CheckBox(Texts.kept(line.text()));
        box.setMnemonicParsing(false);
        box.setWrapText(true);
        box.setMinHeight(USE_PREF_SIZE);
        box.setSelected(now().contains(line.id()));
        box.selectedProperty().addListener((any, before, on) -> pick(line.id(), on));
        return box;
    }

    private void pick(final String id, final boolean on) {
        final List<String> all = new ArrayList<>(now());
        if (on) {
            all.add(id);
        } else {
            all.remove(id);
        }
        pick(all);
    }

    private void none() {
        pick(List.of());
        find();
    }

    private void pick(final List<String> ids) {
        model.change(it -> it.withWanted(it.wanted().withTemplates(ids)));
        say();
    }

    private void say() {
        picked.setText(EveningTexts.of("make.picked", "count", now().size()));
    }

    private static final class Name extends StringConverter<Skill> {
        @Override
        public String toString(final Skill skill) {
            return skill == null ? "" : skill.words();
        }

        @Override
        public Skill fromString(final String words) {
            return Arrays.stream(Skill.values())
                    .filter(each -> each.words().equals(words))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
