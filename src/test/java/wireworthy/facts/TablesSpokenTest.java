package wireworthy.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.texts.Keys;
import wireworthy.texts.Language;
import wireworthy.texts.Phrases;

/** What stands in the tables is said in every language; publications keep their names. */
class TablesSpokenTest {
    /** Publications by their numbers or titles, ids, signs of units and formulas. */
    private static final Pattern AS_IT_IS =
            Pattern.compile(
                    "(ISO|IEC|NEC|BS|HD|ASTM|SAE|FAA AC|33 CFR|46 CFR) .*\\d.*"
                            + "|(OpenStax|Lessons in Electric Circuits).*|ASTM / NBS|[a-z]+-[a-z0-9]+|blade|r10"
                            + "|AWG|mm2?|[AVhm]|[0-9.]+e-8|ohm.*|\\d B&S|[T L]2 = .*|[^A-Za-z]*( V| mm|T - 20\\))?");

    static Stream<Language> others() {
        return Language.all().stream().filter(it -> !it.ofSources());
    }

    @AfterEach
    void english() {
        Language.use(Language.ENGLISH);
    }

    @ParameterizedTest
    @MethodSource("others")
    void everythingIsSaid(final Language language) {
        final Set<String> there = Keys.of(language.code() + "/tables");

        assertThat(texts())
                .filteredOn(text -> !there.contains(Phrases.key(text)))
                .as("add to texts/%s/tables.properties", language.code())
                .allMatch(text -> AS_IT_IS.matcher(text).matches());
    }

    @ParameterizedTest
    @MethodSource("others")
    void nothingIsLeftOver(final Language language) {
        final Set<String> left = new TreeSet<>(Keys.of(language.code() + "/tables"));
        texts().forEach(text -> left.remove(Phrases.key(text)));

        assertThat(left).as("take out of texts/%s/tables.properties", language.code()).isEmpty();
    }

    @Test
    void figuresAreWrittenByTheLanguageAndClausesStay() {
        Language.use(Language.of("de"));

        assertThat(FactTables.named("thin-wall").said().rows().get(0))
                .containsExactly("0,5", "16/0,20", "11", "0,503", "gängige Praxis, ohne Quelle");
        assertThat(FactTables.named("iso-10133-rules").said().rows().get(3))
                .startsWith("7.7", "Kleinster Leiter, der allein liegt und länger als 200 mm ist");
        assertThat(FactTables.named("boat-cable").said().source().title())
                .isEqualTo("33 CFR 183.425 Table 5");
    }

    @Test
    void inEnglishATableIsWhatItWas() {
        final FactTable table = FactTables.named("drop-limits");

        assertThat(table.said()).isEqualTo(table);
    }

    /** Titles, headings and sentences, and the parts of cells. */
    private static Set<String> texts() {
        return FactTables.all().stream()
                .flatMap(TablesSpokenTest::texts)
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Stream<String> texts(final FactTable table) {
        final Stream<String> cells =
                table.rows().stream()
                        .flatMap(List::stream)
                        .flatMap(cell -> Arrays.stream(cell.split("; ")));
        final Stream<String> beside =
                Stream.of(TradeFigure.FUSE_MARGIN, TradeFigure.DROP_LIMIT)
                        .map(it -> it.source().title());
        return Stream.of(
                        Stream.of(table.title(), table.scope(), table.source().title()),
                        table.notes().stream(),
                        table.columns().stream(),
                        beside,
                        cells)
                .flatMap(each -> each);
    }
}
