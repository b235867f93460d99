// Kinds, and fields of kinds, that came after the first schema. Labels, properties and relationships follow from the rows; the
// number tells an older program that it does not know them all.
