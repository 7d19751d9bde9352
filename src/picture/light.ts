import { coded, linear } from '../colour/rgb.ts';

/** Steps in which light is counted here; the darkest step of sRGB is 20 of them. */
const STEPS = 65_535;

/** Light of each of the 256 steps of sRGB, 0 to 65 535. */
export const LIGHT: Uint16Array = Uint16Array.from({ length: 256 }, (_, step) =>
  Math.round(STEPS * linear([step / 255, 0, 0])[0]),
);

const STEP = Uint8Array.from({ length: STEPS + 1 }, (_, light) => Math.round(255 * coded([light / STEPS, 0, 0])[0]));

/** The step of sRGB for any light; more than white is white. */
export const stepOf = (light: number): number => STEP[light >= STEPS ? STEPS : light <= 0 ? 0 : (light + 0.5) | 0]!;
