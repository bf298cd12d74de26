package wireworthy.practice;

import java.util.List;
import java.util.Optional;

/**
 * A file of problem templates on one topic.
 *
 * @param id the id its templates are known by, such as {@code voltage-drop}
 * @param version raised whenever a change would draw other numbers from the same seed
 */
public record Bank(String id, String title, int version, List<Template> templates) {
    public Bank {
        templates = List.copyOf(templates);
    }

    /** The template of this id, if the bank has it. */
    public Optional<Template> template(final String templateId) {
        return templates.stream().filter(each -> each.id().equals(templateId)).findFirst();
    }
}
