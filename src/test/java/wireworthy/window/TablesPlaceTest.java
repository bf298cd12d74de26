package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import wireworthy.facts.FactTable;
import wireworthy.facts.FactTables;
import wireworthy.window.parts.SideList;

/** Tables as a person looks things up in them. */
class TablesPlaceTest extends WindowTest {
    private TablesPlace tables;

    @Override
    protected List<Place> places() {
        tables = new TablesPlace(InUse.USUAL);
        return List.of(tables);
    }

    @Test
    void allTablesAreListedAndTheFirstIsShown() {
        assertThat(list().getItems()).extracting(FactTable::id).isEqualTo(FactTables.ids());
        assertThat(reads("Thin-wall vehicle cable: how much current it may carry")).isTrue();
    }

    @Test
    void typingLeavesTheTablesThatHoldTheText() {
        clickOn("#find-in-tables").write("boat cable");
        assertThat(list().getItems())
                .isNotEmpty()
                .hasSizeLessThan(FactTables.ids().size())
                .extracting(FactTable::id)
                .contains("boat-cable")
                .doesNotContain("fuse-colours");
        clickOn("#find-in-tables").push(KeyCode.SHORTCUT, KeyCode.A).write("no such words");
        assertThat(reads("No table has \"no such words\" in it.")).isTrue();
    }

    @Test
    void theKeyForFindingLeadsToTheField() {
        push(KeyCode.F).write("of");
        assertThat(lookup("#find-in-tables").queryTextInputControl().getText()).isEqualTo("of");
    }

    @Test
    void signsAreFoundAsTheyAreShown() {
        interact(() -> tables.find("mm²"));
        assertThat(list().getItems()).extracting(FactTable::id).contains("thin-wall");
    }

    @Test
    void aTableOpensByItsName() {
        interact(() -> tables.open("fuse-series"));
        assertThat(reads("Standard fuse ratings")).isTrue();
        assertThat(list().chosen().orElseThrow().id()).isEqualTo("fuse-series");
    }

    @Test
    void theListStaysWhereItWasScrolledThoughAnotherTableIsChosen() {
        interact(() -> tables.open("thin-wall"));
        interact(() -> list().setVvalue(1));
        interact(() -> list().layout());

        assertThat(list().getVvalue()).isEqualTo(1);
    }

    private SideList<FactTable> list() {
        return lookup(".side-list").query();
    }
}
