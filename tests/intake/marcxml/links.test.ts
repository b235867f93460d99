import { describe, expect, it } from 'vitest';
import type { IntendedLink } from '../../../src/intake/intention.ts';
import { bundleOf, rowsOf } from './bundles.ts';

const links = (...lines: readonly string[]): readonly IntendedLink[] => bundleOf(...lines).links;
const published = '260 ##$aLondon :$bX,$c1834.';
/** What a link says, without name and evidence. */
const said = ({ row, role, target }: IntendedLink) => {
  const { id: _id, evidence: _evidence, ...rest } = row as unknown as Record<string, unknown>;
  return { ...rest, [role]: `${target.source} ${target.key}` };
};

describe('links to other records', () => {
  // Directions: reciprocal tags and display constants of https://www.loc.gov/marc/bibliographic/bd76x78x.html
  it.each([
    [
      '765 0#$tPaul et Virginie$w(XX)5',
      { kind: 'EditionDescent', later: '@edition', earlier: 'XX 5', text: 'TRANSLATED' },
    ],
    [
      '767 0#$tPaul and Virginia$w(XX)5',
      { kind: 'EditionDescent', later: 'XX 5', earlier: '@edition', text: 'TRANSLATED' },
    ],
    [
      '780 00$tBulletin$w(OCoLC)1777831',
      { kind: 'EditionDescent', later: '@edition', earlier: 'OCoLC 1777831', text: 'CONTINUED' },
    ],
    ['785 00$tBulletin$w(XX)5', { kind: 'EditionDescent', later: 'XX 5', earlier: '@edition', text: 'CONTINUED' }],
    ['760 0#$tSeries$w(XX)5', { kind: 'PartOf', part: '@edition', whole: 'XX 5' }],
    ['762 0#$tSubseries$w(XX)5', { kind: 'PartOf', part: 'XX 5', whole: '@edition' }],
    [
      '773 0#$tHorizon$gVol. 17, no. 98 (Feb. 1948), p. 78-159$w(XX)5',
      { kind: 'PartOf', part: '@edition', whole: 'XX 5', number: 'Vol. 17, no. 98 (Feb. 1948), p. 78-159' },
    ],
    ['774 0#$tPlate 1$w(XX)5', { kind: 'PartOf', part: 'XX 5', whole: '@edition' }],
    ['830 #0$aÉrtekezések ;$v18/4.$w(XX)5', { kind: 'PartOf', part: '@edition', whole: 'XX 5', number: '18/4.' }],
  ])('%s', (line, expected) => {
    expect(links(line).map(said)).toMatchObject([expected]);
  });

  it('name the target by source and number, blanks (#) aside', () => {
    expect(links('773 0#$gVol. 2$w(DLC)###75001234#').map(link => link.target)).toEqual([
      { source: 'DLC', key: '75001234' },
    ]);
    expect(links('773 0#$tX$w8040016').map(link => link.target)).toEqual([{ source: 'XX', key: '8040016' }]);
    expect(links('773 0#$tX$w(DLC)###79024054#$w(XX)8040016').map(link => link.target)).toEqual([
      { source: 'XX', key: '8040016' },
    ]);
  });

  it('without a number stay readable text', () => {
    const bundle = bundleOf('780 00$tBulletin des procès-verbaux$x1155-6811');
    expect(bundle.links).toEqual([]);
    expect(rowsOf(bundle, 'Edition')[0]?.columns).toEqual({ 'MARC 780': 'Bulletin des procès-verbaux 1155-6811' });
  });
});

describe('links between editions that give no direction', () => {
  // Forms of fields 775 and 787 of the British Library's sample records (CC0)
  it('take it from the dates, and are probable', () => {
    expect(
      links(published, '775 0#$t[A title.]$dpp. 342. T. Nelson & Sons: London, 1860. 8º.$w(XX)5').map(said),
    ).toEqual([
      {
        kind: 'EditionDescent',
        later: 'XX 5',
        earlier: '@edition',
        certainty: 'PROBABLE',
        asWritten: '[A title.] pp. 342. T. Nelson & Sons: London, 1860. 8º.',
      },
    ]);
    expect(links(published, '775 0#$tX$dpp. 20. Paris, [1820?] 8º.$w(XX)5').map(said)).toMatchObject([
      { later: '@edition', earlier: 'XX 5' },
    ]);
  });

  it('take it from the words of the cataloguer', () => {
    expect(links('775 08$iReprint of:$tX$w(XX)5').map(said)).toMatchObject([{ later: '@edition', earlier: 'XX 5' }]);
    expect(links('776 08$iReproduced as:$tX$w(XX)5').map(said)).toMatchObject([
      { later: 'XX 5', earlier: '@edition', text: 'SAME' },
    ]);
  });

  it.each([
    ['of one year', '775 0#$tX$dLondon, 1834.$w(XX)5'],
    ['whose dates overlap', '775 0#$tX$dLondon, [183-]$w(XX)5'],
    ['of which one has no date', '775 0#$tX$dLondon$w(XX)5'],
  ])('are none %s', (_, line) => {
    expect(links(published, line)).toEqual([]);
  });

  it('called related (787) are held where the titles agree, else weighed', () => {
    const of = (title: string): string => `787 0#$t${title}$dpp. 302. Harper: New York, [1820.] 12º.$w(XX)5`;
    expect(links(published, of('A title.')).map(said)).not.toHaveProperty('0.stance');
    expect(links(published, of('Another title.')).map(said)).toMatchObject([{ stance: 'WEIGHED' }]);
  });
});
