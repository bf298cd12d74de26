package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wireworthy.evening.handin.HandIns;
import wireworthy.evening.summary.Handed;
import wireworthy.evening.summary.HelpWanted;
import wireworthy.evening.summary.Missed;
import wireworthy.evening.summary.SlipSeen;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.PlainTable;
import wireworthy.window.parts.Texts;

/** What was handed in, as tables to read. */
final class AfterTables {
    private AfterTables() {}

    /** Slips, the commonest first. */
    static Node slips(final List<SlipSeen> slips) {
        final PlainTable table = new PlainTable();
        table.row(true, List.of(head("slip"), number(AfterTexts.of("answers")), head("who")));
        for (final SlipSeen slip : slips) {
            table.row(
                    false,
                    List.of(
                            words(slip.words()),
                            number(String.valueOf(slip.answers())),
                            words(names(slip.learners()))));
        }
        final VBox card = Cards.card(Texts.subtitle(AfterTexts.of("slips")));
        if (slips.isEmpty()) {
            card.getChildren().add(Texts.paragraph(AfterTexts.of("slips.none")));
        } else {
            card.getChildren().addAll(Texts.soft(AfterTexts.of("slips.say")), table);
        }
        return card;
    }

    /** Answers to be looked at as they were handed in, problem by problem. */
    static Node handed(final String key, final List<Handed> all) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(AfterTexts.of(key)));
        parts.add(Texts.soft(AfterTexts.of(key + ".say")));
        for (final Handed each : all) {
            parts.add(
                    Texts.paragraph(
                            AfterTexts.of(
                                    "handed.one",
                                    "problem",
                                    each.problem(),
                                    "skill",
                                    each.skill(),
                                    "typed",
                                    each.typed(),
                                    "name",
                                    names(List.of(each.who())))));
        }
        return Cards.card(parts.toArray(Node[]::new));
    }

    /** How problems or skills went. */
    static Node missed(final String key, final List<Missed> all) {
        final PlainTable table = new PlainTable();
        table.row(
                true,
                List.of(
                        head(key + ".head"),
                        number(AfterTexts.of("right")),
                        number(AfterTexts.of("wrong")),
                        number(AfterTexts.of("open"))));
        all.forEach(each -> row(table, each));
        row(table, Missed.sum(AfterTexts.of("sum"), all));
        return Cards.card(
                Texts.subtitle(AfterTexts.of(key)), Texts.soft(AfterTexts.of(key + ".say")), table);
    }

    private static void row(final PlainTable table, final Missed each) {
        table.row(
                false,
                List.of(
                        words(each.label()),
                        number(String.valueOf(each.right())),
                        number(String.valueOf(each.wrong())),
                        number(String.valueOf(each.open()))));
    }

    /** Who wants help with what. */
    static Node help(final List<HelpWanted> help) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(AfterTexts.of("help")));
        if (help.isEmpty()) {
            parts.add(Texts.paragraph(AfterTexts.of("help.none")));
        }
        for (final HelpWanted each : help) {
            parts.add(
                    Texts.paragraph(
                            AfterTexts.of(
                                    "help.with",
                                    "problem",
                                    each.problem(),
                                    "skill",
                                    each.skill(),
                                    "names",
                                    names(each.names()))));
        }
        return Cards.card(parts.toArray(Node[]::new));
    }

    /** What does not count, each with the reason. */
    static Node leftOut(final List<HandIns.LeftOut> leftOut) {
        final List<Node> parts = new ArrayList<>();
        parts.add(Texts.subtitle(AfterTexts.of("left-out", "count", leftOut.size())));
        leftOut.forEach(each -> parts.add(Texts.paragraph(each.text())));
        return Cards.card(parts.toArray(Node[]::new));
    }

    /** Each number stays on one line with its name. */
    private static String names(final List<String> labels) {
        return labels.stream()
                .map(label -> label.replaceFirst(" ", "\u00a0"))
                .collect(Collectors.joining(", "));
    }

    private static PlainTable.Cell head(final String key) {
        return new PlainTable.Cell(Texts.strong(AfterTexts.of(key)), false);
    }

    private static PlainTable.Cell words(final String text) {
        return new PlainTable.Cell(Texts.paragraph(text), false);
    }

    private static PlainTable.Cell number(final String text) {
        final Region label = Texts.paragraph(text);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return new PlainTable.Cell(label, true);
    }
}
