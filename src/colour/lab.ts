import { linearOfXyz, times } from './oklab.ts';
import type { Rgb } from './rgb.ts';

/** CIE XYZ of the white D50, from its chromaticity 0.3457, 0.3585. */
const D50 = [0.3457 / 0.3585, 1, (1 - 0.3457 - 0.3585) / 0.3585] as const;

/** From the white D50 to D65 after Bradford; CSS Color 4, section 17. */
const D50_TO_D65 = [
  [0.955473421488075, -0.02309845494876471, 0.06325924320057072],
  [-0.0283697093338637, 1.0099953980813041, 0.021041441191917323],
  [0.012314014864481998, -0.020507649298898964, 1.330365926242124],
] as const;

/** CIE 15: where the cube root gives way to a straight line. */
const KNEE = 216 / 24389;
const SLOPE = 24389 / 27;

/** CIELAB of the white D50, as CSS writes it in `lab()`, to linear sRGB; below 0 or above 1 where no screen can show it. */
export function linearOfLab(lightness: number, a: number, b: number): Rgb {
  const y = (lightness + 16) / 116;
  const share = (root: number): number => (root ** 3 > KNEE ? root ** 3 : (116 * root - 16) / SLOPE);
  const bright = lightness > SLOPE * KNEE ? y ** 3 : lightness / SLOPE;
  return linearOfXyz(times(D50_TO_D65, [D50[0] * share(y + a / 500), bright, D50[2] * share(y - b / 200)]));
}
