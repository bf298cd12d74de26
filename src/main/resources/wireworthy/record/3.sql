-- Ids that stay the same in every copy, so that two records can be put together.
ALTER TABLE answer ADD COLUMN uid TEXT NOT NULL DEFAULT '';
ALTER TABLE answer ADD COLUMN day INTEGER NOT NULL DEFAULT 0;   -- since 1970, where the learner was
ALTER TABLE answer ADD COLUMN suspected TEXT NOT NULL DEFAULT ''; -- pairs, like slips
UPDATE answer SET
    uid = printf('%012x-old-%09d', at, id),
    day = CAST(julianday(date(at / 1000, 'unixepoch', 'localtime')) - 2440587 AS INTEGER);
CREATE UNIQUE INDEX answer_uid ON answer (uid);
CREATE INDEX answer_order ON answer (person, at, uid);
CREATE INDEX answer_line ON answer (person, template, seed);
DROP INDEX answer_person;
ALTER TABLE person ADD COLUMN uid TEXT NOT NULL DEFAULT '';
ALTER TABLE person ADD COLUMN deleted INTEGER;  -- milliseconds since 1970; NULL while there
ALTER TABLE person ADD COLUMN turn INTEGER NOT NULL DEFAULT 0;  -- raised when answers came in or went
UPDATE person SET uid = lower(hex(randomblob(16)));
CREATE UNIQUE INDEX person_uid ON person (uid);
-- Where a person stood after the answers up to one; worked anew from the answers where it is missing.
CREATE TABLE standing (
    person INTEGER PRIMARY KEY REFERENCES person (id),
    form INTEGER NOT NULL,
    turn INTEGER NOT NULL,
    answer INTEGER NOT NULL,      -- the highest id that is in it
    at INTEGER NOT NULL,          -- of the last in order of time
    uid TEXT NOT NULL,
    text TEXT NOT NULL
);
-- How each skill stood at the end of each day on which it was answered.
CREATE TABLE daily (
    person INTEGER NOT NULL REFERENCES person (id),
    day INTEGER NOT NULL,
    skill TEXT NOT NULL,
    tries INTEGER NOT NULL,
    unaided INTEGER NOT NULL,     -- of these right without help
    chance REAL NOT NULL,
    state TEXT NOT NULL,
    PRIMARY KEY (person, day, skill)
) WITHOUT ROWID;
-- Ids by which a person was known before two people were put together.
CREATE TABLE alias (
    uid TEXT PRIMARY KEY,
    person INTEGER NOT NULL REFERENCES person (id)
);
