package wireworthy.lessons;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The words of all lessons, screen by screen, to find something in them. */
public final class LessonWords {
    private final Map<LessonHeading, List<String>> screens = new LinkedHashMap<>();

    /** Reads every lesson, which takes a moment. */
    public LessonWords(final Lessons lessons) {
        for (final LessonHeading heading : lessons.contents()) {
            screens.put(
                    heading,
                    lessons.lesson(heading.id()).map(Lesson::screens).orElse(List.of()).stream()
                            .map(LessonWords::words)
                            .toList());
        }
    }

    private static String words(final Lesson.Screen screen) {
        return LessonProof.texts(screen)
                .map(PlainText::of)
                .collect(Collectors.joining("\n"))
                .toLowerCase(Locale.ROOT);
    }

    /** The lessons with this text in their title or on a screen; all of them for no text. */
    public List<LessonHeading> with(final String text) {
        return screens.entrySet().stream()
                .filter(
                        lesson ->
                                in(text, lesson.getKey().title())
                                        || lesson.getValue().stream()
                                                .anyMatch(words -> in(text, words)))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The first screen of a lesson, from 0, with this text; 0 where it is on none. */
    public int screen(final LessonHeading heading, final String text) {
        final List<String> words = screens.getOrDefault(heading, List.of());
        return IntStream.range(0, words.size())
                .filter(each -> in(text, words.get(each)))
                .findFirst()
                .orElse(0);
    }

    private static boolean in(final String text, final String words) {
        return words.toLowerCase(Locale.ROOT).contains(text.strip().toLowerCase(Locale.ROOT));
    }
}
