package wireworthy.practice;

import wireworthy.rules.Skill;

/** How a simulated learner really learns; what the program knows of it is only the answers. */
interface Truth {
    /** How likely a try of this difficulty goes right now. */
    double chance(Skill skill, double difficulty);

    /** What a try leaves behind. */
    void tried(Skill skill, boolean right);

    /** A day goes by. */
    void night();
}
