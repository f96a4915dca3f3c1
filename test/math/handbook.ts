/** Data sets of handbooks and papers that several tests check against. */

/**
 * Peak expiratory flow of 17 subjects by two meters, twice each, l/min: Bland JM, Altman DG. Statistical
 * methods for assessing agreement between two methods of clinical measurement. Lancet 1986;1:307-310.
 */
export const peakFlow = {
  wright1: [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427],
  wright2: [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421],
  mini1: [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451],
  mini2: [525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443],
};

/** Yearly flow of the Nile, 1871 to 1970, 10⁸ m³ (R, datasets::Nile). */
export const nile = [
  1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960, 1180, 799, 958,
  1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694, 940, 833, 701, 916, 692, 1020,
  1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821, 768, 845, 864, 862, 698, 845, 744, 796, 1040,
  759, 781, 865, 845, 944, 984, 897, 822, 1010, 771, 676, 649, 846, 812, 742, 801, 1040, 860, 874, 848, 890,
  744, 749, 838, 1050, 918, 986, 797, 923, 975, 815, 1020, 906, 901, 1170, 912, 746, 919, 718, 714, 740,
];

/** Sen PK. J Am Stat Assoc 1968;63:1379-1389: his example. */
export const sen = { t: [1, 2, 3, 4, 10, 12, 18], y: [9, 15, 19, 20, 45, 55, 78] };

/**
 * Montgomery DC, Runger GC. Applied Statistics and Probability for Engineers, Tables 16-7 and 16-8: running sum around
 * a target, and the two sums that start anew at zero, with a slack on either side of it.
 */
export const montgomery = {
  target: 99,
  slack: 1,
  x: [
    102, 94.8, 98.3, 98.4, 102, 98.5, 99, 97.7, 100, 98.1, 101.3, 98.7, 101.1, 98.4, 97, 96.7, 100.3, 101.4,
    97.2, 101,
  ],
  sums: [3, -1.2, -1.9, -2.5, 0.5, 0, 0, -1.3, -0.3, -1.2, 1.1, 0.8, 2.9, 2.3, 0.3, -2, -0.7, 1.7, -0.1, 1.9],
  high: [2, 0, 0, 0, 2, 0.5, 0, 0, 0, 0, 1.3, 0, 1.1, 0, 0, 0, 0.3, 1.7, 0, 1],
  low: [0, 3.2, 2.9, 2.5, 0, 0, 0, 0.3, 0, 0, 0, 0, 0, 0, 1, 2.3, 0, 0, 0.8, 0],
};
