package wireworthy.practice;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.rules.Quantity;

/** What a template asks. Texts may hold placeholders. */
public sealed interface Task {
    /** The quantities to be worked, in order; none where nothing is. */
    List<Quantity> finds();

    /** All texts of it, for checks. */
    List<String> texts();

    /** A figure, or several in the order in which one works them. */
    record Figures(List<Part> parts) implements Task {
        public Figures {
            parts = List.copyOf(parts);
        }

        /** One figure. */
        public static Figures one(final String ask, final Quantity find) {
            return new Figures(List.of(new Part(ask, find)));
        }

        @Override
        public List<Quantity> finds() {
            return parts.stream().map(Part::find).toList();
        }

        @Override
        public List<String> texts() {
            return parts.stream().map(Part::ask).toList();
        }
    }

    /** One figure of several. */
    record Part(String ask, Quantity find) {}

    /** One of a few. */
    record Choose(String ask, List<Option> options) implements Task {
        public Choose {
            options = List.copyOf(options);
        }

        /** What the texts and the conditions of the options speak of. */
        @Override
        public List<Quantity> finds() {
            final Set<Quantity> spoken = new LinkedHashSet<>();
            texts().forEach(text -> spoken.addAll(Drawn.worked(text)));
            options.stream()
                    .flatMap(option -> option.right().quantities().stream())
                    .forEach(spoken::add);
            return List.copyOf(spoken);
        }

        @Override
        public List<String> texts() {
            final List<String> texts = new ArrayList<>();
            texts.add(ask);
            options.forEach(option -> texts.addAll(List.of(option.text(), option.why())));
            return texts;
        }
    }

    /**
     * One of the things to choose from.
     *
     * @param right when it is
     * @param why what really happens, whether it is right or not
     * @param slip id of the slip that leads to it
     */
    record Option(String text, RightWhen right, String why, Optional<String> slip) {}

    /** Steps to be put in order. */
    record Order(String ask, List<Stage> stages) implements Task {
        public Order {
            stages = List.copyOf(stages);
        }

        @Override
        public List<Quantity> finds() {
            return List.of();
        }

        @Override
        public List<String> texts() {
            final List<String> texts = new ArrayList<>();
            texts.add(ask);
            stages.forEach(stage -> texts.addAll(List.of(stage.text(), stage.why())));
            return texts;
        }
    }

    /**
     * One step of several.
     *
     * @param why why it comes after the one before
     */
    record Stage(String text, String why) {}

    /** The nearest power of ten. */
    record Estimate(String ask, Quantity find) implements Task {
        @Override
        public List<Quantity> finds() {
            return List.of(find);
        }

        @Override
        public List<String> texts() {
            return List.of(ask);
        }
    }
}
