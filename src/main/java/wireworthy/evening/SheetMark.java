package wireworthy.evening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/**
 * The mark of a sheet: its plan and a digest of the banks, as signs in groups of four. 20 signs
 * where problems are picked by skill, up to {@value Signs#MOST} where they are picked one by one.
 */
final class SheetMark {
    private static final int KINDS = 8;
    private static final int SKILLS = 0;
    private static final int TEMPLATES = 1;
    private static final int LISTED = 16;
    private static final int GROUP = 4;
    private static final int DIGESTS = 1 << BankSet.DIGEST_BITS;

    /** Marks that were printed count on the order of these. */
    private static final List<Skill> ALL_SKILLS = List.of(Skill.values());

    private static final List<Difficulty> DIFFICULTIES = List.of(Difficulty.values());
    private static final List<SystemVoltage> VOLTAGES = List.of(SystemVoltage.values());
    private static final List<WireSizes> SIZES = List.of(WireSizes.values());

    private final Shelf shelf;

    SheetMark(final Shelf shelf) {
        this.shelf = shelf;
    }

    /** The mark of a plan. */
    String text(final SheetPlan plan) {
        final int[] all = Signs.checked(elements(plan));
        final StringBuilder text = new StringBuilder();
        for (int i = 0; i < all.length; i++) {
            text.append(i > 0 && i % GROUP == 0 ? "-" : "").append(Signs.sign(all[i]));
        }
        return text.toString();
    }

    private int[] elements(final SheetPlan plan) {
        final BankSet banks = shelf.banks(plan.ownBanks());
        final boolean skills = plan.pick() instanceof Pick.BySkills;
        final Packed packed =
                new Packed()
                        .put(skills ? SKILLS : TEMPLATES, KINDS)
                        .put(plan.ownBanks() ? 1 : 0, 2)
                        .put(banks.digest(), DIGESTS)
                        .put(plan.seed(), SheetPlan.SEEDS)
                        .put(plan.learners() - 1, SheetPlan.MOST_LEARNERS)
                        .put(plan.ownNumbers() ? 1 : 0, 2);
        if (plan.pick() instanceof Pick.BySkills by) {
            put(by, packed);
        } else if (plan.pick() instanceof Pick.ByTemplates by) {
            put(by, banks, packed);
        }
        return packed.elements(whole(packed.elements() + Signs.CHECKS) - Signs.CHECKS);
    }

    private static int whole(final int signs) {
        return (signs + GROUP - 1) / GROUP * GROUP;
    }

    private static void put(final Pick.BySkills by, final Packed packed) {
        putSet(by.skills(), ALL_SKILLS, packed);
        packed.put(by.problems() - 1, Pick.MOST_PROBLEMS);
        putSet(by.difficulties(), DIFFICULTIES, packed);
        packed.put(by.sizes().map(SIZES::indexOf).orElse(SIZES.size()), SIZES.size() + 1);
        putSet(by.voltages(), VOLTAGES, packed);
    }

    private static void put(final Pick.ByTemplates by, final BankSet banks, final Packed packed) {
        packed.put(Math.min(by.ids().size(), LISTED - 1), LISTED);
        by.ids().forEach(id -> packed.put(place(banks, id), banks.templates().size()));
        if (by.ids().size() >= LISTED || packed.elements() + Signs.CHECKS > Signs.MOST) {
            throw EveningProblem.of("pick.too-many", "problems", by.ids().size());
        }
    }

    private static int place(final BankSet banks, final String id) {
        return banks.templates()
                .indexOf(
                        banks.template(id)
                                .orElseThrow(() -> EveningProblem.of("pick.unknown", "id", id)));
    }

    private static <E> void putSet(final Set<E> chosen, final List<E> all, final Packed packed) {
        all.forEach(each -> packed.put(chosen.contains(each) ? 1 : 0, 2));
    }

    /**
     * The plan that a mark stands for.
     *
     * @param typed capitals or small letters, groups parted by anything that is no sign
     * @throws EveningProblem where it is no mark, or one made from other banks
     */
    SheetPlan plan(final String typed) {
        final int[] all = elements(typed);
        if (all.length <= Signs.CHECKS || all.length > Signs.MOST || !Signs.hold(all)) {
            throw mistyped();
        }
        final SheetPlan plan = plan(Packed.of(Arrays.copyOf(all, all.length - Signs.CHECKS)));
        if (!Arrays.equals(Signs.checked(elements(plan)), all)) {
            throw mistyped();
        }
        return plan;
    }

    private static int[] elements(final String typed) {
        final int[] all =
                typed.chars()
                        .filter(each -> !Character.isWhitespace(each) && each != '-')
                        .limit(Signs.MOST + 1L)
                        .map(each -> Signs.element((char) each))
                        .toArray();
        if (Arrays.stream(all).anyMatch(element -> element < 0)) {
            throw mistyped();
        }
        return all;
    }

    private static EveningProblem mistyped() {
        return EveningProblem.of("mark.mistyped");
    }

    private SheetPlan plan(final Packed packed) {
        final int kind = packed.take(KINDS);
        final boolean own = packed.take(2) == 1;
        if (kind > TEMPLATES) {
            throw EveningProblem.of("mark.newer");
        }
        final BankSet banks = shelf.banks(own);
        if (packed.take(DIGESTS) != banks.digest()) {
            throw EveningProblem.of(own ? "mark.own-banks" : "mark.other-banks");
        }
        final int seed = packed.take(SheetPlan.SEEDS);
        final int learners = packed.take(SheetPlan.MOST_LEARNERS) + 1;
        final boolean ownNumbers = packed.take(2) == 1;
        final Pick pick = kind == SKILLS ? bySkills(packed) : byTemplates(packed, banks);
        return new SheetPlan(pick, ownNumbers, learners, own, seed);
    }

    private static Pick bySkills(final Packed packed) {
        final Set<Skill> skills = takeSet(ALL_SKILLS, packed);
        final int problems = packed.take(Pick.MOST_PROBLEMS) + 1;
        final Set<Difficulty> difficulties = takeSet(DIFFICULTIES, packed);
        final int sizes = packed.take(SIZES.size() + 1);
        return new Pick.BySkills(
                skills,
                problems,
                difficulties,
                sizes == SIZES.size() ? Optional.empty() : Optional.of(SIZES.get(sizes)),
                takeSet(VOLTAGES, packed));
    }

    private static Pick byTemplates(final Packed packed, final BankSet banks) {
        final int count = packed.take(LISTED);
        final List<String> ids = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            ids.add(banks.templates().get(packed.take(banks.templates().size())).fullId());
        }
        return new Pick.ByTemplates(ids);
    }

    private static <E> Set<E> takeSet(final List<E> all, final Packed packed) {
        return all.stream().filter(each -> packed.take(2) == 1).collect(Collectors.toSet());
    }
}
