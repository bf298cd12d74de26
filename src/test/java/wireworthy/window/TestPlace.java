package wireworthy.window;

import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Texts;

/** A small place that counts how often it is built and shown. */
final class TestPlace implements Place {
    final AtomicInteger built = new AtomicInteger();
    final AtomicInteger shown = new AtomicInteger();
    private final String title;

    TestPlace(final String title) {
        this.title = title;
    }

    @Override
    public String id() {
        return title.toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    @Override
    public String title() {
        return title;
    }

    @Override
    public Parent build(final Shell shell) {
        built.incrementAndGet();
        final Button button = Buttons.plain("Fail in " + title, TestPlace::fail);
        return Pages.page(title, Texts.title("The place " + title), Cards.card(button));
    }

    @Override
    public void shown() {
        shown.incrementAndGet();
    }

    private static void fail() {
        throw new IllegalStateException("a slip of the program");
    }
}
