/**
 * Towns of imprints in Britain and Ireland: `name | country codes | latitude, longitude | other names`; read by
 * `imprint-towns.ts`, which says what the signs mean. Coordinates: GeoNames (CC BY 4.0), those of hamlets and city
 * districts from memory. Which towns, and their historic, Latin and foreign names: from memory.
 */
export const britishTowns = `
*London | enk | 51.509, -0.126 | *Londini; Londinum; Londinium; Londinii; Londres; Londra; Londyn; Lontoo; Lundúnir; Лондон; Лондонъ; Λονδίνον; ἐν Λονδίνῳ; Londen; Lundun; London, England; Llundain; Londonii
*Westminster | enk | 51.499, -0.135 | Westmonasterii; Westmonasterium
Southwark | enk | 51.503, -0.091
Chelsea | enk | 51.487, -0.169
Chiswick | enk | 51.493, -0.258
Hammersmith | enk | 51.494, -0.229
Holborn | enk | 51.518, -0.110
Smithfield | enk | 51.519, -0.102
Clerkenwell | enk | 51.524, -0.109
Islington | enk | 51.536, -0.103
Hackney | enk | 51.550, -0.050
Stepney | enk | 51.517, -0.043
Shoreditch | enk | 51.527, -0.078
Lambeth | enk | 51.496, -0.111
Kensington | enk | 51.500, -0.193
Paddington | enk | 51.517, -0.177
Marylebone | enk | 51.521, -0.153
Greenwich | enk | 51.478, -0.009
Woolwich | enk | 51.491, 0.065
Deptford | enk | 51.474, -0.024
Blackheath | enk | 51.465, 0.009
Sydenham | enk | 51.427, -0.054
Camberwell | enk | 51.474, -0.094
Battersea | enk | 51.475, -0.155
Clapham | enk | 52.161, -0.495
Norwood | enk | 51.412, -0.089
Croydon | enk | 51.383, -0.100
Kingston upon Thames | enk | 51.413, -0.297 | Kingston-on-Thames
Surbiton | enk | 51.391, -0.298
*Richmond, Surrey | enk | 51.462, -0.306 | Richmond; Richmond-upon-Thames
Twickenham | enk | 51.445, -0.338 | Strawberry Hill
Acton | enk | 51.509, -0.276
Ealing | enk | 51.512, -0.302
Brentford | enk | 51.486, -0.308
Fulham | enk | 51.480, -0.199
Bow | enk | 51.528, -0.016
Stratford, Essex | enk | 51.542, 0.000 | Stratford
Tottenham | enk | 51.604, -0.068
Hampstead | enk | 51.556, -0.178
Highgate | enk | 51.566, -0.159
Harrow | enk | 51.571, -0.334 | Harrow-on-the-Hill
Uxbridge | enk | 51.549, -0.482
*Oxford | enk | 51.752, -1.256 | *Oxonii; Oxonium; Oxoniae; Oxoniæ; Oxonia; Oxenford; Oxon
*Cambridge | enk | 52.200, 0.117 | *Cantabrigiae; Cantabrigia; Cantabr.; Cantab.
*Birmingham | enk | 52.481, -1.900 | Birminghamiae
*Manchester | enk | 53.481, -2.237 | Mancunii; Mancunium
Salford | enk | 53.488, -2.290
*Liverpool | enk | 53.411, -2.978
*Bristol | enk | 51.455, -2.597 | Bristoliae; Bristolia
*Leeds | enk | 53.796, -1.548
Sheffield | enk | 53.383, -1.466
Bradford | enk | 53.794, -1.752
Halifax | enk | 53.717, -1.850
Huddersfield | enk | 53.649, -1.784
Wakefield | enk | 53.683, -1.498
*York | enk | 53.958, -1.083 | Eboraci; Eboracum
Hull | enk | 53.745, -0.335 | Kingston-upon-Hull; Kingston upon Hull
Beverley | enk | 53.846, -0.423
Scarborough | enk | 54.280, -0.404
Whitby | enk | 54.488, -0.615
Ripon | enk | 54.136, -1.528
Harrogate | enk | 53.991, -1.537
Knaresborough | enk | 54.009, -1.469 | Knaresbrough; Knaresbro'; Knaresbro
Fort Montague | enk | 54.004, -1.460 | Fort-Montague
Skipton | enk | 53.961, -2.017
Otley | enk | 53.906, -1.694
Keighley | enk | 53.868, -1.907
Bingley | enk | 53.849, -1.839
Pontefract | enk | 53.691, -1.313
Doncaster | enk | 53.523, -1.131
Rotherham | enk | 53.430, -1.357
Barnsley | enk | 53.550, -1.483
Ackworth | enk | 53.644, -1.332
Richmond, Yorkshire | enk | 54.404, -1.737 | Richmond
Northallerton | enk | 54.339, -1.432
Thirsk | enk | 54.233, -1.344
Malton | enk | 54.137, -0.800
Driffield | enk | 54.006, -0.445
Bridlington | enk | 54.083, -0.192
Middlesbrough | enk | 54.576, -1.235
Stockton-on-Tees | enk | 54.568, -1.319 | Stockton; Stockton upon Tees
Darlington | enk | 54.524, -1.550
*Durham | enk | 54.777, -1.576 | Dunelmi; Dunelmum
Bishop Auckland | enk | 54.656, -1.677
Barnard Castle | enk | 54.541, -1.919
Sunderland | enk | 54.905, -1.382
South Shields | enk | 54.999, -1.432
North Shields | enk | 55.016, -1.449
Gateshead | enk | 54.962, -1.602
*Newcastle upon Tyne | enk | 54.973, -1.614 | Newcastle-upon-Tyne; Newcastle-on-Tyne; Newcastle on Tyne; Newcastle Upon Tyne; *Newcastle; Novi Castri; Novum Castrum; Novis Castris
Tynemouth | enk | 55.018, -1.426
Morpeth | enk | 55.169, -1.689
Alnwick | enk | 55.413, -1.706
Hexham | enk | 54.970, -2.104
Berwick-upon-Tweed | enk | 55.769, -2.005 | *Berwick; Berwick upon Tweed; Berwick-on-Tweed
*Carlisle | enk | 54.895, -2.938
Penrith | enk | 54.666, -2.758
Kendal | enk | 54.327, -2.748
Whitehaven | enk | 54.549, -3.584
Cockermouth | enk | 54.662, -3.361
Keswick | enk | 54.599, -3.133
Ulverston | enk | 54.196, -3.096
Workington | enk | 54.642, -3.544
Ambleside | enk | 54.433, -2.962
Barrow-in-Furness | enk | 54.111, -3.228
*Lancaster | enk | 54.046, -2.800
*Preston | enk | 53.763, -2.705
Blackburn | enk | 53.750, -2.483
Burnley | enk | 53.800, -2.233
Darwen | enk | 53.698, -2.465 | Over Darwen
Accrington | enk | 53.754, -2.359
*Bolton | enk | 53.583, -2.433
*Bury | enk | 53.600, -2.300
Rochdale | enk | 53.618, -2.155
Oldham | enk | 53.541, -2.118
Ashton-under-Lyne | enk | 53.489, -2.099 | Ashton
Stalybridge | enk | 53.484, -2.059
Middleton, Lancashire | enk | 53.550, -2.200
Wigan | enk | 53.543, -2.637
St Helens | enk | 53.450, -2.733 | Saint Helens
Warrington | enk | 53.393, -2.580
Ormskirk | enk | 53.567, -2.882
Southport | enk | 53.646, -3.010
Blackpool | enk | 53.817, -3.050
Stockport | enk | 53.410, -2.158
Macclesfield | enk | 53.260, -2.126
Congleton | enk | 53.163, -2.213
Knutsford | enk | 53.303, -2.375
*Chester | enk | 53.191, -2.892 | Cestriae; Caerlleon; Caerlleon Fawr
Crewe | enk | 53.098, -2.442
Nantwich | enk | 53.069, -2.521
Northwich | enk | 53.259, -2.520
Birkenhead | enk | 53.393, -3.015
*Derby | enk | 52.923, -1.477
Alfreton | enk | 53.098, -1.384
Wirksworth | enk | 53.082, -1.574
Chesterfield | enk | 53.250, -1.417
Belper | enk | 53.023, -1.481
Ashbourne | enk | 53.017, -1.733
Buxton | enk | 53.257, -1.910
Bakewell | enk | 53.213, -1.675
Nottingham | enk | 52.954, -1.150
Newark | enk | 53.067, -0.817 | Newark-on-Trent; Newark upon Trent
Retford | enk | 53.322, -0.943 | East Retford
Mansfield | enk | 53.133, -1.200
Worksop | enk | 53.302, -1.124
Southwell | enk | 53.078, -0.955
*Lincoln | enk | 53.227, -0.538
*Boston, Lincolnshire | enk | 52.976, -0.027 | Boston
Gainsborough | enk | 53.383, -0.767
Grimsby | enk | 53.565, -0.076 | Great Grimsby
Louth | enk | 53.367, -0.004
Grantham | enk | 52.911, -0.642
Stamford | enk | 52.650, -0.483
Spalding | enk | 52.787, -0.151
Horncastle | enk | 53.208, -0.117
Sleaford | enk | 52.998, -0.409
*Leicester | enk | 52.639, -1.132
Loughborough | enk | 52.767, -1.200
Melton Mowbray | enk | 52.766, -0.887
Hinckley | enk | 52.539, -1.376
Ashby-de-la-Zouch | enk | 52.746, -1.473 | Ashby de la Zouch
Lutterworth | enk | 52.456, -1.202
Oakham | enk | 52.667, -0.733
Uppingham | enk | 52.588, -0.723
Northampton | enk | 52.250, -0.883
Kettering | enk | 52.398, -0.726
Wellingborough | enk | 52.303, -0.694
Daventry | enk | 52.257, -1.161
Thrapston | enk | 52.397, -0.539
Peterborough | enk | 52.574, -0.248
Coventry | enk | 52.407, -1.512
Warwick | enk | 52.283, -1.583
Leamington | enk | 52.285, -1.520 | Leamington Spa; Royal Leamington Spa
Rugby | enk | 52.371, -1.264
Stratford-upon-Avon | enk | 52.192, -1.707 | Stratford-on-Avon; Stratford upon Avon
Kenilworth | enk | 52.350, -1.583
Nuneaton | enk | 52.523, -1.465
Wolverhampton | enk | 52.585, -2.123
Walsall | enk | 52.585, -1.984
Dudley | enk | 52.500, -2.083
Stourbridge | enk | 52.456, -2.143
West Bromwich | enk | 52.519, -1.994
Wednesbury | enk | 52.551, -2.024
Bilston | enk | 52.566, -2.074
Smethwick | enk | 52.493, -1.967
Soho, Handsworth | enk | 52.498, -1.931
Lichfield | enk | 52.682, -1.825
Stafford | enk | 52.805, -2.116
Tamworth | enk | 52.634, -1.696
Burton upon Trent | enk | 52.807, -1.643 | Burton-on-Trent
Uttoxeter | enk | 52.898, -1.865
Leek | enk | 53.104, -2.022
Cheadle, Staffordshire | enk | 52.987, -1.989
*Newcastle-under-Lyme | enk | 53.000, -2.233 | Newcastle under Lyme
Stoke-upon-Trent | enk | 53.004, -2.181 | Stoke-on-Trent; Stoke; Stoke on Trent; Stoke upon Trent
Burslem | enk | 53.046, -2.199
Hanley | enk | 53.025, -2.177
Shelton | enk | 53.022, -2.183
Etruria | enk | 53.025, -2.199
Longton | enk | 52.988, -2.136 | Lane End
Fenton | enk | 52.997, -2.157 | Lane Delph
Tunstall | enk | 53.058, -2.211
Cobridge | enk | 53.036, -2.185
Longport | enk | 53.043, -2.213
Shrewsbury | enk | 52.710, -2.752 | Salopiae; Salop
Caughley | enk | 52.603, -2.474
Coalport | enk | 52.618, -2.448
Ironbridge | enk | 52.628, -2.485 | Coalbrookdale
Madeley | enk | 53.000, -2.333
Bridgnorth | enk | 52.537, -2.420
Ludlow | enk | 52.374, -2.713
Oswestry | enk | 52.862, -3.055
Wellington, Shropshire | enk | 52.700, -2.517
Whitchurch, Shropshire | enk | 52.967, -2.683
Newport, Shropshire | enk | 52.767, -2.377
Worcester | enk | 52.189, -2.220 | Wigorniae
Kidderminster | enk | 52.388, -2.250
Malvern | enk | 52.112, -2.325 | Great Malvern
Evesham | enk | 52.092, -1.949
Bromsgrove | enk | 52.336, -2.060
Bewdley | enk | 52.376, -2.318
Hereford | enk | 52.057, -2.715
Leominster | enk | 52.226, -2.745
Ross-on-Wye | enk | 51.917, -2.567
*Gloucester | enk | 51.866, -2.243 | Glocester
Cheltenham | enk | 51.900, -2.080
Cirencester | enk | 51.719, -1.971
Tewkesbury | enk | 51.992, -2.160
Stroud | enk | 51.750, -2.200
*Bath | enk | 51.375, -2.362 | Bathoniae
Wells | enk | 51.208, -2.649
Taunton | enk | 51.015, -3.103
Bridgwater | enk | 51.128, -3.004
Frome | enk | 51.228, -2.322
Shepton Mallet | enk | 51.190, -2.547
Yeovil | enk | 50.942, -2.632
Glastonbury | enk | 51.147, -2.721
Clifton | enk | 51.456, -2.620
*Exeter | enk | 50.724, -3.528 | Exoniae
*Plymouth | enk | 50.372, -4.143
Devonport | enk | 50.369, -4.170
Stonehouse, Devon | enk | 50.369, -4.158
Torquay | enk | 50.462, -3.525
Barnstaple | enk | 51.080, -4.058
Bideford | enk | 51.017, -4.208
Tiverton | enk | 50.902, -3.492
Teignmouth | enk | 50.546, -3.497
Totnes | enk | 50.431, -3.684
Dartmouth | enk | 50.352, -3.579
Sidmouth | enk | 50.691, -3.240
Honiton | enk | 50.800, -3.189
Tavistock | enk | 50.549, -4.144
Truro | enk | 50.265, -5.054
Falmouth | enk | 50.154, -5.071
Penzance | enk | 50.119, -5.537
Launceston, Cornwall | enk | 50.637, -4.360 | Launceston
Bodmin | enk | 50.472, -4.724
*Dorchester | enk | 50.717, -2.433
Weymouth | enk | 50.614, -2.460
Poole | enk | 50.714, -1.985
Sherborne | enk | 50.946, -2.518
Blandford | enk | 50.861, -2.162
Shaftesbury | enk | 51.005, -2.193
Bridport | enk | 50.734, -2.758
Salisbury | enk | 51.069, -1.796 | Sarum
Devizes | enk | 51.351, -1.994
Marlborough | enk | 51.420, -1.729
Trowbridge | enk | 51.319, -2.209
Warminster | enk | 51.204, -2.179
Chippenham | enk | 51.460, -2.125
Swindon | enk | 51.558, -1.781
Winchester | enk | 51.065, -1.319 | Wintoniae
Southampton | enk | 50.904, -1.404
Portsmouth | enk | 50.799, -1.091
Portsea | enk | 50.799, -1.088
Gosport | enk | 50.795, -1.129
Lymington | enk | 50.758, -1.544
Basingstoke | enk | 51.262, -1.087
Andover | enk | 51.211, -1.494
Alton | enk | 51.149, -0.975
Bournemouth | enk | 50.720, -1.879
Romsey | enk | 50.989, -1.500
Newport, Isle of Wight | enk | 50.700, -1.291 | Newport
Ryde | enk | 50.730, -1.162
Cowes | enk | 50.763, -1.298
Ventnor | enk | 50.594, -1.207
*Reading | enk | 51.456, -0.971
Newbury | enk | 51.401, -1.325
Windsor | enk | 51.483, -0.600
Eton | enk | 51.488, -0.609 | Etonae
Abingdon | enk | 51.671, -1.283
Wallingford | enk | 51.600, -1.125
Maidenhead | enk | 51.523, -0.720
Banbury | enk | 52.063, -1.342
Henley | enk | 51.533, -0.900 | Henley-on-Thames
Witney | enk | 51.784, -1.485
Aylesbury | enk | 51.817, -0.815
Buckingham | enk | 52.000, -0.988
High Wycombe | enk | 51.629, -0.749 | Wycombe
Olney | enk | 52.153, -0.702
Newport Pagnell | enk | 52.087, -0.722
*Bedford | enk | 52.135, -0.466
Luton | enk | 51.880, -0.417
Dunstable | enk | 51.886, -0.523
Biggleswade | enk | 52.087, -0.265
Hertford | enk | 51.796, -0.079
St Albans | enk | 51.750, -0.333 | Saint Albans; Sancti Albani
Watford | enk | 51.655, -0.396
Ware | enk | 51.811, -0.029
Hitchin | enk | 51.949, -0.285
Huntingdon | enk | 52.330, -0.187
St Ives, Huntingdonshire | enk | 50.209, -5.487
Ely | enk | 52.400, 0.262
Wisbech | enk | 52.666, 0.159 | Wisbeach
Newmarket | enk | 52.245, 0.404
*Norwich | enk | 52.628, 1.298 | Norvici
Great Yarmouth | enk | 52.608, 1.731 | *Yarmouth
King's Lynn | enk | 52.752, 0.395 | Lynn; Lynn Regis
Thetford | enk | 52.417, 0.750
Swaffham | enk | 52.648, 0.686
Holt | enk | 52.906, 1.089
East Dereham | enk | 52.683, 0.933 | Dereham
Fakenham | enk | 52.830, 0.848
*Ipswich | enk | 52.059, 1.155
Bury St Edmunds | enk | 52.246, 0.711 | Bury St. Edmund's; Bury Saint Edmunds; Bury
Lowestoft | enk | 52.475, 1.752
Sudbury | enk | 52.039, 0.731
Woodbridge | enk | 52.093, 1.320
Beccles | enk | 52.459, 1.565
Bungay | enk | 52.454, 1.438
Halesworth | enk | 52.346, 1.503
Framlingham | enk | 52.221, 1.342
Chelmsford | enk | 51.736, 0.470
Colchester | enk | 51.889, 0.904
Harwich | enk | 51.942, 1.284
Maldon | enk | 51.731, 0.675
Braintree | enk | 51.878, 0.553
Saffron Walden | enk | 52.023, 0.242
Great Totham | enk | 51.790, 0.710
Romford | enk | 51.575, 0.186
Barking | enk | 51.533, 0.083
Canterbury | enk | 51.279, 1.080 | Cantuariae
Maidstone | enk | 51.267, 0.517
*Rochester, Kent | enk | 51.388, 0.505 | Rochester
Chatham | enk | 51.379, 0.528
Gravesend | enk | 51.442, 0.371
*Dover | enk | 51.126, 1.313
Ramsgate | enk | 51.336, 1.418
Margate | enk | 51.381, 1.386
Deal | enk | 51.223, 1.403
Faversham | enk | 51.315, 0.889
Ashford | enk | 51.146, 0.874
Sevenoaks | enk | 51.273, 0.189
Tonbridge | enk | 51.195, 0.274
Tunbridge Wells | enk | 51.133, 0.263
Folkestone | enk | 51.082, 1.167
Dartford | enk | 51.447, 0.214
Bromley | enk | 51.406, 0.015
Orpington | enk | 51.375, 0.098
Brighton | enk | 50.828, -0.139 | Brighthelmstone; Brighthelmston
Lewes | enk | 50.874, 0.009
Hastings | enk | 50.855, 0.573
St Leonards-on-Sea | enk | 50.857, 0.553 | St. Leonards-on-Sea; St Leonards
Eastbourne | enk | 50.769, 0.285
Rye | enk | 50.951, 0.734
Chichester | enk | 50.837, -0.780
Worthing | enk | 50.818, -0.375
Arundel | enk | 50.854, -0.554
Horsham | enk | 51.063, -0.328
Guildford | enk | 51.235, -0.574
Godalming | enk | 51.186, -0.615
Farnham | enk | 51.214, -0.801
Dorking | enk | 51.232, -0.334
Epsom | enk | 51.331, -0.270
Reigate | enk | 51.237, -0.206
Egham | enk | 51.432, -0.552
Chertsey | enk | 51.388, -0.508
Middle Hill | enk | 52.034, -1.838
Hammersmith, Kelmscott Press | enk | 51.491, -0.233 | Kelmscott
Douglas | uik | 54.150, -4.483
Ramsey, Isle of Man | uik | 54.323, -4.385
Castletown | uik | 54.074, -4.654
Isle of Man | uik | 54.230, -4.570 | Mona
Jersey | uik | 49.188, -2.105 | Saint Helier; St. Helier; St Helier; St. Hélier
Guernsey | uik | 49.460, -2.535 | St Peter Port; Saint Peter Port; Guernesey
*Edinburgh | stk | 55.952, -3.196 | *Edinburgi; Edimburgi; Edinburgum; Edimbourg; Edinburg; Edinburghi; Dunedin, Scotland; Edimburgo
Leith | stk | 55.975, -3.170
*Glasgow | stk | 55.865, -4.258 | *Glasguae; Glascuae; Glasguæ
Pollokshields | stk | 55.843, -4.272
*Aberdeen | stk | 57.144, -2.098 | *Aberdoniae; Aberdoniæ; Aberdonia; Abredoniae
*Dundee | stk | 56.469, -2.975
*Perth | stk | 56.395, -3.431
St Andrews | stk | 56.339, -2.799 | Andreapoli; Andreapolis; Fanum Andreae
Stirling | stk | 56.119, -3.937
Paisley | stk | 55.832, -4.433
Greenock | stk | 55.948, -4.761
Kilmarnock | stk | 55.612, -4.496
Ayr | stk | 55.463, -4.634
Dumfries | stk | 55.070, -3.611
Inverness | stk | 57.479, -4.224
*Elgin | stk | 57.649, -3.318
Banff | stk | 57.665, -2.530
Peterhead | stk | 57.505, -1.784
Fraserburgh | stk | 57.687, -2.018
Montrose | stk | 56.717, -2.467
Arbroath | stk | 56.563, -2.587
Brechin | stk | 56.730, -2.657
Forfar | stk | 56.644, -2.890
Cupar | stk | 56.319, -3.012 | Cupar-Fife
Dunfermline | stk | 56.072, -3.459
Kirkcaldy | stk | 56.117, -3.160
Falkirk | stk | 56.002, -3.785
Alloa | stk | 56.116, -3.790
Blair Adam | stk | 56.152, -3.408 | Blair-Adam
Haddington | stk | 55.956, -2.783
Dunbar | stk | 56.001, -2.514
Kelso | stk | 55.598, -2.434
Hawick | stk | 55.423, -2.787
Jedburgh | stk | 55.480, -2.552
Galashiels | stk | 55.615, -2.807
Berwick, North | stk | 56.058, -2.723
Lanark | stk | 55.674, -3.782
Hamilton, Scotland | stk | 55.767, -4.033
Airdrie | stk | 55.866, -3.980
Oban | stk | 56.415, -5.472
Wick | stk | 58.439, -3.094
Kirkwall | stk | 58.985, -2.959
Lerwick | stk | 60.153, -1.144
Stornoway | stk | 58.209, -6.386
Campbeltown | stk | 55.426, -5.608
Cardiff | wlk | 51.480, -3.180 | Caerdydd
Swansea | wlk | 51.621, -3.943 | Abertawe
Carmarthen | wlk | 51.856, -4.305 | Caerfyrddin
Llanelli | wlk | 51.682, -4.162 | Llanelly
Llandovery | wlk | 51.994, -3.796 | Llanymddyfri
Aberystwyth | wlk | 52.415, -4.083 | Aberystwith
Bangor | wlk | 53.228, -4.129
Caernarfon | wlk | 53.141, -4.270 | Caernarvon; Carnarvon
Beaumaris | wlk | 53.263, -4.092
Denbigh | wlk | 53.183, -3.417 | Dinbych
Ruthin | wlk | 53.114, -3.318 | Rhuthyn
Abergele | wlk | 53.284, -3.582
Wrexham | wlk | 53.047, -2.991 | Wrecsam
Mold | wlk | 53.167, -3.141
Holywell | wlk | 53.275, -3.229 | Treffynnon
Llangollen | wlk | 52.968, -3.171
Bala | wlk | 52.911, -3.597 | Y Bala
Dolgellau | wlk | 52.742, -3.886 | Dolgelley; Dolgelly; Dolgelleu
Machynlleth | wlk | 52.590, -3.853
Newtown, Montgomeryshire | wlk | 52.517, -3.300
Brecon | wlk | 51.946, -3.389 | Brecknock; Aberhonddu
Merthyr Tydfil | wlk | 51.748, -3.378 | Merthyr; Merthyr Tudful
Aberdare | wlk | 51.714, -3.449 | Aberdar; Aberdâr
Pontypridd | wlk | 51.602, -3.342
Newport, Monmouthshire | wlk | 51.588, -2.998 | Newport; Casnewydd
Caerleon | wlk | 51.610, -2.954 | Caerllion
Monmouth | wlk | 51.813, -2.714
Chepstow | wlk | 51.641, -2.677
Abergavenny | wlk | 51.821, -3.017
Tenby | wlk | 51.673, -4.704
Haverfordwest | wlk | 51.802, -4.969
Pembroke | wlk | 51.675, -4.913
Cardigan | wlk | 52.084, -4.662 | Aberteifi
Lampeter | wlk | 52.113, -4.080
Llandudno | wlk | 53.325, -3.831
Rhyl | wlk | 53.319, -3.492
Conwy | wlk | 53.281, -3.830 | Conway
Holyhead | wlk | 53.306, -4.632
Nantgarw | wlk | 51.563, -3.268
*Belfast | nik | 54.597, -5.925
Londonderry | nik | 54.998, -7.309 | Derry; Doire
Newry | nik | 54.178, -6.337
Armagh | nik | 54.350, -6.667
Lisburn | nik | 54.523, -6.035
Coleraine | nik | 55.133, -6.667
Omagh | nik | 54.600, -7.300
Strabane | nik | 54.824, -7.469
Downpatrick | nik | 54.328, -5.715
Enniskillen | nik | 54.346, -7.641
*Dublin | ie xxk | 53.333, -6.249 | *Dublini; Dublinii; Eblanae; Baile Átha Cliath; Dublino; Dubliniae; Ath Cliath
Cork | ie xxk | 51.898, -8.471 | Corcagiae; Corke
Limerick | ie xxk | 52.665, -8.623
Waterford | ie xxk | 52.258, -7.112
Galway | ie xxk | 53.272, -9.051
Kilkenny | ie xxk | 52.654, -7.252
Drogheda | ie xxk | 53.719, -6.348
Dundalk | ie xxk | 54.000, -6.417
Sligo | ie xxk | 54.270, -8.469
Wexford | ie xxk | 52.334, -6.457
Clonmel | ie xxk | 52.355, -7.704
Tralee | ie xxk | 52.270, -9.703
Athlone | ie xxk | 53.423, -7.937
Cavan | ie xxk | 53.991, -7.361
Achill | ie xxk | 53.960, -10.000
Maynooth | ie xxk | 53.385, -6.594
Belleek | ie xxk | 54.479, -8.095
Carlow | ie xxk | 52.841, -6.926
Ennis | ie xxk | 52.844, -8.986
Tuam | ie xxk | 53.517, -8.850
`;
