-- Which rows each change set put: the nodes from first to last, as few rows as tell them. History is read in its order by
-- this, without an index over all versions.
CREATE TABLE written (
  change_set INTEGER NOT NULL,
  first INTEGER NOT NULL,
  last INTEGER NOT NULL,
  PRIMARY KEY (change_set, first)
) WITHOUT ROWID;

-- What was put before there was this table: nodes that follow each other in a change set stand as far from their place in it.
INSERT INTO written (change_set, first, last)
SELECT _since, min(_key), max(_key)
FROM (
  SELECT _since, _key, _key - row_number() OVER (PARTITION BY _since ORDER BY _key) AS run
  FROM (
    SELECT _since, _key FROM "agent"
    UNION ALL
    SELECT _since, _key FROM "place"
    UNION ALL
    SELECT _since, _key FROM "workshop"
    UNION ALL
    SELECT _since, _key FROM "work"
    UNION ALL
    SELECT _since, _key FROM "edition"
    UNION ALL
    SELECT _since, _key FROM "exemplar"
    UNION ALL
    SELECT _since, _key FROM "plate"
    UNION ALL
    SELECT _since, _key FROM "matrix"
    UNION ALL
    SELECT _since, _key FROM "state"
    UNION ALL
    SELECT _since, _key FROM "artwork"
    UNION ALL
    SELECT _since, _key FROM "piece"
    UNION ALL
    SELECT _since, _key FROM "motif"
    UNION ALL
    SELECT _since, _key FROM "detail"
    UNION ALL
    SELECT _since, _key FROM "reference"
    UNION ALL
    SELECT _since, _key FROM "convention"
    UNION ALL
    SELECT _since, _key FROM "alternatives"
    UNION ALL
    SELECT _since, _key FROM "imprint"
    UNION ALL
    SELECT _since, _key FROM "dating"
    UNION ALL
    SELECT _since, _key FROM "appearance"
    UNION ALL
    SELECT _since, _key FROM "copying"
    UNION ALL
    SELECT _since, _key FROM "edition_descent"
    UNION ALL
    SELECT _since, _key FROM "part_of"
    UNION ALL
    SELECT _since, _key FROM "printed_from"
    UNION ALL
    SELECT _since, _key FROM "casting"
    UNION ALL
    SELECT _since, _key FROM "attribution"
    UNION ALL
    SELECT _since, _key FROM "made_at"
    UNION ALL
    SELECT _since, _key FROM "stay"
    UNION ALL
    SELECT _since, _key FROM "depiction"
    UNION ALL
    SELECT _since, _key FROM "access"
    UNION ALL
    SELECT _since, _key FROM "sequence"
    UNION ALL
    SELECT _since, _key FROM "identity"
  )
)
GROUP BY _since, run
ORDER BY _since, min(_key);
