import type { Vocabulary } from './declaration.ts';

export const standing = {
  name: 'Standing',
  doc: 'Whether a claim is still said.',
  words: { STANDING: 'still said', WITHDRAWN: 'withdrawn' },
} as const satisfies Vocabulary;

export const stance = {
  name: 'Stance',
  doc: 'Whether we reason from a claim.',
  words: { HELD: 'held', WEIGHED: 'weighed', REJECTED: 'rejected' },
} as const satisfies Vocabulary;

/** From surest to least sure: the order of the words is the order of certainty. */
export const certainty = {
  name: 'Certainty',
  doc: 'How sure a claim is, from surest to least sure.',
  words: { CERTAIN: 'certain', PROBABLE: 'probable', POSSIBLE: 'possible', DOUBTFUL: 'doubtful' },
} as const satisfies Vocabulary;

export const calendar = {
  name: 'Calendar',
  doc: 'Calendar in which a date was written.',
  words: { GREGORIAN: 'Gregorian', JULIAN: 'Julian', REPUBLICAN: 'French Republican' },
} as const satisfies Vocabulary;

export const datedEvent = {
  name: 'DatedEvent',
  doc: "Event of a record that a dating names. A motif's MADE is its decoration; LIVED and RAN last, the others happen on one day.",
  words: {
    MADE: 'made',
    PUBLISHED: 'published',
    INTRODUCED: 'introduced',
    ACQUIRED: 'acquired',
    SEEN: 'seen',
    LIVED: 'lived',
    RAN: 'ran',
  },
} as const satisfies Vocabulary;

export const datingBasis = {
  name: 'DatingBasis',
  doc: 'What a dating rests on.',
  words: {
    IMPRINT: 'imprint',
    COPYRIGHT: 'copyright notice',
    MARK: 'mark',
    WATERMARK: 'watermark',
    STYLE: 'style',
    DOCUMENT: 'document',
    PUBLICATION_LINE: 'publication line',
    CODED: 'coded field of a library record',
  },
} as const satisfies Vocabulary;

export const imprintRole = {
  name: 'ImprintRole',
  doc: 'Part that an agent of an imprint took in the publication.',
  words: {
    PUBLISHER: 'publisher',
    PRINTER: 'printer',
    BOOKSELLER: 'bookseller',
    DISTRIBUTOR: 'distributor',
  },
} as const satisfies Vocabulary;

export const workForm = {
  name: 'WorkForm',
  doc: 'Form of publication.',
  words: {
    BOOK: 'book',
    SERIAL: 'serial',
    ANNUAL: 'annual or almanac',
    PRINT_SERIES: 'print series',
    PATTERN_BOOK: 'pattern book',
    SINGLE_SHEET: 'single sheet',
  },
} as const satisfies Vocabulary;

export const agentKind = {
  name: 'AgentKind',
  doc: 'Whether an agent is one person or a firm, society or other body.',
  words: { PERSON: 'person', FIRM: 'firm' },
} as const satisfies Vocabulary;

export const plateKind = {
  name: 'PlateKind',
  doc: 'The finer word for a printed image.',
  words: {
    PLATE: 'plate',
    CUT: 'cut',
    VIGNETTE: 'vignette',
    COVER: 'cover',
    SINGLE_SHEET_PRINT: 'single-sheet print',
  },
} as const satisfies Vocabulary;

export const matrixKind = {
  name: 'MatrixKind',
  doc: 'Printing surface.',
  words: {
    COPPER_PLATE: 'copper plate',
    STEEL_PLATE: 'steel plate',
    WOOD_BLOCK: 'wood block',
    STONE: 'stone',
    STEREOTYPE: 'stereotype cast',
    ELECTROTYPE: 'electrotype cast',
  },
} as const satisfies Vocabulary;

export const survival = {
  name: 'Survival',
  doc: 'Whether a thing is known to survive.',
  words: { EXTANT: 'extant', LOST: 'lost', INFERRED: 'inferred' },
} as const satisfies Vocabulary;

export const handedness = {
  name: 'Handedness',
  doc: 'Direction of a copy against its source: REVERSED is mirror-wise.',
  words: { SAME: 'in the same direction', REVERSED: 'in reverse', UNKNOWN: 'not known' },
} as const satisfies Vocabulary;

export const copyManner = {
  name: 'CopyManner',
  doc: 'How a picture was copied.',
  words: {
    BY_EYE: 'by eye',
    TRACED: 'traced',
    POUNCED: 'pounced',
    TRANSFERRED: 'transferred',
    CUT_ANEW: 'cut anew',
  },
} as const satisfies Vocabulary;

export const copyRemove = {
  name: 'CopyRemove',
  doc: 'Whether a copy was taken straight from its source.',
  words: { DIRECT: 'direct', AT_SOME_REMOVE: 'at some remove', UNKNOWN: 'not known' },
} as const satisfies Vocabulary;

export const presence = {
  name: 'Presence',
  doc: 'Whether a plate is in an edition, or is known not to be.',
  words: { PRESENT: 'present', ABSENT: 'absent' },
} as const satisfies Vocabulary;

export const descentText = {
  name: 'DescentText',
  doc: 'What became of the text from one edition to the next.',
  words: {
    SAME: 'same',
    ABRIDGED: 'abridged',
    TRANSLATED: 'translated',
    REVISED: 'revised',
    CONTINUED: 'continued',
  },
} as const satisfies Vocabulary;

export const descentLeave = {
  name: 'DescentLeave',
  doc: 'Whether the edition was made with leave of the right-holder.',
  words: { AUTHORISED: 'authorised', WITHOUT_LEAVE: 'without leave', UNKNOWN: 'not known' },
} as const satisfies Vocabulary;

export const descentSurfaces = {
  name: 'DescentSurfaces',
  doc: 'What the pictures of the later edition were printed from.',
  words: {
    SAME: 'the same surfaces',
    RETOUCHED: 'retouched surfaces',
    RECUT: 'recut surfaces',
    COPIED: 'copied surfaces',
    MIXED: 'mixed',
  },
} as const satisfies Vocabulary;

export const printingManner = {
  name: 'PrintingManner',
  doc: 'How a picture came from its printing surface.',
  words: { DIRECT: 'direct', TRANSFER: 'transfer', COUNTERPROOF: 'counterproof' },
} as const satisfies Vocabulary;

export const castingManner = {
  name: 'CastingManner',
  doc: 'How a printing surface was cast from another.',
  words: { STEREOTYPE: 'stereotype', ELECTROTYPE: 'electrotype' },
} as const satisfies Vocabulary;

export const accessManner = {
  name: 'AccessManner',
  doc: 'How somebody had a publication. SUBSCRIBED and ANNOUNCED do not say that it arrived.',
  words: {
    OWNED: 'owned',
    BORROWED: 'borrowed',
    SEEN: 'seen',
    ON_SALE: 'on sale',
    SUBSCRIBED: 'subscribed',
    ANNOUNCED: 'announced',
  },
} as const satisfies Vocabulary;

export const identityVerdict = {
  name: 'IdentityVerdict',
  doc: 'Whether two records describe the same thing.',
  words: { SAME: 'same', DIFFERENT: 'different' },
} as const satisfies Vocabulary;

export const identityLevel = {
  name: 'IdentityLevel',
  doc: 'At which level two records are the same or different.',
  words: { WORK: 'work', EDITION: 'edition', OTHER: 'other' },
} as const satisfies Vocabulary;

export const markKind = {
  name: 'MarkKind',
  doc: 'Kind of an inscription or mark.',
  words: {
    DATE_LETTER: 'date letter',
    YEAR_MARK: 'year mark',
    MAKERS_MARK: "maker's mark",
    ASSAY_MARK: 'assay mark',
    INSCRIPTION: 'inscription',
    SIGNATURE: 'signature',
  },
} as const satisfies Vocabulary;

export const featureKind = {
  name: 'FeatureKind',
  doc: 'How much it says that two pictures share a feature: what anybody would draw says little, an error much.',
  words: {
    CONVENTIONAL: 'conventional',
    SPECIFIC: 'specific',
    PECULIARITY: 'peculiarity',
    LOSS: 'loss',
    ADDITION: 'addition',
    WRONG_WORD: 'wrong word',
    SLIP_OF_LETTERING: 'slip of lettering',
  },
} as const satisfies Vocabulary;

export const permission = {
  name: 'Permission',
  doc: 'Whether a photograph may be published. Permission is never assumed.',
  words: { ASKED: 'asked for', GIVEN: 'given', REFUSED: 'refused' },
} as const satisfies Vocabulary;

export const enquiryState = {
  name: 'EnquiryState',
  doc: 'How far an enquiry has come.',
  words: {
    TO_BE_SENT: 'to be sent',
    SENT: 'sent',
    ANSWERED: 'answered',
    WITHOUT_ANSWER: 'without answer',
    CLOSED: 'closed',
  },
} as const satisfies Vocabulary;

export const agreement = {
  name: 'Agreement',
  doc: 'How two pictures stand to each other in a feature. CONTRARY: it is absent here, and present in a rival version.',
  words: {
    SHARED: 'shared',
    DEVIATING_SLIGHTLY: 'deviating slightly',
    DEVIATING_MODERATELY: 'deviating moderately',
    CONTRARY: 'contrary',
  },
} as const satisfies Vocabulary;

export const comparisonConclusion = {
  name: 'ComparisonConclusion',
  doc: 'What who compared two pictures concluded of the second: it enters no computation, but that it was looked at.',
  words: {
    SOURCE: 'the source',
    NOT_THE_SOURCE: 'not the source',
    RELATED: 'related',
    UNDECIDED: 'undecided',
  },
} as const satisfies Vocabulary;

export const examinationResult = {
  name: 'ExaminationResult',
  doc: 'Whether a picture that was sought was found.',
  words: { FOUND: 'found', NOT_FOUND: 'not found', UNSURE: 'perhaps found' },
} as const satisfies Vocabulary;

/** From what finds most to what finds least. */
export const coverage = {
  name: 'Coverage',
  doc: 'How closely somebody looked. None of them finds everything.',
  words: {
    LEAF_BY_LEAF: 'leaf by leaf',
    DIGITAL_COPY: 'a good digital copy',
    QUICK_LOOK: 'a quick look',
    PLATE_LIST: 'a list of plates only',
    SEARCH: 'a search by words',
  },
} as const satisfies Vocabulary;

export const opinionVerdict = {
  name: 'OpinionVerdict',
  doc: 'What somebody thinks of a claim.',
  words: { AGREES: 'agrees with', DOUBTS: 'doubts', REJECTS: 'rejects' },
} as const satisfies Vocabulary;
