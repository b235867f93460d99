import { deepestJson } from './deep-json.ts';

const many = (piece: string, times: number) => piece.repeat(times);

/** Texts that programs have stumbled over: ends, controls, half characters, other directions, other languages' syntax. */
export const hostileTexts: readonly string[] = [
  ...[
    '',
    ' ',
    '\0',
    '\n',
    '\r\n',
    '\t',
    '\u001b[2J',
    '\u007f',
    '\u0085',
    '\u2028',
    '\u200b',
    '\ufeff',
    '\ufffd',
    '\uffff',
  ],
  ...[
    '\ud800',
    '\udc00',
    'a\ud800b',
    '\ud83d\ude00',
    many('\u0301', 300),
    `a${many('\u0300', 5000)}`,
    '\u202eabc',
    'ﷺ',
    'İ',
    'ẞ',
  ],
  ...[
    "'",
    '"',
    '`',
    '\\',
    '\\u0000',
    "' OR 1=1 --",
    '"; DROP TABLE node; --',
    '%',
    '_',
    '*',
    '?',
    '$1',
    '{{x}}',
    '$(x)',
  ],
  ...['NEAR(', 'a AND NOT b', 'a OR', '-a', '^a', 'a*', 'column:a', '(', ')', '"a', 'a"b', '<script>', ']]>', '&amp;'],
  ...['__proto__', 'constructor', 'toString', 'null', 'undefined', 'NaN', 'true', '[]', '{}', '-0', '0x10', '1e309'],
  ...[
    '(a+)+$',
    '^(([a-z])+.)+[A-Z]([a-z])+$',
    '(.*)*(.*)*x',
    '(a|a)*b',
    '\\1(a)',
    '[',
    '(?<=a)b',
    'a{1,99999}',
    '(?:)*',
  ],
  ...[
    '../../etc/passwd',
    '/dev/zero',
    'file:///etc/passwd',
    'http://localhost:1/',
    'neo4j://localhost:1',
    'C:\\x',
    '~',
    '.',
  ],
  ...['a'.repeat(300), 'a '.repeat(300), many('ab ', 20_000), many('é', 20_000), many('字', 5000), many('(', 2000)],
];

export const hostileIds: readonly string[] = [
  ...['piece-', 'piece', '-', 'piece--', 'plate-x', 'plate-7h3k9q2m4xtdq', 'plate-7h3k9q2m4xtdp', 'PIECE-SHORE-DISH'],
  ...['piece-shore-dish ', 'piece-shore-dish\0', 'piece-shore‐dish', 'nothing-at-all', 'edition-not-there', '@work'],
  ...[`plate-${'a-'.repeat(5000)}b`, `${'x'.repeat(10_000)}-y-z`, 'work-\ud800-x'],
];

export const hostileDates: readonly string[] = [
  ...[
    '17',
    '1766-13',
    '1766-02-30',
    '9999-99-99',
    'Y1E999999',
    `Y${'9'.repeat(200)}`,
    '-9999999999999',
    '1766S9999999',
  ],
  ...[
    'XXXX-XX-XX',
    '17XX-XX-X1',
    '[1766',
    '{1766}..',
    '../..',
    '/',
    '..',
    '1766/1700',
    '1766?~%',
    'today',
    '1766-06-31T25:61',
  ],
  ...[
    many('[', 5000),
    `[${many('1766,', 5000)}1766]`,
    `{${many('XXXX-XX-XX,', 2000)}1766}`,
    '[-9999..9999]',
    '[Y-200000..Y200000]',
  ],
  ...[many('1766/', 3000), many('?', 10_000), 'XXX1-02-29/XXX1-02-29', '1766-06-15/..', '١٧٦٦'],
];

export const hostileNumbers: readonly number[] = [
  ...[0, -0, -1, 1, 25, 200, 201, 1000, 2 ** 31 - 1, 2 ** 31, -(2 ** 31), -(2 ** 31) - 1, 2 ** 53, 2 ** 64, 0.5, -0.1],
  ...[1e-320, 1.797e308, 1e21],
];

/** What may stand where something else is expected. */
export const wrongValues: readonly unknown[] = [
  ...[
    null,
    true,
    false,
    [],
    {},
    [[]],
    [null],
    { a: 1 },
    ['a', 1],
    { __proto__: null },
    JSON.parse('{"__proto__":{"x":1}}'),
  ],
  ...[deepestJson(20), deepestJson(300), Array.from({ length: 3000 }, () => 'x'), { ['k'.repeat(5000)]: 1 }],
];
