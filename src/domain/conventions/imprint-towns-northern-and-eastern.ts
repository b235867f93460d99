/**
 * Towns of imprints in the North, the Baltic, Russia, Poland, Bohemia, Hungary and Romania: `name | country codes | latitude, longitude | other names`; read by
 * `imprint-towns.ts`, which says what the signs mean. Coordinates: GeoNames (CC BY 4.0), those of hamlets and city
 * districts from memory. Which towns, and their historic, Latin and foreign names: from memory.
 */
export const northernAndEasternTowns = `
*Copenhagen | dk | 55.676, 12.566 | *København; *Kjøbenhavn; Kjöbenhavn; Kiøbenhavn; Kiöbenhavn; Hafniae; Hauniae; Kopenhagen; Copenhague; Kjobenhavn; Kaupmannahöfn; Havniae; Köpenhamn; Kiøbenhaffn; Copenaghen; Hafnia
Aarhus | dk | 56.157, 10.211 | Aarhuus; Århus
Aalborg | dk | 57.048, 9.919 | Ålborg; Alborg
Odense | dk | 55.396, 10.388 | Othiniae; Ottoniae
*Viborg | dk | 56.453, 9.402 | Viburgi
Ribe | dk | 55.331, 8.770 | Ripis
Kolding | dk | 55.490, 9.472
Fredericia | dk | 55.566, 9.753
Hillerød | dk | 55.928, 12.301 | Frederiksborg
Helsingør | dk | 56.036, 12.614 | Elsinore
Sorø | dk | 55.432, 11.555 | Sorae
Roskilde | dk | 55.642, 12.080 | Roeskilde
Randers | dk | 56.461, 10.036
Horsens | dk | 55.861, 9.850
Vejle | dk | 55.709, 9.536
Svendborg | dk | 55.060, 10.607
Nykøbing Falster | dk | 54.769, 11.874
Slagelse | dk | 55.403, 11.355
Haderslev | dk | 55.249, 9.488 | Hadersleben
Rønne | dk | 55.101, 14.707
Reykjavík | ic | 64.135, -21.895 | Reykjavik; Reikjavik
Akureyri | ic | 65.684, -18.088 | Akreyri
Hólar | ic | 65.733, -19.113 | Hoolum; Holum
Viðey | ic | 64.163, -21.853 | Videy; Viðeyjar Klaustri; Videyar Klaustri
Leirárgarðar | ic | 64.420, -21.930 | Leirárgörðum; Leirargördum
Tórshavn | fa | 62.010, -6.772 | Thorshavn
Godthaab | gl | 64.183, -51.722 | Nuuk; Noungme; Nungme
*Christiania | no | 59.913, 10.746 | Kristiania; Christianiae; Oslo; Christianiæ; Cristiania
*Bergen | no | 60.393, 5.324 | Bergae; Bergis
Trondheim | no | 63.430, 10.395 | Trondhjem; Nidrosiae; Throndhjem; Drontheim; Throndhiem
Stavanger | no | 58.970, 5.733
Christiansand | no | 58.147, 7.996 | Kristiansand
Drammen | no | 59.744, 10.204
Fredrikshald | no | 59.125, 11.388 | Halden
Skien | no | 59.210, 9.609
Risør | no | 58.721, 9.234 | Riisøer
Arendal | no | 58.462, 8.773
Tromsø | no | 69.649, 18.955
Hamar | no | 60.794, 11.068
Kongsberg | no | 59.669, 9.650
Kristiansund | no | 63.110, 7.728 | Christiansund
Larvik | no | 59.053, 10.035 | Laurvig
*Stockholm | sw | 59.329, 18.069 | *Stockholmiae; Holmiae; Stokholm; Stockholmisa; Stokholmiae; Tukholma; Tukholmassa; Stockholmissa; Stockholmi; Estocolmo; Stoccolma
Uppsala | sw | 59.859, 17.639 | Upsaliae; Upsala; Upsaliæ; Upsalae
Lund | sw | 55.706, 13.193 | Lundae; Londini Gothorum; Lundæ; Londini Scanorum; Lundini Gothorum
Gothenburg | sw | 57.707, 11.967 | Göteborg; Götheborg; Gothoburgi; Gotheborg; Göteborgi
Malmö | sw | 55.606, 13.001
Norrköping | sw | 58.594, 16.183 | Norcopiae; Norköping
Linköping | sw | 58.411, 15.622 | Lincopiae
Västerås | sw | 59.616, 16.553 | Westerås; Arosiae; Vesterås
Örebro | sw | 59.274, 15.207
Karlstad | sw | 59.379, 13.504 | Carlstad
Kalmar | sw | 56.662, 16.362 | Calmar; Calmariae
Karlskrona | sw | 56.162, 15.587 | Carlscrona; Carolicoronae
Kristianstad | sw | 56.031, 14.152 | Christianstad
Växjö | sw | 56.878, 14.809 | Wexiö; Vexioniae
Jönköping | sw | 57.781, 14.156
Gävle | sw | 60.675, 17.142 | Gefle; Geffle
Falun | sw | 60.604, 15.626 | Fahlun
Visby | sw | 57.641, 18.296 | Wisby
Strängnäs | sw | 59.377, 17.031 | Strengnäs
Skara | sw | 58.387, 13.438 | Scarae
Landskrona | sw | 55.871, 12.830
Helsingborg | sw | 56.047, 12.694
Hernösand | sw | 62.632, 17.938 | Härnösand
Luleå | sw | 65.584, 22.155
Umeå | sw | 63.828, 20.260
Sundsvall | sw | 62.391, 17.306
Marieberg | sw | 59.324, 18.011
Rörstrand | sw | 59.343, 18.038
Skövde | sw | 58.391, 13.845
Helsinki | fi ru | 60.170, 24.935 | Helsingfors; Helsingforsiae; Helsingissä; Helsingfors'
Turku | fi ru | 60.451, 22.269 | *Åbo; *Aboae; Aboæ; Turussa; Turusa; Abo
Tampere | fi ru | 61.499, 23.787 | Tampereella; Tammerfors
Porvoo | fi ru | 60.392, 25.665 | Borgå; Porvoossa; Borgo
Viipuri | ru fi | 60.708, 28.753 | Viborg; Wiborg; Viipurissa; Vyborg
Vaasa | fi ru | 63.096, 21.616 | Wasa; Vasa; Vaasassa; Nikolaistad
Oulu | fi ru | 65.012, 25.468 | Uleåborg; Oulussa
Kuopio | fi ru | 62.892, 27.677 | Kuopiossa
Hämeenlinna | fi ru | 60.996, 24.464 | Tavastehus; Hämeenlinnassa
Pori | fi ru | 61.483, 21.783 | Björneborg; Porissa
Jyväskylä | fi ru | 62.241, 25.721 | Jyväskylässä
Kristiinankaupunki | fi ru | 62.274, 21.376 | Kristinestad
Loviisa | fi ru | 60.457, 26.225 | Lovisa
Rauma | fi ru | 61.127, 21.511 | Raumo
Joensuu | fi ru | 62.601, 29.763
Tallinn | er ru | 59.437, 24.754 | Reval; Revaliae; Talinas; Tallinnas; Revel; Tallinas
Tartu | er ru | 58.381, 26.725 | Dorpat; Dorpati; Dorpati Livonorum; Jurjev; Юрьевъ; Tartus; Дерптъ
Pärnu | er ru | 58.386, 24.497 | Pernau; Pernaviae; Pernov
Kuressaare | er ru | 58.254, 22.492 | Arensburg
*Riga | lv ru | 56.946, 24.106 | Rigae; Рига; Rīga; Rihgâ
Mitau | lv ru | 56.650, 23.713 | Jelgava; Mitaviae; Jelgawâ; Mitavae
Libau | lv ru | 56.505, 21.011 | Liepāja; Leepajâ
Vilnius | li pl ru | 54.689, 25.280 | Wilno; Vilna; Wilna; Vilnae; Вильна; Ṿilna; Wilnie; we Wilnie
Kaunas | li ru | 54.903, 23.910 | Kovno; Ковно; Kowno
Memel | li ru | 55.710, 21.130 | Klaipėda
Šiauliai | li ru | 55.933, 23.317
Minsk | bw ru | 53.900, 27.567 | Минскъ; Mińsk
Grodno | bw ru | 53.688, 23.826 | Hrodna; Гродно
Polotsk | bw ru | 55.488, 28.786 | Połock; Полоцкъ
Mogilev | bw ru | 53.917, 30.345 | Могилевъ
Vitebsk | bw ru | 55.190, 30.205 | Витебскъ
*Warsaw | pl ru | 52.230, 21.012 | *Warszawa; Varsaviae; Varsovie; Warschau; Варшава; Varsoviae; Varsavia; Ṿarsha; Warsha; Varshe; Warszawie; w Warszawie; Varsovia; Varšava
Kraków | pl au | 50.061, 19.937 | Cracoviae; Krakau; Cracow; Cracovie; Krakowie; w Krakowie; Krakow; Cracovia
Lublin | pl | 51.250, 22.567
Płock | pl | 52.547, 19.706
Kalisz | pl | 51.761, 18.091 | Kalisch
Łódź | pl | 51.771, 19.474
Radom | pl | 51.403, 21.147
Piotrków | pl | 51.405, 19.703
Przemyśl | pl au | 49.785, 22.767
Rzeszów | pl au | 50.041, 21.999
Tarnów | pl au | 50.014, 20.987
Cieszyn | pl au | 49.751, 18.632 | Teschen; Těšín; Cieszynie; w Cieszynie
Sandomierz | pl | 50.683, 21.749
Gniezno | pl | 52.535, 17.583 | Gnesen
Częstochowa | pl | 50.796, 19.124
Bielsko | pl au | 49.822, 19.047 | Bielitz
Suprasl | pl | 53.205, 23.339
*Lviv | un pl au | 49.838, 24.023 | *Lwów; Lemberg; Leopoli; Lwòw; Lwow; Lwowie; we Lwowie; Львовъ; Львів; у Львові; Leopolis
Kiev | un ru | 50.455, 30.524 | Kijow; Kijów; Кіевъ; Київ; Kiew; Kiyev; Kyiv; Кіев
Kharkov | un ru | 49.981, 36.253 | Харьковъ; Charkow; Kharkiv; Харків
Odessa | un ru | 46.486, 30.744 | Одесса; Odesa; Одеса; Одессѣ
Czernowitz | un au | 48.290, 25.932 | Chernivtsi; Cernăuți; Чернівці; Tschernowitz
Zhitomir | un ru | 50.265, 28.677 | Житоміръ; Żytomierz
Berdichev | un ru | 49.894, 28.601 | Berdyczów; Бердичевъ
Poltava | un ru | 49.589, 34.554 | Полтава
Uzhhorod | un hu | 48.624, 22.295 | Ungvár
Kherson | un ru | 46.637, 32.615 | Херсонъ
Nikolaev | un ru | 46.976, 31.993 | Николаевъ
Simferopol | un ru | 44.957, 34.111 | Симферополь
Sevastopol | un ru | 44.608, 33.521 | Севастополь
Chernigov | un ru | 51.506, 31.285 | Черниговъ
Stanislau | un pl au | 48.923, 24.712 | Stanisławów; Ivano-Frankivsk
Tarnopol | un pl au | 49.554, 25.591 | Ternopil
Brody | un pl au | 50.088, 25.150
Kolomea | un pl au | 48.525, 25.037 | Kołomyja
Krzemieniec | un ru | 50.099, 25.728 | Kremenets
*Saint Petersburg | ru | 59.939, 30.314 | *St. Petersburg; *Petropoli; С.-Петербургъ; Санктпетербургъ; Санкт-Петербургъ; St. Pétersbourg; Saint-Pétersbourg; St.-Pétersbourg; St.-Petersburg; Sankt-Peterburg; Petersburg; Petersburgu; Petrograd; Петроградъ; С.-Петербург; Спб.; СПб; С. Петербургъ; S.-Peterburg; Pietari; Pietarissa; Петербургъ; San Pietroburgo; Санктъ-Петербургъ; Sanct Petersburg; Petersburgi; въ Санктпетербургѣ
*Moscow | ru | 55.752, 37.616 | *Москва; Moskva; Mosquae; Moskau; Moscou; Moscua; въ Москвѣ; Moskwa; Москвѣ
Kazan | ru | 55.789, 49.122 | Казань; Kasan; Casani; Kazan'
Novgorod | ru | 58.521, 31.271 | Новгородъ
Nizhny Novgorod | ru | 56.329, 44.002 | Нижній-Новгородъ; Нижній Новгородъ
Tver | ru | 56.858, 35.901 | Тверь
Yaroslavl | ru | 57.630, 39.874 | Ярославль
Kostroma | ru | 57.766, 40.927 | Кострома
Vladimir | ru | 56.137, 40.397 | Владиміръ
Ryazan | ru | 54.627, 39.692 | Рязань
Tula | ru | 54.196, 37.618 | Тула
Orel | ru | 52.965, 36.078 | Орелъ
Kursk | ru | 51.737, 36.187 | Курскъ
Voronezh | ru | 51.672, 39.184 | Воронежъ
Saratov | ru | 51.541, 46.009 | Саратовъ
Samara | ru | 53.200, 50.150 | Самара
Simbirsk | ru | 54.328, 48.387 | Симбирскъ
Penza | ru | 53.201, 45.005 | Пенза
Tambov | ru | 52.732, 41.443 | Тамбовъ
Perm | ru | 58.010, 56.250 | Пермь
Vyatka | ru | 58.597, 49.660 | Вятка
Ufa | ru | 54.743, 55.968 | Уфа
Orenburg | ru | 51.773, 55.099 | Оренбургъ
Astrakhan | ru | 46.350, 48.041 | Астрахань
Rostov-on-Don | ru | 47.231, 39.723 | Ростовъ-на-Дону
Novocherkassk | ru | 47.421, 40.092 | Новочеркасскъ
Pyatigorsk | ru | 44.049, 43.059 | Пятигорскъ; Пятигорскѣ; Въ Пятигорскѣ
Vladikavkaz | ru | 43.037, 44.668 | Владикавказъ
Stavropol | ru | 45.043, 41.973 | Ставрополь
Ekaterinburg | ru | 56.852, 60.612 | Екатеринбургъ
Tobolsk | ru | 58.198, 68.255 | Тобольскъ
Tomsk | ru | 56.498, 84.974 | Томскъ
Irkutsk | ru | 52.298, 104.296 | Иркутскъ
Omsk | ru | 54.992, 73.369 | Омскъ
Vladivostok | ru | 43.106, 131.874 | Владивостокъ
Archangel | ru | 64.540, 40.543 | Архангельскъ; Arkhangelsk
Vologda | ru | 59.224, 39.884 | Вологда
Petrozavodsk | ru | 61.785, 34.347 | Петрозаводскъ
Pskov | ru | 57.814, 28.350 | Псковъ
Smolensk | ru | 54.779, 32.044 | Смоленскъ
Kaluga | ru | 54.529, 36.275 | Калуга
Kronstadt, Russia | ru | 59.995, 29.767 | Кронштадтъ
Peterhof | ru | 59.883, 29.900
Kishinev | mv ru | 47.006, 28.858 | Кишиневъ; Chișinău; Chişinău; Кишинёвъ
*Tiflis | gs ru | 41.694, 44.834 | Тифлисъ; Tbilisi; Тифлисѣ; Tphilisi
Kutaisi | gs ru | 42.268, 42.695 | Кутаисъ
Batum | gs ru | 41.642, 41.634 | Батумъ
Erivan | ai ru | 40.181, 44.514 | Эривань; Yerevan
Etchmiadzin | ai ru | 40.166, 44.295 | Эчміадзинъ
Baku | aj ru | 40.378, 49.892 | Баку
*Prague | xr au | 50.088, 14.421 | *Praha; Prag; Pragae; Praze; v Praze; Praga; Prága; Pragæ; Praze a Brně; Vetero-Pragae
Brno | xr au | 49.195, 16.608 | Brünn; Brunae; Brně; v Brně; Bruna
Olomouc | xr au | 49.596, 17.252 | Olmütz; Olomucii; v Olomouci
Plzeň | xr au | 49.747, 13.378 | Pilsen; v Plzni
Karlovy Vary | xr au | 50.233, 12.871 | Karlsbad; Carlsbad; Carolinae Thermae
Litoměřice | xr au | 50.533, 14.132 | Leitmeritz; Litomericii; v Litoměřicích
Litomyšl | xr au | 49.868, 16.313 | Leitomischl; Litomyssl; v Litomyšli
Hradec Králové | xr au | 50.209, 15.833 | Königgrätz; v Hradci Králové
Kutná Hora | xr au | 49.948, 15.268 | Kuttenberg; v Hoře Kutné
Roudnice | xr au | 50.425, 14.262 | v Roudnici; Roudnici; Raudnitz
Chrudim | xr au | 49.951, 15.796 | Chrudimi; v Chrudimi
Hlinsko | xr au | 49.762, 15.908 | Hlinsku; v Hlinsku
Velké Meziříčí | xr au | 49.355, 16.012 | Velkém Meziříčí; ve Velkém Meziříčí; Gross-Meseritsch
Královské Vinohrady | xr au | 50.076, 14.448 | Král. Vinohrady; Vinohrady; na Král. Vinohradech
Tábor | xr au | 49.414, 14.658 | v Táboře
Teplice | xr au | 50.640, 13.825 | Teplitz
České Budějovice | xr au | 48.974, 14.474 | Budweis
Cheb | xr au | 50.080, 12.374 | Eger
Liberec | xr au | 50.767, 15.056 | Reichenberg
Opava | xr au | 49.939, 17.903 | Troppau
Jihlava | xr au | 49.396, 15.591 | Iglau
Znojmo | xr au | 48.855, 16.049 | Znaim
Kroměříž | xr au | 49.298, 17.393 | Kremsier
Pardubice | xr au | 50.041, 15.777 | v Pardubicích
Jičín | xr au | 50.437, 15.352 | Gitschin
Mladá Boleslav | xr au | 50.411, 14.903 | Jungbunzlau; v Mladé Boleslavi
Telč | xr au | 49.184, 15.453 | v Telči
Holíč | xo hu | 48.811, 17.162 | Holitsch
Těšín | xr au | 49.746, 18.626
Písek | xr au | 49.309, 14.148
Klatovy | xr au | 49.396, 13.295
Jindřichův Hradec | xr au | 49.144, 15.003 | Neuhaus
Třebíč | xr au | 49.215, 15.882
Prostějov | xr au | 49.472, 17.112
Bratislava | xo hu | 48.148, 17.107 | Pressburg; Posonii; Pozsony; Preßburg; Pozsonyban; Po'sonyban; Prešporok; Presburg; Posonium
Trnava | xo hu | 48.377, 17.587 | Tyrnaviae; Tyrnau; Nagyszombat
Košice | xo hu | 48.714, 21.258 | Kassa; Cassoviae; Kaschau; Kassán
Prešov | xo hu | 48.998, 21.234 | Eperjes; Eperies
Levoča | xo hu | 49.022, 20.592 | Leutschoviae; Lőcse; Leutschau
Banská Bystrica | xo hu | 48.739, 19.153 | Neusohl; Besztercebánya; Neosolii
Skalica | xo hu | 48.845, 17.226 | Szakolca; Skalicae
Turčiansky Svätý Martin | xo hu | 49.067, 18.924 | v Turčianskom Sv. Martine
Komárno | xo hu | 47.764, 18.123 | Komárom; Komorn
*Budapest | hu | 47.498, 19.040 | *Budapesten; Budapesth; Budapeszt; Budapešť; Будапештъ
Pest | hu | 47.500, 19.053 | Pesth; Pesten; Peśten; Pestini; Pestinum; Pestén; Pestiny
Buda | hu | 47.497, 19.037 | Ofen; Budae; Budán; Budánn; Budán, Ofen; Budim
Debrecen | hu | 47.532, 21.624 | Debreczen; Debrecini; Debreczin; Debrecenben; Debreczenben
Szeged | hu | 46.253, 20.148 | Szegedin; Szegeden
Pécs | hu | 46.072, 18.231 | Fünfkirchen; Quinque Ecclesiis; Pécsett
Győr | hu | 47.683, 17.635 | Raab; Jaurini; Jaurinum; Győrött
Székesfehérvár | hu | 47.190, 18.410 | Albae Regalis; Stuhlweissenburg
Esztergom | hu | 47.793, 18.741 | Gran; Strigonii
Eger | hu | 47.903, 20.373 | Erlau; Agriae
Veszprém | hu | 47.093, 17.911
Szombathely | hu | 47.231, 16.622 | Sabariae; Steinamanger
Sopron | hu | 47.685, 16.590 | Ödenburg; Sempronii
Kecskemét | hu | 46.906, 19.691
Pápa | hu | 47.330, 17.467 | Pápán
Sárospatak | hu | 48.325, 21.574 | Sárospatakon
Sátoraljaújhely | hu | 48.395, 21.659
Vác | hu | 47.776, 19.136 | Waitzen; Vacii
Herend | hu | 47.133, 17.750
Miskolc | hu | 48.103, 20.778 | Miskolcz
Kőszeg | hu | 47.389, 16.541 | Güns
Nagykanizsa | hu | 46.453, 16.991
Baja | hu | 46.183, 18.953
Szarvas | hu | 46.867, 20.550
Bucharest | rm | 44.432, 26.106 | București; Bucuresti; Bucureşti; Bucures̡ti; Bucures̡tĭ; Bukarest; Bucarest; Bucuresci; Bucurescĭ; Βουκουρέστιον; ἐν Βουκουρεστίῳ
Iași | rm | 47.167, 27.600 | Iaşi; Jassy; Iasi; Iassii; Ἰάσιον; Yassy; Jași
Galați | rm | 45.437, 28.050 | Galaţi; Galat̡ĭ; Galat̡i; Galatz; Galati; Galatzi
Brăila | rm | 45.272, 27.974 | Βραΐλα; Braila
Cluj | rm hu | 46.767, 23.600 | Kolozsvár; Klausenburg; Claudiopoli; Kolozsvárt; Kolozsváratt
Sibiu | rm hu | 45.800, 24.150 | Hermannstadt; Cibinii; Nagyszeben; Hermanstadt; Sibiiu
Brașov | rm hu | 45.649, 25.606 | Kronstadt; Brassó; Coronae; Braşov
Timișoara | rm hu | 45.754, 21.226 | Temesvár; Temesvar; Temesvarini; Temeswar
Oradea | rm hu | 47.046, 21.918 | Nagyvárad; Grosswardein; Magno-Varadini; Nagy-Várad
Arad | rm hu | 46.183, 21.317
Alba Iulia | rm hu | 46.067, 23.583 | Gyulafehérvár; Albae Carolinae; Karlsburg; Károly-Fehérvár
Blaj | rm hu | 46.175, 23.916 | Blasendorf; Balázsfalva; Blasiu
Târgu Mureș | rm hu | 46.542, 24.557 | Marosvásárhely; Maros-Vásárhely
Craiova | rm | 44.317, 23.800
Ploiești | rm | 44.950, 26.017 | Ploiesti; Ploeşti
Satu Mare | rm hu | 47.799, 22.863 | Szatmár
`;
