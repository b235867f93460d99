/**
 * Towns of imprints in the United States and Canada: `name | country codes | latitude, longitude | other names`; read by
 * `imprint-towns.ts`, which says what the signs mean. Coordinates: GeoNames (CC BY 4.0), those of hamlets and city
 * districts from memory. Which towns, and their historic, Latin and foreign names: from memory.
 */
export const northAmericanTowns = `
*Boston | mau | 42.358, -71.060 | Boston, Mass.; Boston in New-England; Bostoniae; Boston, New England
Cambridge | mau | 42.375, -71.106
*Salem | mau | 42.520, -70.897
Worcester | mau | 42.263, -71.802
*Andover | mau | 42.658, -71.137
*Haverhill | mau | 42.776, -71.077
Newburyport | mau | 42.813, -70.877 | Newbury-Port
Newbury | mau | 42.780, -70.878
Plymouth | mau | 41.958, -70.667
Springfield | mau | 42.101, -72.590
Northampton | mau | 42.325, -72.641
*Amherst | mau | 42.367, -72.519
Lowell | mau | 42.633, -71.316
Lawrence | mau | 42.707, -71.163
Lynn | mau | 42.467, -70.949
Leominster | mau | 42.525, -71.760
Leicester | mau | 42.246, -71.909
Greenfield | mau | 42.588, -72.600
Deerfield | mau | 42.545, -72.606
New Bedford | mau | 41.635, -70.927
Nantucket | mau | 41.283, -70.099
Taunton | mau | 41.900, -71.090
Fall River | mau | 41.701, -71.155
Fitchburg | mau | 42.583, -71.802
Pittsfield | mau | 42.450, -73.245
Stockbridge | mau | 42.288, -73.320
Gloucester | mau | 42.614, -70.663
Ipswich | mau | 42.679, -70.841
Dedham | mau | 42.242, -71.166
Charlestown | mau | 42.378, -71.064
Roxbury | mau | 42.325, -71.095
Dorchester | mau | 42.297, -71.074
Brookline | mau | 42.332, -71.121
Brookfield | mau | 42.214, -72.102
Concord, Massachusetts | mau | 42.460, -71.349
Quincy | mau | 42.253, -71.002
Medford | mau | 42.418, -71.106
Waltham | mau | 42.376, -71.236
Watertown | mau | 42.371, -71.183
Hingham | mau | 42.242, -70.890
Malden | mau | 42.425, -71.066
Holyoke | mau | 42.204, -72.616
Westfield | mau | 42.125, -72.750
Sturbridge | mau | 42.108, -72.079
Marblehead | mau | 42.500, -70.858
Norwood | mau | 42.195, -71.200
*New York | nyu | 40.714, -74.006 | *New-York; Nueva York; Nova York; Neu York; Neu-York; Neuyork; Novi Eboraci; New York, N.Y.; New York City; Nuova York; N. Y.; Newyork; N.Y.
Brooklyn | nyu | 40.650, -73.950
Albany | nyu | 42.653, -73.756 | Albany, N.Y.
Troy | nyu | 42.728, -73.692
Buffalo | nyu | 42.886, -78.878
Rochester | nyu | 43.155, -77.616
*Syracuse | nyu | 43.048, -76.147
Utica | nyu | 43.101, -75.233
Schenectady | nyu | 42.814, -73.940
Hudson | nyu | 42.253, -73.791
Poughkeepsie | nyu | 41.700, -73.921
Newburgh | nyu | 41.503, -74.010
Kingston, New York | nyu | 41.927, -73.997
Rondout | nyu | 41.920, -73.986
Sag Harbor | nyu | 40.998, -72.293 | Sag-Harbor
Auburn | nyu | 42.932, -76.566
Geneva | nyu | 42.869, -76.978
Ithaca | nyu | 42.441, -76.497
Canandaigua | nyu | 42.874, -77.288
Cooperstown | nyu | 42.700, -74.924
Catskill | nyu | 42.217, -73.865
Elmira | nyu | 42.090, -76.808
Saratoga Springs | nyu | 43.083, -73.785
Oswego | nyu | 43.455, -76.510
Watertown | nyu | 43.975, -75.911
Lansingburgh | nyu | 42.775, -73.671
Plattsburgh | nyu | 44.699, -73.453
Batavia | nyu | 42.998, -78.188
Jamaica | nyu | 40.691, -73.806
Ballston Spa | nyu | 43.001, -73.849
Goshen | nyu | 41.402, -74.324
Yonkers | nyu | 40.931, -73.899
West Point | nyu | 41.391, -73.956
Lockport | nyu | 43.171, -78.690
Palmyra | nyu | 43.064, -77.233
Morrisania | nyu | 40.829, -73.908
Binghamton | nyu | 42.099, -75.918
*Philadelphia | pau | 39.952, -75.164 | *Philadelphiae; Philadelphie; Philadelphia, Pa.; Filadelfia
Germantown | pau | 40.040, -75.176
Pittsburgh | pau | 40.441, -79.996 | Pittsburg
Lancaster | pau | 40.038, -76.306 | Lancaster, Pa.
Harrisburg | pau | 40.274, -76.884
Reading | pau | 40.336, -75.927
York | pau | 39.963, -76.728
Bethlehem | pau | 40.626, -75.370
Ephrata | pau | 40.180, -76.179
Carlisle | pau | 40.201, -77.189
Chambersburg | pau | 39.938, -77.661
Gettysburg | pau | 39.831, -77.231
Easton | pau | 40.688, -75.221
Allentown | pau | 40.608, -75.490
Norristown | pau | 40.121, -75.340
West Chester | pau | 39.961, -75.608
Meadville | pau | 41.641, -80.151
Erie | pau | 42.129, -80.085
Scranton | pau | 41.409, -75.665
Wilkes-Barre | pau | 41.246, -75.881
Lebanon | pau | 40.341, -76.411
Williamsport | pau | 41.241, -77.001
Bristol | pau | 40.101, -74.852
Doylestown | pau | 40.310, -75.130
Media | pau | 39.917, -75.388
Bedford | pau | 40.019, -78.504
Chester | pau | 39.850, -75.357
Hanover | pau | 39.801, -76.983
*Baltimore | mdu | 39.290, -76.612 | Baltimorae
Annapolis | mdu | 38.979, -76.492
Frederick | mdu | 39.414, -77.411 | Fredericktown; Frederick-Town
Hagerstown | mdu | 39.642, -77.720 | Hagers-Town
Cumberland | mdu | 39.653, -78.763
*Washington | dcu | 38.895, -77.036 | *Washington, D.C.; Washington, D. C.; Washington City; City of Washington; Washington DC
Georgetown | dcu | 38.905, -77.063
*Wilmington | deu | 39.746, -75.547
Dover | deu | 39.158, -75.524
Newark | deu | 39.684, -75.750
Newark | nju | 40.736, -74.172
Trenton | nju | 40.217, -74.743
Princeton | nju | 40.349, -74.659
Burlington | nju | 40.071, -74.865
Elizabeth | nju | 40.664, -74.211 | Elizabethtown; Elizabeth-Town
New Brunswick | nju | 40.486, -74.452 | New-Brunswick
Camden | nju | 39.926, -75.120
Jersey City | nju | 40.728, -74.078
Paterson | nju | 40.917, -74.172
Morristown | nju | 40.797, -74.482
Hoboken | nju | 40.744, -74.032
Woodbridge | nju | 40.558, -74.285
Salem, New Jersey | nju | 39.572, -75.467
*Hartford | ctu | 41.764, -72.685
New Haven | ctu | 41.308, -72.928 | New-Haven
New London | ctu | 41.356, -72.100 | New-London
Norwich | ctu | 41.524, -72.076
Middletown | ctu | 41.562, -72.651
Litchfield | ctu | 41.747, -73.189
Bridgeport | ctu | 41.179, -73.189
Danbury | ctu | 41.395, -73.454
Waterbury | ctu | 41.558, -73.052
Stamford | ctu | 41.053, -73.539
Windsor | ctu | 41.853, -72.644
Windham | ctu | 41.700, -72.157
Fairfield | ctu | 41.141, -73.264
Meriden | ctu | 41.538, -72.807
Norwalk | ctu | 41.118, -73.408
*Providence | riu | 41.824, -71.413
Newport | riu | 41.490, -71.313
New Shoreham | riu | 41.172, -71.558
Pawtucket | riu | 41.879, -71.383
Warren | riu | 41.730, -71.283
Bristol | riu | 41.677, -71.266
Portsmouth | nhu | 43.077, -70.758
Concord | nhu | 43.208, -71.538
Exeter | nhu | 42.981, -70.948
Keene | nhu | 42.934, -72.278
Walpole | nhu | 43.080, -72.426
Hanover | nhu | 43.702, -72.290
Dover | nhu | 43.198, -70.874
Manchester | nhu | 42.996, -71.455
Amherst | nhu | 42.861, -71.625
New Ipswich | nhu | 42.748, -71.854 | New-Ipswich
Newport | nhu | 43.365, -72.173
Nashua | nhu | 42.765, -71.468
Haverhill | nhu | 44.035, -72.064
Boscawen | nhu | 43.315, -71.621
Gilmanton | nhu | 43.424, -71.415
Claremont | nhu | 43.377, -72.347
Burlington | vtu | 44.476, -73.212
Montpelier | vtu | 44.260, -72.575
Windsor | vtu | 43.480, -72.385
Brattleboro | vtu | 42.851, -72.558 | Brattleborough; Brattleborough, Vt.
Bennington | vtu | 42.878, -73.197
Rutland | vtu | 43.611, -72.973
Woodstock | vtu | 43.624, -72.518
Middlebury | vtu | 44.016, -73.169
Westminster | vtu | 43.073, -72.455
Bellows Falls | vtu | 43.133, -72.444
St. Albans | vtu | 44.811, -73.083 | Saint Albans
St. Johnsbury | vtu | 44.425, -72.015 | Saint Johnsbury
Newport | vtu | 44.936, -72.205
*Portland, Maine | meu | 43.657, -70.259 | Portland
Augusta | meu | 44.311, -69.779
Hallowell | meu | 44.286, -69.791
Bath | meu | 43.911, -69.821
Bangor | meu | 44.799, -68.773
Brunswick | meu | 43.915, -69.965
Gardiner | meu | 44.230, -69.775
Kennebunk | meu | 43.384, -70.545
Wiscasset | meu | 44.003, -69.666
Lewiston | meu | 44.100, -70.215
Belfast | meu | 44.426, -69.006
Biddeford | meu | 43.493, -70.453
Richmond | vau | 37.554, -77.460
Williamsburg | vau | 37.271, -76.707 | Williamsburgh
Norfolk | vau | 36.847, -76.285
Alexandria | vau | 38.805, -77.047
Petersburg | vau | 37.228, -77.402
Fredericksburg | vau | 38.303, -77.461
Lynchburg | vau | 37.414, -79.142
Winchester | vau | 39.186, -78.163
Staunton | vau | 38.150, -79.073
Charlottesville | vau | 38.029, -78.477
Wheeling | wvu | 40.064, -80.721
Charleston, West Virginia | wvu | 38.350, -81.633 | Charleston
New Bern | ncu | 35.108, -77.044 | Newbern
Raleigh | ncu | 35.772, -78.639
Wilmington | ncu | 34.226, -77.945
Fayetteville | ncu | 35.053, -78.878
Edenton | ncu | 36.058, -76.608
Salem, North Carolina | ncu | 36.086, -80.242 | Salem
Greensboro | ncu | 36.073, -79.792
*Charleston | scu | 32.777, -79.931 | Charlestown; Charles-Town; Charles Town
Columbia | scu | 34.001, -81.035
*Savannah | gau | 32.084, -81.100
Augusta | gau | 33.471, -81.975
Macon | gau | 32.841, -83.632
Atlanta | gau | 33.749, -84.388
Athens | gau | 33.961, -83.378
Columbus | gau | 32.461, -84.988
St. Augustine | flu | 29.895, -81.315 | Saint Augustine
Pensacola | flu | 30.421, -87.217
Jacksonville | flu | 30.332, -81.656
Tallahassee | flu | 30.438, -84.281
Mobile | alu | 30.694, -88.043
Montgomery | alu | 32.367, -86.300
Tuscaloosa | alu | 33.210, -87.569
Natchez | msu | 31.560, -91.403
Jackson | msu | 32.299, -90.185
Vicksburg | msu | 32.353, -90.878
*New Orleans | lau | 29.955, -90.075 | Nouvelle-Orléans; Nouvelle Orleans; Nueva Orleans; La Nouvelle-Orléans
Baton Rouge | lau | 30.443, -91.187
Galveston | txu | 29.301, -94.798
Houston | txu | 29.763, -95.363
Austin | txu | 30.267, -97.743
San Antonio | txu | 29.424, -98.494
Dallas | txu | 32.783, -96.807
Paris, Texas | txu | 33.661, -95.556 | Paris
Little Rock | aru | 34.746, -92.290
*Nashville | tnu | 36.166, -86.784
Knoxville | tnu | 35.961, -83.921
Memphis | tnu | 35.150, -90.049
Chattanooga | tnu | 35.046, -85.310
*Lexington | kyu | 37.989, -84.478
Louisville | kyu | 38.254, -85.759
Frankfort | kyu | 38.201, -84.873
Newport | kyu | 39.091, -84.496
Covington | kyu | 39.084, -84.509
*Cincinnati | ohu | 39.127, -84.514
Columbus | ohu | 39.961, -82.999
Cleveland | ohu | 41.499, -81.695
Dayton | ohu | 39.759, -84.192
Toledo | ohu | 41.664, -83.555
Chillicothe | ohu | 39.333, -82.982
Zanesville | ohu | 39.940, -82.013
Marietta | ohu | 39.415, -81.455
Steubenville | ohu | 40.370, -80.634
Oberlin | ohu | 41.294, -82.217
Hudson | ohu | 41.240, -81.441
Springfield | ohu | 39.924, -83.809
Canton | ohu | 40.799, -81.378
Akron | ohu | 41.081, -81.519
East Liverpool | ohu | 40.619, -80.577
*Indianapolis | inu | 39.768, -86.158
Vincennes | inu | 38.677, -87.529
New Albany | inu | 38.286, -85.824
Terre Haute | inu | 39.467, -87.414
Richmond | inu | 39.829, -84.890
Lafayette | inu | 40.417, -86.875
Madison | inu | 38.736, -85.380
*Chicago | ilu | 41.850, -87.650
Springfield | ilu | 39.802, -89.644
Peoria | ilu | 40.694, -89.589
Vandalia | ilu | 38.961, -89.094
Alton | ilu | 38.891, -90.184
Rockford | ilu | 42.271, -89.094
Nauvoo | ilu | 40.550, -91.385
Evanston | ilu | 42.041, -87.690
Elgin | ilu | 42.037, -88.281
*Detroit | miu | 42.331, -83.046
Ann Arbor | miu | 42.278, -83.741
Lansing | miu | 42.733, -84.556
Grand Rapids | miu | 42.963, -85.668
Kalamazoo | miu | 42.292, -85.587
Battle Creek | miu | 42.317, -85.178
*Milwaukee | wiu | 43.039, -87.906
Madison | wiu | 43.073, -89.401
Racine | wiu | 42.726, -87.783
Oshkosh | wiu | 44.025, -88.543
St. Paul | mnu | 44.944, -93.093 | Saint Paul; St Paul
Minneapolis | mnu | 44.980, -93.264
Des Moines | iau | 41.601, -93.609
Davenport | iau | 41.524, -90.578
Burlington | iau | 40.808, -91.113
Dubuque | iau | 42.501, -90.665
Iowa City | iau | 41.661, -91.530
Cedar Rapids | iau | 42.008, -91.644
*St. Louis | mou | 38.627, -90.198 | *Saint Louis; St Louis
Kansas City | mou | 39.100, -94.579
Jefferson City | mou | 38.577, -92.174
St. Joseph | mou | 39.769, -94.847 | Saint Joseph
Columbia | mou | 38.952, -92.334
Topeka | ksu | 39.048, -95.678
Girard | ksu | 37.511, -94.838
Lawrence | ksu | 38.972, -95.235
Leavenworth | ksu | 39.311, -94.922
Omaha | nbu | 41.256, -95.940
Lincoln | nbu | 40.800, -96.667
Denver | cou | 39.739, -104.985
Boulder | cou | 40.015, -105.271
Salt Lake City | utu | 40.761, -111.891 | Great Salt Lake City
Virginia City | nvu | 39.310, -119.650
*San Francisco | cau | 37.775, -122.419 | San Francisco, Cal.
Sacramento | cau | 38.582, -121.494
Los Angeles | cau | 34.052, -118.244
Oakland | cau | 37.804, -122.271
San Jose | cau | 37.339, -121.895
Monterey | cau | 36.600, -121.895
San Diego | cau | 32.716, -117.165
Stockton | cau | 37.958, -121.291
Berkeley | cau | 37.872, -122.273
Pasadena | cau | 34.148, -118.145
Portland | oru | 45.523, -122.676
Salem | oru | 44.943, -123.035
Seattle | wau | 47.606, -122.332
Tacoma | wau | 47.253, -122.444
Olympia | wau | 47.038, -122.901
Santa Fe | nmu | 35.687, -105.938
Honolulu | hiu | 21.307, -157.858
Lahaina | hiu | 20.874, -156.677
Sitka | aku | 57.053, -135.331
Greenville | scu | 34.853, -82.394
Tahlequah | oku | 35.915, -94.970
*Toronto | onc | 43.700, -79.416 | York, Upper Canada
Ottawa | onc | 45.411, -75.698 | Bytown
Kingston | onc | 44.230, -76.481
Hamilton | onc | 43.250, -79.850
London | onc | 42.983, -81.233
Niagara-on-the-Lake | onc | 43.257, -79.085 | Niagara
Brantford | onc | 43.133, -80.266
Guelph | onc | 43.546, -80.256
Belleville | onc | 44.167, -77.383
Cobourg | onc | 43.960, -78.165
*Montréal | quc | 45.509, -73.588 | *Montreal; Mont-Réal; Marie-Ville
*Québec | quc | 46.812, -71.215 | *Quebec; Kebec
Trois-Rivières | quc | 46.345, -72.548 | Three Rivers
Sherbrooke | quc | 45.400, -71.899
Saint-Hyacinthe | quc | 45.631, -72.957
Lévis | quc | 46.803, -71.178
*Halifax, Nova Scotia | nsc | 44.643, -63.577 | Halifax; Halifax, N.S.
Pictou | nsc | 45.679, -62.709
Yarmouth | nsc | 43.833, -66.116
Saint John | nkc | 45.271, -66.056 | St. John, N.B.; St. John; Saint John, N.B.
Fredericton | nkc | 45.945, -66.666
Moncton | nkc | 46.095, -64.796
Charlottetown | pic | 46.235, -63.126
St. John's | nfc | 47.565, -52.709 | Saint John's
Winnipeg | mbc | 49.884, -97.147
Victoria | bcc | 48.436, -123.352
Vancouver | bcc | 49.250, -123.119
New Westminster | bcc | 49.207, -122.911
Regina | snc | 50.450, -104.618
Calgary | abc | 51.050, -114.085
Edmonton | abc | 53.550, -113.469
`;
