-- SPDX-License-Identifier: MIT
-- Log, drafts and settings: the only tables that are ever migrated. Current tables are generated.
CREATE TABLE setting (
    key   TEXT PRIMARY KEY, -- programme, install_token, declaration ...
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE stream (
    local INTEGER PRIMARY KEY, -- short number used in this file only
    id    BLOB NOT NULL UNIQUE -- 16 bytes, hash of the public key
) STRICT;

CREATE TABLE change (
    stream INTEGER NOT NULL REFERENCES stream (local),
    seq    INTEGER NOT NULL, -- 1, 2, 3 without gaps
    record BLOB NOT NULL,    -- 16 bytes
    body   TEXT NOT NULL,    -- canonical JSON, kept byte for byte
    PRIMARY KEY (stream, seq)
) STRICT, WITHOUT ROWID;

CREATE INDEX change_record ON change (record);

CREATE TABLE draft (
    key  TEXT PRIMARY KEY, -- what is being entered: "visit/<trap>", "set-up"
    body TEXT NOT NULL     -- JSON of the view model
) STRICT, WITHOUT ROWID;
