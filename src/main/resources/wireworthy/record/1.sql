-- Who answered what, and when.
CREATE TABLE person (
    id INTEGER PRIMARY KEY,
    code TEXT NOT NULL UNIQUE
);
CREATE TABLE answer (
    id INTEGER PRIMARY KEY,
    at INTEGER NOT NULL,          -- milliseconds since 1970, UTC
    person INTEGER NOT NULL REFERENCES person (id),
    bank TEXT NOT NULL,
    version INTEGER NOT NULL,
    template TEXT NOT NULL,
    seed INTEGER NOT NULL,
    skill TEXT NOT NULL,
    difficulty INTEGER NOT NULL,
    asked TEXT NOT NULL,
    typed TEXT NOT NULL,
    understood TEXT NOT NULL,
    sound INTEGER,                -- NULL where the figure could not be read
    aided INTEGER NOT NULL,
    slips TEXT NOT NULL,          -- alternatives parted by spaces, pairs joined by +
    seconds REAL NOT NULL
);
CREATE INDEX answer_person ON answer (person, id);
