import { Fn as Problem, Mn as isMeterName, Nn as limits, Tn as shortName, a as indoorsOf, d as finite, f as assemble, i as stated, o as sportOf, p as hasValue, r as combineTotals } from "./program.js";
import { Buffer } from "buffer";
// src/read/fit/balance.ts
/** How a stored balance is packed (FIT Profile, type left_right_balance). */
const shareBits = 127;
const rightFlag = 128;
/**
* left_right_balance holds the share of one leg, and a flag that says it is the right one. Without the flag
* the leg is not known. Where a file sets the flag on some records only, the others are left out: to mix
* known and unknown legs would invent a change of balance.
*/
function balanceOf(stored) {
	const flagged = stored?.some(isRight) ?? false;
	const share = stored?.map((value) => shareOf(value, flagged));
	return {
		share,
		side: share === void 0 || !hasValue(share) ? null : flagged ? "right" : "unknown"
	};
}
const isRight = (stored) => (stored & rightFlag) !== 0;
function shareOf(stored, flagged) {
	const share = stored & shareBits;
	if (Number.isNaN(stored) || isRight(stored) !== flagged || share > 100) return NaN;
	return flagged ? 100 - share : share;
}
// src/read/fit/channels.ts
/** Every channel but balance, from the fields of the records; a channel without any is left out. */
function plainChannels(columns) {
	return {
		power: columns.power,
		cadence: withFraction(columns.cadence, columns.fractional_cadence),
		heartRate: columns.heart_rate,
		speed: overlaid(columns.enhanced_speed, columns.speed),
		altitude: overlaid(columns.enhanced_altitude, columns.altitude),
		distance: columns.distance,
		temperature: columns.temperature,
		...unpackSpeedAndDistance(columns)
	};
}
function withFraction(whole, fraction) {
	if (fraction === void 0) return whole;
	return whole?.map((value, i) => Number.isNaN(fraction[i]) ? value : value + fraction[i]);
}
/** The first column, and the second where the first has nothing. */
function overlaid(first, second) {
	if (first === void 0 || second === void 0) return first ?? second;
	return first.map((value, i) => Number.isNaN(value) ? second[i] : value);
}
/**
* The old field compressed_speed_distance: 12 bits of speed (1/100 m/s) and 12 of distance (1/16 m), the
* distance starting over every 256 m (FIT Profile, message record, field 8: accumulated). Nothing when no
* record has it, or any has a plain distance as well.
*/
function unpackSpeedAndDistance({ compressed_speed_distance: packed, distance: plain }) {
	if (packed === void 0 || !hasValue(packed) || plain !== void 0 && hasValue(plain)) return null;
	const speed = new Float64Array(packed.length).fill(NaN);
	const distance = new Float64Array(packed.length).fill(NaN);
	let before = null;
	let total = 0;
	packed.forEach((bits, i) => {
		if (Number.isNaN(bits)) return;
		const sixteenths = bits >> 12;
		total += before === null ? sixteenths : sixteenths - before & 4095;
		before = sixteenths;
		speed[i] = (bits & 4095) / 100;
		distance[i] = total / 16;
	});
	return {
		speed,
		distance
	};
}
// node_modules/fit-file-parser/dist/profile-lookup-data.js
/**
* Lookup-oriented slices of the maintained FIT profile.
*
* The full decoder composes these exact objects into PROFILE_TYPES, keeping
* this module authoritative without loading message definitions in lookup-only consumers.
*/
const FIT_PROFILE_COURSE_POINTS = {
	0: "generic",
	1: "summit",
	2: "valley",
	3: "water",
	4: "food",
	5: "danger",
	6: "left",
	7: "right",
	8: "straight",
	9: "first_aid",
	10: "fourth_category",
	11: "third_category",
	12: "second_category",
	13: "first_category",
	14: "hors_category",
	15: "sprint",
	16: "left_fork",
	17: "right_fork",
	18: "middle_fork",
	19: "slight_left",
	20: "sharp_left",
	21: "slight_right",
	22: "sharp_right",
	23: "u_turn",
	24: "segment_start",
	25: "segment_end",
	27: "campsite",
	28: "aid_station",
	29: "rest_area",
	30: "general_distance",
	31: "service",
	32: "energy_gel",
	33: "sports_drink",
	34: "mile_marker",
	35: "checkpoint",
	36: "shelter",
	37: "meeting_spot",
	38: "overlook",
	39: "toilet",
	40: "shower",
	41: "gear",
	42: "sharp_curve",
	43: "steep_incline",
	44: "tunnel",
	45: "bridge",
	46: "obstacle",
	47: "crossing",
	48: "store",
	49: "transition",
	50: "navaid",
	51: "transport",
	52: "alert",
	53: "info"
};
const FIT_PROFILE_GARMIN_PRODUCTS = {
	1: "hrm1",
	2: "axh01",
	3: "axb01",
	4: "axb02",
	5: "hrm2ss",
	6: "dsi_alf02",
	7: "hrm3ss",
	8: "hrm_run_single_byte_product_id",
	9: "bsm",
	10: "bcm",
	11: "axs01",
	12: "hrm_tri_single_byte_product_id",
	13: "hrm4_run_single_byte_product_id",
	14: "fr225_single_byte_product_id",
	15: "gen3_bsm_single_byte_product_id",
	16: "gen3_bcm_single_byte_product_id",
	22: "hrm_fit_single_byte_product_id",
	255: "o_hr",
	473: "fr301_china",
	474: "fr301_japan",
	475: "fr301_korea",
	494: "fr301_taiwan",
	717: "fr405",
	782: "fr50",
	987: "fr405_japan",
	988: "fr60",
	1011: "dsi_alf01",
	1018: "fr310xt",
	1036: "edge500",
	1124: "fr110",
	1169: "edge800",
	1199: "edge500_taiwan",
	1213: "edge500_japan",
	1253: "chirp",
	1274: "fr110_japan",
	1325: "edge200",
	1328: "fr910xt",
	1333: "edge800_taiwan",
	1334: "edge800_japan",
	1341: "alf04",
	1345: "fr610",
	1360: "fr210_japan",
	1380: "vector_ss",
	1381: "vector_cp",
	1386: "edge800_china",
	1387: "edge500_china",
	1405: "approach_g10",
	1410: "fr610_japan",
	1422: "edge500_korea",
	1436: "fr70",
	1446: "fr310xt4t",
	1461: "amx",
	1482: "fr10",
	1497: "edge800_korea",
	1499: "swim",
	1537: "fr910xt_china",
	1551: "fenix",
	1555: "edge200_taiwan",
	1561: "edge510",
	1567: "edge810",
	1570: "tempe",
	1600: "fr910xt_japan",
	1623: "fr620",
	1632: "fr220",
	1664: "fr910xt_korea",
	1688: "fr10_japan",
	1721: "edge810_japan",
	1735: "virb_elite",
	1736: "edge_touring",
	1742: "edge510_japan",
	1743: "hrm_tri",
	1752: "hrm_run",
	1765: "fr920xt",
	1821: "edge510_asia",
	1822: "edge810_china",
	1823: "edge810_taiwan",
	1836: "edge1000",
	1837: "vivo_fit",
	1853: "virb_remote",
	1885: "vivo_ki",
	1903: "fr15",
	1907: "vivo_active",
	1918: "edge510_korea",
	1928: "fr620_japan",
	1929: "fr620_china",
	1930: "fr220_japan",
	1931: "fr220_china",
	1936: "approach_s6",
	1956: "vivo_smart",
	1967: "fenix2",
	1988: "epix",
	2050: "fenix3",
	2052: "edge1000_taiwan",
	2053: "edge1000_japan",
	2061: "fr15_japan",
	2067: "edge520",
	2070: "edge1000_china",
	2072: "fr620_russia",
	2073: "fr220_russia",
	2079: "vector_s",
	2100: "edge1000_korea",
	2130: "fr920xt_taiwan",
	2131: "fr920xt_china",
	2132: "fr920xt_japan",
	2134: "virbx",
	2135: "vivo_smart_apac",
	2140: "etrex_touch",
	2147: "edge25",
	2148: "fr25",
	2150: "vivo_fit2",
	2153: "fr225",
	2156: "fr630",
	2157: "fr230",
	2158: "fr735xt",
	2160: "vivo_active_apac",
	2161: "vector2",
	2162: "vector2s",
	2172: "virbxe",
	2173: "fr620_taiwan",
	2174: "fr220_taiwan",
	2175: "truswing",
	2187: "d2airvenu",
	2188: "fenix3_china",
	2189: "fenix3_twn",
	2192: "varia_headlight",
	2193: "varia_taillight_old",
	2204: "edge_explore1000",
	2219: "fr225_asia",
	2225: "varia_radar_taillight",
	2226: "varia_radar_display",
	2238: "edge20",
	2260: "edge520_asia",
	2261: "edge520_japan",
	2262: "d2_bravo",
	2266: "approach_s20",
	2271: "vivo_smart2",
	2274: "edge1000_thai",
	2276: "varia_remote",
	2288: "edge25_asia",
	2289: "edge25_jpn",
	2290: "edge20_asia",
	2292: "approach_x40",
	2293: "fenix3_japan",
	2294: "vivo_smart_emea",
	2310: "fr630_asia",
	2311: "fr630_jpn",
	2313: "fr230_jpn",
	2327: "hrm4_run",
	2332: "epix_japan",
	2337: "vivo_active_hr",
	2347: "vivo_smart_gps_hr",
	2348: "vivo_smart_hr",
	2361: "vivo_smart_hr_asia",
	2362: "vivo_smart_gps_hr_asia",
	2368: "vivo_move",
	2379: "varia_taillight",
	2396: "fr235_asia",
	2397: "fr235_japan",
	2398: "varia_vision",
	2406: "vivo_fit3",
	2407: "fenix3_korea",
	2408: "fenix3_sea",
	2413: "fenix3_hr",
	2417: "virb_ultra30",
	2429: "index_smart_scale",
	2431: "fr235",
	2432: "fenix3_chronos",
	2441: "oregon7xx",
	2444: "rino7xx",
	2457: "epix_korea",
	2473: "fenix3_hr_chn",
	2474: "fenix3_hr_twn",
	2475: "fenix3_hr_jpn",
	2476: "fenix3_hr_sea",
	2477: "fenix3_hr_kor",
	2496: "nautix",
	2497: "vivo_active_hr_apac",
	2503: "fr35",
	2512: "oregon7xx_ww",
	2530: "edge820",
	2531: "edge_explore820",
	2533: "fr735xt_apac",
	2534: "fr735xt_japan",
	2544: "fenix5s",
	2547: "d2_bravo_titanium",
	2567: "varia_ut800",
	2593: "running_dynamics_pod",
	2599: "edge820_china",
	2600: "edge820_japan",
	2604: "fenix5x",
	2606: "vivo_fit_jr",
	2622: "vivo_smart3",
	2623: "vivo_sport",
	2628: "edge820_taiwan",
	2629: "edge820_korea",
	2630: "edge820_sea",
	2650: "fr35_hebrew",
	2656: "approach_s60",
	2667: "fr35_apac",
	2668: "fr35_japan",
	2675: "fenix3_chronos_asia",
	2687: "virb360",
	2691: "fr935",
	2697: "fenix5",
	2700: "vivoactive3",
	2713: "edge1030",
	2727: "fr35_sea",
	2733: "fr235_china_nfc",
	2769: "foretrex601_701",
	2772: "vivo_move_hr",
	2787: "vector3",
	2796: "fenix5_asia",
	2797: "fenix5s_asia",
	2798: "fenix5x_asia",
	2806: "approach_z80",
	2814: "fr35_korea",
	2819: "d2charlie",
	2831: "vivo_smart3_apac",
	2832: "vivo_sport_apac",
	2833: "fr935_asia",
	2859: "descent",
	2878: "vivo_fit4",
	2886: "fr645",
	2888: "fr645m",
	2891: "fr30",
	2900: "fenix5s_plus",
	2909: "edge130",
	2924: "edge1030_asia",
	2927: "vivosmart4",
	2945: "vivo_move_hr_asia",
	2962: "approach_x10",
	2977: "fr30_asia",
	2988: "vivoactive3m_w",
	3003: "fr645_asia",
	3004: "fr645m_asia",
	3011: "edge_explore",
	3028: "gpsmap66",
	3049: "approach_s10",
	3066: "vivoactive3m_l",
	3076: "fr245",
	3077: "fr245_music",
	3085: "approach_g80",
	3092: "edge130_asia",
	3095: "edge1030_bontrager",
	3110: "fenix5_plus",
	3111: "fenix5x_plus",
	3112: "edge520_plus",
	3113: "fr945",
	3121: "edge530",
	3122: "edge830",
	3126: "instinct_esports",
	3134: "fenix5s_plus_apac",
	3135: "fenix5x_plus_apac",
	3142: "edge520_plus_apac",
	3143: "descent_t1",
	3144: "fr235l_asia",
	3145: "fr245_asia",
	3163: "vivo_active3m_apac",
	3192: "gen3_bsm",
	3193: "gen3_bcm",
	3218: "vivo_smart4_asia",
	3224: "vivoactive4_small",
	3225: "vivoactive4_large",
	3226: "venu",
	3246: "marq_driver",
	3247: "marq_aviator",
	3248: "marq_captain",
	3249: "marq_commander",
	3250: "marq_expedition",
	3251: "marq_athlete",
	3258: "descent_mk2",
	3282: "fr45",
	3284: "gpsmap66i",
	3287: "fenix6_s_sport",
	3288: "fenix6_s",
	3289: "fenix6_sport",
	3290: "fenix6",
	3291: "fenix6x",
	3299: "hrm_dual",
	3300: "hrm_pro",
	3308: "vivo_move3_premium",
	3314: "approach_s40",
	3321: "fr245m_asia",
	3349: "edge530_apac",
	3350: "edge830_apac",
	3378: "vivo_move3",
	3387: "vivo_active4_small_asia",
	3388: "vivo_active4_large_asia",
	3389: "vivo_active4_oled_asia",
	3405: "swim2",
	3420: "marq_driver_asia",
	3421: "marq_aviator_asia",
	3422: "vivo_move3_asia",
	3441: "fr945_asia",
	3446: "vivo_active3t_chn",
	3448: "marq_captain_asia",
	3449: "marq_commander_asia",
	3450: "marq_expedition_asia",
	3451: "marq_athlete_asia",
	3461: "index_smart_scale2",
	3466: "instinct_solar",
	3469: "fr45_asia",
	3473: "vivoactive3_daimler",
	3498: "legacy_rey",
	3499: "legacy_darth_vader",
	3500: "legacy_captain_marvel",
	3501: "legacy_first_avenger",
	3512: "fenix6s_sport_asia",
	3513: "fenix6s_asia",
	3514: "fenix6_sport_asia",
	3515: "fenix6_asia",
	3516: "fenix6x_asia",
	3535: "legacy_captain_marvel_asia",
	3536: "legacy_first_avenger_asia",
	3537: "legacy_rey_asia",
	3538: "legacy_darth_vader_asia",
	3542: "descent_mk2s",
	3558: "edge130_plus",
	3570: "edge1030_plus",
	3578: "rally200",
	3589: "fr745",
	3596: "venusq_music",
	3599: "venusq_music_v2",
	3600: "venusq",
	3615: "lily",
	3624: "marq_adventurer",
	3638: "enduro",
	3639: "swim2_apac",
	3648: "marq_adventurer_asia",
	3652: "fr945_lte",
	3702: "descent_mk2_asia",
	3703: "venu2",
	3704: "venu2s",
	3737: "venu_daimler_asia",
	3739: "marq_golfer",
	3740: "venu_daimler",
	3794: "fr745_asia",
	3808: "varia_rct715",
	3809: "lily_asia",
	3812: "edge1030_plus_asia",
	3813: "edge130_plus_asia",
	3823: "approach_s12",
	3837: "venusq_asia",
	3843: "edge1040",
	3850: "marq_golfer_asia",
	3851: "venu2_plus",
	3865: "gnss",
	3869: "fr55",
	3872: "enduro_asia",
	3888: "instinct2",
	3889: "instinct2s",
	3905: "fenix7s",
	3906: "fenix7",
	3907: "fenix7x",
	3908: "fenix7s_apac",
	3909: "fenix7_apac",
	3910: "fenix7x_apac",
	3927: "approach_g12",
	3930: "descent_mk2s_asia",
	3934: "approach_s42",
	3943: "epix_gen2",
	3944: "epix_gen2_apac",
	3949: "venu2s_asia",
	3950: "venu2_asia",
	3978: "fr945_lte_asia",
	3982: "vivo_move_sport",
	3983: "vivomove_trend",
	3986: "approach_s12_asia",
	3990: "fr255_music",
	3991: "fr255_small_music",
	3992: "fr255",
	3993: "fr255_small",
	4001: "approach_g12_asia",
	4002: "approach_s42_asia",
	4005: "descent_g1",
	4017: "venu2_plus_asia",
	4024: "fr955",
	4033: "fr55_asia",
	4061: "edge540",
	4062: "edge840",
	4063: "vivosmart5",
	4071: "instinct2_asia",
	4105: "marq_gen2",
	4115: "venusq2",
	4116: "venusq2music",
	4124: "marq_gen2_aviator",
	4125: "d2_air_x10",
	4130: "hrm_pro_plus",
	4132: "descent_g1_asia",
	4135: "tactix7",
	4155: "instinct_crossover",
	4169: "edge_explore2",
	4222: "descent_mk3",
	4223: "descent_mk3i",
	4233: "approach_s70",
	4257: "fr265_large",
	4258: "fr265_small",
	4260: "venu3",
	4261: "venu3s",
	4265: "tacx_neo_smart",
	4266: "tacx_neo2_smart",
	4267: "tacx_neo2_t_smart",
	4268: "tacx_neo_smart_bike",
	4269: "tacx_satori_smart",
	4270: "tacx_flow_smart",
	4271: "tacx_vortex_smart",
	4272: "tacx_bushido_smart",
	4273: "tacx_genius_smart",
	4274: "tacx_flux_flux_s_smart",
	4275: "tacx_flux2_smart",
	4276: "tacx_magnum",
	4305: "edge1040_asia",
	4312: "epix_gen2_pro42",
	4313: "epix_gen2_pro47",
	4314: "epix_gen2_pro51",
	4315: "fr965",
	4341: "enduro2",
	4374: "fenix7s_pro_solar",
	4375: "fenix7_pro_solar",
	4376: "fenix7x_pro_solar",
	4380: "lily2",
	4394: "instinct2x",
	4426: "vivoactive5",
	4432: "fr165",
	4433: "fr165_music",
	4440: "edge1050",
	4442: "descent_t2",
	4446: "hrm_fit",
	4472: "marq_gen2_commander",
	4477: "lily_athlete",
	4525: "rally_x10",
	4532: "fenix8_solar",
	4533: "fenix8_solar_large",
	4534: "fenix8_small",
	4536: "fenix8",
	4556: "d2_mach1_pro",
	4575: "enduro3",
	4583: "instinct_e40mm",
	4584: "instinct_e45mm",
	4585: "instinct3_solar45mm",
	4586: "instinct3_amoled45mm",
	4587: "instinct3_amoled50mm",
	4588: "descent_g2",
	4603: "venu_x1",
	4606: "hrm200",
	4625: "vivoactive6",
	4631: "fenix8_pro",
	4633: "edge550",
	4634: "edge850",
	4643: "venu4",
	4644: "venu4s",
	4647: "approach_s44",
	4655: "edge_mtb",
	4656: "approach_s50",
	4666: "fenix_e",
	4678: "instinct_crossover_amoled",
	4745: "bounce2",
	4759: "instinct3_solar50mm",
	4775: "tactix8_amoled",
	4776: "tactix8_solar",
	4814: "fr170_music",
	4815: "fr170",
	4825: "approach_j1",
	4879: "d2_mach2",
	4916: "fr702026",
	4944: "d2_air_x15",
	5056: "d2_mach2_pro",
	10007: "sdm4",
	10014: "edge_remote",
	20119: "training_center",
	20533: "tacx_training_app_win",
	20534: "tacx_training_app_mac",
	20565: "tacx_training_app_mac_catalyst",
	30045: "tacx_training_app_android",
	30046: "tacx_training_app_ios",
	30047: "tacx_training_app_legacy",
	65531: "connectiq_simulator",
	65532: "android_antplus_plugin",
	65534: "connect"
};
const FIT_PROFILE_MANUFACTURERS = {
	1: "garmin",
	2: "garmin_fr405_antfs",
	3: "zephyr",
	4: "dayton",
	5: "idt",
	6: "srm",
	7: "quarq",
	8: "ibike",
	9: "saris",
	10: "spark_hk",
	11: "tanita",
	12: "echowell",
	13: "dynastream_oem",
	14: "nautilus",
	15: "dynastream",
	16: "timex",
	17: "metrigear",
	18: "xelic",
	19: "beurer",
	20: "cardiosport",
	21: "a_and_d",
	22: "hmm",
	23: "suunto",
	24: "thita_elektronik",
	25: "gpulse",
	26: "clean_mobile",
	27: "pedal_brain",
	28: "peaksware",
	29: "saxonar",
	30: "lemond_fitness",
	31: "dexcom",
	32: "wahoo_fitness",
	33: "octane_fitness",
	34: "archinoetics",
	35: "the_hurt_box",
	36: "citizen_systems",
	37: "magellan",
	38: "osynce",
	39: "holux",
	40: "concept2",
	41: "shimano",
	42: "one_giant_leap",
	43: "ace_sensor",
	44: "brim_brothers",
	45: "xplova",
	46: "perception_digital",
	47: "bf1systems",
	48: "pioneer",
	49: "spantec",
	50: "metalogics",
	51: "4iiiis",
	52: "seiko_epson",
	53: "seiko_epson_oem",
	54: "ifor_powell",
	55: "maxwell_guider",
	56: "star_trac",
	57: "breakaway",
	58: "alatech_technology_ltd",
	59: "mio_technology_europe",
	60: "rotor",
	61: "geonaute",
	62: "id_bike",
	63: "specialized",
	64: "wtek",
	65: "physical_enterprises",
	66: "north_pole_engineering",
	67: "bkool",
	68: "cateye",
	69: "stages_cycling",
	70: "sigmasport",
	71: "tomtom",
	72: "peripedal",
	73: "wattbike",
	76: "moxy",
	77: "ciclosport",
	78: "powerbahn",
	79: "acorn_projects_aps",
	80: "lifebeam",
	81: "bontrager",
	82: "wellgo",
	83: "scosche",
	84: "magura",
	85: "woodway",
	86: "elite",
	87: "nielsen_kellerman",
	88: "dk_city",
	89: "tacx",
	90: "direction_technology",
	91: "magtonic",
	92: "1partcarbon",
	93: "inside_ride_technologies",
	94: "sound_of_motion",
	95: "stryd",
	96: "icg",
	97: "mi_pulse",
	98: "bsx_athletics",
	99: "look",
	100: "campagnolo_srl",
	101: "body_bike_smart",
	102: "praxisworks",
	103: "limits_technology",
	104: "topaction_technology",
	105: "cosinuss",
	106: "fitcare",
	107: "magene",
	108: "giant_manufacturing_co",
	109: "tigrasport",
	110: "salutron",
	111: "technogym",
	112: "bryton_sensors",
	113: "latitude_limited",
	114: "soaring_technology",
	115: "igpsport",
	116: "thinkrider",
	117: "gopher_sport",
	118: "waterrower",
	119: "orangetheory",
	120: "inpeak",
	121: "kinetic",
	122: "johnson_health_tech",
	123: "polar_electro",
	124: "seesense",
	125: "nci_technology",
	126: "iqsquare",
	127: "leomo",
	128: "ifit_com",
	129: "coros_byte",
	130: "versa_design",
	131: "chileaf",
	132: "cycplus",
	133: "gravaa_byte",
	134: "sigeyi",
	135: "coospo",
	136: "geoid",
	137: "bosch",
	138: "kyto",
	139: "kinetic_sports",
	140: "decathlon_byte",
	141: "tq_systems",
	142: "tag_heuer",
	143: "keiser_fitness",
	144: "zwift_byte",
	145: "porsche_ep",
	146: "blackbird",
	147: "meilan_byte",
	148: "ezon",
	149: "laisi",
	150: "myzone",
	151: "abawo",
	152: "bafang",
	153: "luhong_technology",
	255: "development",
	257: "healthandlife",
	258: "lezyne",
	259: "scribe_labs",
	260: "zwift",
	261: "watteam",
	262: "recon",
	263: "favero_electronics",
	264: "dynovelo",
	265: "strava",
	266: "precor",
	267: "bryton",
	268: "sram",
	269: "navman",
	270: "cobi",
	271: "spivi",
	272: "mio_magellan",
	273: "evesports",
	274: "sensitivus_gauge",
	275: "podoon",
	276: "life_time_fitness",
	277: "falco_e_motors",
	278: "minoura",
	279: "cycliq",
	280: "luxottica",
	281: "trainer_road",
	282: "the_sufferfest",
	283: "fullspeedahead",
	284: "virtualtraining",
	285: "feedbacksports",
	286: "omata",
	287: "vdo",
	288: "magneticdays",
	289: "hammerhead",
	290: "kinetic_by_kurt",
	291: "shapelog",
	292: "dabuziduo",
	293: "jetblack",
	294: "coros",
	295: "virtugo",
	296: "velosense",
	297: "cycligentinc",
	298: "trailforks",
	299: "mahle_ebikemotion",
	300: "nurvv",
	301: "microprogram",
	302: "zone5cloud",
	303: "greenteg",
	304: "yamaha_motors",
	305: "whoop",
	306: "gravaa",
	307: "onelap",
	308: "monark_exercise",
	309: "form",
	310: "decathlon",
	311: "syncros",
	312: "heatup",
	313: "cannondale",
	314: "true_fitness",
	315: "r_gt_cycling",
	316: "vasa",
	317: "race_republic",
	318: "fazua",
	319: "oreka_training",
	320: "lsec",
	321: "lululemon_studio",
	322: "shanyue",
	323: "spinning_mda",
	324: "hilldating",
	325: "aero_sensor",
	326: "nike",
	327: "magicshine",
	328: "ictrainer",
	329: "absolute_cycling",
	330: "eo_swimbetter",
	331: "mywhoosh",
	332: "ravemen",
	333: "tektro_racing_products",
	334: "darad_innovation_corporation",
	335: "cycloptim",
	337: "runna",
	339: "zepp",
	340: "peloton",
	341: "carv",
	342: "tissot",
	345: "real_velo",
	346: "wetech",
	347: "jespr",
	348: "huawei",
	349: "gotoes",
	350: "cadence_app",
	5759: "actigraphcorp"
};
const FIT_PROFILE_SPORTS = {
	0: "generic",
	1: "running",
	2: "cycling",
	3: "transition",
	4: "fitness_equipment",
	5: "swimming",
	6: "basketball",
	7: "soccer",
	8: "tennis",
	9: "american_football",
	10: "training",
	11: "walking",
	12: "cross_country_skiing",
	13: "alpine_skiing",
	14: "snowboarding",
	15: "rowing",
	16: "mountaineering",
	17: "hiking",
	18: "multisport",
	19: "paddling",
	20: "flying",
	21: "e_biking",
	22: "motorcycling",
	23: "boating",
	24: "driving",
	25: "golf",
	26: "hang_gliding",
	27: "horseback_riding",
	28: "hunting",
	29: "fishing",
	30: "inline_skating",
	31: "rock_climbing",
	32: "sailing",
	33: "ice_skating",
	34: "sky_diving",
	35: "snowshoeing",
	36: "snowmobiling",
	37: "stand_up_paddleboarding",
	38: "surfing",
	39: "wakeboarding",
	40: "water_skiing",
	41: "kayaking",
	42: "rafting",
	43: "windsurfing",
	44: "kitesurfing",
	45: "tactical",
	46: "jumpmaster",
	47: "boxing",
	48: "floor_climbing",
	49: "baseball",
	53: "diving",
	56: "shooting",
	58: "winter_sport",
	59: "grinding",
	62: "hiit",
	63: "video_gaming",
	64: "racket",
	65: "wheelchair_push_walk",
	66: "wheelchair_push_run",
	67: "meditation",
	68: "para_sport",
	69: "disc_golf",
	70: "team_sport",
	71: "cricket",
	72: "rugby",
	73: "hockey",
	74: "lacrosse",
	75: "volleyball",
	76: "water_tubing",
	77: "wakesurfing",
	78: "water_sport",
	79: "archery",
	80: "mixed_martial_arts",
	81: "motor_sports",
	82: "snorkeling",
	83: "dance",
	84: "jump_rope",
	85: "pool_apnea",
	86: "mobility",
	87: "geocaching",
	88: "canoeing",
	254: "all"
};
const FIT_PROFILE_SUB_SPORTS = {
	0: "generic",
	1: "treadmill",
	2: "street",
	3: "trail",
	4: "track",
	5: "spin",
	6: "indoor_cycling",
	7: "road",
	8: "mountain",
	9: "downhill",
	10: "recumbent",
	11: "cyclocross",
	12: "hand_cycling",
	13: "track_cycling",
	14: "indoor_rowing",
	15: "elliptical",
	16: "stair_climbing",
	17: "lap_swimming",
	18: "open_water",
	19: "flexibility_training",
	20: "strength_training",
	21: "warm_up",
	22: "match",
	23: "exercise",
	24: "challenge",
	25: "indoor_skiing",
	26: "cardio_training",
	27: "indoor_walking",
	28: "e_bike_fitness",
	29: "bmx",
	30: "casual_walking",
	31: "speed_walking",
	32: "bike_to_run_transition",
	33: "run_to_bike_transition",
	34: "swim_to_bike_transition",
	35: "atv",
	36: "motocross",
	37: "backcountry",
	38: "resort",
	39: "rc_drone",
	40: "wingsuit",
	41: "whitewater",
	42: "skate_skiing",
	43: "yoga",
	44: "pilates",
	45: "indoor_running",
	46: "gravel_cycling",
	47: "e_bike_mountain",
	48: "commuting",
	49: "mixed_surface",
	50: "navigate",
	51: "track_me",
	52: "map",
	53: "single_gas_diving",
	54: "multi_gas_diving",
	55: "gauge_diving",
	56: "apnea_diving",
	57: "apnea_hunting",
	58: "virtual_activity",
	59: "obstacle",
	62: "breathing",
	63: "ccr_diving",
	65: "sail_race",
	66: "expedition",
	67: "ultra",
	68: "indoor_climbing",
	69: "bouldering",
	70: "hiit",
	71: "indoor_grinding",
	72: "hunting_with_dogs",
	73: "amrap",
	74: "emom",
	75: "tabata",
	77: "esport",
	78: "triathlon",
	79: "duathlon",
	80: "brick",
	81: "swim_run",
	82: "adventure_race",
	83: "trucker_workout",
	84: "pickleball",
	85: "padel",
	86: "indoor_wheelchair_walk",
	87: "indoor_wheelchair_run",
	88: "indoor_hand_cycling",
	90: "field",
	91: "ice",
	92: "ultimate",
	93: "platform",
	94: "squash",
	95: "badminton",
	96: "racquetball",
	97: "table_tennis",
	98: "overland",
	99: "trolling_motor",
	110: "fly_canopy",
	111: "fly_paraglide",
	112: "fly_paramotor",
	113: "fly_pressurized",
	114: "fly_navigate",
	115: "fly_timer",
	116: "fly_altimeter",
	117: "fly_wx",
	118: "fly_vfr",
	119: "fly_ifr",
	121: "dynamic_apnea",
	123: "enduro",
	124: "rucking",
	125: "rally",
	126: "pool_triathlon",
	127: "e_bike_enduro",
	153: "mountain_enduro",
	154: "mountain_downhill",
	254: "all"
};
// node_modules/fit-file-parser/dist/profile.js
/**
* Static, community-maintained FIT interoperability profile.
*
* This table is ordinary project source maintained under the repository's MIT
* license. See PROFILE.md for the maintenance and verification policy.
*/
const PROFILE_MESSAGES = {
	0: {
		0: {
			field: "type",
			type: "file",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "manufacturer",
			type: "manufacturer",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "product",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "serial_number",
			type: "uint32z",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "time_created",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "number",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "product_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "file_id"
	},
	1: {
		0: {
			field: "languages",
			type: "uint8z",
			baseType: "uint8z",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "sports",
			type: "sport_bits0",
			baseType: "uint8z",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		21: {
			field: "workouts_supported",
			type: "workout_capabilities",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		23: {
			field: "connectivity_supported",
			type: "connectivity_capabilities",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "capabilities"
	},
	2: {
		0: {
			field: "active_time_zone",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "utc_offset",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "time_offset",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1,
			offset: 0,
			units: "s"
		},
		4: {
			field: "time_mode",
			type: "time_mode",
			baseType: "enum",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "time_zone_offset",
			type: "sint8",
			baseType: "sint8",
			array: true,
			scale: 4,
			offset: 0,
			units: "hr"
		},
		12: {
			field: "backlight_mode",
			type: "backlight_mode",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		36: {
			field: "activity_tracker_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		39: {
			field: "clock_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		40: {
			field: "pages_enabled",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		46: {
			field: "move_alert_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		47: {
			field: "date_mode",
			type: "date_mode",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		55: {
			field: "display_orientation",
			type: "display_orientation",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		56: {
			field: "mounting_side",
			type: "side",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		57: {
			field: "default_page",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		58: {
			field: "autosync_min_steps",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "steps"
		},
		59: {
			field: "autosync_min_time",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "minutes"
		},
		80: {
			field: "lactate_threshold_autodetect_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		86: {
			field: "ble_auto_upload_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		89: {
			field: "auto_sync_frequency",
			type: "auto_sync_frequency",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		90: {
			field: "auto_activity_detect",
			type: "auto_activity_detect",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		94: {
			field: "number_of_screens",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		95: {
			field: "smart_notification_display_orientation",
			type: "display_orientation",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		134: {
			field: "tap_interface",
			type: "switch",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		174: {
			field: "tap_sensitivity",
			type: "tap_sensitivity",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "device_settings"
	},
	3: {
		0: {
			field: "friendly_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "gender",
			type: "gender",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "age",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "years"
		},
		3: {
			field: "height",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		4: {
			field: "weight",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "kg"
		},
		5: {
			field: "language",
			type: "language",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "elev_setting",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "weight_setting",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "resting_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		9: {
			field: "default_max_running_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		10: {
			field: "default_max_biking_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		11: {
			field: "default_max_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		12: {
			field: "hr_setting",
			type: "display_heart",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "speed_setting",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		14: {
			field: "dist_setting",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		16: {
			field: "power_setting",
			type: "display_power",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		17: {
			field: "activity_class",
			type: "activity_class",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		18: {
			field: "position_setting",
			type: "display_position",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		21: {
			field: "temperature_setting",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		22: {
			field: "local_id",
			type: "user_local_id",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		23: {
			field: "global_id",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		28: {
			field: "wake_time",
			type: "localtime_into_day",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		29: {
			field: "sleep_time",
			type: "localtime_into_day",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		30: {
			field: "height_setting",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		31: {
			field: "user_running_step_length",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		32: {
			field: "user_walking_step_length",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		47: {
			field: "depth_setting",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		49: {
			field: "dive_count",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "user_profile"
	},
	4: {
		0: {
			field: "enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "hrm_ant_id",
			type: "uint16z",
			baseType: "uint16z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "log_hrv",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "hrm_ant_id_trans_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "hrm_profile"
	},
	5: {
		0: {
			field: "enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "sdm_ant_id",
			type: "uint16z",
			baseType: "uint16z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "sdm_cal_factor",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "%"
		},
		3: {
			field: "odometer",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		4: {
			field: "speed_source",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "sdm_ant_id_trans_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "odometer_rollover",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "sdm_profile"
	},
	6: {
		0: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "odometer",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		4: {
			field: "bike_spd_ant_id",
			type: "uint16z",
			baseType: "uint16z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "bike_cad_ant_id",
			type: "uint16z",
			baseType: "uint16z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "bike_spdcad_ant_id",
			type: "uint16z",
			baseType: "uint16z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "bike_power_ant_id",
			type: "uint16z",
			baseType: "uint16z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "custom_wheelsize",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		9: {
			field: "auto_wheelsize",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		10: {
			field: "bike_weight",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "kg"
		},
		11: {
			field: "power_cal_factor",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "%"
		},
		12: {
			field: "auto_wheel_cal",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "auto_power_zero",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		14: {
			field: "id",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		15: {
			field: "spd_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		16: {
			field: "cad_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		17: {
			field: "spdcad_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		18: {
			field: "power_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		19: {
			field: "crank_length",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 110,
			units: "mm"
		},
		20: {
			field: "enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		21: {
			field: "bike_spd_ant_id_trans_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		22: {
			field: "bike_cad_ant_id_trans_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		23: {
			field: "bike_spdcad_ant_id_trans_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		24: {
			field: "bike_power_ant_id_trans_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		37: {
			field: "odometer_rollover",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		38: {
			field: "front_gear_num",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		39: {
			field: "front_gear",
			type: "uint8z",
			baseType: "uint8z",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		40: {
			field: "rear_gear_num",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		41: {
			field: "rear_gear",
			type: "uint8z",
			baseType: "uint8z",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		44: {
			field: "shimano_di2_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "bike_profile"
	},
	7: {
		1: {
			field: "max_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "threshold_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "functional_threshold_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "hr_calc_type",
			type: "hr_zone_calc",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "pwr_calc_type",
			type: "pwr_zone_calc",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "zones_target"
	},
	8: {
		1: {
			field: "high_bpm",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		2: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "hr_zone"
	},
	9: {
		1: {
			field: "high_value",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		2: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "power_zone"
	},
	10: {
		1: {
			field: "high_bpm",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "kcal / min"
		},
		3: {
			field: "fat_calories",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 10,
			offset: 0,
			units: "kcal / min"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "met_zone"
	},
	12: {
		0: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "sport"
	},
	13: {
		31: {
			field: "target_distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		32: {
			field: "target_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		33: {
			field: "target_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		153: {
			field: "precise_target_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e6,
			offset: 0,
			units: "m/s"
		},
		name: "training_settings"
	},
	15: {
		0: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "start_date",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "end_date",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "type",
			type: "goal",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "value",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "repeat",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "target_value",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "recurrence",
			type: "goal_recurrence",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "recurrence_value",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "source",
			type: "goal_source",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "goal"
	},
	18: {
		0: {
			field: "event",
			type: "event",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "event_type",
			type: "event_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "start_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "start_position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		4: {
			field: "start_position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		5: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "total_elapsed_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		8: {
			field: "total_timer_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		9: {
			field: "total_distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		10: {
			field: "total_cycles",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "cycles"
		},
		11: {
			field: "total_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		13: {
			field: "total_fat_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		14: {
			field: "avg_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		15: {
			field: "max_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		16: {
			field: "avg_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		17: {
			field: "max_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		18: {
			field: "avg_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		19: {
			field: "max_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		20: {
			field: "avg_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		21: {
			field: "max_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		22: {
			field: "total_ascent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		23: {
			field: "total_descent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		24: {
			field: "total_training_effect",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 10,
			offset: 0,
			units: ""
		},
		25: {
			field: "first_lap_index",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		26: {
			field: "num_laps",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		27: {
			field: "event_group",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		28: {
			field: "trigger",
			type: "session_trigger",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		29: {
			field: "nec_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		30: {
			field: "nec_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		31: {
			field: "swc_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		32: {
			field: "swc_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		33: {
			field: "num_lengths",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "lengths"
		},
		34: {
			field: "normalized_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		35: {
			field: "training_stress_score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "tss"
		},
		36: {
			field: "intensity_factor",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "if"
		},
		37: {
			field: "left_right_balance",
			type: "left_right_balance100",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		38: {
			field: "end_position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		39: {
			field: "end_position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		41: {
			field: "avg_stroke_count",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 10,
			offset: 0,
			units: "strokes/lap"
		},
		42: {
			field: "avg_stroke_distance",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		43: {
			field: "swim_stroke",
			type: "swim_stroke",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: "swim_stroke"
		},
		44: {
			field: "pool_length",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		45: {
			field: "threshold_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		46: {
			field: "pool_length_unit",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		47: {
			field: "num_active_lengths",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "lengths"
		},
		48: {
			field: "total_work",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "J"
		},
		49: {
			field: "avg_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		50: {
			field: "max_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		51: {
			field: "gps_accuracy",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		52: {
			field: "avg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		53: {
			field: "avg_pos_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		54: {
			field: "avg_neg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		55: {
			field: "max_pos_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		56: {
			field: "max_neg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		57: {
			field: "avg_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		58: {
			field: "max_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		59: {
			field: "total_moving_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		60: {
			field: "avg_pos_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		61: {
			field: "avg_neg_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		62: {
			field: "max_pos_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		63: {
			field: "max_neg_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		64: {
			field: "min_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		65: {
			field: "time_in_hr_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		66: {
			field: "time_in_speed_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		67: {
			field: "time_in_cadence_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		68: {
			field: "time_in_power_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		69: {
			field: "avg_lap_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		70: {
			field: "best_lap_index",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		71: {
			field: "min_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		78: {
			field: "active_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		82: {
			field: "player_score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		83: {
			field: "opponent_score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		84: {
			field: "opponent_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		85: {
			field: "stroke_count",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		86: {
			field: "zone_count",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		87: {
			field: "max_ball_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m/s"
		},
		88: {
			field: "avg_ball_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m/s"
		},
		89: {
			field: "avg_vertical_oscillation",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "mm"
		},
		90: {
			field: "avg_stance_time_percent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		91: {
			field: "avg_stance_time",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "ms"
		},
		92: {
			field: "avg_fractional_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "rpm"
		},
		93: {
			field: "max_fractional_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "rpm"
		},
		94: {
			field: "total_fractional_cycles",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "cycles"
		},
		95: {
			field: "avg_total_hemoglobin_conc",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		96: {
			field: "min_total_hemoglobin_conc",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		97: {
			field: "max_total_hemoglobin_conc",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		98: {
			field: "avg_saturated_hemoglobin_percent",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 10,
			offset: 0,
			units: "%"
		},
		99: {
			field: "min_saturated_hemoglobin_percent",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 10,
			offset: 0,
			units: "%"
		},
		100: {
			field: "max_saturated_hemoglobin_percent",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 10,
			offset: 0,
			units: "%"
		},
		101: {
			field: "avg_left_torque_effectiveness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		102: {
			field: "avg_right_torque_effectiveness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		103: {
			field: "avg_left_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		104: {
			field: "avg_right_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		105: {
			field: "avg_combined_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		110: {
			field: "sport_profile_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		111: {
			field: "sport_index",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		112: {
			field: "time_standing",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		113: {
			field: "stand_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		114: {
			field: "avg_left_pco",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mm"
		},
		115: {
			field: "avg_right_pco",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mm"
		},
		116: {
			field: "avg_left_power_phase",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		117: {
			field: "avg_left_power_phase_peak",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		118: {
			field: "avg_right_power_phase",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		119: {
			field: "avg_right_power_phase_peak",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		120: {
			field: "avg_power_position",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		121: {
			field: "max_power_position",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		122: {
			field: "avg_cadence_position",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		123: {
			field: "max_cadence_position",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		124: {
			field: "enhanced_avg_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		125: {
			field: "enhanced_max_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		126: {
			field: "enhanced_avg_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		127: {
			field: "enhanced_min_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		128: {
			field: "enhanced_max_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		129: {
			field: "avg_lev_motor_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		130: {
			field: "max_lev_motor_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		131: {
			field: "lev_battery_consumption",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		132: {
			field: "avg_vertical_ratio",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		133: {
			field: "avg_stance_time_balance",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		134: {
			field: "avg_step_length",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "mm"
		},
		137: {
			field: "total_anaerobic_training_effect",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 10,
			offset: 0,
			units: ""
		},
		139: {
			field: "avg_vam",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		140: {
			field: "avg_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		141: {
			field: "max_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		142: {
			field: "surface_interval",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		143: {
			field: "start_cns",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		144: {
			field: "end_cns",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		145: {
			field: "start_n2",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		146: {
			field: "end_n2",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		147: {
			field: "avg_respiration_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		148: {
			field: "max_respiration_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		149: {
			field: "min_respiration_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		150: {
			field: "min_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		155: {
			field: "o2_toxicity",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "OTUs"
		},
		156: {
			field: "dive_number",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		168: {
			field: "training_load_peak",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 65536,
			offset: 0,
			units: ""
		},
		169: {
			field: "enhanced_avg_respiration_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "Breaths/min"
		},
		170: {
			field: "enhanced_max_respiration_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "Breaths/min"
		},
		178: {
			field: "est_sweat_loss",
			type: "uint16",
			scale: 1,
			offset: 0,
			units: "ml"
		},
		180: {
			field: "enhanced_min_respiration_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: ""
		},
		181: {
			field: "total_grit",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kGrit"
		},
		182: {
			field: "total_flow",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "Flow"
		},
		183: {
			field: "jump_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		186: {
			field: "avg_grit",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kGrit"
		},
		187: {
			field: "avg_flow",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "Flow"
		},
		188: {
			field: "primary_benefit",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: ""
		},
		192: {
			field: "workout_feel",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		193: {
			field: "workout_rpe",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		194: {
			field: "avg_spo2",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		195: {
			field: "avg_stress",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		196: {
			field: "metabolic_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		197: {
			field: "sdrr_hrv",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mS"
		},
		198: {
			field: "rmssd_hrv",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mS"
		},
		199: {
			field: "total_fractional_ascent",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		200: {
			field: "total_fractional_descent",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		205: {
			field: "beginning_potential_stamina",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "percent"
		},
		206: {
			field: "ending_potential_stamina",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "percent"
		},
		207: {
			field: "min_stamina",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "percent"
		},
		208: {
			field: "avg_core_temperature",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		209: {
			field: "min_core_temperature",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		210: {
			field: "max_core_temperature",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "session"
	},
	19: {
		0: {
			field: "event",
			type: "event",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "event_type",
			type: "event_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "start_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "start_position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		4: {
			field: "start_position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		5: {
			field: "end_position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		6: {
			field: "end_position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		7: {
			field: "total_elapsed_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		8: {
			field: "total_timer_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		9: {
			field: "total_distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		10: {
			field: "total_cycles",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "cycles"
		},
		11: {
			field: "total_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		12: {
			field: "total_fat_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		13: {
			field: "avg_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		14: {
			field: "max_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		15: {
			field: "avg_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		16: {
			field: "max_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		17: {
			field: "avg_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		18: {
			field: "max_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		19: {
			field: "avg_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		20: {
			field: "max_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		21: {
			field: "total_ascent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		22: {
			field: "total_descent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		23: {
			field: "intensity",
			type: "intensity",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		24: {
			field: "lap_trigger",
			type: "lap_trigger",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		25: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		26: {
			field: "event_group",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		32: {
			field: "num_lengths",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "lengths"
		},
		33: {
			field: "normalized_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		34: {
			field: "left_right_balance",
			type: "left_right_balance100",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		35: {
			field: "first_length_index",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		37: {
			field: "avg_stroke_distance",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		38: {
			field: "swim_stroke",
			type: "swim_stroke",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		39: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		40: {
			field: "num_active_lengths",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "lengths"
		},
		41: {
			field: "total_work",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "J"
		},
		42: {
			field: "avg_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		43: {
			field: "max_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		44: {
			field: "gps_accuracy",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		45: {
			field: "avg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		46: {
			field: "avg_pos_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		47: {
			field: "avg_neg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		48: {
			field: "max_pos_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		49: {
			field: "max_neg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		50: {
			field: "avg_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		51: {
			field: "max_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		52: {
			field: "total_moving_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		53: {
			field: "avg_pos_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		54: {
			field: "avg_neg_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		55: {
			field: "max_pos_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		56: {
			field: "max_neg_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		57: {
			field: "time_in_hr_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		58: {
			field: "time_in_speed_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		59: {
			field: "time_in_cadence_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		60: {
			field: "time_in_power_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		61: {
			field: "repetition_num",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		62: {
			field: "min_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		63: {
			field: "min_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		70: {
			field: "active_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		71: {
			field: "wkt_step_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		74: {
			field: "opponent_score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		75: {
			field: "stroke_count",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		76: {
			field: "zone_count",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		77: {
			field: "avg_vertical_oscillation",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "mm"
		},
		78: {
			field: "avg_stance_time_percent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		79: {
			field: "avg_stance_time",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "ms"
		},
		80: {
			field: "avg_fractional_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "rpm"
		},
		81: {
			field: "max_fractional_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "rpm"
		},
		82: {
			field: "total_fractional_cycles",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "cycles"
		},
		83: {
			field: "player_score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		84: {
			field: "avg_total_hemoglobin_conc",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		85: {
			field: "min_total_hemoglobin_conc",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		86: {
			field: "max_total_hemoglobin_conc",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		87: {
			field: "avg_saturated_hemoglobin_percent",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 10,
			offset: 0,
			units: "%"
		},
		88: {
			field: "min_saturated_hemoglobin_percent",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 10,
			offset: 0,
			units: "%"
		},
		89: {
			field: "max_saturated_hemoglobin_percent",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 10,
			offset: 0,
			units: "%"
		},
		91: {
			field: "avg_left_torque_effectiveness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		92: {
			field: "avg_right_torque_effectiveness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		93: {
			field: "avg_left_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		94: {
			field: "avg_right_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		95: {
			field: "avg_combined_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		98: {
			field: "time_standing",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		99: {
			field: "stand_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		100: {
			field: "avg_left_pco",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mm"
		},
		101: {
			field: "avg_right_pco",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mm"
		},
		102: {
			field: "avg_left_power_phase",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		103: {
			field: "avg_left_power_phase_peak",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		104: {
			field: "avg_right_power_phase",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		105: {
			field: "avg_right_power_phase_peak",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		106: {
			field: "avg_power_position",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		107: {
			field: "max_power_position",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		108: {
			field: "avg_cadence_position",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		109: {
			field: "max_cadence_position",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		110: {
			field: "enhanced_avg_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		111: {
			field: "enhanced_max_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		112: {
			field: "enhanced_avg_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		113: {
			field: "enhanced_min_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		114: {
			field: "enhanced_max_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		115: {
			field: "avg_lev_motor_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		116: {
			field: "max_lev_motor_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		117: {
			field: "lev_battery_consumption",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		118: {
			field: "avg_vertical_ratio",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		119: {
			field: "avg_stance_time_balance",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		120: {
			field: "avg_step_length",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "mm"
		},
		121: {
			field: "avg_vam",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		122: {
			field: "avg_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		123: {
			field: "max_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		124: {
			field: "min_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		136: {
			field: "enhanced_avg_respiration_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "Breaths/min"
		},
		137: {
			field: "enhanced_max_respiration_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "Breaths/min"
		},
		147: {
			field: "avg_respiration_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		148: {
			field: "max_respiration_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		149: {
			field: "total_grit",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kGrit"
		},
		150: {
			field: "total_flow",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "Flow"
		},
		151: {
			field: "jump_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		153: {
			field: "avg_grit",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kGrit"
		},
		154: {
			field: "avg_flow",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "Flow"
		},
		156: {
			field: "total_fractional_ascent",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		157: {
			field: "total_fractional_descent",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		158: {
			field: "avg_core_temperature",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		159: {
			field: "min_core_temperature",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		160: {
			field: "max_core_temperature",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "lap"
	},
	20: {
		0: {
			field: "position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		1: {
			field: "position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		2: {
			field: "altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		3: {
			field: "heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		4: {
			field: "cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		5: {
			field: "distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		6: {
			field: "speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		7: {
			field: "power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		8: {
			field: "compressed_speed_distance",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 100,
			offset: 0,
			units: "m/s"
		},
		9: {
			field: "grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		10: {
			field: "resistance",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "time_from_course",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		12: {
			field: "cycle_length",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		13: {
			field: "temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		17: {
			field: "speed1s",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 16,
			offset: 0,
			units: "m/s"
		},
		18: {
			field: "cycles",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "cycles"
		},
		19: {
			field: "total_cycles",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "cycles"
		},
		28: {
			field: "compressed_accumulated_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		29: {
			field: "accumulated_power",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		30: {
			field: "left_right_balance",
			type: "left_right_balance",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		31: {
			field: "gps_accuracy",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		32: {
			field: "vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		33: {
			field: "calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		39: {
			field: "vertical_oscillation",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "mm"
		},
		40: {
			field: "stance_time_percent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		41: {
			field: "stance_time",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "ms"
		},
		42: {
			field: "activity_type",
			type: "activity_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		43: {
			field: "left_torque_effectiveness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		44: {
			field: "right_torque_effectiveness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		45: {
			field: "left_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		46: {
			field: "right_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		47: {
			field: "combined_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		48: {
			field: "time128",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "s"
		},
		49: {
			field: "stroke_type",
			type: "stroke_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		50: {
			field: "zone",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		51: {
			field: "ball_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m/s"
		},
		52: {
			field: "cadence256",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 256,
			offset: 0,
			units: "rpm"
		},
		53: {
			field: "fractional_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "rpm"
		},
		54: {
			field: "total_hemoglobin_conc",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		55: {
			field: "total_hemoglobin_conc_min",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		56: {
			field: "total_hemoglobin_conc_max",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "g/dL"
		},
		57: {
			field: "saturated_hemoglobin_percent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "%"
		},
		58: {
			field: "saturated_hemoglobin_percent_min",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "%"
		},
		59: {
			field: "saturated_hemoglobin_percent_max",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "%"
		},
		62: {
			field: "device_index",
			type: "device_index",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		67: {
			field: "left_pco",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mm"
		},
		68: {
			field: "right_pco",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mm"
		},
		69: {
			field: "left_power_phase",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		70: {
			field: "left_power_phase_peak",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		71: {
			field: "right_power_phase",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		72: {
			field: "right_power_phase_peak",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		73: {
			field: "enhanced_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		78: {
			field: "enhanced_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		81: {
			field: "battery_soc",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		82: {
			field: "motor_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		83: {
			field: "vertical_ratio",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		84: {
			field: "stance_time_balance",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		85: {
			field: "step_length",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "mm"
		},
		87: {
			field: "cycle_length16",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		90: {
			field: "garmin_performance_condition",
			type: "sint8",
			scale: 1,
			offset: 0,
			units: ""
		},
		91: {
			field: "absolute_pressure",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "Pa"
		},
		92: {
			field: "depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		93: {
			field: "next_stop_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		94: {
			field: "next_stop_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		95: {
			field: "time_to_surface",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		96: {
			field: "ndl_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		97: {
			field: "cns_load",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		98: {
			field: "n2_load",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		99: {
			field: "respiration_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		108: {
			field: "enhanced_respiration_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "Breaths/min"
		},
		114: {
			field: "grit",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		115: {
			field: "flow",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		116: {
			field: "current_stress",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: ""
		},
		117: {
			field: "ebike_travel_range",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "km"
		},
		118: {
			field: "ebike_battery_level",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		119: {
			field: "ebike_assist_mode",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "depends on sensor"
		},
		120: {
			field: "ebike_assist_level_percent",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		123: {
			field: "air_time_remaining",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		124: {
			field: "pressure_sac",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "bar/min"
		},
		125: {
			field: "volume_sac",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "L/min"
		},
		126: {
			field: "rmv",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "L/min"
		},
		127: {
			field: "ascent_rate",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		129: {
			field: "po2",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		137: {
			field: "potential_stamina",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "percent"
		},
		138: {
			field: "stamina",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "percent"
		},
		139: {
			field: "core_temperature",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "record"
	},
	21: {
		0: {
			field: "event",
			type: "event",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "event_type",
			type: "event_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "data16",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "data",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "event_group",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "opponent_score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "front_gear_num",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "front_gear",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "rear_gear_num",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		12: {
			field: "rear_gear",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "device_index",
			type: "device_index",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		14: {
			field: "activity_type",
			type: "activity_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		15: {
			field: "start_timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		21: {
			field: "radar_threat_level_max",
			type: "radar_threat_level_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		22: {
			field: "radar_threat_count",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		23: {
			field: "radar_threat_avg_approach_speed",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 10,
			offset: 0,
			units: "m/s"
		},
		24: {
			field: "radar_threat_max_approach_speed",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 10,
			offset: 0,
			units: "m/s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "event"
	},
	23: {
		0: {
			field: "device_index",
			type: "device_index",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "device_type",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "manufacturer",
			type: "manufacturer",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "serial_number",
			type: "uint32z",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "product",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "software_version",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: ""
		},
		6: {
			field: "hardware_version",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "cum_operating_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		10: {
			field: "battery_voltage",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 256,
			offset: 0,
			units: "V"
		},
		11: {
			field: "battery_status",
			type: "battery_status",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		18: {
			field: "sensor_position",
			type: "body_location",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		19: {
			field: "descriptor",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		20: {
			field: "ant_transmission_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		21: {
			field: "ant_device_number",
			type: "uint16z",
			baseType: "uint16z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		22: {
			field: "ant_network",
			type: "ant_network",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		24: {
			field: "ant_id",
			type: "uint32z",
			scale: 1,
			offset: 0,
			units: ""
		},
		25: {
			field: "source_type",
			type: "source_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		27: {
			field: "product_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		32: {
			field: "battery_level",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "%"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "device_info"
	},
	26: {
		4: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "capabilities",
			type: "workout_capabilities",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "num_valid_steps",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "wkt_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		14: {
			field: "pool_length",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		15: {
			field: "pool_length_unit",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		17: {
			field: "wkt_description",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "workout"
	},
	27: {
		0: {
			field: "wkt_step_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "duration_type",
			type: "wkt_step_duration",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "duration_value",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "target_type",
			type: "wkt_step_target",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "target_value",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "custom_target_value_low",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "custom_target_value_high",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "intensity",
			type: "intensity",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "notes",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "equipment",
			type: "workout_equipment",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "exercise_category",
			type: "exercise_category",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "exercise_name",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		12: {
			field: "exercise_weight",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "kg"
		},
		13: {
			field: "weight_display_unit",
			type: "fit_base_unit",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		19: {
			field: "secondary_target_type",
			type: "wkt_step_target",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		20: {
			field: "secondary_target_value",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		21: {
			field: "secondary_custom_target_value_low",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		22: {
			field: "secondary_custom_target_value_high",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "workout_step"
	},
	28: {
		0: {
			field: "manufacturer",
			type: "manufacturer",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "product",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "serial_number",
			type: "uint32z",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "time_created",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "completed",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "type",
			type: "schedule",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "scheduled_time",
			type: "local_date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "schedule"
	},
	30: {
		0: {
			field: "weight",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "kg"
		},
		1: {
			field: "percent_fat",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		2: {
			field: "percent_hydration",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		3: {
			field: "visceral_fat_mass",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "kg"
		},
		4: {
			field: "bone_mass",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "kg"
		},
		5: {
			field: "muscle_mass",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "kg"
		},
		7: {
			field: "basal_met",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 4,
			offset: 0,
			units: "kcal/day"
		},
		8: {
			field: "physique_rating",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "active_met",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 4,
			offset: 0,
			units: "kcal/day"
		},
		10: {
			field: "metabolic_age",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "years"
		},
		11: {
			field: "visceral_fat_rating",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		12: {
			field: "user_profile_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "bmi",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "kg/m^2"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "weight_scale"
	},
	31: {
		4: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "capabilities",
			type: "course_capabilities",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "course"
	},
	32: {
		1: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		3: {
			field: "position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		4: {
			field: "distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		5: {
			field: "type",
			type: "course_point",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "favorite",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "course_point"
	},
	33: {
		0: {
			field: "timer_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		2: {
			field: "calories",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		3: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "elapsed_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		5: {
			field: "sessions",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "active_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		9: {
			field: "sport_index",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "totals"
	},
	34: {
		0: {
			field: "total_timer_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		1: {
			field: "num_sessions",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "type",
			type: "activity",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "event",
			type: "event",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "event_type",
			type: "event_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "local_timestamp",
			type: "local_date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "event_group",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "activity"
	},
	35: {
		3: {
			field: "version",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: ""
		},
		5: {
			field: "part_number",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "software"
	},
	37: {
		0: {
			field: "type",
			type: "file",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "flags",
			type: "file_flags",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "directory",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "max_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "max_size",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "bytes"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "file_capabilities"
	},
	38: {
		0: {
			field: "file",
			type: "file",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "mesg_num",
			type: "mesg_num",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "count_type",
			type: "mesg_count",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "mesg_capabilities"
	},
	39: {
		0: {
			field: "file",
			type: "file",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "mesg_num",
			type: "mesg_num",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "field_num",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "field_capabilities"
	},
	49: {
		0: {
			field: "software_version",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "hardware_version",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "file_creator"
	},
	51: {
		0: {
			field: "systolic_pressure",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "mmHg"
		},
		1: {
			field: "diastolic_pressure",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "mmHg"
		},
		2: {
			field: "mean_arterial_pressure",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "mmHg"
		},
		3: {
			field: "map3_sample_mean",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "mmHg"
		},
		4: {
			field: "map_morning_values",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "mmHg"
		},
		5: {
			field: "map_evening_values",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "mmHg"
		},
		6: {
			field: "heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		7: {
			field: "heart_rate_type",
			type: "hr_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "status",
			type: "bp_status",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "user_profile_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "blood_pressure"
	},
	53: {
		0: {
			field: "high_value",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		1: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "speed_zone"
	},
	55: {
		0: {
			field: "device_index",
			type: "device_index",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		2: {
			field: "distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		3: {
			field: "cycles",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 2,
			offset: 0,
			units: "cycles"
		},
		4: {
			field: "active_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		5: {
			field: "activity_type",
			type: "activity_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "activity_subtype",
			type: "activity_subtype",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "activity_level",
			type: "activity_level",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "distance16",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "100 * m"
		},
		9: {
			field: "cycles16",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "2 * cycles (steps)"
		},
		10: {
			field: "active_time16",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		11: {
			field: "local_timestamp",
			type: "local_date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		12: {
			field: "temperature",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		14: {
			field: "temperature_min",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		15: {
			field: "temperature_max",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "C"
		},
		16: {
			field: "activity_time",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "minutes"
		},
		19: {
			field: "active_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		24: {
			field: "current_activity_type_intensity",
			type: "byte",
			baseType: "byte",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		25: {
			field: "timestamp_min8",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "min"
		},
		26: {
			field: "timestamp16",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		27: {
			field: "heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		28: {
			field: "intensity",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 10,
			offset: 0,
			units: ""
		},
		29: {
			field: "duration_min",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "min"
		},
		30: {
			field: "duration",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		31: {
			field: "ascent",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		32: {
			field: "descent",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		33: {
			field: "moderate_activity_minutes",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "minutes"
		},
		34: {
			field: "vigorous_activity_minutes",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "minutes"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "monitoring"
	},
	72: {
		0: {
			field: "type",
			type: "file",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "manufacturer",
			type: "manufacturer",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "product",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "serial_number",
			type: "uint32z",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "time_created",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "training_file"
	},
	78: {
		0: {
			field: "time",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		name: "hrv"
	},
	79: {
		0: {
			field: "vo2_max",
			type: "uint16",
			scale: 292.57142857142856,
			offset: 0,
			units: "ml/kg/min"
		},
		1: {
			field: "age",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "years"
		},
		2: {
			field: "height",
			type: "uint8",
			scale: 100,
			offset: 0,
			units: "m"
		},
		3: {
			field: "weight",
			type: "uint16",
			scale: 10,
			offset: 0,
			units: "kg"
		},
		4: {
			field: "gender",
			type: "gender",
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "max_heart_rate",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		8: {
			field: "remaining_recovery_time",
			type: "uint16",
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "lthr",
			type: "uint16",
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		12: {
			field: "ltpower",
			type: "uint16",
			scale: 1,
			offset: 0,
			units: "watts"
		},
		13: {
			field: "ltspeed",
			type: "uint16",
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		16: {
			field: "start_of_activity",
			type: "date_time",
			scale: 1,
			offset: 0,
			units: ""
		},
		19: {
			field: "first_vo2_max",
			type: "uint32",
			scale: 18724.571428571428,
			offset: 0,
			units: "ml/kg/min"
		},
		35: {
			field: "end_of_previous_activity",
			type: "date_time",
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "user_metrics"
	},
	80: {
		0: {
			field: "fractional_timestamp",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 32768,
			offset: 0,
			units: "s"
		},
		1: {
			field: "mesg_id",
			type: "byte",
			baseType: "byte",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "mesg_data",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "channel_number",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "data",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "ant_rx"
	},
	81: {
		0: {
			field: "fractional_timestamp",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 32768,
			offset: 0,
			units: "s"
		},
		1: {
			field: "mesg_id",
			type: "byte",
			baseType: "byte",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "mesg_data",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "channel_number",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "data",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "ant_tx"
	},
	82: {
		0: {
			field: "channel_number",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "device_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "device_number",
			type: "uint16z",
			baseType: "uint16z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "transmission_type",
			type: "uint8z",
			baseType: "uint8z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "device_index",
			type: "device_index",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "ant_channel_id"
	},
	101: {
		0: {
			field: "event",
			type: "event",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "event_type",
			type: "event_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "start_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "total_elapsed_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		4: {
			field: "total_timer_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		5: {
			field: "total_strokes",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "strokes"
		},
		6: {
			field: "avg_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		7: {
			field: "swim_stroke",
			type: "swim_stroke",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: "swim_stroke"
		},
		9: {
			field: "avg_swimming_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "strokes/min"
		},
		10: {
			field: "event_group",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "total_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		12: {
			field: "length_type",
			type: "length_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		18: {
			field: "player_score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		19: {
			field: "opponent_score",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		20: {
			field: "stroke_count",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		21: {
			field: "zone_count",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		22: {
			field: "enhanced_avg_respiration_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "Breaths/min"
		},
		23: {
			field: "enhanced_max_respiration_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "Breaths/min"
		},
		24: {
			field: "avg_respiration_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		25: {
			field: "max_respiration_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "length"
	},
	103: {
		0: {
			field: "local_timestamp",
			type: "local_date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "activity_type",
			type: "activity_type",
			baseType: "enum",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "cycles_to_distance",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 5e3,
			offset: 0,
			units: "m/cycle"
		},
		4: {
			field: "cycles_to_calories",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 5e3,
			offset: 0,
			units: "kcal/cycle"
		},
		5: {
			field: "resting_metabolic_rate",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal / day"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "monitoring_info"
	},
	105: { name: "pad" },
	106: {
		0: {
			field: "manufacturer",
			type: "manufacturer",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "product",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "slave_device"
	},
	127: {
		0: {
			field: "bluetooth_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "bluetooth_le_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "ant_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "live_tracking_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "weather_conditions_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "weather_alerts_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "auto_activity_upload_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "course_download_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "workout_download_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "gps_ephemeris_download_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "incident_detection_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		12: {
			field: "grouptrack_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "connectivity"
	},
	128: {
		0: {
			field: "weather_report",
			type: "weather_report",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		2: {
			field: "condition",
			type: "weather_status",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "wind_direction",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "degrees"
		},
		4: {
			field: "wind_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		5: {
			field: "precipitation_probability",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "temperature_feels_like",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		7: {
			field: "relative_humidity",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "location",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "observed_at_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "observed_location_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		11: {
			field: "observed_location_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		12: {
			field: "day_of_week",
			type: "day_of_week",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "high_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		14: {
			field: "low_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "weather_conditions"
	},
	129: {
		0: {
			field: "report_id",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "issue_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "expire_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "severity",
			type: "weather_severity",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "type",
			type: "weather_severe_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "weather_alert"
	},
	131: {
		0: {
			field: "high_value",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		1: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "cadence_zone"
	},
	132: {
		0: {
			field: "fractional_timestamp",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 32768,
			offset: 0,
			units: "s"
		},
		1: {
			field: "time256",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 256,
			offset: 0,
			units: "s"
		},
		6: {
			field: "filtered_bpm",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		9: {
			field: "event_timestamp",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1024,
			offset: 0,
			units: "s"
		},
		10: {
			field: "event_timestamp12",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1024,
			offset: 0,
			units: "s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "hr"
	},
	140: {
		1: {
			field: "new_max_heart_rate",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		4: {
			field: "aerobic_training_effect",
			type: "uint8",
			scale: 10,
			offset: 0,
			units: ""
		},
		7: {
			field: "vo2_max",
			type: "uint32",
			scale: 18724.571428571428,
			offset: 0,
			units: "ml/kg/min"
		},
		9: {
			field: "recovery_time",
			type: "uint16",
			scale: 1,
			offset: 0,
			units: "min"
		},
		11: {
			field: "sport",
			type: "sport",
			scale: 1,
			offset: 0,
			units: ""
		},
		20: {
			field: "anaerobic_training_effect",
			type: "uint8",
			scale: 10,
			offset: 0,
			units: ""
		},
		29: {
			field: "first_vo2_max",
			type: "uint32",
			scale: 18724.571428571428,
			offset: 0,
			units: "ml/kg/min"
		},
		41: {
			field: "primary_benefit",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: ""
		},
		60: {
			field: "total_ascent",
			type: "uint16",
			scale: 1,
			offset: 0,
			units: "m"
		},
		61: {
			field: "total_descent",
			type: "uint16",
			scale: 1,
			offset: 0,
			units: "m"
		},
		62: {
			field: "avg_power",
			type: "uint16",
			scale: 1,
			offset: 0,
			units: "watts"
		},
		63: {
			field: "avg_heart_rate",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		name: "activity_metrics"
	},
	142: {
		0: {
			field: "event",
			type: "event",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "event_type",
			type: "event_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "start_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "start_position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		4: {
			field: "start_position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		5: {
			field: "end_position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		6: {
			field: "end_position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		7: {
			field: "total_elapsed_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		8: {
			field: "total_timer_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		9: {
			field: "total_distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		10: {
			field: "total_cycles",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "cycles"
		},
		11: {
			field: "total_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		12: {
			field: "total_fat_calories",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		13: {
			field: "avg_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		14: {
			field: "max_speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		15: {
			field: "avg_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		16: {
			field: "max_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		17: {
			field: "avg_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		18: {
			field: "max_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		19: {
			field: "avg_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		20: {
			field: "max_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		21: {
			field: "total_ascent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		22: {
			field: "total_descent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		23: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		24: {
			field: "event_group",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		25: {
			field: "nec_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		26: {
			field: "nec_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		27: {
			field: "swc_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		28: {
			field: "swc_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		29: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		30: {
			field: "normalized_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		31: {
			field: "left_right_balance",
			type: "left_right_balance100",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		32: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		33: {
			field: "total_work",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "J"
		},
		34: {
			field: "avg_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		35: {
			field: "max_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		36: {
			field: "gps_accuracy",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		37: {
			field: "avg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		38: {
			field: "avg_pos_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		39: {
			field: "avg_neg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		40: {
			field: "max_pos_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		41: {
			field: "max_neg_grade",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "%"
		},
		42: {
			field: "avg_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		43: {
			field: "max_temperature",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "C"
		},
		44: {
			field: "total_moving_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		45: {
			field: "avg_pos_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		46: {
			field: "avg_neg_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		47: {
			field: "max_pos_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		48: {
			field: "max_neg_vertical_speed",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		49: {
			field: "time_in_hr_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		50: {
			field: "time_in_speed_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		51: {
			field: "time_in_cadence_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		52: {
			field: "time_in_power_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		53: {
			field: "repetition_num",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		54: {
			field: "min_altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		55: {
			field: "min_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		56: {
			field: "active_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		57: {
			field: "wkt_step_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		58: {
			field: "sport_event",
			type: "sport_event",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		59: {
			field: "avg_left_torque_effectiveness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		60: {
			field: "avg_right_torque_effectiveness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		61: {
			field: "avg_left_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		62: {
			field: "avg_right_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		63: {
			field: "avg_combined_pedal_smoothness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 2,
			offset: 0,
			units: "percent"
		},
		64: {
			field: "status",
			type: "segment_lap_status",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		65: {
			field: "uuid",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		66: {
			field: "avg_fractional_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "rpm"
		},
		67: {
			field: "max_fractional_cadence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "rpm"
		},
		68: {
			field: "total_fractional_cycles",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 128,
			offset: 0,
			units: "cycles"
		},
		69: {
			field: "front_gear_shift_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		70: {
			field: "rear_gear_shift_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		71: {
			field: "time_standing",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		72: {
			field: "stand_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		73: {
			field: "avg_left_pco",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mm"
		},
		74: {
			field: "avg_right_pco",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "mm"
		},
		75: {
			field: "avg_left_power_phase",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		76: {
			field: "avg_left_power_phase_peak",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		77: {
			field: "avg_right_power_phase",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		78: {
			field: "avg_right_power_phase_peak",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: .7111111,
			offset: 0,
			units: "degrees"
		},
		79: {
			field: "avg_power_position",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		80: {
			field: "max_power_position",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		81: {
			field: "avg_cadence_position",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		82: {
			field: "max_cadence_position",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		83: {
			field: "manufacturer",
			type: "manufacturer",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		84: {
			field: "total_grit",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kGrit"
		},
		85: {
			field: "total_flow",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "Flow"
		},
		86: {
			field: "avg_grit",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kGrit"
		},
		87: {
			field: "avg_flow",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "Flow"
		},
		89: {
			field: "total_fractional_ascent",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		90: {
			field: "total_fractional_descent",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		91: {
			field: "enhanced_avg_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		92: {
			field: "enhanced_max_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		93: {
			field: "enhanced_min_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "segment_lap"
	},
	145: {
		0: {
			field: "memo",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "mesg_num",
			type: "mesg_num",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "parent_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "field_num",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "data",
			type: "uint8z",
			baseType: "uint8z",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		250: {
			field: "part_index",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "memo_glob"
	},
	148: {
		0: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "uuid",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "user_profile_primary_key",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "device_id",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "default_race_leader",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "delete_status",
			type: "segment_delete_status",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "selection_type",
			type: "segment_selection_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "segment_id"
	},
	149: {
		0: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "type",
			type: "segment_leaderboard_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "group_primary_key",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "activity_id",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "segment_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		5: {
			field: "activity_id_string",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "segment_leaderboard_entry"
	},
	150: {
		1: {
			field: "position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		2: {
			field: "position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		3: {
			field: "distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		4: {
			field: "altitude",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		5: {
			field: "leader_time",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		6: {
			field: "enhanced_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "segment_point"
	},
	151: {
		1: {
			field: "file_uuid",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "user_profile_primary_key",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "leader_type",
			type: "segment_leaderboard_type",
			baseType: "enum",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "leader_group_primary_key",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "leader_activity_id",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "leader_activity_id_string",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "default_race_leader",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "segment_file"
	},
	158: {
		0: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "num_valid_steps",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "first_step_index",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "pool_length",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		5: {
			field: "pool_length_unit",
			type: "display_measure",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "workout_session"
	},
	159: {
		0: {
			field: "mode",
			type: "watchface_mode",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "layout",
			type: "byte",
			baseType: "byte",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "watchface_settings"
	},
	160: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		2: {
			field: "position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		3: {
			field: "enhanced_altitude",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		4: {
			field: "enhanced_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		5: {
			field: "heading",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "degrees"
		},
		6: {
			field: "utc_timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		7: {
			field: "velocity",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "m/s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "gps_metadata"
	},
	161: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "camera_event_type",
			type: "camera_event_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "camera_file_uuid",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "camera_orientation",
			type: "camera_orientation_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "camera_event"
	},
	162: {
		0: {
			field: "fractional_timestamp",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 32768,
			offset: 0,
			units: "s"
		},
		1: {
			field: "system_timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		2: {
			field: "fractional_system_timestamp",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 32768,
			offset: 0,
			units: "s"
		},
		3: {
			field: "local_timestamp",
			type: "local_date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		4: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		5: {
			field: "system_timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "timestamp_correlation"
	},
	164: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "sample_time_offset",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		2: {
			field: "gyro_x",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		3: {
			field: "gyro_y",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		4: {
			field: "gyro_z",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		5: {
			field: "calibrated_gyro_x",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "deg/s"
		},
		6: {
			field: "calibrated_gyro_y",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "deg/s"
		},
		7: {
			field: "calibrated_gyro_z",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "deg/s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "gyroscope_data"
	},
	165: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "sample_time_offset",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		2: {
			field: "accel_x",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		3: {
			field: "accel_y",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		4: {
			field: "accel_z",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		5: {
			field: "calibrated_accel_x",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "g"
		},
		6: {
			field: "calibrated_accel_y",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "g"
		},
		7: {
			field: "calibrated_accel_z",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "g"
		},
		8: {
			field: "compressed_calibrated_accel_x",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "mG"
		},
		9: {
			field: "compressed_calibrated_accel_y",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "mG"
		},
		10: {
			field: "compressed_calibrated_accel_z",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "mG"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "accelerometer_data"
	},
	167: {
		0: {
			field: "sensor_type",
			type: "sensor_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "calibration_factor",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "calibration_divisor",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		3: {
			field: "level_shift",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "offset_cal",
			type: "sint32",
			baseType: "sint32",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "orientation_matrix",
			type: "sint32",
			baseType: "sint32",
			array: true,
			scale: 65535,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "three_d_sensor_calibration"
	},
	169: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "frame_number",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "video_frame"
	},
	174: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "time_offset",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		2: {
			field: "pid",
			type: "byte",
			baseType: "byte",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "raw_data",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "pid_data_size",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "system_time",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "start_timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "start_timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "obdii_data"
	},
	177: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "sentence",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "nmea_sentence"
	},
	178: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "system_time",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		2: {
			field: "pitch",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 10430.38,
			offset: 0,
			units: "radians"
		},
		3: {
			field: "roll",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 10430.38,
			offset: 0,
			units: "radians"
		},
		4: {
			field: "accel_lateral",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "m/s^2"
		},
		5: {
			field: "accel_normal",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "m/s^2"
		},
		6: {
			field: "turn_rate",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1024,
			offset: 0,
			units: "radians/second"
		},
		7: {
			field: "stage",
			type: "attitude_stage",
			baseType: "enum",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "attitude_stage_complete",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "%"
		},
		9: {
			field: "track",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 10430.38,
			offset: 0,
			units: "radians"
		},
		10: {
			field: "validity",
			type: "attitude_validity",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "aviation_attitude"
	},
	184: {
		0: {
			field: "url",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "hosting_provider",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "duration",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		name: "video"
	},
	185: {
		0: {
			field: "message_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "text",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "video_title"
	},
	186: {
		0: {
			field: "message_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "text",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "video_description"
	},
	187: {
		0: {
			field: "clip_number",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "start_timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "start_timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "end_timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "end_timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "clip_start",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		7: {
			field: "clip_end",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		name: "video_clip"
	},
	188: {
		0: {
			field: "enabled",
			type: "switch",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "ohr_settings"
	},
	200: {
		0: {
			field: "screen_index",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "field_count",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "layout",
			type: "exd_layout",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "screen_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "exd_screen_configuration"
	},
	201: {
		0: {
			field: "screen_index",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "concept_field",
			type: "byte",
			baseType: "byte",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "field_id",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "concept_count",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "display_type",
			type: "exd_display_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "title",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "exd_data_field_configuration"
	},
	202: {
		0: {
			field: "screen_index",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "concept_field",
			type: "byte",
			baseType: "byte",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "field_id",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "concept_index",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "data_page",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "concept_key",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "scaling",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "data_units",
			type: "exd_data_units",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "qualifier",
			type: "exd_qualifiers",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "descriptor",
			type: "exd_descriptors",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "is_signed",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "exd_data_concept_configuration"
	},
	206: {
		0: {
			field: "developer_data_index",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "field_definition_number",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "fit_base_type_id",
			type: "fit_base_type",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "field_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "array",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "components",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "scale",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "offset",
			type: "sint8",
			baseType: "sint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "units",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "bits",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "accumulate",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "fit_base_unit_id",
			type: "fit_base_unit",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		14: {
			field: "native_mesg_num",
			type: "mesg_num",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		15: {
			field: "native_field_num",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "field_description"
	},
	207: {
		0: {
			field: "developer_id",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "application_id",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "manufacturer_id",
			type: "manufacturer",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "developer_data_index",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "application_version",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "developer_data_id"
	},
	208: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "sample_time_offset",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		2: {
			field: "mag_x",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		3: {
			field: "mag_y",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		4: {
			field: "mag_z",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		5: {
			field: "calibrated_mag_x",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "G"
		},
		6: {
			field: "calibrated_mag_y",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "G"
		},
		7: {
			field: "calibrated_mag_z",
			type: "float32",
			baseType: "float32",
			array: true,
			scale: 1,
			offset: 0,
			units: "G"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "magnetometer_data"
	},
	209: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "sample_time_offset",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		2: {
			field: "baro_pres",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1,
			offset: 0,
			units: "Pa"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "barometer_data"
	},
	210: {
		0: {
			field: "sensor_type",
			type: "sensor_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "calibration_factor",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "calibration_divisor",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "counts"
		},
		3: {
			field: "level_shift",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "offset_cal",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "one_d_sensor_calibration"
	},
	211: {
		0: {
			field: "resting_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		1: {
			field: "current_day_resting_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "monitoring_hr_data"
	},
	216: {
		0: {
			field: "reference_mesg",
			type: "mesg_num",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "reference_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "time_in_hr_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		3: {
			field: "time_in_speed_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		4: {
			field: "time_in_cadence_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		5: {
			field: "time_in_power_zone",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		6: {
			field: "hr_zone_high_boundary",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		7: {
			field: "speed_zone_high_boundary",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		8: {
			field: "cadence_zone_high_bondary",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "rpm"
		},
		9: {
			field: "power_zone_high_boundary",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "watts"
		},
		10: {
			field: "hr_calc_type",
			type: "hr_zone_calc",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "max_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		12: {
			field: "resting_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "threshold_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		14: {
			field: "pwr_calc_type",
			type: "pwr_zone_calc",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		15: {
			field: "functional_threshold_power",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "time_in_zone"
	},
	225: {
		0: {
			field: "duration",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		3: {
			field: "repetitions",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "weight",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 16,
			offset: 0,
			units: "kg"
		},
		5: {
			field: "set_type",
			type: "set_type",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "start_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "category",
			type: "exercise_category",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "category_subtype",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "weight_display_unit",
			type: "fit_base_unit",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "wkt_step_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "set"
	},
	227: {
		0: {
			field: "stress_level_value",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "stress_level_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "stress_level"
	},
	229: {
		0: {
			field: "update_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "vo2_max",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 10,
			offset: 0,
			units: "mL/kg/min"
		},
		5: {
			field: "sport",
			type: "sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "sub_sport",
			type: "sub_sport",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "max_met_category",
			type: "max_met_category",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "calibrated_data",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		12: {
			field: "hr_source",
			type: "max_met_heart_rate_source",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "speed_source",
			type: "max_met_speed_source",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "max_met_data"
	},
	258: {
		0: {
			field: "name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "model",
			type: "tissue_model_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "gf_low",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		3: {
			field: "gf_high",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		4: {
			field: "water_type",
			type: "water_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "water_density",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kg/m^3"
		},
		6: {
			field: "po2_warn",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		7: {
			field: "po2_critical",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		8: {
			field: "po2_deco",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		9: {
			field: "safety_stop_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "bottom_depth",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "bottom_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		12: {
			field: "apnea_countdown_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "apnea_countdown_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		14: {
			field: "backlight_mode",
			type: "dive_backlight_mode",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		15: {
			field: "backlight_brightness",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		16: {
			field: "backlight_timeout",
			type: "backlight_timeout",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		17: {
			field: "repeat_dive_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		18: {
			field: "safety_stop_time",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		19: {
			field: "heart_rate_source_type",
			type: "source_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		20: {
			field: "heart_rate_source",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		21: {
			field: "travel_gas",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		22: {
			field: "ccr_low_setpoint_switch_mode",
			type: "ccr_setpoint_switch_mode",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		23: {
			field: "ccr_low_setpoint",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		24: {
			field: "ccr_low_setpoint_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		25: {
			field: "ccr_high_setpoint_switch_mode",
			type: "ccr_setpoint_switch_mode",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		26: {
			field: "ccr_high_setpoint",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 100,
			offset: 0,
			units: "percent"
		},
		27: {
			field: "ccr_high_setpoint_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		29: {
			field: "gas_consumption_display",
			type: "gas_consumption_rate_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		30: {
			field: "up_key_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		35: {
			field: "dive_sounds",
			type: "tone",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		36: {
			field: "last_stop_multiple",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 10,
			offset: 0,
			units: ""
		},
		37: {
			field: "no_fly_time_mode",
			type: "no_fly_time_mode",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "dive_settings"
	},
	259: {
		0: {
			field: "helium_content",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		1: {
			field: "oxygen_content",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		2: {
			field: "status",
			type: "dive_gas_status",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "mode",
			type: "dive_gas_mode",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "dive_gas"
	},
	262: {
		0: {
			field: "depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		1: {
			field: "time",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		2: {
			field: "enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "alarm_type",
			type: "dive_alarm_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "sound",
			type: "tone",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "dive_types",
			type: "sub_sport",
			baseType: "enum",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "id",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "popup_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "trigger_on_descent",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "trigger_on_ascent",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "repeating",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "speed",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "mps"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "dive_alarm"
	},
	264: {
		0: {
			field: "exercise_category",
			type: "exercise_category",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "exercise_name",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "wkt_step_name",
			type: "string",
			baseType: "string",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "exercise_title"
	},
	268: {
		0: {
			field: "reference_mesg",
			type: "mesg_num",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "reference_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "avg_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		3: {
			field: "max_depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		4: {
			field: "surface_interval",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		5: {
			field: "start_cns",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		6: {
			field: "end_cns",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		7: {
			field: "start_n2",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		8: {
			field: "end_n2",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		9: {
			field: "o2_toxicity",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "OTUs"
		},
		10: {
			field: "dive_number",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "bottom_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		12: {
			field: "avg_pressure_sac",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "bar/min"
		},
		13: {
			field: "avg_volume_sac",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "L/min"
		},
		14: {
			field: "avg_rmv",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "L/min"
		},
		15: {
			field: "descent_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		16: {
			field: "ascent_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		17: {
			field: "avg_ascent_rate",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		22: {
			field: "avg_descent_rate",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		23: {
			field: "max_ascent_rate",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		24: {
			field: "max_descent_rate",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		25: {
			field: "hang_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "dive_summary"
	},
	269: {
		0: {
			field: "reading_spo2",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		1: {
			field: "reading_confidence",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "mode",
			type: "spo2_measurement_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "spo2_data"
	},
	275: {
		0: {
			field: "sleep_level",
			type: "sleep_level",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "sleep_level"
	},
	285: {
		0: {
			field: "distance",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		1: {
			field: "height",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		2: {
			field: "rotations",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "hang_time",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		4: {
			field: "score",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		6: {
			field: "position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		7: {
			field: "speed",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		8: {
			field: "enhanced_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "jump"
	},
	289: {
		0: {
			field: "time",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "energy_total",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "zero_cross_cnt",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "instance",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "time_above_threshold",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 25,
			offset: 0,
			units: "s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "aad_accel_features"
	},
	290: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "time",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "beat_intervals"
	},
	297: {
		0: {
			field: "respiration_rate",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "breaths/min"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "respiration_rate"
	},
	302: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "sampling_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		2: {
			field: "accel_x",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1.024,
			offset: 0,
			units: "mG"
		},
		3: {
			field: "accel_y",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1.024,
			offset: 0,
			units: "mG"
		},
		4: {
			field: "accel_z",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1.024,
			offset: 0,
			units: "mG"
		},
		5: {
			field: "timestamp32k",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_accelerometer_data"
	},
	304: {
		0: {
			field: "processing_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "steps",
			type: "uint32",
			baseType: "uint32",
			array: true,
			scale: 1,
			offset: 0,
			units: "steps"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_step_data"
	},
	305: {
		0: {
			field: "processing_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "reading_spo2",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		2: {
			field: "confidence",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_spo2_data"
	},
	306: {
		0: {
			field: "processing_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "stress_level",
			type: "sint8",
			baseType: "sint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "hsa_stress_data"
	},
	307: {
		0: {
			field: "processing_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "respiration_rate",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 100,
			offset: 0,
			units: "breaths/min"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_respiration_data"
	},
	308: {
		0: {
			field: "processing_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "status",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_heart_rate_data"
	},
	312: {
		0: {
			field: "split_type",
			type: "split_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "total_elapsed_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		2: {
			field: "total_timer_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		3: {
			field: "total_distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		4: {
			field: "avg_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		9: {
			field: "start_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		13: {
			field: "total_ascent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		14: {
			field: "total_descent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		21: {
			field: "start_position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		22: {
			field: "start_position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		23: {
			field: "end_position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		24: {
			field: "end_position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		25: {
			field: "max_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		26: {
			field: "avg_vert_speed",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		27: {
			field: "end_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		28: {
			field: "total_calories",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		74: {
			field: "start_elevation",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 5,
			offset: -500,
			units: "m"
		},
		78: {
			field: "active_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		107: {
			field: "beginning_potential_stamina",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "percent"
		},
		108: {
			field: "ending_potential_stamina",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "percent"
		},
		109: {
			field: "min_stamina",
			type: "uint8",
			scale: 1,
			offset: 0,
			units: "percent"
		},
		110: {
			field: "total_moving_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "split"
	},
	313: {
		0: {
			field: "split_type",
			type: "split_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "num_splits",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "total_timer_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		5: {
			field: "total_distance",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "m"
		},
		6: {
			field: "avg_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		7: {
			field: "max_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		8: {
			field: "total_ascent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		9: {
			field: "total_descent",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		10: {
			field: "avg_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		11: {
			field: "max_heart_rate",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: "bpm"
		},
		12: {
			field: "avg_vert_speed",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		13: {
			field: "total_calories",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "kcal"
		},
		65: {
			field: "active_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		77: {
			field: "total_moving_time",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "s"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "split_summary"
	},
	314: {
		0: {
			field: "processing_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "level",
			type: "sint8",
			baseType: "sint8",
			array: true,
			scale: 1,
			offset: 0,
			units: "percent"
		},
		2: {
			field: "charged",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "uncharged",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_body_battery_data"
	},
	315: {
		0: {
			field: "event_id",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_event"
	},
	317: {
		0: {
			field: "position_lat",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		1: {
			field: "position_long",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "semicircles"
		},
		2: {
			field: "climb_pro_event",
			type: "climb_pro_event",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "climb_number",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "climb_category",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "current_dist",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: "m"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "climb_pro"
	},
	319: {
		0: {
			field: "sensor",
			type: "ant_channel_id",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "pressure",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "bar"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "tank_update"
	},
	323: {
		0: {
			field: "sensor",
			type: "ant_channel_id",
			baseType: "uint32z",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "start_pressure",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "bar"
		},
		2: {
			field: "end_pressure",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: "bar"
		},
		3: {
			field: "volume_used",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 100,
			offset: 0,
			units: "L"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "tank_summary"
	},
	346: {
		0: {
			field: "combined_awake_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "awake_time_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "awakenings_count_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "deep_sleep_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "sleep_duration_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "light_sleep_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "overall_sleep_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "sleep_quality_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "sleep_recovery_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "rem_sleep_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "sleep_restlessness_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "awakenings_count",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		14: {
			field: "interruptions_score",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		15: {
			field: "average_stress_during_sleep",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 100,
			offset: 0,
			units: ""
		},
		name: "sleep_assessment"
	},
	370: {
		0: {
			field: "weekly_average",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 128,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "last_night_average",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 128,
			offset: 0,
			units: "ms"
		},
		2: {
			field: "last_night5_min_high",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 128,
			offset: 0,
			units: "ms"
		},
		3: {
			field: "baseline_low_upper",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 128,
			offset: 0,
			units: "ms"
		},
		4: {
			field: "baseline_balanced_lower",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 128,
			offset: 0,
			units: "ms"
		},
		5: {
			field: "baseline_balanced_upper",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 128,
			offset: 0,
			units: "ms"
		},
		6: {
			field: "status",
			type: "hrv_status",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "hrv_status_summary"
	},
	371: {
		0: {
			field: "value",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 128,
			offset: 0,
			units: "ms"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "hrv_value"
	},
	372: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "data",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "time",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		3: {
			field: "quality",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "gap",
			type: "uint8",
			baseType: "uint8",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "raw_bbi"
	},
	375: {
		0: {
			field: "device_index",
			type: "device_index",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "battery_voltage",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 256,
			offset: 0,
			units: "V"
		},
		2: {
			field: "battery_status",
			type: "battery_status",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "battery_identifier",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "device_aux_battery_info"
	},
	376: {
		0: {
			field: "timestamp_ms",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "ms"
		},
		1: {
			field: "sampling_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "1/32768 s"
		},
		2: {
			field: "gyro_x",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 28.57143,
			offset: 0,
			units: "deg/s"
		},
		3: {
			field: "gyro_y",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 28.57143,
			offset: 0,
			units: "deg/s"
		},
		4: {
			field: "gyro_z",
			type: "sint16",
			baseType: "sint16",
			array: true,
			scale: 28.57143,
			offset: 0,
			units: "deg/s"
		},
		5: {
			field: "timestamp32k",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "1/32768 s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_gyroscope_data"
	},
	387: {
		0: {
			field: "min_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		1: {
			field: "max_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		2: {
			field: "avg_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		3: {
			field: "shot_count",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "projectile_type",
			type: "projectile_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "grain_weight",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 10,
			offset: 0,
			units: "gr"
		},
		6: {
			field: "standard_deviation",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "chrono_shot_session"
	},
	388: {
		0: {
			field: "shot_speed",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m/s"
		},
		1: {
			field: "shot_num",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "chrono_shot_data"
	},
	389: {
		0: {
			field: "data",
			type: "byte",
			baseType: "byte",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "data_size",
			type: "uint8",
			baseType: "uint8",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_configuration_data"
	},
	393: {
		0: {
			field: "depth",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "m"
		},
		1: {
			field: "time",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		2: {
			field: "enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		3: {
			field: "alarm_type",
			type: "dive_alarm_type",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "sound",
			type: "tone",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "dive_types",
			type: "sub_sport",
			baseType: "enum",
			array: true,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "id",
			type: "uint32",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "popup_enabled",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		8: {
			field: "trigger_on_descent",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		9: {
			field: "trigger_on_ascent",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		10: {
			field: "repeating",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		11: {
			field: "speed",
			type: "sint32",
			baseType: "sint32",
			array: false,
			scale: 1e3,
			offset: 0,
			units: "mps"
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "dive_apnea_alarm"
	},
	398: {
		0: {
			field: "local_timestamp",
			type: "local_date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		1: {
			field: "average_deviation",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		2: {
			field: "average7_day_deviation",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		4: {
			field: "nightly_value",
			type: "float32",
			baseType: "float32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "skin_temp_overnight"
	},
	409: {
		0: {
			field: "processing_interval",
			type: "uint16",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		1: {
			field: "value",
			type: "uint16",
			baseType: "uint16",
			array: true,
			scale: 1e3,
			offset: 0,
			units: "C"
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "s"
		},
		name: "hsa_wrist_temperature_data"
	},
	412: {
		0: {
			field: "start_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "seconds"
		},
		1: {
			field: "start_timezone_offset",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "minutes"
		},
		2: {
			field: "end_time",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: "seconds"
		},
		3: {
			field: "end_timezone_offset",
			type: "sint16",
			baseType: "sint16",
			array: false,
			scale: 1,
			offset: 0,
			units: "minutes"
		},
		4: {
			field: "feedback",
			type: "nap_period_feedback",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		5: {
			field: "is_deleted",
			type: "bool",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		6: {
			field: "source",
			type: "nap_source",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		7: {
			field: "update_timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "nap_event"
	},
	470: {
		0: {
			field: "severity",
			type: "sleep_disruption_severity",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		254: {
			field: "message_index",
			type: "message_index",
			baseType: "uint16",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "sleep_disruption_severity_period"
	},
	471: {
		0: {
			field: "severity",
			type: "sleep_disruption_severity",
			baseType: "enum",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		253: {
			field: "timestamp",
			type: "date_time",
			baseType: "uint32",
			array: false,
			scale: 1,
			offset: 0,
			units: ""
		},
		name: "sleep_disruption_overnight_severity"
	}
};
const PROFILE_TYPES = {
	activity: {
		0: "manual",
		1: "auto_multi_sport"
	},
	activity_class: {
		100: "level_max",
		127: "level",
		128: "athlete"
	},
	activity_level: {
		0: "low",
		1: "medium",
		2: "high"
	},
	activity_subtype: {
		0: "generic",
		1: "treadmill",
		2: "street",
		3: "trail",
		4: "track",
		5: "spin",
		6: "indoor_cycling",
		7: "road",
		8: "mountain",
		9: "downhill",
		10: "recumbent",
		11: "cyclocross",
		12: "hand_cycling",
		13: "track_cycling",
		14: "indoor_rowing",
		15: "elliptical",
		16: "stair_climbing",
		17: "lap_swimming",
		18: "open_water",
		254: "all"
	},
	activity_type: {
		0: "generic",
		1: "running",
		2: "cycling",
		3: "transition",
		4: "fitness_equipment",
		5: "swimming",
		6: "walking",
		8: "sedentary",
		254: "all"
	},
	analog_watchface_layout: {
		0: "minimal",
		1: "traditional",
		2: "modern"
	},
	ant_channel_id: {
		65535: "ant_device_number",
		16711680: "ant_device_type",
		251658240: "ant_transmission_type_lower_nibble",
		4026531840: "ant_extended_device_number_upper_nibble"
	},
	ant_network: {
		0: "public",
		1: "antplus",
		2: "antfs",
		3: "private"
	},
	antplus_device_type: {
		1: "antfs",
		11: "bike_power",
		12: "environment_sensor_legacy",
		15: "multi_sport_speed_distance",
		16: "control",
		17: "fitness_equipment",
		18: "blood_pressure",
		19: "geocache_node",
		20: "light_electric_vehicle",
		25: "env_sensor",
		26: "racquet",
		27: "control_hub",
		31: "muscle_oxygen",
		34: "shifting",
		35: "bike_light_main",
		36: "bike_light_shared",
		38: "exd",
		40: "bike_radar",
		46: "bike_aero",
		119: "weight_scale",
		120: "heart_rate",
		121: "bike_speed_cadence",
		122: "bike_cadence",
		123: "bike_speed",
		124: "stride_speed_distance"
	},
	attitude_stage: {
		0: "failed",
		1: "aligning",
		2: "degraded",
		3: "valid"
	},
	attitude_validity: {
		1: "track_angle_heading_valid",
		2: "pitch_valid",
		4: "roll_valid",
		8: "lateral_body_accel_valid",
		16: "normal_body_accel_valid",
		32: "turn_rate_valid",
		64: "hw_fail",
		128: "mag_invalid",
		256: "no_gps",
		512: "gps_invalid",
		1024: "solution_coasting",
		2048: "true_track_angle",
		4096: "magnetic_heading"
	},
	auto_activity_detect: {
		0: "none",
		1: "running",
		2: "cycling",
		4: "swimming",
		8: "walking",
		32: "elliptical",
		1024: "sedentary"
	},
	autolap_trigger: {
		0: "time",
		1: "distance",
		2: "position_start",
		3: "position_lap",
		4: "position_waypoint",
		5: "position_marked",
		6: "off",
		13: "auto_select"
	},
	autoscroll: {
		0: "none",
		1: "slow",
		2: "medium",
		3: "fast"
	},
	auto_sync_frequency: {
		0: "never",
		1: "occasionally",
		2: "frequent",
		3: "once_a_day",
		4: "remote"
	},
	backlight_mode: {
		0: "off",
		1: "manual",
		2: "key_and_messages",
		3: "auto_brightness",
		4: "smart_notifications",
		5: "key_and_messages_night",
		6: "key_and_messages_and_smart_notifications"
	},
	backlight_timeout: { 0: "infinite" },
	banded_exercises_exercise_name: {
		1: "ab_twist",
		2: "back_extension",
		3: "bicycle_crunch",
		4: "calf_raises",
		5: "chest_press",
		6: "clam_shells",
		7: "curl",
		8: "deadbug",
		9: "deadlift",
		10: "donkey_kick",
		11: "external_rotation",
		12: "external_rotation_at90_degree_abduction",
		13: "face_pull",
		14: "fire_hydrant",
		15: "fly",
		16: "front_raise",
		17: "glute_bridge",
		18: "hamstring_curls",
		19: "high_plank_leg_lifts",
		20: "hip_extension",
		21: "internal_rotation",
		22: "jumping_jack",
		23: "kneeling_crunch",
		24: "lateral_band_walks",
		25: "lateral_raise",
		26: "latpull",
		27: "leg_abduction",
		28: "leg_adduction",
		29: "leg_extension",
		30: "lunge",
		31: "plank",
		32: "pull_apart",
		33: "push_ups",
		34: "reverse_crunch",
		35: "row",
		36: "shoulder_abduction",
		37: "shoulder_extension",
		38: "shoulder_external_rotation",
		39: "shoulder_flexion_to90_degrees",
		40: "side_plank_leg_lifts",
		41: "side_raise",
		42: "squat",
		43: "squat_to_press",
		44: "tricep_extension",
		45: "tricep_kickback",
		46: "upright_row",
		47: "wall_crawl_with_external_rotation",
		49: "lateral_raise_wheelchair",
		50: "triceps_extension_wheelchair",
		51: "chest_fly_incline_wheelchair",
		52: "chest_fly_decline_wheelchair",
		53: "pull_down_wheelchair",
		54: "straight_arm_pull_down_wheelchair",
		55: "curl_wheelchair",
		56: "overhead_curl_wheelchair",
		57: "face_pull_wheelchair",
		58: "around_the_world_wheelchair",
		59: "pull_apart_wheelchair",
		60: "side_curl_wheelchair",
		61: "overhead_press_wheelchair"
	},
	battery_status: {
		1: "new",
		2: "good",
		3: "ok",
		4: "low",
		5: "critical",
		6: "charging",
		7: "unknown"
	},
	battle_rope_exercise_name: {
		0: "alternating_figure_eight",
		1: "alternating_jump_wave",
		2: "alternating_kneeling_to_standing_wave",
		3: "alternating_lunge_wave",
		4: "alternating_squat_wave",
		5: "alternating_wave",
		6: "alternating_wave_with_lateral_shuffle",
		7: "clap_wave",
		8: "double_arm_figure_eight",
		9: "double_arm_side_to_side_snake",
		10: "double_arm_side_wave",
		11: "double_arm_slam",
		12: "double_arm_wave",
		13: "grappler_toss",
		14: "hip_toss",
		15: "in_and_out_wave",
		16: "inside_circle",
		17: "jumping_jacks",
		18: "outside_circle",
		19: "rainbow",
		20: "side_plank_wave",
		21: "sidewinder",
		22: "sitting_russian_twist",
		23: "snake_wave",
		24: "split_jack",
		25: "stage_coach",
		26: "ultimate_warrior",
		27: "upper_cuts"
	},
	bench_press_exercise_name: {
		0: "alternating_dumbbell_chest_press_on_swiss_ball",
		1: "barbell_bench_press",
		2: "barbell_board_bench_press",
		3: "barbell_floor_press",
		4: "close_grip_barbell_bench_press",
		5: "decline_dumbbell_bench_press",
		6: "dumbbell_bench_press",
		7: "dumbbell_floor_press",
		8: "incline_barbell_bench_press",
		9: "incline_dumbbell_bench_press",
		10: "incline_smith_machine_bench_press",
		11: "isometric_barbell_bench_press",
		12: "kettlebell_chest_press",
		13: "neutral_grip_dumbbell_bench_press",
		14: "neutral_grip_dumbbell_incline_bench_press",
		15: "one_arm_floor_press",
		16: "weighted_one_arm_floor_press",
		17: "partial_lockout",
		18: "reverse_grip_barbell_bench_press",
		19: "reverse_grip_incline_bench_press",
		20: "single_arm_cable_chest_press",
		21: "single_arm_dumbbell_bench_press",
		22: "smith_machine_bench_press",
		23: "swiss_ball_dumbbell_chest_press",
		24: "triple_stop_barbell_bench_press",
		25: "wide_grip_barbell_bench_press",
		26: "alternating_dumbbell_chest_press"
	},
	bike_exercise_name: {
		0: "bike",
		1: "ride",
		2: "sprint"
	},
	bike_light_beam_angle_mode: {
		0: "manual",
		1: "auto"
	},
	bike_light_network_config_type: {
		0: "auto",
		4: "individual",
		5: "high_visibility",
		6: "trail"
	},
	bike_outdoor_exercise_name: { 0: "bike" },
	ble_device_type: {
		0: "connected_gps",
		1: "heart_rate",
		2: "bike_power",
		3: "bike_speed_cadence",
		4: "bike_speed",
		5: "bike_cadence",
		6: "footpod",
		7: "bike_trainer"
	},
	body_location: {
		0: "left_leg",
		1: "left_calf",
		2: "left_shin",
		3: "left_hamstring",
		4: "left_quad",
		5: "left_glute",
		6: "right_leg",
		7: "right_calf",
		8: "right_shin",
		9: "right_hamstring",
		10: "right_quad",
		11: "right_glute",
		12: "torso_back",
		13: "left_lower_back",
		14: "left_upper_back",
		15: "right_lower_back",
		16: "right_upper_back",
		17: "torso_front",
		18: "left_abdomen",
		19: "left_chest",
		20: "right_abdomen",
		21: "right_chest",
		22: "left_arm",
		23: "left_shoulder",
		24: "left_bicep",
		25: "left_tricep",
		26: "left_brachioradialis",
		27: "left_forearm_extensors",
		28: "right_arm",
		29: "right_shoulder",
		30: "right_bicep",
		31: "right_tricep",
		32: "right_brachioradialis",
		33: "right_forearm_extensors",
		34: "neck",
		35: "throat",
		36: "waist_mid_back",
		37: "waist_front",
		38: "waist_left",
		39: "waist_right"
	},
	bp_status: {
		0: "no_error",
		1: "error_incomplete_data",
		2: "error_no_measurement",
		3: "error_data_out_of_range",
		4: "error_irregular_heart_rate"
	},
	calf_raise_exercise_name: {
		0: "3_way_calf_raise",
		1: "3_way_weighted_calf_raise",
		2: "3_way_single_leg_calf_raise",
		3: "3_way_weighted_single_leg_calf_raise",
		4: "donkey_calf_raise",
		5: "weighted_donkey_calf_raise",
		6: "seated_calf_raise",
		7: "weighted_seated_calf_raise",
		8: "seated_dumbbell_toe_raise",
		9: "single_leg_bent_knee_calf_raise",
		10: "weighted_single_leg_bent_knee_calf_raise",
		11: "single_leg_decline_push_up",
		12: "single_leg_donkey_calf_raise",
		13: "weighted_single_leg_donkey_calf_raise",
		14: "single_leg_hip_raise_with_knee_hold",
		15: "single_leg_standing_calf_raise",
		16: "single_leg_standing_dumbbell_calf_raise",
		17: "standing_barbell_calf_raise",
		18: "standing_calf_raise",
		19: "weighted_standing_calf_raise",
		20: "standing_dumbbell_calf_raise"
	},
	camera_event_type: {
		0: "video_start",
		1: "video_split",
		2: "video_end",
		3: "photo_taken",
		4: "video_second_stream_start",
		5: "video_second_stream_split",
		6: "video_second_stream_end",
		7: "video_split_start",
		8: "video_second_stream_split_start",
		11: "video_pause",
		12: "video_second_stream_pause",
		13: "video_resume",
		14: "video_second_stream_resume"
	},
	camera_orientation_type: {
		0: "camera_orientation0",
		1: "camera_orientation90",
		2: "camera_orientation180",
		3: "camera_orientation270"
	},
	cardio_exercise_name: {
		0: "bob_and_weave_circle",
		1: "weighted_bob_and_weave_circle",
		2: "cardio_core_crawl",
		3: "weighted_cardio_core_crawl",
		4: "double_under",
		5: "weighted_double_under",
		6: "jump_rope",
		7: "weighted_jump_rope",
		8: "jump_rope_crossover",
		9: "weighted_jump_rope_crossover",
		10: "jump_rope_jog",
		11: "weighted_jump_rope_jog",
		12: "jumping_jacks",
		13: "weighted_jumping_jacks",
		14: "ski_moguls",
		15: "weighted_ski_moguls",
		16: "split_jacks",
		17: "weighted_split_jacks",
		18: "squat_jacks",
		19: "weighted_squat_jacks",
		20: "triple_under",
		21: "weighted_triple_under",
		22: "elliptical",
		23: "spinning",
		24: "pole_paddle_forward_wheelchair",
		25: "pole_paddle_backward_wheelchair",
		26: "pole_handcycle_forward_wheelchair",
		27: "pole_handcycle_backward_wheelchair",
		28: "pole_rainbow_wheelchair",
		29: "double_punch_forward_wheelchair",
		30: "double_punch_down_wheelchair",
		31: "double_punch_sideways_wheelchair",
		32: "double_punch_up_wheelchair",
		33: "sit_ski_wheelchair",
		34: "sitting_jacks_wheelchair",
		35: "punch_forward_wheelchair",
		36: "punch_down_wheelchair",
		37: "punch_sideways_wheelchair",
		38: "punch_up_wheelchair",
		39: "punch_bag_wheelchair",
		40: "pole_dd_ff_uu_wheelchair",
		41: "butterfly_arms_wheelchair",
		42: "punch"
	},
	carry_exercise_name: {
		0: "bar_holds",
		1: "farmers_walk",
		2: "farmers_walk_on_toes",
		3: "hex_dumbbell_hold",
		4: "overhead_carry",
		5: "dumbbell_waiter_carry",
		6: "farmers_carry_walk_lunge",
		7: "farmers_carry",
		8: "farmers_carry_on_toes"
	},
	ccr_setpoint_switch_mode: {
		0: "manual",
		1: "automatic"
	},
	checksum: {
		0: "clear",
		1: "ok"
	},
	chop_exercise_name: {
		0: "cable_pull_through",
		1: "cable_rotational_lift",
		2: "cable_woodchop",
		3: "cross_chop_to_knee",
		4: "weighted_cross_chop_to_knee",
		5: "dumbbell_chop",
		6: "half_kneeling_rotation",
		7: "weighted_half_kneeling_rotation",
		8: "half_kneeling_rotational_chop",
		9: "half_kneeling_rotational_reverse_chop",
		10: "half_kneeling_stability_chop",
		11: "half_kneeling_stability_reverse_chop",
		12: "kneeling_rotational_chop",
		13: "kneeling_rotational_reverse_chop",
		14: "kneeling_stability_chop",
		15: "kneeling_woodchopper",
		16: "medicine_ball_wood_chops",
		17: "power_squat_chops",
		18: "weighted_power_squat_chops",
		19: "standing_rotational_chop",
		20: "standing_split_rotational_chop",
		21: "standing_split_rotational_reverse_chop",
		22: "standing_stability_reverse_chop"
	},
	climb_pro_event: {
		0: "approach",
		1: "start",
		2: "complete"
	},
	comm_timeout_type: {
		0: "wildcard_pairing_timeout",
		1: "pairing_timeout",
		2: "connection_lost",
		3: "connection_timeout"
	},
	connectivity_capabilities: {
		1: "bluetooth",
		2: "bluetooth_le",
		4: "ant",
		8: "activity_upload",
		16: "course_download",
		32: "workout_download",
		64: "live_track",
		128: "weather_conditions",
		256: "weather_alerts",
		512: "gps_ephemeris_download",
		1024: "explicit_archive",
		2048: "setup_incomplete",
		4096: "continue_sync_after_software_update",
		8192: "connect_iq_app_download",
		16384: "golf_course_download",
		32768: "device_initiates_sync",
		65536: "connect_iq_watch_app_download",
		131072: "connect_iq_widget_download",
		262144: "connect_iq_watch_face_download",
		524288: "connect_iq_data_field_download",
		1048576: "connect_iq_app_managment",
		2097152: "swing_sensor",
		4194304: "swing_sensor_remote",
		8388608: "incident_detection",
		16777216: "audio_prompts",
		33554432: "wifi_verification",
		67108864: "true_up",
		134217728: "find_my_watch",
		268435456: "remote_manual_sync",
		536870912: "live_track_auto_start",
		1073741824: "live_track_messaging",
		2147483648: "instant_input"
	},
	core_exercise_name: {
		0: "abs_jabs",
		1: "weighted_abs_jabs",
		2: "alternating_plate_reach",
		3: "barbell_rollout",
		4: "weighted_barbell_rollout",
		5: "body_bar_oblique_twist",
		6: "cable_core_press",
		7: "cable_side_bend",
		8: "side_bend",
		9: "weighted_side_bend",
		10: "crescent_circle",
		11: "weighted_crescent_circle",
		12: "cycling_russian_twist",
		13: "weighted_cycling_russian_twist",
		14: "elevated_feet_russian_twist",
		15: "weighted_elevated_feet_russian_twist",
		16: "half_turkish_get_up",
		17: "kettlebell_windmill",
		18: "kneeling_ab_wheel",
		19: "weighted_kneeling_ab_wheel",
		20: "modified_front_lever",
		21: "open_knee_tucks",
		22: "weighted_open_knee_tucks",
		23: "side_abs_leg_lift",
		24: "weighted_side_abs_leg_lift",
		25: "swiss_ball_jackknife",
		26: "weighted_swiss_ball_jackknife",
		27: "swiss_ball_pike",
		28: "weighted_swiss_ball_pike",
		29: "swiss_ball_rollout",
		30: "weighted_swiss_ball_rollout",
		31: "triangle_hip_press",
		32: "weighted_triangle_hip_press",
		33: "trx_suspended_jackknife",
		34: "weighted_trx_suspended_jackknife",
		35: "u_boat",
		36: "weighted_u_boat",
		37: "windmill_switches",
		38: "weighted_windmill_switches",
		39: "alternating_slide_out",
		40: "weighted_alternating_slide_out",
		41: "ghd_back_extensions",
		42: "weighted_ghd_back_extensions",
		43: "overhead_walk",
		44: "inchworm",
		45: "weighted_modified_front_lever",
		46: "russian_twist",
		47: "abdominal_leg_rotations",
		48: "arm_and_leg_extension_on_knees",
		49: "bicycle",
		50: "bicep_curl_with_leg_extension",
		51: "cat_cow",
		52: "corkscrew",
		53: "criss_cross",
		54: "criss_cross_with_ball",
		55: "double_leg_stretch",
		56: "knee_folds",
		57: "lower_lift",
		58: "neck_pull",
		59: "pelvic_clocks",
		60: "roll_over",
		61: "roll_up",
		62: "rolling",
		63: "rowing1",
		64: "rowing2",
		65: "scissors",
		66: "single_leg_circles",
		67: "single_leg_stretch",
		68: "snake_twist1_and2",
		69: "swan",
		70: "swimming",
		71: "teaser",
		72: "the_hundred",
		73: "bicep_curl_with_leg_extension_with_weights",
		75: "hanging_l_sit",
		77: "lower_lift_with_weights",
		79: "ring_l_sit",
		80: "rowing1_with_weights",
		81: "rowing2_with_weights",
		82: "scissors_with_weights",
		83: "single_leg_stretch_with_weights",
		84: "toes_to_elbows",
		85: "weighted_criss_cross",
		86: "weighted_double_leg_stretch",
		87: "weighted_the_hundred",
		88: "l_sit",
		89: "turkish_get_up",
		90: "weighted_ring_l_sit",
		91: "weighted_hanging_l_sit",
		92: "weighted_l_sit",
		93: "side_bend_low_wheelchair",
		94: "side_bend_mid_wheelchair",
		95: "side_bend_high_wheelchair",
		96: "seated_side_bend"
	},
	course_capabilities: {
		1: "processed",
		2: "valid",
		4: "time",
		8: "distance",
		16: "position",
		32: "heart_rate",
		64: "power",
		128: "cadence",
		256: "training",
		512: "navigation",
		1024: "bikeway",
		4096: "aviation"
	},
	course_point: FIT_PROFILE_COURSE_POINTS,
	crunch_exercise_name: {
		0: "bicycle_crunch",
		1: "cable_crunch",
		2: "circular_arm_crunch",
		3: "crossed_arms_crunch",
		4: "weighted_crossed_arms_crunch",
		5: "cross_leg_reverse_crunch",
		6: "weighted_cross_leg_reverse_crunch",
		7: "crunch_chop",
		8: "weighted_crunch_chop",
		9: "double_crunch",
		10: "weighted_double_crunch",
		11: "elbow_to_knee_crunch",
		12: "weighted_elbow_to_knee_crunch",
		13: "flutter_kicks",
		14: "weighted_flutter_kicks",
		15: "foam_roller_reverse_crunch_on_bench",
		16: "weighted_foam_roller_reverse_crunch_on_bench",
		17: "foam_roller_reverse_crunch_with_dumbbell",
		18: "foam_roller_reverse_crunch_with_medicine_ball",
		19: "frog_press",
		20: "hanging_knee_raise_oblique_crunch",
		21: "weighted_hanging_knee_raise_oblique_crunch",
		22: "hip_crossover",
		23: "weighted_hip_crossover",
		24: "hollow_rock",
		25: "weighted_hollow_rock",
		26: "incline_reverse_crunch",
		27: "weighted_incline_reverse_crunch",
		28: "kneeling_cable_crunch",
		29: "kneeling_cross_crunch",
		30: "weighted_kneeling_cross_crunch",
		31: "kneeling_oblique_cable_crunch",
		32: "knees_to_elbow",
		33: "leg_extensions",
		34: "weighted_leg_extensions",
		35: "leg_levers",
		36: "mcgill_curl_up",
		37: "weighted_mcgill_curl_up",
		38: "modified_pilates_roll_up_with_ball",
		39: "weighted_modified_pilates_roll_up_with_ball",
		40: "pilates_crunch",
		41: "weighted_pilates_crunch",
		42: "pilates_roll_up_with_ball",
		43: "weighted_pilates_roll_up_with_ball",
		44: "raised_legs_crunch",
		45: "weighted_raised_legs_crunch",
		46: "reverse_crunch",
		47: "weighted_reverse_crunch",
		48: "reverse_crunch_on_a_bench",
		49: "weighted_reverse_crunch_on_a_bench",
		50: "reverse_curl_and_lift",
		51: "weighted_reverse_curl_and_lift",
		52: "rotational_lift",
		53: "weighted_rotational_lift",
		54: "seated_alternating_reverse_crunch",
		55: "weighted_seated_alternating_reverse_crunch",
		56: "seated_leg_u",
		57: "weighted_seated_leg_u",
		58: "side_to_side_crunch_and_weave",
		59: "weighted_side_to_side_crunch_and_weave",
		60: "single_leg_reverse_crunch",
		61: "weighted_single_leg_reverse_crunch",
		62: "skater_crunch_cross",
		63: "weighted_skater_crunch_cross",
		64: "standing_cable_crunch",
		65: "standing_side_crunch",
		66: "step_climb",
		67: "weighted_step_climb",
		68: "swiss_ball_crunch",
		69: "swiss_ball_reverse_crunch",
		70: "weighted_swiss_ball_reverse_crunch",
		71: "swiss_ball_russian_twist",
		72: "weighted_swiss_ball_russian_twist",
		73: "swiss_ball_side_crunch",
		74: "weighted_swiss_ball_side_crunch",
		75: "thoracic_crunches_on_foam_roller",
		76: "weighted_thoracic_crunches_on_foam_roller",
		77: "triceps_crunch",
		78: "weighted_bicycle_crunch",
		79: "weighted_crunch",
		80: "weighted_swiss_ball_crunch",
		81: "toes_to_bar",
		82: "weighted_toes_to_bar",
		83: "crunch",
		84: "straight_leg_crunch_with_ball",
		86: "leg_climb_crunch"
	},
	curl_exercise_name: {
		0: "alternating_dumbbell_biceps_curl",
		1: "alternating_dumbbell_biceps_curl_on_swiss_ball",
		2: "alternating_incline_dumbbell_biceps_curl",
		3: "barbell_biceps_curl",
		4: "barbell_reverse_wrist_curl",
		5: "barbell_wrist_curl",
		6: "behind_the_back_barbell_reverse_wrist_curl",
		7: "behind_the_back_one_arm_cable_curl",
		8: "cable_biceps_curl",
		9: "cable_hammer_curl",
		10: "cheating_barbell_biceps_curl",
		11: "close_grip_ez_bar_biceps_curl",
		12: "cross_body_dumbbell_hammer_curl",
		13: "dead_hang_biceps_curl",
		14: "decline_hammer_curl",
		15: "dumbbell_biceps_curl_with_static_hold",
		16: "dumbbell_hammer_curl",
		17: "dumbbell_reverse_wrist_curl",
		18: "dumbbell_wrist_curl",
		19: "ez_bar_preacher_curl",
		20: "forward_bend_biceps_curl",
		21: "hammer_curl_to_press",
		22: "incline_dumbbell_biceps_curl",
		23: "incline_offset_thumb_dumbbell_curl",
		24: "kettlebell_biceps_curl",
		25: "lying_concentration_cable_curl",
		26: "one_arm_preacher_curl",
		27: "plate_pinch_curl",
		28: "preacher_curl_with_cable",
		29: "reverse_ez_bar_curl",
		30: "reverse_grip_wrist_curl",
		31: "reverse_grip_barbell_biceps_curl",
		32: "seated_alternating_dumbbell_biceps_curl",
		33: "seated_dumbbell_biceps_curl",
		34: "seated_reverse_dumbbell_curl",
		35: "split_stance_offset_pinky_dumbbell_curl",
		36: "standing_alternating_dumbbell_curls",
		37: "standing_dumbbell_biceps_curl",
		38: "standing_ez_bar_biceps_curl",
		39: "static_curl",
		40: "swiss_ball_dumbbell_overhead_triceps_extension",
		41: "swiss_ball_ez_bar_preacher_curl",
		42: "twisting_standing_dumbbell_biceps_curl",
		43: "wide_grip_ez_bar_biceps_curl",
		44: "one_arm_concentration_curl",
		45: "standing_zottman_biceps_curl",
		46: "dumbbell_biceps_curl",
		47: "drag_curl_wheelchair",
		48: "dumbbell_biceps_curl_wheelchair",
		49: "bottle_curl",
		50: "seated_bottle_curl"
	},
	date_mode: {
		0: "day_month",
		1: "month_day"
	},
	date_time: { 268435456: "min" },
	day_of_week: {
		0: "sunday",
		1: "monday",
		2: "tuesday",
		3: "wednesday",
		4: "thursday",
		5: "friday",
		6: "saturday"
	},
	deadlift_exercise_name: {
		0: "barbell_deadlift",
		1: "barbell_straight_leg_deadlift",
		2: "dumbbell_deadlift",
		3: "dumbbell_single_leg_deadlift_to_row",
		4: "dumbbell_straight_leg_deadlift",
		5: "kettlebell_floor_to_shelf",
		6: "one_arm_one_leg_deadlift",
		7: "rack_pull",
		8: "rotational_dumbbell_straight_leg_deadlift",
		9: "single_arm_deadlift",
		10: "single_leg_barbell_deadlift",
		11: "single_leg_barbell_straight_leg_deadlift",
		12: "single_leg_deadlift_with_barbell",
		13: "single_leg_rdl_circuit",
		14: "single_leg_romanian_deadlift_with_dumbbell",
		15: "sumo_deadlift",
		16: "sumo_deadlift_high_pull",
		17: "trap_bar_deadlift",
		18: "wide_grip_barbell_deadlift",
		20: "kettlebell_deadlift",
		21: "kettlebell_sumo_deadlift",
		23: "romanian_deadlift",
		24: "single_leg_romanian_deadlift_circuit",
		25: "straight_leg_deadlift"
	},
	device_index: { 0: "creator" },
	digital_watchface_layout: {
		0: "traditional",
		1: "modern",
		2: "bold"
	},
	display_heart: {
		0: "bpm",
		1: "max",
		2: "reserve"
	},
	display_measure: {
		0: "metric",
		1: "statute",
		2: "nautical"
	},
	display_orientation: {
		0: "auto",
		1: "portrait",
		2: "landscape",
		3: "portrait_flipped",
		4: "landscape_flipped"
	},
	display_position: {
		0: "degree",
		1: "degree_minute",
		2: "degree_minute_second",
		3: "austrian_grid",
		4: "british_grid",
		5: "dutch_grid",
		6: "hungarian_grid",
		7: "finnish_grid",
		8: "german_grid",
		9: "icelandic_grid",
		10: "indonesian_equatorial",
		11: "indonesian_irian",
		12: "indonesian_southern",
		13: "india_zone0",
		14: "india_zone_ia",
		15: "india_zone_ib",
		16: "india_zone_iia",
		17: "india_zone_iib",
		18: "india_zone_iiia",
		19: "india_zone_iiib",
		20: "india_zone_iva",
		21: "india_zone_ivb",
		22: "irish_transverse",
		23: "irish_grid",
		24: "loran",
		25: "maidenhead_grid",
		26: "mgrs_grid",
		27: "new_zealand_grid",
		28: "new_zealand_transverse",
		29: "qatar_grid",
		30: "modified_swedish_grid",
		31: "swedish_grid",
		32: "south_african_grid",
		33: "swiss_grid",
		34: "taiwan_grid",
		35: "united_states_grid",
		36: "utm_ups_grid",
		37: "west_malayan",
		38: "borneo_rso",
		39: "estonian_grid",
		40: "latvian_grid",
		41: "swedish_ref99_grid"
	},
	display_power: {
		0: "watts",
		1: "percent_ftp"
	},
	dive_alarm_type: {
		0: "depth",
		1: "time",
		2: "speed"
	},
	dive_alert: {
		0: "ndl_reached",
		1: "gas_switch_prompted",
		2: "near_surface",
		3: "approaching_ndl",
		4: "po2_warn",
		5: "po2_crit_high",
		6: "po2_crit_low",
		7: "time_alert",
		8: "depth_alert",
		9: "deco_ceiling_broken",
		10: "deco_complete",
		11: "safety_stop_broken",
		12: "safety_stop_complete",
		13: "cns_warning",
		14: "cns_critical",
		15: "otu_warning",
		16: "otu_critical",
		17: "ascent_critical",
		18: "alert_dismissed_by_key",
		19: "alert_dismissed_by_timeout",
		20: "battery_low",
		21: "battery_critical",
		22: "safety_stop_started",
		23: "approaching_first_deco_stop",
		24: "setpoint_switch_auto_low",
		25: "setpoint_switch_auto_high",
		26: "setpoint_switch_manual_low",
		27: "setpoint_switch_manual_high",
		28: "auto_setpoint_switch_ignored",
		29: "switched_to_open_circuit",
		30: "switched_to_closed_circuit",
		32: "tank_battery_low",
		33: "po2_ccr_dil_low",
		34: "deco_stop_cleared",
		35: "apnea_neutral_buoyancy",
		36: "apnea_target_depth",
		37: "apnea_surface",
		38: "apnea_high_speed",
		39: "apnea_low_speed"
	},
	dive_backlight_mode: {
		0: "at_depth",
		1: "always_on"
	},
	dive_gas_mode: {
		0: "open_circuit",
		1: "closed_circuit_diluent"
	},
	dive_gas_status: {
		0: "disabled",
		1: "enabled",
		2: "backup_only"
	},
	elliptical_exercise_name: { 0: "elliptical" },
	event: {
		0: "timer",
		3: "workout",
		4: "workout_step",
		5: "power_down",
		6: "power_up",
		7: "off_course",
		8: "session",
		9: "lap",
		10: "course_point",
		11: "battery",
		12: "virtual_partner_pace",
		13: "hr_high_alert",
		14: "hr_low_alert",
		15: "speed_high_alert",
		16: "speed_low_alert",
		17: "cad_high_alert",
		18: "cad_low_alert",
		19: "power_high_alert",
		20: "power_low_alert",
		21: "recovery_hr",
		22: "battery_low",
		23: "time_duration_alert",
		24: "distance_duration_alert",
		25: "calorie_duration_alert",
		26: "activity",
		27: "fitness_equipment",
		28: "length",
		32: "user_marker",
		33: "sport_point",
		36: "calibration",
		42: "front_gear_change",
		43: "rear_gear_change",
		44: "rider_position_change",
		45: "elev_high_alert",
		46: "elev_low_alert",
		47: "comm_timeout",
		54: "auto_activity_detect",
		56: "dive_alert",
		57: "dive_gas_switched",
		71: "tank_pressure_reserve",
		72: "tank_pressure_critical",
		73: "tank_lost",
		75: "radar_threat_alert",
		76: "tank_battery_low",
		81: "tank_pod_connected",
		82: "tank_pod_disconnected"
	},
	event_type: {
		0: "start",
		1: "stop",
		2: "consecutive_depreciated",
		3: "marker",
		4: "stop_all",
		5: "begin_depreciated",
		6: "end_depreciated",
		7: "end_all_depreciated",
		8: "stop_disable",
		9: "stop_disable_all"
	},
	exd_data_units: {
		0: "no_units",
		1: "laps",
		2: "miles_per_hour",
		3: "kilometers_per_hour",
		4: "feet_per_hour",
		5: "meters_per_hour",
		6: "degrees_celsius",
		7: "degrees_farenheit",
		8: "zone",
		9: "gear",
		10: "rpm",
		11: "bpm",
		12: "degrees",
		13: "millimeters",
		14: "meters",
		15: "kilometers",
		16: "feet",
		17: "yards",
		18: "kilofeet",
		19: "miles",
		20: "time",
		21: "enum_turn_type",
		22: "percent",
		23: "watts",
		24: "watts_per_kilogram",
		25: "enum_battery_status",
		26: "enum_bike_light_beam_angle_mode",
		27: "enum_bike_light_battery_status",
		28: "enum_bike_light_network_config_type",
		29: "lights",
		30: "seconds",
		31: "minutes",
		32: "hours",
		33: "calories",
		34: "kilojoules",
		35: "milliseconds",
		36: "second_per_mile",
		37: "second_per_kilometer",
		38: "centimeter",
		39: "enum_course_point",
		40: "bradians",
		41: "enum_sport",
		42: "inches_hg",
		43: "mm_hg",
		44: "mbars",
		45: "hecto_pascals",
		46: "feet_per_min",
		47: "meters_per_min",
		48: "meters_per_sec",
		49: "eight_cardinal"
	},
	exd_descriptors: {
		0: "bike_light_battery_status",
		1: "beam_angle_status",
		2: "batery_level",
		3: "light_network_mode",
		4: "number_lights_connected",
		5: "cadence",
		6: "distance",
		7: "estimated_time_of_arrival",
		8: "heading",
		9: "time",
		10: "battery_level",
		11: "trainer_resistance",
		12: "trainer_target_power",
		13: "time_seated",
		14: "time_standing",
		15: "elevation",
		16: "grade",
		17: "ascent",
		18: "descent",
		19: "vertical_speed",
		20: "di2_battery_level",
		21: "front_gear",
		22: "rear_gear",
		23: "gear_ratio",
		24: "heart_rate",
		25: "heart_rate_zone",
		26: "time_in_heart_rate_zone",
		27: "heart_rate_reserve",
		28: "calories",
		29: "gps_accuracy",
		30: "gps_signal_strength",
		31: "temperature",
		32: "time_of_day",
		33: "balance",
		34: "pedal_smoothness",
		35: "power",
		36: "functional_threshold_power",
		37: "intensity_factor",
		38: "work",
		39: "power_ratio",
		40: "normalized_power",
		41: "training_stress_score",
		42: "time_on_zone",
		43: "speed",
		44: "laps",
		45: "reps",
		46: "workout_step",
		47: "course_distance",
		48: "navigation_distance",
		49: "course_estimated_time_of_arrival",
		50: "navigation_estimated_time_of_arrival",
		51: "course_time",
		52: "navigation_time",
		53: "course_heading",
		54: "navigation_heading",
		55: "power_zone",
		56: "torque_effectiveness",
		57: "timer_time",
		58: "power_weight_ratio",
		59: "left_platform_center_offset",
		60: "right_platform_center_offset",
		61: "left_power_phase_start_angle",
		62: "right_power_phase_start_angle",
		63: "left_power_phase_finish_angle",
		64: "right_power_phase_finish_angle",
		65: "gears",
		66: "pace",
		67: "training_effect",
		68: "vertical_oscillation",
		69: "vertical_ratio",
		70: "ground_contact_time",
		71: "left_ground_contact_time_balance",
		72: "right_ground_contact_time_balance",
		73: "stride_length",
		74: "running_cadence",
		75: "performance_condition",
		76: "course_type",
		77: "time_in_power_zone",
		78: "navigation_turn",
		79: "course_location",
		80: "navigation_location",
		81: "compass",
		82: "gear_combo",
		83: "muscle_oxygen",
		84: "icon",
		85: "compass_heading",
		86: "gps_heading",
		87: "gps_elevation",
		88: "anaerobic_training_effect",
		89: "course",
		90: "off_course",
		91: "glide_ratio",
		92: "vertical_distance",
		93: "vmg",
		94: "ambient_pressure",
		95: "pressure",
		96: "vam"
	},
	exd_display_type: {
		0: "numerical",
		1: "simple",
		2: "graph",
		3: "bar",
		4: "circle_graph",
		5: "virtual_partner",
		6: "balance",
		7: "string_list",
		8: "string",
		9: "simple_dynamic_icon",
		10: "gauge"
	},
	exd_layout: {
		0: "full_screen",
		1: "half_vertical",
		2: "half_horizontal",
		3: "half_vertical_right_split",
		4: "half_horizontal_bottom_split",
		5: "full_quarter_split",
		6: "half_vertical_left_split",
		7: "half_horizontal_top_split",
		8: "dynamic"
	},
	exd_qualifiers: {
		0: "no_qualifier",
		1: "instantaneous",
		2: "average",
		3: "lap",
		4: "maximum",
		5: "maximum_average",
		6: "maximum_lap",
		7: "last_lap",
		8: "average_lap",
		9: "to_destination",
		10: "to_go",
		11: "to_next",
		12: "next_course_point",
		13: "total",
		14: "three_second_average",
		15: "ten_second_average",
		16: "thirty_second_average",
		17: "percent_maximum",
		18: "percent_maximum_average",
		19: "lap_percent_maximum",
		20: "elapsed",
		21: "sunrise",
		22: "sunset",
		23: "compared_to_virtual_partner",
		24: "maximum24h",
		25: "minimum24h",
		26: "minimum",
		27: "first",
		28: "second",
		29: "third",
		30: "shifter",
		31: "last_sport",
		32: "moving",
		33: "stopped",
		34: "estimated_total",
		242: "zone9",
		243: "zone8",
		244: "zone7",
		245: "zone6",
		246: "zone5",
		247: "zone4",
		248: "zone3",
		249: "zone2",
		250: "zone1"
	},
	exercise_category: {
		0: "bench_press",
		1: "calf_raise",
		2: "cardio",
		3: "carry",
		4: "chop",
		5: "core",
		6: "crunch",
		7: "curl",
		8: "deadlift",
		9: "flye",
		10: "hip_raise",
		11: "hip_stability",
		12: "hip_swing",
		13: "hyperextension",
		14: "lateral_raise",
		15: "leg_curl",
		16: "leg_raise",
		17: "lunge",
		18: "olympic_lift",
		19: "plank",
		20: "plyo",
		21: "pull_up",
		22: "push_up",
		23: "row",
		24: "shoulder_press",
		25: "shoulder_stability",
		26: "shrug",
		27: "sit_up",
		28: "squat",
		29: "total_body",
		30: "triceps_extension",
		31: "warm_up",
		32: "run",
		33: "bike",
		34: "cardio_sensors",
		35: "move",
		36: "pose",
		37: "banded_exercises",
		38: "battle_rope",
		39: "elliptical",
		40: "floor_climb",
		41: "indoor_bike",
		42: "indoor_row",
		43: "ladder",
		44: "sandbag",
		45: "sled",
		46: "sledge_hammer",
		47: "stair_stepper",
		49: "suspension",
		50: "tire",
		52: "run_indoor",
		53: "bike_outdoor",
		65534: "unknown"
	},
	favero_product: {
		10: "assioma_uno",
		12: "assioma_duo"
	},
	file: {
		1: "device",
		2: "settings",
		3: "sport",
		4: "activity",
		5: "workout",
		6: "course",
		7: "schedules",
		9: "weight",
		10: "totals",
		11: "goals",
		14: "blood_pressure",
		15: "monitoring_a",
		20: "activity_summary",
		28: "monitoring_daily",
		32: "monitoring_b",
		34: "segment",
		35: "segment_list",
		40: "exd_configuration",
		247: "mfg_range_min",
		254: "mfg_range_max"
	},
	file_flags: {
		2: "read",
		4: "write",
		8: "erase"
	},
	fit_base_type: {
		0: "enum",
		1: "sint8",
		2: "uint8",
		7: "string",
		10: "uint8z",
		13: "byte",
		131: "sint16",
		132: "uint16",
		133: "sint32",
		134: "uint32",
		136: "float32",
		137: "float64",
		139: "uint16z",
		140: "uint32z",
		142: "sint64",
		143: "uint64",
		144: "uint64z"
	},
	fit_base_unit: {
		0: "other",
		1: "kilogram",
		2: "pound"
	},
	fitness_equipment_state: {
		0: "ready",
		1: "in_use",
		2: "paused",
		3: "unknown"
	},
	floor_climb_exercise_name: { 0: "floor_climb" },
	flye_exercise_name: {
		0: "cable_crossover",
		1: "decline_dumbbell_flye",
		2: "dumbbell_flye",
		3: "incline_dumbbell_flye",
		4: "kettlebell_flye",
		5: "kneeling_rear_flye",
		6: "single_arm_standing_cable_reverse_flye",
		7: "swiss_ball_dumbbell_flye",
		8: "arm_rotations",
		9: "hug_a_tree",
		10: "face_down_incline_reverse_flye",
		11: "incline_reverse_flye",
		12: "rear_delt_fly_wheelchair"
	},
	garmin_product: FIT_PROFILE_GARMIN_PRODUCTS,
	gas_consumption_rate_type: {
		0: "pressure_sac",
		1: "volume_sac",
		2: "rmv"
	},
	gender: {
		0: "female",
		1: "male"
	},
	goal: {
		0: "time",
		1: "distance",
		2: "calories",
		3: "frequency",
		4: "steps",
		5: "ascent",
		6: "active_minutes"
	},
	goal_recurrence: {
		0: "off",
		1: "daily",
		2: "weekly",
		3: "monthly",
		4: "yearly",
		5: "custom"
	},
	goal_source: {
		0: "auto",
		1: "community",
		2: "user"
	},
	hip_raise_exercise_name: {
		0: "barbell_hip_thrust_on_floor",
		1: "barbell_hip_thrust_with_bench",
		2: "bent_knee_swiss_ball_reverse_hip_raise",
		3: "weighted_bent_knee_swiss_ball_reverse_hip_raise",
		4: "bridge_with_leg_extension",
		5: "weighted_bridge_with_leg_extension",
		6: "clam_bridge",
		7: "front_kick_tabletop",
		8: "weighted_front_kick_tabletop",
		9: "hip_extension_and_cross",
		10: "weighted_hip_extension_and_cross",
		11: "hip_raise",
		12: "weighted_hip_raise",
		13: "hip_raise_with_feet_on_swiss_ball",
		14: "weighted_hip_raise_with_feet_on_swiss_ball",
		15: "hip_raise_with_head_on_bosu_ball",
		16: "weighted_hip_raise_with_head_on_bosu_ball",
		17: "hip_raise_with_head_on_swiss_ball",
		18: "weighted_hip_raise_with_head_on_swiss_ball",
		19: "hip_raise_with_knee_squeeze",
		20: "weighted_hip_raise_with_knee_squeeze",
		21: "incline_rear_leg_extension",
		22: "weighted_incline_rear_leg_extension",
		23: "kettlebell_swing",
		24: "marching_hip_raise",
		25: "weighted_marching_hip_raise",
		26: "marching_hip_raise_with_feet_on_a_swiss_ball",
		27: "weighted_marching_hip_raise_with_feet_on_a_swiss_ball",
		28: "reverse_hip_raise",
		29: "weighted_reverse_hip_raise",
		30: "single_leg_hip_raise",
		31: "weighted_single_leg_hip_raise",
		32: "single_leg_hip_raise_with_foot_on_bench",
		33: "weighted_single_leg_hip_raise_with_foot_on_bench",
		34: "single_leg_hip_raise_with_foot_on_bosu_ball",
		35: "weighted_single_leg_hip_raise_with_foot_on_bosu_ball",
		36: "single_leg_hip_raise_with_foot_on_foam_roller",
		37: "weighted_single_leg_hip_raise_with_foot_on_foam_roller",
		38: "single_leg_hip_raise_with_foot_on_medicine_ball",
		39: "weighted_single_leg_hip_raise_with_foot_on_medicine_ball",
		40: "single_leg_hip_raise_with_head_on_bosu_ball",
		41: "weighted_single_leg_hip_raise_with_head_on_bosu_ball",
		42: "weighted_clam_bridge",
		43: "single_leg_swiss_ball_hip_raise_and_leg_curl",
		44: "clams",
		45: "inner_thigh_circles",
		46: "inner_thigh_side_lift",
		47: "leg_circles",
		48: "leg_lift",
		49: "leg_lift_in_external_rotation"
	},
	hip_stability_exercise_name: {
		0: "band_side_lying_leg_raise",
		1: "dead_bug",
		2: "weighted_dead_bug",
		3: "external_hip_raise",
		4: "weighted_external_hip_raise",
		5: "fire_hydrant_kicks",
		6: "weighted_fire_hydrant_kicks",
		7: "hip_circles",
		8: "weighted_hip_circles",
		9: "inner_thigh_lift",
		10: "weighted_inner_thigh_lift",
		11: "lateral_walks_with_band_at_ankles",
		12: "pretzel_side_kick",
		13: "weighted_pretzel_side_kick",
		14: "prone_hip_internal_rotation",
		15: "weighted_prone_hip_internal_rotation",
		16: "quadruped",
		17: "quadruped_hip_extension",
		18: "weighted_quadruped_hip_extension",
		19: "quadruped_with_leg_lift",
		20: "weighted_quadruped_with_leg_lift",
		21: "side_lying_leg_raise",
		22: "weighted_side_lying_leg_raise",
		23: "sliding_hip_adduction",
		24: "weighted_sliding_hip_adduction",
		25: "standing_adduction",
		26: "weighted_standing_adduction",
		27: "standing_cable_hip_abduction",
		28: "standing_hip_abduction",
		29: "weighted_standing_hip_abduction",
		30: "standing_rear_leg_raise",
		31: "weighted_standing_rear_leg_raise",
		32: "supine_hip_internal_rotation",
		33: "weighted_supine_hip_internal_rotation",
		34: "lying_abduction_stretch"
	},
	hip_swing_exercise_name: {
		0: "single_arm_kettlebell_swing",
		1: "single_arm_dumbbell_swing",
		2: "step_out_swing",
		3: "one_arm_swing"
	},
	hr_type: {
		0: "normal",
		1: "irregular"
	},
	hrv_status: {
		0: "none",
		1: "poor",
		2: "low",
		3: "unbalanced",
		4: "balanced"
	},
	hr_zone_calc: {
		0: "custom",
		1: "percent_max_hr",
		2: "percent_hrr",
		3: "percent_lthr"
	},
	hyperextension_exercise_name: {
		0: "back_extension_with_opposite_arm_and_leg_reach",
		1: "weighted_back_extension_with_opposite_arm_and_leg_reach",
		2: "base_rotations",
		3: "weighted_base_rotations",
		4: "bent_knee_reverse_hyperextension",
		5: "weighted_bent_knee_reverse_hyperextension",
		6: "hollow_hold_and_roll",
		7: "weighted_hollow_hold_and_roll",
		8: "kicks",
		9: "weighted_kicks",
		10: "knee_raises",
		11: "weighted_knee_raises",
		12: "kneeling_superman",
		13: "weighted_kneeling_superman",
		14: "lat_pull_down_with_row",
		15: "medicine_ball_deadlift_to_reach",
		16: "one_arm_one_leg_row",
		17: "one_arm_row_with_band",
		18: "overhead_lunge_with_medicine_ball",
		19: "plank_knee_tucks",
		20: "weighted_plank_knee_tucks",
		21: "side_step",
		22: "weighted_side_step",
		23: "single_leg_back_extension",
		24: "weighted_single_leg_back_extension",
		25: "spine_extension",
		26: "weighted_spine_extension",
		27: "static_back_extension",
		28: "weighted_static_back_extension",
		29: "superman_from_floor",
		30: "weighted_superman_from_floor",
		31: "swiss_ball_back_extension",
		32: "weighted_swiss_ball_back_extension",
		33: "swiss_ball_hyperextension",
		34: "weighted_swiss_ball_hyperextension",
		35: "swiss_ball_opposite_arm_and_leg_lift",
		36: "weighted_swiss_ball_opposite_arm_and_leg_lift",
		37: "superman_on_swiss_ball",
		38: "cobra",
		39: "supine_floor_barre"
	},
	indoor_bike_exercise_name: {
		0: "air_bike",
		1: "assault_bike",
		3: "stationary_bike"
	},
	indoor_row_exercise_name: { 0: "rowing_machine" },
	intensity: {
		0: "active",
		1: "rest",
		2: "warmup",
		3: "cooldown",
		4: "recovery",
		5: "interval",
		6: "other"
	},
	ladder_exercise_name: {
		0: "agility",
		1: "speed"
	},
	language: {
		0: "english",
		1: "french",
		2: "italian",
		3: "german",
		4: "spanish",
		5: "croatian",
		6: "czech",
		7: "danish",
		8: "dutch",
		9: "finnish",
		10: "greek",
		11: "hungarian",
		12: "norwegian",
		13: "polish",
		14: "portuguese",
		15: "slovakian",
		16: "slovenian",
		17: "swedish",
		18: "russian",
		19: "turkish",
		20: "latvian",
		21: "ukrainian",
		22: "arabic",
		23: "farsi",
		24: "bulgarian",
		25: "romanian",
		26: "chinese",
		27: "japanese",
		28: "korean",
		29: "taiwanese",
		30: "thai",
		31: "hebrew",
		32: "brazilian_portuguese",
		33: "indonesian",
		34: "malaysian",
		35: "vietnamese",
		36: "burmese",
		37: "mongolian",
		254: "custom"
	},
	language_bits0: {
		1: "english",
		2: "french",
		4: "italian",
		8: "german",
		16: "spanish",
		32: "croatian",
		64: "czech",
		128: "danish"
	},
	language_bits1: {
		1: "dutch",
		2: "finnish",
		4: "greek",
		8: "hungarian",
		16: "norwegian",
		32: "polish",
		64: "portuguese",
		128: "slovakian"
	},
	language_bits2: {
		1: "slovenian",
		2: "swedish",
		4: "russian",
		8: "turkish",
		16: "latvian",
		32: "ukrainian",
		64: "arabic",
		128: "farsi"
	},
	language_bits3: {
		1: "bulgarian",
		2: "romanian",
		4: "chinese",
		8: "japanese",
		16: "korean",
		32: "taiwanese",
		64: "thai",
		128: "hebrew"
	},
	language_bits4: {
		1: "brazilian_portuguese",
		2: "indonesian",
		4: "malaysian",
		8: "vietnamese",
		16: "burmese",
		32: "mongolian"
	},
	lap_trigger: {
		0: "manual",
		1: "time",
		2: "distance",
		3: "position_start",
		4: "position_lap",
		5: "position_waypoint",
		6: "position_marked",
		7: "session_end",
		8: "fitness_equipment"
	},
	lateral_raise_exercise_name: {
		0: "45_degree_cable_external_rotation",
		1: "alternating_lateral_raise_with_static_hold",
		2: "bar_muscle_up",
		3: "bent_over_lateral_raise",
		4: "cable_diagonal_raise",
		5: "cable_front_raise",
		6: "calorie_row",
		7: "combo_shoulder_raise",
		8: "dumbbell_diagonal_raise",
		9: "dumbbell_v_raise",
		10: "front_raise",
		11: "leaning_dumbbell_lateral_raise",
		12: "lying_dumbbell_raise",
		13: "muscle_up",
		14: "one_arm_cable_lateral_raise",
		15: "overhand_grip_rear_lateral_raise",
		16: "plate_raises",
		17: "ring_dip",
		18: "weighted_ring_dip",
		19: "ring_muscle_up",
		20: "weighted_ring_muscle_up",
		21: "rope_climb",
		22: "weighted_rope_climb",
		23: "scaption",
		24: "seated_lateral_raise",
		25: "seated_rear_lateral_raise",
		26: "side_lying_lateral_raise",
		27: "standing_lift",
		28: "suspended_row",
		29: "underhand_grip_rear_lateral_raise",
		30: "wall_slide",
		31: "weighted_wall_slide",
		32: "arm_circles",
		33: "shaving_the_head",
		34: "dumbbell_lateral_raise",
		36: "ring_dip_kipping",
		37: "wall_walk",
		38: "dumbbell_front_raise_wheelchair",
		39: "dumbbell_lateral_raise_wheelchair",
		40: "pole_double_arm_overhead_and_forward_wheelchair",
		41: "pole_straight_arm_overhead_wheelchair"
	},
	left_right_balance: {
		127: "mask",
		128: "right"
	},
	left_right_balance100: {
		16383: "mask",
		32768: "right"
	},
	leg_curl_exercise_name: {
		0: "leg_curl",
		1: "weighted_leg_curl",
		2: "good_morning",
		3: "seated_barbell_good_morning",
		4: "single_leg_barbell_good_morning",
		5: "single_leg_sliding_leg_curl",
		6: "sliding_leg_curl",
		7: "split_barbell_good_morning",
		8: "split_stance_extension",
		9: "staggered_stance_good_morning",
		10: "swiss_ball_hip_raise_and_leg_curl",
		11: "zercher_good_morning",
		12: "band_good_morning",
		13: "bar_good_morning"
	},
	leg_raise_exercise_name: {
		0: "hanging_knee_raise",
		1: "hanging_leg_raise",
		2: "weighted_hanging_leg_raise",
		3: "hanging_single_leg_raise",
		4: "weighted_hanging_single_leg_raise",
		5: "kettlebell_leg_raises",
		6: "leg_lowering_drill",
		7: "weighted_leg_lowering_drill",
		8: "lying_straight_leg_raise",
		9: "weighted_lying_straight_leg_raise",
		10: "medicine_ball_leg_drops",
		11: "quadruped_leg_raise",
		12: "weighted_quadruped_leg_raise",
		13: "reverse_leg_raise",
		14: "weighted_reverse_leg_raise",
		15: "reverse_leg_raise_on_swiss_ball",
		16: "weighted_reverse_leg_raise_on_swiss_ball",
		17: "single_leg_lowering_drill",
		18: "weighted_single_leg_lowering_drill",
		19: "weighted_hanging_knee_raise",
		20: "lateral_stepover",
		21: "weighted_lateral_stepover"
	},
	length_type: {
		0: "idle",
		1: "active"
	},
	local_date_time: { 268435456: "min" },
	local_device_type: {
		0: "gps",
		1: "glonass",
		2: "gps_glonass",
		3: "accelerometer",
		4: "barometer",
		5: "temperature",
		10: "whr",
		12: "sensor_hub"
	},
	localtime_into_day: {},
	lunge_exercise_name: {
		0: "overhead_lunge",
		1: "lunge_matrix",
		2: "weighted_lunge_matrix",
		3: "alternating_barbell_forward_lunge",
		4: "alternating_dumbbell_lunge_with_reach",
		5: "back_foot_elevated_dumbbell_split_squat",
		6: "barbell_box_lunge",
		7: "barbell_bulgarian_split_squat",
		8: "barbell_crossover_lunge",
		9: "barbell_front_split_squat",
		10: "barbell_lunge",
		11: "barbell_reverse_lunge",
		12: "barbell_side_lunge",
		13: "barbell_split_squat",
		14: "core_control_rear_lunge",
		15: "diagonal_lunge",
		16: "drop_lunge",
		17: "dumbbell_box_lunge",
		18: "dumbbell_bulgarian_split_squat",
		19: "dumbbell_crossover_lunge",
		20: "dumbbell_diagonal_lunge",
		21: "dumbbell_lunge",
		22: "dumbbell_lunge_and_rotation",
		23: "dumbbell_overhead_bulgarian_split_squat",
		24: "dumbbell_reverse_lunge_to_high_knee_and_press",
		25: "dumbbell_side_lunge",
		26: "elevated_front_foot_barbell_split_squat",
		27: "front_foot_elevated_dumbbell_split_squat",
		28: "gunslinger_lunge",
		29: "lawnmower_lunge",
		30: "low_lunge_with_isometric_adduction",
		31: "low_side_to_side_lunge",
		32: "lunge",
		33: "weighted_lunge",
		34: "lunge_with_arm_reach",
		35: "lunge_with_diagonal_reach",
		36: "lunge_with_side_bend",
		37: "offset_dumbbell_lunge",
		38: "offset_dumbbell_reverse_lunge",
		39: "overhead_bulgarian_split_squat",
		40: "overhead_dumbbell_reverse_lunge",
		41: "overhead_dumbbell_split_squat",
		42: "overhead_lunge_with_rotation",
		43: "reverse_barbell_box_lunge",
		44: "reverse_box_lunge",
		45: "reverse_dumbbell_box_lunge",
		46: "reverse_dumbbell_crossover_lunge",
		47: "reverse_dumbbell_diagonal_lunge",
		48: "reverse_lunge_with_reach_back",
		49: "weighted_reverse_lunge_with_reach_back",
		50: "reverse_lunge_with_twist_and_overhead_reach",
		51: "weighted_reverse_lunge_with_twist_and_overhead_reach",
		52: "reverse_sliding_box_lunge",
		53: "weighted_reverse_sliding_box_lunge",
		54: "reverse_sliding_lunge",
		55: "weighted_reverse_sliding_lunge",
		56: "runners_lunge_to_balance",
		57: "weighted_runners_lunge_to_balance",
		58: "shifting_side_lunge",
		59: "side_and_crossover_lunge",
		60: "weighted_side_and_crossover_lunge",
		61: "side_lunge",
		62: "weighted_side_lunge",
		63: "side_lunge_and_press",
		64: "side_lunge_jump_off",
		65: "side_lunge_sweep",
		66: "weighted_side_lunge_sweep",
		67: "side_lunge_to_crossover_tap",
		68: "weighted_side_lunge_to_crossover_tap",
		69: "side_to_side_lunge_chops",
		70: "weighted_side_to_side_lunge_chops",
		71: "siff_jump_lunge",
		72: "weighted_siff_jump_lunge",
		73: "single_arm_reverse_lunge_and_press",
		74: "sliding_lateral_lunge",
		75: "weighted_sliding_lateral_lunge",
		76: "walking_barbell_lunge",
		77: "walking_dumbbell_lunge",
		78: "walking_lunge",
		79: "weighted_walking_lunge",
		80: "wide_grip_overhead_barbell_split_squat",
		81: "alternating_dumbbell_lunge",
		82: "dumbbell_reverse_lunge",
		83: "overhead_dumbbell_lunge",
		84: "scissor_power_switch",
		85: "dumbbell_overhead_walking_lunge",
		86: "curtsy_lunge",
		87: "weighted_curtsy_lunge",
		88: "weighted_shifting_side_lunge",
		89: "weighted_side_lunge_and_press",
		90: "weighted_side_lunge_jump_off"
	},
	manufacturer: FIT_PROFILE_MANUFACTURERS,
	max_met_category: {
		0: "generic",
		1: "cycling"
	},
	max_met_heart_rate_source: {
		0: "whr",
		1: "hrm"
	},
	max_met_speed_source: {
		0: "onboard_gps",
		1: "connected_gps",
		2: "cadence"
	},
	mesg_count: {
		0: "num_per_file",
		1: "max_per_file",
		2: "max_per_file_type"
	},
	mesg_num: {
		0: "file_id",
		1: "capabilities",
		2: "device_settings",
		3: "user_profile",
		4: "hrm_profile",
		5: "sdm_profile",
		6: "bike_profile",
		7: "zones_target",
		8: "hr_zone",
		9: "power_zone",
		10: "met_zone",
		12: "sport",
		13: "training_settings",
		15: "goal",
		18: "session",
		19: "lap",
		20: "record",
		21: "event",
		23: "device_info",
		26: "workout",
		27: "workout_step",
		28: "schedule",
		30: "weight_scale",
		31: "course",
		32: "course_point",
		33: "totals",
		34: "activity",
		35: "software",
		37: "file_capabilities",
		38: "mesg_capabilities",
		39: "field_capabilities",
		49: "file_creator",
		51: "blood_pressure",
		53: "speed_zone",
		55: "monitoring",
		72: "training_file",
		78: "hrv",
		79: "user_metrics",
		80: "ant_rx",
		81: "ant_tx",
		82: "ant_channel_id",
		101: "length",
		103: "monitoring_info",
		105: "pad",
		106: "slave_device",
		127: "connectivity",
		128: "weather_conditions",
		129: "weather_alert",
		131: "cadence_zone",
		132: "hr",
		140: "activity_metrics",
		142: "segment_lap",
		145: "memo_glob",
		148: "segment_id",
		149: "segment_leaderboard_entry",
		150: "segment_point",
		151: "segment_file",
		158: "workout_session",
		159: "watchface_settings",
		160: "gps_metadata",
		161: "camera_event",
		162: "timestamp_correlation",
		164: "gyroscope_data",
		165: "accelerometer_data",
		167: "three_d_sensor_calibration",
		169: "video_frame",
		174: "obdii_data",
		177: "nmea_sentence",
		178: "aviation_attitude",
		184: "video",
		185: "video_title",
		186: "video_description",
		187: "video_clip",
		188: "ohr_settings",
		200: "exd_screen_configuration",
		201: "exd_data_field_configuration",
		202: "exd_data_concept_configuration",
		206: "field_description",
		207: "developer_data_id",
		208: "magnetometer_data",
		209: "barometer_data",
		210: "one_d_sensor_calibration",
		211: "monitoring_hr_data",
		216: "time_in_zone",
		225: "set",
		227: "stress_level",
		229: "max_met_data",
		258: "dive_settings",
		259: "dive_gas",
		262: "dive_alarm",
		264: "exercise_title",
		268: "dive_summary",
		269: "spo2_data",
		275: "sleep_level",
		285: "jump",
		289: "aad_accel_features",
		290: "beat_intervals",
		297: "respiration_rate",
		302: "hsa_accelerometer_data",
		304: "hsa_step_data",
		305: "hsa_spo2_data",
		306: "hsa_stress_data",
		307: "hsa_respiration_data",
		308: "hsa_heart_rate_data",
		312: "split",
		313: "split_summary",
		314: "hsa_body_battery_data",
		315: "hsa_event",
		317: "climb_pro",
		319: "tank_update",
		323: "tank_summary",
		346: "sleep_assessment",
		370: "hrv_status_summary",
		371: "hrv_value",
		372: "raw_bbi",
		375: "device_aux_battery_info",
		376: "hsa_gyroscope_data",
		387: "chrono_shot_session",
		388: "chrono_shot_data",
		389: "hsa_configuration_data",
		393: "dive_apnea_alarm",
		398: "skin_temp_overnight",
		409: "hsa_wrist_temperature_data",
		412: "nap_event",
		470: "sleep_disruption_severity_period",
		471: "sleep_disruption_overnight_severity",
		65280: "mfg_range_min",
		65534: "mfg_range_max"
	},
	message_index: {
		4095: "mask",
		28672: "reserved",
		32768: "selected"
	},
	move_exercise_name: {
		0: "arch_and_curl",
		1: "arm_circles_with_ball_band_and_weight",
		2: "arm_stretch",
		3: "back_massage",
		4: "belly_breathing",
		5: "bridge_with_ball",
		6: "diamond_leg_crunch",
		7: "diamond_leg_lift",
		8: "eight_point_shoulder_opener",
		9: "foot_rolling",
		10: "footwork",
		11: "footwork_on_disc",
		12: "forward_fold",
		13: "frog_with_band",
		14: "half_roll_up",
		15: "hamstring_curl",
		16: "hamstring_stretch",
		17: "hip_stretch",
		18: "hug_a_tree_with_ball_band_and_weight",
		19: "knee_circles",
		20: "knee_folds_on_disc",
		21: "lateral_flexion",
		22: "leg_stretch_with_band",
		23: "leg_stretch_with_leg_circles",
		24: "lower_lift_on_disc",
		25: "lunge_squat",
		26: "lunges_with_knee_lift",
		27: "mermaid_stretch",
		28: "neutral_pelvic_position",
		29: "pelvic_clocks_on_disc",
		30: "pilates_plie_squats_parallel_turned_out_flat_and_heels_with_chair",
		31: "piriformis_stretch",
		32: "plank_knee_crosses",
		33: "plank_knee_pulls",
		34: "plank_up_downs",
		35: "prayer_mudra",
		36: "psoas_lunge_stretch",
		37: "ribcage_breathing",
		38: "roll_down",
		39: "roll_up_with_weight_and_band",
		40: "saw",
		41: "scapular_stabilization",
		42: "scissors_on_disc",
		43: "seated_hip_stretchup",
		44: "seated_twist",
		45: "shaving_the_head_with_ball_band_and_weight",
		46: "spinal_twist",
		47: "spinal_twist_stretch",
		48: "spine_stretch_forward",
		49: "squat_open_arm_twist_pose",
		50: "squats_with_ball",
		51: "stand_and_hang",
		52: "standing_side_stretch",
		53: "standing_single_leg_forward_bend_with_it_band_opener",
		54: "straight_leg_crunch_with_leg_lift",
		55: "straight_leg_crunch_with_leg_lift_with_ball",
		56: "straight_leg_crunch_with_legs_crossed",
		57: "straight_leg_crunch_with_legs_crossed_with_ball",
		58: "straight_leg_diagonal_crunch",
		59: "straight_leg_diagonal_crunch_with_ball",
		60: "tailbone_curl",
		61: "throat_lock",
		62: "tick_tock_side_roll",
		63: "twist",
		64: "v_leg_crunches",
		65: "v_sit",
		66: "forward_fold_wheelchair",
		67: "forward_fold_plus_wheelchair",
		68: "arm_circles_low_forward_wheelchair",
		69: "arm_circles_mid_forward_wheelchair",
		70: "arm_circles_high_forward_wheelchair",
		71: "arm_circles_low_backward_wheelchair",
		72: "arm_circles_mid_backward_wheelchair",
		73: "arm_circles_high_backward_wheelchair",
		74: "core_twists_wheelchair",
		75: "arm_raise_wheelchair",
		76: "chest_expand_wheelchair",
		77: "arm_extend_wheelchair",
		78: "forward_bend_wheelchair",
		79: "toe_touch_wheelchair",
		80: "extended_toe_touch_wheelchair",
		81: "seated_arm_circles",
		82: "trunk_rotations",
		83: "seated_trunk_rotations",
		84: "toe_touch"
	},
	nap_period_feedback: {
		0: "none",
		1: "multiple_naps_during_day",
		2: "jetlag_ideal_timing_ideal_duration",
		3: "jetlag_ideal_timing_long_duration",
		4: "jetlag_late_timing_ideal_duration",
		5: "jetlag_late_timing_long_duration",
		6: "ideal_timing_ideal_duration_low_need",
		7: "ideal_timing_ideal_duration_high_need",
		8: "ideal_timing_long_duration_low_need",
		9: "ideal_timing_long_duration_high_need",
		10: "late_timing_ideal_duration_low_need",
		11: "late_timing_ideal_duration_high_need",
		12: "late_timing_long_duration_low_need",
		13: "late_timing_long_duration_high_need",
		14: "ideal_duration_low_need",
		15: "ideal_duration_high_need",
		16: "long_duration_low_need",
		17: "long_duration_high_need"
	},
	nap_source: {
		0: "automatic",
		1: "manual_device",
		2: "manual_gc"
	},
	no_fly_time_mode: {
		0: "standard",
		1: "flat24_hours"
	},
	olympic_lift_exercise_name: {
		0: "barbell_hang_power_clean",
		1: "barbell_hang_squat_clean",
		2: "barbell_power_clean",
		3: "barbell_power_snatch",
		4: "barbell_squat_clean",
		5: "clean_and_jerk",
		6: "barbell_hang_power_snatch",
		7: "barbell_hang_pull",
		8: "barbell_high_pull",
		9: "barbell_snatch",
		10: "barbell_split_jerk",
		11: "clean",
		12: "dumbbell_clean",
		13: "dumbbell_hang_pull",
		14: "one_hand_dumbbell_split_snatch",
		15: "push_jerk",
		16: "single_arm_dumbbell_snatch",
		17: "single_arm_hang_snatch",
		18: "single_arm_kettlebell_snatch",
		19: "split_jerk",
		20: "squat_clean_and_jerk",
		21: "dumbbell_hang_snatch",
		22: "dumbbell_power_clean_and_jerk",
		23: "dumbbell_power_clean_and_push_press",
		24: "dumbbell_power_clean_and_strict_press",
		25: "dumbbell_snatch",
		26: "medicine_ball_clean",
		27: "clean_and_press",
		28: "snatch"
	},
	plank_exercise_name: {
		0: "45_degree_plank",
		1: "weighted45_degree_plank",
		2: "90_degree_static_hold",
		3: "weighted90_degree_static_hold",
		4: "bear_crawl",
		5: "weighted_bear_crawl",
		6: "cross_body_mountain_climber",
		7: "weighted_cross_body_mountain_climber",
		8: "elbow_plank_pike_jacks",
		9: "weighted_elbow_plank_pike_jacks",
		10: "elevated_feet_plank",
		11: "weighted_elevated_feet_plank",
		12: "elevator_abs",
		13: "weighted_elevator_abs",
		14: "extended_plank",
		15: "weighted_extended_plank",
		16: "full_plank_passe_twist",
		17: "weighted_full_plank_passe_twist",
		18: "inching_elbow_plank",
		19: "weighted_inching_elbow_plank",
		20: "inchworm_to_side_plank",
		21: "weighted_inchworm_to_side_plank",
		22: "kneeling_plank",
		23: "weighted_kneeling_plank",
		24: "kneeling_side_plank_with_leg_lift",
		25: "weighted_kneeling_side_plank_with_leg_lift",
		26: "lateral_roll",
		27: "weighted_lateral_roll",
		28: "lying_reverse_plank",
		29: "weighted_lying_reverse_plank",
		30: "medicine_ball_mountain_climber",
		31: "weighted_medicine_ball_mountain_climber",
		32: "modified_mountain_climber_and_extension",
		33: "weighted_modified_mountain_climber_and_extension",
		34: "mountain_climber",
		35: "weighted_mountain_climber",
		36: "mountain_climber_on_sliding_discs",
		37: "weighted_mountain_climber_on_sliding_discs",
		38: "mountain_climber_with_feet_on_bosu_ball",
		39: "weighted_mountain_climber_with_feet_on_bosu_ball",
		40: "mountain_climber_with_hands_on_bench",
		41: "mountain_climber_with_hands_on_swiss_ball",
		42: "weighted_mountain_climber_with_hands_on_swiss_ball",
		43: "plank",
		44: "plank_jacks_with_feet_on_sliding_discs",
		45: "weighted_plank_jacks_with_feet_on_sliding_discs",
		46: "plank_knee_twist",
		47: "weighted_plank_knee_twist",
		48: "plank_pike_jumps",
		49: "weighted_plank_pike_jumps",
		50: "plank_pikes",
		51: "weighted_plank_pikes",
		52: "plank_to_stand_up",
		53: "weighted_plank_to_stand_up",
		54: "plank_with_arm_raise",
		55: "weighted_plank_with_arm_raise",
		56: "plank_with_knee_to_elbow",
		57: "weighted_plank_with_knee_to_elbow",
		58: "plank_with_oblique_crunch",
		59: "weighted_plank_with_oblique_crunch",
		60: "plyometric_side_plank",
		61: "weighted_plyometric_side_plank",
		62: "rolling_side_plank",
		63: "weighted_rolling_side_plank",
		64: "side_kick_plank",
		65: "weighted_side_kick_plank",
		66: "side_plank",
		67: "weighted_side_plank",
		68: "side_plank_and_row",
		69: "weighted_side_plank_and_row",
		70: "side_plank_lift",
		71: "weighted_side_plank_lift",
		72: "side_plank_with_elbow_on_bosu_ball",
		73: "weighted_side_plank_with_elbow_on_bosu_ball",
		74: "side_plank_with_feet_on_bench",
		75: "weighted_side_plank_with_feet_on_bench",
		76: "side_plank_with_knee_circle",
		77: "weighted_side_plank_with_knee_circle",
		78: "side_plank_with_knee_tuck",
		79: "weighted_side_plank_with_knee_tuck",
		80: "side_plank_with_leg_lift",
		81: "weighted_side_plank_with_leg_lift",
		82: "side_plank_with_reach_under",
		83: "weighted_side_plank_with_reach_under",
		84: "single_leg_elevated_feet_plank",
		85: "weighted_single_leg_elevated_feet_plank",
		86: "single_leg_flex_and_extend",
		87: "weighted_single_leg_flex_and_extend",
		88: "single_leg_side_plank",
		89: "weighted_single_leg_side_plank",
		90: "spiderman_plank",
		91: "weighted_spiderman_plank",
		92: "straight_arm_plank",
		93: "weighted_straight_arm_plank",
		94: "straight_arm_plank_with_shoulder_touch",
		95: "weighted_straight_arm_plank_with_shoulder_touch",
		96: "swiss_ball_plank",
		97: "weighted_swiss_ball_plank",
		98: "swiss_ball_plank_leg_lift",
		99: "weighted_swiss_ball_plank_leg_lift",
		100: "swiss_ball_plank_leg_lift_and_hold",
		101: "swiss_ball_plank_with_feet_on_bench",
		102: "weighted_swiss_ball_plank_with_feet_on_bench",
		103: "swiss_ball_prone_jackknife",
		104: "weighted_swiss_ball_prone_jackknife",
		105: "swiss_ball_side_plank",
		106: "weighted_swiss_ball_side_plank",
		107: "three_way_plank",
		108: "weighted_three_way_plank",
		109: "towel_plank_and_knee_in",
		110: "weighted_towel_plank_and_knee_in",
		111: "t_stabilization",
		112: "weighted_t_stabilization",
		113: "turkish_get_up_to_side_plank",
		114: "weighted_turkish_get_up_to_side_plank",
		115: "two_point_plank",
		116: "weighted_two_point_plank",
		117: "weighted_plank",
		118: "wide_stance_plank_with_diagonal_arm_lift",
		119: "weighted_wide_stance_plank_with_diagonal_arm_lift",
		120: "wide_stance_plank_with_diagonal_leg_lift",
		121: "weighted_wide_stance_plank_with_diagonal_leg_lift",
		122: "wide_stance_plank_with_leg_lift",
		123: "weighted_wide_stance_plank_with_leg_lift",
		124: "wide_stance_plank_with_opposite_arm_and_leg_lift",
		125: "weighted_mountain_climber_with_hands_on_bench",
		126: "weighted_swiss_ball_plank_leg_lift_and_hold",
		127: "weighted_wide_stance_plank_with_opposite_arm_and_leg_lift",
		128: "plank_with_feet_on_swiss_ball",
		129: "side_plank_to_plank_with_reach_under",
		130: "bridge_with_glute_lower_lift",
		131: "bridge_one_leg_bridge",
		132: "plank_with_arm_variations",
		133: "plank_with_leg_lift",
		134: "reverse_plank_with_leg_pull",
		135: "ring_plank_sprawls"
	},
	plyo_exercise_name: {
		0: "alternating_jump_lunge",
		1: "weighted_alternating_jump_lunge",
		2: "barbell_jump_squat",
		3: "body_weight_jump_squat",
		4: "weighted_jump_squat",
		5: "cross_knee_strike",
		6: "weighted_cross_knee_strike",
		7: "depth_jump",
		8: "weighted_depth_jump",
		9: "dumbbell_jump_squat",
		10: "dumbbell_split_jump",
		11: "front_knee_strike",
		12: "weighted_front_knee_strike",
		13: "high_box_jump",
		14: "weighted_high_box_jump",
		15: "isometric_explosive_body_weight_jump_squat",
		16: "weighted_isometric_explosive_jump_squat",
		17: "lateral_leap_and_hop",
		18: "weighted_lateral_leap_and_hop",
		19: "lateral_plyo_squats",
		20: "weighted_lateral_plyo_squats",
		21: "lateral_slide",
		22: "weighted_lateral_slide",
		23: "medicine_ball_overhead_throws",
		24: "medicine_ball_side_throw",
		25: "medicine_ball_slam",
		26: "side_to_side_medicine_ball_throws",
		27: "side_to_side_shuffle_jump",
		28: "weighted_side_to_side_shuffle_jump",
		29: "squat_jump_onto_box",
		30: "weighted_squat_jump_onto_box",
		31: "squat_jumps_in_and_out",
		32: "weighted_squat_jumps_in_and_out",
		33: "box_jump",
		34: "box_jump_overs",
		35: "box_jump_overs_over_the_box",
		36: "star_jump_squats",
		37: "jump_squat"
	},
	pose_exercise_name: {
		0: "all_fours",
		1: "ankle_to_knee",
		2: "baby_cobra",
		3: "boat",
		4: "bound_angle",
		5: "bound_seated_single_leg_forward_bend",
		6: "bow",
		7: "bowed_half_moon",
		8: "bridge",
		9: "cat",
		10: "chair",
		11: "childs",
		12: "corpse",
		13: "cow_face",
		14: "cow",
		15: "devotional_warrior",
		16: "dolphin_plank",
		17: "dolphin",
		18: "down_dog_knee_to_nose",
		19: "down_dog_split",
		20: "down_dog_split_open_hip_bent_knee",
		21: "downward_facing_dog",
		22: "eagle",
		23: "easy_seated",
		24: "extended_puppy",
		25: "extended_side_angle",
		26: "fish",
		27: "four_limbed_staff",
		28: "full_split",
		29: "gate",
		30: "half_chair_half_ankle_to_knee",
		31: "half_moon",
		32: "head_to_knee",
		33: "heron",
		34: "heros",
		35: "high_lunge",
		36: "knees_chest_chin",
		37: "lizard",
		38: "locust",
		39: "low_lunge",
		40: "low_lunge_twist",
		41: "low_lunge_with_knee_down",
		42: "mermaid",
		43: "mountain",
		44: "one_legged_downward_facing_pose_open_hip_bent_knee",
		45: "one_legged_pigeon",
		46: "peaceful_warrior",
		47: "plank",
		48: "plow",
		49: "reclined_hand_to_foot",
		50: "revolved_half_moon",
		51: "revolved_head_to_knee",
		52: "revolved_triangle",
		53: "runners_lunge",
		54: "seated_easy_side_bend",
		55: "seated_easy_twist",
		56: "seated_long_leg_forward_bend",
		57: "seated_wide_leg_forward_bend",
		58: "shoulder_stand",
		59: "side_boat",
		60: "side_plank",
		61: "sphinx",
		62: "squat_open_arm_twist",
		63: "squat_palm_press",
		64: "staff",
		65: "standing_arms_up",
		66: "standing_forward_bend_halfway_up",
		67: "standing_forward_bend",
		68: "standing_side_opener",
		69: "standing_single_leg_forward_bend",
		70: "standing_split",
		71: "standing_wide_leg_forward_bend",
		72: "standing_wide_leg_forward_bend_with_twist",
		73: "supine_spinal_twist",
		74: "table_top",
		75: "thread_the_needle",
		76: "thunderbolt",
		77: "thunderbolt_pose_both_sides_arm_stretch",
		78: "tree",
		79: "triangle",
		80: "up_dog",
		81: "upward_facing_plank",
		82: "warrior_one",
		83: "warrior_three",
		84: "warrior_two",
		85: "wheel",
		86: "wide_side_lunge",
		87: "deep_breathing_wheelchair",
		88: "deep_breathing_low_wheelchair",
		89: "deep_breathing_mid_wheelchair",
		90: "deep_breathing_high_wheelchair",
		91: "prayer_wheelchair",
		92: "overhead_prayer_wheelchair",
		93: "cactus_wheelchair",
		94: "breathing_punches_wheelchair",
		95: "breathing_punches_extended_wheelchair",
		96: "breathing_punches_overhead_wheelchair",
		97: "breathing_punches_overhead_and_down_wheelchair",
		98: "breathing_punches_side_wheelchair",
		99: "breathing_punches_extended_side_wheelchair",
		100: "breathing_punches_overhead_side_wheelchair",
		101: "breathing_punches_overhead_and_down_side_wheelchair",
		102: "left_hand_back_wheelchair",
		103: "triangle_wheelchair",
		104: "thread_the_needle_wheelchair",
		105: "neck_flexion_and_extension_wheelchair",
		106: "neck_lateral_flexion_wheelchair",
		107: "spine_flexion_and_extension_wheelchair",
		108: "spine_rotation_wheelchair",
		109: "spine_lateral_flexion_wheelchair",
		110: "alternative_skiing_wheelchair",
		111: "reach_forward_wheelchair",
		112: "warrior_wheelchair",
		113: "reverse_warrior_wheelchair",
		114: "downward_facing_dog_to_cobra",
		115: "seated_cat_cow"
	},
	power_phase_type: {
		0: "power_phase_start_angle",
		1: "power_phase_end_angle",
		2: "power_phase_arc_length",
		3: "power_phase_center"
	},
	projectile_type: {
		0: "arrow",
		1: "rifle_cartridge",
		2: "pistol_cartridge",
		3: "shotshell",
		4: "air_rifle_pellet",
		5: "other"
	},
	pull_up_exercise_name: {
		0: "banded_pull_ups",
		1: "30_degree_lat_pulldown",
		2: "band_assisted_chin_up",
		3: "close_grip_chin_up",
		4: "weighted_close_grip_chin_up",
		5: "close_grip_lat_pulldown",
		6: "crossover_chin_up",
		7: "weighted_crossover_chin_up",
		8: "ez_bar_pullover",
		9: "hanging_hurdle",
		10: "weighted_hanging_hurdle",
		11: "kneeling_lat_pulldown",
		12: "kneeling_underhand_grip_lat_pulldown",
		13: "lat_pulldown",
		14: "mixed_grip_chin_up",
		15: "weighted_mixed_grip_chin_up",
		16: "mixed_grip_pull_up",
		17: "weighted_mixed_grip_pull_up",
		18: "reverse_grip_pulldown",
		19: "standing_cable_pullover",
		20: "straight_arm_pulldown",
		21: "swiss_ball_ez_bar_pullover",
		22: "towel_pull_up",
		23: "weighted_towel_pull_up",
		24: "weighted_pull_up",
		25: "wide_grip_lat_pulldown",
		26: "wide_grip_pull_up",
		27: "weighted_wide_grip_pull_up",
		28: "burpee_pull_up",
		29: "weighted_burpee_pull_up",
		30: "jumping_pull_ups",
		31: "weighted_jumping_pull_ups",
		32: "kipping_pull_up",
		33: "weighted_kipping_pull_up",
		34: "l_pull_up",
		35: "weighted_l_pull_up",
		36: "suspended_chin_up",
		37: "weighted_suspended_chin_up",
		38: "pull_up",
		39: "chin_up",
		40: "neutral_grip_chin_up",
		41: "weighted_chin_up",
		42: "band_assisted_pull_up",
		43: "neutral_grip_pull_up",
		44: "weighted_neutral_grip_chin_up",
		45: "weighted_neutral_grip_pull_up"
	},
	push_up_exercise_name: {
		0: "chest_press_with_band",
		1: "alternating_staggered_push_up",
		2: "weighted_alternating_staggered_push_up",
		3: "alternating_hands_medicine_ball_push_up",
		4: "weighted_alternating_hands_medicine_ball_push_up",
		5: "bosu_ball_push_up",
		6: "weighted_bosu_ball_push_up",
		7: "clapping_push_up",
		8: "weighted_clapping_push_up",
		9: "close_grip_medicine_ball_push_up",
		10: "weighted_close_grip_medicine_ball_push_up",
		11: "close_hands_push_up",
		12: "weighted_close_hands_push_up",
		13: "decline_push_up",
		14: "weighted_decline_push_up",
		15: "diamond_push_up",
		16: "weighted_diamond_push_up",
		17: "explosive_crossover_push_up",
		18: "weighted_explosive_crossover_push_up",
		19: "explosive_push_up",
		20: "weighted_explosive_push_up",
		21: "feet_elevated_side_to_side_push_up",
		22: "weighted_feet_elevated_side_to_side_push_up",
		23: "hand_release_push_up",
		24: "weighted_hand_release_push_up",
		25: "handstand_push_up",
		26: "weighted_handstand_push_up",
		27: "incline_push_up",
		28: "weighted_incline_push_up",
		29: "isometric_explosive_push_up",
		30: "weighted_isometric_explosive_push_up",
		31: "judo_push_up",
		32: "weighted_judo_push_up",
		33: "kneeling_push_up",
		34: "weighted_kneeling_push_up",
		35: "medicine_ball_chest_pass",
		36: "medicine_ball_push_up",
		37: "weighted_medicine_ball_push_up",
		38: "one_arm_push_up",
		39: "weighted_one_arm_push_up",
		40: "weighted_push_up",
		41: "push_up_and_row",
		42: "weighted_push_up_and_row",
		43: "push_up_plus",
		44: "weighted_push_up_plus",
		45: "push_up_with_feet_on_swiss_ball",
		46: "weighted_push_up_with_feet_on_swiss_ball",
		47: "push_up_with_one_hand_on_medicine_ball",
		48: "weighted_push_up_with_one_hand_on_medicine_ball",
		49: "shoulder_push_up",
		50: "weighted_shoulder_push_up",
		51: "single_arm_medicine_ball_push_up",
		52: "weighted_single_arm_medicine_ball_push_up",
		53: "spiderman_push_up",
		54: "weighted_spiderman_push_up",
		55: "stacked_feet_push_up",
		56: "weighted_stacked_feet_push_up",
		57: "staggered_hands_push_up",
		58: "weighted_staggered_hands_push_up",
		59: "suspended_push_up",
		60: "weighted_suspended_push_up",
		61: "swiss_ball_push_up",
		62: "weighted_swiss_ball_push_up",
		63: "swiss_ball_push_up_plus",
		64: "weighted_swiss_ball_push_up_plus",
		65: "t_push_up",
		66: "weighted_t_push_up",
		67: "triple_stop_push_up",
		68: "weighted_triple_stop_push_up",
		69: "wide_hands_push_up",
		70: "weighted_wide_hands_push_up",
		71: "parallette_handstand_push_up",
		72: "weighted_parallette_handstand_push_up",
		73: "ring_handstand_push_up",
		74: "weighted_ring_handstand_push_up",
		75: "ring_push_up",
		76: "weighted_ring_push_up",
		77: "push_up",
		78: "pilates_pushup",
		79: "dynamic_push_up",
		80: "kipping_handstand_push_up",
		81: "shoulder_tapping_push_up",
		82: "biceps_push_up",
		83: "hindu_push_up",
		84: "pike_push_up",
		85: "wide_grip_push_up",
		86: "weighted_biceps_push_up",
		87: "weighted_hindu_push_up",
		88: "weighted_pike_push_up",
		89: "kipping_parallette_handstand_push_up",
		90: "wall_push_up"
	},
	pwr_zone_calc: {
		0: "custom",
		1: "percent_ftp"
	},
	radar_threat_level_type: {
		0: "threat_unknown",
		1: "threat_none",
		2: "threat_approaching",
		3: "threat_approaching_fast"
	},
	rider_position_type: {
		0: "seated",
		1: "standing",
		2: "transition_to_seated",
		3: "transition_to_standing"
	},
	row_exercise_name: {
		0: "barbell_straight_leg_deadlift_to_row",
		1: "cable_row_standing",
		2: "dumbbell_row",
		3: "elevated_feet_inverted_row",
		4: "weighted_elevated_feet_inverted_row",
		5: "face_pull",
		6: "face_pull_with_external_rotation",
		7: "inverted_row_with_feet_on_swiss_ball",
		8: "weighted_inverted_row_with_feet_on_swiss_ball",
		9: "kettlebell_row",
		10: "modified_inverted_row",
		11: "weighted_modified_inverted_row",
		12: "neutral_grip_alternating_dumbbell_row",
		13: "one_arm_bent_over_row",
		14: "one_legged_dumbbell_row",
		15: "renegade_row",
		16: "reverse_grip_barbell_row",
		17: "rope_handle_cable_row",
		18: "seated_cable_row",
		19: "seated_dumbbell_row",
		20: "single_arm_cable_row",
		21: "single_arm_cable_row_and_rotation",
		22: "single_arm_inverted_row",
		23: "weighted_single_arm_inverted_row",
		24: "single_arm_neutral_grip_dumbbell_row",
		25: "single_arm_neutral_grip_dumbbell_row_and_rotation",
		26: "suspended_inverted_row",
		27: "weighted_suspended_inverted_row",
		28: "t_bar_row",
		29: "towel_grip_inverted_row",
		30: "weighted_towel_grip_inverted_row",
		31: "underhand_grip_cable_row",
		32: "v_grip_cable_row",
		33: "wide_grip_seated_cable_row",
		34: "alternating_dumbbell_row",
		35: "inverted_row",
		36: "row",
		37: "weighted_row",
		38: "indoor_row",
		39: "banded_face_pulls",
		40: "chest_supported_dumbbell_row",
		41: "decline_ring_row",
		42: "elevated_ring_row",
		43: "rdl_bent_over_row_with_barbell_dumbbell",
		44: "ring_row",
		45: "barbell_row",
		46: "bent_over_row_with_barbell",
		47: "bent_over_row_with_dumbell",
		48: "seated_underhand_grip_cable_row",
		49: "trx_inverted_row",
		50: "weighted_inverted_row",
		51: "weighted_trx_inverted_row",
		52: "dumbbell_row_wheelchair"
	},
	run_exercise_name: {
		0: "run",
		1: "walk",
		2: "jog",
		3: "sprint",
		4: "run_or_walk",
		5: "speed_walk",
		6: "warm_up"
	},
	run_indoor_exercise_name: {
		0: "indoor_track_run",
		1: "treadmill"
	},
	sandbag_exercise_name: {
		0: "around_the_world",
		1: "back_squat",
		2: "bear_crawl_pull_through",
		3: "bear_hug_squat",
		4: "clean",
		5: "clean_and_press",
		6: "curl",
		7: "front_carry",
		8: "front_squat",
		9: "lunge",
		10: "overhead_press",
		11: "plank_pull_through",
		12: "rotational_lunge",
		13: "row",
		14: "russian_twist",
		15: "shouldering",
		16: "shoveling",
		17: "side_lunge",
		18: "sprint",
		19: "zercher_squat"
	},
	schedule: {
		0: "workout",
		1: "course"
	},
	segment_delete_status: {
		0: "do_not_delete",
		1: "delete_one",
		2: "delete_all"
	},
	segment_lap_status: {
		0: "end",
		1: "fail"
	},
	segment_leaderboard_type: {
		0: "overall",
		1: "personal_best",
		2: "connections",
		3: "group",
		4: "challenger",
		5: "kom",
		6: "qom",
		7: "pr",
		8: "goal",
		9: "carrot",
		10: "club_leader",
		11: "rival",
		12: "last",
		13: "recent_best",
		14: "course_record"
	},
	segment_selection_type: {
		0: "starred",
		1: "suggested"
	},
	sensor_type: {
		0: "accelerometer",
		1: "gyroscope",
		2: "compass",
		3: "barometer"
	},
	session_trigger: {
		0: "activity_end",
		1: "manual",
		2: "auto_multi_sport",
		3: "fitness_equipment"
	},
	set_type: {
		0: "rest",
		1: "active"
	},
	shoulder_press_exercise_name: {
		0: "alternating_dumbbell_shoulder_press",
		1: "arnold_press",
		2: "barbell_front_squat_to_push_press",
		3: "barbell_push_press",
		4: "barbell_shoulder_press",
		5: "dead_curl_press",
		6: "dumbbell_alternating_shoulder_press_and_twist",
		7: "dumbbell_hammer_curl_to_lunge_to_press",
		8: "dumbbell_push_press",
		9: "floor_inverted_shoulder_press",
		10: "weighted_floor_inverted_shoulder_press",
		11: "inverted_shoulder_press",
		12: "weighted_inverted_shoulder_press",
		13: "one_arm_push_press",
		14: "overhead_barbell_press",
		15: "overhead_dumbbell_press",
		16: "seated_barbell_shoulder_press",
		17: "seated_dumbbell_shoulder_press",
		18: "single_arm_dumbbell_shoulder_press",
		19: "single_arm_step_up_and_press",
		20: "smith_machine_overhead_press",
		21: "split_stance_hammer_curl_to_press",
		22: "swiss_ball_dumbbell_shoulder_press",
		23: "weight_plate_front_raise",
		24: "dumbbell_shoulder_press",
		25: "military_press",
		27: "strict_press",
		28: "dumbbell_front_raise",
		29: "dumbbell_curl_to_overhead_press_wheelchair",
		30: "arnold_press_wheelchair",
		31: "overhead_dumbbell_press_wheelchair"
	},
	shoulder_stability_exercise_name: {
		0: "90_degree_cable_external_rotation",
		1: "band_external_rotation",
		2: "band_internal_rotation",
		3: "bent_arm_lateral_raise_and_external_rotation",
		4: "cable_external_rotation",
		5: "dumbbell_face_pull_with_external_rotation",
		6: "floor_i_raise",
		7: "weighted_floor_i_raise",
		8: "floor_t_raise",
		9: "weighted_floor_t_raise",
		10: "floor_y_raise",
		11: "weighted_floor_y_raise",
		12: "incline_i_raise",
		13: "weighted_incline_i_raise",
		14: "incline_l_raise",
		15: "weighted_incline_l_raise",
		16: "incline_t_raise",
		17: "weighted_incline_t_raise",
		18: "incline_w_raise",
		19: "weighted_incline_w_raise",
		20: "incline_y_raise",
		21: "weighted_incline_y_raise",
		22: "lying_external_rotation",
		23: "seated_dumbbell_external_rotation",
		24: "standing_l_raise",
		25: "swiss_ball_i_raise",
		26: "weighted_swiss_ball_i_raise",
		27: "swiss_ball_t_raise",
		28: "weighted_swiss_ball_t_raise",
		29: "swiss_ball_w_raise",
		30: "weighted_swiss_ball_w_raise",
		31: "swiss_ball_y_raise",
		32: "weighted_swiss_ball_y_raise",
		33: "cable_internal_rotation",
		34: "lying_internal_rotation",
		35: "seated_dumbbell_internal_rotation"
	},
	shrug_exercise_name: {
		0: "barbell_jump_shrug",
		1: "barbell_shrug",
		2: "barbell_upright_row",
		3: "behind_the_back_smith_machine_shrug",
		4: "dumbbell_jump_shrug",
		5: "dumbbell_shrug",
		6: "dumbbell_upright_row",
		7: "incline_dumbbell_shrug",
		8: "overhead_barbell_shrug",
		9: "overhead_dumbbell_shrug",
		10: "scaption_and_shrug",
		11: "scapular_retraction",
		12: "serratus_chair_shrug",
		13: "weighted_serratus_chair_shrug",
		14: "serratus_shrug",
		15: "weighted_serratus_shrug",
		16: "wide_grip_jump_shrug",
		17: "wide_grip_barbell_shrug",
		18: "behind_the_back_shrug",
		19: "dumbbell_shrug_wheelchair",
		20: "shrug_wheelchair",
		21: "shrug_arm_down_wheelchair",
		22: "shrug_arm_mid_wheelchair",
		23: "shrug_arm_up_wheelchair",
		24: "upright_row"
	},
	side: {
		0: "right",
		1: "left"
	},
	sit_up_exercise_name: {
		0: "alternating_sit_up",
		1: "weighted_alternating_sit_up",
		2: "bent_knee_v_up",
		3: "weighted_bent_knee_v_up",
		4: "butterfly_sit_up",
		5: "weighted_butterfly_situp",
		6: "cross_punch_roll_up",
		7: "weighted_cross_punch_roll_up",
		8: "crossed_arms_sit_up",
		9: "weighted_crossed_arms_sit_up",
		10: "get_up_sit_up",
		11: "weighted_get_up_sit_up",
		12: "hovering_sit_up",
		13: "weighted_hovering_sit_up",
		14: "kettlebell_sit_up",
		15: "medicine_ball_alternating_v_up",
		16: "medicine_ball_sit_up",
		17: "medicine_ball_v_up",
		18: "modified_sit_up",
		19: "negative_sit_up",
		20: "one_arm_full_sit_up",
		21: "reclining_circle",
		22: "weighted_reclining_circle",
		23: "reverse_curl_up",
		24: "weighted_reverse_curl_up",
		25: "single_leg_swiss_ball_jackknife",
		26: "weighted_single_leg_swiss_ball_jackknife",
		27: "the_teaser",
		28: "the_teaser_weighted",
		29: "three_part_roll_down",
		30: "weighted_three_part_roll_down",
		31: "v_up",
		32: "weighted_v_up",
		33: "weighted_russian_twist_on_swiss_ball",
		34: "weighted_sit_up",
		35: "x_abs",
		36: "weighted_x_abs",
		37: "sit_up",
		38: "ghd_sit_ups",
		39: "sit_up_turkish_get_up",
		40: "russian_twist_on_swiss_ball"
	},
	sled_exercise_name: {
		0: "backward_drag",
		1: "chest_press",
		2: "forward_drag",
		3: "low_push",
		4: "push",
		5: "row"
	},
	sledge_hammer_exercise_name: {
		0: "lateral_swing",
		1: "hammer_slam"
	},
	sleep_disruption_severity: {
		0: "none",
		1: "low",
		2: "medium",
		3: "high"
	},
	sleep_level: {
		0: "unmeasurable",
		1: "awake",
		2: "light",
		3: "deep",
		4: "rem"
	},
	source_type: {
		0: "ant",
		1: "antplus",
		2: "bluetooth",
		3: "bluetooth_low_energy",
		4: "wifi",
		5: "local"
	},
	split_type: {
		1: "ascent_split",
		2: "descent_split",
		3: "interval_active",
		4: "interval_rest",
		5: "interval_warmup",
		6: "interval_cooldown",
		7: "interval_recovery",
		8: "interval_other",
		9: "climb_active",
		10: "climb_rest",
		11: "surf_active",
		12: "run_active",
		13: "run_rest",
		14: "workout_round",
		17: "rwd_run",
		18: "rwd_walk",
		21: "windsurf_active",
		22: "rwd_stand",
		23: "transition",
		28: "ski_lift_split",
		29: "ski_run_split"
	},
	spo2_measurement_type: {
		0: "off_wrist",
		1: "spot_check",
		2: "continuous_check",
		3: "periodic"
	},
	sport: FIT_PROFILE_SPORTS,
	sport_bits0: {
		1: "generic",
		2: "running",
		4: "cycling",
		8: "transition",
		16: "fitness_equipment",
		32: "swimming",
		64: "basketball",
		128: "soccer"
	},
	sport_bits1: {
		1: "tennis",
		2: "american_football",
		4: "training",
		8: "walking",
		16: "cross_country_skiing",
		32: "alpine_skiing",
		64: "snowboarding",
		128: "rowing"
	},
	sport_bits2: {
		1: "mountaineering",
		2: "hiking",
		4: "multisport",
		8: "paddling",
		16: "flying",
		32: "e_biking",
		64: "motorcycling",
		128: "boating"
	},
	sport_bits3: {
		1: "driving",
		2: "golf",
		4: "hang_gliding",
		8: "horseback_riding",
		16: "hunting",
		32: "fishing",
		64: "inline_skating",
		128: "rock_climbing"
	},
	sport_bits4: {
		1: "sailing",
		2: "ice_skating",
		4: "sky_diving",
		8: "snowshoeing",
		16: "snowmobiling",
		32: "stand_up_paddleboarding",
		64: "surfing",
		128: "wakeboarding"
	},
	sport_bits5: {
		1: "water_skiing",
		2: "kayaking",
		4: "rafting",
		8: "windsurfing",
		16: "kitesurfing",
		32: "tactical",
		64: "jumpmaster",
		128: "boxing"
	},
	sport_bits6: { 1: "floor_climbing" },
	sport_event: {
		0: "uncategorized",
		1: "geocaching",
		2: "fitness",
		3: "recreation",
		4: "race",
		5: "special_event",
		6: "training",
		7: "transportation",
		8: "touring"
	},
	squat_exercise_name: {
		0: "leg_press",
		1: "back_squat_with_body_bar",
		2: "back_squats",
		3: "weighted_back_squats",
		4: "balancing_squat",
		5: "weighted_balancing_squat",
		6: "barbell_back_squat",
		7: "barbell_box_squat",
		8: "barbell_front_squat",
		9: "barbell_hack_squat",
		10: "barbell_hang_squat_snatch",
		11: "barbell_lateral_step_up",
		12: "barbell_quarter_squat",
		13: "barbell_siff_squat",
		14: "barbell_squat_snatch",
		15: "barbell_squat_with_heels_raised",
		16: "barbell_stepover",
		17: "barbell_step_up",
		18: "bench_squat_with_rotational_chop",
		19: "weighted_bench_squat_with_rotational_chop",
		20: "body_weight_wall_squat",
		21: "weighted_wall_squat",
		22: "box_step_squat",
		23: "weighted_box_step_squat",
		24: "braced_squat",
		25: "crossed_arm_barbell_front_squat",
		26: "crossover_dumbbell_step_up",
		27: "dumbbell_front_squat",
		28: "dumbbell_split_squat",
		29: "dumbbell_squat",
		30: "dumbbell_squat_clean",
		31: "dumbbell_stepover",
		32: "dumbbell_step_up",
		33: "elevated_single_leg_squat",
		34: "weighted_elevated_single_leg_squat",
		35: "figure_four_squats",
		36: "weighted_figure_four_squats",
		37: "goblet_squat",
		38: "kettlebell_squat",
		39: "kettlebell_swing_overhead",
		40: "kettlebell_swing_with_flip_to_squat",
		41: "lateral_dumbbell_step_up",
		42: "one_legged_squat",
		43: "overhead_dumbbell_squat",
		44: "overhead_squat",
		45: "partial_single_leg_squat",
		46: "weighted_partial_single_leg_squat",
		47: "pistol_squat",
		48: "weighted_pistol_squat",
		49: "plie_slides",
		50: "weighted_plie_slides",
		51: "plie_squat",
		52: "weighted_plie_squat",
		53: "prisoner_squat",
		54: "weighted_prisoner_squat",
		55: "single_leg_bench_get_up",
		56: "weighted_single_leg_bench_get_up",
		57: "single_leg_bench_squat",
		58: "weighted_single_leg_bench_squat",
		59: "single_leg_squat_on_swiss_ball",
		60: "weighted_single_leg_squat_on_swiss_ball",
		61: "squat",
		62: "weighted_squat",
		63: "squats_with_band",
		64: "staggered_squat",
		65: "weighted_staggered_squat",
		66: "step_up",
		67: "weighted_step_up",
		68: "suitcase_squats",
		69: "sumo_squat",
		70: "sumo_squat_slide_in",
		71: "weighted_sumo_squat_slide_in",
		72: "sumo_squat_to_high_pull",
		73: "sumo_squat_to_stand",
		74: "weighted_sumo_squat_to_stand",
		75: "sumo_squat_with_rotation",
		76: "weighted_sumo_squat_with_rotation",
		77: "swiss_ball_body_weight_wall_squat",
		78: "weighted_swiss_ball_wall_squat",
		79: "thrusters",
		80: "uneven_squat",
		81: "weighted_uneven_squat",
		82: "waist_slimming_squat",
		83: "wall_ball",
		84: "wide_stance_barbell_squat",
		85: "wide_stance_goblet_squat",
		86: "zercher_squat",
		87: "kbs_overhead",
		88: "squat_and_side_kick",
		89: "squat_jumps_in_n_out",
		90: "pilates_plie_squats_parallel_turned_out_flat_and_heels",
		91: "releve_straight_leg_and_knee_bent_with_one_leg_variation",
		92: "alternating_box_dumbbell_step_ups",
		93: "dumbbell_overhead_squat_single_arm",
		94: "dumbbell_squat_snatch",
		95: "medicine_ball_squat",
		97: "wall_ball_squat_and_press",
		98: "squat_american_swing",
		100: "air_squat",
		101: "dumbbell_thrusters",
		102: "overhead_barbell_squat"
	},
	stair_stepper_exercise_name: { 0: "stair_stepper" },
	stroke_type: {
		0: "no_event",
		1: "other",
		2: "serve",
		3: "forehand",
		4: "backhand",
		5: "smash"
	},
	sub_sport: FIT_PROFILE_SUB_SPORTS,
	supported_exd_screen_layouts: {
		1: "full_screen",
		2: "half_vertical",
		4: "half_horizontal",
		8: "half_vertical_right_split",
		16: "half_horizontal_bottom_split",
		32: "full_quarter_split",
		64: "half_vertical_left_split",
		128: "half_horizontal_top_split"
	},
	suspension_exercise_name: {
		0: "chest_fly",
		1: "chest_press",
		2: "crunch",
		3: "curl",
		4: "dip",
		5: "face_pull",
		6: "glute_bridge",
		7: "hamstring_curl",
		8: "hip_drop",
		9: "inverted_row",
		10: "knee_drive_jump",
		11: "knee_to_chest",
		12: "lat_pullover",
		13: "lunge",
		14: "mountain_climber",
		15: "pendulum",
		16: "pike",
		17: "plank",
		18: "power_pull",
		19: "pull_up",
		20: "push_up",
		21: "reverse_mountain_climber",
		22: "reverse_plank",
		23: "rollout",
		24: "row",
		25: "side_lunge",
		26: "side_plank",
		27: "single_leg_deadlift",
		28: "single_leg_squat",
		29: "sit_up",
		30: "split",
		31: "squat",
		32: "squat_jump",
		33: "tricep_press",
		34: "y_fly"
	},
	swim_stroke: {
		0: "freestyle",
		1: "backstroke",
		2: "breaststroke",
		3: "butterfly",
		4: "drill",
		5: "mixed",
		6: "im",
		7: "im_by_round",
		8: "rimo"
	},
	switch: {
		0: "off",
		1: "on",
		2: "auto"
	},
	tap_sensitivity: {
		0: "high",
		1: "medium",
		2: "low"
	},
	time_into_day: {},
	time_mode: {
		0: "hour12",
		1: "hour24",
		2: "military",
		3: "hour12_with_seconds",
		4: "hour24_with_seconds",
		5: "utc"
	},
	timer_trigger: {
		0: "manual",
		1: "auto",
		2: "fitness_equipment"
	},
	time_zone: {
		0: "almaty",
		1: "bangkok",
		2: "bombay",
		3: "brasilia",
		4: "cairo",
		5: "cape_verde_is",
		6: "darwin",
		7: "eniwetok",
		8: "fiji",
		9: "hong_kong",
		10: "islamabad",
		11: "kabul",
		12: "magadan",
		13: "mid_atlantic",
		14: "moscow",
		15: "muscat",
		16: "newfoundland",
		17: "samoa",
		18: "sydney",
		19: "tehran",
		20: "tokyo",
		21: "us_alaska",
		22: "us_atlantic",
		23: "us_central",
		24: "us_eastern",
		25: "us_hawaii",
		26: "us_mountain",
		27: "us_pacific",
		28: "other",
		29: "auckland",
		30: "kathmandu",
		31: "europe_western_wet",
		32: "europe_central_cet",
		33: "europe_eastern_eet",
		34: "jakarta",
		35: "perth",
		36: "adelaide",
		37: "brisbane",
		38: "tasmania",
		39: "iceland",
		40: "amsterdam",
		41: "athens",
		42: "barcelona",
		43: "berlin",
		44: "brussels",
		45: "budapest",
		46: "copenhagen",
		47: "dublin",
		48: "helsinki",
		49: "lisbon",
		50: "london",
		51: "madrid",
		52: "munich",
		53: "oslo",
		54: "paris",
		55: "prague",
		56: "reykjavik",
		57: "rome",
		58: "stockholm",
		59: "vienna",
		60: "warsaw",
		61: "zurich",
		62: "quebec",
		63: "ontario",
		64: "manitoba",
		65: "saskatchewan",
		66: "alberta",
		67: "british_columbia",
		68: "boise",
		69: "boston",
		70: "chicago",
		71: "dallas",
		72: "denver",
		73: "kansas_city",
		74: "las_vegas",
		75: "los_angeles",
		76: "miami",
		77: "minneapolis",
		78: "new_york",
		79: "new_orleans",
		80: "phoenix",
		81: "santa_fe",
		82: "seattle",
		83: "washington_dc",
		84: "us_arizona",
		85: "chita",
		86: "ekaterinburg",
		87: "irkutsk",
		88: "kaliningrad",
		89: "krasnoyarsk",
		90: "novosibirsk",
		91: "petropavlovsk_kamchatskiy",
		92: "samara",
		93: "vladivostok",
		94: "mexico_central",
		95: "mexico_mountain",
		96: "mexico_pacific",
		97: "cape_town",
		98: "winkhoek",
		99: "lagos",
		100: "riyahd",
		101: "venezuela",
		102: "australia_lh",
		103: "santiago",
		253: "manual",
		254: "automatic"
	},
	tire_exercise_name: { 0: "flip" },
	tissue_model_type: { 0: "zhl16c" },
	tone: {
		0: "off",
		1: "tone",
		2: "vibrate",
		3: "tone_and_vibrate"
	},
	total_body_exercise_name: {
		0: "burpee",
		1: "weighted_burpee",
		2: "burpee_box_jump",
		3: "weighted_burpee_box_jump",
		4: "high_pull_burpee",
		5: "man_makers",
		6: "one_arm_burpee",
		7: "squat_thrusts",
		8: "weighted_squat_thrusts",
		9: "squat_plank_push_up",
		10: "weighted_squat_plank_push_up",
		11: "standing_t_rotation_balance",
		12: "weighted_standing_t_rotation_balance",
		13: "barbell_burpee",
		15: "burpee_box_jump_over_yes_literally_jumping_over_the_box",
		16: "burpee_box_jump_step_up_over",
		17: "lateral_barbell_burpee",
		18: "total_body_burpee_over_bar",
		19: "burpee_box_jump_over",
		20: "burpee_wheelchair"
	},
	triceps_extension_exercise_name: {
		0: "bench_dip",
		1: "weighted_bench_dip",
		2: "body_weight_dip",
		3: "cable_kickback",
		4: "cable_lying_triceps_extension",
		5: "cable_overhead_triceps_extension",
		6: "dumbbell_kickback",
		7: "dumbbell_lying_triceps_extension",
		8: "ez_bar_overhead_triceps_extension",
		9: "incline_dip",
		10: "weighted_incline_dip",
		11: "incline_ez_bar_lying_triceps_extension",
		12: "lying_dumbbell_pullover_to_extension",
		13: "lying_ez_bar_triceps_extension",
		14: "lying_triceps_extension_to_close_grip_bench_press",
		15: "overhead_dumbbell_triceps_extension",
		16: "reclining_triceps_press",
		17: "reverse_grip_pressdown",
		18: "reverse_grip_triceps_pressdown",
		19: "rope_pressdown",
		20: "seated_barbell_overhead_triceps_extension",
		21: "seated_dumbbell_overhead_triceps_extension",
		22: "seated_ez_bar_overhead_triceps_extension",
		23: "seated_single_arm_overhead_dumbbell_extension",
		24: "single_arm_dumbbell_overhead_triceps_extension",
		25: "single_dumbbell_seated_overhead_triceps_extension",
		26: "single_leg_bench_dip_and_kick",
		27: "weighted_single_leg_bench_dip_and_kick",
		28: "single_leg_dip",
		29: "weighted_single_leg_dip",
		30: "static_lying_triceps_extension",
		31: "suspended_dip",
		32: "weighted_suspended_dip",
		33: "swiss_ball_dumbbell_lying_triceps_extension",
		34: "swiss_ball_ez_bar_lying_triceps_extension",
		35: "swiss_ball_ez_bar_overhead_triceps_extension",
		36: "tabletop_dip",
		37: "weighted_tabletop_dip",
		38: "triceps_extension_on_floor",
		39: "triceps_pressdown",
		40: "weighted_dip",
		41: "alternating_dumbbell_lying_triceps_extension",
		42: "triceps_press",
		43: "dumbbell_kickback_wheelchair",
		44: "overhead_dumbbell_triceps_extension_wheelchair"
	},
	turn_type: {
		0: "arriving_idx",
		1: "arriving_left_idx",
		2: "arriving_right_idx",
		3: "arriving_via_idx",
		4: "arriving_via_left_idx",
		5: "arriving_via_right_idx",
		6: "bear_keep_left_idx",
		7: "bear_keep_right_idx",
		8: "continue_idx",
		9: "exit_left_idx",
		10: "exit_right_idx",
		11: "ferry_idx",
		12: "roundabout45_idx",
		13: "roundabout90_idx",
		14: "roundabout135_idx",
		15: "roundabout180_idx",
		16: "roundabout225_idx",
		17: "roundabout270_idx",
		18: "roundabout315_idx",
		19: "roundabout360_idx",
		20: "roundabout_neg45_idx",
		21: "roundabout_neg90_idx",
		22: "roundabout_neg135_idx",
		23: "roundabout_neg180_idx",
		24: "roundabout_neg225_idx",
		25: "roundabout_neg270_idx",
		26: "roundabout_neg315_idx",
		27: "roundabout_neg360_idx",
		28: "roundabout_generic_idx",
		29: "roundabout_neg_generic_idx",
		30: "sharp_turn_left_idx",
		31: "sharp_turn_right_idx",
		32: "turn_left_idx",
		33: "turn_right_idx",
		34: "uturn_left_idx",
		35: "uturn_right_idx",
		36: "icon_inv_idx",
		37: "icon_idx_cnt"
	},
	user_local_id: {
		0: "local_min",
		15: "local_max",
		16: "stationary_min",
		255: "stationary_max",
		256: "portable_min",
		65534: "portable_max"
	},
	warm_up_exercise_name: {
		0: "quadruped_rocking",
		1: "neck_tilts",
		2: "ankle_circles",
		3: "ankle_dorsiflexion_with_band",
		4: "ankle_internal_rotation",
		5: "arm_circles",
		6: "bent_over_reach_to_sky",
		7: "cat_camel",
		8: "elbow_to_foot_lunge",
		9: "forward_and_backward_leg_swings",
		10: "groiners",
		11: "inverted_hamstring_stretch",
		12: "lateral_duck_under",
		13: "neck_rotations",
		14: "opposite_arm_and_leg_balance",
		15: "reach_roll_and_lift",
		16: "scorpion",
		17: "shoulder_circles",
		18: "side_to_side_leg_swings",
		19: "sleeper_stretch",
		20: "slide_out",
		21: "swiss_ball_hip_crossover",
		22: "swiss_ball_reach_roll_and_lift",
		23: "swiss_ball_windshield_wipers",
		24: "thoracic_rotation",
		25: "walking_high_kicks",
		26: "walking_high_knees",
		27: "walking_knee_hugs",
		28: "walking_leg_cradles",
		29: "walkout",
		30: "walkout_from_push_up_position",
		31: "biceps_stretch",
		32: "glutes_stretch",
		33: "standing_hamstring_stretch",
		34: "stretch90_90",
		35: "stretch_abs",
		36: "stretch_butterfly",
		37: "stretch_calf",
		38: "stretch_cat_cow",
		39: "stretch_childs_pose",
		40: "stretch_cobra",
		41: "stretch_forearms",
		42: "stretch_forward_glutes",
		43: "stretch_front_split",
		44: "stretch_hamstring",
		45: "stretch_hip_flexor_and_quad",
		46: "stretch_lat",
		47: "stretch_levator_scapulae",
		48: "stretch_lunge_with_spinal_twist",
		49: "stretch_lunging_hip_flexor",
		50: "stretch_lying_abduction",
		51: "stretch_lying_it_band",
		52: "stretch_lying_knee_to_chest",
		53: "stretch_lying_piriformis",
		54: "stretch_lying_spinal_twist",
		55: "stretch_neck",
		56: "stretch_obliques",
		57: "stretch_over_under_shoulder",
		58: "stretch_pectoral",
		59: "stretch_pigeon_pose",
		60: "stretch_piriformis",
		61: "stretch_quad",
		62: "stretch_scorpion",
		63: "stretch_shoulder",
		64: "stretch_side",
		65: "stretch_side_lunge",
		66: "stretch_side_split",
		67: "stretch_standing_it_band",
		68: "stretch_straddle",
		69: "stretch_triceps",
		70: "stretch_wall_chest_and_shoulder",
		71: "neck_rotations_wheelchair",
		72: "half_kneeling_arm_rotation",
		73: "three_way_ankle_mobilization",
		74: "ninety_ninety_hip_switch",
		75: "active_frog",
		76: "shoulder_sweeps",
		77: "ankle_lunges",
		78: "back_roll_foam_roller",
		79: "bear_crawl",
		80: "latissimus_dorsi_foam_roll",
		81: "reverse_t_hip_opener",
		82: "shoulder_rolls",
		83: "chest_openers",
		84: "triceps_stretch",
		85: "upper_back_stretch",
		86: "hip_circles",
		87: "ankle_stretch",
		88: "marching_in_place",
		89: "triceps_stretch_wheelchair",
		90: "upper_back_stretch_wheelchair"
	},
	watchface_mode: {
		0: "digital",
		1: "analog",
		2: "connect_iq",
		3: "disabled"
	},
	water_type: {
		0: "fresh",
		1: "salt",
		2: "en13319",
		3: "custom"
	},
	weather_report: {
		0: "current",
		1: "hourly_forecast",
		2: "daily_forecast"
	},
	weather_severe_type: {
		0: "unspecified",
		1: "tornado",
		2: "tsunami",
		3: "hurricane",
		4: "extreme_wind",
		5: "typhoon",
		6: "inland_hurricane",
		7: "hurricane_force_wind",
		8: "waterspout",
		9: "severe_thunderstorm",
		10: "wreckhouse_winds",
		11: "les_suetes_wind",
		12: "avalanche",
		13: "flash_flood",
		14: "tropical_storm",
		15: "inland_tropical_storm",
		16: "blizzard",
		17: "ice_storm",
		18: "freezing_rain",
		19: "debris_flow",
		20: "flash_freeze",
		21: "dust_storm",
		22: "high_wind",
		23: "winter_storm",
		24: "heavy_freezing_spray",
		25: "extreme_cold",
		26: "wind_chill",
		27: "cold_wave",
		28: "heavy_snow_alert",
		29: "lake_effect_blowing_snow",
		30: "snow_squall",
		31: "lake_effect_snow",
		32: "winter_weather",
		33: "sleet",
		34: "snowfall",
		35: "snow_and_blowing_snow",
		36: "blowing_snow",
		37: "snow_alert",
		38: "arctic_outflow",
		39: "freezing_drizzle",
		40: "storm",
		41: "storm_surge",
		42: "rainfall",
		43: "areal_flood",
		44: "coastal_flood",
		45: "lakeshore_flood",
		46: "excessive_heat",
		47: "heat",
		48: "weather",
		49: "high_heat_and_humidity",
		50: "humidex_and_health",
		51: "humidex",
		52: "gale",
		53: "freezing_spray",
		54: "special_marine",
		55: "squall",
		56: "strong_wind",
		57: "lake_wind",
		58: "marine_weather",
		59: "wind",
		60: "small_craft_hazardous_seas",
		61: "hazardous_seas",
		62: "small_craft",
		63: "small_craft_winds",
		64: "small_craft_rough_bar",
		65: "high_water_level",
		66: "ashfall",
		67: "freezing_fog",
		68: "dense_fog",
		69: "dense_smoke",
		70: "blowing_dust",
		71: "hard_freeze",
		72: "freeze",
		73: "frost",
		74: "fire_weather",
		75: "flood",
		76: "rip_tide",
		77: "high_surf",
		78: "smog",
		79: "air_quality",
		80: "brisk_wind",
		81: "air_stagnation",
		82: "low_water",
		83: "hydrological",
		84: "special_weather"
	},
	weather_severity: {
		0: "unknown",
		1: "warning",
		2: "watch",
		3: "advisory",
		4: "statement"
	},
	weather_status: {
		0: "clear",
		1: "partly_cloudy",
		2: "mostly_cloudy",
		3: "rain",
		4: "snow",
		5: "windy",
		6: "thunderstorms",
		7: "wintry_mix",
		8: "fog",
		11: "hazy",
		12: "hail",
		13: "scattered_showers",
		14: "scattered_thunderstorms",
		15: "unknown_precipitation",
		16: "light_rain",
		17: "heavy_rain",
		18: "light_snow",
		19: "heavy_snow",
		20: "light_rain_snow",
		21: "heavy_rain_snow",
		22: "cloudy"
	},
	weight: { 65534: "calculating" },
	wkt_step_duration: {
		0: "time",
		1: "distance",
		2: "hr_less_than",
		3: "hr_greater_than",
		4: "calories",
		5: "open",
		6: "repeat_until_steps_cmplt",
		7: "repeat_until_time",
		8: "repeat_until_distance",
		9: "repeat_until_calories",
		10: "repeat_until_hr_less_than",
		11: "repeat_until_hr_greater_than",
		12: "repeat_until_power_less_than",
		13: "repeat_until_power_greater_than",
		14: "power_less_than",
		15: "power_greater_than",
		16: "training_peaks_tss",
		17: "repeat_until_power_last_lap_less_than",
		18: "repeat_until_max_power_last_lap_less_than",
		19: "power3s_less_than",
		20: "power10s_less_than",
		21: "power30s_less_than",
		22: "power3s_greater_than",
		23: "power10s_greater_than",
		24: "power30s_greater_than",
		25: "power_lap_less_than",
		26: "power_lap_greater_than",
		27: "repeat_until_training_peaks_tss",
		28: "repetition_time",
		29: "reps",
		31: "time_only"
	},
	wkt_step_target: {
		0: "speed",
		1: "heart_rate",
		2: "open",
		3: "cadence",
		4: "power",
		5: "grade",
		6: "resistance",
		7: "power3s",
		8: "power10s",
		9: "power30s",
		10: "power_lap",
		11: "swim_stroke",
		12: "speed_lap",
		13: "heart_rate_lap"
	},
	workout_capabilities: {
		1: "interval",
		2: "custom",
		4: "fitness_equipment",
		8: "firstbeat",
		16: "new_leaf",
		32: "tcx",
		128: "speed",
		256: "heart_rate",
		512: "distance",
		1024: "cadence",
		2048: "power",
		4096: "grade",
		8192: "resistance",
		16384: "protected"
	},
	workout_equipment: {
		0: "none",
		1: "swim_fins",
		2: "swim_kickboard",
		3: "swim_paddles",
		4: "swim_pull_buoy",
		5: "swim_snorkel"
	},
	workout_hr: { 100: "bpm_offset" },
	workout_power: { 1e3: "watts_offset" }
};
// node_modules/fit-file-parser/dist/fit.js
const metersInOneKilometer = 1e3;
const secondsInOneHour = 3600;
const metersInOneMile = 1609.344;
const options = {
	speedUnits: {
		"m/s": {
			multiplier: 1,
			offset: 0
		},
		"mph": {
			multiplier: secondsInOneHour / metersInOneMile,
			offset: 0
		},
		"km/h": {
			multiplier: secondsInOneHour / metersInOneKilometer,
			offset: 0
		}
	},
	lengthUnits: {
		m: {
			multiplier: 1,
			offset: 0
		},
		mi: {
			multiplier: 1 / metersInOneMile,
			offset: 0
		},
		km: {
			multiplier: 1 / metersInOneKilometer,
			offset: 0
		}
	},
	temperatureUnits: {
		"celsius": {
			multiplier: 1,
			offset: 0
		},
		"°C": {
			multiplier: 1,
			offset: 0
		},
		"kelvin": {
			multiplier: 1,
			offset: 273.15
		},
		"fahrenheit": {
			multiplier: 9 / 5,
			offset: 32
		}
	},
	pressureUnits: {
		cbar: {
			multiplier: 100,
			offset: 0
		},
		bar: {
			multiplier: 1,
			offset: 0
		},
		psi: {
			multiplier: 14.5037738,
			offset: 0
		}
	}
};
const FIT = {
	scConst: 180 / Math.pow(2, 31),
	options,
	messages: PROFILE_MESSAGES,
	types: PROFILE_TYPES
};
// node_modules/fit-file-parser/dist/messages.js
function getFieldObject(fieldNum, messageNum) {
	const message = FIT.messages[messageNum];
	if (!message) return {};
	return message[fieldNum] || {};
}
function getMessageName(messageNum) {
	const message = FIT.messages[messageNum];
	return message ? message.name : "";
}
function getFitMessage(messageNum) {
	return {
		name: getMessageName(messageNum),
		getAttributes: (fieldNum) => getFieldObject(fieldNum, messageNum)
	};
}
function getFitMessageBaseType(inp) {
	return inp;
}
// node_modules/fit-file-parser/dist/binary.js
const CompressedLocalMsgNumMask = 96;
const CompressedHeaderMask = 128;
const CompressedTimestampMask = 31;
const GarminTimeOffset = 6310656e5;
const InvalidFieldData = Symbol("invalid FIT field data");
const formatTypeMetadata = /* @__PURE__ */ new Map();
const uint8CompatibleTypes = /* @__PURE__ */ new Set([
	"enum",
	"uint8",
	"byte"
]);
function retainsRawMessages(options) {
	return options.includeRawMessages === true || Array.isArray(options.includeRawMessages);
}
function retainsRawMessage(options, globalMessageNumber) {
	return options.includeRawMessages === true || Array.isArray(options.includeRawMessages) && options.includeRawMessages.includes(globalMessageNumber);
}
function baseTypeSize(type) {
	switch (type) {
		case "enum":
		case "sint8":
		case "uint8":
		case "uint8z":
		case "byte": return 1;
		case "sint16":
		case "uint16":
		case "uint16z": return 2;
		case "sint32":
		case "uint32":
		case "uint32z":
		case "float32": return 4;
		case "float64": return 8;
		default: return;
	}
}
function requiresBoundedEndianDataView(type, size) {
	const elementSize = baseTypeSize(type);
	return elementSize !== void 0 && size % elementSize !== 0;
}
function areProfileBaseTypesCompatible(profileType, wireType) {
	if (profileType === void 0 || profileType === wireType) return true;
	return uint8CompatibleTypes.has(String(profileType)) && uint8CompatibleTypes.has(String(wireType));
}
function addEndian(littleEndian, bytes) {
	let result = 0;
	if (!littleEndian) bytes.reverse();
	for (let i = 0; i < bytes.length; i++) result += bytes[i] << (i << 3) >>> 0;
	return result;
}
function readData(blob, dataView, fDef, startIndex) {
	var _a, _b;
	const rawType = (_b = (_a = fDef.rawType) !== null && _a !== void 0 ? _a : FIT.types.fit_base_type[fDef.baseTypeNo]) !== null && _b !== void 0 ? _b : fDef.type;
	if (rawType === "string") {
		const temp = [];
		for (let i = 0; i < fDef.size; i++) if (blob[startIndex + i]) temp.push(blob[startIndex + i]);
		return Buffer.from(temp).toString("utf-8");
	}
	const elementSize = baseTypeSize(rawType);
	if (elementSize === void 0) return InvalidFieldData;
	if (fDef.size < elementSize || fDef.size % elementSize !== 0 || startIndex < 0 || startIndex + fDef.size > blob.length || startIndex + fDef.size > dataView.byteLength) return InvalidFieldData;
	const isArray = fDef.array === true || String(fDef.type).endsWith("_array") || fDef.type === "exercise_category_array" || fDef.isDeveloperField === true && fDef.size > elementSize;
	const elementCount = isArray ? fDef.size / elementSize : 1;
	const values = [];
	for (let elementIndex = 0; elementIndex < elementCount; elementIndex++) {
		const offset = startIndex + elementIndex * elementSize;
		switch (rawType) {
			case "sint8": {
				const value = blob[offset];
				values.push(value > 127 ? value - 256 : value);
				break;
			}
			case "sint16":
				values.push(dataView.getInt16(offset, fDef.littleEndian));
				break;
			case "uint16":
			case "uint16z":
				values.push(dataView.getUint16(offset, fDef.littleEndian));
				break;
			case "sint32":
				values.push(dataView.getInt32(offset, fDef.littleEndian));
				break;
			case "uint32":
			case "uint32z":
				values.push(dataView.getUint32(offset, fDef.littleEndian));
				break;
			case "float32":
				values.push(dataView.getFloat32(offset, fDef.littleEndian));
				break;
			case "float64":
				values.push(dataView.getFloat64(offset, fDef.littleEndian));
				break;
			default: values.push(blob[offset]);
		}
	}
	return isArray ? values : values[0];
}
function formatByType(data, type, scale, offset, units) {
	switch (type) {
		case "date_time":
		case "local_date_time": return /* @__PURE__ */ new Date(data * 1e3 + GarminTimeOffset);
		case "sint32": return units === "semicircles" ? data * FIT.scConst : scale ? data / scale + offset : data;
		case "sint8":
		case "uint8":
		case "uint8z":
		case "sint16":
		case "uint16":
		case "uint16z":
		case "uint32":
		case "uint32z":
		case "float32":
		case "float64": return scale ? data / scale + offset : data;
		case "uint32_array":
		case "uint16_array":
		case "uint8_array":
			if (Array.isArray(data)) {
				const baseType = type.replace("_array", "");
				return data.map((dataItem) => {
					if (isInvalidValue(dataItem, baseType)) return null;
					return scale ? dataItem / scale + offset : dataItem;
				});
			}
			return scale ? data / scale + offset : data;
		case "exercise_category_array":
			if (Array.isArray(data)) return data.map((dataItem) => {
				if (isInvalidValue(dataItem, "uint16")) return null;
				return formatByType(dataItem, "exercise_category", scale, offset);
			});
			return formatByType(data, "exercise_category", scale, offset);
		default: {
			const typeMap = FIT.types[type];
			if (!typeMap) return data;
			let metadata = formatTypeMetadata.get(type);
			if (!metadata) {
				const entries = [];
				let hasMask = false;
				for (const key in typeMap) if (key in typeMap) {
					const value = typeMap[key];
					entries.push([key, value]);
					if (String(value) === "mask") hasMask = true;
				}
				metadata = {
					entries,
					hasMask,
					typeMap
				};
				formatTypeMetadata.set(type, metadata);
			}
			if (!metadata.hasMask) {
				const mapped = metadata.typeMap[String(data)];
				return mapped === void 0 ? data : mapped;
			}
			const dataItem = {};
			for (const [key, value] of metadata.entries) if (value === "mask") dataItem.value = data & Number(key);
			else dataItem[value] = (data & Number(key)) !== 0;
			return dataItem;
		}
	}
}
function isInvalidValue(data, type) {
	switch (type) {
		case "enum": return data === 255;
		case "sint8": return data === 127;
		case "uint8": return data === 255;
		case "sint16": return data === 32767;
		case "uint16": return data === 65535;
		case "sint32": return data === 2147483647;
		case "uint32": return data === 4294967295;
		case "string": return data === 0;
		case "float32": return Number.isNaN(data);
		case "float64": return Number.isNaN(data);
		case "uint8z": return data === 0;
		case "uint16z": return data === 0;
		case "uint32z": return data === 0;
		case "byte": return data === 255;
		case "sint64": return data === 0x8000000000000000;
		case "uint64": return data === 0x10000000000000000;
		case "uint64z": return data === 0;
		default: return false;
	}
}
function isInvalidBaseTypeValue(data, baseTypeNo) {
	if (Array.isArray(data)) return false;
	const baseType = FIT.types.fit_base_type[baseTypeNo];
	return typeof baseType === "string" ? isInvalidValue(data, baseType) : false;
}
function formatFieldValue(data, fDef, options, fields) {
	var _a, _b, _c;
	const field = fDef.name;
	const scale = (_a = fDef.scale) !== null && _a !== void 0 ? _a : null;
	const offset = (_b = fDef.offset) !== null && _b !== void 0 ? _b : 0;
	if (Array.isArray(data) && !String(fDef.type).endsWith("_array") && fDef.type !== "exercise_category_array") {
		const rawType = (_c = fDef.rawType) !== null && _c !== void 0 ? _c : FIT.types.fit_base_type[fDef.baseTypeNo];
		return data.map((item) => {
			if (isInvalidValue(item, rawType)) return null;
			return applyOptions(formatByType(item, fDef.type, scale, offset, fDef.units), field, options, fields);
		});
	}
	return applyOptions(formatByType(data, fDef.type, scale, offset, fDef.units), field, options, fields);
}
function isOutputFieldName(field) {
	return field !== "unknown" && field !== "" && field !== void 0;
}
function convertTo(data, unitsList, unitName) {
	const unit = FIT.options[unitsList][unitName];
	return unit ? data * unit.multiplier + unit.offset : data;
}
function applyOptions(data, field, options, fields) {
	switch (field) {
		case "device_type": {
			const isLocal = fields.source_type === "local" || fields.source_type === 5;
			const isBLE = fields.source_type === "bluetooth_low_energy" || fields.source_type === 3 || fields.source_type === "bluetooth" || fields.source_type === 2;
			const isANT = fields.source_type === "antplus" || fields.source_type === 1 || fields.source_type === "ant" || fields.source_type === 0;
			if (isLocal) return FIT.types.local_device_type[data] || data;
			if (isBLE) return FIT.types.ble_device_type[data] || data;
			if (isANT) return FIT.types.antplus_device_type[data] || data;
			return data;
		}
		case "speed":
		case "enhanced_speed":
		case "vertical_speed":
		case "avg_speed":
		case "max_speed":
		case "speed1s":
		case "ball_speed":
		case "enhanced_avg_speed":
		case "enhanced_max_speed":
		case "avg_pos_vertical_speed":
		case "max_pos_vertical_speed":
		case "avg_neg_vertical_speed":
		case "max_neg_vertical_speed": return convertTo(data, "speedUnits", options.speedUnit);
		case "distance":
		case "total_distance":
		case "enhanced_avg_altitude":
		case "enhanced_min_altitude":
		case "enhanced_max_altitude":
		case "enhanced_altitude":
		case "height":
		case "odometer":
		case "avg_stroke_distance":
		case "min_altitude":
		case "avg_altitude":
		case "max_altitude":
		case "total_ascent":
		case "total_descent":
		case "altitude":
		case "cycle_length":
		case "auto_wheelsize":
		case "custom_wheelsize":
		case "gps_accuracy": return convertTo(data, "lengthUnits", options.lengthUnit);
		case "temperature":
		case "min_temperature":
		case "temperature_min":
		case "avg_temperature":
		case "max_temperature":
		case "temperature_max": return convertTo(data, "temperatureUnits", options.temperatureUnit);
		case "pressure":
		case "start_pressure":
		case "end_pressure": return convertTo(data, "pressureUnits", options.pressureUnit);
		case "ant_id": {
			const n1 = data >>> 28 & 15;
			const n2 = data >>> 24 & 15;
			const n3 = data >>> 16 & 255;
			const n4 = data & 65535;
			return `${n1.toString(16).toUpperCase()}-${n2.toString(16).toUpperCase()}-${n3.toString(16).toUpperCase().padStart(2, "0")}-${n4.toString(16).toUpperCase().padStart(4, "0")}`;
		}
		default: return data;
	}
}
function resolveDeveloperFieldDefinition(developerFieldDef, littleEndian, developerFields, options) {
	var _a, _b, _c, _d, _e, _f, _g;
	const description = (_a = developerFields[developerFieldDef.developerDataIndex]) === null || _a === void 0 ? void 0 : _a[developerFieldDef.fieldDefinitionNumber];
	if (!description) {
		developerFieldDef.resolvedFieldDef = void 0;
		developerFieldDef.resolvedFrom = void 0;
		return;
	}
	if (developerFieldDef.resolvedFrom === description && developerFieldDef.resolvedFieldDef) return developerFieldDef.resolvedFieldDef;
	const describedBaseType = description.fit_base_type_id;
	const baseType = typeof describedBaseType === "number" ? describedBaseType : Number((_b = Object.entries(FIT.types.fit_base_type).find(([, typeName]) => typeName === describedBaseType)) === null || _b === void 0 ? void 0 : _b[0]);
	const type = FIT.types.fit_base_type[baseType];
	if (!Number.isInteger(baseType) || type === void 0) {
		developerFieldDef.resolvedFieldDef = void 0;
		developerFieldDef.resolvedFrom = void 0;
		if (options.force || retainsRawMessages(options)) return;
		throw new Error(`Unsupported base type for developer data index ${developerFieldDef.developerDataIndex}, field ${developerFieldDef.fieldDefinitionNumber}`);
	}
	const resolvedFieldDef = {
		type,
		rawType: type,
		fDefNo: developerFieldDef.fieldDefinitionNumber,
		size: developerFieldDef.size,
		array: type !== "string" && developerFieldDef.size > ((_c = baseTypeSize(type)) !== null && _c !== void 0 ? _c : developerFieldDef.size),
		endianAbility: (baseType & 128) === 128,
		littleEndian,
		baseTypeNo: baseType,
		name: (_d = description.field_name) !== null && _d !== void 0 ? _d : "",
		dataType: getFitMessageBaseType(baseType & 15),
		scale: (_e = description.scale) !== null && _e !== void 0 ? _e : 1,
		offset: -((_f = description.offset) !== null && _f !== void 0 ? _f : 0),
		units: (_g = description.units) !== null && _g !== void 0 ? _g : "",
		requiresBoundedDataView: requiresBoundedEndianDataView(type, developerFieldDef.size),
		developerDataIndex: developerFieldDef.developerDataIndex,
		isDeveloperField: true
	};
	developerFieldDef.resolvedFieldDef = resolvedFieldDef;
	developerFieldDef.resolvedFrom = description;
	return resolvedFieldDef;
}
function readRecord(blob, messageTypes, developerFields, startIndex, options, startDate, pausedTime, dataView = new DataView(blob.buffer, blob.byteOffset, blob.byteLength), decoderState = {}, dataEnd = dataView.byteLength) {
	var _a, _b, _c;
	if (startIndex < 0 || startIndex >= dataEnd) throw new Error("Invalid FIT record bounds");
	const recordHeader = blob[startIndex];
	let localMessageType = recordHeader & 15;
	const isCompressedTimestamp = (recordHeader & CompressedHeaderMask) === CompressedHeaderMask;
	if (isCompressedTimestamp) localMessageType = (recordHeader & CompressedLocalMsgNumMask) >> 5;
	else if ((recordHeader & 64) === 64) {
		if (retainsRawMessages(options) && startIndex + 6 > dataEnd) throw new Error("Invalid FIT definition bounds");
		const hasDeveloperData = (recordHeader & 32) === 32;
		const lEnd = blob[startIndex + 2] === 0;
		const numberOfFields = blob[startIndex + 5];
		const nativeDefinitionsEnd = startIndex + 6 + numberOfFields * 3;
		if (retainsRawMessages(options) && ((recordHeader & 16) !== 0 || blob[startIndex + 1] !== 0 || blob[startIndex + 2] > 1 || nativeDefinitionsEnd > dataEnd || hasDeveloperData && nativeDefinitionsEnd + 1 > dataEnd)) throw new Error("Invalid FIT definition");
		const numberOfDeveloperDataFields = hasDeveloperData ? blob[startIndex + 5 + numberOfFields * 3 + 1] : 0;
		const definitionEnd = nativeDefinitionsEnd + (hasDeveloperData ? 1 + numberOfDeveloperDataFields * 3 : 0);
		if (retainsRawMessages(options) && definitionEnd > dataEnd) throw new Error("Invalid FIT developer definition bounds");
		const mTypeDef = {
			littleEndian: lEnd,
			globalMessageNumber: addEndian(lEnd, [blob[startIndex + 3], blob[startIndex + 4]]),
			numberOfFields: numberOfFields + numberOfDeveloperDataFields,
			fieldDefs: [],
			developerFieldDefs: [],
			rawData: []
		};
		const message = getFitMessage(mTypeDef.globalMessageNumber);
		for (let i = 0; i < numberOfFields; i++) {
			const fDefIndex = startIndex + 6 + i * 3;
			const baseType = blob[fDefIndex + 2];
			const fieldNumber = blob[fDefIndex];
			const fieldSize = blob[fDefIndex + 1];
			const wireType = FIT.types.fit_base_type[baseType];
			const { field, type, baseType: profileBaseType, array, scale, offset, units } = message.getAttributes(blob[fDefIndex]);
			const profileCompatible = areProfileBaseTypesCompatible(profileBaseType, wireType);
			const fDef = {
				type: profileCompatible ? type : wireType,
				rawType: wireType,
				fDefNo: fieldNumber,
				size: fieldSize,
				array: profileCompatible ? array === true || String(type).endsWith("_array") : false,
				endianAbility: (baseType & 128) === 128,
				littleEndian: lEnd,
				baseTypeNo: baseType,
				name: profileCompatible ? field : "",
				dataType: getFitMessageBaseType(baseType & 15),
				scale: profileCompatible ? scale : null,
				offset: profileCompatible ? offset : 0,
				units: profileCompatible ? units : "",
				requiresBoundedDataView: requiresBoundedEndianDataView(wireType, fieldSize)
			};
			mTypeDef.fieldDefs.push(fDef);
		}
		for (let i = 0; i < numberOfDeveloperDataFields; i++) {
			const fDefIndex = startIndex + 6 + numberOfFields * 3 + 1 + i * 3;
			(_a = mTypeDef.developerFieldDefs) === null || _a === void 0 || _a.push({
				fieldDefinitionNumber: blob[fDefIndex],
				size: blob[fDefIndex + 1],
				developerDataIndex: blob[fDefIndex + 2]
			});
		}
		mTypeDef.rawData = Array.from({ length: mTypeDef.numberOfFields }, () => InvalidFieldData);
		messageTypes[localMessageType] = mTypeDef;
		const nextIndex = startIndex + 6 + mTypeDef.numberOfFields * 3;
		const nextIndexWithDeveloperData = nextIndex + 1;
		return {
			messageType: "definition",
			nextIndex: hasDeveloperData ? nextIndexWithDeveloperData : nextIndex
		};
	}
	if (!isCompressedTimestamp && (recordHeader & 48) !== 0) throw new Error("Invalid FIT data record header");
	const messageType = messageTypes[localMessageType];
	if (!messageType) throw new Error("FIT data record has no local definition");
	let messageSize = 0;
	let readDataFromIndex = startIndex + 1;
	const fields = {};
	const message = getFitMessage(messageType.globalMessageNumber);
	const developerFieldDefs = (_b = messageType.developerFieldDefs) !== null && _b !== void 0 ? _b : [];
	const totalFieldCount = messageType.fieldDefs.length + developerFieldDefs.length;
	const includeRawMessage = retainsRawMessage(options, messageType.globalMessageNumber);
	const includeRawDeveloperFields = options.includeRawDeveloperFields === true || Array.isArray(options.includeRawDeveloperFields) && options.includeRawDeveloperFields.includes(messageType.globalMessageNumber);
	const rawFields = includeRawMessage ? [] : void 0;
	const rawDeveloperFields = includeRawDeveloperFields || includeRawMessage ? [] : void 0;
	const unmappedFields = options.includeUnmappedMessages ? [] : void 0;
	const unmappedDeveloperFields = options.includeUnmappedMessages ? [] : void 0;
	if (retainsRawMessages(options)) {
		const nativeSize = messageType.fieldDefs.reduce((total, field, index) => total + (isCompressedTimestamp && index === 0 && field.fDefNo === 253 ? 0 : field.size), 0);
		const developerSize = developerFieldDefs.reduce((total, field) => total + field.size, 0);
		if (startIndex + 1 + nativeSize + developerSize > dataEnd) throw new Error("Invalid FIT data record bounds");
	}
	const rawData = (_c = messageType.rawData) !== null && _c !== void 0 ? _c : messageType.rawData = Array.from({ length: totalFieldCount }, () => InvalidFieldData);
	let validFieldCount = 0;
	for (let i = 0; i < messageType.fieldDefs.length; i++) {
		const fDef = messageType.fieldDefs[i];
		if (isCompressedTimestamp && i === 0 && fDef.fDefNo === 253) {
			rawData[i] = InvalidFieldData;
			continue;
		}
		if ((rawFields || unmappedFields && !isOutputFieldName(fDef.name)) && readDataFromIndex + fDef.size <= dataEnd) {
			const rawField = {
				fieldDefinitionNumber: fDef.fDefNo,
				baseType: fDef.baseTypeNo,
				rawValue: Array.from(blob.subarray(readDataFromIndex, readDataFromIndex + fDef.size))
			};
			rawFields === null || rawFields === void 0 || rawFields.push(rawField);
			if (!isOutputFieldName(fDef.name)) unmappedFields === null || unmappedFields === void 0 || unmappedFields.push(rawField);
		}
		const data = readData(blob, dataView, fDef, readDataFromIndex);
		if (data !== InvalidFieldData && !isInvalidValue(data, fDef.type) && !isInvalidBaseTypeValue(data, fDef.baseTypeNo)) {
			rawData[i] = data;
			validFieldCount++;
			if (!isCompressedTimestamp && fDef.fDefNo === 253) decoderState.lastTimestamp = typeof data === "number" ? data : void 0;
		} else {
			rawData[i] = InvalidFieldData;
			if (!isCompressedTimestamp && fDef.fDefNo === 253) decoderState.lastTimestamp = void 0;
		}
		readDataFromIndex += fDef.size;
		messageSize += fDef.size;
	}
	for (let i = 0; i < developerFieldDefs.length; i++) {
		const developerFieldDef = developerFieldDefs[i];
		const rawDataIndex = messageType.fieldDefs.length + i;
		let rawDeveloperField;
		if ((rawDeveloperFields || unmappedDeveloperFields && developerFieldDef.resolvedFieldDef === void 0) && readDataFromIndex + developerFieldDef.size <= dataEnd) {
			rawDeveloperField = {
				developerDataIndex: developerFieldDef.developerDataIndex,
				fieldDefinitionNumber: developerFieldDef.fieldDefinitionNumber,
				rawValue: Array.from(blob.subarray(readDataFromIndex, readDataFromIndex + developerFieldDef.size))
			};
			rawDeveloperFields === null || rawDeveloperFields === void 0 || rawDeveloperFields.push(rawDeveloperField);
		}
		const fDef = resolveDeveloperFieldDefinition(developerFieldDef, messageType.littleEndian, developerFields, options);
		if (!fDef && rawDeveloperField) unmappedDeveloperFields === null || unmappedDeveloperFields === void 0 || unmappedDeveloperFields.push(rawDeveloperField);
		if (fDef) {
			const data = readData(blob, dataView, fDef, readDataFromIndex);
			if (data !== InvalidFieldData && !isInvalidValue(data, fDef.type) && !isInvalidBaseTypeValue(data, fDef.baseTypeNo)) {
				rawData[rawDataIndex] = data;
				validFieldCount++;
			} else rawData[rawDataIndex] = InvalidFieldData;
		} else rawData[rawDataIndex] = InvalidFieldData;
		readDataFromIndex += developerFieldDef.size;
		messageSize += developerFieldDef.size;
	}
	for (let i = 0; i < messageType.fieldDefs.length; i++) {
		const data = rawData[i];
		if (data === InvalidFieldData) continue;
		const fDef = messageType.fieldDefs[i];
		if (isOutputFieldName(fDef.name)) fields[fDef.name] = data;
	}
	for (let i = 0; i < developerFieldDefs.length; i++) {
		const data = rawData[messageType.fieldDefs.length + i];
		const fDef = developerFieldDefs[i].resolvedFieldDef;
		if (data === InvalidFieldData || !fDef) continue;
		const field = fDef.name;
		if (field !== "unknown" && field !== "") fields[field] = data;
	}
	for (let i = 0; i < messageType.fieldDefs.length; i++) {
		const data = rawData[i];
		if (data === InvalidFieldData) continue;
		const fDef = messageType.fieldDefs[i];
		if (isOutputFieldName(fDef.name)) fields[fDef.name] = formatFieldValue(data, fDef, options, fields);
	}
	for (let i = 0; i < developerFieldDefs.length; i++) {
		const data = rawData[messageType.fieldDefs.length + i];
		const fDef = developerFieldDefs[i].resolvedFieldDef;
		if (data === InvalidFieldData || !fDef) continue;
		const field = fDef.name;
		if (field !== "unknown" && field !== "") fields[field] = formatFieldValue(data, fDef, options, fields);
	}
	let compressedTimestamp;
	if (isCompressedTimestamp) {
		const previousTimestamp = decoderState.lastTimestamp;
		if (previousTimestamp === void 0) {
			if (!options.force) throw new Error("Compressed timestamp requires a previous timestamp");
		} else {
			const timeOffset = recordHeader & CompressedTimestampMask;
			const previousOffset = previousTimestamp & CompressedTimestampMask;
			const rollover = timeOffset < previousOffset ? 32 : 0;
			const timestamp = previousTimestamp - previousOffset + timeOffset + rollover;
			if (timestamp >= 4294967295) throw new Error("Compressed timestamp exceeds FIT uint32 range");
			decoderState.lastTimestamp = timestamp;
			compressedTimestamp = timestamp;
			fields.timestamp = /* @__PURE__ */ new Date(timestamp * 1e3 + GarminTimeOffset);
			validFieldCount++;
		}
	}
	if (validFieldCount > 0 && message.name === "record" && options.elapsedRecordField) {
		fields.elapsed_time = (fields.timestamp - (startDate || 0)) / 1e3;
		fields.timer_time = fields.elapsed_time - pausedTime;
	}
	if (message.name === "field_description") {
		developerFields[fields.developer_data_index] = developerFields[fields.developer_data_index] || [];
		developerFields[fields.developer_data_index][fields.field_definition_number] = fields;
	}
	if (message.name === "monitoring") {
		const timestampFieldIndex = messageType.fieldDefs.findIndex((fieldDefinition) => fieldDefinition.fDefNo === 253);
		const rawTimestamp = timestampFieldIndex >= 0 ? rawData[timestampFieldIndex] : InvalidFieldData;
		if (rawTimestamp !== InvalidFieldData && typeof rawTimestamp === "number") {
			decoderState.monitoringTimestamp = rawTimestamp;
			fields.timestamp = /* @__PURE__ */ new Date(rawTimestamp * 1e3 + GarminTimeOffset);
		} else if (fields.timestamp16 && decoderState.monitoringTimestamp !== void 0 && !fields.timestamp) {
			decoderState.monitoringTimestamp += fields.timestamp16 - (decoderState.monitoringTimestamp & 65535) & 65535;
			fields.timestamp = /* @__PURE__ */ new Date(decoderState.monitoringTimestamp * 1e3 + GarminTimeOffset);
		}
	}
	return {
		globalMessageNumber: messageType.globalMessageNumber,
		littleEndian: messageType.littleEndian,
		compressedTimestamp,
		messageType: message.name,
		nextIndex: startIndex + messageSize + 1,
		message: fields,
		rawFields,
		rawDeveloperFields,
		unmappedFields: unmappedFields && unmappedFields.length > 0 ? unmappedFields : void 0,
		unmappedDeveloperFields: unmappedDeveloperFields && unmappedDeveloperFields.length > 0 ? unmappedDeveloperFields : void 0
	};
}
function calculateCRC(blob, start, end) {
	const crcTable = [
		0,
		52225,
		55297,
		5120,
		61441,
		15360,
		10240,
		58369,
		40961,
		27648,
		30720,
		46081,
		20480,
		39937,
		34817,
		17408
	];
	let crc = 0;
	for (let i = start; i < end; i++) {
		const byteVal = blob[i];
		let tmp = crcTable[crc & 15];
		crc = crc >> 4 & 4095;
		crc = crc ^ tmp ^ crcTable[byteVal & 15];
		tmp = crcTable[crc & 15];
		crc = crc >> 4 & 4095;
		crc = crc ^ tmp ^ crcTable[byteVal >> 4 & 15];
	}
	return crc;
}
// node_modules/fit-file-parser/dist/helper.js
function timestampValue(value) {
	if (value === void 0 || value === null) return;
	const timestamp = value instanceof Date ? value.getTime() : new Date(value).getTime();
	return Number.isFinite(timestamp) ? timestamp : void 0;
}
function mapDataIntoLap(inputLaps, lapKey, data) {
	var _a;
	const laps = [...inputLaps];
	let index = 0;
	for (let i = 0; i < laps.length; i++) {
		const nextLap = laps[i + 1];
		const tempData = [];
		const nextLapStartTime = timestampValue(nextLap === null || nextLap === void 0 ? void 0 : nextLap.start_time);
		for (let j = index; j < data.length; j++) {
			const row = data[j];
			if (nextLap && nextLapStartTime !== void 0) {
				const timestamp = timestampValue((_a = row.timestamp) !== null && _a !== void 0 ? _a : row.start_time);
				if (timestamp === void 0 || nextLapStartTime > timestamp) {
					tempData.push(row);
					index = j + 1;
				} else if (nextLapStartTime <= timestamp) {
					index = j;
					break;
				}
			} else {
				tempData.push(row);
				index = j + 1;
			}
		}
		if (!laps[i][lapKey]) laps[i][lapKey] = tempData;
	}
	return laps;
}
function mapDataIntoSession(inputSessions, laps) {
	const sessions = [...inputSessions];
	let lapIndex = 0;
	for (let i = 0; i < sessions.length; i++) {
		const nextSession = sessions[i + 1];
		const tempLaps = [];
		const nextSessionStartTime = timestampValue(nextSession === null || nextSession === void 0 ? void 0 : nextSession.start_time);
		for (let j = lapIndex; j < laps.length; j++) {
			const lap = laps[j];
			if (nextSession && nextSessionStartTime !== void 0) {
				const lapStartTime = timestampValue(lap.start_time);
				if (lapStartTime === void 0 || nextSessionStartTime > lapStartTime) {
					tempLaps.push(lap);
					lapIndex = j + 1;
				} else if (nextSessionStartTime <= lapStartTime) {
					lapIndex = j;
					break;
				}
			} else {
				tempLaps.push(lap);
				lapIndex = j + 1;
			}
		}
		if (!sessions[i].laps) sessions[i].laps = tempLaps;
	}
	return sessions;
}
// node_modules/fit-file-parser/dist/fit-encoder.js
/** FIT definition base-type bytes, including the endian flag where required. */
var FitBaseType;
(function(FitBaseType) {
	FitBaseType[FitBaseType["Enum"] = 0] = "Enum";
	FitBaseType[FitBaseType["Sint8"] = 1] = "Sint8";
	FitBaseType[FitBaseType["Uint8"] = 2] = "Uint8";
	FitBaseType[FitBaseType["String"] = 7] = "String";
	FitBaseType[FitBaseType["Uint8z"] = 10] = "Uint8z";
	FitBaseType[FitBaseType["Byte"] = 13] = "Byte";
	FitBaseType[FitBaseType["Sint16"] = 131] = "Sint16";
	FitBaseType[FitBaseType["Uint16"] = 132] = "Uint16";
	FitBaseType[FitBaseType["Sint32"] = 133] = "Sint32";
	FitBaseType[FitBaseType["Uint32"] = 134] = "Uint32";
	FitBaseType[FitBaseType["Float32"] = 136] = "Float32";
	FitBaseType[FitBaseType["Float64"] = 137] = "Float64";
	FitBaseType[FitBaseType["Uint16z"] = 139] = "Uint16z";
	FitBaseType[FitBaseType["Uint32z"] = 140] = "Uint32z";
	FitBaseType[FitBaseType["Sint64"] = 142] = "Sint64";
	FitBaseType[FitBaseType["Uint64"] = 143] = "Uint64";
	FitBaseType[FitBaseType["Uint64z"] = 144] = "Uint64z";
})(FitBaseType || (FitBaseType = {}));
// node_modules/fit-file-parser/dist/profile-lookup.js
function normalizeProfileName(value) {
	return value.trim().toLowerCase().replace(/[\s_-]/g, "");
}
function createProfileIdMap(mapping) {
	return new Map(Object.entries(mapping).filter((entry) => typeof entry[1] === "string").map(([id, name]) => [normalizeProfileName(name), Number(id)]));
}
createProfileIdMap(FIT_PROFILE_SPORTS);
createProfileIdMap(FIT_PROFILE_SUB_SPORTS);
createProfileIdMap(FIT_PROFILE_COURSE_POINTS);
// node_modules/fit-file-parser/dist/fit-parser.js
var FitParser = class {
	constructor(options = {}) {
		var _a, _b, _c, _d;
		this.options = {
			force: options.force != null ? options.force : true,
			speedUnit: options.speedUnit || "m/s",
			lengthUnit: options.lengthUnit || "m",
			temperatureUnit: options.temperatureUnit || "celsius",
			elapsedRecordField: options.elapsedRecordField || false,
			pressureUnit: options.pressureUnit || "bar",
			mode: options.mode || "list",
			includeRawDeveloperFields: (_a = options.includeRawDeveloperFields) !== null && _a !== void 0 ? _a : false,
			includeRawMessages: (_b = options.includeRawMessages) !== null && _b !== void 0 ? _b : false,
			includeUnmappedMessages: (_c = options.includeUnmappedMessages) !== null && _c !== void 0 ? _c : false,
			rawMessagesOnly: (_d = options.rawMessagesOnly) !== null && _d !== void 0 ? _d : false
		};
	}
	parseAsync(content) {
		return new Promise((resolve, reject) => {
			this.parse(content, (error, data) => {
				if (error) reject(error);
				else if (data) resolve(data);
			});
		});
	}
	parse(content, callback) {
		var _a, _b, _c;
		const blob = content instanceof ArrayBuffer ? new Uint8Array(content) : new Uint8Array(content.buffer, content.byteOffset, content.byteLength);
		const dataView = new DataView(blob.buffer, blob.byteOffset, blob.byteLength);
		if (blob.length < 12) {
			callback("File to small to be a FIT file", void 0);
			return;
		}
		const headerLength = blob[0];
		if (headerLength !== 14 && headerLength !== 12) {
			callback("Incorrect header size", void 0);
			return;
		}
		if (blob.length < headerLength) {
			callback("File to small to be a FIT file", void 0);
			return;
		}
		let fileTypeString = "";
		for (let i = 8; i < 12; i++) fileTypeString += String.fromCharCode(blob[i]);
		if (fileTypeString !== ".FIT") {
			callback("Missing '.FIT' in header", void 0);
			return;
		}
		if (headerLength === 14 && !this.options.force) {
			const crcHeader = blob[12] + (blob[13] << 8);
			const crcHeaderCalc = calculateCRC(blob, 0, 12);
			if (crcHeader !== 0 && crcHeader !== crcHeaderCalc) {
				callback("Header CRC mismatch", void 0);
				return;
			}
		}
		const protocolVersion = blob[1];
		const profileVersion = blob[2] + (blob[3] << 8);
		const crcStart = dataView.getUint32(4, true) + headerLength;
		if (crcStart > blob.length) {
			callback("File data exceeds input length", void 0);
			return;
		}
		if (!this.options.force && crcStart + 2 > blob.length) {
			callback("File CRC missing", void 0);
			return;
		}
		if (!this.options.force) {
			if (blob[crcStart] + (blob[crcStart + 1] << 8) !== calculateCRC(blob, 0, crcStart)) {
				callback("File CRC mismatch", void 0);
				return;
			}
		}
		const fitObj = {
			profileVersion,
			protocolVersion
		};
		const messages = {};
		let sessions = [];
		let laps = [];
		const records = [];
		const events = [];
		const hr_zone = [];
		const power_zone = [];
		const hrv = [];
		const device_infos = [];
		const applications = [];
		const fieldDescriptions = [];
		const dive_gases = [];
		const course_points = [];
		const sports = [];
		const monitors = [];
		const stress = [];
		const definitions = [];
		const file_ids = [];
		const monitor_info = [];
		const lengths = [];
		const tank_updates = [];
		const tank_summaries = [];
		const jumps = [];
		const sets = [];
		const splits = [];
		const split_summaries = [];
		const time_in_zone = [];
		const activity_metrics = [];
		const user_metrics = [];
		const rawDeveloperFields = this.options.includeRawDeveloperFields === true || Array.isArray(this.options.includeRawDeveloperFields) ? [] : void 0;
		const rawMessages = this.options.includeRawMessages === true || Array.isArray(this.options.includeRawMessages) ? [] : void 0;
		const unmappedMessages = this.options.includeUnmappedMessages ? [] : void 0;
		const messageCountsByGlobalNumber = /* @__PURE__ */ new Map();
		let loopIndex = headerLength;
		const messageTypes = [];
		const developerFields = [];
		const decoderState = {};
		const isModeCascade = this.options.mode === "cascade";
		const isCascadeNeeded = isModeCascade || this.options.mode === "both";
		let startDate;
		let lastStopTimestamp;
		let pausedTime = 0;
		while (loopIndex < crcStart) {
			const { globalMessageNumber, littleEndian, message, messageType, nextIndex, compressedTimestamp, rawFields: recordRawFields, rawDeveloperFields: recordRawDeveloperFields, unmappedFields: recordUnmappedFields, unmappedDeveloperFields: recordUnmappedDeveloperFields } = readRecord(blob, messageTypes, developerFields, loopIndex, this.options, startDate, pausedTime, dataView, decoderState, crcStart);
			loopIndex = nextIndex;
			if (globalMessageNumber !== void 0) {
				const messageIndex = (_a = messageCountsByGlobalNumber.get(globalMessageNumber)) !== null && _a !== void 0 ? _a : 0;
				messageCountsByGlobalNumber.set(globalMessageNumber, messageIndex + 1);
				if (recordRawFields && littleEndian !== void 0) rawMessages === null || rawMessages === void 0 || rawMessages.push(Object.assign(Object.assign({
					global_message_number: globalMessageNumber,
					message_index: messageIndex,
					little_endian: littleEndian
				}, compressedTimestamp === void 0 ? {} : { compressed_timestamp: compressedTimestamp }), {
					fields: recordRawFields.map((field) => ({
						field_definition_number: field.fieldDefinitionNumber,
						base_type: field.baseType,
						raw_value: field.rawValue
					})),
					developer_fields: (recordRawDeveloperFields !== null && recordRawDeveloperFields !== void 0 ? recordRawDeveloperFields : []).map((field) => ({
						developer_data_index: field.developerDataIndex,
						field_definition_number: field.fieldDefinitionNumber,
						raw_value: field.rawValue
					}))
				}));
				recordRawDeveloperFields === null || recordRawDeveloperFields === void 0 || recordRawDeveloperFields.forEach((field) => {
					rawDeveloperFields === null || rawDeveloperFields === void 0 || rawDeveloperFields.push({
						global_message_number: globalMessageNumber,
						message_index: messageIndex,
						developer_data_index: field.developerDataIndex,
						field_definition_number: field.fieldDefinitionNumber,
						raw_value: field.rawValue
					});
				});
				if (littleEndian !== void 0 && ((recordUnmappedFields === null || recordUnmappedFields === void 0 ? void 0 : recordUnmappedFields.length) || (recordUnmappedDeveloperFields === null || recordUnmappedDeveloperFields === void 0 ? void 0 : recordUnmappedDeveloperFields.length))) unmappedMessages === null || unmappedMessages === void 0 || unmappedMessages.push(Object.assign(Object.assign({
					global_message_number: globalMessageNumber,
					message_index: messageIndex,
					little_endian: littleEndian
				}, compressedTimestamp === void 0 ? {} : { compressed_timestamp: compressedTimestamp }), {
					fields: (recordUnmappedFields !== null && recordUnmappedFields !== void 0 ? recordUnmappedFields : []).map((field) => ({
						field_definition_number: field.fieldDefinitionNumber,
						base_type: field.baseType,
						raw_value: field.rawValue
					})),
					developer_fields: (recordUnmappedDeveloperFields !== null && recordUnmappedDeveloperFields !== void 0 ? recordUnmappedDeveloperFields : []).map((field) => ({
						developer_data_index: field.developerDataIndex,
						field_definition_number: field.fieldDefinitionNumber,
						raw_value: field.rawValue
					}))
				}));
			}
			if (this.options.rawMessagesOnly) continue;
			if (messageType !== "" && messageType !== "definition" && message !== void 0) ((_b = messages[messageType]) !== null && _b !== void 0 ? _b : messages[messageType] = []).push(message);
			switch (messageType) {
				case "lap":
					laps.push(message);
					break;
				case "session":
					sessions.push(message);
					break;
				case "event":
					if (message.event === "timer") {
						if (message.event_type === "stop_all") lastStopTimestamp = message.timestamp;
						else if (message.event_type === "start" && lastStopTimestamp) pausedTime += (message.timestamp - lastStopTimestamp) / 1e3;
					}
					events.push(message);
					break;
				case "length":
					lengths.push(message);
					break;
				case "hrv":
					hrv.push(message);
					break;
				case "hr_zone":
					hr_zone.push(message);
					break;
				case "power_zone":
					power_zone.push(message);
					break;
				case "record":
					if (!startDate) {
						startDate = message.timestamp;
						if (this.options.elapsedRecordField) {
							message.elapsed_time = 0;
							message.timer_time = 0;
						}
					}
					records.push(message);
					break;
				case "field_description":
					fieldDescriptions.push(message);
					break;
				case "device_info":
					device_infos.push(message);
					break;
				case "developer_data_id":
					applications.push(message);
					break;
				case "dive_gas":
					dive_gases.push(message);
					break;
				case "course_point":
					course_points.push(message);
					break;
				case "sport":
					sports.push(message);
					break;
				case "file_id":
					if (message) file_ids.push(message);
					break;
				case "definition":
					if (message) definitions.push(message);
					break;
				case "monitoring":
					monitors.push(message);
					break;
				case "monitoring_info":
					monitor_info.push(message);
					break;
				case "stress_level":
					stress.push(message);
					break;
				case "software":
					fitObj.software = message;
					break;
				case "tank_update":
					tank_updates.push(message);
					break;
				case "tank_summary":
					tank_summaries.push(message);
					break;
				case "jump":
					jumps.push(message);
					break;
				case "set":
					sets.push(message);
					break;
				case "split":
					splits.push(message);
					break;
				case "split_summary":
					split_summaries.push(message);
					break;
				case "time_in_zone":
					time_in_zone.push(message);
					break;
				case "activity_metrics":
					activity_metrics.push(message);
					break;
				case "user_metrics":
					user_metrics.push(message);
					break;
				default: if (messageType !== "") fitObj[messageType] = message;
			}
		}
		if (this.options.rawMessagesOnly) {
			if (rawDeveloperFields) fitObj.raw_developer_fields = rawDeveloperFields;
			if (rawMessages) fitObj.raw_messages = rawMessages;
			if (unmappedMessages && unmappedMessages.length > 0) fitObj.unmapped_messages = unmappedMessages;
			callback(void 0, fitObj);
			return;
		}
		fitObj.hr_zone = hr_zone;
		fitObj.power_zone = power_zone;
		fitObj.dive_gases = dive_gases;
		fitObj.course_points = course_points;
		fitObj.sports = sports;
		fitObj.monitors = monitors;
		fitObj.stress = stress;
		fitObj.file_ids = file_ids;
		fitObj.monitor_info = monitor_info;
		fitObj.definitions = definitions;
		fitObj.tank_updates = tank_updates;
		fitObj.tank_summaries = tank_summaries;
		fitObj.jumps = jumps;
		fitObj.splits = splits;
		fitObj.split_summaries = split_summaries;
		fitObj.time_in_zone = time_in_zone;
		fitObj.activity_metrics = activity_metrics;
		fitObj.user_metrics = user_metrics;
		fitObj.messages = messages;
		if (rawDeveloperFields) fitObj.raw_developer_fields = rawDeveloperFields;
		if (rawMessages) fitObj.raw_messages = rawMessages;
		if (unmappedMessages && unmappedMessages.length > 0) fitObj.unmapped_messages = unmappedMessages;
		if (isCascadeNeeded) {
			laps = mapDataIntoLap(laps, "records", records);
			laps = mapDataIntoLap(laps, "lengths", lengths);
			sessions = mapDataIntoSession(sessions, laps);
			fitObj.activity = Object.assign(Object.assign({}, (_c = fitObj.activity) !== null && _c !== void 0 ? _c : {}), {
				sessions,
				events,
				hrv,
				device_infos,
				developer_data_ids: applications,
				field_descriptions: fieldDescriptions,
				sports,
				sets,
				splits,
				split_summaries
			});
		}
		if (!isModeCascade) {
			fitObj.sessions = sessions;
			fitObj.laps = laps;
			fitObj.lengths = lengths;
			fitObj.records = records;
			fitObj.events = events;
			fitObj.device_infos = device_infos;
			fitObj.developer_data_ids = applications;
			fitObj.field_descriptions = fieldDescriptions;
			fitObj.hrv = hrv;
			fitObj.sets = sets;
		}
		callback(void 0, fitObj);
	}
};
// src/read/fit/damage.ts
/** What is thrown where the framing of a FIT file can be followed and its content makes no sense. */
function undecodable() {
	return new Problem({
		code: "format-damaged",
		what: "the messages in this FIT file cannot be decoded",
		hint: "Copy the file from the head unit again"
	});
}
// src/read/fit/walk.ts
/** Global message numbers (FIT Profile, type mesg_num). */
const kinds = {
	record: 20,
	fieldDescription: 206
};
const freshAllowance = () => ({
	messages: limits.fitMessages,
	fields: limits.fitFields
});
const compressedHeader = 128;
const definitionHeader = 64;
const developerFlag = 32;
const reservedFlag = 16;
const timestampField = 253;
/** The last five bits of the time that a compressed header carries; null of a plain header. */
function timeInHeader(header) {
	return (header & compressedHeader) === 0 ? null : header & 31;
}
/**
* Walks the framing of FIT messages from `from`: follows the definitions and stops before the first message
* that is not whole or makes no sense. Decodes nothing.
*
* @returns the end of the last whole message.
* @throws Problem `format-limits` when the allowance is used up.
*/
function walk(bytes, from, to, allowance, visit) {
	const definitions = new Array(16).fill(void 0);
	let at = from;
	while (at < to) {
		const header = bytes[at];
		let end;
		let fields;
		if ((header & compressedHeader) === 0 && (header & definitionHeader) !== 0) {
			const read = readDefinition(bytes, at, to);
			if (read === null) return at;
			definitions[header & 15] = read;
			end = read.end;
			fields = read.plain.fields.length;
		} else {
			const compressed = (header & compressedHeader) !== 0;
			if (!compressed && (header & 48) !== 0) return at;
			const laid = definitions[compressed ? header >> 5 & 3 : header & 15];
			if (laid === void 0) return at;
			const definition = compressed ? laid.compressed : laid.plain;
			end = at + 1 + definition.size;
			if (end > to) return at;
			visit(definition, at + 1, end);
			fields = definition.fields.length + definition.developerFields.length;
		}
		allowance.messages--;
		allowance.fields -= fields;
		if (allowance.messages < 0 || allowance.fields < 0) throw tooMany();
		at = end;
	}
	return at;
}
function readDefinition(bytes, at, to) {
	if (at + 6 > to) return null;
	const header = bytes[at];
	const architecture = bytes[at + 2];
	const nativeEnd = at + 6 + bytes[at + 5] * 3;
	const hasDeveloperFields = (header & developerFlag) !== 0;
	if ((header & reservedFlag) !== 0 || architecture > 1) return null;
	if (nativeEnd + (hasDeveloperFields ? 1 : 0) > to) return null;
	const end = hasDeveloperFields ? nativeEnd + 1 + bytes[nativeEnd] * 3 : nativeEnd;
	if (end > to) return null;
	let size = 0;
	const fields = [];
	for (let i = at + 6; i < nativeEnd; i += 3) {
		fields.push({
			number: bytes[i],
			size: bytes[i + 1],
			baseType: bytes[i + 2],
			offset: size
		});
		size += bytes[i + 1];
	}
	const developerFields = [];
	for (let i = nativeEnd + 1; i < end; i += 3) {
		developerFields.push({
			number: bytes[i],
			size: bytes[i + 1],
			app: bytes[i + 2],
			offset: size
		});
		size += bytes[i + 1];
	}
	const littleEndian = architecture === 0;
	const plain = {
		kind: littleEndian ? bytes[at + 3] | bytes[at + 4] << 8 : bytes[at + 3] << 8 | bytes[at + 4],
		littleEndian,
		fields,
		developerFields,
		size
	};
	return {
		plain,
		compressed: withoutTime(plain),
		end
	};
}
/** A compressed header carries the time itself: a leading timestamp field then has no bytes of its own. */
function withoutTime(definition) {
	const [first, ...rest] = definition.fields;
	if (first?.number !== timestampField) return definition;
	const moved = (place) => ({
		...place,
		offset: place.offset - first.size
	});
	return {
		...definition,
		fields: rest.map(moved),
		developerFields: definition.developerFields.map(moved),
		size: definition.size - first.size
	};
}
function tooMany() {
	return new Problem({
		code: "format-limits",
		what: "this file holds more messages than a recording of a whole day",
		hint: "Hand in the recording of this ride alone"
	});
}
// src/read/fit/decode.ts
/**
* Decodes the whole messages of one part, without its records.
*
* @throws Problem `format-damaged` when the decoder refuses them.
*/
function decode(bytes, part) {
	const fit = parse(withoutRecords(bytes, part));
	const list = (name) => fit[name] ?? [];
	return {
		fileIds: list("file_ids"),
		deviceInfos: list("device_infos"),
		sports: list("sports"),
		sessions: list("sessions"),
		laps: list("laps"),
		events: list("events")
	};
}
/**
* A part of the file as it would be without its records. They stay where the compressed header of another
* message continues the time of the messages before it.
*/
function withoutRecords(bytes, { start, headerSize, end }) {
	const kept = new Uint8Array(end - start);
	let length = 0;
	let from = start;
	let continued = false;
	walk(bytes, start + headerSize, end, freshAllowance(), ({ kind }, at, messageEnd) => {
		const header = at - 1;
		if (kind === kinds.record) {
			if (header > from) kept.set(bytes.subarray(from, header), length);
			length += header - from;
			from = messageEnd;
		} else continued ||= timeInHeader(bytes[header]) !== null;
	});
	if (continued) [length, from] = [0, start];
	kept.set(bytes.subarray(from, end), length);
	length += end - from;
	new DataView(kept.buffer).setUint32(4, length - headerSize, true);
	return kept.subarray(0, length);
}
function parse(content) {
	let result;
	const parser = new FitParser({
		force: true,
		mode: "list"
	});
	try {
		parser.parse(content, (_, data) => {
			result = data;
		});
	} catch {
		result = void 0;
	}
	if (result === void 0) throw undecodable();
	return result;
}
// src/read/fit/crc.ts
/** Bytes that are taken in one step. */
const stride = 8;
/** What a byte does to the checksum: 256 values for one that ends a step, then for one with one behind it, … */
const table = new Uint16Array(stride * 256);
for (let byte = 0; byte < 256; byte++) {
	let crc = byte;
	for (let behind = 0; behind < stride; behind++) {
		for (let bit = 0; bit < 8; bit++) crc = (crc & 1) === 0 ? crc >>> 1 : crc >>> 1 ^ 40961;
		table[behind << 8 | byte] = crc;
	}
}
/**
* The checksum of FIT (FIT Protocol, "CRC"): CRC-16 with the reflected polynomial A001, begun at 0. Eight bytes a
* step, each looked up by itself (Kounavis & Berry 2008, IEEE Trans Comput 57:1550).
*/
function crc16(bytes, from, to) {
	let crc = 0;
	let i = from;
	for (; i + stride <= to; i += stride) crc = table[1792 | crc & 255 ^ bytes[i]] ^ table[1536 | crc >>> 8 ^ bytes[i + 1]] ^ table[1280 | bytes[i + 2]] ^ table[1024 | bytes[i + 3]] ^ table[768 | bytes[i + 4]] ^ table[512 | bytes[i + 5]] ^ table[256 | bytes[i + 6]] ^ table[bytes[i + 7]];
	for (; i < to; i++) crc = crc >>> 8 ^ table[(crc ^ bytes[i]) & 255];
	return crc;
}
// src/read/fit/parts.ts
const smallestHeader = 12;
const checksumSize = 2;
/**
* Finds the recordings in a FIT file and how far each is whole: the strict check of header, sizes, framing
* and checksum, and what to keep of a file that fails it.
*
* @throws Problem `format-damaged` when not even a header can be followed, `format-limits` beyond the limits.
*/
function findParts(bytes) {
	const allowance = freshAllowance();
	const parts = [];
	const defects = [];
	let at = 0;
	while (startsHeader(bytes, at)) {
		if (parts.length === limits.fitParts) throw new Problem({
			code: "format-limits",
			what: `more than ${limits.fitParts} recordings are chained in this file`,
			hint: "Hand in the recording of this ride alone"
		});
		const found = readPart$1(bytes, at, allowance);
		parts.push(found.part);
		if (found.defect !== null) defects.push(found.defect);
		at = found.next;
	}
	if (parts.length === 0) throw new Problem({
		code: "format-damaged",
		what: "the header of this FIT file is damaged",
		hint: "Copy the file from the head unit again"
	});
	if (bytes.subarray(at).some((byte) => byte !== 0)) defects.push({
		id: "trailing-bytes",
		values: { bytes: bytes.length - at }
	});
	const withRecords = parts.filter((part) => part.records > 0).length;
	if (withRecords > 1) defects.push({
		id: "chained",
		values: { parts: withRecords }
	});
	return {
		parts,
		defects
	};
}
function startsHeader(bytes, at) {
	const size = bytes[at];
	return (size === 12 || size === 14) && at + size <= bytes.length && [
		46,
		70,
		73,
		84
	].every((letter, i) => bytes[at + 8 + i] === letter);
}
function readPart$1(bytes, start, allowance) {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const headerSize = bytes[start];
	const from = start + headerSize;
	const declaredEnd = from + view.getUint32(start + 4, true);
	const next = declaredEnd + checksumSize;
	const fits = next <= bytes.length;
	const sound = fits && headerIsSound(bytes, view, start) && crc16(bytes, start, declaredEnd) === view.getUint16(declaredEnd, true);
	const closed = sound || fits && (next === bytes.length || startsHeader(bytes, next));
	let records = 0;
	const end = walk(bytes, from, closed ? declaredEnd : bytes.length, allowance, ({ kind }) => {
		if (kind === kinds.record) records++;
	});
	const whole = closed && end === declaredEnd;
	return {
		part: {
			start,
			headerSize,
			end,
			records
		},
		defect: defectOf(),
		next: closed ? next : bytes.length
	};
	function defectOf() {
		if (whole) return sound ? null : {
			id: "checksum-wrong",
			values: {}
		};
		if (fits && end > declaredEnd) return {
			id: "never-closed",
			values: { kept: records }
		};
		const held = bytes.length - start;
		if (next - start > limits.fileBytes) return {
			id: "size-impossible",
			values: {
				stated: next - start,
				held,
				kept: records
			}
		};
		return {
			id: "truncated",
			values: {
				kept: records,
				lostBytes: Math.max(next, bytes.length) - end
			}
		};
	}
}
/** The header's own checksum may be left at 0 (FIT Protocol, "File Header"). */
function headerIsSound(bytes, view, start) {
	if (bytes[start] < 14) return true;
	const stored = view.getUint16(start + smallestHeader, true);
	return stored === 0 || stored === crc16(bytes, start, start + smallestHeader);
}
// src/read/fit/base-types.ts
const takeUint8 = (view, at) => view.getUint8(at);
const takeUint16 = (view, at, littleEndian) => view.getUint16(at, littleEndian);
const takeUint32 = (view, at, littleEndian) => view.getUint32(at, littleEndian);
const takeSint8 = (view, at) => view.getInt8(at);
const takeSint16 = (view, at, littleEndian) => view.getInt16(at, littleEndian);
const takeSint32 = (view, at, littleEndian) => view.getInt32(at, littleEndian);
const takeFloat32 = (view, at, littleEndian) => view.getFloat32(at, littleEndian);
const takeFloat64 = (view, at, littleEndian) => view.getFloat64(at, littleEndian);
/** Source: FIT Protocol, table "FIT Base Types and Invalid Values". */
const baseTypes = {
	enum: {
		name: "enum",
		id: 0,
		size: 1,
		invalid: 255,
		take: takeUint8
	},
	sint8: {
		name: "sint8",
		id: 1,
		size: 1,
		invalid: 127,
		take: takeSint8
	},
	uint8: {
		name: "uint8",
		id: 2,
		size: 1,
		invalid: 255,
		take: takeUint8
	},
	sint16: {
		name: "sint16",
		id: 131,
		size: 2,
		invalid: 32767,
		take: takeSint16
	},
	uint16: {
		name: "uint16",
		id: 132,
		size: 2,
		invalid: 65535,
		take: takeUint16
	},
	sint32: {
		name: "sint32",
		id: 133,
		size: 4,
		invalid: 2147483647,
		take: takeSint32
	},
	uint32: {
		name: "uint32",
		id: 134,
		size: 4,
		invalid: 4294967295,
		take: takeUint32
	},
	float32: {
		name: "float32",
		id: 136,
		size: 4,
		invalid: NaN,
		take: takeFloat32
	},
	float64: {
		name: "float64",
		id: 137,
		size: 8,
		invalid: NaN,
		take: takeFloat64
	},
	uint8z: {
		name: "uint8z",
		id: 10,
		size: 1,
		invalid: 0,
		take: takeUint8
	},
	uint16z: {
		name: "uint16z",
		id: 139,
		size: 2,
		invalid: 0,
		take: takeUint16
	},
	uint32z: {
		name: "uint32z",
		id: 140,
		size: 4,
		invalid: 0,
		take: takeUint32
	},
	byte: {
		name: "byte",
		id: 13,
		size: 1,
		invalid: 255,
		take: takeUint8
	}
};
/** An array of three bytes as one number, the lowest first: none when all three are. */
const threeBytes = {
	name: "three bytes",
	id: -1,
	size: 3,
	invalid: 16777215,
	take: (view, at) => view.getUint16(at, true) | view.getUint8(at + 2) << 16
};
const byId = new Map(Object.values(baseTypes).map((type) => [type.id, type]));
/** The base type of this number; undefined where it can hold no number. */
function baseTypeOf(id) {
	return byId.get(id);
}
/** The number of the message whose content begins at `at`; NaN where it is none, or not finite. */
function numberAt({ type, offset, littleEndian }, view, at) {
	const value = type.take(view, at + offset, littleEndian);
	return isNumber(value, type) ? value : NaN;
}
/** Whether what was taken stands for a number: neither the type's value for none, nor infinite. */
function isNumber(taken, { invalid }) {
	return taken !== invalid && Number.isFinite(taken);
}
// src/read/fit/record-fields.ts
const field = (number, type, scale = 1, shift = 0) => ({
	number,
	type,
	scale,
	shift
});
const { uint8, sint8, uint16, sint32, uint32 } = baseTypes;
/** The fields that reading uses, in SI units and rpm (FIT Profile, message record). */
const recordFields = {
	timestamp: field(253, uint32, 1, 631065600),
	power: field(7, uint16),
	cadence: field(4, uint8),
	fractional_cadence: field(53, uint8, 128),
	heart_rate: field(3, uint8),
	speed: field(6, uint16, 1e3),
	enhanced_speed: field(73, uint32, 1e3),
	altitude: field(2, uint16, 5, -500),
	enhanced_altitude: field(78, uint32, 5, -500),
	distance: field(5, uint32, 100),
	temperature: field(13, sint8),
	left_right_balance: field(30, uint8),
	compressed_speed_distance: field(8, threeBytes),
	ebike_battery_level: field(118, uint8),
	ebike_assist_mode: field(119, uint8),
	position_lat: field(0, sint32),
	position_long: field(1, sint32)
};
const names = new Map(Object.entries(recordFields).map(([name, { number }]) => [number, name]));
/** What a field of a record is to reading; undefined when it is nothing to it. */
function recordFieldName({ number }) {
	return names.get(number);
}
/** Types of one byte each, which recorders use in place of one another. */
const bytes = [
	baseTypes.enum,
	baseTypes.uint8,
	baseTypes.byte
];
/**
* How the number of a field is stored; null where its type or size is none that it may have. Power is read
* whatever number type a recorder gave it.
*/
function storedType(name, { baseType, size }) {
	const { type } = recordFields[name];
	const stored = baseTypeOf(baseType);
	if (stored === void 0 || size === 0 || size % stored.size !== 0) return null;
	if (stored === type || name === "power") return stored;
	if (!bytes.includes(stored)) return null;
	if (type === threeBytes) return size === threeBytes.size ? threeBytes : null;
	return bytes.includes(type) ? stored : null;
}
// src/read/fit/developer.ts
/** Fields of the message field_description (FIT Profile). */
const numbers = {
	app: 0,
	number: 1,
	baseType: 2,
	name: 3,
	scale: 6,
	offset: 7,
	units: 8
};
const invalid = {
	uint8: 255,
	sint8: 127
};
/** One number for an app's index and the field's number: records name developer fields by both. */
function keyOf({ app, number }) {
	return app << 8 | number;
}
/** The field that a field_description describes whose content begins at `at`; null where it has no name. */
function describedField(bytes, definition, at) {
	const content = bytes.subarray(at, at + definition.size);
	const byte = (number, otherwise) => contentOf(content, definition, number)?.[0] ?? otherwise;
	const name = textOf(content, definition, numbers.name);
	if (name === null) return null;
	const scale = byte(numbers.scale, invalid.uint8);
	const offset = byte(numbers.offset, invalid.sint8);
	return {
		key: keyOf({
			app: byte(numbers.app, invalid.uint8),
			number: byte(numbers.number, invalid.uint8)
		}),
		name,
		units: textOf(content, definition, numbers.units) ?? "",
		type: baseTypeOf(byte(numbers.baseType, invalid.uint8)),
		scale: scale === invalid.uint8 || scale === 0 ? 1 : scale,
		shift: offset === invalid.sint8 ? 0 : -(offset << 24 >> 24)
	};
}
function contentOf(content, { fields }, number) {
	const field = fields.findLast((one) => one.number === number);
	return field === void 0 ? null : content.subarray(field.offset, field.offset + field.size);
}
function textOf(content, definition, number) {
	const stored = contentOf(content, definition, number);
	if (stored === null) return null;
	const end = stored.indexOf(0);
	return shortName(new TextDecoder().decode(end === -1 ? stored : stored.subarray(0, end)));
}
// src/read/fit/records.ts
const nothing = {
	time: null,
	cells: [],
	positions: []
};
/**
* Reads the record messages of all parts straight into columns. A ride has one a second, of some ten fields
* each: made into objects first, they would cost several times what everything else in the file does.
*
* @throws Problem `format-damaged` when a time leaves the range of the format, `format-limits` when there are too
*   many fields that may be meters.
*/
function readRecords(bytes, parts) {
	const sheet = {
		length: parts.reduce((sum, { records }) => sum + records, 0),
		columns: /* @__PURE__ */ new Map(),
		meters: /* @__PURE__ */ new Map(),
		developerNames: /* @__PURE__ */ new Set(),
		powerTypes: /* @__PURE__ */ new Set(),
		row: 0,
		located: false
	};
	for (const part of parts) readPart(bytes, part, sheet);
	return {
		length: sheet.length,
		columns: Object.fromEntries(sheet.columns),
		meters: [...sheet.meters.values()],
		developerNames: sheet.developerNames,
		oddPowerTypes: [...sheet.powerTypes].filter((type) => type !== recordFields.power.type.id).map((type) => baseTypeOf(type)?.name ?? `type ${type}`),
		located: sheet.located
	};
}
function readPart(bytes, { start, headerSize, end, records }, sheet) {
	const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
	const described = /* @__PURE__ */ new Map();
	const plans = /* @__PURE__ */ new Map();
	const run = {
		places: new Uint32Array(records),
		count: 0
	};
	let planned = null;
	let plan = nothing;
	let time = NaN;
	walk(bytes, start + headerSize, end, freshAllowance(), (definition, at) => {
		if (definition !== planned) {
			fillRows(sheet, plan, view, run);
			plan = plans.get(definition) ?? planOf(definition, described, sheet);
			plans.set(definition, plan);
			planned = definition;
		}
		const lastBits = timeInHeader(bytes[at - 1]);
		if (lastBits !== null) time = continued(time, lastBits);
		else if (plan.time !== null) time = numberAt(plan.time, view, at);
		if (definition.kind === kinds.record) {
			if (lastBits !== null && !Number.isNaN(time)) columnOf(sheet, "timestamp")[sheet.row + run.count] = time + recordFields.timestamp.shift;
			run.places[run.count++] = at;
		} else if (definition.kind === kinds.fieldDescription) {
			const field = describedField(bytes, definition, at);
			if (field === null) return;
			described.set(field.key, field);
			sheet.developerNames.add(field.name);
			if (isMeter(field)) meterOf$1(sheet, field);
			plans.clear();
			planned = null;
		}
	});
	fillRows(sheet, plan, view, run);
}
/** The first time from `time` on that ends in these bits (FIT Protocol, "Compressed Timestamp Header"). */
function continued(time, lastBits) {
	const next = time + (lastBits - time & 31);
	if (next >= recordFields.timestamp.type.invalid) throw undecodable();
	return next;
}
/** Fills the rows of a run of records, and begins the next run. */
function fillRows(sheet, { cells, positions }, view, run) {
	for (const cell of cells) fillCells(cell, view, run, sheet.row);
	for (const position of positions) sheet.located ||= isAnywhere(position, view, run);
	sheet.row += run.count;
	run.count = 0;
}
function fillCells(cell, view, { places, count }, row) {
	const { column, scale, shift, type, offset, littleEndian } = cell;
	const { take } = type;
	for (let i = 0; i < count; i++) {
		const value = take(view, places[i] + offset, littleEndian);
		if (isNumber(value, type)) column[row + i] = value / scale + shift;
	}
}
function isAnywhere(stored, view, { places, count }) {
	for (let i = 0; i < count; i++) if (!Number.isNaN(numberAt(stored, view, places[i]))) return true;
	return false;
}
function planOf(definition, described, sheet) {
	const plan = {
		time: timeIn(definition),
		cells: [],
		positions: []
	};
	if (definition.kind === kinds.record) {
		planFields(plan, definition, sheet);
		planDeveloperFields(plan, definition, described, sheet);
	}
	return plan;
}
/** Every message that has a time has it in the same field. */
function timeIn({ fields, littleEndian }) {
	const field = fields.findLast((one) => recordFieldName(one) === "timestamp");
	const type = field === void 0 ? null : storedType("timestamp", field);
	return field === void 0 || type === null ? null : {
		type,
		offset: field.offset,
		littleEndian
	};
}
function planFields({ cells, positions }, { fields, littleEndian }, sheet) {
	for (const field of fields) {
		const name = recordFieldName(field);
		if (name === void 0) continue;
		if (name === "power") sheet.powerTypes.add(field.baseType);
		const type = storedType(name, field);
		if (type === null) continue;
		const place = {
			type,
			offset: field.offset,
			littleEndian
		};
		const { scale, shift } = recordFields[name];
		if (name === "position_lat" || name === "position_long") positions.push(place);
		else cells.push({
			...place,
			column: columnOf(sheet, name),
			scale,
			shift
		});
	}
}
function planDeveloperFields({ cells }, { developerFields, littleEndian }, described, sheet) {
	for (const place of developerFields) {
		const field = described.get(keyOf(place));
		if (field === void 0 || field.type?.size !== place.size || !isMeter(field)) continue;
		const { type, scale, shift } = field;
		cells.push({
			type,
			offset: place.offset,
			littleEndian,
			column: meterOf$1(sheet, field).power,
			scale,
			shift
		});
	}
}
const isMeter = ({ name, units }) => isMeterName(name, units);
function columnOf({ columns, length }, name) {
	const column = columns.get(name) ?? empty(length);
	columns.set(name, column);
	return column;
}
function meterOf$1({ meters, length }, { key, name }) {
	const identity = `${key} ${name}`;
	const known = meters.get(identity);
	if (known !== void 0) return known;
	if (meters.size === limits.fitMeters) throw tooManyMeters();
	const meter = {
		name,
		power: empty(length)
	};
	meters.set(identity, meter);
	return meter;
}
function tooManyMeters() {
	return new Problem({
		code: "format-limits",
		what: `the file describes more than ${limits.fitMeters} added fields of power`,
		hint: "Hand in the file as the head unit wrote it"
	});
}
function empty(length) {
	return new Float64Array(length).fill(NaN);
}
// src/read/fit/summary.ts
/** Who made the file: file_id, and where it is silent the device_info of the recorder itself. */
function deviceOf(decoded) {
	const creator = decoded.deviceInfos.find((info) => info.device_index === "creator" || info.device_index === 0);
	const sources = [...decoded.fileIds, ...creator === void 0 ? [] : [creator]];
	const first = (...names) => {
		for (const name of names) for (const source of sources) {
			const value = shortName(source[name]);
			if (value !== null) return value;
		}
		return null;
	};
	return {
		maker: first("manufacturer"),
		product: first("product_name", "product"),
		serial: first("serial_number")
	};
}
/**
* The power sensor by its own device_info (device type 11 of ANT+, bike_power): null where the file lists
* none, or two that are not the same.
*/
function meterOf(decoded) {
	const infos = decoded.deviceInfos.filter(({ device_type: type, source_type: source }) => type === "bike_power" || type === 11 && source !== "local");
	const first = (info, ...names) => names.map((name) => shortName(info[name])).find((value) => value !== null) ?? null;
	const meters = infos.map((info) => ({
		maker: first(info, "manufacturer"),
		product: first(info, "product_name", "product"),
		serial: first(info, "serial_number", "ant_id", "ant_device_number")
	}));
	const known = meters.filter(({ serial }) => serial !== null);
	const said = known.length > 0 ? known : meters;
	const one = said.find(({ maker, product }) => maker !== null || product !== null) ?? said[0];
	return one === void 0 || said.some(({ serial }) => serial !== one.serial) ? null : one;
}
/**
* "cycling indoor_cycling …": all that the file says of its sport. Of several sports a ride with a motor comes
* first, for nobody can tell its power from the rest, then cycling.
*/
function sportWords(decoded) {
	const said = [...decoded.sessions, ...decoded.sports].map((message) => [shortName(message.sport), shortName(message.sub_sport)]).filter(([sport]) => sport !== null).map((words) => words.filter((word) => word !== null && word !== "generic").join(" "));
	return said.find((words) => sportOf(words) === "e-biking") ?? said.find((words) => words.startsWith("cycling")) ?? said[0] ?? null;
}
/** Timer pauses from the recorder's own events: from a stop to the next start. */
function pausesOf(events) {
	const pauses = [];
	let stopped = NaN;
	for (const { event, event_type: type, timestamp } of events) {
		if (event !== "timer" || typeof type !== "string") continue;
		const at = clock(timestamp);
		if (type.startsWith("stop")) {
			if (Number.isNaN(stopped)) stopped = at;
		} else if (type === "start") {
			if (at > stopped) pauses.push([stopped, at]);
			stopped = NaN;
		}
	}
	return pauses;
}
function lapsOf(laps) {
	return laps.flatMap((lap) => {
		const from = clock(lap.start_time);
		const elapsed = finite(lap.total_elapsed_time);
		const to = Number.isNaN(elapsed) ? clock(lap.timestamp) : from + elapsed;
		const meanPower = finite(lap.avg_power);
		if (!(to > from)) return [];
		return [Number.isNaN(meanPower) ? {
			from,
			to
		} : {
			from,
			to,
			meanPower
		}];
	});
}
/** The totals of a file's sessions together. */
function totalsOf(sessions) {
	return {
		...combineTotals(sessions.map(sessionTotals)),
		...stated({ elapsedS: elapsed(sessions) })
	};
}
function sessionTotals(session) {
	return stated({
		meanPower: finite(session.avg_power),
		maxPower: finite(session.max_power),
		meanCadence: finite(session.avg_cadence),
		meanHeartRate: finite(session.avg_heart_rate),
		maxHeartRate: finite(session.max_heart_rate),
		workJ: finite(session.total_work),
		timerS: finite(session.total_timer_time),
		distanceM: finite(session.total_distance)
	});
}
/** From the first start to the last end, as the sessions state them; of one session, its elapsed time. */
function elapsed(sessions) {
	const lengths = sessions.map((session) => finite(session.total_elapsed_time));
	if (sessions.length <= 1) return lengths[0] ?? NaN;
	const starts = sessions.map((session) => clock(session.start_time));
	return Math.max(...starts.map((start, i) => start + lengths[i])) - Math.min(...starts);
}
/** Seconds since 1970 of any decoded time; NaN when there is none. */
function clock(value) {
	return value instanceof Date ? value.getTime() / 1e3 : NaN;
}
// src/read/fit/fit.ts
/**
* Reads a FIT file. Strict first: header, sizes, framing and checksum of each chained part are checked, and
* intact parts decoded as they are; of a damaged part the whole messages before the damage are decoded, with
* a defect that says so.
*
* @throws Problem `format-damaged` when nothing can be followed, `format-limits` beyond what is taken in.
*/
function readFit(bytes) {
	const { parts, defects } = findParts(bytes);
	const decoded = together(parts.map((part) => decode(bytes, part)));
	const { sessions } = decoded;
	const records = readRecords(bytes, parts);
	const balance = balanceOf(records.columns.left_right_balance);
	const { defects: columnDefects, ...columns } = assemble({
		time: records.columns.timestamp ?? new Float64Array(records.length).fill(NaN),
		channels: {
			...plainChannels(records.columns),
			balance: balance.share
		},
		meters: records.meters
	});
	const words = sportWords(decoded);
	const meter = meterOf(decoded);
	return {
		...columns,
		sport: hasMotor(records.columns) ? "e-biking" : sportOf(words),
		indoors: indoorsOf(words, records.located),
		device: deviceOf(decoded),
		...meter === null ? {} : { meter },
		balanceSide: balance.side,
		pauses: pausesOf(decoded.events),
		laps: lapsOf(decoded.laps),
		totals: totalsOf(sessions),
		defects: [
			...defects,
			...sessions.length > 1 ? [{
				id: "several-sessions",
				values: { sessions: sessions.length }
			}] : [],
			...collisions(records.developerNames),
			...records.oddPowerTypes.map((type) => ({
				id: "odd-power-type",
				values: { type }
			})),
			...columnDefects
		]
	};
}
function together(parts) {
	if (parts.length === 1) return parts[0];
	return {
		fileIds: parts.flatMap((part) => part.fileIds),
		deviceInfos: parts.flatMap((part) => part.deviceInfos),
		sports: parts.flatMap((part) => part.sports),
		sessions: parts.flatMap((part) => part.sessions),
		laps: parts.flatMap((part) => part.laps),
		events: parts.flatMap((part) => part.events)
	};
}
function collisions(developerNames) {
	return [...developerNames].filter((name) => Object.hasOwn(recordFields, name)).map((name) => ({
		id: "colliding-field",
		values: { name }
	}));
}
/**
* Only a bicycle with a motor tells of its battery or its help, whatever sport its rider chose. A recorder may
* write 0 into both of any ride.
*/
function hasMotor({ ebike_battery_level, ebike_assist_mode }) {
	return [ebike_battery_level, ebike_assist_mode].some((told) => told?.some((value) => value > 0));
}
export { readFit };
