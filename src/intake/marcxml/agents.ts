import type { Label, RecordOf } from '../../domain/model/row.ts';
import { foldTokens } from '../../domain/text/fold.ts';
import { remember } from '../../domain/text/remember.ts';
import type { BundleDraft, RecordDraft } from './bundle-draft.ts';
import { type MarcField, subfield } from './marc-record.ts';
import type { RecordView } from './record-view.ts';
import { rolesOf } from './roles.ts';
import { scriptLanguage } from './scripts.ts';
import { type Marks, statement, tidy, withoutEndMarks, withoutFinalStop } from './text.ts';

type AgentForm = RecordOf<'Agent'>['form'];

const personMarks: Marks = { a: '', b: ' ', q: ' ', c: ', ' };
const bodyMarks: Marks = { a: '', b: '. ', n: ' ', c: ', ' };
const headings = ['100', '110', '111', '700', '710', '711', '720'] as const;

/** Attributions of the edition to the names of 1xx, 7xx without a title, and 720. */
export function addAttributions(view: RecordView, languages: readonly string[], draft: BundleDraft): void {
  for (const tag of headings) for (const field of view.fields(tag)) addAgent(view, field, languages, draft);
}

/** Whether a field names a person or body who took part: 7xx with $t names a work, 720 without more is often a catchword. */
export function namesAgent(field: MarcField): boolean {
  if (subfield(field, 'a') === undefined) return false;
  if (field.tag === '720') return field.ind1 !== ' ' || field.subfields.some(([code]) => 'cde4'.includes(code));
  return subfield(field, 't') === undefined;
}

function addAgent(view: RecordView, field: MarcField, languages: readonly string[], draft: BundleDraft): void {
  if (!namesAgent(field)) return;
  const agent = agentOf(view, field, languages);
  if (agent === undefined) return;
  const id = draft.shared('@agent', agent.key, agent.record);
  const relator = field.tag.endsWith('11') ? 'j' : 'e';
  const { roles, unknown } = rolesOf(field, relator, view.leader);
  for (const words of unknown) {
    draft.remark(
      'INPUT_INVALID',
      `expected a relator term of MARC, came "${words}": taken as another role`,
      `${field.tag}$${relator}`,
    );
  }
  for (const { role, asWritten, codes } of roles) {
    const written = asWritten === undefined ? {} : { asWritten };
    draft.claim(
      { kind: 'Attribution', record: '@edition', agent: id, role, ...written },
      { tag: field.tag, codes: `a${codes}` },
    );
  }
}

interface AgentRead {
  readonly key: string;
  readonly record: RecordDraft;
}

function agentOf(view: RecordView, field: MarcField, languages: readonly string[]): AgentRead | undefined {
  const form = formOf(field);
  const name = nameText(field, form, view.leftOut);
  if (name === '') return undefined;
  const dates = datesText(field, form);
  const labels: Label[] = [{ text: name }];
  const other = view.inOtherScript(field);
  if (other !== undefined) {
    const language = scriptLanguage(other, languages[0]);
    const text = nameText(other, form, view.leftOut);
    if (text !== '') labels.push(language === undefined ? { text } : { text, language });
  }
  const filed = form === 'PERSON' && field.ind1 === '1' ? nameOnly(field) : undefined;
  const authority = subfield(field, '0')?.trim();
  const address = [subfield(field, '1'), authority].find(value => value !== undefined && /^https?:/.test(value));
  return {
    key: authority === undefined ? nameKey(form, name, dates) : `agent:${authority}`,
    record: {
      kind: 'Agent',
      labels,
      ...(form === undefined ? {} : { form }),
      ...(filed === undefined ? {} : { sortName: filed }),
      ...(dates === undefined ? {} : { dates }),
      ...(address === undefined ? {} : { sameAs: [address.trim()] }),
    },
  };
}

/** Fold of the heading of the main entry; empty without one. */
export function mainHeading(view: RecordView): string {
  const field = view.first('100') ?? view.first('110') ?? view.first('111');
  if (field === undefined) return '';
  const form = formOf(field);
  const dates = datesText(field, form);
  const name = nameText(field, form, view.leftOut);
  return folded(dates === undefined ? name : `${name} ${dates}`);
}

/** A firm named in an imprint, shared by the fold of its name. */
export function firm(name: string): AgentRead {
  return { key: nameKey('FIRM', name), record: { kind: 'Agent', labels: [{ text: name }], form: 'FIRM' } };
}

/** Key of a person or firm of a source that is known by name alone. */
export function nameKey(form: AgentForm, name: string, dates?: string): string {
  return `agent:${form?.toLowerCase() ?? 'name'}:${folded(dates === undefined ? name : `${name} ${dates}`)}`;
}

/** Fold of a heading; a heading without letters stands for itself. */
const folded = remember(50_000, text => foldTokens(text).join(' ') || text);

/** Person or body by the tag and first indicator; a family (`3`) and an untyped 720 are neither. */
function formOf({ tag, ind1 }: MarcField): AgentForm {
  if (tag === '720') return ind1 === '1' ? 'PERSON' : ind1 === '2' ? 'FIRM' : undefined;
  if (!tag.endsWith('00')) return 'FIRM';
  return ind1 === '3' ? undefined : 'PERSON';
}

function nameText(field: MarcField, form: AgentForm, leftOut: boolean): string {
  const marks = field.tag.endsWith('10') || field.tag.endsWith('11') ? bodyMarks : personMarks;
  const text = withoutEndMarks(statement(field, marks, leftOut));
  return form === 'FIRM' || !leftOut ? withoutFinalStop(text) : text;
}

function nameOnly(field: MarcField): string {
  return withoutFinalStop(withoutEndMarks(tidy(subfield(field, 'a') ?? '')));
}

function datesText(field: MarcField, form: AgentForm): string | undefined {
  if (form === 'FIRM') return undefined;
  const dates = subfield(field, 'd');
  const text = dates === undefined ? '' : withoutEndMarks(tidy(dates)).replace(/\.$/, '');
  return text === '' ? undefined : text;
}
