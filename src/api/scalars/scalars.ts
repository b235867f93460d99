import { GraphQLScalarType } from 'graphql';
import { formatDay, parseDay } from '../../domain/dates/calendar.ts';
import { edtfBounds } from '../../domain/dates/edtf.ts';
import { textForms } from '../../domain/model/graph-file-schema.ts';
import { PlatestemmaError } from '../../errors.ts';

/** Custom scalars, by name; their doc texts stand in schema/graphql/scalars.graphql. */
export const scalars: Readonly<Record<string, GraphQLScalarType>> = {
  EDTF: textScalar('EDTF', edtfBounds),
  Day: textScalar('Day', parseDay, value => (typeof value === 'number' ? formatDay(value) : value)),
  DateTime: textScalar('DateTime', text =>
    fits(text, /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d+)?Z$/, 'an instant in UTC'),
  ),
  URL: textScalar('URL', text => fits(text, new RegExp(textForms.uri.pattern), textForms.uri.words)),
  LanguageTag: textScalar('LanguageTag', text =>
    fits(text, new RegExp(textForms.language.pattern), textForms.language.words),
  ),
  JSON: new GraphQLScalarType({ name: 'JSON' }),
};

/** A scalar that is a text of a form: `check` throws for another. */
function textScalar(
  name: string,
  check: (text: string) => unknown,
  output: (value: unknown) => unknown = value => value,
): GraphQLScalarType {
  return new GraphQLScalarType({
    name,
    coerceOutputValue: output,
    coerceInputValue: value => {
      if (typeof value !== 'string')
        throw new PlatestemmaError('INPUT_INVALID', `expected a text for ${name}, came ${JSON.stringify(value)}`);
      check(value);
      return value;
    },
  });
}

function fits(text: string, form: RegExp, words: string): void {
  if (!form.test(text)) throw new PlatestemmaError('INPUT_INVALID', `expected ${words}, came "${text.slice(0, 60)}"`);
}
