/** The sum of a table as 32-bit words (OpenType 1.9, "Calculating checksums"). */
function sumOf(view: DataView, from: number, length: number): number {
  let sum = 0;
  for (let at = from; at < from + length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}

const ADJUSTED = 0xb1b0afba;

/** Fills in the check sums of a font file whose tables lie on whole words, as some printers look at them. Returns the same bytes. */
export function checkSummed(file: ArrayBuffer): Uint8Array {
  const view = new DataView(file);
  const count = view.getUint16(4);
  let head = 0;
  for (let n = 0; n < count; n++) {
    const entry = 12 + 16 * n;
    const [from, length] = [view.getUint32(entry + 8), view.getUint32(entry + 12)];
    if (view.getUint32(entry) === 0x68656164) {
      head = from;
      view.setUint32(head + 8, 0);
    }
    view.setUint32(entry + 4, sumOf(view, from, (length + 3) & ~3));
  }
  // What helps old readers find a table by halving.
  const power = 2 ** Math.floor(Math.log2(count));
  view.setUint16(6, power * 16);
  view.setUint16(8, Math.log2(power));
  view.setUint16(10, (count - power) * 16);
  view.setUint32(head + 8, (ADJUSTED - sumOf(view, 0, file.byteLength)) >>> 0);
  return new Uint8Array(file);
}
