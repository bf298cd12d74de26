package wireworthy.paper.schedule;

import wireworthy.paper.Block;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.vehicle.check.CheckedVehicle;

/**
 * The circuit schedule of a vehicle: what could hurt someone first, the circuits at a glance, how
 * they branch off, what to buy, every working with its sources, labels, and what was not checked.
 */
public final class Schedule {
    private static final int UNCHECKED = 5;

    private Schedule() {}

    /** The schedule as a PDF; the same vehicle always gives the same bytes. */
    public static byte[] pdf(final CheckedVehicle checked, final PaperSize size) {
        return pages(checked, size).pdf();
    }

    private static Pages pages(final CheckedVehicle checked, final PaperSize size) {
        final String title = Words.of("title", "name", checked.vehicle().name());
        final Pages pages = new Pages(title, size, Words.of("foot"), "schedule");
        final Block body = pages.body();
        body.say("h1", title);
        final Common common = new Common(checked);
        new Overview(checked, common).into(body);
        final Shopping shopping = new Shopping(checked);
        shopping.into(body);
        for (int i = 0; i < checked.circuits().size(); i++) {
            new CircuitPart(i + 1, checked.circuits().get(i), common).into(body);
        }
        new WholePart(checked, common).into(body);
        common.sources(body);
        shopping.labels(body);
        unchecked(body);
        return pages;
    }

    private static void unchecked(final Block body) {
        final Block part = body.add("div", "kept");
        part.say("h2", Words.of("unchecked"));
        final Block list = part.add("ul");
        for (int i = 1; i <= UNCHECKED; i++) {
            list.say("li", Words.of("unchecked." + i));
        }
    }
}
