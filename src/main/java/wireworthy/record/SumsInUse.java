package wireworthy.record;

import java.util.List;
import wireworthy.facts.CableTable;
import wireworthy.facts.CableTables;

/**
 * What a person's sums go by wherever a question or a lesson leaves it open.
 *
 * @param cableTable the id of a {@link CableTable}
 * @param dropLimit share of the supply voltage that may be lost, from {@link #LEAST_LIMIT} to
 *     {@link #GREATEST_LIMIT}
 * @param margin fuse floor over circuit current, from {@link #LEAST_MARGIN} to {@link
 *     #GREATEST_MARGIN}
 */
public record SumsInUse(
        Craft craft,
        Region region,
        WireSizes sizes,
        String cableTable,
        double dropLimit,
        double margin) {
    /** Drop limits one may choose, as shares of the supply voltage; see the table drop-limits. */
    public static final List<Double> LIMITS = List.of(0.02, 0.03, 0.04, 0.05, 0.1);

    /** Margins one may choose, the published ones of the table fuse-loading. */
    public static final List<Double> MARGINS = List.of(1.25, 1.35, 1.5);

    static final double LEAST_LIMIT = 0.005;
    static final double GREATEST_LIMIT = 0.2;
    static final double LEAST_MARGIN = 1;
    static final double GREATEST_MARGIN = 2;

    private static final double USUAL_LIMIT = 0.03;
    private static final double AUSTRALIAN_LIMIT = 0.05;
    private static final double USUAL_MARGIN = 1.25;

    /** What holds before anybody chose. */
    public static final SumsInUse USUAL = usual(Craft.VAN, Region.ELSEWHERE, WireSizes.MM2);

    /** Takes the usual figure for one that can't be, since settings can be edited by hand. */
    public SumsInUse {
        cableTable = tables().contains(cableTable) ? cableTable : usualTable(craft, region, sizes);
        dropLimit = within(dropLimit, LEAST_LIMIT, GREATEST_LIMIT, usualLimit(craft, region));
        margin = within(margin, LEAST_MARGIN, GREATEST_MARGIN, USUAL_MARGIN);
    }

    /** The usual table, limit and margin for a craft, a region and a way of selling cable. */
    public static SumsInUse usual(final Craft craft, final Region region, final WireSizes sizes) {
        return new SumsInUse(
                craft,
                region,
                sizes,
                usualTable(craft, region, sizes),
                usualLimit(craft, region),
                USUAL_MARGIN);
    }

    /** 33 CFR 183.425 is the only table here by gauge; ISO 10133 is for small craft. */
    private static String usualTable(
            final Craft craft, final Region region, final WireSizes sizes) {
        if (sizes == WireSizes.AWG || (craft == Craft.BOAT && region == Region.NORTH_AMERICA)) {
            return "boat-cable";
        }
        return craft == Craft.BOAT ? "iso-10133" : "thin-wall";
    }

    /** 3 % for what has to work on boats, and common practice; 5 % in the Australian trade. */
    private static double usualLimit(final Craft craft, final Region region) {
        return craft != Craft.BOAT && region == Region.AUSTRALIA ? AUSTRALIAN_LIMIT : USUAL_LIMIT;
    }

    private static double within(
            final double value, final double least, final double most, final double usual) {
        return value >= least && value <= most ? value : usual;
    }

    /** The ids of the tables one may choose. */
    public static List<String> tables() {
        return CableTables.ids();
    }

    /** The table the sums go by. */
    public CableTable table() {
        return CableTables.named(cableTable);
    }

    public SumsInUse withCraft(final Craft other) {
        return usual(other, region, sizes);
    }

    public SumsInUse withRegion(final Region other) {
        return usual(craft, other, sizes);
    }

    public SumsInUse withSizes(final WireSizes other) {
        return usual(craft, region, other);
    }

    public SumsInUse withCableTable(final String id) {
        return new SumsInUse(craft, region, sizes, id, dropLimit, margin);
    }

    public SumsInUse withDropLimit(final double share) {
        return new SumsInUse(craft, region, sizes, cableTable, share, margin);
    }

    public SumsInUse withMargin(final double factor) {
        return new SumsInUse(craft, region, sizes, cableTable, dropLimit, factor);
    }
}
