import type { CslNode } from 'citeproc';
import { SaxesParser } from 'saxes';
import { PlatestemmaError } from '../../errors.ts';
import { expandedSize } from './expanded-size.ts';

/** Larger than any style in the repository of styles. */
const mostCharacters = 1_000_000;
const deepest = 200;
/** The largest in the repository of styles has 67,394 (styles @8c5439ee). */
const mostElements = 100_000;

interface OpenNode {
  readonly name: string;
  readonly attrs: Record<string, string>;
  readonly children: (OpenNode | string)[];
}

/** Elements whose text counts; elsewhere text between elements is indentation. An empty one has the text ''. */
const withText = new Set(['term', 'single', 'multiple', 'title', 'id']);

/**
 * A user's own style: the text of a .csl file as the tree the engine takes.
 * @throws INPUT_INVALID with line and column if it is no well-formed independent CSL style
 */
export function parseCsl(xml: string): CslNode {
  if (xml.length > mostCharacters) refuse(`a style of at most ${mostCharacters} characters`, `one of ${xml.length}`);
  const parser = new SaxesParser({ xmlns: false });
  const stack: OpenNode[] = [];
  let root: OpenNode | undefined;
  parser.on('error', error => refuse('a well-formed CSL style', error.message));
  parser.on('opentag', tag => {
    const node: OpenNode = { name: localName(tag.name), attrs: { ...tag.attributes }, children: [] };
    stack.at(-1)?.children.push(node);
    root ??= node;
    if (stack.push(node) > deepest) refuse(`elements at most ${deepest} deep`, 'deeper ones');
  });
  const text = (value: string) => {
    const node = stack.at(-1);
    if (node !== undefined && withText.has(node.name)) appendText(node, value);
  };
  parser.on('text', text);
  parser.on('cdata', text);
  parser.on('closetag', () => {
    const node = stack.pop()!;
    if (withText.has(node.name) && node.children.length === 0) node.children.push('');
  });
  parser.write(xml.replace(/^\uFEFF/, '').trimStart()).close();
  return checked(root);
}

function localName(name: string): string {
  return name.slice(name.indexOf(':') + 1);
}

function appendText(node: OpenNode, value: string): void {
  const blank = value.trim() === '' && /\n/.test(value);
  if (blank) return;
  const last = node.children.at(-1);
  if (typeof last === 'string') node.children[node.children.length - 1] = last + value;
  else node.children.push(value);
}

function checked(root: OpenNode | undefined): CslNode {
  if (root?.name !== 'style') refuse('a CSL style', `an XML file of <${root?.name ?? ''}>`);
  const info = children(root).find(node => node.name === 'info');
  const parent = children(info).find(node => node.name === 'link' && node.attrs['rel'] === 'independent-parent');
  if (parent !== undefined) refuse('an independent style', `one that depends on ${parent.attrs['href'] ?? 'another'}`);
  if (!children(root).some(node => node.name === 'citation')) refuse('a style with a <citation>', 'one without');
  if (info === undefined) root.children.unshift({ name: 'info', attrs: {}, children: [] });
  if (expandedSize(root) > mostElements) refuse(`at most ${mostElements} elements with its macros in place`, 'more');
  return root;
}

function children(node: OpenNode | undefined): OpenNode[] {
  return (node?.children ?? []).filter(child => typeof child !== 'string');
}

function refuse(expected: string, came: string): never {
  throw new PlatestemmaError('INPUT_INVALID', `style: expected ${expected}, came ${came}`);
}
