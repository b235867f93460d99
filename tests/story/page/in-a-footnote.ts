import type { Sentence, Told } from './sentence.ts';

async function cited({ questions }: Told, id: string): Promise<string> {
  const { text } = await questions.citation({ of: [id], format: 'TEXT' });
  return text.trim();
}

export const inAFootnote: readonly Sentence[] = [
  {
    says: 'The cut of the lighthouse is cited with the number and the page of the magazine.',
    ask: told => cited(told, 'plate-cabinet-lighthouse'),
    answer: '“A Light-House on the Coast of Jutland.” Woodcut. The Monthly Cabinet, March 1765, 117.',
    planted: { 'edition-cabinet-march-1765': { number: 'April 1765' } },
  },
  {
    says: 'The etching of the fish market is cited with its etcher, its technique and its size.',
    ask: told => cited(told, 'plate-fish-market-etching'),
    answer: 'Roorda, Symon. Vismarkt op het strand. Etching, 26 x 34 cm. Amsterdam: Symon Roorda, 1692.',
    planted: { 'plate-fish-market-etching': { size: '27 x 34 cm' } },
  },
];
