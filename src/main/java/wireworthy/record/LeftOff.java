package wireworthy.record;

/**
 * Where a person left off. An empty text stands for nowhere yet.
 *
 * @param place the id of the place last open
 * @param lesson the id of the lesson last open
 * @param screen of that lesson, from 0
 * @param topic the bank last practised; empty where all were
 * @param problem the problem that was being worked, as the window names it
 * @param part of the evening class last open
 */
public record LeftOff(
        String place, String lesson, int screen, String topic, String problem, String part) {
    /** Before the first start. */
    public static final LeftOff NOWHERE = new LeftOff("", "", 0, "", "", "");

    public LeftOff {
        screen = Math.max(0, screen);
    }

    public LeftOff withPlace(final String id) {
        return new LeftOff(id, lesson, screen, topic, problem, part);
    }

    /** At the top of a lesson. */
    public LeftOff withLesson(final String id) {
        return new LeftOff(place, id, 0, topic, problem, part);
    }

    public LeftOff withScreen(final int number) {
        return new LeftOff(place, lesson, number, topic, problem, part);
    }

    public LeftOff withProblem(final String ofTopic, final String name) {
        return new LeftOff(place, lesson, screen, ofTopic, name, part);
    }

    public LeftOff withPart(final String key) {
        return new LeftOff(place, lesson, screen, topic, problem, key);
    }
}
