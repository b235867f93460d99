/**
 * Towns of imprints in Latin America, Asia, Africa and Oceania: `name | country codes | latitude, longitude | other names`; read by
 * `imprint-towns.ts`, which says what the signs mean. Coordinates: GeoNames (CC BY 4.0), those of hamlets and city
 * districts from memory. Which towns, and their historic, Latin and foreign names: from memory.
 */
export const overseasTowns = `
*Mexico City | mx | 19.428, -99.128 | *México; *Mexico; Méjico; Mejico; Mexici; Mexique; Ciudad de México; Cidade do México; Messico
Puebla | mx | 19.038, -98.203 | Puebla de los Ángeles; Puebla de los Angeles; Angelopoli
Guadalajara | mx | 20.667, -103.392
Veracruz | mx | 19.181, -96.143 | Vera Cruz; Vera-Cruz
Oaxaca | mx | 17.065, -96.724
Guanajuato | mx | 21.019, -101.259
San Luis Potosí | mx | 22.150, -100.979 | San Luis Potosií
Mérida | mx | 20.975, -89.617 | Mérida de Yucatán
Querétaro | mx | 20.588, -100.388
Morelia | mx | 19.701, -101.184 | Valladolid de Michoacán
Zacatecas | mx | 22.768, -102.581
Monterrey | mx | 25.675, -100.318
Toluca | mx | 19.288, -99.653
Campeche | mx | 19.844, -90.526
Xalapa | mx | 19.531, -96.916 | Jalapa
Durango | mx | 24.020, -104.658 | Victoria de Durango
Aguascalientes | mx | 21.882, -102.283
Chihuahua | mx | 28.635, -106.089
Orizaba | mx | 18.852, -97.100
Tlaxcala | mx | 19.319, -98.200
Saltillo | mx | 25.423, -101.005
Guatemala City | gt | 14.641, -90.513 | Guatemala; Nueva Guatemala
Antigua Guatemala | gt | 14.561, -90.734
San Salvador | es | 13.689, -89.187
Tegucigalpa | ho | 14.082, -87.207
Managua | nq | 12.133, -86.250
León | nq | 12.438, -86.878 | León de Nicaragua
Granada | nq | 11.930, -85.956
San José | cr | 9.933, -84.083 | San José de Costa Rica
Panama | pn | 8.994, -79.520 | Panamá
Belize City | bh | 17.500, -88.198 | Belize
*Havana | cu | 23.133, -82.383 | *Habana; *La Habana; La Havane; Habanae
Santiago de Cuba | cu | 20.021, -75.827
Matanzas | cu | 23.041, -81.578
Puerto Príncipe | cu | 21.381, -77.917
Cienfuegos | cu | 22.147, -80.448
Kingston | jm | 17.997, -76.794 | Kingston, Jamaica
Spanish Town | jm | 17.991, -76.957 | Saint Jago de la Vega; St. Jago de la Vega
Montego Bay | jm | 18.471, -77.919
*Jamaica | jm | 17.997, -76.794
Port-au-Prince | ht | 18.543, -72.339 | Port au Prince; Port-Républicain
Cap-Haïtien | ht | 19.759, -72.198 | Cap-Français; Cap François; Cap Haïtien
Santo Domingo | dr | 18.472, -69.892
San Juan | pr | 18.466, -66.106 | San Juan, Puerto Rico
Puerto Rico | pr | 18.466, -66.106 | Puerto-Rico
Ponce | pr | 18.010, -66.624
Mayagüez | pr | 18.201, -67.140
Saint Thomas | vi | 18.342, -64.931 | St. Thomas; Charlotte Amalie
St. Croix | vi | 17.747, -64.704 | Christiansted; Saint Croix
Antigua | aq | 17.121, -61.843 | St. John's, Antigua
Basseterre | xd | 17.296, -62.725 | Saint Kitts; St. Christopher
*Bridgetown | bb | 13.107, -59.620 | Barbados; Bridge-Town
Port of Spain | tr | 10.667, -61.519 | Port-of-Spain; Trinidad
Grenada | gd | 12.053, -61.752 | St. George's
Roseau | dq | 15.302, -61.388 | Dominica
Castries | xk | 13.996, -61.006 | Saint Lucia
Kingstown | xm | 13.155, -61.227 | Saint Vincent
Saint-Pierre, Martinique | mq | 14.743, -61.175 | Saint-Pierre
Fort-de-France | mq | 14.604, -61.074 | Fort-Royal
Pointe-à-Pitre | gp | 16.241, -61.536
Basse-Terre | gp | 15.997, -61.732
Nassau | bf | 25.058, -77.343
Hamilton | bm | 32.295, -64.783 | Bermuda
Curaçao | co | 12.122, -68.886 | Curazao; Willemstad
Georgetown | gy | 6.804, -58.155 | Demerara; Georgetown, Demerara
Berbice | gy | 6.248, -57.517 | New Amsterdam
Paramaribo | sr | 5.866, -55.167
Cayenne | fg | 4.933, -52.333
*Caracas | ve | 10.488, -66.879 | Carácas
Maracaibo | ve | 10.667, -71.612
Valencia | ve | 10.162, -68.008
Ciudad Bolívar | ve | 8.129, -63.541 | Angostura
Puerto Cabello | ve | 10.473, -68.013
Mérida | ve | 8.590, -71.156
*Bogotá | ck | 4.610, -74.082 | *Bogota; Santafé de Bogotá; Santa Fe de Bogotá; Santafé; Santa Fé de Bogotá
Cartagena de Indias | ck | 10.400, -75.514 | Cartajena; Cartagena
Medellín | ck | 6.252, -75.564
Popayán | ck | 2.438, -76.613
Cali | ck | 3.437, -76.522
Barranquilla | ck | 10.969, -74.781
Tunja | ck | 5.535, -73.368
Bucaramanga | ck | 7.125, -73.120
Quito | ec | -0.230, -78.525
Guayaquil | ec | -2.196, -79.886
Cuenca | ec | -2.901, -79.005
*Lima | pe | -12.043, -77.028 | Limae; Ciudad de los Reyes; Los Reyes
Cuzco | pe | -13.523, -71.967 | Cusco
Arequipa | pe | -16.399, -71.535
Trujillo | pe | -8.116, -79.030
Callao | pe | -12.057, -77.118
La Paz | bo | -16.500, -68.150
Sucre | bo | -19.033, -65.263 | Chuquisaca
Cochabamba | bo | -17.390, -66.157
Potosí | bo | -19.584, -65.753
*Santiago de Chile | cl | -33.457, -70.648 | *Santiago
Valparaíso | cl | -33.036, -71.630 | Valparaiso
Concepción | cl | -36.827, -73.050
La Serena | cl | -29.905, -71.249
Copiapó | cl | -27.367, -70.331
*Buenos Aires | ag | -34.613, -58.377 | *Buenos-Aires; Buenos-Ayres; Buenos Ayres; Bonis Auris; Bonaria
Córdoba | ag | -31.413, -64.181 | Córdoba, Argentina
Rosario | ag | -32.947, -60.639
La Plata | ag | -34.921, -57.955
Mendoza | ag | -32.891, -68.827
Tucumán | ag | -26.824, -65.223
Salta | ag | -24.786, -65.412
Santa Fe | ag | -31.649, -60.709
Paraná | ag | -31.733, -60.529
*Montevideo | uy | -34.903, -56.188
Salto | uy | -31.383, -57.967
Asunción | py | -25.286, -57.647
*Rio de Janeiro | bl | -22.906, -43.182 | Rio de Janeyro; Río de Janeiro; Rio-de-Janeiro
*Bahia | bl | -12.976, -38.491 | Salvador; S. Salvador; São Salvador
*Pernambuco | bl | -8.054, -34.881 | Recife
São Paulo | bl | -23.547, -46.636 | S. Paulo
Porto Alegre | bl | -30.033, -51.230
Maranhão | bl | -2.530, -44.303 | São Luís; S. Luiz do Maranhão; San Luiz
Belém | bl | -1.456, -48.504 | Pará; Belém do Pará
Ceará | bl | -3.717, -38.543 | Fortaleza
Ouro Preto | bl | -20.395, -43.505 | Villa Rica
Curitiba | bl | -25.428, -49.273
Pelotas | bl | -31.770, -52.341
Niterói | bl | -22.883, -43.104 | Nictheroy
Petrópolis | bl | -22.505, -43.179
Desterro | bl | -27.597, -48.549
Manaus | bl | -3.102, -60.025 | Manáos
*Calcutta | ii | 22.563, 88.363 | Kolkata; Calcuttae; Kalikātā; Kalikata; Kalakattā; Calcuta
Serampore | ii | 22.752, 88.342 | Serampur; Shrirampur
Howrah | ii | 22.577, 88.319
Bombay | ii | 19.073, 72.883 | Mumbai; Mumbaī; Bombaim
Madras | ii | 13.088, 80.278 | Chennai; Vepery
Allahabad | ii | 25.445, 81.843 | Prayagraj; Ilāhābād
Lucknow | ii | 26.839, 80.923 | Lakhnau
Cawnpore | ii | 26.465, 80.350 | Kanpur
Agra | ii | 27.183, 78.017
Delhi | ii | 28.652, 77.231 | Dihlī
Benares | ii | 25.317, 83.010 | Benāras; Varanasi
Patna | ii | 25.594, 85.136
Bankipore | ii | 25.612, 85.130
Roorkee | ii | 29.866, 77.891
Meerut | ii | 28.980, 77.706
Lahore | pk | 31.558, 74.351 | Lāhaur
Amritsar | ii | 31.622, 74.875
Simla | ii | 31.104, 77.167 | Shimla
Nagpur | ii | 21.146, 79.085
Poona | ii | 18.520, 73.855 | Pune
Surat | ii | 21.196, 72.830
Ahmedabad | ii | 23.026, 72.587 | Ahmadabad
Baroda | ii | 22.299, 73.208 | Vadodara
Nellore | ii | 14.450, 79.987
Bangalore | ii | 12.972, 77.594 | Bengaluru
Mysore | ii | 12.298, 76.639
Mangalore | ii | 12.917, 74.856
Goa | ii | 15.498, 73.828 | Nova Goa; Nova-Goa; Panjim; Goae; Pangim
Cochin | ii | 9.940, 76.260 | Kochi
Trichinopoly | ii | 10.816, 78.697
Tranquebar | ii | 11.029, 79.849 | Trangambariae; Tarangambadi
Pondicherry | ii | 11.934, 79.830 | Pondichéry
Chandernagore | ii | 22.862, 88.368
Hooghly | ii | 22.896, 88.402
Cuttack | ii | 20.465, 85.879
Secunderabad | ii | 17.504, 78.543
Hyderabad | ii | 17.384, 78.456 | Hyderabad, Deccan
Tanjore | ii | 10.785, 79.139
Kottayam | ii | 9.587, 76.521
Trivandrum | ii | 8.486, 76.949
Darjeeling | ii | 27.033, 88.267
Jaipur | ii | 26.920, 75.788
Lodiana | ii | 30.912, 75.854 | Ludhiana
Mirzapore | ii | 25.145, 82.565
Aligarh | ii | 27.881, 78.075
Bareilly | ii | 28.367, 79.432
Srinagar | ii | 34.086, 74.806
Gorakhpur | ii | 26.766, 83.369
Calicut | ii | 11.248, 75.780
Karachi | pk | 24.861, 67.010 | Kurrachee
Rawalpindi | pk | 33.597, 73.048 | Rawal Pindi
Peshawar | pk | 34.008, 71.578
Sialkot | pk | 32.493, 74.531
Dacca | bg | 23.710, 90.407 | Dhaka; Dhākā
Chittagong | bg | 22.338, 91.832 | Chattogram
*Rangoon | br | 16.805, 96.156 | Yangon
Moulmein | br | 16.491, 97.628 | Maulmain
Mandalay | br | 21.975, 96.084
Akyab | br | 20.146, 92.898
Kathmandu | np | 27.702, 85.321 | Katmandu
*Colombo | ce | 6.935, 79.849 | Columbo; Kolamba
Jaffna | ce | 9.668, 80.007
Kandy | ce | 7.291, 80.634
Galle | ce | 6.046, 80.210
Singapore | si | 1.290, 103.850 | Singapour
Malacca | my | 2.196, 102.240 | Melaka
Penang | my | 5.411, 100.335 | George Town; Prince of Wales Island
Bangkok | th | 13.754, 100.501
Saigon | vm | 10.823, 106.630 | Saïgon
Hanoi | vm | 21.024, 105.841 | Hanoï
Haiphong | vm | 20.865, 106.683
*Batavia, Java | io | -6.215, 106.845 | *Batavia; Bataviae; Jakarta; Djakarta
Semarang | io | -6.993, 110.421 | Samarang
Surabaya | io | -7.249, 112.751 | Soerabaia; Surabaja
Surakarta | io | -7.556, 110.832 | Soerakarta
Padang | io | -0.949, 100.354
Bencoolen | io | -3.800, 102.266
*Manila | ph | 14.604, 120.982 | Manilla; Manilae
Malabon | ph | 15.636, 119.938 | Tambobong
Cebú | ph | 10.317, 123.891 | Cebu
Iloilo | ph | 10.697, 122.564
Sampaloc | ph | 14.611, 120.997
Binondo | ph | 14.600, 120.974
Hong Kong | cc | 22.278, 114.175 | Hongkong; Victoria, Hong Kong
Macao | cc | 22.201, 113.546 | Macau; Amagauae
*Canton | cc | 23.117, 113.250 | Guangzhou
Shanghai | cc | 31.222, 121.458 | Changhai; Shanghae
Peking | cc | 39.907, 116.397 | Pékin; Beijing; Pekini
Foochow | cc | 26.061, 119.306 | Fuzhou; Foo-Chow
Ningpo | cc | 29.878, 121.549 | Ningbo
Amoy | cc | 24.480, 118.082 | Xiamen
Tientsin | cc | 39.142, 117.177 | Tianjin
Nanking | cc | 32.062, 118.778
Hankow | cc | 30.583, 114.267
Swatow | cc | 23.368, 116.715
Taipei | ch | 25.048, 121.532
Tainan | ch | 22.991, 120.213 | Taiwanfoo
Tokyo | ja | 35.690, 139.692 | Yedo; Edo; Tokio; Tōkyō
Yokohama | ja | 35.433, 139.650
Kyoto | ja | 35.021, 135.754 | Miyako; Kyōto
Osaka | ja | 34.694, 135.502 | Ōsaka
Nagasaki | ja | 32.750, 129.883
Kobe | ja | 34.691, 135.183 | Hiogo
Nagoya | ja | 35.181, 136.906
Arita | ja | 33.188, 129.884 | Imari
Seoul | ko | 37.566, 126.978 | Séoul; Keijo
Tehran | ir | 35.694, 51.422 | Téhéran; Teheran
Tabriz | ir | 38.080, 46.292 | Tauris
Isfahan | ir | 32.652, 51.675 | Ispahan
Baghdad | iq | 33.341, 44.401 | Bagdad
Mosul | iq | 36.335, 43.119 | Mossoul
Aleppo | sy | 36.201, 37.161 | Alep
Damascus | sy | 33.510, 36.291 | Damas
*Beirut | le | 33.893, 35.502 | *Beyrouth; Beryti; Beirout; Bairut; Bayrūt; Bayrut
Jerusalem | is | 31.769, 35.216 | Hierosolymis; Ἱεροσόλυμα; ἐν Ἱεροσολύμοις; Jérusalem; Yerushalayim
Jaffa | is | 32.053, 34.750
Aden | ye | 12.779, 45.037
*Cairo | ua | 30.063, 31.250 | Le Caire; Kairo; al-Qāhirah; El Cairo; Il Cairo
*Alexandria, Egypt | ua | 31.202, 29.916 | Alexandria; Alexandrie; Ἀλεξάνδρεια; Ἀλεξανδρείᾳ; ἐν Ἀλεξανδρείᾳ; Alessandria d'Egitto
Port Said | ua | 31.265, 32.302 | Port-Saïd
Boulaq | ua | 30.059, 31.228 | Būlāq; Boulac; Bulaq
Tunis | ti | 36.819, 10.166
*Algiers | ae | 36.732, 3.087 | *Alger; Argel; Algeri
Constantine | ae | 36.365, 6.615
Oran | ae | 35.699, -0.636
Bône | ae | 36.900, 7.767 | Annaba
Blida | ae | 36.470, 2.828 | Blidah
Tlemcen | ae | 34.878, -1.315
Tangier | mr | 35.767, -5.800 | Tanger
Fez | mr | 34.033, -5.000 | Fes; Fās
Tetuan | mr | 35.578, -5.368
Tripoli | ly | 32.887, 13.187
*Cape Town | sa | -33.926, 18.423 | Capetown; Cape of Good Hope; Kaapstad; Kaap de Goede Hoop; Le Cap; Kapstadt
Stellenbosch | sa | -33.935, 18.867
Paarl | sa | -33.734, 18.975
Grahamstown | sa | -33.304, 26.533 | Graham's Town
King William's Town | sa | -32.879, 27.394 | Kingwilliamstown
Lovedale | sa | -32.770, 26.830
Port Elizabeth | sa | -33.961, 25.615
Durban | sa | -29.858, 31.029
Pietermaritzburg | sa | -29.617, 30.393 | Maritzburg
Bloemfontein | sa | -29.121, 26.214
Pretoria | sa | -25.745, 28.188
Johannesburg | sa | -26.202, 28.044
Kimberley | sa | -28.732, 24.762
Morija | lo | -29.633, 27.517
Mafeteng | lo | -29.823, 27.237
Luanda | ao | -8.837, 13.234 | Loanda; S. Paulo de Loanda
Mozambique | mz | -15.034, 40.736 | Moçambique
Lourenço Marques | mz | -25.966, 32.583
Praia | cv | 14.932, -23.513
Freetown | sl | 8.487, -13.236 | Sierra Leone
Accra | gh | 5.556, -0.197
Cape Coast | gh | 5.105, -1.247
Lagos | nr | 6.454, 3.395
Monrovia | lb | 6.301, -10.797
Saint-Louis | sg | 16.018, -16.490 | Saint-Louis du Sénégal
Zanzibar | tz | -6.164, 39.198
Mombasa | ke | -4.055, 39.664
Antananarivo | mg | -18.914, 47.536 | Tananarive; Tananarivo
Mauritius | mf | -20.162, 57.499 | Port Louis; Isle de France; Île Maurice; Ile Maurice; Maurice
Saint-Denis, Réunion | re | -20.882, 55.450 | Saint-Denis
Seychelles | se | -4.620, 55.455 | Seychalles; Mahé
Saint Helena | xj | -15.939, -5.717 | St. Helena; Jamestown
*Sydney | xna | -33.868, 151.207 | Sydney, N.S.W.
Parramatta | xna | -33.818, 151.003
Newcastle, New South Wales | xna | -32.930, 151.780 | Newcastle
Bathurst | xna | -33.417, 149.581
*Melbourne | vra | -37.814, 144.963
Geelong | vra | -38.147, 144.361
Ballarat | vra | -37.566, 143.850 | Ballaarat
Bendigo | vra | -36.758, 144.280 | Sandhurst
Brisbane | qea | -27.468, 153.028
Rockhampton | qea | -23.380, 150.506
Toowoomba | qea | -27.561, 151.954
Adelaide | xra | -34.929, 138.599
Perth | wea | -31.952, 115.861
Fremantle | wea | -32.056, 115.746
Hobart | tma | -42.879, 147.329 | Hobart Town; Hobart-Town; Hobarton; Hobart Town, V.D.L.
Launceston | tma | -41.439, 147.135 | Launceston, V.D.L.
*Wellington | nz | -41.287, 174.776
Auckland | nz | -36.849, 174.763
Dunedin | nz | -45.874, 170.504
Christchurch | nz | -43.533, 172.633
Nelson | nz | -41.271, 173.284
Napier | nz | -39.493, 176.912
Invercargill | nz | -46.400, 168.350
Wanganui | nz | -39.933, 175.050 | Whanganui
Timaru | nz | -44.397, 171.254
Paihia | nz | -35.281, 174.091
Suva | fj | -18.137, 178.425 | Levuka
Tahiti | fp | -17.535, -149.568 | Papeete
Nouméa | nl | -22.274, 166.449 | Noumea
Apia | ws | -13.833, -171.767
Nukualofa | to | -21.137, -175.201
Port Stanley | fk | -51.694, -57.857 | Stanley
`;
