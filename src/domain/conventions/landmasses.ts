import { boxContains, type CoordinateBox } from './coordinate-box.ts';
import type { LocatedPlace } from './located-place.ts';

/**
 * Land that can be crossed without a voyage. Convention: islands that a post road reached by a short ferry belong to
 * their mainland (Anglesey, Wight, the Danish islands but Bornholm, Zeeland, Long Island, Singapore); Africa is parted
 * from Eurasia at Suez, North from South America at Darien, for want of a road for goods.
 */
export type Landmass = keyof typeof codesOfLandmass | (typeof islandBoxes)[number][1];

const codesOfLandmass = {
  'Great Britain': 'enk stk wlk xxk',
  Ireland: 'ie nik',
  Eurasia: [
    'aa ai aj an au be bg bn br bt bu bw cb cc ci dk er fi fr gi gr gs gw hu ii iq ir is it jo kg kn ko kv kz le lh li',
    'ls lu lv mc mk mo mp mv my ne no np pk pl po qa rb rm ru si sm sp su sw sy sz ta th tk ts tu un uz vc vm wj gz xn',
    'xo xr xv ye ba ku iy af',
  ].join(' '),
  Africa:
    'ae ao bd bs cd cf cg cm cx dm ea eg et ft gh gm go gv iv ke lb lo ly ml mr mu mw mz ng nr pg rh rw sa sd sg sh sj sl so sq ss sx tg ti tz ua ug uv za',
  'North America':
    'abc aku alu aru azu bcc bh cau cou cr ctu dcu deu es flu gau gt ho iau idu ilu inu ksu kyu lau mau mbc mdu meu miu mnu mou msu mtu mx nbu ncu ndu nhu nju nkc nmu nq nsc ntc nuc nvu nyu ohu oku onc oru pau pn quc riu scu sdu snc tnu txu utu vau vtu wau wiu wvu wyu xxc xxu ykc',
  'South America': 'ag bl bo ck cl ec fg gy pe py sr uy ve',
  Australia: 'aca at qea vra wea xna xoa xra',
  Tasmania: 'tma',
  'New Zealand North Island': 'nz',
  Iceland: 'ic',
  Greenland: 'gl',
  'Faroe Islands': 'fa',
  Malta: 'mm',
  Cyprus: 'cy',
  Ceylon: 'ce',
  Japan: 'ja',
  Formosa: 'ch',
  Java: 'io',
  Luzon: 'ph',
  Borneo: 'bx',
  'New Guinea': 'pp',
  Madagascar: 'mg',
  Mauritius: 'mf',
  Réunion: 're',
  Seychelles: 'se',
  'Saint Helena': 'xj',
  'Cape Verde': 'cv',
  'São Tomé': 'sf',
  Newfoundland: 'nfc',
  'Prince Edward Island': 'pic',
  'Saint-Pierre': 'xl',
  Bermuda: 'bm',
  Bahamas: 'bf',
  Cuba: 'cu',
  Jamaica: 'jm',
  Hispaniola: 'dr ht',
  'Puerto Rico': 'pr',
  'Virgin Islands': 'vb vi',
  Antigua: 'aq',
  'Saint Kitts': 'xd',
  Montserrat: 'mj',
  Anguilla: 'am',
  Guadeloupe: 'gp',
  Martinique: 'mq',
  Barbados: 'bb',
  Trinidad: 'tr',
  Grenada: 'gd',
  Dominica: 'dq',
  'Saint Lucia': 'xk',
  'Saint Vincent': 'xm',
  Curaçao: 'co',
  Aruba: 'aw',
  'Falkland Islands': 'fk',
  Hawaii: 'hiu',
  Fiji: 'fj',
  Samoa: 'as ws',
  Tonga: 'to',
  Tahiti: 'fp',
  'New Caledonia': 'nl',
} as const;

/** Islands that share their country's code with other land. */
const islandBoxes = [
  ['stk', 'Orkney', [58.65, -3.5, 59.45, -2.3]],
  ['stk', 'Shetland', [59.8, -2.2, 60.9, -0.7]],
  ['stk', 'Outer Hebrides', [56.75, -7.8, 58.6, -6.12]],
  ['xxk', 'Ireland', [54, -8.2, 55.35, -5.42]],
  ['uik', 'Isle of Man', [54, -4.9, 54.45, -4.2]],
  ['uik', 'Guernsey', [49.38, -2.75, 49.8, -2.3]],
  ['uik', 'Jersey', [49.1, -2.3, 49.3, -1.9]],
  ['dk', 'Bornholm', [54.9, 14.6, 55.4, 15.2]],
  ['sw', 'Gotland', [56.8, 17.9, 58.1, 19.5]],
  ['fi', 'Åland', [59.7, 19.3, 60.6, 20.9]],
  ['er', 'Ösel', [57.8, 21.7, 59.1, 23.3]],
  ['fr', 'Corsica', [41.3, 8.5, 43.1, 9.6]],
  ['it', 'Sardinia', [38.8, 8, 41.3, 9.9]],
  ['it', 'Sicily', [36.5, 11.8, 38.3, 15.63]],
  ['sp', 'Majorca', [39.2, 2.3, 40, 3.5]],
  ['sp', 'Minorca', [39.75, 3.75, 40.15, 4.4]],
  ['sp', 'Canary Islands', [27.5, -18.3, 29.5, -13.3]],
  ['po', 'Madeira', [32.3, -17.4, 33.2, -16.2]],
  ['po', 'Azores', [36.8, -31.4, 39.8, -24.9]],
  ['gr', 'Corfu', [39.3, 19.5, 39.9, 20.15]],
  ['gr', 'Cephalonia', [38, 20.3, 38.55, 20.85]],
  ['gr', 'Zante', [37.6, 20.6, 37.95, 21.02]],
  ['gr', 'Crete', [34.8, 23.4, 35.75, 26.4]],
  ['gr', 'Syros', [37.3, 24.8, 37.55, 25.02]],
  ['gr', 'Chios', [38.1, 25.8, 38.65, 26.2]],
  ['ua', 'Eurasia', [29, 32.6, 31.4, 34.9]],
  ['tz', 'Zanzibar', [-6.6, 39.1, -5.6, 39.65]],
  ['nfc', 'North America', [51.68, -67.9, 60.5, -55.2]],
  ['nsc', 'Cape Breton', [45.55, -61.5, 47.1, -59.6]],
  ['mau', 'Nantucket', [41.2, -70.3, 41.4, -69.9]],
  ['mau', "Martha's Vineyard", [41.3, -70.86, 41.49, -70.4]],
  ['bcc', 'Vancouver Island', [48.25, -128.5, 50.9, -123.2]],
  ['ec', 'Galápagos', [-1.5, -92.1, 0.8, -89.2]],
  ['my', 'Penang', [5.2, 100.15, 5.5, 100.36]],
  ['my', 'Borneo', [0.8, 109.5, 7.5, 119.4]],
  ['io', 'Sumatra', [-6, 95, 6, 106.1]],
  ['io', 'Borneo', [-4.3, 108.8, 4.5, 119]],
  ['io', 'Celebes', [-6, 118.7, 2, 125.3]],
  ['io', 'Moluccas', [-8.5, 125.5, 2.7, 130.9]],
  ['io', 'Bali', [-8.9, 114.42, -8, 115.72]],
  ['io', 'New Guinea', [-9.2, 131, 0, 141.1]],
  ['ph', 'Visayas', [9, 121.8, 12.6, 125.9]],
  ['ph', 'Mindanao', [5.5, 121.8, 9, 126.7]],
  ['nz', 'New Zealand South Island', [-47.4, 166.2, -40.45, 174.45]],
  ['eg', 'Fernando Po', [3.1, 8.3, 3.9, 9]],
] as const satisfies readonly (readonly [code: string, landmass: string, box: CoordinateBox])[];

const landmassOfCode: ReadonlyMap<string, Landmass> = new Map(
  (Object.keys(codesOfLandmass) as (keyof typeof codesOfLandmass)[]).flatMap(landmass =>
    codesOfLandmass[landmass].split(' ').map(code => [code, landmass] as const),
  ),
);

/**
 * The landmass of a place by its MARC country code, and by its coordinates where islands share their country's code.
 * Undefined without a code, and for codes that name several islands where the coordinates fall in none. A place
 * without coordinates counts as on its country's mainland. Source of the boxes: convention, read off a map.
 */
export function landmassOf(place: LocatedPlace): Landmass | undefined {
  const { country, coordinates } = place;
  if (country === undefined || country === '') return undefined;
  const island = islandBoxes.find(
    ([code, , box]) => code === country && coordinates !== undefined && boxContains(box, coordinates),
  );
  return island === undefined ? landmassOfCode.get(country) : island[1];
}
