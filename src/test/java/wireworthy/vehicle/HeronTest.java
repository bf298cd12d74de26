package wireworthy.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import wireworthy.texts.Language;

/** The example vehicle is the same in every language but for its names. */
class HeronTest {
    @AfterEach
    void english() {
        Language.use(Language.ENGLISH);
    }

    @Test
    void onlyNamesAndColoursDiffer() {
        final Vehicle english = Heron.vehicle();
        Language.use(Language.of("de"));
        final Vehicle german = Heron.vehicle();

        assertThat(german.name()).isEqualTo("Der Heron");
        assertThat(german.circuits().get(5).name()).isEqualTo("Dieselheizung");
        assertThat(figures(german)).isEqualTo(figures(english));
    }

    /** All that stands in the file, without its names and notes. */
    private static List<String> figures(final Vehicle vehicle) {
        return VehicleWriter.text(vehicle)
                .lines()
                .map(
                        line ->
                                line.replaceAll(
                                        "\"(name|notes|colour|fed-from)\" ?: ?\"[^\"]*\"", "$1"))
                .toList();
    }
}
