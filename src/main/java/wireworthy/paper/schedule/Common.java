package wireworthy.paper.schedule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.facts.Source;
import wireworthy.paper.Block;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.working.Assumed;
import wireworthy.working.Line;

/** What many parts of a schedule would repeat: it is said once, with the exceptions named. */
final class Common {
    /** Where more than one circuit in four is an exception, each says it for itself. */
    private static final int ONE_IN = 4;

    private static final int FEW = 3;

    private final List<CheckedCircuit> circuits;
    private final List<String> sources;

    /** What most circuits take for granted, with those that don't. */
    private final Map<String, List<String>> shared;

    Common(final CheckedVehicle checked) {
        circuits = checked.circuits();
        sources =
                Stream.concat(
                                circuits.stream().map(CheckedCircuit::working),
                                Stream.of(checked.main().working(), checked.supply().working()))
                        .flatMap(List::stream)
                        .map(Line::source)
                        .flatMap(Optional::stream)
                        .map(Source::text)
                        .distinct()
                        .toList();
        shared = shared();
    }

    private Map<String, List<String>> shared() {
        final Map<String, List<String>> without = new LinkedHashMap<>();
        circuits.stream()
                .flatMap(each -> each.assumed().stream())
                .map(Assumed::text)
                .distinct()
                .forEach(text -> without.put(text, without(text)));
        without.values().removeIf(this::isRare);
        return without;
    }

    private List<String> without(final String text) {
        return circuits.stream()
                .filter(each -> each.assumed().stream().noneMatch(it -> it.text().equals(text)))
                .map(each -> each.circuit().name())
                .toList();
    }

    private boolean isRare(final List<String> without) {
        final int having = circuits.size() - without.size();
        final int most = Math.max(FEW, circuits.size() / ONE_IN);
        return having < 2 || having <= without.size() || without.size() > most;
    }

    /** What one circuit alone takes for granted, or few do. */
    List<Assumed> own(final List<Assumed> assumed) {
        return assumed.stream().filter(each -> !shared.containsKey(each.text())).toList();
    }

    /** Under which number the source of a line stands; empty where it has none. */
    String source(final Line line) {
        return line.source().map(it -> String.valueOf(1 + sources.indexOf(it.text()))).orElse("");
    }

    /** What holds for the circuits together. */
    void into(final Block page) {
        page.say("h2", Words.of("common"));
        final Block list = page.add("ul");
        list.say("li", Words.of("common.sources"));
        if (circuits.stream().anyMatch(each -> each.fuse().between().size() > 1)) {
            list.say("li", Words.of("common.fuses"));
        }
        assumed().forEach(text -> list.say("li", text));
    }

    private List<String> assumed() {
        final Map<List<String>, String> byExceptions = new LinkedHashMap<>();
        shared.forEach(
                (text, without) -> byExceptions.merge(without, text, (a, b) -> a + "; " + b));
        final List<String> said = new ArrayList<>();
        byExceptions.forEach((without, texts) -> said.add(assumed(without, texts)));
        return said;
    }

    private static String assumed(final List<String> without, final String texts) {
        final String words =
                Words.of(without.isEmpty() ? "common.assumed" : "common.assumed.but")
                        .replace("{list}", texts);
        final String names =
                without.stream().map("\"%s\""::formatted).collect(Collectors.joining(", "));
        return words.replace("{circuits}", names);
    }

    /** The sources by their numbers. */
    void sources(final Block page) {
        if (!sources.isEmpty()) {
            final Block part = page.add("div", "kept");
            part.say("h2", Words.of("sources"));
            final Block list = part.add("ol");
            sources.forEach(text -> list.say("li", text));
        }
    }
}
