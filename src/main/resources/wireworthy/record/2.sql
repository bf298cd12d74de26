-- Which screens of which lessons were read.
CREATE TABLE reading (
    person INTEGER NOT NULL REFERENCES person (id),
    lesson TEXT NOT NULL,
    screen INTEGER NOT NULL,
    read INTEGER NOT NULL,        -- 0 or 1
    PRIMARY KEY (person, lesson, screen)
);
