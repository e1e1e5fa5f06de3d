-- Files that anybody may read: a programme's bulletins. Each replaces the one of its name.
CREATE TABLE publication (
  programme BLOB NOT NULL,
  name TEXT NOT NULL,
  hash BLOB NOT NULL,        -- of its bytes
  put_by BLOB NOT NULL,      -- the stream that handed it over
  put_ms INTEGER NOT NULL,
  bytes BLOB NOT NULL,
  PRIMARY KEY (programme, name)
) STRICT;
