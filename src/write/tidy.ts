/** Decimals the path texts are reckoned with: one more than is written, since the library may give up the last one. */
const DECIMALS = 4;

/**
 * Shortens the path texts of a stencil, as the last step before it is written, and puts all lines one behind the other under its head.
 *
 * Nothing else is touched: elements keep their order, every window stays a path of its own, ids, data attributes, title,
 * description, comments, viewBox and the size in millimetres stay as they are. Curves stay cubics. Geometry keeps to 0.002 mm.
 * Colours stay as the job has them and as the comment says them, so that who looks for one finds it (`#000` would save 1.4 %), and
 * `version` stays for importers that ask for it (0.3 %).
 * @param text an SVG file as `writeStencil` writes it
 */
export async function tidySvg(text: string): Promise<string> {
  const { optimize } = await import('svgo/browser');
  const { data } = optimize(text, {
    multipass: false,
    floatPrecision: DECIMALS,
    js2svg: { pretty: false },
    plugins: [
      {
        name: 'convertPathData',
        params: {
          floatPrecision: DECIMALS,
          // Cutters are fed the corners and cubics that were drawn, not arcs or lines that come near them.
          makeArcs: { threshold: 0, tolerance: 0 },
          straightCurves: false,
          // A cut that runs on past its start is one stroke of the blade: it is not closed and begun anew there.
          convertToZ: false,
          convertToQ: false,
          smartArcRounding: false,
          collapseRepeated: false,
          removeUseless: false,
        },
      },
    ],
  });
  return `${data.replace('--><path', '-->\n<path')}\n`;
}
