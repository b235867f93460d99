import { relatorTerms } from './relator-terms.ts';

/** What a relator subfield says: a MARC relator code, or undefined where the words are not known. */
export function relatorCode(words: string): string | undefined {
  if (words.length > longest) return undefined;
  const plain = words.normalize('NFC').trim().toLowerCase().replace(/\s+/g, ' ');
  const term = /^https?:/.test(plain) ? plain.slice(plain.lastIndexOf('/') + 1) : plain;
  return codeOf.get(term.replace(/^[([]+|[\s.,;:)\]]+$/g, ''));
}

const longest = 100;

/**
 * Other words and abbreviations of catalogues in English, German and French. Common practice. A word that names two
 * trades stands under the wider code; what is a code of the list means that code.
 */
const otherWords = `ill: ill, illus, illust, illustr, illustrated by, illustrateur, illustratrice, illustrations de, zeichner
 der illustrationen, illustratorin, bilder von;
art: künstler, künstlerin, artiste, maler, peintre, painter, pinx, pinxit, invenit, invt;
dln: del, delin, delineavit, zeichner, zeichnerin, dessinateur, dessinatrice, dess, draughtsman of the original;
drm: draughtsman, technischer zeichner;
egr: engr, engraved by, engr by, sc, sculp, sculpt, sculpsit, grav, graveur, graveuse, stecher, stecherin, kupferstecher,
 stich, gest, gest von, kupferst, incisore, grabador;
etr: etched by, radierer, radiererin, aquafortiste, fecit aqua forti;
mte: metal engraver, stahlstecher, steel engraver, copper engraver, graveur en taille-douce;
wde: wood-engraver, holzstecher, xylograph, xylographer, graveur sur bois;
wdc: holzschneider, formschneider, wood cutter;
ltg: lith, litho, lithogr, lithograph, lithograf, lithographe, lithografin, lithographed by, lithographin;
prm: druckgraphiker, druckgrafiker, graphiker, grafiker, artiste graveur;
pop: plate printer, kupferdrucker, imprimeur en taille-douce;
str: stereotypeur, clicheur;
clr: colourist, colorer, koloristin, kolorist, coloriste, coloured by;
pht: phot, photogr, photograph, fotograf, fotografin, photographe;
aut: auth, verfasser, verfasserin, verf, vf, autor, autorin, auteur, joint author, main author, text von;
trl: trans, transl, tr, translated by, übers, übersetzer, übersetzerin, uebers, uebersetzer, traducteur,
 traductrice, trad, traduction, traductor, traduttore;
edt: ed, eds, edited by, joint editor, hrsg, hg, herausgeber, herausgeberin, éd, éditeur scientifique, directeur
 de la publication, editeur intellectuel;
com: comp, compiled by, bearb, bearbeiter, bearbeiterin, zsgest, compilateur, compilatrice, joint compiler;
cmm: komm, kommentator, kommentatorin, commentateur;
aui: introd, introduction, author of introduction, introduction by, einleitung von, introduction de;
wpr: pref, preface, préf, préfacier, vorr, verfasser des vorworts, vorwort, author of preface, préface;
aft: nachw, nachwort, author of afterword, verfasser des nachworts, postface, postfacier;
adp: adapt, adapted by, adaptateur, bearbeiter des textes;
ann: annot, annotateur, annotated by;
cmp: komp, komponist, komponistin, compositeur;
ctg: cartogr, kartograph, kartograf, kartographin, cartographe, mapmaker;
pbl: publ, pub, published by, verlag, verleger, verlegerin, éditeur, editeur, exc, excudit, excud;
prt: printed by, drucker, druckerin, druck, impr, imprimeur, imprimeur-libraire, imp, typ, typographe;
bsl: buchhändler, libraire, sold by, book seller;
dst: vertrieb, diffuseur, distributed by, en dépôt chez;
isb: hrsg. organ, herausgebendes organ, issued by, collectivité éditrice;
dte: dedicated to, widmungsempfänger, dédicataire;
dto: widmender, dédicateur;
own: eigentümer, current owner, propriétaire;
fmo: vorbesitzer, früherer eigentümer, ancien possesseur, previous owner, provenance;
col: sammler, collectionneur;
asn: associated, associated with the work;
att: zugeschr, attributed to, supposed author, mutmaßlicher verfasser, auteur supposé, attribué à;
dub: zweifelhafter verfasser, auteur douteux;
bnd: buchbinder, bound by, relieur;
bdd: einbandgestalter, concepteur de la reliure;
cov: umschlaggestalter, cover artist, couverture de;
dsr: entwerfer, designed by, concepteur;
res: recherche;
ctb: mitwirkender, mitwirkende, mitarb, mitarbeiter, contrib, collaborateur, collaborator, with;
oth: sonstige, sonstige person, autre;
dis: respondent of dissertation, doktorand;
pra: praes, präses;
rsp: resp`;

const codeOf = new Map<string, string>();
for (const entry of otherWords.split(';')) {
  const [code, words] = entry.trim().split(': ');
  for (const word of words!.split(',')) codeOf.set(word.trim().replace(/\s+/g, ' ').replace(/\.$/, ''), code!);
}
for (const [code, term] of relatorTerms) {
  codeOf.set(code, code);
  codeOf.set(term.toLowerCase().replace(/\.$/, ''), code);
}
