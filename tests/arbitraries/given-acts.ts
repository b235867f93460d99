import fc from 'fast-check';
import type { Act, ActField } from '../../src/domain/acts/act.ts';
import { type ActName, actNames, acts } from '../../src/domain/acts/acts.ts';
import { kindOfId } from '../../src/domain/model/id.ts';
import { isClaimKind, isRecordKind, type KindName } from '../../src/domain/model/kinds.ts';
import type { GivenAct } from '../../src/questions/commands.ts';

/** Acts with whatever their declarations let them be given, of what a store has; now and then of what none has. */
export function givenActs(ids: readonly string[]): fc.Arbitrary<readonly GivenAct[]> {
  return fc.array(
    fc.constantFrom(...actNames).chain(name => givenAct(name, ids)),
    { minLength: 1, maxLength: 3 },
  );
}

function givenAct(name: ActName, ids: readonly string[]): fc.Arbitrary<GivenAct> {
  const { fields, needs }: Act = acts[name];
  const oneOfEach = fc.tuple(...needs.map(group => fc.constantFrom(...group)));
  return oneOfEach.chain(needed => {
    const values = Object.entries(fields).map(([field, declared]) => {
      const often = declared.required === true || needed.includes(field) ? 40 : 2;
      const value = { weight: often, arbitrary: anyValue(declared, ids) };
      return [field, fc.oneof({ weight: 42 - often, arbitrary: fc.constant(undefined) }, value)];
    });
    return fc.record(Object.fromEntries(values) as Record<string, fc.Arbitrary<unknown>>).map(given => ({
      act: name,
      given: Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)),
    }));
  });
}

const texts = ['A ferry', 'Jens Ohlsen', 'Peter Ohlsen', 'Paris', '4', '1-3', 'um 1768', 'Publish’d 1 May 1793', ' '];

function anyValue(field: ActField, ids: readonly string[]): fc.Arbitrary<unknown> {
  const one = single(field, ids);
  const isMany = field.type === 'items' || ('many' in field && field.many === true);
  return isMany ? fc.array(one, { minLength: 1, maxLength: 3 }) : one;
}

function single(field: ActField, ids: readonly string[]): fc.Arbitrary<unknown> {
  switch (field.type) {
    case 'record': {
      const fit = ids.filter(id => isOf(kindOfId(id)!, field.to));
      return fc.oneof(
        { weight: 20, arbitrary: fc.constantFrom(...(fit.length > 0 ? fit : ids)) },
        { weight: 1, arbitrary: fc.constantFrom(...ids, 'plate-that-is-none') },
      );
    }
    case 'word':
      return fc.constantFrom(...Object.keys(field.of.words));
    case 'integer':
      return fc.integer({ min: 1, max: 4 });
    case 'number':
      return fc.integer({ min: 0, max: 60 });
    case 'flag':
      return fc.boolean();
    case 'edtf':
      return fc.constantFrom('1766', '1770~', '[1755..1761]', '1790-06');
    case 'day':
      return fc.constant('2026-02-01');
    case 'language':
      return fc.constant('nl');
    case 'items': {
      const parts = Object.entries(field.item).map(([name, part]) => [name, anyValue(part as ActField, ids)]);
      const needed = Object.entries(field.item).flatMap(([name, part]) => (part.required === true ? [name] : []));
      return fc.record(Object.fromEntries(parts) as Record<string, fc.Arbitrary<unknown>>, { requiredKeys: needed });
    }
    default:
      return fc.constantFrom(...texts);
  }
}

function isOf(kind: KindName, to: readonly string[]): boolean {
  if (to.includes('any record')) return isRecordKind(kind);
  return to.includes(kind) || (to.includes('any claim') && isClaimKind(kind));
}
