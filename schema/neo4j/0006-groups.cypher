// Claims by the group of alternatives that they stand in now.
CREATE INDEX claim_in_group IF NOT EXISTS FOR (c:Claim) ON (c.alternativeTo);
