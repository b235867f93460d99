-- Generated from the declarations of kinds by "npm run generate".

-- Claims by the group of alternatives that they stand in now.
CREATE INDEX imprint_in_group ON "imprint" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX dating_in_group ON "dating" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX appearance_in_group ON "appearance" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX copying_in_group ON "copying" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX edition_descent_in_group ON "edition_descent" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX part_of_in_group ON "part_of" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX printed_from_in_group ON "printed_from" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX casting_in_group ON "casting" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX attribution_in_group ON "attribution" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX made_at_in_group ON "made_at" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX stay_in_group ON "stay" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX depiction_in_group ON "depiction" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX access_in_group ON "access" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX sequence_in_group ON "sequence" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX identity_in_group ON "identity" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX comparison_in_group ON "comparison" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX follows_in_group ON "follows" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX custody_in_group ON "custody" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX region_in_group ON "region" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX mention_in_group ON "mention" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX examination_in_group ON "examination" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
CREATE INDEX opinion_in_group ON "opinion" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;
