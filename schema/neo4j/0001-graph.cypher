// A store is one database. Statements end with a semicolon at the end of a line.

// One node Store holds the number of this schema, and how far the numbers of change sets, rows and derived texts have come.
CREATE CONSTRAINT store_application IF NOT EXISTS FOR (s:Store) REQUIRE s.application IS UNIQUE;

// Every record and claim as it is now: a node with the labels Row, Record or Claim, and its kind. Links are relationships
// named after kind and role (IMPRINT_PLACE), with the change set they hold since. Derived properties begin with an underscore.
CREATE CONSTRAINT row_id IF NOT EXISTS FOR (n:Row) REQUIRE n.id IS UNIQUE;

// Versions are valid from the change set _since; those before the newest, until the one before _until, are nodes Past, to which
// the row leads by relationships PAST. _number says in which order rows came.

// One node a change set: who wrote, when, why. "batch" names a run of an intake; "token" is that of the write, so that one
// whose answer was lost is not made twice.
CREATE CONSTRAINT change_set_number IF NOT EXISTS FOR (c:ChangeSet) REQUIRE c.number IS UNIQUE;
CREATE CONSTRAINT change_set_token IF NOT EXISTS FOR (c:ChangeSet) REQUIRE c.token IS UNIQUE;

// Records by their sort key now.
CREATE INDEX record_in_order IF NOT EXISTS FOR (n:Record) ON (n.kind, n._sort, n.id);

// Derived: words that records are found by now, folded before they come here, and one word for the kind.
CREATE FULLTEXT INDEX record_words IF NOT EXISTS FOR (n:Record) ON EACH [n._words] OPTIONS {indexConfig: {`fulltext.analyzer`: 'whitespace'}};

// Where a record was taken from; digest of what was taken.
CREATE CONSTRAINT origin_key IF NOT EXISTS FOR (o:Origin) REQUIRE (o.key, o.source) IS UNIQUE;

// Links that wait for a record that has not come.
CREATE INDEX awaited_by_origin IF NOT EXISTS FOR (a:Awaited) ON (a.key, a.source);

CREATE CONSTRAINT checkpoint_intake IF NOT EXISTS FOR (c:Checkpoint) REQUIRE c.intake IS UNIQUE;

// Derived: windows of editions, as numbers in one text (_window) and a number for what filters ask (_traits).
CREATE INDEX edition_window_in_order IF NOT EXISTS FOR (n:Edition) ON (n._window, n.id);

// Derived: texts that windows name by number, in three lists: profiles, details, traits. Long ones are known by their digest.
CREATE CONSTRAINT window_text_digest IF NOT EXISTS FOR (t:WindowText) REQUIRE t.digest IS UNIQUE;
CREATE INDEX window_text_in_order IF NOT EXISTS FOR (t:WindowText) ON (t.list, t.number);

// Derived: how many editions have each window and traits; those in force are listed by the node Store. Never changed.
CREATE CONSTRAINT window_tally_number IF NOT EXISTS FOR (t:WindowTally) REQUIRE t.number IS UNIQUE;

// Derived: days that the datings that count allow, for search. Open ends are -1000000000 and 1000000000; _spread is the number
// of binary digits of _lastDay - _firstDay, so that those which meet some days begin near them.
CREATE INDEX dating_days IF NOT EXISTS FOR (d:Dating) ON (d._spread, d._firstDay);

// Derived: which pictures show what, for filters.
CREATE INDEX depiction_by_iconclass IF NOT EXISTS FOR (d:Depiction) ON (d.iconclass);
