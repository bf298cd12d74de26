package wireworthy.practice;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How a given of a template comes by its figure. */
public sealed interface Given {

    /** A given that stands for one figure or name. */
    sealed interface Single extends Given {}

    /** Always the same. */
    record Fixed(String text) implements Single {}

    /** One of the figures from, from + step, ... up to the end, each with the unit. */
    record Range(BigDecimal from, BigDecimal step, int count, String unit) implements Single {
        /** The figure at a place of the grid, as one would type it. */
        public String at(final int place) {
            final BigDecimal value =
                    from.add(step.multiply(BigDecimal.valueOf(place))).stripTrailingZeros();
            return (value.toPlainString() + " " + unit).strip();
        }
    }

    /** One of a few. */
    record Choice(List<String> of) implements Single {
        public Choice {
            of = List.copyOf(of);
        }
    }

    /** The sections one can buy. */
    record Sections(List<String> texts) implements Given {
        public Sections {
            texts = List.copyOf(texts);
        }
    }

    /** The loads of a list, each with its entries in the order of the file. */
    record Loads(List<Map<String, Single>> loads) implements Given {
        public Loads {
            loads = loads.stream().map(Given::ordered).toList();
        }
    }

    /** An unchangeable copy that keeps its order, as numbers are drawn in that order. */
    static <T> Map<String, T> ordered(final Map<String, T> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
