/**
 * Towns of imprints in France and the Low Countries: `name | country codes | latitude, longitude | other names`; read by
 * `imprint-towns.ts`, which says what the signs mean. Coordinates: GeoNames (CC BY 4.0), those of hamlets and city
 * districts from memory. Which towns, and their historic, Latin and foreign names: from memory.
 */
export const frenchAndNetherlandishTowns = `
*Paris | fr | 48.853, 2.349 | *Parisiis; Parisii; Lutetiae; Lutetiae Parisiorum; Lutetia Parisiorum; Parigi; Paryż; Paryź; París; Parijs; Pariis; Pariisi; Paříž; Парижъ; Παρίσιοι; ἐν Παρισίοις; Lutèce; Parisiorum; Pariz; Parys; Paryz
*Lyon | fr | 45.748, 4.847 | Lyons; Lugduni; Lugdunum; Lione; Leon de Francia
Rouen | fr | 49.443, 1.099 | Rothomagi; Rotomagi; Rothomagum
Marseille | fr | 43.297, 5.381 | Marseilles; Massiliae; Massilia; Marsiho; Marsilho; Marsiglia; Marsio
Bordeaux | fr | 44.840, -0.581 | Burdigalae; Burdigala; Burdeos; Bourdeaux
Toulouse | fr | 43.604, 1.444 | Tolosae; Tolosa; Toulouso
Strasbourg | fr gw | 48.584, 7.746 | Argentorati; Argentoratum; Argentorate; Strassburg; Straßburg; Strasburg; Argentinae; Stassbourg
Lille | fr | 50.633, 3.059 | Insulis; Insulae; Rijsel
Nantes | fr | 47.217, -1.553
Orléans | fr | 47.903, 1.904 | Aureliae; Aurelianis; Orleans
Tours | fr | 47.395, 0.704 | Turonibus; Caesaroduni Turonum
Angers | fr | 47.472, -0.552 | Andegavi
Le Mans | fr | 48.002, 0.203 | Cenomani
Rennes | fr | 48.112, -1.674 | Redonis
Caen | fr | 49.186, -0.359 | Cadomi; Cadomum
Dijon | fr | 47.317, 5.017 | Divione; Divioni
Besançon | fr | 47.249, 6.018 | Vesontione; Besancon; Besontione
Nancy | fr | 48.684, 6.185 | Nanceii; Nancei
Metz | fr | 49.119, 6.173 | Metis
Reims | fr | 49.265, 4.029 | Remis; Rheims
Troyes | fr | 48.301, 4.085 | Trecis
Châlons-en-Champagne | fr | 48.954, 4.367 | Châlons-sur-Marne; Châlons
Amiens | fr | 49.900, 2.300 | Ambiani
Abbeville | fr | 50.105, 1.835
Arras | fr | 50.293, 2.782
Douai | fr | 50.371, 3.079 | Duaci; Douay
Cambrai | fr | 50.176, 3.235 | Cameraci
Valenciennes | fr | 50.359, 3.525
Saint-Omer | fr | 50.748, 2.261 | Audomari
Dunkerque | fr | 51.034, 2.377 | Dunkirk; Dunkerke
Calais | fr | 50.952, 1.856
Boulogne-sur-Mer | fr | 50.726, 1.614 | Boulogne
Dieppe | fr | 49.922, 1.078
Le Havre | fr | 49.493, 0.108 | Havre; Havre de Grâce; Hâvre
Cherbourg | fr | 49.640, -1.616
Coutances | fr | 49.045, -1.445
Bayeux | fr | 49.277, -0.704
Évreux | fr | 49.024, 1.151 | Evreux
Alençon | fr | 48.435, 0.093
Chartres | fr | 48.447, 1.489 | Carnuti
Blois | fr | 47.594, 1.329
Bourges | fr | 47.083, 2.400 | Biturigis
Nevers | fr | 46.990, 3.159 | Nivernis
Moulins | fr | 46.565, 3.332
Clermont-Ferrand | fr | 45.780, 3.087 | Claromonti
Limoges | fr | 45.834, 1.248 | Lemovicis
Poitiers | fr | 46.583, 0.343 | Pictavii; Augustoriti Pictonum
Niort | fr | 46.323, -0.459
La Rochelle | fr | 46.163, -1.152 | Rupellae
Saintes | fr | 45.747, -0.635
Angoulême | fr | 45.650, 0.153 | Engolismae
Périgueux | fr | 45.187, 0.714
Cahors | fr | 44.449, 1.437 | Cadurci
Agen | fr | 44.202, 0.621
Montauban | fr | 44.018, 1.354
Auch | fr | 43.646, 0.589
Tarbes | fr | 43.234, 0.071
Pau | fr | 43.311, -0.356
Bayonne | fr | 43.493, -1.473
Saint-Gaudens | fr | 43.108, 0.723
Foix | fr | 42.965, 1.607
Carcassonne | fr | 43.216, 2.349
Perpignan | fr | 42.698, 2.895
Narbonne | fr | 43.184, 3.001
Béziers | fr | 43.341, 3.214
Montpellier | fr | 43.611, 3.876 | Monspelii; Monspessuli; Mont-Pelier
Nîmes | fr | 43.837, 4.358 | Nismes; Nemausi; Nimes
Avignon | fr | 43.948, 4.809 | Avenione; Avignoun
Arles | fr | 43.677, 4.630
Aix-en-Provence | fr | 43.528, 5.450 | Aix; Aquis Sextiis
Toulon | fr | 43.124, 5.928
Nice | fr | 43.703, 7.266 | Nizza; Nicaeae
Grenoble | fr | 45.179, 5.715 | Gratianopoli; Gratianopolis
Valence | fr | 44.926, 4.910
Vienne | fr | 45.525, 4.875
Saint-Étienne | fr | 45.434, 4.390 | St. Etienne
Mâcon | fr | 46.314, 4.828 | Macon
Chambéry | fr | 45.566, 5.921 | Chambery; Camberii
Annecy | fr | 45.909, 6.126
Trévoux | fr | 45.943, 4.771
Mulhouse | fr gw | 47.752, 7.329 | Mülhausen; Mulhausen
Colmar | fr gw | 48.081, 7.356 | Colmariae
Rixheim | fr gw | 47.750, 7.402
Épinal | fr | 48.183, 6.453 | Epinal
Belfort | fr | 47.642, 6.854
Saint-Dié | fr | 48.284, 6.949
Verdun | fr | 49.160, 5.383
Sedan | fr | 49.702, 4.940
Soissons | fr | 49.382, 3.324
Laon | fr | 49.563, 3.627
Beauvais | fr | 49.433, 2.083
Senlis | fr | 49.207, 2.587
Compiègne | fr | 49.418, 2.826
Versailles | fr | 48.804, 2.134
Saint-Germain-en-Laye | fr | 48.896, 2.090
*Saint-Denis | fr | 48.936, 2.354
Saint-Cloud | fr | 48.846, 2.203
Sèvres | fr | 48.823, 2.218
Vincennes | fr | 48.849, 2.438
Chantilly | fr | 49.195, 2.471
Mennecy | fr | 48.569, 2.444
Dourdan | fr | 48.528, 2.011
Étampes | fr | 48.435, 2.162 | Etampes
Fontainebleau | fr | 48.409, 2.702
Meaux | fr | 48.960, 2.879
Sens | fr | 48.197, 3.283
Auxerre | fr | 47.800, 3.570
Autun | fr | 46.951, 4.299
Magny-en-Vexin | fr | 49.155, 1.787 | Magny-en-Verin
Nogent-le-Rotrou | fr | 48.322, 0.822
Vaison | fr | 44.239, 5.075 | Váizon; Vaizon
Moustiers | fr | 43.846, 6.222 | Moustiers-Sainte-Marie
Jouy-en-Josas | fr | 48.759, 2.170 | Jouy
Lunéville | fr | 48.593, 6.494 | Luneville
Niderviller | fr | 48.713, 7.106
Saint-Amand | fr | 50.447, 3.431 | Saint-Amand-les-Eaux
Aprey | fr | 47.770, 5.223
Apt | fr | 43.876, 5.396
Quimper | fr | 47.996, -4.098
Brest | fr | 48.390, -4.486
Saint-Malo | fr | 48.647, -2.009
Vannes | fr | 47.657, -2.762
Lorient | fr | 47.748, -3.372
Ajaccio | fr | 41.919, 8.738
Bastia | fr | 42.702, 9.451
Carpentras | fr | 44.055, 5.048
Aurillac | fr | 44.925, 2.440
Rodez | fr | 44.353, 2.573
Albi | fr | 43.930, 2.148
Castres | fr | 43.605, 2.241
Sarreguemines | fr | 49.110, 7.067
Le Puy | fr | 45.044, 3.885
Privas | fr | 44.735, 4.599
Bar-le-Duc | fr | 48.773, 5.161
Langres | fr | 47.863, 5.333
Chaumont | fr | 48.111, 5.141
Laval | fr | 48.072, -0.770
Vesoul | fr | 47.626, 6.143
Saint-Brieuc | fr | 48.515, -2.768
Libourne | fr | 44.914, -0.242
Vire | fr | 48.838, -0.889
Fécamp | fr | 49.758, 0.375
Monaco | mc | 43.737, 7.421
Antwerp | be | 51.220, 4.400 | Antverpiae; Antuerpiae; Antwerpen; Anvers; Antverpia; Amberes; Anversa; Antwerpiae
Brussels | be | 50.850, 4.349 | Bruxelles; Bruxellis; Bruxellae; Brussel; Brüssel; Bruselas; Brussell; Brusselles
Ghent | be | 51.050, 3.717 | Gent; Gand; Gandavi; Gandae
Bruges | be | 51.209, 3.224 | Brugge; Brugis
Louvain | be | 50.880, 4.701 | Leuven; Lovanii; Lovanium; Loven
Liège | be | 50.634, 5.567 | Liége; Leodii; Luik; Lüttich; Leodium
Mechelen | be | 51.026, 4.478 | Malines; Mechliniae; Mechlin
Namur | be | 50.467, 4.867 | Namurci
Mons | be | 50.454, 3.952 | Montibus
Tournai | be | 50.607, 3.389 | Tournay; Tornaci; Doornik
Ypres | be | 50.851, 2.886 | Ieper
Courtrai | be | 50.828, 3.265 | Kortrijk
Ostend | be | 51.216, 2.927 | Oostende; Ostende
Verviers | be | 50.589, 5.862
Spa | be | 50.484, 5.867
Bouillon | be | 49.793, 5.067
Huy | be | 50.519, 5.233
Aalst | be | 50.936, 4.035 | Alost
Lier | be | 51.131, 4.570
Dendermonde | be | 51.029, 4.101 | Termonde
Roeselare | be | 50.947, 3.123 | Roulers
Sint-Niklaas | be | 51.165, 4.144
Hasselt | be | 50.931, 5.338
Arlon | be | 49.683, 5.817
Turnhout | be | 51.323, 4.945
Andenne | be | 50.489, 5.095
Luxembourg | lu | 49.612, 6.130 | Luxemburg; Luxemburgi; Letzebuerg
*Amsterdam | ne | 52.374, 4.890 | *Amstelodami; Amstelaedami; Amstelodamum; Amstelaedamum; Amsteldam; Amst[erdam; Amsterdami; Amst.; Amstelredam; Amsterodami
The Hague | ne | 52.077, 4.299 | 's-Gravenhage; 's Gravenhage; s'Gravenhage; La Haye; Hagae Comitum; Hagae-Comitis; Hagae Comitis; Den Haag; Haag; La Haya; L'Aja; A la Haye
Leiden | ne | 52.158, 4.493 | Leyden; Leyde; Lugduni Batavorum; Lugduni-Batavorum; Lugd. Bat.; Lugdunum Batavorum; Leida
Haarlem | ne | 52.381, 4.637 | Harlemi; Harlem; Haerlem
Delft | ne | 52.007, 4.356 | Delphis; Delphis Batavorum; Delf
Rotterdam | ne | 51.922, 4.479 | Roterodami; Rotterodami
Utrecht | ne | 52.091, 5.122 | Trajecti ad Rhenum; Ultrajecti; Traiecti ad Rhenum; Ultraiecti; Trajecti
Dordrecht | ne | 51.810, 4.674 | Dort; Dordraci; Dordt
Gouda | ne | 52.017, 4.708 | Goudae
Schiedam | ne | 51.919, 4.389
Schoonhoven | ne | 51.947, 4.849
Gorinchem | ne | 51.837, 4.972 | Gorcum; Gorkum
Middelburg | ne | 51.500, 3.614 | Medioburgi; Middelburgh
Vlissingen | ne | 51.443, 3.574 | Flushing
Zierikzee | ne | 51.650, 3.919
Breda | ne | 51.587, 4.776
's-Hertogenbosch | ne | 51.699, 5.304 | 's Hertogenbosch; Bois-le-Duc; Sylvae Ducis; Den Bosch; Hertogenbosch
Tilburg | ne | 51.556, 5.091
Eindhoven | ne | 51.441, 5.478
Maastricht | ne | 50.848, 5.689 | Maestricht; Trajecti ad Mosam
Roermond | ne | 51.194, 5.987 | Ruremonde
Venlo | ne | 51.370, 6.168
Nijmegen | ne | 51.843, 5.853 | Nymegen; Noviomagi; Nimègue
Arnhem | ne | 51.980, 5.911 | Arnhemiae; Arnheim
Tiel | ne | 51.887, 5.429
Culemborg | ne | 51.955, 5.228
Zutphen | ne | 52.138, 6.201
Deventer | ne | 52.255, 6.164 | Daventriae
Zwolle | ne | 52.513, 6.094 | Zwollae
Kampen | ne | 52.555, 5.911 | Campis
Harderwijk | ne | 52.342, 5.621 | Hardervici; Harderwyk
Amersfoort | ne | 52.155, 5.388
Hilversum | ne | 52.223, 5.176
Alkmaar | ne | 52.632, 4.749
Hoorn | ne | 52.642, 5.060
Enkhuizen | ne | 52.703, 5.292
Purmerend | ne | 52.505, 4.960
Zaandam | ne | 52.439, 4.826
Edam | ne | 52.512, 5.048
Leeuwarden | ne | 53.201, 5.809 | Leovardiae; Liowerd; Liouerd; Ljouwert
Franeker | ne | 53.185, 5.541 | Franequerae; Franekerae; Freantsjer
Harlingen | ne | 53.175, 5.422
Heerenveen | ne | 52.959, 5.919 | Hearrenfean
Sneek | ne | 53.033, 5.659
Bolsward | ne | 53.066, 5.532
Makkum | ne | 53.055, 5.402
Dokkum | ne | 53.322, 5.997
Groningen | ne | 53.219, 6.567 | Groningae
Assen | ne | 52.997, 6.562
Hengelo | ne | 52.266, 6.793
Weesp | ne | 52.307, 5.042
Loosdrecht | ne | 52.200, 5.080
`;
