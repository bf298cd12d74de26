package wireworthy.marking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Asking;
import wireworthy.working.Danger;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** What is said of an answer, what is asked first, and what earlier answers change. */
class MarkingTest {
    private static final Ref DROP = Ref.circuit(Quantity.DROP);
    private static final Ref LOOP_RESISTANCE = Ref.circuit(Quantity.LOOP_RESISTANCE);

    /** 0.55 V lost in the cable. */
    private static final String CABLE =
            "'supply-voltage': '12 V', 'circuit-current': '8 A', 'one-way-length': '5 m',"
                    + " 'section': '2.5 mm2'";

    /** The cable counted one way, then the current squared. */
    private static final String TWO_SLIPS = "2.202 V";

    private static final List<String> PAIR = List.of("one-way-length", "current-squared");

    private final Worked cable = worked(CABLE, "drop");

    private static Worked worked(final String given, final String find) {
        return Asking.worked(
                "{'given': {%s}, 'find': '%s'}".formatted(given, find).replace('\'', '"'));
    }

    private static List<String> first(final Mark mark) {
        return Marker.ids(mark).get(0);
    }

    @Test
    void twoSlipsAreNotSaidOnOneFigureButALineIsAskedFor() {
        final Mark mark = Marker.mark(cable, DROP, TWO_SLIPS);

        assertThat(mark.explained()).isEmpty();
        assertThat(Marker.suspectedIds(mark)).contains(PAIR);
        assertThat(mark.ask()).hasValue(Ref.circuit(Quantity.LOOP_LENGTH));
        assertThat(mark.explanation()).endsWith("What did you get for the loop length?");
    }

    @Test
    void whileALineIsAskedForTheDangerIsSaidWithoutTheAnswer() {
        final Mark asked = Marker.mark(cable, DROP, "0.275 V");
        assertThat(asked.ask()).isPresent();
        assertThat(asked.explanation())
                .contains("the load would get fewer volts than expected and may not run.")
                .doesNotContain("0.55");

        final Mark settled = Marker.mark(cable, DROP, "0.2752 V");
        assertThat(settled.ask()).isEmpty();
        assertThat(settled.explanation()).contains("may not run: the sum gives 0.5504 V.");
    }

    @Test
    void aLineKeptInFullTellsTheSecondSlipFromTheFirst() {
        final List<Mark> marks =
                Marker.marks(cable, Map.of(LOOP_RESISTANCE, "0.0344", DROP, TWO_SLIPS));

        assertThat(first(marks.get(0))).containsExactly("one-way-length");
        assertThat(first(marks.get(1))).containsExactly("current-squared");
    }

    /** Rounded to two figures, the line gives another drop than the learner went on with. */
    @Test
    void aRoundedLineConfirmsThePair() {
        final List<Mark> marks =
                Marker.marks(cable, Map.of(LOOP_RESISTANCE, "0.034", DROP, TWO_SLIPS));

        assertThat(Marker.ids(marks.get(1))).containsExactly(PAIR);
        assertThat(marks.get(1).explanation())
                .startsWith(
                        "2.202 V comes out of two slips in one working: the cable counted one way,"
                                + " and further on the current squared. Begin at the loop length");
    }

    @Test
    void aPairThatFitsTwiceIsSaid() {
        final Evidence evidence = Evidence.of(List.of(), Set.of(PAIR));
        final Mark mark = Marker.mark(cable, DROP, TWO_SLIPS, evidence);

        assertThat(Marker.ids(mark)).containsExactly(PAIR);
        assertThat(mark.ask()).isEmpty();
    }

    /** Directions turned round: what is asked stands where a given usually does. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "'load-current': '4.5 A', 'supply-voltage': '12.7 V' | load-power | 2.82 W"
                        + " | divided-for-product",
                "'load-current': '4.5 A', 'supply-voltage': '12.7 V' | load-power | 0.354 W"
                        + " | divided-for-product",
                "'supply-current': '40 A', 'supply-voltage': '12 V', 'efficiency': '80 %'"
                        + " | load-power | 480 W | efficiency-left-out",
                "'supply-current': '40 A', 'supply-voltage': '12 V', 'efficiency': '80 %'"
                        + " | load-power | 600 W | divided-for-product",
                "'load-power': '220 W', 'supply-voltage': '12 V', 'supply-current': '24 A'"
                        + " | efficiency | 131 % | quotient-turned-over",
                "'voltage': '12.2 V', 'current': '2.6 A' | resistance | 31.7 ohm"
                        + " | multiplied-for-quotient",
                "'voltage': '12.2 V', 'current': '2.6 A' | resistance | 0.213 ohm"
                        + " | quotient-turned-over",
                "'power': '93 W', 'time': '1 h 30 min' | energy | 62 Wh | divided-for-product",
                "'bank-capacity': '117 Ah', 'bank-voltage': '12.8 V' | bank-energy | 9.141 Wh"
                        + " | divided-for-product",
                "'drop-percent': '5.2 %', 'supply-voltage': '25.7 V' | drop | 4.942 V"
                        + " | divided-for-product",
                "'drop-percent': '5.2 %', 'supply-voltage': '25.7 V' | drop | 133.6 V"
                        + " | percent-not-divided",
                "'supply-voltage': '12.6 V', 'internal-resistance': '8.2 mohm'"
                        + " | short-circuit-current | 0.1033 A | ohm-multiplied"
            })
    void theSlipOfADirectionTurnedRoundIsNamed(
            final String given, final String find, final String typed, final String slip) {
        final Worked asked = worked(given, find);
        final Ref ref = Ref.circuit(asked.question().find().get(0));

        assertThat(first(Marker.mark(asked, ref, typed))).containsExactly(slip);
    }

    @Test
    void aDaysWattHoursDividedByTheVoltsAreNamed() {
        final Worked day =
                Asking.worked(
                        """
                        {"given": {"supply-voltage": "12 V", "loads": [
                          {"name": "till", "current": "2.3 A", "share-of-time": "30 %"},
                          {"name": "fridge", "current": "4.1 A", "share-of-time": "45 %"}]},
                         "find": "daily-energy"}
                        """);
        final Ref energy = Ref.circuit(Quantity.DAILY_ENERGY);

        assertThat(first(Marker.mark(day, energy, "5.07 Wh")))
                .containsExactly("divided-for-product");
    }

    @Test
    void slipsMadeLatelyComeFirst() {
        final Worked lamp =
                worked("'load-power': '65 W', 'supply-voltage': '12 V'", "load-current");
        final Ref current = Ref.circuit(Quantity.LOAD_CURRENT);
        final List<String> usual = List.of("mains-voltage");
        final List<String> lately = List.of("power-of-ten");
        final Evidence evidence = Evidence.of(List.of(lately, lately, usual), List.of());

        assertThat(Marker.ids(Marker.mark(lamp, current, "0.54 A"))).containsExactly(usual, lately);
        assertThat(Marker.ids(Marker.mark(lamp, current, "0.54 A", evidence)))
                .containsExactly(lately, usual);
    }

    @Test
    void aFigureOfFewDigitsIsAskedAboutFirst() {
        final Mark three = Marker.mark(cable, DROP, "0.275 V");

        assertThat(first(three)).containsExactly("one-way-length");
        assertThat(three.ask()).hasValue(Ref.circuit(Quantity.LOOP_LENGTH));
        assertThat(three.explanation())
                .startsWith(
                        "0.275 V would come out with the cable counted one way."
                                + " To be sure: what did you get for the loop length?");
        assertThat(Marker.mark(cable, DROP, "0.2752 V").ask()).isEmpty();
    }

    @Test
    void aSlipMadeLatelyNeedsNoQuestion() {
        final Evidence evidence = Evidence.of(List.of(List.of("one-way-length")), List.of());

        assertThat(Marker.mark(cable, DROP, "0.275 V", evidence).ask()).isEmpty();
    }

    @Test
    void theLineAskedForSettlesItEitherWay() {
        final Ref length = Ref.circuit(Quantity.LOOP_LENGTH);
        final Mark made = Marker.marks(cable, Map.of(length, "5 m", DROP, "0.275 V")).get(1);
        final Mark chance = Marker.marks(cable, Map.of(length, "10 m", DROP, "0.275 V")).get(1);

        assertThat(made.follows()).isTrue();
        assertThat(chance.explained()).isEmpty();
        assertThat(chance.diagnosis().open()).hasValue(LOOP_RESISTANCE);
    }

    /** In a sum of one line, what was read into a given is all that can be asked for. */
    @Test
    void aGivenThatMayHaveBeenMisreadIsAskedFor() {
        final Worked lamp =
                worked("'load-power': '650 mW', 'supply-voltage': '12 V'", "load-current");
        final Ref power = Ref.circuit(Quantity.LOAD_POWER);
        final Ref current = Ref.circuit(Quantity.LOAD_CURRENT);

        assertThat(Marker.mark(lamp, current, "7800").ask()).hasValue(power);
        final List<Mark> marks = Marker.marks(lamp, Map.of(power, "650 W", current, "7800"));
        assertThat(first(marks.get(0))).containsExactly("milli-as-unit");
        assertThat(first(marks.get(1))).containsExactly("power-times-volts");
    }

    /** Volts times watts, and ten times that: there is no line in between to ask for. */
    @Test
    void aMovedPointInASumOfOneLineIsLookedAtOnceMore() {
        final Worked lamp =
                worked("'load-power': '65 W', 'supply-voltage': '12 V'", "load-current");
        final Ref current = Ref.circuit(Quantity.LOAD_CURRENT);
        final Mark both = Marker.mark(lamp, current, "7800");

        assertThat(both.explained()).isEmpty();
        assertThat(both.asksAgain()).isTrue();
        assertThat(both.explanation())
                .endsWith(
                        "even with twice the load power it would be no more than 10.83 A. Roughly how"
                                + " large must the load current be? Look where its decimal point"
                                + " belongs and type it once more.");
        assertThat(first(Marker.mark(lamp, current, "780"))).containsExactly("power-times-volts");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    drop | 15 V | 15 V lost would be more than the supply has, 12 V.
                    drop | 550 | 550 V would be right in millivolts.
                    drop | 0.0541 V | 0.0541 V is about ten times too small.
                    drop | 54.1 V | 54.1 V is about a hundred times too large.
                    drop | 548 V | 548 V is about a thousand times too large.
                    drop | 0.155 V | 0.155 V is too little. A rough check: with only half the one-way length it would still be
                    voltage-at-load | 12.3 V | 12.3 V at the load would be more than at the source
                    drop-percent | 140 % | 140 % would be more than all of the supply.
                    drop-percent | 0.55 | 0.55 % has the number of the drop, 0.5504 V.
                    fuse | 12 A | 12 A is no rating that such fuses are made in.
                    fuse | 3 A | 3 A is below the current that flows in use, 8 A.
                    fuse | 40 A | A fuse of 40 A could let the cable overheat, even start a fire
                    drop | 0.777 V | No known slip gives 0.777 V. Open the working at
                    """)
    void whatNoSlipGivesIsCheckedForUnitSizeAndDirection(
            final String find, final String typed, final String says) {
        final Ref asked = Ref.circuit(Quantity.of(find).orElseThrow());
        final Mark mark = Marker.mark(worked(CABLE, find), asked, typed);

        assertThat(mark.explained()).isEmpty();
        assertThat(mark.explanation()).contains(says);
    }

    @Test
    void aLongerRunCantNeedAThinnerCable() {
        final String run = "'supply-voltage': '12 V', 'circuit-current': '8 A',";
        final Worked longRun = worked(run + "'one-way-length': '9 m'", "section-for-drop");
        final Mark mark = Marker.mark(longRun, Ref.circuit(Quantity.SECTION_FOR_DROP), "3.1 mm2");

        assertThat(mark.explanation())
                .contains("a run half as long would already need 3.44 mm²")
                .startsWith("Planned with 3.1 mm², the cable could overheat");
        assertThat(mark.danger()).hasValue(Danger.FIRE);
    }

    @Test
    void moreCantComeOutThanGoesIn() {
        final Worked behind =
                worked(
                        "'load-power': '65 W', 'supply-voltage': '12 V', 'efficiency': '85 %'",
                        "supply-current");
        final Mark mark = Marker.mark(behind, Ref.circuit(Quantity.SUPPLY_CURRENT), "5.1 A");

        assertThat(mark.explanation()).contains("with no losses at all, 5.417 A");
    }

    @Test
    void lessThanNothingIsUnsoundAndAskedBack() {
        final Mark mark = Marker.mark(cable, DROP, "-0.55 V");

        assertThat(mark.sound()).hasValue(false);
        assertThat(mark.asksBack()).isTrue();
        assertThat(mark.explanation()).startsWith("-0.55 V is less than nothing");
    }

    @Test
    void anAbsurdFigureCostsNobodyMoney() {
        final Ref current = Ref.circuit(Quantity.LOAD_CURRENT);
        final Worked lamp =
                worked("'load-power': '65 W', 'supply-voltage': '12 V'", "load-current");

        assertThat(Marker.mark(lamp, current, "88000000").explanation())
                .contains("more than a million times off")
                .doesNotContain("costs");
    }

    /** 1587 Wh put down as 1590 Wh and worked on with in full. */
    @Test
    void aLineKeptInThreeFiguresIsStillTheLearnersOwn() {
        final Worked fridge =
                worked(
                        "'bank-capacity': '155 Ah', 'bank-voltage': '12.8 V',"
                                + " 'usable-share': '80 %', 'efficiency': '85 %',"
                                + " 'load-power': '85 W'",
                        "runtime");
        final Ref energy = Ref.circuit(Quantity.USABLE_ENERGY);
        final Ref runtime = Ref.circuit(Quantity.RUNTIME);
        final List<Mark> marks = Marker.marks(fridge, Map.of(energy, "1590 Wh", runtime, "952 h"));

        assertThat(marks.get(0).isSound()).isTrue();
        assertThat(first(marks.get(1))).containsExactly("hours-as-minutes");
    }

    @Test
    void theSumThatWentWrongRepeatsNoFigureAndSaysWhereItLeads() {
        final Worked lamp =
                worked("'load-power': '65 W', 'supply-voltage': '12 V'", "load-current");
        final Worked feed =
                worked(
                        "'load-power': '65 W', 'supply-voltage': '12 V',"
                                + " 'one-way-length': '5 m', 'section': '2.5 mm2'",
                        "drop");

        assertThat(Marker.mark(lamp, Ref.circuit(Quantity.LOAD_CURRENT), "780 A").explanation())
                .contains("by the volts. Here: 65 × 12. Watts");
        assertThat(Marker.mark(feed, DROP, "0.03106 V").explanation())
                .contains("Here: 65 ÷ 12² = 0.4514 A; worked on from there, 0.03106 V. The");
    }

    @Test
    void oneMisreadingIsToldOnce() {
        final Worked mat =
                worked("'resistance': '1240 mohm', 'supply-voltage': '12 V'", "load-current");
        final Mark mark = Marker.mark(mat, Ref.circuit(Quantity.LOAD_CURRENT), "0.009677 A");

        assertThat(Marker.ids(mark))
                .containsExactly(List.of("milli-as-unit"), List.of("milliohm-as-ohm"));
        assertThat(mark.explanation())
                .contains("0.009677 A comes out when milliohms are taken as ohms.");
    }

    @Test
    void aFormulaTooLongToReadGivesWayToItsNumbers() {
        final Worked day =
                worked(
                        "'supply-voltage': '12 V', 'loads': ["
                                + "{'name': 'till', 'current': '1.7 A', 'share-of-time': '45 %'},"
                                + "{'name': 'lamp', 'current': '3.7 A', 'share-of-time': '45 %'}]",
                        "daily-energy");
        final Mark mark = Marker.mark(day, Ref.circuit(Quantity.DAILY_ENERGY), "473 Wh");

        assertThat(mark.explanation())
                .startsWith(
                        "No known slip gives 473 Wh. Open the working at the daily energy: 24 ×")
                .doesNotContain("share of time of");
    }

    @Test
    void noFigureIsSaidTwiceInTwoRoundings() {
        final Ref current = Ref.circuit(Quantity.LOAD_CURRENT);
        final Worked lamp =
                worked("'load-power': '65 W', 'supply-voltage': '12 V'", "load-current");

        assertThat(Marker.mark(lamp, current, "7.77 A").explanation())
                .contains("here 65 ÷ 12.", "5.417 A")
                .doesNotContain("5.42");
    }

    @Test
    void aGivenMisreadInItsUnitIsTheLineWhereTheWorkingsPart() {
        final Ref current = Ref.circuit(Quantity.LOAD_CURRENT);
        final Worked lamp =
                worked("'resistance': '1400 mohm', 'supply-voltage': '12.3 V'", "load-current");
        final Mark mark = Marker.mark(lamp, current, "8.79 mA");
        final Comparison beside = Comparison.of(lamp, current, mark.explained().get(0));

        assertThat(beside.partsAt()).hasValue(0);
        assertThat(beside.rows().get(0).sound().numbers()).isEqualTo("1400 mΩ = 1.4 Ω");
        assertThat(beside.rows().get(0).wrong()).hasValue("1400 mΩ = 1400 Ω");
        assertThat(beside.rows()).extracting(Comparison.Row::parts).containsExactly(true, false);
    }

    @Test
    void aGivenIsPutIntoTheUnitOfTheSumsWhereAHandierOneWouldBeShown() {
        final Ref resistance = Ref.circuit(Quantity.RESISTANCE);
        final Worked shunt =
                worked("'resistance': '0.7 mohm', 'load-current': '90 A'", "load-power");

        assertThat(Telling.given(shunt, resistance, 0.0007, "resistance").numbers())
                .isEqualTo("0.7 mΩ = 0.0007 Ω");
    }

    @Test
    void theWorkingsPartAtEachOfTwoSlips() {
        final Evidence evidence = Evidence.of(List.of(), Set.of(PAIR));
        final Mark mark = Marker.mark(cable, DROP, TWO_SLIPS, evidence);
        final Comparison beside = Comparison.of(cable, DROP, mark.explained().get(0));

        assertThat(beside.partsAt()).hasValue(0);
        assertThat(beside.rows())
                .extracting(Comparison.Row::parts)
                .containsExactly(true, false, true);
        assertThat(beside.rows().get(2).wrong().orElseThrow()).endsWith("= 2.202 V");
    }
}
