-- Answers are in the order in which they were given, whatever the clock said: the order of their uid.
DROP INDEX answer_order;
CREATE INDEX answer_turn ON answer (person, uid);
CREATE INDEX answer_at ON answer (person, at);
