package wireworthy.evening.called;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wireworthy.evening.Asked;
import wireworthy.practice.ChoiceProblem;
import wireworthy.texts.TextBundle;

/** One of a few things to choose from, asked of a group: it calls out letters. */
final class AskingLetter implements Asking {
    private static final TextBundle TEXTS = new TextBundle("called");

    private final ChoiceProblem choice;

    AskingLetter(final ChoiceProblem choice) {
        this.choice = choice;
    }

    @Override
    public String ask() {
        return choice.ask();
    }

    @Override
    public List<String> lettered() {
        return choice.options().stream().map(ChoiceProblem.Option::text).toList();
    }

    @Override
    public List<WallLine> lines() {
        return List.of(new WallLine.Words(titled(choice.right()), choice.right().why()));
    }

    private String titled(final ChoiceProblem.Option option) {
        final String letter = Asked.letter(choice.options().indexOf(option));
        return TEXTS.of("option", "letter", letter, "option", option.text());
    }

    /** "a", "A B B", "aabc". */
    @Override
    public Taken take(final String typed) {
        final List<Called> all = new ArrayList<>();
        for (final char sign : typed.toUpperCase(Locale.ROOT).toCharArray()) {
            final int place = sign - 'A';
            if (place >= 0 && place < choice.options().size()) {
                all.add(called(choice.options().get(place)));
            } else if (Character.isLetterOrDigit(sign)) {
                return back();
            }
        }
        return all.isEmpty() ? back() : new Taken.Answers(all);
    }

    private Taken back() {
        return new Taken.Back(
                TEXTS.of("letters", "last", Asked.letter(choice.options().size() - 1)));
    }

    private Called called(final ChoiceProblem.Option option) {
        final String letter = Asked.letter(choice.options().indexOf(option));
        return new Called(
                letter,
                Origin.of(
                        option.right() ? Origin.Kind.SOUND : Origin.Kind.SLIP,
                        letter,
                        titled(option),
                        option.why()));
    }
}
