import type { CslNode } from 'citeproc';
import type { BundledLocale } from './bundled-styles.ts';
import packed from './csl-data.generated.json' with { type: 'json' };

/** A node as it is packed: name, attributes, children. */
interface PackedNode {
  readonly n: string;
  readonly a?: Readonly<Record<string, string>>;
  readonly c?: readonly (PackedNode | string)[];
}

interface Packed {
  readonly styles: Readonly<Record<string, PackedNode>>;
  readonly locales: Readonly<Record<string, PackedNode>>;
}

const data: Packed = packed as unknown as Packed;

/** A bundled style by its CSL identifier, or undefined. */
export function packedStyle(id: string): CslNode | undefined {
  return Object.hasOwn(data.styles, id) ? expand(data.styles[id]!) : undefined;
}

export function packedLocale(locale: BundledLocale): CslNode {
  return expand(data.locales[locale]!);
}

/** The engine asks for the text of a term even where it is empty. */
function expand(node: PackedNode): CslNode {
  const children = node.c ?? (node.n === 'term' ? [''] : []);
  return {
    name: node.n,
    attrs: node.a ?? {},
    children: children.map(child => (typeof child === 'string' ? child : expand(child))),
  };
}
