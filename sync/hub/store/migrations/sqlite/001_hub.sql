-- Ids, keys, hashes and streams are their bytes; moments are milliseconds since 1970 in UTC.
CREATE TABLE hub (name TEXT PRIMARY KEY, value BLOB NOT NULL) STRICT;
CREATE TABLE programme (
  programme BLOB PRIMARY KEY,
  name TEXT NOT NULL,
  root BLOB NOT NULL,        -- the founding stream
  epoch INTEGER NOT NULL,    -- another one after a restore
  head INTEGER NOT NULL,     -- segments taken in; the number of the newest
  made_ms INTEGER NOT NULL
) STRICT;
CREATE TABLE founding (
  key BLOB PRIMARY KEY,      -- public key of the founding code
  name TEXT NOT NULL,        -- of the programme to be
  until_ms INTEGER NOT NULL,
  programme BLOB NOT NULL,   -- empty until it is used
  stream BLOB NOT NULL
) STRICT;
CREATE TABLE stream (
  programme BLOB NOT NULL,
  stream BLOB NOT NULL,
  key BLOB NOT NULL,
  last INTEGER NOT NULL,     -- number of the last change, without a gap
  forked INTEGER NOT NULL,
  PRIMARY KEY (programme, stream)
) STRICT;
CREATE TABLE segment (
  programme BLOB NOT NULL,
  at INTEGER NOT NULL,       -- 1, 2, 3 ... in the order of arrival
  stream BLOB NOT NULL,
  first INTEGER NOT NULL,
  last INTEGER NOT NULL,
  id BLOB NOT NULL,
  pushed_by BLOB NOT NULL,
  received_ms INTEGER NOT NULL,
  bytes BLOB NOT NULL,       -- the whole form, as it came
  PRIMARY KEY (programme, at),
  UNIQUE (programme, stream, first, id)
) STRICT;
CREATE TABLE fact (
  programme BLOB NOT NULL,
  at INTEGER NOT NULL,       -- of its segment
  n INTEGER NOT NULL,        -- its place in the segment
  line BLOB NOT NULL,        -- a change that says who may what
  PRIMARY KEY (programme, at, n)
) STRICT;
CREATE TABLE invitation (
  key BLOB NOT NULL,         -- public key of an invitation into a programme
  programme BLOB NOT NULL,
  PRIMARY KEY (key, programme)
) STRICT;
CREATE TABLE token (
  programme BLOB NOT NULL,
  stream BLOB NOT NULL,
  handle BLOB NOT NULL,      -- first 8 bytes of the hash
  hash BLOB NOT NULL,
  made_ms INTEGER NOT NULL,
  PRIMARY KEY (programme, stream)
) STRICT;
CREATE INDEX token_handle ON token (handle);
CREATE TABLE nonce (nonce BLOB PRIMARY KEY, until_ms INTEGER NOT NULL) STRICT; -- those used
CREATE TABLE aside (
  programme BLOB NOT NULL,
  file BLOB NOT NULL,        -- hash of its bytes
  stream BLOB NOT NULL,
  first INTEGER NOT NULL,
  last INTEGER NOT NULL,
  id BLOB NOT NULL,
  reason TEXT NOT NULL,
  pushed_by BLOB NOT NULL,
  received_ms INTEGER NOT NULL,
  bytes BLOB NOT NULL,
  PRIMARY KEY (programme, file)
) STRICT;
CREATE TABLE photograph (
  programme BLOB NOT NULL,
  photograph BLOB NOT NULL,  -- hash of its content
  size INTEGER NOT NULL,
  held INTEGER NOT NULL,     -- bytes from the beginning
  whole INTEGER NOT NULL,    -- 1 when all is there and the hash agrees
  made_ms INTEGER NOT NULL,
  PRIMARY KEY (programme, photograph)
) STRICT;
CREATE TABLE photograph_part (
  programme BLOB NOT NULL,
  photograph BLOB NOT NULL,
  start INTEGER NOT NULL,
  bytes BLOB NOT NULL,
  PRIMARY KEY (programme, photograph, start)
) STRICT;
CREATE TABLE audit (
  programme BLOB NOT NULL,
  at_ms INTEGER NOT NULL,
  id BLOB NOT NULL,
  stream BLOB NOT NULL,      -- who; empty when nobody is known
  what TEXT NOT NULL,
  detail TEXT NOT NULL,
  PRIMARY KEY (programme, at_ms, id)
) STRICT;
