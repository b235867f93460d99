// Derived: the date (_date) that a dating is found by as it is written, since its days rest on how approximate dates are read: that
// is known when it is asked. Such a dating has no _spread. The dates that there are, each once, are one more list of texts.
CREATE INDEX dating_date IF NOT EXISTS FOR (d:Dating) ON (d._date);
MATCH (s:Store {application: 'platestemma'}) WHERE size(s.texts) = 3 SET s.texts = s.texts + [0];
