package wireworthy.evening.wish;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.evening.Difficulty;
import wireworthy.evening.Pick;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.SystemVoltage;
import wireworthy.evening.handin.Explained;
import wireworthy.paper.PaperSize;
import wireworthy.record.WholeFile;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/** The sheet wanted last, in a file. What can't be read of it is as usual. */
public final class WishFile {
    private static final long MOST_BYTES = 100_000;
    private static final int MOST_LISTED = 100;
    private static final int LONGEST = 5_000;

    private WishFile() {}

    /**
     * Writes it whole or not at all.
     *
     * @throws IOException where it can't be written
     */
    public static void write(final Path file, final Wish wish) throws IOException {
        final ObjectNode json = JsonNodeFactory.instance.objectNode();
        write(json, wish.wanted());
        json.put("named", wish.who().named()).put("names", wish.who().names());
        json.put("copies", wish.who().copies()).put("own-numbers", wish.who().ownNumbers());
        json.put("paper", wish.handout().paper().name());
        json.put("explained", wish.handout().explained().name()).put("seed", wish.seed());
        final String text = JsonMapper.shared().writeValueAsString(json) + "\n";
        WholeFile.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private static void write(final ObjectNode json, final Wanted wanted) {
        json.put("one-by-one", wanted.oneByOne()).put("own-banks", wanted.ownBanks());
        list(json, "templates", wanted.templates());
        list(json, "skills", names(wanted.skills()));
        list(json, "difficulties", names(wanted.difficulties()));
        list(json, "voltages", names(wanted.voltages()));
        list(json, "sizes", names(wanted.sizes().stream().toList()));
        json.put("problems", wanted.problems());
    }

    private static <E extends Enum<E>> List<String> names(final Collection<E> some) {
        return some.stream().map(Enum::name).sorted().toList();
    }

    private static void list(final ObjectNode json, final String key, final List<String> texts) {
        final var list = json.putArray(key);
        texts.forEach(list::add);
    }

    /** Reads it; the usual one where there is none. */
    public static Wish read(final Path file) {
        try {
            return Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES
                    ? read(JsonMapper.shared().readTree(Files.readString(file)))
                    : Wish.USUAL;
        } catch (final IOException | JacksonException e) {
            return Wish.USUAL;
        }
    }

    private static Wish read(final JsonNode json) {
        final ForWhom who = ForWhom.USUAL;
        return new Wish(
                wanted(json),
                new ForWhom(
                        json.path("named").asBoolean(who.named()),
                        cut(json.path("names").asString(who.names())),
                        within(json.path("copies"), SheetPlan.MOST_LEARNERS, who.copies()),
                        json.path("own-numbers").asBoolean(who.ownNumbers())),
                new Handout(
                        one(PaperSize.class, json.path("paper"), Handout.USUAL.paper()),
                        one(Explained.class, json.path("explained"), Handout.USUAL.explained())),
                within(json.path("seed"), SheetPlan.SEEDS - 1, Wish.USUAL.seed()));
    }

    private static Wanted wanted(final JsonNode json) {
        final Wanted usual = Wanted.USUAL;
        return new Wanted(
                json.path("one-by-one").asBoolean(usual.oneByOne()),
                texts(json.path("templates")),
                some(Skill.class, json.path("skills"), usual.skills()),
                within(json.path("problems"), Pick.MOST_PROBLEMS, usual.problems()),
                some(Difficulty.class, json.path("difficulties"), usual.difficulties()),
                sizes(json.path("sizes")),
                some(SystemVoltage.class, json.path("voltages"), usual.voltages()),
                json.path("own-banks").asBoolean(usual.ownBanks()));
    }

    private static Optional<WireSizes> sizes(final JsonNode list) {
        return some(WireSizes.class, list, Set.of()).stream().findFirst();
    }

    private static String cut(final String text) {
        return text.substring(0, Math.min(LONGEST, text.length()));
    }

    private static int within(final JsonNode json, final int most, final int usual) {
        final int number = json.asInt(usual);
        return number < 0 || number > most ? usual : number;
    }

    private static List<String> texts(final JsonNode list) {
        return list.valueStream().limit(MOST_LISTED).map(each -> each.asString("")).toList();
    }

    private static <E extends Enum<E>> Set<E> some(
            final Class<E> type, final JsonNode list, final Set<E> usual) {
        if (!list.isArray()) {
            return usual;
        }
        final List<String> names = texts(list);
        return EnumSet.allOf(type).stream()
                .filter(each -> names.contains(each.name()))
                .collect(Collectors.toSet());
    }

    private static <E extends Enum<E>> E one(
            final Class<E> type, final JsonNode json, final E usual) {
        final String name = json.asString("");
        return Arrays.stream(type.getEnumConstants())
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElse(usual);
    }
}
