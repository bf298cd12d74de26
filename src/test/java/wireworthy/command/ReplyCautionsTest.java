package wireworthy.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Cautions of a reply: the worst first, and what is not known yet called so. */
class ReplyCautionsTest {
    private static JsonNode cautions(final String question) throws IOException {
        final StringWriter reply = new StringWriter();
        new WorkFile()
                .work(new BufferedReader(new StringReader(question)), new PrintWriter(reply, true));
        return JsonMapper.builder().build().readTree(reply.toString()).get("cautions");
    }

    @Test
    void aMainFuseOfWhichNothingTellsWhatItCanBreakIsNotKnownYetAndNoFire() throws IOException {
        final JsonNode cautions =
                cautions(
                        """
                        {"given": {"supply-voltage": "12 V", "circuit-current": "3 A",
                          "fuse": "5 A", "fuse-series": "strip-51", "one-way-length": "5 m",
                          "section": "1.5 mm2"}, "find": ["main-fuse", "drop"]}"""
                                .replace("\n", " "));
        assertThat(cautions.valueStream().map(each -> each.get("id").asString()))
                .endsWith("breaking-capacity-unknown")
                .contains("limit-met-only-cold");
        assertThat(cautions.get(cautions.size() - 1).get("text").asString())
                .startsWith("Not known yet, and while it is open nothing says that it is safe. ");
    }
}
