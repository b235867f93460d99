/**
 * Towns of imprints in Italy, Spain, Portugal, the Balkans, Greece and Asia Minor: `name | country codes | latitude, longitude | other names`; read by
 * `imprint-towns.ts`, which says what the signs mean. Coordinates: GeoNames (CC BY 4.0), those of hamlets and city
 * districts from memory. Which towns, and their historic, Latin and foreign names: from memory.
 */
export const southernEuropeanTowns = `
*Rome | it | 41.892, 12.511 | *Roma; *Romae; *Romæ; Rom; Rím; Римъ; Rzym
*Venice | it | 45.437, 12.333 | *Venezia; *Venetiis; Venise; Venedig; Venetijs; Vinegia; Ἐνετίῃσι; Ἐνετίησιν; Ἐνετίῃσιν; Ἐνετίαις; Βενετία; Βενετίᾳ; ἐν Βενετίᾳ; ἐν Βενετίαις; Venetia; Venecia; Mletci; Венеція
*Florence | it | 43.779, 11.246 | *Firenze; *Florentiae; Fiorenza; Florenz; Florencia; Florentia
*Milan | it | 45.464, 9.190 | *Milano; *Mediolani; Mailand; Milán; Mediolanum
*Naples | it | 40.852, 14.268 | *Napoli; *Neapoli; Neapel; Nápoles; Neapolis
*Turin | it | 45.070, 7.687 | *Torino; Augustae Taurinorum; Taurini; Turín; Augusta Taurinorum
Genoa | it | 44.405, 8.944 | Genova; Genuae; Gênes; Genua; Génova
*Bologna | it | 44.494, 11.339 | *Bononiae; Bononia; Bologne; Bolonia
Padua | it | 45.408, 11.886 | Padova; Patavii; Padoue
Verona | it | 45.430, 10.984 | Veronae
Vicenza | it | 45.547, 11.547 | Vicetiae; Vicentiae
Bassano | it | 45.767, 11.727 | Bassano del Grappa; Bassani
Nove | it | 45.722, 11.678 | Nove di Bassano
Treviso | it | 45.667, 12.242 | Tarvisii
Udine | it | 46.069, 13.237 | Utini
Trieste | it au | 45.650, 13.777 | Triest; Tergesti; Triesti; Τεργέστη
Gorizia | it au | 45.941, 13.622 | Görz; Goritiae
Rovereto | it au | 45.890, 11.041 | Roboreti
Trento | it au | 46.068, 11.121 | Trient; Tridenti; Trent
Belluno | it | 46.143, 12.216
Mantua | it | 45.160, 10.798 | Mantova; Mantuae
Brescia | it | 45.536, 10.215 | Brixiae
Bergamo | it | 45.696, 9.667 | Bergomi
Cremona | it | 45.133, 10.021 | Cremonae
Pavia | it | 45.192, 9.159 | Papiae; Ticini; Ticini Regii
Lodi | it | 45.310, 9.501 | Laudae
Como | it | 45.808, 9.083 | Comi; Novocomi
Monza | it | 45.580, 9.272
Novara | it | 45.447, 8.621 | Novariae
Vercelli | it | 45.322, 8.420 | Vercellis
Alessandria | it | 44.909, 8.610
Asti | it | 44.902, 8.208
Alba | it | 44.700, 8.035
Cuneo | it | 44.391, 7.548
Mondovì | it | 44.396, 7.818
Bra | it | 44.698, 7.851
Saluzzo | it | 44.647, 7.493
Ivrea | it | 45.467, 7.876
Chieri | it | 45.011, 7.821
Savona | it | 44.309, 8.477
Sampierdarena | it | 44.411, 8.885 | San Pier d'Arena
Albissola | it | 44.331, 8.510 | Albisola
Piacenza | it | 45.052, 9.693 | Placentiae
Parma | it | 44.799, 10.326 | Parmae
Reggio Emilia | it | 44.698, 10.631 | Regii Lepidi; Reggio
Modena | it | 44.648, 10.925 | Mutinae
Ferrara | it | 44.838, 11.621 | Ferrariae
Imola | it | 44.359, 11.713
Faenza | it | 44.290, 11.879 | Faventiae
Forlì | it | 44.222, 12.041
Cesena | it | 44.139, 12.243 | Caesenae
Ravenna | it | 44.413, 12.201 | Ravennae
Rimini | it | 44.058, 12.565 | Arimini
Pesaro | it | 43.909, 12.916 | Pisauri
Urbino | it | 43.726, 12.636 | Urbini
Urbania | it | 43.668, 12.521 | Casteldurante
Fano | it | 43.841, 13.017
Ancona | it | 43.594, 13.503 | Anconae
Macerata | it | 43.298, 13.453
Treia | it | 43.309, 13.310
Loreto | it | 43.436, 13.612
Fermo | it | 43.163, 13.723
Ascoli Piceno | it | 42.854, 13.574 | Ascoli
Perugia | it | 43.112, 12.389 | Perusiae
Deruta | it | 42.985, 12.418
Gubbio | it | 43.350, 12.573
Foligno | it | 42.955, 12.703 | Fulginei
Spoleto | it | 42.741, 12.739
Città di Castello | it | 43.466, 12.238
Orvieto | it | 42.719, 12.112
Viterbo | it | 42.419, 12.106
Todi | it | 42.779, 12.412
Pisa | it | 43.709, 10.404 | Pisis
Lucca | it | 43.844, 10.504 | Lucae
Livorno | it | 43.544, 10.326 | Leghorn; Liburni; Livourne
Siena | it | 43.318, 11.331 | Senis; Sienne
Arezzo | it | 43.463, 11.881
Prato | it | 43.880, 11.097
Pistoia | it | 43.931, 10.924
Cortona | it | 43.275, 11.985
Colle | it | 43.421, 11.127 | Colle di Val d'Elsa
Doccia | it | 43.825, 11.206
Montelupo | it | 43.730, 11.010
Volterra | it | 43.403, 10.862
Massa | it | 44.035, 10.139
Carrara | it | 44.079, 10.098
Subiaco | it | 41.926, 13.089
Velletri | it | 41.686, 12.778
L'Aquila | it | 42.351, 13.400 | Aquila
Chieti | it | 42.348, 14.165
Teramo | it | 42.661, 13.699
Castelli | it | 42.485, 13.712
Sulmona | it | 42.049, 13.926
Benevento | it | 41.131, 14.778
Avellino | it | 40.915, 14.791
Salerno | it | 40.675, 14.793
Nola | it | 40.926, 14.528
Caserta | it | 41.073, 14.332
Capua | it | 41.105, 14.213
Bari | it | 41.121, 16.870
Lecce | it | 40.355, 18.172
Trani | it | 41.277, 16.410
Foggia | it | 41.458, 15.552
Taranto | it | 40.464, 17.247
Cosenza | it | 39.299, 16.253
Catanzaro | it | 38.882, 16.601
Reggio di Calabria | it | 38.110, 15.661 | Reggio Calabria
Potenza | it | 40.642, 15.808
Palermo | it | 38.117, 13.364 | Panormi; Palerme
Messina | it | 38.194, 15.553 | Messine; Messanae
Catania | it | 37.492, 15.070 | Catanae
Siracusa | it | 37.075, 15.287 | Syracuse, Sicily; Syracusis
Acireale | it | 37.609, 15.166
Girgenti | it | 37.311, 13.577 | Agrigento
Trapani | it | 38.018, 12.536
Caltagirone | it | 37.238, 14.516
Noto | it | 36.892, 15.070
Cagliari | it | 39.231, 9.119 | Calari
Sassari | it | 40.726, 8.556
Grottaferrata | it | 41.787, 12.671
Monte Cassino | it | 41.486, 13.828 | Montecassino
Vatican City | vc | 41.902, 12.453 | Vaticano; Città del Vaticano; Rom Vatikan
San Marino | sm | 43.937, 12.446
Malta | mm | 35.900, 14.515 | Valletta; Valetta; La Valletta; Melitae; La Valette
*Madrid | sp | 40.416, -3.703 | *Matriti; Mantuae Carpetanorum; Madriti; Madryt; Mantua Carpetana
Barcelona | sp | 41.389, 2.159 | Barcinone; Barcelone
*Valencia | sp | 39.470, -0.377 | *Valentiae; Valentiae Edetanorum
Seville | sp | 37.383, -5.973 | *Sevilla; Hispali; Séville; Sivilia
Cádiz | sp | 36.527, -6.289 | Cadiz; Gadibus; Cadix; Gades
Zaragoza | sp | 41.656, -0.877 | Saragossa; Caesaraugustae; Saragosse; Çaragoça
Salamanca | sp | 40.969, -5.664 | Salmanticae
Valladolid | sp | 41.655, -4.724 | Vallisoleti; Pinciae
*Toledo | sp | 39.858, -4.023 | Toleti
Talavera | sp | 39.963, -4.831 | Talavera de la Reina
Puente del Arzobispo | sp | 39.802, -5.172
Alcalá de Henares | sp | 40.482, -3.360 | Compluti; Alcalá
Segovia | sp | 40.948, -4.118
Ávila | sp | 40.657, -4.700
Burgos | sp | 42.341, -3.702
*León | sp | 42.600, -5.570
Palencia | sp | 42.010, -4.524
Zamora | sp | 41.506, -5.745
*Granada | sp | 37.188, -3.607 | Granatae
*Córdoba | sp | 37.892, -4.773 | Cordubae
Málaga | sp | 36.720, -4.420 | Malacae; Malaga
Jaén | sp | 37.769, -3.790
Almería | sp | 36.838, -2.460
Murcia | sp | 37.987, -1.130
Cartagena | sp | 37.605, -0.986
Alicante | sp | 38.345, -0.481
Alcora | sp | 40.067, -0.200 | L'Alcora
Castellón | sp | 39.986, -0.049 | Castellón de la Plana
Tarragona | sp | 41.117, 1.250
Reus | sp | 41.156, 1.107
Lérida | sp | 41.617, 0.622 | Lleida
Girona | sp | 41.983, 2.825 | Gerona; Gerundae
Vich | sp | 41.930, 2.255 | Vic
Manises | sp | 39.491, -0.463
Teruel | sp | 40.346, -1.106
Huesca | sp | 42.136, -0.409
Pamplona | sp | 42.817, -1.643 | Pompelone; Pampelonae; Iruña
San Sebastián | sp | 43.313, -1.975 | Donostia
Bilbao | sp | 43.263, -2.925
Vitoria | sp | 42.850, -2.673 | Vitoria-Gasteiz
Tolosa | sp | 43.135, -2.078 | Tolosan
Logroño | sp | 42.467, -2.450
Santander | sp | 43.465, -3.804
Oviedo | sp | 43.360, -5.845
Gijón | sp | 43.536, -5.662
Luarca | sp | 43.542, -6.536
Santiago de Compostela | sp | 42.881, -8.546 | *Compostela; Santiago
A Coruña | sp | 43.371, -8.396 | La Coruña; Coruña; Corunna
Lugo | sp | 43.010, -7.556
Orense | sp | 42.337, -7.864 | Ourense
Pontevedra | sp | 42.431, -8.644
Vigo | sp | 42.233, -8.723
Badajoz | sp | 38.878, -6.971
Cáceres | sp | 39.476, -6.372
Huelva | sp | 37.266, -6.940
Jerez | sp | 36.686, -6.136 | Jerez de la Frontera; Xerez
Cuenca | sp | 40.067, -2.133
Guadalajara | sp | 40.629, -3.162
Ciudad Real | sp | 38.986, -3.929
Albacete | sp | 38.994, -1.856
Palma | sp | 39.569, 2.650 | Palma de Mallorca; Mallorca; Majorca; Palmae
Mahón | sp | 39.889, 4.266 | Mahon; Mahó; Maó
Santa Cruz de Tenerife | sp | 28.468, -16.255
La Laguna | sp | 28.485, -16.320
Las Palmas | sp | 28.100, -15.413
Buen Retiro | sp | 40.414, -3.682
El Escorial | sp | 40.591, -4.147
La Granja | sp | 40.902, -4.007 | San Ildefonso
Gibraltar | gi | 36.145, -5.353
*Lisbon | po | 38.717, -9.133 | *Lisboa; *Olisipone; Lisbonne; Lissabon; Ulyssipone; Lisbona; Lizbona; Olyssipone; Lixboa
Coimbra | po | 40.206, -8.420 | Conimbricae
Porto | po | 41.150, -8.611 | Oporto; Portucale
Braga | po | 41.550, -8.420 | Bracarae
Évora | po | 38.567, -7.900 | Evora; Eborae
Ponta Delgada | po | 37.740, -25.669
Angra do Heroísmo | po | 38.655, -27.217 | Angra
Funchal | po | 32.666, -16.925
Faro | po | 37.019, -7.927
Aveiro | po | 40.644, -8.646
Viana do Castelo | po | 41.693, -8.833
Guimarães | po | 41.444, -8.296
Viseu | po | 40.661, -7.910 | Vizeu
Leiria | po | 39.744, -8.807
Setúbal | po | 38.524, -8.888
Caldas da Rainha | po | 39.403, -9.138
Elvas | po | 38.882, -7.163
Santarém | po | 39.233, -8.683
*Athens | gr | 37.984, 23.728 | *Ἀθῆναι; Ἀθήναις; ἐν Ἀθήναις; ἐν Ἀθηναῖς; Ἀθηναῖς; Ἀθήνησι; Ἀθήνησιν; Athenis; Athen; Athènes; Athenai; Atene; Αθήνα
Corfu | gr | 39.624, 19.920 | Κέρκυρα; Κερκύρᾳ; ἐν Κερκύρᾳ; Corfou; Corcyrae; Κέρκυραι; Corfù
Zante | gr | 37.788, 20.900 | Ζάκυνθος; ἐν Ζακύνθῳ; Zakynthos
Patras | gr | 38.244, 21.734 | Πάτραι; ἐν Πάτραις
Nauplia | gr | 37.569, 22.807 | Ναύπλιον; ἐν Ναυπλίῳ; Nauplion; ἐν Ναυπλίᾳ
Hermoupolis | gr | 37.445, 24.943 | Ἑρμούπολις; ἐν Ἑρμουπόλει; Syra
Salonica | gr | 40.644, 22.931 | Thessaloniki; Salonique; Θεσσαλονίκη; Saloniki
Aegina | gr | 37.747, 23.427 | Αἴγινα; ἐν Αἰγίνῃ
Cephalonia | gr | 38.175, 20.490 | Κεφαλληνία; Ἀργοστόλι
Chios | gr | 38.369, 26.137 | Χίος; ἐν Χίῳ
Piraeus | gr | 37.942, 23.646 | Πειραιεύς; ἐν Πειραιεῖ
Cyprus | cy | 35.175, 33.364 | Nicosia; Λευκωσία; Κύπρος
Larnaca | cy | 34.923, 33.623 | Λάρναξ
Limassol | cy | 34.684, 33.038
*Constantinople | tu | 41.014, 28.950 | *Κωνσταντινούπολις; Κωνσταντινουπόλει; ἐν Κωνσταντινουπόλει; Konstantinopel; Constantinopoli; Istanbul; Κωνσταντινουπολει; Цариградъ; Stambul; Constantinopla; Stamboul; Kostantiniye
Smyrna | tu | 38.413, 27.138 | Smyrne; Σμύρνη; Σμύρνῃ; ἐν Σμύρνῃ; Izmir; Smirne
Bursa | tu | 40.196, 29.060 | Brousse
Iznik | tu | 40.429, 29.721
Kütahya | tu | 39.424, 29.983
Trebizond | tu | 41.005, 39.727 | Trabzon; Τραπεζοῦς
Adrianople | tu | 41.677, 26.556 | Edirne
Zagreb | ci au hu | 45.814, 15.978 | Agram; Zagrabiae; u Zagrebu
Dubrovnik | ci au hu | 42.641, 18.109 | Ragusa; Rhacusii; Raguse; Ragusii; Ragusae
Zadar | ci au hu | 44.116, 15.225 | Zara; Jaderae; u Zadru
Split | ci au hu | 43.509, 16.439 | Spalato
Fiume | ci au hu | 45.327, 14.442 | Rijeka
Osijek | ci au hu | 45.551, 18.694 | Esseg; Essek
Varaždin | ci au hu | 46.304, 16.338 | Warasdin
Karlovac | ci au hu | 45.492, 15.550 | Karlstadt, Croatia
Ljubljana | xv au | 46.051, 14.505 | Laibach; Labaci; v Ljubljani; Lubiana
Maribor | xv au | 46.555, 15.647 | Marburg an der Drau
Celje | xv au | 46.231, 15.260 | Cilli
Gorica | xv au | 45.955, 13.648 | Nova Gorica
Koper | xv au | 45.547, 13.729 | Capodistria
Belgrade | rb | 44.804, 20.465 | Beograd; Београд; Белград; у Београду; Бѣлградъ; Belgrad; у Бѣограду; Биоград
Novi Sad | rb | 45.252, 19.837 | Neusatz; Újvidék; Нови Сад; у Новом Саду
Pančevo | rb | 44.872, 20.642 | Панчево; Pancsova; Pantschowa
Zemun | rb | 44.846, 20.401 | Semlin; Земун
Niš | rb | 43.325, 21.903 | Nisch
Sremski Karlovci | rb | 45.203, 19.934 | Karlowitz
Sarajevo | bn | 43.849, 18.356 | Serajevo; Сарајево; u Sarajevu
Mostar | bn | 43.343, 17.808 | Мостар
Cetinje | mo | 42.391, 18.914 | Цетиње; на Цетињу
Skopje | xn | 41.996, 21.431 | Üsküb
Scutari | aa | 42.068, 19.513 | Shkodra; Shkodër
Moschopolis | aa | 40.633, 20.589
Sofia | bu | 42.698, 23.324 | София; въ София; в. София; Sofija; Sofiya
Plovdiv | bu | 42.150, 24.750 | Пловдивъ; Пловдив; Philippopolis; Филипополъ
Varna | bu | 43.217, 27.917 | Варна
Ruse | bu | 43.849, 25.953 | Русе; Rustschuk; Русчукъ; Роусе
Tarnovo | bu | 43.081, 25.629 | Търново
`;
