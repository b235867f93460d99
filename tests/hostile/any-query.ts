import {
  type GraphQLArgument,
  type GraphQLInputType,
  type GraphQLObjectType,
  type GraphQLOutputType,
  type GraphQLSchema,
  getNamedType,
  isAbstractType,
  isEnumType,
  isInputObjectType,
  isLeafType,
  isListType,
  isNonNullType,
  isObjectType,
} from 'graphql';
import type { Chance } from './chance.ts';
import { hostileDates, hostileIds, hostileNumbers, hostileTexts, wrongValues } from './hostile-values.ts';

export interface AnyQuery {
  readonly query: string;
  readonly variables: Readonly<Record<string, unknown>>;
}

/** What is there to be asked for, so that not all is refused at the door. */
export interface Known {
  readonly ids: readonly string[];
  readonly cursors: readonly string[];
}

/** Some operation that a schema allows, or nearly: whatever the schema has, and with it what is added to it, can come. */
export function anyQuery(schema: GraphQLSchema, known: Known, chance: Chance): AnyQuery {
  return new QueryWriter(schema, known, chance).operation();
}

class QueryWriter {
  readonly #schema: GraphQLSchema;
  readonly #known: Known;
  readonly #chance: Chance;
  readonly #declared: string[] = [];
  readonly #variables: Record<string, unknown> = {};
  readonly #fragments: string[] = [];
  /** Of a form that is wrong somewhere; else only values are not what is expected, and the query comes to be executed. */
  readonly #isWild: boolean;
  /** Kind that the field which is written now speaks of: `editPlate` of plates. */
  #kind = '';
  /** Fields that may still be written. */
  #room: number;

  constructor(schema: GraphQLSchema, known: Known, chance: Chance) {
    this.#schema = schema;
    this.#known = known;
    this.#chance = chance;
    this.#isWild = chance.percent(40);
    this.#room = chance.pick(this.#isWild ? [3, 10, 40, 400] : [2, 5, 10, 20]);
  }

  operation(): AnyQuery {
    const mutation = this.#schema.getMutationType();
    const isMutation = mutation !== undefined && mutation !== null && this.#chance.percent(40);
    const root = isMutation ? mutation : this.#schema.getQueryType()!;
    const body = this.#selection(root, this.#chance.pick([2, 4, 7, 20]));
    const declared = this.#declared.length === 0 ? '' : `(${this.#declared.join(', ')})`;
    const query = `${isMutation ? 'mutation' : 'query'} Q${declared} ${body}\n${this.#fragments.join('\n')}`;
    return { query, variables: this.#variables };
  }

  #selection(type: GraphQLOutputType, depth: number): string {
    const named = getNamedType(type);
    if (isAbstractType(named)) {
      const objects = this.#schema.getPossibleTypes(named);
      const parts = Array.from({ length: 1 + this.#chance.below(3) }, () => {
        const object = this.#chance.pick(objects);
        return `... on ${object.name} ${this.#selection(object, depth)}`;
      });
      return `{ __typename ${parts.join(' ')} }`;
    }
    if (!isObjectType(named)) return '{ __typename }';
    const fields = Array.from({ length: 1 + this.#chance.below(4) }, () => this.#field(named, depth));
    // The same field twice would have to be asked in the same way.
    const distinct = this.#isWild ? fields : [...new Map(fields.map(field => [field.split(/\W/)[0], field])).values()];
    const body = `{ ${distinct.join(' ')} }`;
    return this.#chance.percent(8) ? `{ ...${this.#fragment(named, body)} }` : body;
  }

  #fragment(type: GraphQLObjectType, body: string): string {
    const name = `F${this.#fragments.length}`;
    // Now and then one that goes round.
    const inside = this.#isWild && this.#chance.percent(10) ? body.replace(/\}$/, `...${name} }`) : body;
    this.#fragments.push(`fragment ${name} on ${type.name} ${inside}`);
    return name;
  }

  #field(type: GraphQLObjectType, depth: number): string {
    const fields = Object.values(type.getFields());
    const leaves = fields.filter(field => isLeafType(getNamedType(field.type)));
    const ends = depth <= 1 || this.#room-- <= 0;
    if (ends && leaves.length === 0) return '__typename';
    const field = this.#chance.pick(ends ? leaves : fields);
    const alias = this.#isWild && this.#chance.percent(15) ? `a${this.#chance.below(50)}: ` : '';
    const directives = ['skip(if: false)', ...(this.#isWild ? ['include(if: 1)', 'none'] : [])];
    const directive = this.#chance.percent(3) ? ` @${this.#chance.pick(directives)}` : '';
    this.#kind = field.name.replace(/^[a-z]+/, '');
    const args = this.#args(field.args);
    const inner = isLeafType(getNamedType(field.type)) ? '' : ` ${this.#selection(field.type, depth - 1)}`;
    return `${alias}${field.name}${args}${directive}${inner}`;
  }

  #args(args: readonly GraphQLArgument[]): string {
    const given = args.filter(({ type }) => this.#chance.percent(isNonNullType(type) ? 97 : 35));
    if (given.length === 0) return '';
    return `(${given.map(arg => `${arg.name}: ${this.#argument(arg.type, arg.name)}`).join(', ')})`;
  }

  #argument(type: GraphQLInputType, name: string): string {
    const value = this.#value(type, name, 4);
    if (!this.#chance.percent(45)) return literal(value, type);
    const variable = `v${this.#declared.length}`;
    this.#declared.push(`$${variable}: ${this.#isWild && this.#chance.percent(10) ? 'Int' : String(type)}`);
    this.#variables[variable] = value;
    return `$${variable}`;
  }

  #value(type: GraphQLInputType, name: string, depth: number): unknown {
    if (this.#chance.percent(this.#isWild ? 4 : 1)) return this.#chance.pick(wrongValues);
    if (isNonNullType(type)) return this.#value(type.ofType, name, depth);
    if (isListType(type)) {
      const length = this.#chance.pick([0, 1, 1, 2, 2, 5, ...(this.#isWild ? [201] : [])]);
      return Array.from({ length }, () => this.#value(type.ofType, name, depth - 1));
    }
    if (isEnumType(type))
      return this.#isWild && this.#chance.percent(6)
        ? 'NO_SUCH_WORD'
        : new Word(this.#chance.pick(type.getValues()).name);
    if (isInputObjectType(type)) {
      const fields = Object.values(type.getFields());
      const chosen = type.isOneOf
        ? [this.#chance.pick(fields), ...(this.#chance.percent(10) ? [this.#chance.pick(fields)] : [])]
        : fields.filter(field => this.#chance.percent(isNonNullType(field.type) ? 97 : depth > 0 ? 30 : 0));
      return Object.fromEntries(chosen.map(field => [field.name, this.#value(field.type, field.name, depth - 1)]));
    }
    return this.#scalar(getNamedType(type).name, name);
  }

  #scalar(type: string, name: string): unknown {
    const { cursors } = this.#known;
    if (type === 'Boolean') return this.#chance.percent(50);
    if (type === 'Int' || type === 'Float')
      return this.#chance.percent(this.#isWild ? 50 : 85) ? this.#chance.below(9) : this.#chance.pick(hostileNumbers);
    if (type === 'ID')
      return this.#chance.percent(this.#isWild ? 60 : 95) ? this.#id(name) : this.#chance.pick(hostileIds);
    if (type === 'EDTF') return this.#chance.percent(50) ? '1766' : this.#chance.pick(hostileDates);
    if (name === 'after') return this.#cursor(this.#chance.pick([...cursors, '']));
    if (!this.#isWild && this.#chance.percent(75)) return this.#chance.pick(['London', 'shore', 'en', '1766', '25F3']);
    return this.#chance.pick([...hostileTexts, ...hostileDates, 'London', 'shore', 'en']);
  }

  /** Most often one of the kind that the name speaks of. */
  #id(name: string): string {
    const { ids } = this.#known;
    const named = ids.filter(id =>
      (meant[name] ?? [(name === 'id' ? this.#kind : name).toLowerCase()]).includes(id.split('-')[0]!),
    );
    return this.#chance.pick(named.length > 0 && this.#chance.percent(90) ? named : ids);
  }

  /** One that was given out, or one that was changed since. */
  #cursor(cursor: string): string {
    const position = [1, 'x', null, ['a', 'b'], { id: 'work-a-b' }, ['WHOLE', '', 'work-a-b'], [Number.MAX_VALUE, '']];
    const list = Buffer.from(cursor, 'base64url').toString().slice(2, 10);
    return this.#chance.pick([
      cursor,
      cursor.slice(1),
      Buffer.from(JSON.stringify([list, this.#chance.pick(position)])).toString('base64url'),
      ...hostileTexts.slice(0, 12),
    ]);
  }
}

/** Kinds that stand in roles and fields of other names than theirs. */
const pictures = ['plate', 'motif', 'artwork'];
const meant: Readonly<Record<string, readonly string[]>> = {
  ...{ copy: pictures, source: pictures, picture: pictures, against: pictures, what: ['edition', 'exemplar'] },
  ...{ at: ['place'], where: ['place'], within: ['place'], who: ['agent', 'workshop'], one: ['work'], other: ['work'] },
  ...{
    parent: ['piece'],
    cast: ['piece'],
    part: ['piece'],
    whole: ['piece'],
    later: ['edition'],
    earlier: ['edition'],
  },
};

/** A word of an enumeration, which has no quotes in a query. */
class Word {
  readonly word: string;
  constructor(word: string) {
    this.word = word;
  }
  toJSON(): string {
    return this.word;
  }
}

/** A value in the syntax of queries. */
function literal(value: unknown, type?: GraphQLInputType): string {
  if (value instanceof Word) return value.word;
  if (Array.isArray(value)) return `[${value.map(each => literal(each, type)).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).map(([name, each]) => `${name}: ${literal(each)}`);
  return `{${fields.join(', ')}}`;
}
