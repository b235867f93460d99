import { foldTokens } from '../text/fold.ts';
import { countryCodes } from './country-codes.ts';

/**
 * The MARC country code that a name or abbreviation stands for, as it follows a town in an imprint (`Mass.`, `N.Z.`,
 * `Norfolk`) or fills MARC 752 $a and $b (`England`, `United States`). Case, accents, full stops and spaces do not
 * count. Undefined if the name is not known, or stands for several countries.
 */
export function countryCodeOf(name: string): string | undefined {
  return codes.get(keyOf(name));
}

/** Source: abbreviations and names in use in imprints, from memory; codes of the Library of Congress list. */
const otherNames = `
alu Ala.
aru Ark.
azu Ariz.
cau Cal.; Calif.
cou Colo.
ctu Conn.; Ct.
dcu D.C.; Dist. Columbia
deu Del.
flu Fla.
gau Ga.
iau Ia.
ilu Ill.; Ills.
inu Ind.
ksu Kan.; Kans.
kyu Ky.
lau La.
mau Mass.; Ms.
mdu Md.
meu Me.
miu Mich.
mnu Minn.
mou Mo.
msu Miss.
mtu Mont.
nbu Neb.; Nebr.
ncu N.C.; N. Carolina
ndu N.D.; N. Dak.
nhu N.H.
nju N.J.; N. Jersey
nmu N.M.; N. Mex.
nvu Nev.
nyu N.Y.; New York; State of New York
ohu O.; Oh.
oku Okla.
oru Or.; Ore.; Oreg.
pau Pa.; Penn.; Penna.; Pennsylv.
riu R.I.; Rhode-Island
scu S.C.; S. Carolina
sdu S.D.; S. Dak.
tnu Tenn.
txu Tex.
utu Ut.
vau Va.
vtu Vt.; Verm.
wau Wash.; Washington
wiu Wis.; Wisc.
wvu W. Va.; W.Va.
wyu Wyo.
xxu U.S.; U.S.A.; United States of America; America; États-Unis; Estados Unidos; Vereinigte Staaten
xxk U.K.; Great Britain; Britain; United Kingdom of Great Britain and Ireland; Grande-Bretagne; Gran Bretaña; Gross-Britannien
enk Eng.; Angleterre; Inglaterra; Inghilterra; Anglia
enk Beds.; Bedfordshire; Berks.; Berkshire; Bucks.; Buckinghamshire; Cambridgeshire; Cambs.; Cheshire; Cornwall
enk Cumberland; Derbyshire; Devon; Devonshire; Dorset; Dorsetshire; Co. Durham; County Durham; Essex; Gloucestershire
enk Hants.; Hampshire; Herefordshire; Herts.; Hertfordshire; Huntingdonshire; Hunts.; Isle of Wight; I.W.; Kent
enk Lancashire; Lancs.; Leicestershire; Lincolnshire; Lincs.; Middlesex; Norfolk; Northamptonshire; Northants.
enk Northumberland; Nottinghamshire; Notts.; Oxfordshire; Oxon.; Rutland; Salop; Shropshire; Somerset; Somersetshire
enk Staffordshire; Staffs.; Suffolk; Surrey; Sussex; Warwickshire; Westmorland; Wilts.; Wiltshire; Worcestershire
enk Yorkshire; Yorks.; Greater London; Greater Manchester; Merseyside; West Midlands; Isle of Thanet
stk Scot.; N.B.; North Britain; Écosse; Schottland; Escocia; Fife; Ayrshire; Lanarkshire; Perthshire; Aberdeenshire; Angus
wlk Pays de Galles; Cymru; Monmouthshire; Glamorgan; Glamorganshire; Carmarthenshire; Pembrokeshire; Anglesey
wlk Flintshire; Denbighshire; Merionethshire; Montgomeryshire; Cardiganshire; Carnarvonshire; Caernarvonshire
ie Eire; Éire; Irlande; Irland; Irlanda; Republic of Ireland; Irish Republic; Co. Cork; Co. Mayo; Co. Kerry
nik Co. Antrim; Co. Down; Ulster
uik Isle of Man; I.O.M.; Channel Islands; Jersey; Guernsey
fr France; Frankreich; Francia; Frankrijk; Francie; Frankrike; Frankrig
gw Deutschland; Allemagne; Alemania; Germania; Duitsland; Prussia; Saxony; Bavaria; Preussen; Sachsen; Bayern; Württemberg; West Germany; East Germany
au Österreich; Oesterreich; Autriche; Austria-Hungary
sz Schweiz; Suisse; Svizzera; Suiza; Helvetia
it Italia; Italie; Italien
sp España; Espagne; Spanien; Spagna
po Portugal; Portogallo
ne Nederland; Holland; Hollande; Pays-Bas; The Netherlands; Niederlande; Holanda; Olanda
be Belgique; België; Belgien; Bélgica
lu Luxemburg
dk Danmark; Danemark; Dänemark; Dinamarca
no Norge; Norvège; Norwegen; Noruega
sw Sverige; Suède; Schweden; Suecia
fi Suomi; Finlande; Finnland
ic Ísland; Islande
ru Russia; Russie; Russland; Rusia; Россія; Россия; Russian Federation; Soviet Union; U.S.S.R.
pl Polska; Pologne; Polen; Polonia
xr Czechoslovakia; Bohemia; Böhmen; Bohême; Moravia; Mähren; Czechia
hu Magyarország; Hongrie; Ungarn; Hungría
rm Romania; Rumania; Roumania; Roumanie; Rumänien; România
gr Hellas; Grèce; Griechenland; Ἑλλάς
tu Türkei; Turquie; Ottoman Empire
rb Servia; Serbie
bu Bulgarie; Bulgarien
ci Croatie; Kroatien; Hrvatska; Dalmatia
un Ukraine; Україна
mm Malta
xxc Can.; Dominion of Canada
onc Ont.; Upper Canada; Canada West; C.W.
quc P.Q.; Que.; Quebec; Lower Canada; Canada East; C.E.
nsc N.S.
nkc N.B., Canada
pic P.E.I.
nfc Nfld.; Newfoundland; Labrador
bcc B.C.
mbc Man.
mx México; Mexique; Mexiko
cu Cuba
jm Jamaica; Jam.; W.I.
bl Brasil; Brazil; Brésil; Brasilien
ag República Argentina; Argentine Republic; Argentine
cl República de Chile
pe Perú; Pérou
gy British Guiana; Demerara
ii East Indies; Bengal; India; Inde; Indien; E.I.; Hindustan
ce Ceylon; Ceylan
br Myanmar; Birmanie
pk Pakistan
io Dutch East Indies; Java; Nederlandsch-Indië
cc China; Chine; Hong Kong; Macau; Macao
ja Japan; Japon; Nippon
ph Philippines; Filipinas; Philippine Islands
sa Cape of Good Hope; Cape Colony; Natal; Transvaal; C.G.H.
ua Égypte; Ägypten; Egipto
ae Algérie; Algerien
mf Isle de France
at Australasia; New Holland; Australie; Australien
xna N.S.W.
vra Vic.; Port Phillip
qea Qld.
xra S.A.; S. Australia
wea W.A.
tma Tas.; V.D.L.; Van Diemen's Land; Van Diemens Land
nz N.Z.; Nouvelle-Zélande
`;

function keyOf(name: string): string {
  return foldTokens(name).join('');
}

/** Names of the list come without what it adds in brackets: `Georgia (Republic)` yields to the state, `New York (State)`. */
function* pairs(): Generator<readonly [key: string, code: string]> {
  for (const [code, name] of countryCodes) yield [keyOf(name), code];
  for (const line of otherNames.trim().split('\n')) {
    const code = line.slice(0, line.indexOf(' '));
    for (const name of line.slice(line.indexOf(' ') + 1).split(';')) yield [keyOf(name), code];
  }
}

const codes: ReadonlyMap<string, string> = new Map(pairs());
