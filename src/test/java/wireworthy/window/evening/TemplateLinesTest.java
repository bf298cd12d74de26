package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** Single problems to pick from, by skill; the list opens where something is picked already. */
class TemplateLinesTest {
    @TempDir Path folder;

    private Optional<Skill> opensAt(final List<String> picked) {
        final List<Optional<Skill>> found = new ArrayList<>();
        new TemplateLines(TestDesks.desk(folder, folder), Background.atOnce())
                .skill(picked, false, found::add);
        return found.get(0);
    }

    @Test
    void itOpensAtTheSkillOfTheFirstOnePicked() {
        assertThat(opensAt(List.of("power/house-lamp-current", "voltage-drop/aisle-strips-drop")))
                .contains(Skill.CURRENT_FROM_POWER);
        assertThat(opensAt(List.of("voltage-drop/aisle-strips-drop", "power/house-lamp-current")))
                .contains(Skill.DROP);
    }

    @Test
    void whereNothingIsPickedItIsNotSaid() {
        assertThat(opensAt(List.of())).isEmpty();
        assertThat(opensAt(List.of("nothing/of-that-name"))).isEmpty();
    }
}
