-- A row can be taken out: its versions stay, and from this change set on it is not there. Null: it is.
ALTER TABLE node ADD COLUMN gone INTEGER;
