-- Files that anybody may read: a programme's bulletins. Each replaces the one of its name.
CREATE TABLE publication (
  programme BYTEA NOT NULL,
  name TEXT NOT NULL,
  hash BYTEA NOT NULL,        -- of its bytes
  put_by BYTEA NOT NULL,      -- the stream that handed it over
  put_ms BIGINT NOT NULL,
  bytes BYTEA NOT NULL,
  PRIMARY KEY (programme, name)
);
