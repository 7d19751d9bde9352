import type { Rgb } from './rgb.ts';

type Three = readonly [number, number, number];
type Matrix = readonly [Three, Three, Three];

/** OKLab: lightness 0 to 1, and two hues. Equal steps look about equally large. */
export type Oklab = readonly [lightness: number, a: number, b: number];

export const times = (matrix: Matrix, [x, y, z]: Three): Three => {
  const [one, two, three] = matrix;
  return [
    one[0] * x + one[1] * y + one[2] * z,
    two[0] * x + two[1] * y + two[2] * z,
    three[0] * x + three[1] * y + three[2] * z,
  ];
};

/** Linear sRGB to CIE XYZ of the daylight D65, Y of white 1, and back; as fractions in CSS Color 4, section 17. */
const RGB_TO_XYZ: Matrix = [
  [506752 / 1228815, 87881 / 245763, 12673 / 70218],
  [87098 / 409605, 175762 / 245763, 12673 / 175545],
  [7918 / 409605, 87881 / 737289, 1001167 / 1053270],
];
const XYZ_TO_RGB: Matrix = [
  [12831 / 3959, -329 / 214, -1974 / 3959],
  [-851781 / 878810, 1648619 / 878810, 36519 / 878810],
  [705 / 12673, -2585 / 12673, 705 / 667],
];

/** B. Ottosson, "A perceptual color space for image processing", 2020, in the digits of CSS Color 4, section 17. */
const XYZ_TO_LMS: Matrix = [
  [0.819022437996703, 0.3619062600528904, -0.1288737815209879],
  [0.0329836539323885, 0.9292868615863434, 0.0361446663506424],
  [0.0481771893596242, 0.2642395317527308, 0.6335478284694309],
];
const LMS_TO_OKLAB: Matrix = [
  [0.210454268309314, 0.7936177747023054, -0.0040720430116193],
  [1.9779985324311684, -2.4285922420485799, 0.450593709617411],
  [0.0259040424655478, 0.7827717124575296, -0.8086757549230774],
];
const OKLAB_TO_LMS: Matrix = [
  [1, 0.3963377773761749, 0.2158037573099136],
  [1, -0.1055613458156586, -0.0638541728258133],
  [1, -0.0894841775298119, -1.2914855480194092],
];
const LMS_TO_XYZ: Matrix = [
  [1.2268798758459243, -0.5578149944602171, 0.2813910456659647],
  [-0.0405757452148008, 1.112286803280317, -0.0717110580655164],
  [-0.0763729366746601, -0.4214933324022432, 1.5869240198367816],
];

/** CIE XYZ of D65 to OKLab. */
export function oklabOfXyz(xyz: Three): Oklab {
  const [l, m, s] = times(XYZ_TO_LMS, xyz);
  return times(LMS_TO_OKLAB, [Math.cbrt(l), Math.cbrt(m), Math.cbrt(s)]);
}

/** CIE XYZ of D65 to linear sRGB; below 0 or above 1 where no screen can show it. */
export const linearOfXyz = (xyz: Three): Rgb => times(XYZ_TO_RGB, xyz);

export const oklabOfLinear = (rgb: Rgb): Oklab => oklabOfXyz(times(RGB_TO_XYZ, rgb));

/** OKLab to linear sRGB; below 0 or above 1 where no screen can show it. */
export function linearOfOklab(lab: Oklab): Rgb {
  const [l, m, s] = times(OKLAB_TO_LMS, lab);
  return linearOfXyz(times(LMS_TO_XYZ, [l ** 3, m ** 3, s ** 3]));
}
