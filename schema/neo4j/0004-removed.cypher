// A row can be taken out: it keeps its id, _number and past versions under the label Gone in the place of its others. The change
// set that took it out names it in "removed", and among what it wrote.
CREATE CONSTRAINT gone_id IF NOT EXISTS FOR (n:Gone) REQUIRE n.id IS UNIQUE;
