package wireworthy.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import tools.jackson.core.JacksonException;
import wireworthy.texts.Phrases;

/** Reads one bank file. What is broken is told with its line; the other templates still load. */
final class BankReader {
    private static final int MOST_TEMPLATES = 500;
    private static final int LONGEST_TITLE = 120;
    private static final int LARGEST_VERSION = 1_000_000;
    private static final Phrases TITLES = new Phrases("titles");
    private static final Set<String> ENTRIES = Set.of("bank", "title", "version", "templates");

    private final Consumer<Template> trial;
    private final SpokenTexts spoken;
    private final List<BankProblem> problems = new ArrayList<>();

    /**
     * @param trial works a template once
     * @param spoken the texts in the language in use
     */
    BankReader(final Consumer<Template> trial, final SpokenTexts spoken) {
        this.trial = trial;
        this.spoken = spoken;
    }

    /** All that was found broken so far. */
    List<BankProblem> problems() {
        return List.copyOf(problems);
    }

    /** The bank of a file; empty where nothing of it can be used. */
    Optional<Bank> read(final ContentFile file) {
        if (file instanceof ContentFile.Unread unread) {
            problems.add(new BankProblem(unread.name(), 0, unread.message(), unread.remedy()));
            return Optional.empty();
        }
        return read((ContentFile.Text) file);
    }

    private Optional<Bank> read(final ContentFile.Text file) {
        try {
            final Located json = Located.parse(file.text());
            return bank(file.name(), json);
        } catch (final JacksonException e) {
            problems.add(notJson(file.name(), e));
            return Optional.empty();
        }
    }

    private static BankProblem notJson(final String file, final JacksonException e) {
        return new BankProblem(
                file,
                Located.lineOf(e),
                "this is not JSON as it should be: " + e.getOriginalMessage(),
                "Look here and just before for a missing comma, quote or bracket");
    }

    private Optional<Bank> bank(final String file, final Located json) {
        try {
            final Entry root = json.root().only(ENTRIES);
            final String id = root.at("bank").id();
            final String title = TITLES.of(root.at("title").text(LONGEST_TITLE));
            final int version = root.at("version").whole(1, LARGEST_VERSION);
            final List<Entry> entries = root.at("templates").list(MOST_TEMPLATES);
            return Optional.of(
                    new Bank(
                            file, id, title, version, templates(file, json, id, version, entries)));
        } catch (final Unfit e) {
            problems.add(e.in(file, json));
            return Optional.empty();
        }
    }

    private Template read(final TemplateReader reader, final String bank, final Entry entry) {
        return reader.read(
                spoken.over(bank, entry), spoken.lack(bank, entry.json().path("id").asString("")));
    }

    private Map<Template, Integer> templates(
            final String file,
            final Located json,
            final String bank,
            final int version,
            final List<Entry> entries) {
        final TemplateReader reader = new TemplateReader(bank, version, trial);
        final Map<Template, Integer> templates = new LinkedHashMap<>();
        final Set<String> ids = new HashSet<>();
        for (final Entry entry : entries) {
            try {
                final Template template = read(reader, bank, entry);
                if (!ids.add(template.id())) {
                    throw entry.at("id").unfit("this id is taken above", "Give it another id");
                }
                templates.put(template, json.line(entry.pointer()));
            } catch (final Unfit e) {
                problems.add(e.in(file, json));
            }
        }
        return templates;
    }
}
