import type { Label } from '../../domain/model/row.ts';
import { foldTokens } from '../../domain/text/fold.ts';
import { type MarcField, subfield } from './marc-record.ts';
import type { RecordView } from './record-view.ts';
import { scriptLanguage } from './scripts.ts';
import { type Marks, statement, tidy, withoutEndMarks, withoutFinalStop } from './text.ts';

const titleMarks: Marks = { a: '', b: ' : ', f: ', ', g: ', ', k: ', ', n: '. ', p: ', ', s: '. ' };
const uniformMarks: Marks = { a: '', n: '. ', p: '. ', f: '. ', k: '. ', s: '. ' };

export interface Titles {
  /** Title as transcribed, without the mark that leads over to the statement of responsibility. */
  readonly title: string;
  readonly responsibility: string | undefined;
  /** Number of the volume or part, as transcribed. */
  readonly number: string | undefined;
  /** The title and its variants, where there are variants. */
  readonly labels: readonly Label[] | undefined;
  /** Name of the work: the uniform title where it names one work, else the title without supplied brackets around it. */
  readonly work: string;
}

/** Titles of a record from 245, 246, 880, and 130 or 240; undefined for a record without a title in 245. */
export function titlesOf(view: RecordView, languages: readonly string[]): Titles | undefined {
  const field = view.first('245');
  const title = field === undefined ? '' : titleText(field, view.leftOut);
  if (field === undefined || title === '') return undefined;
  const variants = [
    ...view.fields('246').map(f => ({ text: titleText(f, view.leftOut) })),
    ...otherScript(view, field, languages),
  ];
  const named = variants.filter(label => label.text !== '' && label.text !== title);
  return {
    title,
    responsibility: written(field, 'c'),
    number: written(field, 'n'),
    labels: named.length === 0 ? undefined : [{ text: title }, ...named],
    work: uniformTitle(view) ?? withoutOuterBrackets(title),
  };
}

function titleText(field: MarcField, leftOut: boolean): string {
  const text = statement(field, titleMarks, leftOut);
  return leftOut ? text : withoutEndMarks(text);
}

function otherScript(view: RecordView, field: MarcField, languages: readonly string[]): Label[] {
  const other = view.inOtherScript(field);
  if (other === undefined) return [];
  const text = titleText(other, view.leftOut);
  const language = scriptLanguage(other, languages[0]);
  return [language === undefined ? { text } : { text, language }];
}

function written(field: MarcField, code: string): string | undefined {
  const value = subfield(field, code);
  const text = value === undefined ? '' : withoutEndMarks(tidy(value));
  return text === '' ? undefined : text;
}

/** Conventional collective titles (RDA 6.2.2.10, 6.14.2.8) and their like name no single work. */
const collective = new Set(
  `works|works selections|selections|selected works|collections|appendix|letters|correspondence|poems|plays|essays|speeches
|novels|short stories|prose works|poetical works|miscellaneous|lists|laws|laws etc|treaties|treaties etc|sermons|songs
|œuvres|oeuvres|werke|obras|opere|opera`
    .split('|')
    .map(title => foldTokens(title).join(' ')),
);

function uniformTitle(view: RecordView): string | undefined {
  const field = view.first('130') ?? view.first('240');
  if (field === undefined) return undefined;
  const text = withoutFinalStop(withoutEndMarks(statement(field, uniformMarks, view.leftOut)));
  const tokens = foldTokens(text);
  const general = collective.has(tokens.join(' ')) || tokens[0] === 'appendix';
  return text === '' || general ? undefined : withoutOuterBrackets(text);
}

/** `[The Siamese Twins; a drama.]` is the title of an edition catalogued before: its brackets say that it was supplied. */
function withoutOuterBrackets(title: string): string {
  if (!title.startsWith('[')) return title;
  const end = title.endsWith('.') ? title.length - 1 : title.length;
  if (title[end - 1] !== ']') return title;
  const inner = title.slice(1, end - 1);
  const missing = count(inner, '[') - count(inner, ']');
  return missing > 0 ? inner + ']'.repeat(missing) : inner;
}

function count(text: string, character: string): number {
  return text.split(character).length - 1;
}
