package wireworthy.practice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A file of templates on one topic.
 *
 * @param file its name
 * @param id the id its templates are known by, such as {@code voltage-drop}
 * @param version raised whenever a change would draw other numbers from the same seed
 * @param lines its templates in the order of the file, with the line at which each begins
 */
public record Bank(
        String file, String id, String title, int version, Map<Template, Integer> lines) {
    public Bank {
        lines = Collections.unmodifiableMap(new LinkedHashMap<>(lines));
    }

    /** Its templates, in the order of the file. */
    public List<Template> templates() {
        return List.copyOf(lines.keySet());
    }

    /** The template of this id, if the bank has it. */
    public Optional<Template> template(final String templateId) {
        return templates().stream().filter(each -> each.id().equals(templateId)).findFirst();
    }
}
