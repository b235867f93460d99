// Ids of the rows that each change set put, as a list on its node. History is read in its order by this, without an index over
// all versions.
MATCH (v:Row|Past)
WITH v._since AS number, v.id AS id
WITH number, collect(id) AS written
MATCH (c:ChangeSet {number: number})
SET c.written = written;
