import type { Field, ItemField, Role } from './declaration.ts';
import { type KindName, type RecordKindName, recordKindNames, recordKinds } from './kinds.ts';

/** GraphQL type of a field as it stands in an object type, with list and non-null marks. */
export function sdlTypeOf(field: Field | ItemField): string {
  const named = sdlNamedType(field);
  if (field.type === 'items' || ('many' in field && field.many === true)) return `[${named}!]!`;
  // A linked record may be out of the reader's sight, and null is a value of JSON: neither is promised.
  const promised = field.required === true && field.type !== 'record' && field.type !== 'json';
  return promised ? `${named}!` : named;
}

/** GraphQL type that stands for the kinds which a role or field may name. */
export function sdlLinkType(to: readonly string[]): string {
  if (to.length === 1 && Object.hasOwn(recordKinds, to[0]!)) return to[0]!;
  if (to.includes('any claim')) return to.length === 1 ? 'Claim' : 'Node';
  return to.every(isPicture) ? 'Picture' : 'Record';
}

/** Doc text of a link, with the kinds that may stand there if the type does not say so already. */
export function sdlLinkDoc(link: Pick<Role, 'doc' | 'to'>): string {
  const named = sdlLinkType(link.to);
  if (named !== 'Record' && named !== 'Picture') return link.doc;
  if (link.to.includes('any record') || (named === 'Picture' && link.to.length === pictureKinds.length))
    return link.doc;
  return `${link.doc} One of: ${link.to.join(', ')}.`;
}

/** Name of a kind as a value of the enums RecordKind and ClaimKind: `PartOf` is `PART_OF`. */
export function kindEnumValue(kind: KindName): string {
  return kind.replace(/(?<=[a-z])(?=[A-Z])/g, '_').toUpperCase();
}

export const pictureKinds: readonly RecordKindName[] = recordKindNames.filter(isPicture);

function isPicture(kind: string): boolean {
  const declaration = Object.hasOwn(recordKinds, kind) ? recordKinds[kind as RecordKindName] : undefined;
  return declaration !== undefined && 'picture' in declaration;
}

/** GraphQL type of a field without list and non-null marks. */
export function sdlNamedType(field: Field | ItemField): string {
  switch (field.type) {
    case 'text':
      return 'String';
    case 'uri':
      return 'URL';
    case 'language':
      return 'LanguageTag';
    case 'edtf':
      return 'EDTF';
    case 'integer':
      return 'Int';
    case 'number':
      return 'Float';
    case 'flag':
      return 'Boolean';
    case 'word':
      return field.of.name;
    case 'items':
      return field.name;
    case 'record':
      return sdlLinkType(field.to);
    case 'json':
      return 'JSON';
  }
}
