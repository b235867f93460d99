/** What a relator subfield says: a MARC relator code, or undefined where the words are not known. */
export function relatorCode(words: string): string | undefined {
  if (words.length > longest) return undefined;
  const plain = words.normalize('NFC').trim().toLowerCase().replace(/\s+/g, ' ');
  const term = /^https?:/.test(plain) ? plain.slice(plain.lastIndexOf('/') + 1) : plain;
  return codeOf.get(term.replace(/^[([]+|[\s.,;:)\]]+$/g, ''));
}

const longest = 100;

/** Codes and terms of the Library of Congress. https://www.loc.gov/marc/relators/relaterm.html */
const terms = `abr abridger;acp art copyist;act actor;adp adapter;aft author of afterword, colophon, etc.;ann annotator;
ant bibliographic antecedent;aqt author in quotations or text abstracts;arc architect;arr arranger;art artist;
asn associated name;att attributed name;auc auctioneer;aud author of dialog;aui author of introduction, etc.;aut author;
bdd binding designer;bjd bookjacket designer;bkd book designer;bkp book producer;bnd binder;bpd bookplate designer;
bsl bookseller;cas caster;ccp conceptor;cli client;cll calligrapher;clr colorist;clt collotyper;cmm commentator;
cmp composer;cmt compositor;cns censor;col collector;com compiler;con conservator;cov cover designer;
cpc copyright claimant;cph copyright holder;cre creator;crp correspondent;crr corrector;csl consultant;ctb contributor;
ctg cartographer;cur curator;cwt commentator for written text;dbp distribution place;dis dissertant;dln delineator;
dnr donor;dpc depicted;dpt depositor;drm draftsman;dsr designer;dst distributor;dte dedicatee;dto dedicator;
dub dubious author;edc editor of compilation;edt editor;egr engraver;elt electrotyper;eng engineer;etr etcher;
exp expert;fac facsimilist;fmo former owner;fnd funder;frg forger;hnr honoree;hst host;ill illustrator;ilu illuminator;
ins inscriber;inv inventor;isb issuing body;ive interviewee;ivr interviewer;lbr laboratory;lbt librettist;len lender;
lse licensee;lso licensor;ltg lithographer;lyr lyricist;mfp manufacture place;mfr manufacturer;mrb marbler;
mte metal-engraver;mus musician;nrt narrator;org originator;oth other;own owner;pat patron;pbd publishing director;
pbl publisher;pfr proofreader;pht photographer;plt platemaker;pop printer of plates;ppm papermaker;pra praeses;
prm printmaker;prt printer;pup publication place;rbr rubricator;rcp addressee;red redaktor;ren renderer;res researcher;
rev reviewer;rps repository;rpt reporter;rpy responsible party;rsp respondent;scl sculptor;scr scribe;sgn signer;
sll seller;spk speaker;spn sponsor;srv surveyor;stl storyteller;str stereotyper;trc transcriber;trl translator;
tyd type designer;tyg typographer;wac writer of added commentary;wam writer of accompanying material;wat writer of added text;
wdc woodcutter;wde wood engraver;win writer of introduction;wpr writer of preface;wst writer of supplementary textual content`;

/**
 * Other words and abbreviations of catalogues in English, German and French. Terms of the RDA registry where it has
 * them, else common practice. A word that names two trades stands under the wider code.
 */
const otherWords = `ill: ill, illus, illust, illustr, illustrated by, illustrateur, illustratrice, illustrations de, zeichner
 der illustrationen, illustratorin, bilder von;
art: künstler, künstlerin, artiste, maler, peintre, painter, pinx, pinxit, inv, invenit, invt;
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
for (const entry of terms.split(';')) {
  const code = entry.trim().slice(0, 3);
  codeOf.set(code, code);
  codeOf.set(entry.trim().slice(4).replace(/\.$/, ''), code);
}
