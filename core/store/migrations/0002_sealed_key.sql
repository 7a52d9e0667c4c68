-- Sittings that are planned: codes and orders are drawn beforehand and the key to them is sealed.

-- The key to the codes of a planned sitting, and whether it was opened.
CREATE TABLE sealed_key (
    id INTEGER PRIMARY KEY,
    uuid BLOB NOT NULL UNIQUE CHECK (length(uuid) = 16),
    -- the sitting
    tasting INTEGER NOT NULL REFERENCES tasting (id) DEFERRABLE INITIALLY DEFERRED,
    -- number the codes and orders were drawn from
    draw INTEGER NOT NULL,
    -- day it was opened; empty while it is sealed
    opened TEXT CHECK (opened GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
    -- why it was opened before every sheet was in; empty when all were
    reason TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX sealed_key_by_tasting ON sealed_key (tasting);

INSERT INTO finder_kind (number, kind) VALUES (30, 'sealed_key');
