package wireworthy.working;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The tables' figures once more, typed in apart from the program's own. */
final class OwnTables {
    static final double[] BLADE = {1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40};
    static final double[] MAXI = {20, 25, 30, 35, 40, 50, 60, 70, 80, 100};
    static final double[] STRIP_30 = {30, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200};
    static final double[] STRIP_51 = {
        40, 60, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500
    };

    /**
     * Amps by section.
     *
     * @param mm2 rising
     * @param amps for each insulation temperature, by section
     */
    record Table(
            String id, double[] mm2, SortedMap<Double, double[]> amps, Map<Double, Double> engine) {
        private int row(final double section) {
            int row = -1;
            for (int i = 0; i < mm2.length; i++) {
                row = mm2[i] <= section * 1.000001 ? i : row;
            }
            return row;
        }

        /** Amps of the row at or below a section. */
        double ampacity(final double section, final double insulation) {
            return amps.getOrDefault(insulation, new double[0])[row(section)];
        }

        /** The thinnest row that carries so many amps; NaN where none does. */
        double carrying(final double needed, final double insulation) {
            for (int i = 0; i < mm2.length; i++) {
                if (amps.getOrDefault(insulation, new double[0])[i] >= needed * (1 - 1e-9)) {
                    return mm2[i];
                }
            }
            return Double.NaN;
        }
    }

    static final Table THIN_WALL =
            new Table(
                    "thin-wall",
                    new double[] {0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 4.5, 6, 8.5},
                    columns(105, new double[] {11, 14, 16.5, 21, 25, 29, 33, 39, 42, 50, 63}),
                    Map.of());

    static final Table STANDARD_WALL =
            new Table(
                    "standard-wall",
                    new double[] {0.65, 1, 1.5, 2, 2.5, 3},
                    columns(70, new double[] {5.75, 8.75, 12.75, 17.5, 21.75, 25.5}),
                    Map.of());

    static final Table BOAT =
            new Table(
                    "boat-cable",
                    gauges(18, 16, 14, 12, 10, 8, 6, 4, 3, 2, 1, 0, -1, -2, -3),
                    columns(
                            75,
                            new double[] {
                                10, 15, 20, 25, 40, 65, 95, 125, 145, 170, 195, 230, 265, 310, 360
                            },
                            90,
                            new double[] {
                                20, 25, 30, 40, 55, 70, 100, 135, 155, 180, 210, 245, 285, 330, 385
                            },
                            105,
                            new double[] {
                                20, 25, 35, 45, 60, 80, 120, 160, 180, 210, 245, 285, 330, 385, 445
                            }),
                    Map.of(75.0, 0.75, 90.0, 0.82, 105.0, 0.85));

    static final Table SMALL_CRAFT =
            new Table(
                    "iso-10133",
                    new double[] {0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150},
                    columns(
                            70,
                            new double[] {
                                10, 14, 18, 25, 35, 45, 65, 90, 120, 160, 210, 265, 310, 360, 380
                            },
                            105,
                            new double[] {
                                16, 20, 25, 35, 45, 60, 90, 130, 170, 210, 270, 330, 390, 450, 475
                            }),
                    Map.of(70.0, 0.75, 105.0, 0.86));

    static final List<Table> ALL = List.of(THIN_WALL, STANDARD_WALL, BOAT, SMALL_CRAFT);

    private OwnTables() {}

    private static SortedMap<Double, double[]> columns(final Object... insulationThenAmps) {
        final SortedMap<Double, double[]> columns = new TreeMap<>();
        for (int i = 0; i < insulationThenAmps.length; i += 2) {
            columns.put(
                    ((Number) insulationThenAmps[i]).doubleValue(),
                    (double[]) insulationThenAmps[i + 1]);
        }
        return columns;
    }

    private static double[] gauges(final int... numbers) {
        return Arrays.stream(numbers).mapToDouble(OwnTables::gauge).toArray();
    }

    /** Area of a gauge, mm2: 5 mil times the 39th root of 92 for each number below 36. */
    static double gauge(final int number) {
        final double mm = 0.127 * Math.exp((36 - number) / 39.0 * Math.log(92));
        return Math.PI * mm * mm / 4;
    }

    /** The next rating at or above; NaN above the last. */
    static double next(final double[] series, final double amps) {
        return Arrays.stream(series).filter(r -> r >= amps * (1 - 1e-9)).min().orElse(Double.NaN);
    }

    /** The next rating of blades, else of the next larger series that reaches it. */
    static double nextInAny(final double amps) {
        for (final double[] series : List.of(BLADE, MAXI, STRIP_30, STRIP_51)) {
            if (amps <= series[series.length - 1] * (1 + 1e-9)) {
                return next(series, amps);
            }
        }
        return Double.NaN;
    }

    static double company(final int conductors) {
        if (conductors <= 2) {
            return 1;
        }
        if (conductors <= 3) {
            return 0.7;
        }
        if (conductors <= 6) {
            return 0.6;
        }
        return conductors <= 24 ? 0.5 : 0.4;
    }

    static double warmth(final double insulation, final double ambient) {
        return ambient <= 30 ? 1 : Math.sqrt((insulation - ambient) / (insulation - 30));
    }
}
