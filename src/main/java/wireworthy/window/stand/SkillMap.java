package wireworthy.window.stand;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import wireworthy.practice.Prerequisites;
import wireworthy.rules.Skill;
import wireworthy.window.parts.FixedText;
import wireworthy.window.parts.Styles;

/** All skills in rows, each standing on skills of rows above it; one of them is picked. */
public final class SkillMap extends VBox {
    /** Of a name, in text sizes. */
    private static final double WIDE = 8.8;

    private final Map<Skill, ToggleButton> tiles = new EnumMap<>(Skill.class);

    /**
     * @param picked told of the skill that is picked, the first one at once
     */
    public SkillMap(final Stand stand, final Skill first, final Consumer<Skill> picked) {
        getStyleClass().add(Styles.SKILL_ROWS);
        final List<List<Skill>> rows = Stand.rows();
        for (int i = 0; i < rows.size(); i++) {
            getChildren().add(row(rows.get(i), i + 1, stand));
        }
        tiles.forEach((skill, tile) -> tile.setOnAction(event -> pick(skill, picked)));
        pick(first, picked);
    }

    /** Puts the keyboard on the skill that is picked. */
    public void focus() {
        tiles.values().stream()
                .filter(ToggleButton::isSelected)
                .forEach(ToggleButton::requestFocus);
    }

    private void pick(final Skill skill, final Consumer<Skill> picked) {
        final Set<Skill> below = Prerequisites.of(skill);
        tiles.forEach(
                (each, tile) -> {
                    tile.setSelected(each == skill);
                    tile.getStyleClass().remove(Styles.BELOW);
                    if (below.contains(each)) {
                        tile.getStyleClass().add(Styles.BELOW);
                    }
                });
        picked.accept(skill);
    }

    private FlowPane row(final List<Skill> skills, final int number, final Stand stand) {
        final FlowPane row = new FlowPane();
        row.getStyleClass().add(Styles.SKILL_ROW);
        skills.forEach(skill -> row.getChildren().add(tile(skill, number, stand)));
        return row;
    }

    private ToggleButton tile(final Skill skill, final int row, final Stand stand) {
        final Label name = new FixedText(skill.words(), WIDE);
        name.getStyleClass().add(Styles.SKILL_NAME);
        final SkillStand it = stand.of(skill);
        final ToggleButton tile = new ToggleButton();
        tile.setGraphic(new VBox(name, new StateLine(it.state())));
        tile.getStyleClass().setAll(Styles.SKILL);
        tile.setAccessibleText(
                "%s: %s. %s. %s"
                        .formatted(
                                skill.words(),
                                it.state().words(),
                                StandTexts.of("row", "number", row),
                                StandTexts.standsOn(skill, stand)));
        tiles.put(skill, tile);
        return tile;
    }
}
