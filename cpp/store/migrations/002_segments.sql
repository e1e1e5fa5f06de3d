-- SPDX-License-Identifier: MIT
-- What came from or goes to other devices: signed segments, kept byte for byte. Changes of the own stream stand in `change` until
-- they are sealed into one.
CREATE TABLE segment (
    id        INTEGER PRIMARY KEY,
    stream    INTEGER NOT NULL REFERENCES stream (local),
    first     INTEGER NOT NULL,
    last      INTEGER NOT NULL,
    hash      BLOB NOT NULL UNIQUE, -- 32 bytes, the segment's id
    previous  BLOB NOT NULL,        -- 32 bytes, of the segment before it in its stream
    whole     INTEGER NOT NULL,     -- 0: some changes are left out
    waits     INTEGER NOT NULL,     -- 1: the one before it is not here, its changes are not used yet
    signature BLOB NOT NULL,
    header    BLOB NOT NULL,
    payload   BLOB NOT NULL         -- zstd
) STRICT;

CREATE INDEX segment_stream ON segment (stream, first);

-- Where the changes of a record stand in segments that are used.
CREATE TABLE sealed (
    record  BLOB NOT NULL,
    segment INTEGER NOT NULL REFERENCES segment (id),
    line    INTEGER NOT NULL, -- 0, 1, 2
    PRIMARY KEY (record, segment, line)
) STRICT, WITHOUT ROWID;

-- The highest number of each stream that others cite.
CREATE TABLE cited (
    stream BLOB PRIMARY KEY, -- 16 bytes
    seq    INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- Which segments went where: "folder:<path>", "hub:<address>", "file".
CREATE TABLE passed_on (
    segment INTEGER NOT NULL REFERENCES segment (id),
    route   TEXT NOT NULL,
    at_ms   INTEGER NOT NULL,
    PRIMARY KEY (segment, route)
) STRICT, WITHOUT ROWID;

-- What was refused, with the reason; its bytes lie beside the store.
CREATE TABLE kept_aside (
    hash   BLOB PRIMARY KEY, -- 32 bytes, of the bytes refused
    origin TEXT NOT NULL,
    reason TEXT NOT NULL,
    at_ms  INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
