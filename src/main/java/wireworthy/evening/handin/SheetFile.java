package wireworthy.evening.handin;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.evening.CodeNames;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.SheetPlan;
import wireworthy.practice.Entry;
import wireworthy.practice.Located;
import wireworthy.practice.Unfit;
import wireworthy.record.WholeFile;

/**
 * What a leader puts on the laptops: a sheet by its mark, when answers are explained, and for whom.
 */
public record SheetFile(String mark, Explained explained, CodeNames names) {
    private static final long MOST_BYTES = 20_000;
    private static final String KIND = "wireworthy";
    private static final int LONGEST = 60;

    /**
     * Writes it whole or not at all.
     *
     * @throws IOException where the file can't be written
     */
    public void write(final Path file) throws IOException {
        final ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put(KIND, "sheet").put("version", 1).put("mark", mark);
        json.put("explained", explained.id());
        final ArrayNode list = json.putArray("names");
        names.names().forEach(list::add);
        final String text = JsonMapper.shared().writeValueAsString(json) + "\n";
        WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Reads it.
     *
     * @throws EveningProblem where it is damaged or something else
     */
    public static SheetFile read(final Path file) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                throw EveningProblem.of("sheet-file.none");
            }
            return read(Located.parse(Files.readString(file)).root());
        } catch (final CharacterCodingException | JacksonException e) {
            throw EveningProblem.of("sheet-file.damaged");
        } catch (final IOException e) {
            throw EveningProblem.of("sheet-file.unread");
        } catch (final Unfit e) {
            throw new EveningProblem(e.what(), e.remedy());
        }
    }

    private static SheetFile read(final Entry root) {
        root.only(Set.of(KIND, "version", "mark", "explained", "names"));
        if (!root.at(KIND).text(LONGEST).equals("sheet") || root.at("version").whole(1, 99) != 1) {
            throw EveningProblem.of("sheet-file.version");
        }
        final String explained = root.at("explained").text(LONGEST);
        final List<String> names =
                root.at("names").list(SheetPlan.MOST_LEARNERS).stream()
                        .map(Entry::json)
                        .map(each -> each.asString("").strip())
                        .toList();
        return new SheetFile(
                root.at("mark").text(LONGEST),
                Arrays.stream(Explained.values())
                        .filter(each -> each.id().equals(explained))
                        .findFirst()
                        .orElseThrow(() -> EveningProblem.of("sheet-file.explained")),
                new CodeNames(names));
    }
}
