package wireworthy.paper.schedule;

import java.util.List;
import java.util.stream.Collectors;
import wireworthy.paper.Block;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.Purchases;

/** What to buy, and labels for the cables. */
final class Shopping {
    private final CheckedVehicle checked;

    Shopping(final CheckedVehicle checked) {
        this.checked = checked;
    }

    void into(final Block page) {
        final Purchases purchases = Purchases.of(checked);
        page.say("h2", Words.of("buy"));
        items(page, "buy.cables", purchases.cables());
        final String over =
                checked.circuits().stream()
                        .filter(Overview::isOver)
                        .map(each -> each.circuit().name())
                        .collect(Collectors.joining("; "));
        if (!over.isEmpty()) {
            page.say("p", Words.of("buy.over", "list", over));
        }
        items(page, "buy.fuses", purchases.fuses());
        if (!purchases.unfit().isEmpty()) {
            page.say("p", Words.of("buy.unfit", "list", String.join("; ", purchases.unfit())));
        }
        if (!purchases.unjudged().isEmpty()) {
            page.say(
                    "p", Words.of("buy.unjudged", "list", String.join("; ", purchases.unjudged())));
        }
        items(page, "buy.ends", purchases.ends());
        if (!purchases.missing().isEmpty()) {
            final String all = String.join("; ", purchases.missing());
            page.say("p", Words.of("buy.missing", "list", all));
        }
    }

    private static void items(final Block page, final String key, List<Purchases.Item> items) {
        if (items.isEmpty()) {
            return;
        }
        final Block part = page.add("div", "kept");
        part.say("h3", Words.of(key)).say("p", "small", Words.of(key + ".note"));
        final Block rows = part.add("table", "narrow tight").add("tbody");
        for (final Purchases.Item item : items) {
            rows.add("tr").say("td", item.kind()).say("td", "number", item.amount());
        }
    }

    /** Two for each circuit, to cut out. */
    void labels(final Block page) {
        page.say("h2", Words.of("labels"));
        final Block labels = page.add("div", "labels");
        for (int i = 0; i < checked.circuits().size(); i++) {
            final String number = String.valueOf(i + 1);
            final String name = checked.circuits().get(i).circuit().name();
            final String text = Words.of("labels.text", "number", number).replace("{name}", name);
            // One for each end of the cable.
            labels.say("div", "label", text).say("div", "label", text);
        }
    }
}
