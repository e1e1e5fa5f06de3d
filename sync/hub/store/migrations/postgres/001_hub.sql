-- The same tables as for SQLite; the large ones lie in parts by programme.
-- Ids, keys, hashes and streams are their bytes; moments are milliseconds since 1970 in UTC.
CREATE TABLE hub (name TEXT PRIMARY KEY, value BYTEA NOT NULL);
CREATE TABLE programme (
  programme BYTEA PRIMARY KEY,
  name TEXT NOT NULL,
  root BYTEA NOT NULL,        -- the founding stream
  epoch BIGINT NOT NULL,    -- another one after a restore
  head BIGINT NOT NULL,     -- segments taken in; the number of the newest
  made_ms BIGINT NOT NULL
);
CREATE TABLE founding (
  key BYTEA PRIMARY KEY,      -- public key of the founding code
  name TEXT NOT NULL,        -- of the programme to be
  until_ms BIGINT NOT NULL,
  programme BYTEA NOT NULL,   -- empty until it is used
  stream BYTEA NOT NULL
);
CREATE TABLE stream (
  programme BYTEA NOT NULL,
  stream BYTEA NOT NULL,
  key BYTEA NOT NULL,
  last BIGINT NOT NULL,     -- number of the last change, without a gap
  forked BIGINT NOT NULL,
  PRIMARY KEY (programme, stream)
);
CREATE TABLE segment (
  programme BYTEA NOT NULL,
  at BIGINT NOT NULL,       -- 1, 2, 3 ... in the order of arrival
  stream BYTEA NOT NULL,
  first BIGINT NOT NULL,
  last BIGINT NOT NULL,
  id BYTEA NOT NULL,
  pushed_by BYTEA NOT NULL,
  received_ms BIGINT NOT NULL,
  bytes BYTEA NOT NULL,       -- the whole form, as it came
  PRIMARY KEY (programme, at),
  UNIQUE (programme, stream, first, id)
) PARTITION BY HASH (programme);
CREATE TABLE segment_0 PARTITION OF segment FOR VALUES WITH (MODULUS 8, REMAINDER 0);
CREATE TABLE segment_1 PARTITION OF segment FOR VALUES WITH (MODULUS 8, REMAINDER 1);
CREATE TABLE segment_2 PARTITION OF segment FOR VALUES WITH (MODULUS 8, REMAINDER 2);
CREATE TABLE segment_3 PARTITION OF segment FOR VALUES WITH (MODULUS 8, REMAINDER 3);
CREATE TABLE segment_4 PARTITION OF segment FOR VALUES WITH (MODULUS 8, REMAINDER 4);
CREATE TABLE segment_5 PARTITION OF segment FOR VALUES WITH (MODULUS 8, REMAINDER 5);
CREATE TABLE segment_6 PARTITION OF segment FOR VALUES WITH (MODULUS 8, REMAINDER 6);
CREATE TABLE segment_7 PARTITION OF segment FOR VALUES WITH (MODULUS 8, REMAINDER 7);
CREATE TABLE fact (
  programme BYTEA NOT NULL,
  at BIGINT NOT NULL,       -- of its segment
  n BIGINT NOT NULL,        -- its place in the segment
  line BYTEA NOT NULL,        -- a change that says who may what
  PRIMARY KEY (programme, at, n)
) PARTITION BY HASH (programme);
CREATE TABLE fact_0 PARTITION OF fact FOR VALUES WITH (MODULUS 8, REMAINDER 0);
CREATE TABLE fact_1 PARTITION OF fact FOR VALUES WITH (MODULUS 8, REMAINDER 1);
CREATE TABLE fact_2 PARTITION OF fact FOR VALUES WITH (MODULUS 8, REMAINDER 2);
CREATE TABLE fact_3 PARTITION OF fact FOR VALUES WITH (MODULUS 8, REMAINDER 3);
CREATE TABLE fact_4 PARTITION OF fact FOR VALUES WITH (MODULUS 8, REMAINDER 4);
CREATE TABLE fact_5 PARTITION OF fact FOR VALUES WITH (MODULUS 8, REMAINDER 5);
CREATE TABLE fact_6 PARTITION OF fact FOR VALUES WITH (MODULUS 8, REMAINDER 6);
CREATE TABLE fact_7 PARTITION OF fact FOR VALUES WITH (MODULUS 8, REMAINDER 7);
CREATE TABLE invitation (
  key BYTEA NOT NULL,         -- public key of an invitation into a programme
  programme BYTEA NOT NULL,
  PRIMARY KEY (key, programme)
);
CREATE TABLE token (
  programme BYTEA NOT NULL,
  stream BYTEA NOT NULL,
  handle BYTEA NOT NULL,      -- first 8 bytes of the hash
  hash BYTEA NOT NULL,
  made_ms BIGINT NOT NULL,
  PRIMARY KEY (programme, stream)
);
CREATE INDEX token_handle ON token (handle);
CREATE TABLE nonce (nonce BYTEA PRIMARY KEY, until_ms BIGINT NOT NULL); -- those used
CREATE TABLE aside (
  programme BYTEA NOT NULL,
  file BYTEA NOT NULL,        -- hash of its bytes
  stream BYTEA NOT NULL,
  first BIGINT NOT NULL,
  last BIGINT NOT NULL,
  id BYTEA NOT NULL,
  reason TEXT NOT NULL,
  pushed_by BYTEA NOT NULL,
  received_ms BIGINT NOT NULL,
  bytes BYTEA NOT NULL,
  PRIMARY KEY (programme, file)
) PARTITION BY HASH (programme);
CREATE TABLE aside_0 PARTITION OF aside FOR VALUES WITH (MODULUS 8, REMAINDER 0);
CREATE TABLE aside_1 PARTITION OF aside FOR VALUES WITH (MODULUS 8, REMAINDER 1);
CREATE TABLE aside_2 PARTITION OF aside FOR VALUES WITH (MODULUS 8, REMAINDER 2);
CREATE TABLE aside_3 PARTITION OF aside FOR VALUES WITH (MODULUS 8, REMAINDER 3);
CREATE TABLE aside_4 PARTITION OF aside FOR VALUES WITH (MODULUS 8, REMAINDER 4);
CREATE TABLE aside_5 PARTITION OF aside FOR VALUES WITH (MODULUS 8, REMAINDER 5);
CREATE TABLE aside_6 PARTITION OF aside FOR VALUES WITH (MODULUS 8, REMAINDER 6);
CREATE TABLE aside_7 PARTITION OF aside FOR VALUES WITH (MODULUS 8, REMAINDER 7);
CREATE TABLE photograph (
  programme BYTEA NOT NULL,
  photograph BYTEA NOT NULL,  -- hash of its content
  size BIGINT NOT NULL,
  held BIGINT NOT NULL,     -- bytes from the beginning
  whole BIGINT NOT NULL,    -- 1 when all is there and the hash agrees
  made_ms BIGINT NOT NULL,
  PRIMARY KEY (programme, photograph)
);
CREATE TABLE photograph_part (
  programme BYTEA NOT NULL,
  photograph BYTEA NOT NULL,
  start BIGINT NOT NULL,
  bytes BYTEA NOT NULL,
  PRIMARY KEY (programme, photograph, start)
) PARTITION BY HASH (programme);
CREATE TABLE photograph_part_0 PARTITION OF photograph_part FOR VALUES WITH (MODULUS 8, REMAINDER 0);
CREATE TABLE photograph_part_1 PARTITION OF photograph_part FOR VALUES WITH (MODULUS 8, REMAINDER 1);
CREATE TABLE photograph_part_2 PARTITION OF photograph_part FOR VALUES WITH (MODULUS 8, REMAINDER 2);
CREATE TABLE photograph_part_3 PARTITION OF photograph_part FOR VALUES WITH (MODULUS 8, REMAINDER 3);
CREATE TABLE photograph_part_4 PARTITION OF photograph_part FOR VALUES WITH (MODULUS 8, REMAINDER 4);
CREATE TABLE photograph_part_5 PARTITION OF photograph_part FOR VALUES WITH (MODULUS 8, REMAINDER 5);
CREATE TABLE photograph_part_6 PARTITION OF photograph_part FOR VALUES WITH (MODULUS 8, REMAINDER 6);
CREATE TABLE photograph_part_7 PARTITION OF photograph_part FOR VALUES WITH (MODULUS 8, REMAINDER 7);
CREATE TABLE audit (
  programme BYTEA NOT NULL,
  at_ms BIGINT NOT NULL,
  id BYTEA NOT NULL,
  stream BYTEA NOT NULL,      -- who; empty when nobody is known
  what TEXT NOT NULL,
  detail TEXT NOT NULL,
  PRIMARY KEY (programme, at_ms, id)
);
