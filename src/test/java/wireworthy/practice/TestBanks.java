package wireworthy.practice;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Objects;

/** Two small banks beside the tests. */
final class TestBanks {
    private TestBanks() {}

    static Banks read() {
        try {
            final Path folder =
                    Path.of(Objects.requireNonNull(TestBanks.class.getResource("banks")).toURI());
            return Banks.of(ContentFiles.in(folder, ".json"));
        } catch (final URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Template template(final String bank, final String id) {
        return read().template(bank, id).orElseThrow();
    }
}
