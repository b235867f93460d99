/** Arguments of every connection that hangs on a record or claim. */
export const connectionPaging = `(
    "How many, 0 to 200."
    first: Int = 25
    "Cursor of the one before."
    after: String
  )`;

const claimsAboutIt = `  "Claims that name it in one of their roles, by id."
  claims(
    "Only these kinds; all if absent."
    kinds: [ClaimKind!]
    "Only these stances; all if absent."
    stance: [Stance!]
    "Still said, or withdrawn; null: both."
    standing: Standing = STANDING
    "How many, 0 to 200."
    first: Int = 25
    "Cursor of the one before."
    after: String
  ): ClaimConnection!`;

/** Fields of every record, as the interface Record in schema/graphql/node.graphql has them. */
export const recordBase: readonly string[] = [
  `  "Id, for ever the same."
  id: ID!`,
  `  "What it is called: in the language asked for, else in English, else without a language, else the first; null if it has no name."
  label(
    "Language of the reader."
    language: LanguageTag = "en"
  ): String`,
  `  "All its names and titles, with their languages."
  labels: [Label!]!`,
  `  "Where it was taken from, by source and key."
  origins: [Origin!]!`,
  `  "Notes."
  notes: [String!]!`,
  `  "Free columns: kept as they came."
  columns: [Column!]!`,
  `  "Addresses of the same thing elsewhere."
  sameAs: [URL!]!`,
  claimsAboutIt,
  `  "What was changed in it, by whom, when and why, oldest first."
  history${connectionPaging}: ChangeConnection!`,
];

/** Fields of every claim, as the interface Claim in schema/graphql/node.graphql has them. */
export const claimBase: readonly string[] = [
  `  "Id, for ever the same."
  id: ID!`,
  `  "The claim as a sentence."
  says(
    "Language of the names in it."
    language: LanguageTag = "en"
  ): String!`,
  `  "Whether it is still said."
  standing: Standing!`,
  `  "Why it was withdrawn."
  withdrawnBecause: String`,
  `  "The claim that took its place."
  supersededBy: Claim`,
  `  "Whether we reason from it."
  stance: Stance!`,
  `  "How sure it is."
  certainty: Certainty!`,
  `  "Group of claims of which exactly one is true: all of one kind, and about the same."
  alternativeTo: Alternatives`,
  `  "Why it is said."
  evidence: [Evidence!]!`,
  `  "Who says so."
  by: String`,
  `  "Day on which it was said."
  on: Day`,
  claimsAboutIt,
  `  "What was changed in it, by whom, when and why, oldest first."
  history${connectionPaging}: ChangeConnection!`,
];
