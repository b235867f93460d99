/**
 * Towns of imprints in Germany, Austria, Switzerland and the Prussian provinces: `name | country codes | latitude, longitude | other names`; read by
 * `imprint-towns.ts`, which says what the signs mean. Coordinates: GeoNames (CC BY 4.0), those of hamlets and city
 * districts from memory. Which towns, and their historic, Latin and foreign names: from memory.
 */
export const germanTowns = `
*Leipzig | gw | 51.340, 12.371 | *Lipsiae; Lipsia; Leipsic; Leipsick; Lipsk; Lipsko; Лейпцигъ; Λειψία; Λειψίᾳ; Λειψιαι; Leypzig; Leipz.
*Berlin | gw | 52.524, 13.411 | *Berolini; Berlini; Berolinum; Berlín; Berlino; Berlijn; Берлинъ; Βερολίνον; ἐν Βερολίνῳ; Berlyn
Dresden | gw | 51.051, 13.738 | Dresdae; Dresda; Dresde
Meissen | gw | 51.162, 13.474 | Misenae; Meißen; Misniae
*Hamburg | gw | 53.551, 9.993 | *Hamburgi; Hambourg; Amburgo; Hamburgo
Altona | gw | 53.550, 9.945 | Altonae; Altonaviae
Bremen | gw | 53.076, 8.807 | Bremae; Brême
Lübeck | gw | 53.869, 10.687 | Lubecae; Lubeck; Luebeck
Kiel | gw | 54.321, 10.135 | Kiliae; Kilonii; Kiloniae
Schleswig | gw dk | 54.522, 9.559 | Slesvig
Flensburg | gw dk | 54.784, 9.440 | Flensborg
Rostock | gw | 54.089, 12.140 | Rostochii
Schwerin | gw | 53.629, 11.413
Güstrow | gw | 53.797, 12.173
Wismar | gw sw | 53.893, 11.453 | Wismariae
Neustadt-Glewe | gw | 53.378, 11.593 | Neustadt-Ew.
Neustrelitz | gw | 53.361, 13.073 | Strelitz
Neubrandenburg | gw | 53.564, 13.275
Stralsund | gw sw | 54.309, 13.082 | Stralesundae
Greifswald | gw sw | 54.093, 13.388 | Gryphiae; Gryphiswaldiae; Gryphiswaldae
Hannover | gw | 52.371, 9.733 | Hannoverae; Hanover; Hanovre; Hanoverae
*Göttingen | gw | 51.534, 9.932 | Gottingae; Goettingae; Goettingen; Gottingue; Gottinga
Braunschweig | gw | 52.266, 10.527 | Brunsvigae; *Brunswick; Brunsuigae; Brunsvici
Wolfenbüttel | gw | 52.164, 10.541 | Guelpherbyti; Wolffenbüttel
Helmstedt | gw | 52.228, 11.010 | Helmstadii; Helmaestadii; Helmstadt
Celle | gw | 52.623, 10.080 | Cellis; Zelle
Lüneburg | gw | 53.251, 10.414 | Luneburgi
Hildesheim | gw | 52.151, 9.951 | Hildesiae
Goslar | gw | 51.904, 10.428
Clausthal | gw | 51.809, 10.338 | Clausthal-Zellerfeld
Osnabrück | gw | 52.273, 8.050 | Osnabrugi
Oldenburg | gw | 53.141, 8.215
Emden | gw | 53.367, 7.208 | Embdae
Fürstenberg, Weser | gw | 51.730, 9.400 | Fürstenberg
Lemgo | gw | 52.028, 8.899 | Lemgoviae
Detmold | gw | 51.939, 8.873
Bückeburg | gw | 52.261, 9.049
Rinteln | gw | 52.186, 9.079 | Rintelii
Minden | gw | 52.290, 8.915
Bielefeld | gw | 52.033, 8.533
Gütersloh | gw | 51.907, 8.379
Paderborn | gw | 51.719, 8.754 | Paderbornae
Münster | gw | 51.962, 7.626 | Monasterii; Monasterii Westphalorum; Monasterrii; Muenster; Munster
Dortmund | gw | 51.515, 7.466
Hamm | gw | 51.680, 7.821
Soest | gw | 51.576, 8.106 | Susati
Arnsberg | gw | 51.383, 8.083
Iserlohn | gw | 51.375, 7.703
Siegen | gw | 50.875, 8.024
*Köln | gw | 50.933, 6.950 | Coloniae; Coloniae Agrippinae; Cologne; Cöln; Coln; Coloniae Agripinae; Colonia; Keulen; Koeln; Kölln
Bonn | gw | 50.734, 7.095 | Bonnae; Bonna
Düsseldorf | gw | 51.222, 6.776 | Dusseldorpii; Dusseldorf; Düsseldorp
Elberfeld | gw | 51.256, 7.150
Barmen | gw | 51.272, 7.200
Essen | gw | 51.457, 7.012
Duisburg | gw | 51.432, 6.765 | Duisburgi
Wesel | gw | 51.667, 6.620
Kleve | gw | 51.788, 6.139 | Cleve; Clivis
Krefeld | gw | 51.336, 6.554 | Crefeld
Aachen | gw | 50.777, 6.083 | Aquisgrani; Aix-la-Chapelle
Trier | gw | 49.756, 6.639 | Treviris; Augustae Trevirorum; Trèves
Koblenz | gw | 50.354, 7.579 | Coblenz; Confluentibus; Coblentz
Neuwied | gw | 50.434, 7.471 | Neowidae; Neovidae
Mainz | gw | 49.984, 8.279 | Moguntiae; Mayence; Mogontiaci; Mentz
Worms | gw | 49.633, 8.359 | Wormatiae
Speyer | gw | 49.321, 8.431 | Spirae; Speier; Nemetum
Frankenthal | gw | 49.534, 8.354
Zweibrücken | gw | 49.247, 7.370 | Biponti; Deux-Ponts
Saarbrücken | gw | 49.233, 7.010
Mettlach | gw | 49.495, 6.586
*Frankfurt am Main | gw | 50.116, 8.684 | Frankfurt; Frankfurt a. M.; Frankfurt a.M.; Francofurti; Francofurti ad Moenum; Francofurti ad Mœnum; Francfort; Francfort sur le Mein; Frankfort; Frankfort on the Main; Frankfurt-am-Main; Francoforte; Franckfurt; Franckfurt am Mayn; Frankfurt a. Main
Höchst | gw | 50.101, 8.547
Hanau | gw | 50.134, 8.914 | Hanoviae
Offenbach | gw | 50.101, 8.766
Darmstadt | gw | 49.872, 8.650 | Darmstadii
Wiesbaden | gw | 50.083, 8.249
Giessen | gw | 50.587, 8.676 | Gissae; Gießen; Giessae
Wetzlar | gw | 50.561, 8.505 | Wetzlariae
Marburg | gw | 50.809, 8.771 | Marburgi; Marburgi Cattorum; Marpurgi; Marpurgi Cattorum
Kassel | gw | 51.317, 9.500 | Cassel; Cassellis; Casselis
Fulda | gw | 50.552, 9.675 | Fuldae
Bad Hersfeld | gw | 50.872, 9.709 | Hersfeld
Hersbruck | gw | 49.511, 11.432
Limburg | gw | 50.384, 8.050
Homburg | gw | 50.227, 8.618
Eisenach | gw | 50.981, 10.315 | Isenaci; Isenach
Gotha | gw | 50.948, 10.702 | Gothae
Erfurt | gw | 50.979, 11.033 | Erfordiae; Erfurti
Weimar | gw | 50.980, 11.329 | Vimariae; Vinariae
Jena | gw | 50.929, 11.590 | Jenae; Ienae; Jéna
Rudolstadt | gw | 50.720, 11.340 | Rudolstadii
Arnstadt | gw | 50.840, 10.952
Ilmenau | gw | 50.683, 10.919
Meiningen | gw | 50.568, 10.415
Hildburghausen | gw | 50.426, 10.732
Coburg | gw | 50.259, 10.964 | Coburgi
Altenburg | gw | 50.988, 12.437 | Altenburgi
Gera | gw | 50.880, 12.082 | Gerae
Greiz | gw | 50.658, 12.199
Saalfeld | gw | 50.648, 11.365
Schleiz | gw | 50.579, 11.810
Neustadt an der Orla | gw | 50.736, 11.746 | Neustadt a.d. Orla; Neustadt a.d. O.; Neustadt a. d. Orla
Sondershausen | gw | 51.370, 10.870
Nordhausen | gw | 51.502, 10.796
Mühlhausen | gw | 51.209, 10.453 | Mulhusae
Langensalza | gw | 51.108, 10.646 | Bad Langensalza
Weissensee | gw | 52.556, 13.466 | Weißensee
Apolda | gw | 51.026, 11.516
Sonneberg | gw | 50.359, 11.175
*Halle | gw | 51.482, 11.979 | *Halae; *Halae Saxonum; Halae Magdeburgicae; Halis Saxonum; Halle an der Saale; Halle a. S.; Halle a.S.; Hallae; Halis; Hal. Sax.
Wittenberg | gw | 51.866, 12.650 | Vitembergae; Vitebergae; Wittebergae; Witebergae
Magdeburg | gw | 52.128, 11.629 | Magdeburgi; Parthenopoli
Halberstadt | gw | 51.896, 11.056 | Halberstadii
Quedlinburg | gw | 51.788, 11.150 | Quedlinburgi
Dessau | gw | 51.839, 12.246 | Dessaviae
Köthen | gw | 51.752, 11.971 | Cöthen; Cothenis
Zerbst | gw | 51.966, 12.085 | Servestae
Bernburg | gw | 51.795, 11.740
Merseburg | gw | 51.355, 11.989
Naumburg | gw | 51.150, 11.810 | Numburgi
Zeitz | gw | 51.050, 12.137 | Cizae
Eisleben | gw | 51.528, 11.548 | Islebii
Stendal | gw | 52.607, 11.859
Torgau | gw | 51.560, 12.996
Potsdam | gw | 52.399, 13.066 | Potsdami
Brandenburg | gw | 52.417, 12.550
Frankfurt an der Oder | gw | 52.347, 14.551 | Francofurti ad Viadrum; Francofurti ad Oderam; Frankfurt a. O.; Francofurti Marchionum; Frankfurt (Oder)
Cottbus | gw | 51.758, 14.329
Züllichau | pl | 52.084, 15.625 | Sulechów
Görlitz | gw | 51.155, 14.989 | Gorlicii
Bautzen | gw | 51.180, 14.435 | Budissae; Budissin
Zittau | gw | 50.898, 14.808 | Zittaviae
Freiberg | gw | 50.911, 13.339 | Fribergae; Freybergae
Chemnitz | gw | 50.836, 12.929 | Chemnicii
Annaberg | gw | 50.580, 13.006
Schneeberg | gw | 50.595, 12.641
Zwickau | gw | 50.727, 12.488 | Cygneae
Thurm | gw | 50.766, 12.556 | Thurm bei Zwickau
Plauen | gw | 50.497, 12.138
Pirna | gw | 50.958, 13.937
Grimma | gw | 51.234, 12.720
Weissenfels | gw | 51.201, 11.968 | Weißenfels
*Nürnberg | gw | 49.454, 11.078 | *Norimbergae; Noribergae; Nuremberg; Norimberga; Nürmberg; Nuernberg; Norymberga; Nurnberg; Norimbergæ
Fürth | gw | 49.476, 10.989
Erlangen | gw | 49.591, 11.008 | Erlangae
Altdorf | gw | 49.386, 11.357 | Altorfii; Altdorfii; Altdorphii
Ansbach | gw | 49.305, 10.593 | Onoldi; Onolzbach; Anspach
Bayreuth | gw | 49.948, 11.579 | Baruthi; Byruthi
Bamberg | gw | 49.899, 10.901 | Bambergae
Würzburg | gw | 49.794, 9.951 | Wirceburgi; Herbipoli; Wirtzburg; Wuerzburg
Schweinfurt | gw | 50.049, 10.222
Aschaffenburg | gw | 49.977, 9.152
Rothenburg | gw | 49.379, 10.187
Nördlingen | gw | 48.851, 10.489 | Nordlingae
Dinkelsbühl | gw | 49.069, 10.320
Ingolstadt | gw | 48.765, 11.424 | Ingolstadii
Eichstätt | gw | 48.889, 11.197 | Eustadii
Neuburg | gw | 48.732, 11.187 | Neuburg an der Donau
Dillingen | gw | 48.582, 10.495 | Dilingae
*Augsburg | gw | 48.372, 10.899 | *Augustae Vindelicorum; Augustae; Augustae Vind.; Aug. Vind.; Augspurg; Augusta; Augusta Vindelicorum; Augustae Vindel.
Ulm | gw | 48.398, 9.992 | Ulmae
Memmingen | gw | 47.984, 10.185
Kempten | gw | 47.727, 10.314 | Campidoni
Kaufbeuren | gw | 47.882, 10.622
Lindau | gw | 47.546, 9.684
*München | gw | 48.137, 11.575 | *Monachii; Munich; Monaco di Baviera; Muenchen; Munic; Monachium; Mnichov; Munchen
Landshut | gw | 48.530, 12.162 | Landishuti
Regensburg | gw | 49.015, 12.102 | Ratisbonae; Ratisbon; Ratisbonne
Straubing | gw | 48.881, 12.574
Passau | gw | 48.566, 13.431 | Passavii
Sulzbach | gw | 49.501, 11.746 | Solisbaci
Amberg | gw | 49.443, 11.863 | Ambergae
Freising | gw | 48.404, 11.749 | Frisingae
Nymphenburg | gw | 48.158, 11.503
*Stuttgart | gw | 48.782, 9.177 | Stutgardiae; Stuttgardiae; Stutgart; Stuttgard; Stuttgartiae
Cannstatt | gw | 48.806, 9.217 | Cannstadt
Ludwigsburg | gw | 48.897, 9.192
Tübingen | gw | 48.523, 9.052 | Tubingae; Tuebingen; Tubinga; Tubingue
Reutlingen | gw | 48.491, 9.204
Esslingen | gw | 48.740, 9.305
Heilbronn | gw | 49.140, 9.221 | Heilbronnae
Schwäbisch Hall | gw | 49.111, 9.739 | Hala Suevorum
Schwäbisch Gmünd | gw | 48.799, 9.798
Ravensburg | gw | 47.782, 9.611
Karlsruhe | gw | 49.009, 8.404 | Carlsruhe; Caroliruhae; Carolsruhae
Durlach | gw | 49.000, 8.472
Rastatt | gw | 48.859, 8.210 | Rastadt
Baden-Baden | gw | 48.761, 8.240 | Baden
Mannheim | gw | 49.489, 8.467 | Mannhemii; Manhemii; Manheim
Heidelberg | gw | 49.408, 8.691 | Heidelbergae
Konstanz | gw | 47.660, 9.176 | Constantiae; Constanz; Constance
*Freiburg im Breisgau | gw | 47.996, 7.852 | *Freiburg; Friburgi Brisgoviae; Friburgi; Freiburg i. B.; Freiburg i B.; Freiburg i. Br.; Freiburg im Br.; Fribourg-en-Brisgau
Donaueschingen | gw | 47.955, 8.497
Neuburg vorm Wald | gw | 49.348, 12.386
Oberhausen | gw | 51.478, 6.862
Gotha-Schnepfenthal | gw | 50.873, 10.578 | Schnepfenthal
Breslau | pl gw | 51.100, 17.033 | Wrocław; Vratislaviae; Wratislaviae; Vratislavia; Wroclaw; Breslaviae
Stettin | pl gw | 53.429, 14.553 | Szczecin; Stetini; Sedini
Danzig | pl gw | 54.352, 18.649 | Gdańsk; Gedani; Dantisci; Dantzig; Danzigk; Dantzick; Gdansk
Elbing | pl gw | 54.152, 19.409 | Elbląg; Elbingae
Thorn | pl gw | 53.014, 18.598 | Toruń; Thorunii; Torun
Braunsberg | pl gw | 54.380, 19.820 | Braniewo
Posen | pl gw | 52.407, 16.930 | Poznań; Posnaniae; Poznan
Bromberg | pl gw | 53.123, 18.008 | Bydgoszcz
Lissa | pl gw | 51.840, 16.575 | Leszno; Lesnae
Liegnitz | pl gw | 51.210, 16.162 | Legnica
Glogau | pl gw | 51.664, 16.084 | Głogów; Glogaviae
Grünberg | pl gw | 51.935, 15.506 | Zielona Góra
Oels | pl gw | 51.213, 17.390 | Oleśnica; Olsnae
Neisse | pl gw | 50.474, 17.334 | Nysa; Nissae
Hirschberg | pl gw | 50.900, 15.729 | Jelenia Góra
Bunzlau | pl gw | 51.264, 15.570 | Bolesławiec
Schweidnitz | pl gw | 50.844, 16.489 | Świdnica
Oppeln | pl gw | 50.672, 17.925 | Opole
Glatz | pl gw | 50.435, 16.661 | Kłodzko
Sagan | pl gw | 51.618, 15.315 | Żagań
Sorau | pl gw | 51.642, 15.137 | Żary
Proskau | pl gw | 50.577, 17.871 | Prószków
Stargard | pl gw | 53.337, 15.050
Köslin | pl gw | 54.194, 16.172 | Cöslin; Koszalin
Königsberg | ru gw | 54.706, 20.511 | *Regiomonti; Regimonti; Kaliningrad; Koenigsberg; Królewiec; Konigsberg
Tilsit | ru gw | 55.080, 21.888
*Wien | au | 48.208, 16.372 | *Vindobonae; *Vienna; Viennae; Viennae Austriae; Viennae Pannoniae; Vienna Austriae; *Vienne; Viena; Wiedeń; Bécs; Bécsben; Beč; Vídeň; ve Vídni; Вѣна; ἐν Βιέννῃ; Vienn. Austr.; Vindobona; Wienn; Wenen
Salzburg | au | 47.799, 13.044 | Salisburgi; Juvaviae
Graz | au | 47.067, 15.450 | Gratz; Graecii; Grätz
Linz | au | 48.306, 14.286 | Lincii; Lintz
Innsbruck | au | 47.263, 11.395 | Oeniponti; Inspruck; Innspruck
Klagenfurt | au | 46.625, 14.305 | Clagenfurti
Steyr | au | 48.043, 14.421
Krems | au | 48.409, 15.614
Bregenz | au | 47.503, 9.747
Gmunden | au | 47.918, 13.799
Wiener Neustadt | au | 47.805, 16.232 | Neustadt bei Wien
Admont | au | 47.575, 14.461
*Basel | sz | 47.558, 7.573 | *Basileae; Bâle; Basle; Basilea; Basileæ; Bale
Zürich | sz | 47.367, 8.550 | Tiguri; Zurich; Turici; Zuerich; Zürch; Zurigo
Bern | sz | 46.948, 7.447 | Bernae; Berne
Genève | sz | 46.202, 6.146 | *Geneva; Genf; Genevae; Coloniae Allobrogum; Ginevra; Ginebra; Geneve; Aureliae Allobrogum
Lausanne | sz | 46.516, 6.633 | Lausannae; Losanna
Neuchâtel | sz | 46.992, 6.931 | Neufchâtel; Neuchatel; Neuenburg; Neocomi
Yverdon | sz | 46.779, 6.641 | Ebroduni
Vevey | sz | 46.463, 6.843
Fribourg | sz | 46.802, 7.151 | Friburgi Helvetiorum; Freiburg im Üechtland; Fribourg en Suisse; Freiburg
Luzern | sz | 47.050, 8.306 | Lucerne; Lucernae
St. Gallen | sz | 47.424, 9.375 | Saint-Gall; Sangalli; St. Gall; Sancti Galli
Schaffhausen | sz | 47.697, 8.635 | Scaphusiae
Winterthur | sz | 47.506, 8.724 | Vitoduri
Aarau | sz | 47.393, 8.044
Baden, Aargau | sz | 47.473, 8.306
Solothurn | sz | 47.208, 7.537 | Soleure; Solodori
Zug | sz | 47.172, 8.517 | Tugii
Einsiedeln | sz | 47.128, 8.747 | Einsidlae
Chur | sz | 46.850, 9.533 | Coire; Coira; Curiae; Curiae Rhaetorum; Quera; Cuera
Frauenfeld | sz | 47.558, 8.899
Amriswil | sz | 47.547, 9.296 | Amrisweil
Lugano | sz | 46.010, 8.960 | Lugani
Locarno | sz | 46.171, 8.800
Bellinzona | sz | 46.193, 9.017
Sion | sz | 46.227, 7.356
Nyon | sz | 46.383, 6.240
Carouge | sz | 46.181, 6.139 | Carouge-Genève
Ferney | fr | 46.259, 6.111
Glarus | sz | 47.041, 9.068
Trogen | sz | 47.408, 9.465
Biel | sz | 47.137, 7.246 | Bienne
Burgdorf | sz | 47.059, 7.628
Thun | sz | 46.751, 7.622
Vaduz | lh | 47.142, 9.522
`;
