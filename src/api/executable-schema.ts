import {
  buildASTSchema,
  type DefinitionNode,
  type GraphQLFieldResolver,
  type GraphQLNamedType,
  type GraphQLScalarType,
  type GraphQLSchema,
  type GraphQLTypeResolver,
  isAbstractType,
  isEnumType,
  isObjectType,
  isScalarType,
  Kind,
  type ObjectTypeDefinitionNode,
  type ObjectTypeExtensionNode,
  parse,
} from 'graphql';
import { invariant } from '../errors.ts';

/**
 * What executes the types of a schema, by name: of an object the resolvers of its fields, of an interface or union
 * `__resolveType`, of an enum the values behind its names, of a scalar how it is read and written.
 */
export type Resolvers = Readonly<Record<string, object>>;

/**
 * A schema from its SDL with resolvers, built once from all texts. The texts are this program's own: that they are valid
 * is shown by a test, not at every start.
 * @throws BROKEN_PROMISE if resolvers name what the SDL does not have
 */
export function executableSchema(texts: readonly string[], resolvers: Resolvers): GraphQLSchema {
  const { definitions } = parse(texts.join('\n'), { noLocation: true });
  const schema = buildASTSchema({ kind: Kind.DOCUMENT, definitions: [...joined(definitions)] }, { assumeValid: true });
  for (const [name, given] of Object.entries(resolvers)) {
    const type = schema.getType(name);
    invariant(type !== undefined, `resolvers name the type ${name}, which the schema has`);
    give(type, given as Readonly<Record<string, unknown>>);
  }
  return schema;
}

/** Each object type in one piece, at its first place, with the fields of what adds to it, in the order of the texts. */
function joined(definitions: readonly DefinitionNode[]): Iterable<DefinitionNode> {
  const whole = new Map<string | DefinitionNode, DefinitionNode>();
  for (const definition of definitions) {
    if (!isObject(definition)) {
      whole.set(definition, definition);
      continue;
    }
    const name = definition.name.value;
    const before = whole.get(name) as ObjectDefinition | undefined;
    const fields = [...(before?.fields ?? []), ...(definition.fields ?? [])];
    whole.set(name, { ...before, ...definition, kind: Kind.OBJECT_TYPE_DEFINITION, fields });
  }
  return whole.values();
}

type ObjectDefinition = ObjectTypeDefinitionNode | ObjectTypeExtensionNode;

function isObject(definition: DefinitionNode): definition is ObjectDefinition {
  return definition.kind === Kind.OBJECT_TYPE_DEFINITION || definition.kind === Kind.OBJECT_TYPE_EXTENSION;
}

function give(type: GraphQLNamedType, given: Readonly<Record<string, unknown>>): void {
  if (isScalarType(type)) {
    Object.assign(type, given as Partial<GraphQLScalarType>);
    return;
  }
  for (const [name, value] of Object.entries(given)) {
    if (isAbstractType(type)) {
      invariant(name === '__resolveType', `of ${type.name} the type is resolved, came ${name}`);
      type.resolveType = value as GraphQLTypeResolver<unknown, unknown>;
      continue;
    }
    const part = isEnumType(type) ? type.getValue(name) : isObjectType(type) ? type.getFields()[name] : undefined;
    invariant(part !== undefined && part !== null, `resolvers name ${type.name}.${name}, which the schema has`);
    if (isEnumType(type)) (part as { value: unknown }).value = value;
    else (part as { resolve?: unknown }).resolve = value as GraphQLFieldResolver<unknown, unknown>;
  }
}
