package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SameEverywhereTest {
    private static final Path KEPT =
            Path.of("src/test/resources/wireworthy/practice/exercises-by-version.txt");

    /**
     * Printed sheets name bank, version and seed. {@code -Dexercises.write=true} writes the file
     * anew, after the version of each changed bank was raised.
     */
    @Test
    void sameBankVersionAndSeedGiveTheSameExercises() throws IOException {
        final Map<String, String> now = SameEverywhere.exercises();
        if (Boolean.getBoolean("exercises.write")) {
            Files.writeString(
                    KEPT,
                    now.entrySet().stream()
                            .map(e -> e.getKey() + " " + e.getValue() + "\n")
                            .collect(Collectors.joining()));
        }
        final Map<String, String> kept = new TreeMap<>();
        for (final String line : Files.readAllLines(KEPT)) {
            final int end = line.lastIndexOf(' ');
            kept.put(line.substring(0, end), line.substring(end + 1));
        }
        assertThat(now).as("raise the version of a bank that changed").isEqualTo(kept);
    }

    @Test
    void languageAndTimeZoneOfTheMachineChangeNothing() throws IOException {
        final List<String> turkish = run("-Duser.language=tr", "-Duser.country=TR");
        final List<String> german =
                run("-Duser.language=de", "-Duser.country=DE", "-Duser.timezone=Asia/Kathmandu");

        assertThat(turkish).isNotEmpty().isEqualTo(german);
        assertThat(turkish)
                .containsAll(
                        Stream.concat(
                                        SameEverywhere.exercises().entrySet().stream(),
                                        SameEverywhere.explanations().entrySet().stream())
                                .map(e -> e.getKey() + " " + e.getValue())
                                .toList());
    }

    private static List<String> run(final String... options) throws IOException {
        final List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of(options));
        command.addAll(
                List.of(
                        "-cp",
                        System.getProperty("java.class.path"),
                        SameEverywhere.class.getName()));
        final Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        return new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }
}
