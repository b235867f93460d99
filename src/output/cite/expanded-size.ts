import type { CslNode } from 'citeproc';

/**
 * Number of elements of a style once every macro stands where it is called, which is what the engine works on. Macros
 * that call others twice can make a small file immense; a call within its own macro counts as nothing.
 */
export function expandedSize(style: CslNode): number {
  const macros = new Map<string, CslNode>();
  for (const child of style.children) {
    if (typeof child !== 'string' && child.name === 'macro') macros.set(child.attrs['name'] ?? '', child);
  }
  const sizes = new Map<string, number>();
  const sizeOf = (node: CslNode): number => {
    let size = 1 + macroSize(node.attrs['macro']);
    for (const child of node.children) {
      if (typeof child !== 'string' && child.name !== 'macro') size += sizeOf(child);
    }
    return size;
  };
  const macroSize = (name: string | undefined): number => {
    const macro = name === undefined ? undefined : macros.get(name);
    if (name === undefined || macro === undefined) return 0;
    const known = sizes.get(name);
    if (known !== undefined) return known;
    sizes.set(name, 0);
    const size = sizeOf(macro);
    sizes.set(name, size);
    return size;
  };
  return sizeOf(style);
}
