package wireworthy.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Code names as a leader has them: typed, or from a list kept in a spreadsheet. */
class CodeNamesTest {
    private static String lines(final String text) {
        return text.replace('/', '\n');
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "one a line              | Wren/Finch/Swift",
                "with a heading          | name/Wren/Finch/Swift",
                "in one line             | Wren, Finch; Swift",
                "heading in that line    | name, Wren, Finch, Swift",
                "blank lines             | Wren//Finch/ /Swift/",
                "heading and other columns | name;seat/Wren;1/Finch;2/Swift;3",
                "the names further right | seat;Code name;wish/1;Wren;drop/2;Finch;/3;Swift;fuse",
                "an empty column before  | ;;name/;;Wren/;;Finch/;;Swift",
                "numbered                | 1;Wren/2;Finch/3;Swift",
                "quoted                  | \"seat\",\"name\"/\"1\",\"Wren\"/\"2\",\"Finch\"/\"3\",\"Swift\"",
                "quoted, blanks around   | \"Wren\" ,1/ \"Finch\" ,2/\"Swift\",3",
                "quoted, some only       | name;seat/\"Wren\";1/Finch;2/\"Swift\";3",
                "printed quotes          | “Wren”/„Finch“/«Swift»",
                "single quotes           | 'Wren','Finch','Swift'",
                "in German               | Platz;Codename/1;Wren/2;Finch/3;Swift"
            })
    void eachNameIsOneLearnerAndNothingElseIs(final String what, final String list) {
        assertThat(CodeNames.read(lines(list)).names())
                .as(what)
                .isEqualTo(List.of("Wren", "Finch", "Swift"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"Wren, blue\",1/Finch,2        | Wren blue/Finch",
                "name;seat/\"Wren; blue\";1/Finch;2 | Wren blue/Finch",
                "\"The \"\"old\"\" Wren\",1/Finch,2  | The \"old\" Wren/Finch",
                "O'Wren/'Finch               | O'Wren/'Finch"
            })
    void aSeparatorInQuotesPartsNoName(final String list, final String names) {
        assertThat(CodeNames.read(lines(list)).names())
                .isEqualTo(List.of(lines(names).split("\n")));
    }

    /** A list is looked over before it is used: whoever reads it sees names and nothing else. */
    @Test
    void aListIsShownOneNameALineCountedWithWhatWillNotDo() {
        final NameList list =
                NameList.of("\uFEFFseat;name\n1;\"Wren\"\n2;Finch\n3;wren\n4;" + "Swift".repeat(8));

        assertThat(list.text()).isEqualTo("Wren\nFinch\nwren\n" + "Swift".repeat(8));
        assertThat(list.said())
                .contains("Names: 4.", "more than once: wren.", "longer than 30")
                .contains("Swift".repeat(6) + "…");
        assertThat(NameList.of("").said()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"7/8/9", "7, 8, 9"})
    void whereThereAreOnlyNumbersTheyAreTheNames(final String list) {
        assertThat(CodeNames.read(lines(list)).names()).containsExactly("7", "8", "9");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name;seat/;1/;2   | There is no code name",
                "' '               | There is no code name",
                "Wren/wren         | comes twice",
                "name;seat/Wren;1/Wren;2 | comes twice"
            })
    void whatIsNoListIsRefused(final String list, final String why) {
        assertThatThrownBy(() -> CodeNames.read(lines(list))).hasMessageContaining(why);
    }
}
