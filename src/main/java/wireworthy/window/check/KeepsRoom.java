package wireworthy.window.check;

/** A part that keeps the room it has once taken while one types. */
interface KeepsRoom {
    /** Takes no more room than what is said now. */
    void giveBack();
}
